package spline

import (
	"math"
	"testing"
)

const inch = 25.4

// Sources, shortened.
const (
	apart     = "worked apart from this code from the standard's formulas"
	sheet     = "DIN 5480, a printed data sheet"
	catalogue = "a stock hub catalogue, nominal outside diameter"
)

// near fails unless got is want to within tol.
func near(t *testing.T, what string, got, want, tol float64, source string) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.6g, want %g ± %g (%s)", what, got, want, tol, source)
	}
}

func ansiFamily(deg float64, root string) Family {
	for _, f := range Families {
		if f.Inch && f.PressureDeg == deg && f.Root == root {
			return f
		}
	}
	return Family{}
}

func TestInchOutsideDiameters(t *testing.T) {
	for _, row := range []struct {
		count int
		pitch float64
		inch  float64
	}{{9, 16, 5.0 / 8}, {13, 16, 7.0 / 8}, {14, 12, 1.25}, {13, 8, 1.75}} {
		for _, f := range Families[:4] {
			near(t, "outside diameter", f.At(row.count, row.pitch).ExtTipMM/inch, row.inch, 1e-9, catalogue)
		}
	}
}

func TestInchSizes(t *testing.T) {
	flat, fillet := ansiFamily(30, "flat"), ansiFamily(30, "fillet")
	for _, row := range []struct {
		name      string
		got, want float64
	}{
		{"14T 12/24 pitch", flat.At(14, 12).PitchMM, 1.16667}, {"base", flat.At(14, 12).BaseMM, 1.01036},
		{"major", flat.At(14, 12).ExtTipMM, 1.25}, {"minor", flat.At(14, 12).ExtRootMM, 1.05417},
		{"tooth", flat.At(14, 12).ToothMM, 0.13090},
		{"23T 16/32 pitch", flat.At(23, 16).PitchMM, 1.4375}, {"base", flat.At(23, 16).BaseMM, 1.24491},
		{"major", flat.At(23, 16).ExtTipMM, 1.5}, {"minor", flat.At(23, 16).ExtRootMM, 1.35313},
		{"fillet minor", fillet.At(23, 16).ExtRootMM, 1.325}, {"fillet minor, other print", fillet.At(23, 16).ExtRootDeepMM, 1.3125},
		{"tooth", flat.At(23, 16).ToothMM, 0.09817},
		{"15T 16/32 major", flat.At(15, 16).ExtTipMM, 1.0}, {"minor", flat.At(15, 16).ExtRootMM, 0.85313},
	} {
		near(t, row.name, row.got/inch, row.want, 6e-6, apart)
	}
}

func TestMetricSizes(t *testing.T) {
	type diameters struct{ tip, root, hub float64 }
	for _, row := range []struct {
		module float64
		count  int
		pitch  float64
		want   [4]diameters // 30° flat, 30° fillet, 37.5°, 45°; hub 0: not given
	}{
		{1.25, 24, 30, [4]diameters{{31.25, 28.125, 31.875}, {31.25, 27.75, 32.25}, {31.125, 28.25, 31.75}, {31.0, 28.5, 31.5}}},
		{2, 20, 40, [4]diameters{{42, 37, 43}, {42, 36.4, 43.6}, {41.8, 37.2, 42.8}, {41.6, 37.6, 42.4}}},
		{2.5, 18, 45, [4]diameters{{47.5, 41.25, 0}, {47.5, 40.5, 0}, {47.25, 41.5, 0}, {47.0, 42.0, 0}}},
	} {
		for i, want := range row.want {
			s := Families[4+i].At(row.count, row.module)
			near(t, "pitch", s.PitchMM, row.pitch, 1e-9, apart)
			near(t, "external major", s.ExtTipMM, want.tip, 1e-9, apart)
			near(t, "external minor", s.ExtRootMM, want.root, 1e-9, apart)
			if want.hub > 0 {
				near(t, "internal major", s.IntRootMM, want.hub, 1e-9, apart)
			}
		}
	}
	near(t, "base of 1.25×24", Families[4].At(24, 1.25).BaseMM, 25.9808, 5e-5, apart)
	near(t, "base of 2×20", Families[4].At(20, 2).BaseMM, 34.6410, 5e-5, apart)
}

// broached is the one depth of root that the printed sheet gives, in modules.
const broached = 2.2

