package clutch

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const bhandari = "Bhandari, Design of Machine Elements, ch. 11, answers in a public collection of its examples"

func near(t *testing.T, what string, got, want, tol float64, source string) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.7g, want %g ± %g (%s)", what, got, want, tol, source)
	}
}

func must(t *testing.T) func(float64, error) float64 {
	return func(x float64, err error) float64 {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
}

// The textbook starts from a pressure in MPa where the program is told the clamp force: most at the
// inner edge of worn facings, the same all over new ones.
func (f Facing) edgeForce(mpa float64) float64 {
	return math.Pi * mpa * f.InnerMM * (f.OuterMM - f.InnerMM) / 2
}
func (f Facing) evenForce(mpa float64) float64 {
	return math.Pi * mpa * (f.OuterMM*f.OuterMM - f.InnerMM*f.InnerMM) / 4
}

func TestClutchesOfTheTextbook(t *testing.T) {
	ok := must(t)
	one := Facing{OuterMM: 200, InnerMM: 100, Friction: 0.2, Faces: 1}
	force := one.edgeForce(1)
	near(t, "11.1 force", force, 15707.96, 0.005, bhandari)
	near(t, "11.1 torque", ok(one.WearTorque(force)), 235.6194, 5e-5, bhandari)
	near(t, "11.1 power", ok(one.WearTorque(force))*750/9549.2966, 18.5055, 1e-4, bhandari)

	force = one.evenForce(1)
	near(t, "11.2 force", force, 23561.94, 0.006, bhandari)
	near(t, "11.2 torque", ok(one.PressureTorque(force)), 366.5191, 5e-5, bhandari)
	near(t, "11.2 power", ok(one.PressureTorque(force))*750/9549.2966, 28.7863, 1e-4, bhandari)

	// Two inside diameters hold 550 N·m at one pressure; the book keeps the larger.
	for _, root := range []struct{ inner, force float64 }{{174.166, 10373.3}, {112.290, 12145}} {
		f := Facing{250, root.inner, 0.25, 2}
		force := f.edgeForce(0.5)
		near(t, "11.3 force", force, root.force, 0.6, bhandari)
		near(t, "11.3 torque", ok(f.WearTorque(force)), 550, 0.01, bhandari)
	}

	f := Facing{250, 175, 0.35, 2}
	near(t, "11.6 safety, pressure", ok(f.PressureTorque(9*800))/250, 2.1642, 5e-5, bhandari)
	safety := ok(f.WearTorque(9*800)) / 250
	near(t, "11.6 safety, wear", safety, 2.1420, 5e-5, bhandari)
	near(t, "11.6 wear left of 5 mm", 5*(1-1/safety), 2.6657, 1e-4, bhandari)

	f = Facing{95, 65, 0.2, 1}
	force = f.edgeForce(0.1)
	near(t, "11.7 force", force, 306.31, 0.005, bhandari)
	near(t, "11.7 faces, slots taking 5 %", 10/ok(f.WearTorque(force))*1.05, 4.285, 5e-4, bhandari)

	f = Facing{200, 140, 0.5, 2}
	force = f.edgeForce(1)
	near(t, "force at 1 MPa", force, 13195, 0.6, "a university note on clutch sums; worked apart from this code")
	near(t, "its torque", ok(f.WearTorque(force)), 1121.5, 0.1, "a university note on clutch sums; worked apart from this code")

	f = Facing{240, 155, 0.30, 2}
	near(t, "8500 N, wear", ok(f.WearTorque(8500)), 503.6, 0.05, "worked apart from this code")
	near(t, "8500 N, pressure", ok(f.PressureTorque(8500)), 511.4, 0.05, "worked apart from this code")

	f = Facing{250, 100, 0.2, 1}
	force = f.edgeForce(0.65)
	near(t, "0.65 MPa, force", force, 15315, 0.6, "a textbook question; worked apart from this code")
	near(t, "0.65 MPa, wear", ok(f.WearTorque(force)), 268.0, 0.05, "a textbook question; worked apart from this code")
	near(t, "0.65 MPa, pressure", ok(f.PressureTorque(f.evenForce(0.65))), 497.7, 0.1, "a textbook question; worked apart from this code")

	f = Facing{215, 145, 0.27, 2}
	near(t, "6200 N, wear", ok(f.WearTorque(6200)), 301.3, 0.05, "worked apart from this code")
	near(t, "6200 N, pressure", ok(f.PressureTorque(6200)), 305.1, 0.05, "worked apart from this code")
}

// Wear gives less torque than pressure, more clamp or friction more, and inches the same.
func TestFacingsGoTheRightWay(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		outer := rapid.Float64Range(120, 450).Draw(rt, "outer")
		f := Facing{outer, outer * rapid.Float64Range(0.3, 0.95).Draw(rt, "inner"), rapid.Float64Range(0.1, 0.6).Draw(rt, "friction"), 2}
		force := rapid.Float64Range(500, 40000).Draw(rt, "force")
		wear, err := f.WearTorque(force)
		pressure, err2 := f.PressureTorque(force)
		more, _ := f.WearTorque(force * 1.1)
		if err != nil || err2 != nil || !(wear > 0) || wear > pressure*(1+1e-12) || more <= wear {
			rt.Fatalf("%+v at %g N: wear %g, pressure %g, more clamp %g (%v)", f, force, wear, pressure, more, err)
		}
		small := Facing{f.OuterMM / 25.4, f.InnerMM / 25.4, f.Friction, 2}
		in, _ := small.PressureTorque(force)
		if math.Abs(in*25.4-pressure) > 1e-9*pressure {
			rt.Fatalf("%+v: %g from millimetres, %g from inches", f, pressure, in*25.4)
		}
	})
}

func TestFacingsThatAreNoneAreRefused(t *testing.T) {
	good := Facing{240, 155, 0.3, 2}
	if _, err := good.WearTorque(8500); err != nil {
		t.Fatalf("control: %v", err)
	}
	for _, bad := range []Facing{{155, 240, 0.3, 2}, {240, 0, 0.3, 2}, {240, 155, 0, 2}, {240, 155, 0.3, 0}, {math.Inf(1), 155, 0.3, 2}, {240, math.NaN(), 0.3, 2}} {
		if _, err := bad.WearTorque(8500); err == nil {
			t.Errorf("%+v holds torque", bad)
		}
		if _, err := bad.PressureTorque(8500); err == nil {
			t.Errorf("%+v holds torque", bad)
		}
	}
	for _, force := range []float64{0, -1, math.NaN(), math.Inf(1), 1e306} {
		if got, err := good.WearTorque(force); err == nil && math.IsInf(got, 0) {
			t.Errorf("%g N gives %g", force, got)
		}
	}
}
