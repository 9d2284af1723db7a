package mass

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const apart = "worked apart from this code"

func near(a, b, tol float64) bool { return math.Abs(a-b) <= tol }

func TestCentreFromScales(t *testing.T) {
	for _, row := range []struct {
		name     string
		scales   []Scale
		kg, x, y float64
	}{
		{"two scales 900 apart", []Scale{{148, 0, 0}, {182, 900, 0}}, 330, 496.36, 0},
		{"three scales", []Scale{{110, 0, -250}, {98, 0, 250}, {72, 800, 0}}, 280, 205.71, -10.71},
		{"three scales, the third aside", []Scale{{124.5, 0, -270}, {131, 0, 270}, {61.5, 760, 30}}, 317, 147.44, 11.36},
	} {
		kg, x, y, err := Centre(row.scales...)
		if err != nil || !near(kg, row.kg, 1e-9) || !near(x, row.x, 0.006) || !near(y, row.y, 0.006) {
			t.Errorf("%s: %g kg at (%.3f, %.3f) (%v), want %g at (%g, %g) (statics, %s)", row.name, kg, x, y, err, row.kg, row.x, row.y, apart)
		}
	}
}

func TestAxleLoads(t *testing.T) {
	for _, row := range []struct{ kg, behind, base, front, rear float64 }{
		{85, 150, 2700, 80.278, 4.722}, {60, -300, 2700, 66.667, -6.667}, {120, 3100, 2700, -17.778, 137.778},
		{95, -220, 2540, 103.228, -8.228}, {70, 1100, 2540, 39.685, 30.315},
	} {
		front, rear, err := Axles(Load{row.kg, -row.behind}, row.base)
		if err != nil || !near(front, row.front, 6e-4) || !near(rear, row.rear, 6e-4) {
			t.Errorf("%+g kg %g behind: front %+.4f rear %+.4f (%v), want %+g %+g (rule: a truck maker's body mounting directives 2020, 9.1 (read); %s)",
				row.kg, row.behind, front, rear, err, row.front, row.rear, apart)
		}
	}
}

func TestLoadsOnThreeMounts(t *testing.T) {
	at := [3]Place{{0, -250}, {0, 250}, {800, 0}}
	for _, row := range []struct {
		name string
		u    Unit
		want [3]float64
	}{
		{"inside", Unit{280, 220, 20, 0}, [3]float64{90.3, 112.7, 77}},
		{"outside: the third is pulled up", Unit{280, -60, 0, 0}, [3]float64{150.5, 150.5, -21}},
		{"1050 N·m over 0.5 m: ±2100 N", Unit{280, 220, 20, 1050}, [3]float64{90.3 - 2100/G, 112.7 + 2100/G, 77}},
		{"984 N·m the other way", Unit{280, 220, 20, -984}, [3]float64{90.3 + 1968/G, 112.7 - 1968/G, 77}},
	} {
		got, err := Mounts(row.u, at)
		for i := range got {
			if err != nil || !near(got[i], row.want[i], 1e-9) {
				t.Errorf("%s: mount %d carries %.4f (%v), want %.4f (statics, %s)", row.name, i+1, got[i], err, row.want[i], apart)
			}
		}
	}
	// 240 N·m in a gear of 4.1 over 0.56 m: ±1757.1 N.
	wide, _ := Mounts(Unit{0, 0, 0, 240 * 4.1}, [3]Place{{0, -280}, {0, 280}, {800, 0}})
	if !near(wide[1]*G, 1757.14, 0.01) || !near(wide[0], -wide[1], 1e-9) || !near(wide[2], 0, 1e-9) {
		t.Errorf("984 N·m over 0.56 m: %v kg, want ±1757.1 N (%s)", wide, apart)
	}
	if _, err := Mounts(Unit{280, 0, 0, 0}, [3]Place{{0, 0}, {100, 0}, {800, 0}}); err == nil {
		t.Error("three mounts in one line carry")
	}
}