func TestReferenceDiameterSizes(t *testing.T) {
	for _, row := range []struct {
		r                                Reference
		d, shift, tip, hubTip, tooth     float64
		broached, hobbed, rolled, source any
	}{
		{Reference{6, 0.8, 6}, 4.8, 0.16, 5.84, 4.4, 1.441, 4.24, nil, nil, sheet},
		{Reference{20, 1.25, 14}, 17.5, 0.5625, 19.75, 17.5, 2.6130, 17.25, 17.125, 17.0, apart},
		{Reference{30, 1.25, 22}, 27.5, 0.5625, 29.75, 27.5, 2.6130, 27.25, 27.125, 27.0, apart},
		{Reference{30, 2, 14}, 28, -0.1, 29.6, 26, 3.0261, 25.6, 25.4, 25.2, apart},
		{Reference{35, 2, 16}, 32, 0.4, 34.6, 31, 3.6035, 30.6, 30.4, 30.2, apart},
		{Reference{45, 2, 21}, 42, 0.4, 44.6, 41, 3.6035, 40.6, 40.4, 40.2, apart},
		{Reference{50, 2, 24}, 48, -0.1, 49.6, 46, 3.0261, nil, nil, nil, apart},
		{Reference{17, 1.25, 12}, 15, 0.3125, 16.75, 14.5, 2.3243, nil, nil, nil, apart},
	} {
		s, err := row.r.Sizes()
		if err != nil {
			t.Fatal(err)
		}
		source := row.source.(string)
		near(t, row.r.Designation()+" pitch", s.PitchMM, row.d, 1e-9, source)
		near(t, row.r.Designation()+" shift", row.r.Shift(), row.shift, 1e-9, source)
		near(t, row.r.Designation()+" shaft tip", s.ExtTipMM, row.tip, 1e-9, source)
		near(t, row.r.Designation()+" hub tip", s.IntTipMM, row.hubTip, 1e-9, source)
		near(t, row.r.Designation()+" hub root", s.IntRootMM, row.r.ReferenceMM, 1e-9, source)
		near(t, row.r.Designation()+" tooth", s.ToothMM, row.tooth, 6e-4, source)
		for i, want := range []any{row.broached, row.hobbed, row.rolled} {
			if w, ok := want.(float64); ok {
				near(t, row.r.Designation()+" shaft root", row.r.below([]float64{broached, Hobbed, ColdRolled}[i]), w, 1e-9, source)
			}
		}
	}
	six := Reference{6, 0.8, 6}
	s, _ := six.Sizes()
	near(t, "sheet: base", s.BaseMM, 4.157, 5e-4, sheet)
	near(t, "sheet: tip addendum", (s.ExtTipMM-s.PitchMM)/2-six.Shift(), 0.36, 1e-9, sheet)
	near(t, "sheet: dedendum", (s.PitchMM-six.below(broached))/2+six.Shift(), 0.44, 1e-9, sheet)
	near(t, "sheet: clearance", (s.IntTipMM-six.below(broached))/2, 0.08, 1e-9, sheet)
}

func TestStraightTablesHold(t *testing.T) {
	for _, series := range [][]Straight{ISO14Light, ISO14Medium} {
		for _, s := range series {
			share := s.ToothMM * float64(s.Count) / (math.Pi * (s.MajorMM + s.MinorMM) / 2)
			if s.MajorMM <= s.MinorMM || share < 0.35 || share > 0.55 {
				t.Errorf("%d×%g×%g: teeth take %.2f of the way round", s.Count, s.MinorMM, s.MajorMM, share)
			}
		}
	}
	for _, p := range J499 {
		near(t, "d = D − 2h", p.Minor, 1-2*p.Height, 1e-12, "self-check of the standard's proportions")
	}
}

func TestBadSizesAreRefused(t *testing.T) {
	if _, err := (Reference{30, 2, 14}).Sizes(); err != nil {
		t.Fatalf("control: %v", err)
	}
	for _, bad := range []Reference{{0, 2, 14}, {30, 0, 14}, {30, 2, 0}, {30, math.NaN(), 14}, {math.Inf(1), 2, 14}} {
		if _, err := bad.Sizes(); err == nil {
			t.Errorf("%+v was taken", bad)
		}
	}
}
