package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// frontLine is an invented line of two shafts to a front axle on leaf springs: pinion, front shaft,
// centre bearing, rear shaft, gearbox. The FRONT shaft is the one that moves.
func frontLine(t testing.TB) *bench {
	l := measure.NewLayout()
	l.Shafts, l.Drives, l.FixedEye = 2, "front", "rear"
	s := newBench(t, l)
	s.tool("exact", "0", "0", "0")
	s.tape()
	for _, part := range [][2]string{{"pinion", "-2"}, {"front_shaft", "-4"}, {"shaft", "-3"}, {"gearbox", "-3"}} {
		s.read(part[0]+".slope", part[1], measure.RideKerb, with("exact"))
	}
	s.mm(measure.RideKerb, map[string]float64{"hub.height": 500, "front_shaft.length": 800, "shaft.length": 700,
		"spring.front_half": 600, "spring.rear_half": 600, "spring.eye_rise": 0})
	s.wholeTravel()
	return s
}

// Lengths and slopes of the shaft that stays say nothing of the axle's travel: what was not read waits.
func TestTwoShaftsToAFrontAxleAreNotSwungByTheWrongOne(t *testing.T) {
	s := frontLine(t)
	s.read("joint.angle_limit", "25", measure.OffBench, basis(measure.Stated))
	s.spline(100, 30, 35)
	list := s.run()
	for _, f := range list {
		if f.Predicted {
			t.Errorf("%s was predicted", f.Key())
		}
	}
	if f := find(t, list, "joint.most_angle|front|"); f.Verdict != checks.Waiting || len(f.Missing) != 4 {
		t.Errorf("most angle: %s, missing %v; want the slopes of both ends of the travel", f.Verdict, f.Missing)
	}
	if f := find(t, list, "slip.travel||"); f.Verdict != checks.Waiting || len(f.Missing) != 2 || f.Missing[0].Point != "slip.exposed" {
		t.Errorf("slip: %s, missing %v; want how far it is drawn out at both ends of the travel", f.Verdict, f.Missing)
	}
	s.mm(measure.Hanging, map[string]float64{"slip.exposed": 45})
	s.mm(measure.OnBump, map[string]float64{"slip.exposed": 22})
	for _, part := range [][2]string{{"pinion", "-1"}, {"front_shaft", "-9"}, {"shaft", "-3"}, {"gearbox", "-3"}} {
		s.read(part[0]+".slope", part[1], measure.Hanging, with("exact"))
	}
	s.mm(measure.RideLaden, map[string]float64{"hub.height": 560})
	list = s.run()
	if f := find(t, list, "joint.angle|front|ride/laden"); !f.Predicted || f.Value == nil || math.Abs(*f.Value-5) > 0.1 {
		t.Errorf("half way between two readings: %v, want 5 drawn through 2 and 8", f.Value)
	}
	if len(checks.Sweep(s.b).Rows) == 0 {
		t.Error("no sweep between two states that were read")
	}
	if f := find(t, list, "slip.travel||"); f.Value == nil || math.Abs(*f.Value-23) > 0.5 {
		t.Errorf("slip: %v, missing %v; want 45 − 22 mm as read", f.Value, f.Missing)
	}
}

// The room beside the front shaft is less half the FRONT shaft's tube: 90 − 100/2 mm.
func TestRoomBesideTheMovingFrontShaft(t *testing.T) {
	s := frontLine(t)
	s.mm(measure.RideKerb, map[string]float64{"obstacle.gap": 90, "obstacle.station": 300})
	s.read("obstacle.side", "3", measure.RideKerb)
	s.mm(measure.OffBench, map[string]float64{"tube.od": 50, "front_shaft.tube_od": 100})
	if f := find(t, s.run(), "shaft.clearance||"); f.Value == nil || math.Abs(*f.Value-40) > 1e-9 {
		t.Errorf("%v, missing %v; want 40", f.Value, f.Missing)
	}
}

// The front shaft is the one that the axle turns and draws out: 45 mm drawn out hanging, 30 at ride
// height, so it is 815 mm long there, and the other shaft stays as it was read.
func TestTheFrontShaftIsTheOneThatMoves(t *testing.T) {
	s := frontLine(t)
	s.spline(100, 30, 35)
	for _, part := range [][2]string{{"pinion", "-1"}, {"front_shaft", "-9"}, {"shaft", "-3"}, {"gearbox", "-3"}} {
		s.read(part[0]+".slope", part[1], measure.Hanging, with("exact"))
	}
	s.mm(measure.Hanging, map[string]float64{"slip.exposed": 45})
	for _, st := range checks.Look(s.b, nil).Stances() {
		if st.State != measure.Hanging {
			continue
		}
		if st.FrontMM == nil || math.Abs(*st.FrontMM-815) > 1e-9 || st.ShaftMM == nil || *st.ShaftMM != 700 {
			t.Errorf("hanging: front shaft %v, shaft %v; want 815 and 700", st.FrontMM, st.ShaftMM)
		}
		return
	}
	t.Error("no line hanging")
}

// A slope read 12 mm off the state's height is widened over the shaft that turns, the front one of
// 800 mm: atan(12/800) = 0.859°, worked apart from this code.
func TestAChangeOfHeightTurnsTheFrontShaft(t *testing.T) {
	s := frontLine(t)
	s.carry("front_shaft.slope", "512")
	for _, f := range s.run() {
		for _, n := range f.Notes {
			if n.Key == checks.MsgHeightWidened {
				if wide := n.Args[2].(float64); math.Abs(wide/n.Args[1].(float64)-0.859/12) > 1e-4 {
					t.Errorf("%v: want 0.0716° for each mm", n.Args)
				}
				return
			}
		}
	}
	t.Error("no height was widened")
}