func TestPullInSlingLegs(t *testing.T) {
	got, err := SlingLeg(350, 2, 50)
	if err != nil || !near(got, 228.446, 1e-3) {
		t.Errorf("350 kg on two legs at 50°: %.4f (%v), want 228.446 (%s)", got, err, apart)
	}
	for angle, factor := range map[float64]float64{90: 1, 75: 1.035, 60: 1.155, 50: 1.305, 45: 1.414, 40: 1.556, 30: 2, 15: 3.864} {
		if got, _ := SlingLeg(1, 1, angle); !near(got, factor, 6e-4) {
			t.Errorf("factor at %g°: %.4f, want %g (rigging tables on public pages, read)", angle, got, factor)
		}
	}
}

// What must hold of any unit on any mounts: forces and moments balance, a mirrored vehicle carries
// mirrored, kilograms and pounds say the same, and scales under the mounts find the centre again.
func TestStaticsBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		num := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		at := [3]Place{{num("x1", -300, 300), num("y1", 150, 500)}, {num("x2", -300, 300), num("y2", -500, -150)}, {num("x3", -1500, -500), num("y3", -100, 100)}}
		u := Unit{num("kg", 100, 900), num("x", -1500, 300), num("y", -200, 200), num("torque", -3000, 3000)}
		f, err := Mounts(u, at)
		if err != nil {
			t.Fatal(err)
		}
		var kg, mx, my float64
		for i, p := range at {
			kg, mx, my = kg+f[i], mx+f[i]*p.X, my+f[i]*p.Y
		}
		if !near(kg, u.Kg, 1e-8) || !near(mx, u.Kg*u.X, 1e-5) || !near(my, u.Kg*u.Y+u.TorqueNm*1000/G, 1e-5) {
			t.Errorf("loads %v of %+v don't balance: %g %g %g", f, u, kg, mx, my)
		}
		mirror := at
		for i := range mirror {
			mirror[i].Y = -mirror[i].Y
		}
		g, _ := Mounts(Unit{u.Kg, u.X, -u.Y, -u.TorqueNm}, mirror)
		lb, _ := Mounts(Unit{u.Kg / 0.45359237, u.X, u.Y, u.TorqueNm / 0.45359237}, at)
		for i := range f {
			if !near(f[i], g[i], 1e-8) || !near(f[i], lb[i]*0.45359237, 1e-8) {
				t.Errorf("mount %d carries %g, mirrored %g, in pounds %g", i, f[i], g[i], lb[i])
			}
		}
		still, _ := Mounts(Unit{u.Kg, u.X, u.Y, 0}, at)
		var scales []Scale
		for i, p := range at {
			scales = append(scales, Scale{still[i], p.X, p.Y})
		}
		if m, x, y, err := Centre(scales...); err != nil || !near(m, u.Kg, 1e-8) || !near(x, u.X, 1e-6) || !near(y, u.Y, 1e-6) {
			t.Errorf("scales under the mounts find %g at (%g, %g) (%v), put there was %+v", m, x, y, err, u)
		}
		front, rear, _ := Axles(Load{u.Kg, u.X}, 2600)
		if !near(front+rear, u.Kg, 1e-9) || !near(-rear*2600, u.Kg*u.X, 1e-6) {
			t.Errorf("axles carry %g and %g of %g", front, rear, u.Kg)
		}
		flat := num("angle", 5, 80)
		leg, _ := SlingLeg(u.Kg, 2, flat)
		steep, _ := SlingLeg(u.Kg, 2, flat+5)
		if up := 2 * leg * math.Sin(flat*math.Pi/180); !near(up, u.Kg, 1e-8*u.Kg) || steep >= leg {
			t.Errorf("two legs of %g at %g lift %g of %g; steeper %g", leg, flat, up, u.Kg, steep)
		}
	})
}

func TestWhatHasNoAnswer(t *testing.T) {
	bad := []error{
		third(Centre()), third(Centre(Scale{0, 1, 1})), third(Centre(Scale{math.NaN(), 1, 1})),
		pair(Axles(Load{1, 1}, 0)), pair(Axles(Load{1, 1}, math.NaN())),
		second(SlingLeg(0, 2, 60)), second(SlingLeg(100, 0, 60)), second(SlingLeg(100, 2, 0)), second(SlingLeg(100, 2, 91)),
	}
	for i, err := range bad {
		if err == nil {
			t.Errorf("row %d of what can't be has an answer", i)
		}
	}
}

func second(_ float64, err error) error      { return err }
func pair(_, _ float64, err error) error     { return err }
func third(_, _, _ float64, err error) error { return err }
