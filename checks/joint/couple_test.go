package joint

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestSecondaryCouples(t *testing.T) {
	for _, row := range []struct {
		nm, angle       float64
		driving, driven float64
	}{
		{1000, 3, 52.41, 52.34}, {1000, 10, 176.3, 173.6}, {1000, 45, 1000, 707.107}, {1000, 0, 0, 0},
	} {
		a, b := Couples(row.nm, row.angle)
		if math.Abs(a-row.driving) > 0.05 || math.Abs(b-row.driven) > 0.05 {
			t.Errorf("%g N·m at %g°: %.3f and %.3f, want %g and %g (T·tan β, T·sin β, worked apart from this code)", row.nm, row.angle, a, b, row.driving, row.driven)
		}
	}
	// Crossing ends of 3° and 10°, a tube of 1.2 m: 2·T·sin β/L is 87.2 N and 289.4 N.
	for angle, want := range map[float64]float64{3: 87.2, 10: 289.4} {
		if _, b := Couples(1000, angle); math.Abs(2*b/1.2-want) > 0.05 {
			t.Errorf("W pair at %g°: %.2f N, want %g (worked apart from this code)", angle, 2*b/1.2, want)
		}
	}
	if a, _ := Couples(100, 90); !math.IsNaN(a) {
		t.Errorf("a joint at 90° has a couple of %g", a)
	}
}

func TestLifeOfAJoint(t *testing.T) {
	for _, row := range []struct {
		name string
		d    Duty
		want float64 // with 10/3
		from string
	}{
		{"as rated", Duty{3, 100, 800, 800}, 5000, "the rating itself, sizing guide of a joint supplier (read)"},
		{"6°, 3000 rev/min, a quarter of the torque", Duty{6, 3000, 200, 800}, 8466, "same formula, worked apart from this code"},
		{"3°, 3000 rev/min, a quarter", Duty{3, 3000, 200, 800}, 16932, "same formula, worked apart from this code"},
		{"below 3° counts as 3°", Duty{0.5, 3000, 200, 800}, 16932, "a propshaft maker's dimension sheets (read)"},
	} {
		long, short := Life(row.d)
		if math.Abs(long-row.want) > 0.6 {
			t.Errorf("%s: %.1f h, want %g (%s)", row.name, long, row.want, row.from)
		}
		if want := row.want / math.Pow(row.d.RatedNm/row.d.MeanNm, 1.0/3); math.Abs(short-want) > 0.6 {
			t.Errorf("%s: %.1f h by the third power, want %.1f (exponent 3: Universal Joints and Driveshafts 4.7, its abstract read)", row.name, short, want)
		}
	}
}

// Doubling the torque costs 2³ = 8.0 or 2^(10/3) = 10.1 of the life.
func TestTorqueCostsLife(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := Duty{rapid.Float64Range(0, 20).Draw(t, "angle"), rapid.Float64Range(100, 6000).Draw(t, "speed"),
			rapid.Float64Range(5, 500).Draw(t, "mean"), rapid.Float64Range(50, 2000).Draw(t, "rated")}
		a103, a3 := Life(d)
		d.MeanNm *= 2
		b103, b3 := Life(d)
		if math.Abs(a3/b3-8) > 1e-9 || math.Abs(a103/b103-math.Pow(2, 10.0/3)) > 1e-9 {
			t.Errorf("twice the torque: %.4f and %.4f of the life", a3/b3, a103/b103)
		}
		d.AngleDeg = math.Max(3, d.AngleDeg) + 1
		if c103, _ := Life(d); c103 >= b103 {
			t.Errorf("a larger angle lives longer: %g, %g", b103, c103)
		}
	})
}

func TestCubeRoot(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(1e-12, 1e12).Draw(t, "x")
		if got, want := cubeRoot(x), math.Cbrt(x); math.Abs(got-want) > 1e-14*want {
			t.Errorf("∛%g = %g, math.Cbrt %g", x, got, want)
		}
	})
	for _, x := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if got := cubeRoot(x); !math.IsNaN(got) {
			t.Errorf("∛%g = %g", x, got)
		}
	}
}
