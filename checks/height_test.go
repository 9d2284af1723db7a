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

// A shaft can't stay further out over its whole travel than it stood when it was read: however the axle
// of which nothing but heights is known bows, no draw leaves more stroke than was left there.
func TestNoDrawLeavesMoreStrokeThanWasRead(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.tape()
	s.slopes(measure.RideKerb, "1", "0.5", "1", with("exact"))
	s.mm(measure.RideKerb, map[string]float64{"hub.height": 500, "shaft.length": 1200, "rear_joint.x": 270, "rear_joint.z": 0})
	s.wholeTravel()
	s.spline(100, 14, 35)
	list := s.run()
	if f := find(t, list, "slip.closing||"); *f.High > 14+1e-9 {
		t.Errorf("least drawn out %.2f … %.2f, and 14 was read", *f.Low, *f.High)
	}
}

// Likewise the room beside the shaft: read 90 mm away in height it may be that much less.
func TestRoomReadAtAnotherHeightIsWidened(t *testing.T) {
	for _, row := range []struct {
		height string
		want   float64
	}{{"500", 0}, {"590", 0.9 * 90}} {
		s := newBench(t, measure.NewLayout())
		s.tape()
		s.mm(measure.RideKerb, map[string]float64{"hub.height": 500, "obstacle.gap": 150, "obstacle.station": 400})
		s.read("obstacle.side", "3", measure.RideKerb)
		s.read("tube.od", "60", measure.OffBench, with("rule"))
		s.carry("obstacle.gap", row.height)
		f := find(t, s.run(), "shaft.clearance||")
		if got := *f.Value - *f.Low; math.Abs(got-row.want) > 0.5 {
			t.Errorf("at %s: %.2f less at worst, want %.2f (5 %% point of ± 90, worked apart from this code)", row.height, got, row.want)
		}
	}
}
