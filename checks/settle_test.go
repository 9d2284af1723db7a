package checks_test

import (
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// A ratio stated as 1 is good to half its last digit, ±0.5, and nobody can read it again.
func TestStatedValueThatDecidesIsToBeStatedFiner(t *testing.T) {
	for _, row := range []struct {
		gear    string
		verdict checks.Verdict
		advice  string
	}{{"1", checks.Unsure, checks.MsgStateFiner}, {"1.000", checks.Clear, ""}} {
		s := newBench(t, measure.NewLayout())
		s.read("shaft.length", "1200", measure.RideKerb)
		s.read("tube.od", "76.2", measure.OffBench)
		s.read("tube.wall", "2.10", measure.OffBench, basis(measure.Stated))
		s.read("engine.rpm_max", "5000", measure.OffBench, basis(measure.Stated))
		s.read("gear.highest", row.gear, measure.OffBench, basis(measure.Stated))
		if f := find(t, s.run(), "shaft.critical_speed||"); f.Verdict != row.verdict || f.Advice.Key != row.advice {
			t.Errorf("stated as %s: %s, %v", row.gear, f.Verdict, f.Advice)
		}
	}
}

// What the wheels hold is judged with a friction that nobody stated, and says so.
func TestGripTakenForGrantedIsSaid(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	for _, v := range [][2]string{{"engine.torque_max", "400"}, {"gear.lowest", "4.00"}, {"rear_axle.limit", "1100"}, {"axle.ratio", "4.10"},
		{"tyre.radius", "360"}, {"joint.torque_rating", "1200"}} {
		s.read(v[0], v[1], measure.OffBench, basis(measure.Stated))
	}
	if f := find(t, s.run(), "joint.torque||bench"); !has(f.Notes, checks.MsgGripTaken) {
		t.Errorf("notes %v", f.Notes)
	}
	s.read("tyre.friction", "0.90", measure.OffBench, basis(measure.Stated))
	if f := find(t, s.run(), "joint.torque||bench"); has(f.Notes, checks.MsgGripTaken) {
		t.Errorf("notes %v", f.Notes)
	}
}

// A gearbox that points straight ahead as far as anybody knows hardly moves the room above the shaft:
// reading its plan angle would settle nothing.
func TestWeakestInputHasAPartInTheDoubt(t *testing.T) {
	l := measure.NewLayout()
	l.Slip = "gearbox"
	s := onLeaves(t, l).without("gearbox.plan")
	s.wholeTravel()
	s.read("obstacle.gap", "75", measure.RideKerb)
	s.read("obstacle.station", "400", measure.RideKerb)
	s.read("obstacle.side", "1", measure.RideKerb)
	s.read("tube.od", "76", measure.OffBench)
	for _, f := range s.run() {
		if f.Weakest != nil && f.Weakest.Share < 1e-4 {
			t.Errorf("%s: weakest %s with %g of the doubt", f.Key(), f.Weakest.Input, f.Weakest.Share)
		}
	}
}
