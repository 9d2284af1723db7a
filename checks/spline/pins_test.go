package spline

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func din(r Reference, pin float64) Pins {
	s, _ := r.Sizes()
	return Pins{r.Count, s.PitchMM, 30, s.ToothMM, pin}
}

func TestSizesOverPins(t *testing.T) {
	inchOver := func(deg, pitch float64, count int, pin float64) Pins {
		return Pins{count, float64(count) / pitch * inch, deg, math.Pi / 2 / pitch * inch, pin * inch}
	}
	for _, row := range []struct {
		name            string
		p               Pins
		angle, over     float64 // angle 0: not given
		unit, tolerance float64
		source          string
	}{
		{"gear m 1 z 20 at 20°", Pins{20, 20, 20, math.Pi / 2, 1.7}, 24.1350, 22.2941, 1, 5e-5, "a gear maker's technical reference (from memory); worked apart from this code"},
		{"14T 12/24", inchOver(30, 12, 14, 0.160), 36.1819, 1.41177, inch, 5e-6, apart},
		{"23T 16/32, odd", inchOver(30, 16, 23, 0.120), 34.0943, 1.61980, inch, 5e-6, apart},
		{"ISO m 1.25 z 24", Pins{24, 30, 30, math.Pi / 2 * 1.25, 2.5}, 34.4251, 33.9970, 1, 5e-5, apart},
		{"20×1.25×14", din(Reference{20, 1.25, 14}, 2.5), 0, 22.3465, 1, 5e-5, apart},
		{"30×1.25×22", din(Reference{30, 1.25, 22}, 2.5), 0, 32.4451, 1, 5e-5, apart},
		{"30×2×14", din(Reference{30, 2, 14}, 4), 0, 34.1438, 1, 5e-5, apart},
		{"35×2×16", din(Reference{35, 2, 16}, 4), 0, 39.0003, 1, 5e-5, apart},
		{"45×2×21, odd", din(Reference{45, 2, 21}, 4), 0, 48.9383, 1, 5e-5, apart},
		{"50×2×24", din(Reference{50, 2, 24}, 4), 0, 54.2176, 1, 5e-5, apart},
		{"26T 24/48", inchOver(30, 24, 26, 0.080), 0, 1.20747, inch, 5e-6, apart},
		{"15T 16/32, odd", inchOver(30, 16, 15, 0.120), 35.8482, 1.11615, inch, 5e-6, apart},
		{"m 2 z 20", Pins{20, 40, 30, math.Pi, 4}, 35.1556, 46.3696, 1, 5e-5, apart},
		{"24T 16/32 at 30°", inchOver(30, 16, 24, 0.12), 0, 1.68595, inch, 5e-6, apart},
		{"the same at 37.5°: pins hardly see the angle", inchOver(37.5, 16, 24, 0.12), 0, 1.68681, inch, 5e-6, apart},
		{"the same at 45°", inchOver(45, 16, 24, 0.12), 0, 1.68999, inch, 5e-6, apart},
		{"24T 20/40", inchOver(30, 20, 24, 2.5/inch), 0, 34.430, 1, 5e-4, apart},
		{"32×1.25×24, its neighbour", din(Reference{32, 1.25, 24}, 2.5), 0, 34.540, 1, 5e-4, apart},
		{"13T 8/16", inchOver(30, 8, 13, 6/inch), 0, 50.015, 1, 5e-4, apart},
		{"45×3×13, its neighbour", din(Reference{45, 3, 13}, 6), 0, 50.264, 1, 5e-4, apart},
		{"13T 12/24", inchOver(30, 12, 13, 4/inch), 0, 33.343, 1, 5e-4, apart},
		{"30×2×13, its neighbour", din(Reference{30, 2, 13}, 4), 0, 33.509, 1, 5e-4, apart},
		{"28T 20/40", inchOver(30, 20, 28, 2.5/inch), 0, 39.521, 1, 5e-4, apart},
		{"37×1.25×28, its neighbour", din(Reference{37, 1.25, 28}, 2.5), 0, 39.561, 1, 5e-4, apart},
	} {
		over, angle, err := Over(row.p)
		if err != nil {
			t.Errorf("%s: %v", row.name, err)
			continue
		}
		near(t, row.name, over/row.unit, row.over, row.tolerance, row.source)
		if row.angle > 0 {
			near(t, row.name+", angle", angle, row.angle, 6e-5, row.source)
		}
	}
	near(t, "involute of 24.1350°", Inv(24.1350), 0.0268197, 5e-8, "a gear maker's technical reference (from memory)")
}

// Elements of Metric Gear Technology, Table 10-1: a tooth with profile shift. Its chord and the
// height to the chord follow from the thickness by plane geometry.
func TestShiftedToothOfAGear(t *testing.T) {
	const source = "Elements of Metric Gear Technology, Table 10-1"
	s := ShiftedTooth(10, 0.3*10, 20)
	near(t, "thickness", s, 17.8918, 5e-5, source)
	half := s / 120
	near(t, "half angle", half/degree, 8.54270, 5e-6, source)
	near(t, "chord", 120*math.Sin(half), 17.8256, 5e-5, source)
	near(t, "chordal addendum", 60*(1-math.Cos(half))+13.0, 13.6657, 5e-5, source)
}

