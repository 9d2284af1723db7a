package retain

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const (
	iso898 = "ISO 898-1 proof loads, two reprints; printed to three figures"
	apart  = "worked apart from this code from ISO 898-1"
	book   = "Mechanical Fastening, Joining, and Assembly, p. 85"
)

func near(t *testing.T, what string, got, want, tol float64, source string) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.6g, want %g ± %g (%s)", what, got, want, tol, source)
	}
}

func TestStressAreasAndProofLoads(t *testing.T) {
	for _, row := range []struct {
		name            string
		nominal, pitch  float64
		area            float64
		loads           [3]float64 // 8.8, 10.9, 12.9; 0: not given
		figures, source string
	}{
		{"M8", 8, 1.25, 36.6, [3]float64{21200, 30400, 35500}, "3", iso898},
		{"M10", 10, 1.5, 58.0, [3]float64{33700, 48100, 56300}, "3", iso898},
		{"M12", 12, 1.75, 84.3, [3]float64{48900, 70000, 81800}, "3", iso898},
		{"M14", 14, 2, 115, [3]float64{66700, 95500, 112000}, "3", iso898},
		{"M16", 16, 2, 157, [3]float64{91000, 130000, 152000}, "3", iso898},
		{"M8×1", 8, 1, 39.2, [3]float64{22736, 32536, 38024}, "area to 3", apart},
		{"M10×1.25", 10, 1.25, 61.2, [3]float64{35496, 50796, 59364}, "area to 3", apart},
		{"M10×1", 10, 1, 64.5, [3]float64{37410, 53535, 62565}, "area to 3", apart},
		{"M12×1.5", 12, 1.5, 88.1, [3]float64{51098, 73123, 85457}, "area to 3", apart},
		{"M12×1.25", 12, 1.25, 92.1, [3]float64{53418, 76443, 89337}, "area to 3", apart},
		{"M14×1.5", 14, 1.5, 125, [3]float64{72500, 103750, 121250}, "area to 3", apart},
		{"M16×1.5", 16, 1.5, 167, [3]float64{96860, 138610, 161990}, "area to 3", apart},
		{"M20×1.5", 20, 1.5, 272, [3]float64{163200, 225760, 0}, "area to 3", apart},
		{"M24×1.5", 24, 1.5, 401, [3]float64{240600, 332830, 0}, "area to 3", apart},
		{"M18×1.5", 18, 1.5, 216.2, [3]float64{}, "area to 4", apart},
		{"M24×2", 24, 2, 384.4, [3]float64{}, "area to 4", apart},
	} {
		area, err := StressArea(row.nominal, row.pitch)
		if err != nil {
			t.Fatal(err)
		}
		near(t, row.name+" area", area, row.area, 5e-3*row.area, row.source+", figures: "+row.figures)
		for i, g := range Grades {
			load, err := g.ProofLoad(row.nominal, row.pitch)
			if err != nil {
				t.Fatal(err)
			}
			if want := row.loads[i]; want > 0 {
				near(t, row.name+" "+g.Mark, load, want, 1e-2*want, row.source)
			}
		}
	}
}

