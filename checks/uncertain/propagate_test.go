package uncertain

import (
	"math"
	"testing"
)

// sum adds causes, each a column times a size, row by row.
func sum(parts ...[]float64) []float64 {
	out := make([]float64, N)
	for _, p := range parts {
		for i, x := range p {
			out[i] += x
		}
	}
	return out
}

func cause(key string, s Shape, size float64) []float64 {
	out := Column(key, s)
	for i := range out {
		out[i] *= size
	}
	return out
}

var (
	flat = Shape{Kind: Rectangular}
	bell = Shape{Kind: Normal}
)

func within(t *testing.T, what string, got, want, share float64, source string) {
	t.Helper()
	if math.Abs(got-want) > share*want {
		t.Errorf("%s: got %.5g, want %.5g ± %g %% (%s)", what, got, want, 100*share, source)
	}
}

func TestOneCauseUsedTenTimesAddsUpInFull(t *testing.T) {
	// Ten resistors of 1000 Ω, each compared with ONE standard of u 0.1 Ω; then with ten standards.
	const source = "JCGM 100:2008, 5.2.2 example (from memory)"
	var one, ten [][]float64
	for i := range 10 {
		one = append(one, cause("standard", bell, 0.1))
		ten = append(ten, cause("standard "+string(rune('0'+i)), bell, 0.1))
	}
	within(t, "one standard", SampleStd(sum(one...)), 1.0, 2e-3, source)
	within(t, "ten standards", SampleStd(sum(ten...)), 0.316, 0.03, source)
}

func TestDisplaySteps(t *testing.T) {
	for step, want := range map[float64]float64{0.1: 0.02887, 1: 0.28868, 0.5: 0.14434, 0.01: 0.002887, 0.02: 0.005774} {
		within(t, "step", SampleStd(cause("step", flat, step/2)), want, 2e-4, "JCGM 100:2008, F.2.2.1 (from memory): q/√12")
	}
}

func TestSharedZeroCancelsInADifference(t *testing.T) {
	// Two readings with one finder, each with step 0.1° and placing 0.1°, the zero ±0.2° shared.
	const source = "law of propagation, worked apart from this code"
	reading := func(key string) []float64 {
		return sum(cause(key+".step", flat, 0.05), cause(key+".placing", bell, 0.1), cause("finder.zero", flat, 0.2))
	}
	minus := func(a, b []float64) []float64 {
		out := make([]float64, N)
		for i := range out {
			out[i] = a[i] - b[i]
		}
		return out
	}
	plus := func(a, b []float64) []float64 { return sum(a, b) }
	within(t, "difference", SampleStd(minus(reading("gearbox"), reading("shaft"))), 0.1472, 0.03, source)
	within(t, "sum", SampleStd(plus(reading("gearbox"), reading("shaft"))), math.Sqrt(0.1472*0.1472+4*0.04/3), 0.03, source)

	fine := func(key string) []float64 {
		return sum(cause(key+".step", flat, 0.025), cause(key+".placing", bell, 0.08))
	}
	within(t, "step 0.05, placing 0.08", SampleStd(minus(fine("gearbox"), fine("shaft"))), 0.1150, 0.03, source)
}

func TestChanceAgainstALimit(t *testing.T) {
	for _, row := range []struct {
		name         string
		best, u      float64
		low, high    float64
		want, within float64
		source       string
	}{
		{"Zener diode, upper limit", -5.47, 0.05, math.Inf(-1), -5.40, 0.9192, 5e-4, "JCGM 106:2012, clause 7 (from memory)"},
		{"0 to 3°, 2.6", 2.6, 0.25, 0, 3, 0.9452, 5e-4, "Φ, worked apart from this code"},
		{"0 to 3°, 3.1", 3.1, 0.25, 0, 3, 0.3446, 5e-4, "Φ, worked apart from this code"},
	} {
		pass := make([]bool, N)
		for i, d := range cause("y", bell, row.u) {
			pass[i] = row.best+d >= row.low && row.best+d <= row.high
		}
		if got := Chance(pass); math.Abs(got-row.want) > row.within {
			t.Errorf("%s: got %.4f, want %.4f (%s)", row.name, got, row.want, row.source)
		}
	}
}

func TestSlopeFromRiseAndRun(t *testing.T) {
	// Linear propagation through atan, worked apart from this code.
	for _, row := range []struct{ rise, uRise, run, uRun, slope, u float64 }{
		{85, 0.58, 920, 1.2, 5.2787, 0.0365}, {120, 0.5, 1150, 1.0, 5.9571, 0.0252},
	} {
		rise, run := cause("rise", bell, row.uRise), cause("run", bell, row.uRun)
		slopes := make([]float64, N)
		for i := range slopes {
			slopes[i] = math.Atan2(row.rise+rise[i], row.run+run[i]) * 180 / math.Pi
		}
		within(t, "slope", Mean(slopes), row.slope, 1e-4, "atan, by hand")
		within(t, "its doubt", SampleStd(slopes), row.u, 0.02, "law of propagation")
	}
}
