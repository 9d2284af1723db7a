package uncertain

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

func TestNormalQuantileAgainstPublishedPoints(t *testing.T) {
	for _, row := range []struct {
		p, want, tol float64
		source       string
	}{
		{0.5, 0, 0, "symmetry"},
		{0.25, -0.6744897501960817, 1e-15, "AS 241, Applied Statistics 37 (1988) p. 482, check values (from memory)"},
		{0.001, -3.090232306167814, 1e-15, "AS 241, same place (from memory)"},
		{1e-20, -9.262340089798408, 1e-14, "AS 241, same place (from memory)"},
		{0.975, 1.959963984540054, 1e-15, "Abramowitz & Stegun table 26.1 prints 1.95996 (from memory); digits: gonum v0.17 distuv"},
		{0.95, 1.6448536269514722, 1e-15, "Abramowitz & Stegun table 26.1 prints 1.64485 (from memory); digits: gonum v0.17 distuv"},
	} {
		if got := NormalQuantile(row.p); math.Abs(got-row.want) > row.tol*math.Abs(row.want) {
			t.Errorf("p %g: got %.17g, want %.17g (%s)", row.p, got, row.want, row.source)
		}
	}
}

func TestNormalQuantileAgainstAnotherProgram(t *testing.T) {
	// gonum v0.17 distuv.UnitNormal, which rests on package math's Erfinv.
	for i := 1; i < 4000; i++ {
		p := float64(i) / 4000
		got, want := NormalQuantile(p), distuv.UnitNormal.Quantile(p)
		if math.Abs(got-want) > 2e-15*(1+math.Abs(want)) {
			t.Fatalf("p %g: got %.17g, gonum %.17g", p, got, want)
		}
	}
}

func TestStudentQuantileAgainstTables(t *testing.T) {
	// Two-sided 95 % and 95.45 % points: the usual t table (JCGM 100:2008 table G.2, from memory),
	// worked apart from this code by integrating the density.
	for _, row := range []struct {
		freedom        int
		t95, t9545     float64
		tol95, tol9545 float64
	}{
		{1, 12.706, 13.97, 5e-4, 5e-3},
		{2, 4.303, 4.53, 5e-4, 5e-3},
		{3, 3.182, 3.31, 5e-4, 5e-3},
		{4, 2.776, 2.87, 5e-4, 5e-3},
		{5, 2.571, 2.65, 5e-4, 5e-3},
		{6, 2.447, 2.52, 5e-4, 5e-3},
		{7, 2.365, 2.43, 5e-4, 5e-3},
		{8, 2.306, 2.37, 5e-4, 5e-3},
		{9, 2.262, 2.32, 5e-4, 5e-3},
	} {
		if got := StudentQuantile(0.975, row.freedom); math.Abs(got-row.t95) > row.tol95 {
			t.Errorf("ν %d, 95 %%: got %.4f, want %.3f", row.freedom, got, row.t95)
		}
		if got := StudentQuantile(0.97725, row.freedom); math.Abs(got-row.t9545) > row.tol9545 {
			t.Errorf("ν %d, 95.45 %%: got %.4f, want %.2f", row.freedom, got, row.t9545)
		}
	}
}

func TestStudentQuantileAgainstClosedForms(t *testing.T) {
	// Worked apart from this code: ν = 1 is tan π(p−½); ν = 2 is (2p−1)·√(2/(4p(1−p))).
	for i := 1; i < 1000; i++ {
		p := float64(i) / 1000
		one, two := math.Tan(math.Pi*(p-0.5)), (2*p-1)*math.Sqrt(2/(4*p*(1-p)))
		if got := StudentQuantile(p, 1); math.Abs(got-one) > 1e-12*(1+math.Abs(one)) {
			t.Fatalf("ν 1, p %g: got %.15g, want %.15g", p, got, one)
		}
		if got := StudentQuantile(p, 2); math.Abs(got-two) > 1e-12*(1+math.Abs(two)) {
			t.Fatalf("ν 2, p %g: got %.15g, want %.15g", p, got, two)
		}
	}
}

func TestStudentQuantileAgainstAnotherProgram(t *testing.T) {
	// gonum v0.17 distuv.StudentsT: its distribution function is put back on our quantile, so that
	// the judge is its incomplete beta function and not its search. From 100 on the series is used,
	// which is good to 1e-7 of the chance at the outermost of 4,096 draws.
	for _, freedom := range []int{1, 2, 3, 4, 5, 8, 9, 20, 57, 99, 100, 101, 400, 5000} {
		judge := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(freedom)}
		tol := 1e-10
		if freedom >= seriesFrom {
			tol = 1e-7
		}
		for _, p := range []float64{1.0 / 8192, 0.001, 0.02, 0.05, 0.3, 0.4999, 0.5001, 0.77, 0.95, 0.999, 1 - 1.0/8192} {
			got := StudentQuantile(p, freedom)
			if back := judge.CDF(got); math.Abs(back-p) > tol*math.Min(p, 1-p) {
				t.Errorf("ν %d, p %g: %.15g has chance %.15g by gonum", freedom, p, got, back)
			}
		}
	}
}

func TestQuantilesAreNeverLostOutsideTheirRange(t *testing.T) {
	for _, p := range []float64{0, 1, -1, 2, math.NaN(), math.Inf(1), math.Inf(-1), 5e-324, 1 - 1e-16} {
		for _, got := range []float64{NormalQuantile(p), StudentQuantile(p, 0), StudentQuantile(p, 7), StudentQuantile(p, 1000)} {
			if math.IsNaN(got) || math.IsInf(got, 0) {
				t.Errorf("p %g: got %g", p, got)
			}
		}
	}
}

func TestOwnLogarithm(t *testing.T) {
	// package math of go1.26.
	for x := 1e-300; x < 1e300; x *= 1.7 {
		if got, want := naturalLog(x), math.Log(x); math.Abs(got-want) > 4e-16*math.Max(1, math.Abs(want)) {
			t.Fatalf("ln %g: got %.17g, want %.17g", x, got, want)
		}
	}
}