func TestTorquesAndPreloads(t *testing.T) {
	for _, row := range []struct{ factor, torque float64 }{{0.30, 72.7}, {0.25, 60.6}, {0.20, 48.5}} {
		// Inches for millimetres and lbf·in for N·m: the thousand of the metric form comes off again.
		load, err := Tightening{TorqueNm: row.torque, NutFactor: row.factor, NominalMM: 0.190 * 1000}.Preload()
		if err != nil {
			t.Fatal(err)
		}
		near(t, "number 10 screw, lbf", load, 1275, 2, book)
	}
	three := func(mark string, nominal, pitch, torque float64) {
		g, ok := GradeOf(mark)
		load, err := g.ProofLoad(nominal, pitch)
		if !ok || err != nil {
			t.Fatal(mark, err)
		}
		held, _ := Tightening{TorqueNm: torque, NutFactor: 0.20, NominalMM: nominal}.Preload()
		near(t, mark+" at K 0.20 and 75 % of proof", held, 0.75*load, 0.006*load, apart)
	}
	three("8.8", 12, 1.75, 88.0)
	three("8.8", 10, 1.5, 50.5)
	three("10.9", 10, 1.5, 72.2)
	three("12.9", 10, 1.5, 84.4)
	three("12.9", 16, 2, 365.5)
	three("8.8", 16, 1.5, 232.5)
	near(t, "M12 8.8 at 75 %", 0.75*580*84.3, 36670, 5, apart)

	for _, row := range []struct{ factor, kN float64 }{{0.12, 50.0}, {0.16, 37.5}, {0.20, 30.0}, {0.30, 20.0}} {
		load, err := Tightening{TorqueNm: 60, NutFactor: row.factor, NominalMM: 10}.Preload()
		if err != nil {
			t.Fatal(err)
		}
		near(t, "60 N·m on M10", load/1000, row.kN, 1e-9, apart)
	}
	first, _ := Tightening{TorqueNm: 60, NutFactor: 0.12, NominalMM: 10}.Preload()
	proof, _ := Grades[0].ProofLoad(10, 1.5)
	if first <= proof {
		t.Errorf("greased to 60 N·m an M10 8.8 is at %g N, want above its proof load of %g", first, proof)
	}
	less, _ := Tightening{TorqueNm: 60, PrevailingNm: 15, NutFactor: 0.2, NominalMM: 10}.Preload()
	near(t, "15 of 60 N·m spent on turning the nut", less, 22500, 1e-6, "prevailing torque comes off first: common practice, no source")
}

// More torque clamps more, more friction less; inch figures give the same; there and back agree.
func TestPreloadGoesTheRightWay(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		a := Tightening{rapid.Float64Range(10, 800).Draw(rt, "torque"), 0, rapid.Float64Range(0.08, 0.4).Draw(rt, "factor"), rapid.Float64Range(6, 40).Draw(rt, "thread")}
		more, rough, inch := a, a, a
		more.TorqueNm *= 1.1
		rough.NutFactor *= 1.1
		inch.NominalMM /= 25.4
		now, err := a.Preload()
		up, _ := more.Preload()
		down, _ := rough.Preload()
		other, _ := inch.Preload()
		back := now * a.NutFactor * a.NominalMM / 1000
		if err != nil || up <= now || down >= now || math.Abs(other/25.4-now) > 1e-9*now || math.Abs(back-a.TorqueNm) > 1e-9*a.TorqueNm {
			rt.Fatalf("%+v: %g, more torque %g, rougher %g, inches %g, back %g (%v)", a, now, up, down, other/25.4, back, err)
		}
	})
}

func TestThreadsThatAreNoneAreRefused(t *testing.T) {
	if _, err := StressArea(12, 1.75); err != nil {
		t.Fatalf("control: %v", err)
	}
	for _, bad := range [][2]float64{{0, 1}, {12, 0}, {-12, 1}, {math.NaN(), 1}, {12, math.Inf(1)}, {2, 4}, {4, 4.5}} {
		if _, err := StressArea(bad[0], bad[1]); err == nil {
			t.Errorf("M%g×%g has an area", bad[0], bad[1])
		}
	}
	for _, bad := range []Tightening{{0, 0, 0.2, 12}, {60, 60, 0.2, 12}, {60, -1, 0.2, 12}, {60, 0, 0, 12}, {60, 0, 0.2, math.NaN()}, {math.Inf(1), 0, 0.2, 12}} {
		if _, err := bad.Preload(); err == nil {
			t.Errorf("%+v clamps", bad)
		}
	}
	if _, ok := GradeOf("11.9"); ok {
		t.Error("a grade that no standard has was found")
	}
}
