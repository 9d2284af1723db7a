package shaft

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const hibbeler = "question: Hibbeler, Mechanics of Materials, SI 10th ed., Ex. 5.1 (read); answer " + apart

func TestShearOfATube(t *testing.T) {
	for _, row := range []struct {
		name        string
		outer, wall float64
		nm, want    float64
		tol         float64
		from        string
	}{
		{"tube ro 100, ri 75", 200, 25, 80530, 75, 2e-4, hibbeler},
		{"solid ro 100", 200, 100, 117800, 75, 2e-4, hibbeler},
		{"D 400, d 300", 400, 50, 300000, 34.92, 2e-4, "question on a public problem page (read); " + apart},
		{"Ø2 in, 20 000 lbf·in", 50.8, 25.4, 20000 * 0.1129848290276167, 12732 * 0.006894757293168361, 1e-4, "question on a public problem page (read); " + apart},
		{"150/120 at 29.343 kN·m", 150, 15, 29343, 75, 1e-4, "question on a public problem page (read); " + apart},
		{"76.2×2.108, 2000 N·m", 76.2, 2.108, 2000, 113.07, 1e-4, apart},
		{"63.5×3.05, 1500 N·m", 63.5, 3.05, 1500, 89.77, 1e-4, apart},
		{"76.2×2.108, 3000 N·m", 76.2, 2.108, 3000, 169.60, 1e-4, apart},
	} {
		got, err := Shear(Tube{1200, row.outer, row.wall}, row.nm)
		if err != nil || math.Abs(got-row.want) > row.tol*row.want {
			t.Errorf("%s: got %.3f MPa (%v), want %.3f (%s)", row.name, got, err, row.want, row.from)
		}
	}
}

func TestTwistOfATube(t *testing.T) {
	for _, row := range []struct {
		name string
		tube Tube
		g    float64
		nm   float64
		want float64
		from string
	}{
		{"solid Ø30, 0.4 m", Tube{400, 30, 15}, 77, 250, 0.93572, "course notes on torsion, worked example SP1 (read)"},
		{"D 400, d 300, 2 m", Tube{2000, 400, 50}, 80, 300000, 0.25012, "question on a public problem page (read); " + apart},
		{"Ø2 in, 72 in, G 12e6 psi", Tube{72 * 25.4, 50.8, 25.4}, 12e6 * 6.894757293168361e-6, 20000 * 0.1129848290276167, 0.07639 * 180 / math.Pi,
			"question on a public problem page (read); " + apart},
		{"76.2×2.108, 1.2 m", Tube{1200, 76.2, 2.108}, 79.3, 2000, 2.573, apart},
		{"63.5×3.05, 1.2 m", Tube{1200, 63.5, 3.05}, 79.3, 1500, 2.452, apart},
		{"76.2×2.108, 3000 N·m", Tube{1200, 76.2, 2.108}, 79.3, 3000, 3.859, apart},
	} {
		got, err := Twist(row.tube, Material{ShearGPa: row.g}, row.nm)
		if err != nil || math.Abs(got-row.want) > 3e-4*row.want {
			t.Errorf("%s: got %.5f° (%v), want %.5f (%s)", row.name, got, err, row.want, row.from)
		}
	}
}

func TestTorsionBehavesAsItMust(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tube, nm := drawTube(t), rapid.Float64Range(10, 5000).Draw(t, "torque")
		thick := tube
		thick.WallMM += 0.5
		a, _ := Shear(tube, nm)
		b, _ := Shear(thick, nm)
		double, _ := Shear(tube, 2*nm)
		if b >= a || math.Abs(double-2*a) > 1e-9*a {
			t.Errorf("stress %g, thicker %g, at twice the torque %g", a, b, double)
		}
		longer := tube
		longer.LengthMM *= 2
		p, _ := Twist(tube, steel206, nm)
		q, _ := Twist(longer, steel206, nm)
		// The shear angle of the skin is τ/G, so the twist is τ·L/(G·D/2).
		skin := a / 79300 * tube.LengthMM / (tube.OuterMM / 2) * 180 / math.Pi
		if math.Abs(q-2*p) > 1e-9*q || math.Abs(p-skin) > 1e-9*p {
			t.Errorf("twist %g, twice as long %g, from the skin's shear %g", p, q, skin)
		}
	})
}

func TestNoTorqueHasNoStress(t *testing.T) {
	if _, err := Shear(Tube{1000, 60, 2}, 0); err == nil {
		t.Error("torque 0 gave a stress")
	}
	if _, err := Twist(Tube{1000, 60, 2}, Material{}, 10); err == nil {
		t.Error("shear modulus 0 gave a twist")
	}
}
