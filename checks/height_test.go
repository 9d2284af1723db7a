package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// carry sets the height that the readings of a point were taken at.
func (s *bench) carry(point, mm string) {
	for i := range s.b.Readings {
		if s.b.Readings[i].Point == point {
			height(mm)(&s.b.Readings[i])
		}
	}
}

// How far the slip is drawn out changes with the height that it was read at: read 90 mm lower than the
// state stands it is no longer good to the tenth, and the readings' own finding names it.
func TestSlipReadAtAnotherHeightIsWidenedAndNamed(t *testing.T) {
	for _, row := range []struct {
		height string
		same   bool
	}{{"500", true}, {"504", true}, {"590", false}} {
		s := onLeaves(t, measure.NewLayout())
		s.wholeTravel()
		s.spline(100, 30, 35)
		s.carry("slip.exposed", row.height)
		list := s.run()
		f, state := find(t, list, "slip.closing||"), find(t, list, "reading.state||ride/kerb")
		wide := *f.High - *f.Low
		if row.same != (wide < 0.1) || row.same != (f.Verdict == checks.Clear) || row.same != (state.Verdict == checks.Clear) {
			t.Errorf("at %s: ± %.2f, %s; readings %s %v", row.height, wide/2, f.Verdict, state.Verdict, state.Advice)
		}
	}
}

// The gap over a bump stop closes as the height does: 100 mm at 540 is 60 at 500, and with a rubber of
// 30 mm pressed by two thirds the stop is met for good at 500 − 60 − 20 = 420 (worked apart from this code).
func TestBumpGapReadAtAnotherHeightIsCarried(t *testing.T) {
	s := onLeaves(t, measure.NewLayout())
	s.mm(measure.Hanging, map[string]float64{"hub.height": 620})
	s.mm(measure.RideKerb, map[string]float64{"bump.gap": 100})
	s.mm(measure.OffBench, map[string]float64{"bump.rubber": 30})
	s.carry("bump.gap", "540")
	s.spline(100, 30, 35)
	got := math.NaN()
	for _, n := range find(t, s.run(), "slip.travel||").Notes {
		if n.Key == checks.MsgSlipExtremes {
			got = n.Args[0].(float64)
		}
	}
	if math.Abs(got-420) > 0.1 {
		t.Errorf("full bump at %.2f, want 420", got)
	}
}
