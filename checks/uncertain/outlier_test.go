package uncertain_test

import (
	"math"
	"testing"

	"yokebook/checks/uncertain"
)

func TestOutlier(t *testing.T) {
	for _, c := range []struct {
		name   string
		values []float64
		step   float64
		apart  int
		ratio  float64
		source string
	}{
		{"six titrations", []float64{10.45, 10.26, 10.49, 10.36, 10.53, 10.77}, 0.01, -1, 0.4706, "after Miller & Miller: Q high 0.4706, kept against 0.625"},
		{"four slopes, one far", []float64{3.1, 3.2, 3.1, 4.6}, 0.1, 3, 0.9333, "gap 1.4 of range 1.5 against 0.829, worked apart from this code"},
		{"five slopes, one far", []float64{7.4, 7.5, 7.3, 7.4, 8.9}, 0.1, 4, 0.8750, "gap 1.4 of range 1.6 against 0.710, worked apart from this code"},
		{"five slopes, one a little far", []float64{12.1, 12.3, 12.2, 12.2, 12.9}, 0.1, 4, 0.7500, "gap 0.6 of range 0.8 against 0.710, worked apart from this code"},
		{"low one", []float64{12.9, 11.9, 12.9, 12.8, 12.9}, 0.1, 1, 0.9, "gap 0.9 of range 1.0, worked apart from this code"},
		{"two alike and one step off", []float64{3.1, 3.1, 3.2}, 0.1, -1, 0, "within two display steps: not tested, though Q is 1"},
		{"two alike and two steps off", []float64{3.1, 3.1, 3.3}, 0.1, -1, 0, "within two display steps: not tested"},
		{"two", []float64{3, 9}, 0.1, -1, 0, "two values have no outlier"},
		{"all alike", []float64{3, 3, 3}, 0, -1, 0, "no range"},
	} {
		apart, ratio := uncertain.Outlier(c.values, c.step)
		if apart != c.apart || math.Abs(ratio-c.ratio) > 1e-4 {
			t.Errorf("%s: %d with %.4f, want %d with %.4f (%s)", c.name, apart, ratio, c.apart, c.ratio, c.source)
		}
	}
}

// GUM H.2 by its second way: R = V/I·cos φ, X = V/I·sin φ, Z = V/I for each of five sets taken
// together, then mean and s/√n of each. Source: JCGM 100:2008, H.2.4, table H.4 (from memory).
func TestSimultaneousResistanceAndReactance(t *testing.T) {
	v := []float64{5.007, 4.994, 5.005, 4.990, 4.999}
	i := []float64{19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3}
	phi := []float64{1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
	for _, c := range []struct {
		name    string
		of      func(k int) float64
		mean, u float64
	}{
		{"R", func(k int) float64 { return v[k] / i[k] * math.Cos(phi[k]) }, 127.732, 0.071},
		{"X", func(k int) float64 { return v[k] / i[k] * math.Sin(phi[k]) }, 219.847, 0.295},
		{"Z", func(k int) float64 { return v[k] / i[k] }, 254.260, 0.236},
	} {
		var set []float64
		for k := range v {
			set = append(set, c.of(k))
		}
		mean, u := uncertain.Mean(set), uncertain.SampleStd(set)/math.Sqrt(5)
		if math.Abs(mean-c.mean) > 6e-4 || math.Abs(u-c.u) > 6e-4 {
			t.Errorf("%s = %.4f, u %.4f; want %.3f, %.3f", c.name, mean, u, c.mean, c.u)
		}
	}
}
