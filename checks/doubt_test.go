package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

func width(f checks.Finding) float64 { return *f.High - *f.Low }

func way(n int) option             { return func(r *measure.Reading) { r.Way = n } }
func lay(s string) option          { return func(r *measure.Reading) { r.Lay = s } }
func value(t string) measure.Value { v, _ := measure.NumberValue(t); return v }

// One finder's zero is one cause: it cancels in the difference of two readings laid the same way
// and counts double when the finder was turned end for end between them. A zero of ±0.3
// rectangular then shows as ±0.6·0.9 at the 5 % and 95 % points.
func TestZeroCancelsAndDoubles(t *testing.T) {
	for _, c := range []struct {
		name   string
		second []option
		half   float64
	}{
		{"same way", []option{way(1)}, 0},
		{"turned", []option{way(2)}, 0.6 * 0.9},
	} {
		s := newBench(t, measure.NewLayout())
		s.inPlan()
		s.tool("hand", "0", "0", "0")
		s.b.Instruments[1].Zero = value("0.3")
		s.read("gearbox.slope", "1", measure.RideKerb, with("hand"), way(1))
		s.read("shaft.slope", "6", measure.RideKerb, append(c.second, with("hand"))...)
		f := find(t, s.run(), "joint.angle|front|ride/kerb")
		if got := width(f) / 2; math.Abs(got-c.half) > 1e-3 {
			t.Errorf("%s: ±%.4f, want ±%.4f", c.name, got, c.half)
		}
	}
}

func TestFinderOnTheFace(t *testing.T) {
	for _, c := range []struct{ shown, along string }{{"87.6", "2.4"}, {"-87.6", "-2.4"}} {
		angle := func(shown string, o ...option) float64 {
			s := newBench(t, measure.NewLayout())
			s.inPlan()
			s.read("gearbox.slope", shown, measure.RideKerb, append(o, with("exact"))...)
			s.read("shaft.slope", "6", measure.RideKerb, with("exact"))
			return number(t, find(t, s.run(), "joint.angle|front|ride/kerb").Value)
		}
		if got, want := angle(c.shown, lay("face")), angle(c.along); math.Abs(got-want) > 1e-9 {
			t.Errorf("%s on the face gives %g, want %g as %s along the part", c.shown, got, want, c.along)
		}
	}
}

// Repeats: two or three count as their mean within their range; four or more as Student's t with
// s/√n, here t(0.95, ν = 3) = 2.353 (any table of Student's t), never below the display step.
func TestRepeats(t *testing.T) {
	for _, c := range []struct {
		name   string
		values []string
		mean   float64
		half   float64
	}{
		{"one", []string{"6"}, 6, 0},
		{"two within 0.4", []string{"5.8", "6.2"}, 6, 0.2 * 0.9},
		{"three within 0.4", []string{"5.8", "6.2", "6.0"}, 6, 0.2 * 0.9},
		{"four", []string{"5.9", "6.1", "5.9", "6.1"}, 6, 2.3534 * 0.11547 / 2},
	} {
		s := newBench(t, measure.NewLayout())
		s.inPlan()
		s.read("gearbox.slope", "0", measure.RideKerb, with("exact"))
		for _, v := range c.values {
			s.read("shaft.slope", v, measure.RideKerb, with("exact"))
		}
		f := find(t, s.run(), "joint.angle|front|ride/kerb")
		if math.Abs(*f.Value-c.mean) > 1e-9 || math.Abs(width(f)/2-c.half) > 2e-3 {
			t.Errorf("%s: %.4f ± %.4f, want %.4f ± %.4f", c.name, *f.Value, width(f)/2, c.mean, c.half)
		}
	}
}

