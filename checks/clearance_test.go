package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

func tag(name string) option { return func(r *measure.Reading) { r.Tag = name } }

// travelled is an invented line read hanging, at ride height and on the bump stops: the shaft's slope
// against a level gearbox goes from 12 over 6 to 1 degrees.
func travelled(t testing.TB, l measure.Layout) *bench {
	s := newBench(t, l)
	s.inPlan()
	for _, at := range []struct {
		state measure.State
		slope string
		setup int
	}{{measure.Hanging, "12.0", 1}, {measure.RideKerb, "6.0", 2}, {measure.OnBump, "1.0", 3}} {
		s.slopes(at.state, "0.0", at.slope, "0.0", with("exact"), setup(at.setup))
	}
	s.bare("tube.od", "80.00")
	return s
}

// obstacle reads one at ride height: 1 above, 2 below, 3 beside.
func (s *bench) obstacle(name, gap, station, side string) {
	s.read("obstacle.gap", gap, measure.RideKerb, tag(name), setup(2))
	s.read("obstacle.station", station, measure.RideKerb, tag(name), setup(2))
	s.read("obstacle.side", side, measure.RideKerb, tag(name), setup(2))
}

// The shaft turns about its front joint, so 800 mm behind it the line rises to bump by
// 800·(sin 6° − sin 1°) = 69.66 mm and sinks to droop by 800·(sin 12° − sin 6°) = 82.71 mm (worked
// apart from this code). Gap − 40 − rise is what is left.
func TestRoomOverTheTravel(t *testing.T) {
	for _, c := range []struct {
		name, gap, side string
		left            float64
		nearest         string
		want            checks.Verdict
	}{
		{"cross member above", "150", "1", 150 - 40 - 69.66, "bump/laden", checks.Clear},
		{"exhaust below", "165", "2", 165 - 40 - 82.71, "droop/none", checks.Clear},
		{"cross member above, near", "130", "1", 130 - 40 - 69.66, "bump/laden", checks.Out},
		{"at the limit", "145", "1", 145 - 40 - 69.66, "bump/laden", checks.Unsure},
		{"frame beside", "90", "3", 50, "ride/kerb", checks.Clear},
	} {
		s := travelled(t, measure.NewLayout())
		s.obstacle(c.name, c.gap, "800", c.side)
		f := s.says("shaft.clearance|"+c.name+"|", c.want)
		if math.Abs(*f.Value-c.left) > 0.01 || f.Limit.Value != 35 {
			t.Errorf("%s: %.2f mm left against %g, want %.2f against 25 and 10 for the engine", c.name, *f.Value, f.Limit.Value, c.left)
		}
		for _, m := range f.Notes {
			if m.Key == checks.MsgNearestState && c.side != "3" && m.Args[0] != c.nearest {
				t.Errorf("%s comes nearest at %v, want %s", c.name, m.Args[0], c.nearest)
			}
		}
	}
}

// A front axle's shaft turns about its rear joint, at the gearbox.
func TestRoomOnAFrontAxle(t *testing.T) {
	l := measure.NewLayout()
	l.Drives = "front"
	s := newBench(t, l)
	s.inPlan()
	for i, at := range []struct {
		state measure.State
		slope string
	}{{measure.Hanging, "-12.0"}, {measure.RideKerb, "-6.0"}, {measure.OnBump, "-1.0"}} {
		s.slopes(at.state, "0.0", at.slope, "0.0", with("exact"), setup(i+1))
	}
	s.bare("tube.od", "80.00")
	s.read("shaft.length", "1000", measure.RideKerb, setup(2))
	s.obstacle("sump", "150", "200", "1")
	f := s.says("shaft.clearance|sump|", checks.Clear)
	if want := 110 - 69.66; math.Abs(*f.Value-want) > 0.01 {
		t.Errorf("%.2f mm left, want %.2f: 800 mm ahead of the rear joint the line rises by 69.66", *f.Value, want)
	}
}

func TestRoomWaitsForTheWholeTravelUnlessItIsOut(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.slopes(measure.RideKerb, "0.0", "6.0", "0.0", with("exact"), setup(2))
	s.bare("tube.od", "80.00")
	s.obstacle("tank", "150", "800", "1")
	waitsFor(t, s.says("shaft.clearance|tank|", checks.Waiting), "obstacle.gap")
	s.obstacle("brake pipe", "60", "800", "1")
	s.says("shaft.clearance|brake pipe|", checks.Out)
	s.read("obstacle.gap", "90", measure.OnBump, tag("tank"), setup(3))
	s.read("obstacle.gap", "200", measure.Hanging, tag("tank"), setup(4))
	f := s.says("shaft.clearance|tank|", checks.Clear)
	if *f.Value != 50 {
		t.Errorf("read on the bump stops: %.2f mm left, want 90 − 40", *f.Value)
	}
	waitsFor(t, s.without("tube.od").says("shaft.clearance|tank|", checks.Waiting), "tube.od")
	waitsFor(t, s.without("obstacle.side").says("shaft.clearance|tank|", checks.Waiting), "obstacle.side")
}

// Of two shafts the front one stays with the body: what stands beside it keeps its room.
func TestRoomBesideTheShaftThatStays(t *testing.T) {
	s := newBench(t, twoPiece())
	s.bare("tube.od", "80.00", "front_shaft.tube_od", "60.00")
	s.under("front_shaft.length", "900")
	s.obstacle("gearbox cross member", "70", "500", "1")
	f := s.says("shaft.clearance|gearbox cross member|", checks.Clear)
	if *f.Value != 40 {
		t.Errorf("%.2f mm left, want 70 − 30", *f.Value)
	}
}
