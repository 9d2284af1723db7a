package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

func in(unit measure.Unit) option { return func(r *measure.Reading) { r.Unit = unit } }

// The same sizes read in inches, pounds and pound-feet say the same: 76.2 mm is 3 in, 1270 mm 50 in,
// 4.5359237 kg 10 lb, 1.3558179483314004 N·m 1 lbf·ft.
func TestUnitsChangeNothing(t *testing.T) {
	type read struct {
		point, metric, inch string
		unit                measure.Unit
	}
	rows := []read{
		{"shaft.length", "1270", "50", "in"}, {"tube.od", "76.2", "3", "in"}, {"tube.wall", "2.54", "0.1", "in"},
		{"shaft.mass", "9.0718474", "20", "lb"}, {"engine.torque_max", "271.16358966628008", "200", "lbf·ft"},
		{"joint.torque_rating", "1355.8179483314004", "1000", "lbf·ft"}, {"engine_gearbox.mass", "272.155422", "600", "lb"},
		{"engine_gearbox.x", "-254", "-10", "in"}, {"engine_gearbox.y", "25.4", "1", "in"}, {"mount_left.x", "0", "0", "in"},
		{"mount_left.y", "254", "10", "in"}, {"mount_right.x", "0", "0", "in"}, {"mount_right.y", "-254", "-10", "in"},
		{"mount_rear.x", "-762", "-30", "in"}, {"mount_rear.y", "0", "0", "in"}, {"mount_left.rating", "453.59237", "1000", "lb"},
		{"front_end.bolt_chord", "50.8", "2", "in"}, {"front_mate.bolt_circle", "71.842", "2.82842519685", "in"},
	}
	var lists [2][]checks.Finding
	for i := range lists {
		s := newBench(t, measure.NewLayout())
		for _, r := range rows {
			if i == 0 {
				s.read(r.point, r.metric, measure.RideKerb)
			} else {
				s.read(r.point, r.inch, measure.RideKerb, in(r.unit))
			}
		}
		s.plate("gear.lowest", "3.500", "engine.rpm_max", "3000", "gear.highest", "1.000")
		s.bare("front_end.bolts", "4", "front_mate.bolts", "4")
		lists[i] = s.run()
	}
	compared := 0
	for i, f := range lists[0] {
		g := lists[1][i]
		if f.Key() != g.Key() || f.Verdict != g.Verdict || (f.Value == nil) != (g.Value == nil) {
			t.Errorf("%s %q in mm, %s %q in inches", f.Key(), f.Verdict, g.Key(), g.Verdict)
			continue
		}
		if f.Value == nil {
			continue
		}
		compared++
		for _, n := range [][2]float64{{*f.Value, *g.Value}, {*f.Low, *g.Low}, {*f.High, *g.High}} {
			if math.Abs(n[0]-n[1]) > 1e-9*math.Abs(n[0])+1e-9 {
				t.Errorf("%s: %.12g in mm, %.12g in inches", f.Key(), n[0], n[1])
			}
		}
	}
	if compared < 10 {
		t.Errorf("only %d numbers were compared", compared)
	}
}
