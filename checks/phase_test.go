package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// Ends that match in side view but stand in twisted planes want their yokes turned; where they lie in
// one plane, or where turning gains next to nothing, no phase is named. Twist by the rule of W. Elbe's
// technical pages, section 4: the forks are offset by the angle between the planes; numbers by
// simulated crosses in space, worked apart from this code.
func TestBestPhaseIsNamedWhereItIsNotInLine(t *testing.T) {
	const source = "Elbe technical pages, section 4; simulated crosses in space, worked apart from this code"
	for _, c := range []struct {
		name          string
		slopes, plans [3]string
		phase         string
		best, least   float64 // NaN: none is named
		source        string
	}{
		{"Z in side view, W in plan", [3]string{"3", "7", "3"}, [3]string{"0", "3", "6"}, "0", 74, 0, source},
		{"the same, turned already", [3]string{"3", "7", "3"}, [3]string{"0", "3", "6"}, "74", math.NaN(), 0, source},
		{"the same, turned the wrong way", [3]string{"3", "7", "3"}, [3]string{"0", "3", "6"}, "-74", 74, 0, source},
		{"W in side view, Z in plan", [3]string{"3", "7", "11"}, [3]string{"0", "3", "0"}, "0", 73, 0.39, source},
		{"3 and 3 in side view", [3]string{"3", "6", "3"}, [3]string{"0", "2", "3"}, "0", 52, 1.728, source},
		{"one plane", [3]string{"3", "7", "3"}, [3]string{"0", "0", "0"}, "0", math.NaN(), 0, "common practice, no source: yokes in line"},
		{"one plane, yokes a tooth of 24 out", [3]string{"0", "3", "0"}, [3]string{"0", "0", "0"}, "15", 0, 0, "common practice, no source: yokes in line"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := newBench(t, measure.NewLayout())
			s.tool("exact", "0", "0", "0")
			s.slopes(measure.RideKerb, c.slopes[0], c.slopes[1], c.slopes[2], with("exact"))
			for i, p := range []string{"gearbox.plan", "shaft.plan", "pinion.plan"} {
				s.read(p, c.plans[i], measure.RideKerb, with("exact"))
			}
			s.read("shaft.phase", c.phase, measure.OffBench, with("exact"))
			f := find(t, s.run(), "joint.residual||ride/kerb")
			best, least := math.NaN(), 0.0
			for _, n := range f.Notes {
				if n.Key == checks.MsgBestPhase {
					best, least = n.Args[1].(float64), n.Args[2].(float64)
				}
			}
			if math.IsNaN(best) != math.IsNaN(c.best) || math.Abs(best-c.best) > 0.5 {
				t.Errorf("best phase %g°, want %g° (%s)", best, c.best, c.source)
			}
			// Whole degrees leave √(β·β·2·sin ½°) at most of a joint of 5°: 0.7°.
			if !math.IsNaN(c.best) && (least < c.least-0.005 || least > c.least+0.7) {
				t.Errorf("leaves %g°, want %g° (%s)", least, c.least, c.source)
			}
		})
	}
}