// A pin laid into the gap by brute force: the circle on the gap's middle line that just touches the
// involute drawn point by point. This shares no formula with Over and Between.
func TestPinsAgainstCirclesLaidIn(t *testing.T) {
	const count, pitch = 24, 24.0 / 16 * inch
	base := pitch * math.Cos(30*degree) / 2
	width := math.Pi / 2 / 16 * inch
	laidIn := func(pin float64, external bool) float64 {
		half := width / pitch // half of the tooth or of the space, as an angle
		low, high := base, 1.5*base
		for range 60 {
			centre := (low + high) / 2
			gap := math.Inf(1)
			for roll := 0.0; roll < 1.2; roll += 1e-4 {
				r := base * math.Sqrt(1+roll*roll)
				turn := roll - math.Atan(roll)
				at := half + (math.Tan(30*degree) - 30*degree) - turn // from the middle of tooth or space
				if external {
					at = math.Pi/count - at // from the middle of the gap
				}
				x, y := r*math.Cos(at)-centre, r*math.Sin(at)
				gap = math.Min(gap, math.Sqrt(x*x+y*y))
			}
			// Further out the gap of an external spline widens, that of an internal one narrows.
			if (gap > pin/2) == external {
				high = centre
			} else {
				low = centre
			}
		}
		if external {
			return 2*low + pin
		}
		return 2*low - pin
	}
	p := Pins{count, pitch, 30, width, 0.120 * inch}
	over, _, err := Over(p)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "over pins", over, laidIn(p.PinMM, true), 2e-5, "circle laid into a drawn involute")
	p.PinMM = 0.108 * inch
	between, _, err := Between(p)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "between pins", between, laidIn(p.PinMM, false), 2e-5, "circle laid into a drawn involute")
}

func somePins(t *rapid.T) Pins {
	m := rapid.Float64Range(0.5, 6).Draw(t, "module")
	n := rapid.IntRange(8, 60).Draw(t, "count")
	return Pins{n, m * float64(n), rapid.SampledFrom([]float64{30, 37.5, 45}).Draw(t, "angle"),
		math.Pi / 2 * m * rapid.Float64Range(0.95, 1.05).Draw(t, "thickness"), m * rapid.Float64Range(1.75, 2.1).Draw(t, "pin")}
}

// flankOf is the way back: the tooth of an external spline (side 1) that measures mm over its pins, or
// the space of an internal one (−1) between them.
func (p Pins) flankOf(mm, side float64) float64 {
	centre := math.Acos(p.across()*p.baseMM()/(mm-side*p.PinMM)) / degree
	inv := Inv(centre) - Inv(p.PressureDeg) - side*p.PinMM/p.baseMM()
	if side > 0 {
		inv += math.Pi / float64(p.Count)
	}
	return inv * p.PitchMM
}

// What was measured over pins gives back the tooth that it was worked out from, and pins in inches
// give the same as pins in millimetres.
func TestPinsGiveBackTheTooth(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p := somePins(rt)
		over, angle, err := Over(p)
		if err != nil {
			rt.Fatal(err)
		}
		back := p.flankOf(over, 1)
		if math.Abs(back-p.FlankMM) > 1e-9*p.PitchMM {
			rt.Fatalf("%+v: %g over pins gives a tooth of %g", p, over, back)
		}
		thin := p
		thin.PinMM *= 0.7 // between few teeth only thin pins go in
		between, _, err := Between(thin)
		if err != nil {
			rt.Fatal(err)
		}
		space := thin.flankOf(between, -1)
		if math.Abs(space-p.FlankMM) > 1e-9*p.PitchMM {
			rt.Fatalf("%+v: %g between pins gives a space of %g", p, between, space)
		}
		q := p
		q.PitchMM, q.FlankMM, q.PinMM = p.PitchMM/inch, p.FlankMM/inch, p.PinMM/inch
		small, same, err := Over(q)
		if err != nil || math.Abs(small*inch-over) > 1e-9*over || math.Abs(same-angle) > 1e-9 {
			rt.Fatalf("%+v: %g mm, but %g in (%v)", p, over, small, err)
		}
	})
}

func TestThickerTeethMeasureMore(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p := somePins(rt)
		q := p
		q.FlankMM *= 1.01
		thin, _, _ := Over(p)
		thick, _, _ := Over(q)
		if thick <= thin {
			rt.Fatalf("%+v: %g, a thicker tooth %g", p, thin, thick)
		}
	})
}

func TestInvoluteBackAndForth(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		deg := rapid.Float64Range(0.5, 85).Draw(rt, "angle")
		back, err := InvAngle(Inv(deg))
		if err != nil || math.Abs(back-deg) > 1e-7 {
			rt.Fatalf("%g comes back as %g (%v)", deg, back, err)
		}
	})
	for _, bad := range []float64{-1e-9, 12.7, math.NaN(), math.Inf(1)} {
		if _, err := InvAngle(bad); err == nil {
			t.Errorf("involute %g has an angle", bad)
		}
	}
}

func TestPinsThatMeasureNothingAreRefused(t *testing.T) {
	good := Pins{24, 30, 30, math.Pi / 2 * 1.25, 2.5}
	if err := good.Sit(31.25, 28.125); err != nil {
		t.Fatalf("control: %v", err)
	}
	for name, pin := range map[string]float64{"slips to the root": 1.0, "rides on the tips": 5, "none": 0} {
		p := good
		p.PinMM = pin
		if err := p.Sit(31.25, 28.125); err == nil {
			t.Errorf("a pin of %g mm, %s, was taken", pin, name)
		}
	}
	for _, bad := range []Pins{{2, 30, 30, 2, 2.5}, {24, math.NaN(), 30, 2, 2.5}, {24, 30, 0, 2, 2.5}, {24, 30, 90, 2, 2.5}, {24, 30, 30, -2, 2.5}} {
		if _, _, err := Over(bad); err == nil {
			t.Errorf("%+v was taken", bad)
		}
	}
}
