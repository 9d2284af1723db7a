package draw

import (
	"math"
	"testing"

	"yokebook/checks/spline"
)

// Half a circular pitch at the pitch circle, whatever the pressure angle.
// Source: ANSI B92.1, side fit: basic tooth thickness π/2 modules, as checks/spline cites it; the
// chord under the arc worked apart from this code.
func TestAToothIsHalfAPitchThickAtThePitchCircle(t *testing.T) {
	for _, family := range spline.Families {
		const count, pitch = 24, 1.0
		z := family.At(count, pitch)
		c := spline.Candidate{Standard: family.Standard, Root: family.Root, PressureDeg: family.PressureDeg, ModuleMM: z.ModuleMM,
			TipMM: z.ExtTipMM, RootMM: z.ExtRootMM}
		if got := toothOf(c, count).half(z.PitchMM/2) * z.PitchMM; math.Abs(got-z.ToothMM) > 1e-9 {
			t.Errorf("%s %g°: tooth of %.6f mm, want %.6f", family.Standard, family.PressureDeg, got, z.ToothMM)
		}
		c.TipMM, c.RootMM = z.IntTipMM, z.IntRootMM
		if got := toothOf(c, count).half(z.PitchMM/2) * z.PitchMM; math.Abs(got-z.SpaceMM) > 1e-9 {
			t.Errorf("%s %g°: space of %.6f mm, want %.6f", family.Standard, family.PressureDeg, got, z.SpaceMM)
		}
	}
}

func TestStraightFlanksAreParallel(t *testing.T) {
	f := toothOf(spline.Candidate{WidthMM: 6, TipMM: 26, RootMM: 23}, 6)
	for _, r := range []float64{11.5, 12, 13} {
		if wide := 2 * r * math.Sin(f.half(r)); math.Abs(wide-6) > 1e-9 {
			t.Errorf("%.3f mm wide at %.1f, want 6", wide, r)
		}
	}
}

func TestCandidatesAreLaidOverTheReadings(t *testing.T) {
	s, _ := sceneOf(t, buildOf(t, "gearbox-slip"))
	d := s.View(SplinesView, nil)
	forms, read := 0, 0
	for _, shape := range d.Shapes {
		switch shape.Style {
		case Predicted, Second, Third:
			forms++
		case Body:
			read++
			if shape.Name == "major of slip_yoke" && math.Abs(2*shape.Arc.Radius-30.1) > 1e-9 {
				t.Errorf("major of %.3f mm, 30.1 read", 2*shape.Arc.Radius)
			}
		}
	}
	if forms < 2 || read < 2 || !said(d, "24/48") {
		t.Errorf("%d forms over %d diameters read: %v", forms, read, d.Labels)
	}
}
