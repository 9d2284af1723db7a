package shaft

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const (
	apart  = "worked apart from this code"
	memory = "from memory"
)

var (
	steel207 = Material{ModulusGPa: 207, ShearGPa: 79.3, KgPerM3: 7850}
	steel206 = Material{ModulusGPa: 206, ShearGPa: 79.3, KgPerM3: 7850}
)

func TestCriticalSpeedOfATube(t *testing.T) {
	for _, row := range []struct {
		name string
		tube Tube
		m    Material
		want float64
		tol  float64 // as a part of want
		from string
	}{
		{"76.2×2.108, 1524 mm", Tube{1524, 76.2, 2.108}, steel207, 5460.8, 1e-4, "closed form, " + apart},
		{"76.2×2.108, 1200 mm", Tube{1200, 76.2, 2.108}, steel207, 8807.7, 1e-4, "closed form, " + apart},
		{"88.9×2.108, 1500 mm", Tube{1500, 88.9, 2.108}, steel207, 6602.4, 1e-4, "closed form, " + apart},
		{"63.5×3.05, 1000 mm", Tube{1000, 63.5, 3.05}, steel207, 10356.8, 1e-4, "closed form, " + apart},
		{"50.8×3.0, 1400 mm", Tube{1400, 50.8, 3}, steel207, 4181.2, 1e-4, "closed form, " + apart},
		{"70×3, 1500 mm", Tube{1500, 70, 3}, Material{ModulusGPa: 206, KgPerM3: 7850}, 5088.06, 1e-5, "closed form, " + apart},
		{"3.0×0.083 in, 60 in", Tube{1524, 76.2, 2.1082}, steel207, 1.21e8 * math.Sqrt(76.2*76.2+71.9836*71.9836) / (1524 * 1524), 1e-2,
			"constant 1.21e8 for mm as printed in a joint supplier's selection pages, graph F (read)"},
		{"3.0×0.083 in, 60 in, inch form", Tube{1524, 76.2, 2.1082}, steel207, 4.8e6 * math.Sqrt(9+2.834*2.834) / 3600, 1e-2,
			"constant 4.8e6 for inches as printed in a joint supplier's selection pages, graph F (read); 0.8 % above its own metric form"},
		{"solid rod", Tube{1000, 30, 15}, steel207, 30 / math.Pi * math.Pi * math.Pi * math.Sqrt(207e9/7850) * 0.0075, 1e-12,
			"(π/L)²·√(E/ρ)·d/4, by hand"},
	} {
		got, err := CriticalSpeed(row.tube, row.m, EndMass{})
		if err != nil || math.Abs(got-row.want) > row.tol*row.want {
			t.Errorf("%s: got %.2f (%v), want %.2f (%s)", row.name, got, err, row.want, row.from)
		}
	}
}

// A textbook answer of 5800 rev/min for 48 in of 3 in × 1/8 in tube lumps the whole mass at mid-span:
// √48/π² of the beam's own answer. So this is no reference for the uniform tube but what lumping costs.
func TestWhatLumpingTheMassWouldCost(t *testing.T) {
	got, _ := CriticalSpeed(Tube{48 * 25.4, 3 * 25.4, 25.4 / 8}, Material{ModulusGPa: 29e6 * 6.894757e-6, KgPerM3: 0.00883 * 14.5939 / (0.0254 * 0.0254 * 0.0254)}, EndMass{})
	if lumped := got * math.Sqrt(48) / (math.Pi * math.Pi); math.Abs(got-8262) > 15 || math.Abs(lumped-5800) > 15 {
		t.Errorf("beam %.0f, lumped %.0f; want 8262 and 5800 (problem read, %s)", got, lumped, apart)
	}
}

