package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// A transfer box slows or hastens what stands behind it. The shaft that leads to the box turns with
// the gearbox, and from the road's side as fast as the box's input does.
// Worked apart from this code: 5000/1 rev/min, behind a box of 1.40 5000/1.40 = 3571.4; at 100 km/h on
// a radius of 306.74 mm with an axle of 3.73 a shaft turns 3225.6 rev/min (radius and speed: tyre
// table of checks/shaft), ahead of the box 1.40 times that; both times 1.1 for a run downhill.
func TestTransferBoxAndTheShaftThatLeadsToIt(t *testing.T) {
	for _, row := range []struct {
		drives       string
		engine, road float64
	}{{"front", 5000 / 1.4, 1.1 * 3225.6}, {"rear", 5000 / 1.4, 1.1 * 3225.6}, {"transfer", 5000, 1.1 * 3225.6 * 1.4}} {
		l := measure.NewLayout()
		l.Drives = row.drives
		stated := func(s *bench, numbers ...string) {
			for i := 0; i < len(numbers); i += 2 {
				s.read(numbers[i], numbers[i+1], measure.OffBench, basis(measure.Stated))
			}
		}
		s := newBench(t, l)
		s.read("shaft.length", "1300", measure.RideKerb)
		s.read("tube.od", "63.5", measure.OffBench)
		s.read("tube.wall", "3", measure.OffBench)
		stated(s, "transfer.high", "1.40")
		onRoad := newBench(t, l)
		onRoad.b.Readings = append(onRoad.b.Readings, s.b.Readings...)
		onRoad.n = s.n
		stated(s, "engine.rpm_max", "5000", "gear.highest", "1.00")
		stated(onRoad, "road.speed_max", "100", "axle.ratio", "3.73", "tyre.radius", "306.74")
		for b, want := range map[*bench]float64{s: row.engine, onRoad: row.road} {
			f := find(t, b.run(), "shaft.critical_speed||")
			if got := f.Limit.Value * 0.70; math.Abs(got-want) > 0.5 {
				t.Errorf("drives %s: %.1f rev/min, want %.1f", row.drives, got, want)
			}
			if b == s && (f.Verdict == checks.Clear) != (row.drives != "transfer") {
				t.Errorf("drives %s: %s", row.drives, f.Verdict)
			}
		}
	}
}
