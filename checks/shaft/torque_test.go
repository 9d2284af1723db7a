package shaft

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const guide = "formula: driveline installation guide J3311-1-DSSP (2008) p. 2 (read); numbers " + apart

func TestTorqueInTheLowestGear(t *testing.T) {
	for _, row := range []struct {
		name string
		g    LowGear
		want float64
		from string
	}{
		{"400 N·m gross, 3.5, manual", LowGear{400, 0.95, 3.5, 0.85, 1, 1, 1}, 1130.5, guide},
		{"nothing lost", LowGear{400, 1, 3.5, 1, 1, 1, 1}, 1400, "product by hand"},
		{"converter 2, automatic, low range 2.5", LowGear{300, 0.95, 2.8, 0.80, 2, 2.5, 0.95}, 3032.4, guide},
	} {
		if got, err := LowGearTorque(row.g); err != nil || math.Abs(got-row.want) > 0.05 {
			t.Errorf("%s: got %.2f N·m (%v), want %.2f (%s)", row.name, got, err, row.want, row.from)
		}
	}
}

func TestTorqueAtWhichTheWheelsSlip(t *testing.T) {
	const pound, footPound, g = 0.45359237, 1.3558179483314004, 9.80665
	for _, row := range []struct {
		name string
		g    Grip
		want float64
	}{
		{"2400 lb, 15 in, 3.73: 601.1 lbf·ft", Grip{2400 * pound, 0.71, 15 * 25.4, 3.73, 0.95, g}, 601.1 * footPound},
		{"3000 lb, 14.5 in, 4.10: 660.8 lbf·ft", Grip{3000 * pound, 0.71, 14.5 * 25.4, 4.10, 0.95, g}, 660.8 * footPound},
		{"1100 kg, 0.36 m, 4.1", Grip{1100, 0.71, 360, 4.1, 0.95, g}, 707.9},
		{"the same, nothing lost in the axle", Grip{1100, 0.71, 360, 4.1, 1, g}, 672.5},
	} {
		if got, err := SlipTorque(row.g); err != nil || math.Abs(got-row.want) > 2e-4*row.want {
			t.Errorf("%s: got %.2f N·m (%v), want %.2f (%s)", row.name, got, err, row.want, guide)
		}
	}
}

func TestGripGrowsWithTheLoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := Grip{rapid.Float64Range(300, 5000).Draw(t, "kg"), rapid.Float64Range(0.3, 1.2).Draw(t, "friction"),
			rapid.Float64Range(250, 500).Draw(t, "radius"), rapid.Float64Range(2, 8).Draw(t, "ratio"), 0.95, 9.80665}
		a, _ := SlipTorque(g)
		g.AxleKg *= 2
		b, _ := SlipTorque(g)
		g.AxleRatio *= 2
		c, _ := SlipTorque(g)
		if math.Abs(b-2*a) > 1e-9*b || math.Abs(c-a) > 1e-9*a {
			t.Errorf("%g, twice the load %g, with twice the ratio %g", a, b, c)
		}
	})
}

func TestPermissibleUnbalance(t *testing.T) {
	for _, row := range []struct {
		name string
		r    Rotor
		want float64
		from string
	}{
		{"10 kg, 4000 rev/min, G16", Rotor{10, 4000, 16}, 381.97, "9549.3·G·m/n, ISO 21940-11 (from memory), " + apart},
		{"12 kg, 3225.6 rev/min, G40", Rotor{12, 3225.6, 40}, 1421.0, "9549.3·G·m/n, ISO 21940-11 (from memory), " + apart},
		{"1 kg at 1000 rad/s, G1: an offset of 1 µm", Rotor{1, 30000 / math.Pi, 1}, 1, "meaning of the grade: e·ω = G"},
	} {
		if got, err := Unbalance(row.r); err != nil || math.Abs(got-row.want) > 1e-4*row.want {
			t.Errorf("%s: got %.3f g·mm (%v), want %.3f (%s)", row.name, got, err, row.want, row.from)
		}
	}
	if _, err := Unbalance(Rotor{0, 4000, 16}); err == nil {
		t.Error("a shaft without mass has a permissible unbalance")
	}
}

func TestSeriesOfTubes(t *testing.T) {
	for i, s := range Series {
		if s.WallMM*4 > s.OuterMM || s.WallMM < 1 {
			t.Errorf("%+v is no tube", s)
		}
		if i > 0 && (s.OuterMM < Series[i-1].OuterMM || s.OuterMM == Series[i-1].OuterMM && s.WallMM <= Series[i-1].WallMM) {
			t.Errorf("%+v stands behind %+v", s, Series[i-1])
		}
	}
	// 3 in × 0.083 in (14 gauge) and 70 × 2 are usual sizes of both worlds (from memory).
	found := 0
	for _, s := range Series {
		if math.Abs(s.OuterMM-76.2) < 1e-9 && math.Abs(s.WallMM-2.1082) < 1e-9 || s == (Size{70, 2, SeriesMetric}) {
			found++
		}
	}
	if found != 2 {
		t.Errorf("%d of 2 usual sizes found", found)
	}
}
