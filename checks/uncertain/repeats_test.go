package uncertain

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

func TestRepeats(t *testing.T) {
	// s, u = s/√n and U = t·u for a mean of repeats. JCGM 100:2008, 4.2 and G.3 (from memory);
	// numbers worked apart from this code.
	for _, row := range []struct {
		x                   []float64
		mean, s, u, u95, to float64
	}{
		{[]float64{3.1, 3.2, 3.1, 4.6}, 3.5, 0.7348, 0.3674, 1.1693, 6e-5},
		{[]float64{7.4, 7.5, 7.3, 7.4, 8.9}, 7.70, 0.6745, 0.3017, 0.8375, 6e-5},
		{[]float64{12.1, 12.3, 12.2, 12.2, 12.9}, 12.34, 0.3209, 0, 0.3985, 6e-5},
	} {
		n := float64(len(row.x))
		s := SampleStd(row.x)
		u := s / math.Sqrt(n)
		expanded := StudentQuantile(0.975, len(row.x)-1) * u
		for _, c := range []struct {
			name      string
			got, want float64
		}{{"mean", Mean(row.x), row.mean}, {"s", s, row.s}, {"u", u, row.u}, {"U95", expanded, row.u95}} {
			if c.want != 0 && math.Abs(c.got-c.want) > row.to {
				t.Errorf("%v: %s %.5f, want %g", row.x, c.name, c.got, c.want)
			}
		}
	}
}

func TestOrderOfRepeatsChangesNoBit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.SliceOfN(rapid.Float64Range(-1e6, 1e6), 1, 12).Draw(t, "x")
		y := rapid.Permutation(x).Draw(t, "y")
		if Mean(x) != Mean(y) || SampleStd(x) != SampleStd(y) {
			t.Errorf("%v and %v: means %g %g, s %g %g", x, y, Mean(x), Mean(y), SampleStd(x), SampleStd(y))
		}
		if !slices.Equal(x, slices.Clone(x)) {
			t.Error("changed")
		}
	})
}

func TestRepeatsOfFewOrHuge(t *testing.T) {
	if Mean(nil) != 0 || SampleStd(nil) != 0 || SampleStd([]float64{4}) != 0 || SampleStd([]float64{4, 4, 4}) != 0 {
		t.Error("none, one, or all alike")
	}
	if got := Mean([]float64{1.5e308, 1.5e308}); got != 1.5e308 {
		t.Errorf("mean of huge ones: %g", got)
	}
	if got := SampleStd([]float64{1e200, -1e200}); math.Abs(got/1e200-math.Sqrt2) > 1e-15 {
		t.Errorf("spread of huge ones: %g", got)
	}
}
