package spline

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// caliper is a part read with a caliper good to 0.05 mm; tips may be 0.3 mm short.
func caliper(external bool, count int, major, minor float64) Seen {
	return Seen{External: external, Count: count, MajorMM: major, MinorMM: minor,
		MajorOff: 0.05, MinorOff: 0.05, OverOff: 0.05, MadeUnder: 0.3}
}

func name(c Candidate) string {
	return fmt.Sprintf("%s %s %g %s", c.Standard, c.Designation, c.PressureDeg, c.Root)
}

func names(list []Candidate) []string {
	var all []string
	for _, c := range list {
		all = append(all, name(c))
	}
	return all
}

// Neighbours that count and tip leave open; the sizes over pins that tell them apart are rows of the
// test of pins. Worked apart from this code from the standards' formulas.
func TestNeighboursAreBothNamed(t *testing.T) {
	for _, row := range []struct {
		count      int
		tip        float64
		one, other string
	}{
		{24, 31.72, "ANSI B92.1 20/40, 24 T 30 flat", "DIN 5480 32×1.25×24 30 "},
		{13, 44.2, "ANSI B92.1 8/16, 13 T 30 flat", "DIN 5480 45×3×13 30 "},
		{13, 29.5, "ANSI B92.1 12/24, 13 T 30 flat", "DIN 5480 30×2×13 30 "},
		{28, 36.75, "ANSI B92.1 20/40, 28 T 30 flat", "DIN 5480 37×1.25×28 30 "},
		{14, 29.55, "ISO 4156 m 2, 14 T 45 fillet", "DIN 5480 30×2×14 30 "},
		{14, 37.45, "ISO 4156 m 2.5, 14 T 30 flat", "DIN 5480 38×2.5×14 30 "},
		{23, 29.7, "ISO 4156 m 1.25, 23 T 45 fillet", "DIN 5480 30×1.25×23 30 "},
	} {
		s := caliper(true, row.count, row.tip, 0)
		list, err := Identify(s)
		if err != nil {
			t.Fatal(err)
		}
		all := names(list)
		if !slices.Contains(all, row.one) || !slices.Contains(all, row.other) {
			t.Errorf("%d teeth over %g: %q, want both %q and %q", row.count, row.tip, all, row.one, row.other)
		}
		if settle := Settling(s, list); !settle.Over && !settle.Flank && !settle.Root {
			t.Errorf("%d teeth over %g: nothing would settle it", row.count, row.tip)
		}
	}
}

// The four inch families share one tip diameter; only roots or flanks differ.
func TestInchFamiliesNeedTheFlank(t *testing.T) {
	s := caliper(true, 23, 38.05, 0)
	list, err := Identify(s)
	if err != nil {
		t.Fatal(err)
	}
	families := 0
	for _, c := range list {
		if c.Standard == "ANSI B92.1" && c.Designation == "16/32, 23 T" {
			families++
		}
	}
	if settle := Settling(s, list); families != 4 || !settle.Flank {
		t.Errorf("%d families of 16/32, settle %+v; want 4 and the flank", families, settle)
	}
	s.FlankDeg, s.HasFlank = 45, true
	list, _ = Identify(s)
	for _, c := range list {
		if c.PressureDeg != 45 {
			t.Errorf("flank 45° read, but %s is named", name(c))
		}
	}
}

func TestPinsSettleIt(t *testing.T) {
	s := caliper(true, 13, 44.2, 0)
	s.PinMM, s.OverMM = 6, 50.26
	list, err := Identify(s)
	if err != nil {
		t.Fatal(err)
	}
	all := names(list)
	if !slices.Contains(all, "DIN 5480 45×3×13 30 ") || slices.Contains(all, "ANSI B92.1 8/16, 13 T 30 flat") {
		t.Errorf("50.26 over pins of 6: %q; want the DIN size without the inch size", all)
	}
}

// Pins that rest on the roots read the roots: what they show over them rules nothing out.
func TestPinsThatTouchNoFlankRuleNothingOut(t *testing.T) {
	s := caliper(true, 13, 44.2, 0)
	s.PinMM, s.OverMM = 2, 42
	list, err := Identify(s)
	if err != nil {
		t.Fatal(err)
	}
	if all := names(list); !slices.Contains(all, "DIN 5480 45×3×13 30 ") || !slices.Contains(all, "ANSI B92.1 8/16, 13 T 30 flat") {
		t.Errorf("thin pins leave only %q", all)
	}
}

// A tooth may be cut thin, never thick: over pins a shaft reads under nominal, a hub over it.
func TestPinsReadTowardLooserOnly(t *testing.T) {
	z := ansiFamily(30, "flat").At(14, 12)
	over, _, _ := Over(Pins{14, z.PitchMM, 30, z.ToothMM, 4.1})
	between, _, _ := Between(Pins{14, z.PitchMM, 30, z.SpaceMM, 3.6})
	for off, want := range map[float64]bool{-0.15: true, 0.15: false} {
		shaft, hub := caliper(true, 14, z.ExtTipMM, 0), caliper(false, 14, 0, z.IntTipMM)
		shaft.PinMM, shaft.OverMM = 4.1, over+off
		hub.PinMM, hub.OverMM = 3.6, between-off
		for _, s := range []Seen{shaft, hub} {
			list, err := Identify(s)
			if err != nil {
				t.Fatal(err)
			}
			if got := slices.Contains(names(list), "ANSI B92.1 12/24, 14 T 30 flat"); got != want {
				t.Errorf("external %v, %+.2f toward thicker teeth: named %v, want %v", s.External, off, got, want)
			}
		}
	}
}