// What is stated counts within half its last digit: 17 within 0.5, 17.0 within 0.05.
func TestStatedCountsWithinHalfItsLastDigit(t *testing.T) {
	for token, half := range map[string]float64{"17": 0.5, "17.0": 0.05, "17.00": 0.005} {
		s := newBench(t, measure.NewLayout())
		s.inPlan()
		s.read("gearbox.slope", "0", measure.RideKerb, with("exact"))
		s.read("shaft.slope", token, measure.OffBench, basis(measure.Stated))
		f := find(t, s.run(), "joint.angle|front|ride/kerb")
		if got := width(f) / 2; math.Abs(got-0.9*half) > 1e-3*half {
			t.Errorf("%s stated: ±%g, want ±%g", token, got, 0.9*half)
		}
	}
}

func TestWhatNobodyReadIsTheWeakestInput(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.slopes(measure.RideKerb, "2", "6", "2")
	f := find(t, s.run(), "joint.residual||ride/kerb")
	if f.Weakest == nil || f.Weakest.Reading != nil || f.Weakest.Input == "" || !has(f.Notes, checks.MsgSideView) {
		t.Fatalf("weakest %+v, notes %v; want a plan angle or phase that was not read, and side view only", f.Weakest, f.Notes)
	}
	s.inPlan()
	f = find(t, s.run(), "joint.residual||ride/kerb")
	if has(f.Notes, checks.MsgSideView) || f.Weakest.Reading == nil {
		t.Errorf("after reading plan and phase: weakest %+v, notes %v", f.Weakest, f.Notes)
	}
}

func TestTheWeakestReadingIsTheCoarseOne(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.tool("fine", "0.01", "0.01", "0.01")
	s.tool("coarse", "1", "0.5", "0.3")
	s.read("gearbox.slope", "2", measure.RideKerb, with("fine"))
	coarse := s.read("shaft.slope", "6", measure.RideKerb, with("coarse"))
	s.read("pinion.slope", "2.5", measure.RideKerb, with("fine"))
	f := find(t, s.run(), "joint.angle|front|ride/kerb")
	if f.Weakest == nil || f.Weakest.Reading == nil || *f.Weakest.Reading != coarse {
		t.Errorf("weakest %+v, want the coarse reading of the shaft", f.Weakest)
	}
}

// A new reading leaves every finding that does not use it as it was, to the last bit.
func TestANewReadingLeavesTheOthersAlone(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.tool("hand", "0.1", "0.1", "0.1")
	s.slopes(measure.RideKerb, "2", "6", "2.5", with("hand"))
	before := s.run()
	s.slopes(measure.RideLaden, "2.2", "5", "2.5", with("hand"), setup(2))
	after := s.run()
	for _, f := range before {
		if f.State != measure.RideKerb || f.Value == nil {
			continue
		}
		g := find(t, after, f.Key())
		if *g.Value != *f.Value || *g.Low != *f.Low || *g.High != *f.High {
			t.Errorf("%s moved from %v…%v to %v…%v", f.Key(), *f.Low, *f.High, *g.Low, *g.High)
		}
	}
}

// What each input adds to the doubt is told largest first and is the whole of it, and the weakest is among it.
func TestSharesAreTheWholeDoubt(t *testing.T) {
	seen := 0
	for _, f := range checks.Run(invented(t, "demo.json"), nil).Findings {
		if f.Weakest == nil {
			continue
		}
		sum, last, named := 0.0, 1.0, false
		for _, s := range f.Shares {
			if s.Share > last {
				t.Errorf("%s: %s adds %g, more than the one before it, %g", f.Key(), s.Input, s.Share, last)
			}
			sum, last, named = sum+s.Share, s.Share, named || s.Input == f.Weakest.Input && s.Share == f.Weakest.Share
		}
		if math.Abs(sum-1) > 1e-9 || !named {
			t.Errorf("%s: shares add up to %g, weakest %v among them: %v", f.Key(), sum, f.Weakest, named)
		}
		seen++
	}
	if seen < 10 {
		t.Errorf("only %d findings have doubt", seen)
	}
}