// Dunkerley with one mass at mid-span of a massless beam is exact: ω² = 48·E·I/(m·L³). A tube of
// next to no density shows that part alone.
func TestEndMassAgainstTheMasslessBeam(t *testing.T) {
	tube := Tube{LengthMM: 1000, OuterMM: 60, WallMM: 2}
	light := Material{ModulusGPa: 206, KgPerM3: 1e-6}
	i := math.Pi / 64 * (math.Pow(0.060, 4) - math.Pow(0.056, 4))
	want := 30 / math.Pi * math.Sqrt(48*206e9*i/10)
	if got, err := CriticalSpeed(tube, light, EndMass{Kg: 10, StationMM: 500}); err != nil || math.Abs(got-want) > 1e-6*want {
		t.Errorf("10 kg at mid-span: got %.3f (%v), want %.3f (48EI/L³, %s; any text on strength)", got, err, want, memory)
	}
	bare, _ := CriticalSpeed(tube, steel206, EndMass{})
	at, _ := CriticalSpeed(tube, steel206, EndMass{Kg: 10})
	if at != bare {
		t.Errorf("a mass right at the joints changes %.3f to %.3f", bare, at)
	}
	// 76.2×2.1, 1.5 m, 6.2 kg, 80 mm from the joints: 4.2 % slower, worked apart from this code.
	bare, _ = CriticalSpeed(Tube{1500, 76.2, 2.1}, steel206, EndMass{})
	slower, _ := CriticalSpeed(Tube{1500, 76.2, 2.1}, steel206, EndMass{Kg: 6.2, StationMM: 80})
	if part := 1 - slower/bare; math.Abs(part-0.0418) > 1e-4 {
		t.Errorf("6.2 kg at 80 mm costs %.4f, want 0.0418 (%s)", part, apart)
	}
}

func drawTube(t *rapid.T) Tube {
	d := rapid.Float64Range(30, 130).Draw(t, "outside")
	return Tube{rapid.Float64Range(300, 2500).Draw(t, "length"), d, rapid.Float64Range(1, 6).Draw(t, "wall")}
}

func TestCriticalSpeedBehavesAsItMust(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tube, ends := drawTube(t), EndMass{rapid.Float64Range(0, 20).Draw(t, "kg"), rapid.Float64Range(0, 120).Draw(t, "station")}
		n, err := CriticalSpeed(tube, steel206, ends)
		if err != nil {
			t.Fatal(err)
		}
		longer, wider := tube, tube
		longer.LengthMM *= 1.05
		wider.OuterMM += 5
		if slow, _ := CriticalSpeed(longer, steel206, ends); slow >= n {
			t.Errorf("longer is not slower: %g, %g", n, slow)
		}
		if fast, _ := CriticalSpeed(wider, steel206, ends); fast <= n {
			t.Errorf("wider is not faster: %g, %g", n, fast)
		}
		heavy := ends
		heavy.Kg += 1
		if slow, _ := CriticalSpeed(tube, steel206, heavy); slow > n {
			t.Errorf("heavier ends are faster: %g, %g", n, slow)
		}
		// Twice every length gives half the speed without end masses, whatever unit it is in.
		plain, _ := CriticalSpeed(tube, steel206, EndMass{})
		double, _ := CriticalSpeed(Tube{2 * tube.LengthMM, 2 * tube.OuterMM, 2 * tube.WallMM}, steel206, EndMass{})
		if math.Abs(2*double-plain) > 1e-9*plain {
			t.Errorf("scaled by two: %g is not half of %g", double, plain)
		}
	})
}

func TestTubesThatAreNone(t *testing.T) {
	good := Tube{1500, 70, 3}
	if _, err := CriticalSpeed(good, steel206, EndMass{}); err != nil {
		t.Fatalf("control: %v", err)
	}
	for _, bad := range []Tube{{0, 70, 3}, {1500, -1, 3}, {1500, 70, 0}, {1500, 70, 36}, {math.NaN(), 70, 3}, {1500, math.Inf(1), 3}} {
		for name, err := range map[string]error{
			"speed": second(CriticalSpeed(bad, steel206, EndMass{})), "stress": second(Shear(bad, 100)), "twist": second(Twist(bad, steel206, 100))} {
			if err == nil {
				t.Errorf("%+v: %s is computed", bad, name)
			}
		}
	}
	for _, e := range []EndMass{{-1, 0}, {1, -1}, {1, 751}, {math.NaN(), 1}, {math.Inf(1), 1}} {
		if _, err := CriticalSpeed(good, steel206, e); err == nil {
			t.Errorf("end mass %+v is computed", e)
		}
	}
	if got := good.MassKg(steel206); math.Abs(got-7.4355) > 1e-3 {
		t.Errorf("70×3×1500 steel weighs %.4f kg, want 7.4355 (π/4·(70²−64²)·1500·7.85e-6, by hand)", got)
	}
}