func TestStraightSplines(t *testing.T) {
	s := caliper(true, 6, 29.65, 25.97)
	s.HasFlank = true
	list, err := Identify(s)
	if err != nil {
		t.Fatal(err)
	}
	if all := names(list); !slices.Contains(all, "ISO 14 6×26×30 0 ") {
		t.Errorf("6 splines, 29.65 and 25.97: %q", all)
	}
	hub := caliper(false, 6, 25.4, 20.35)
	hub.HasFlank = true
	list, _ = Identify(hub)
	if all := names(list); !slices.Contains(all, "SAE J499 6 T, 1 in, fit C 0 ") {
		t.Errorf("6 splines, a hole of 25.4 and 20.35: %q", all)
	}
}

// N 13, Do 44.45, teeth of 30°: 44.39 rocked, 44.13 at rest; worked apart from this code.
func TestOddCountUnderACaliper(t *testing.T) {
	rest, rocked := OddTip(13, 44.45, TipLand(13))
	near(t, "at rest", rest, 44.13, 6e-3, apart)
	near(t, "rocked", rocked, 44.39, 6e-3, apart)
	if a, b := OddTip(14, 40, TipLand(14)); a != 40 || b != 40 {
		t.Errorf("even count: %g and %g, want the tip circle", a, b)
	}
	if rest, rocked := OddTip(3, 40, 5); rest > 40 || rocked > 40 {
		t.Errorf("teeth wider than their gaps read %g and %g, more than their circle", rest, rocked)
	}
}

// A part made to a standard, a little short at the tips and read within the caliper's doubt, always
// has that standard among its candidates; and the same spline with a tooth more or less never.
func TestWhatWasMadeIsAmongTheCandidates(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		f := rapid.SampledFrom(Families).Draw(rt, "family")
		pitch := rapid.SampledFrom(f.Pitches).Draw(rt, "pitch")
		count := rapid.IntRange(8, 47).Draw(rt, "count")
		z := f.At(count, pitch)
		short := rapid.Float64Range(0, 0.25).Draw(rt, "short")
		off := rapid.Float64Range(-0.04, 0.04).Draw(rt, "caliper")
		s := caliper(true, count, z.ExtTipMM-short+off, z.ExtRootMM+off)
		if rapid.Bool().Draw(rt, "hub") {
			s = caliper(false, count, z.IntRootMM+off, z.IntTipMM+short+off)
		}
		want := func(s Seen) bool {
			list, err := Identify(s)
			if err != nil {
				rt.Fatal(err)
			}
			return slices.ContainsFunc(list, func(c Candidate) bool {
				return c.Standard == f.Standard && c.PressureDeg == f.PressureDeg && c.Root == f.Root && c.ModuleMM == z.ModuleMM
			})
		}
		if !want(s) {
			rt.Fatalf("%s %g: not named for %+v", f.Standard, pitch, s)
		}
		s.Count++
		if z.ModuleMM > 1.3 && want(s) {
			rt.Fatalf("%s %g: named with a tooth too many", f.Standard, pitch)
		}
	})
}

func TestOrderIsNearestFirstAndNumbersAreNumbers(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := caliper(rapid.Bool().Draw(rt, "external"), rapid.IntRange(3, 70).Draw(rt, "count"),
			rapid.Float64Range(0, 120).Draw(rt, "major"), rapid.Float64Range(0, 120).Draw(rt, "minor"))
		s.PinMM, s.OverMM = rapid.Float64Range(0, 9).Draw(rt, "pin"), rapid.Float64Range(0, 130).Draw(rt, "over")
		list, err := Identify(s)
		if err != nil && s.MajorMM+s.MinorMM > 0 {
			rt.Fatal(err)
		}
		for i, c := range list {
			if i > 0 && c.score < list[i-1].score || math.IsNaN(c.score) || c.TipMM <= 0 || c.RootMM <= 0 {
				rt.Fatalf("%+v", c)
			}
		}
	})
}

func TestSizesBeyondAllTeethEnd(t *testing.T) {
	for _, size := range []float64{1e-300, 1e16, 1e300} {
		if list, err := Identify(caliper(true, 14, size, 0)); err != nil || len(list) > 0 {
			t.Errorf("%g mm: %v, %v", size, names(list), err)
		}
	}
}

func TestIdentifyingNothingIsRefused(t *testing.T) {
	for _, bad := range []Seen{caliper(true, 0, 30, 0), caliper(true, 14, 0, 0), caliper(true, 14, math.NaN(), 0), caliper(true, 14, -3, 0)} {
		if _, err := Identify(bad); err == nil {
			t.Errorf("%+v was named", bad)
		}
	}
}
