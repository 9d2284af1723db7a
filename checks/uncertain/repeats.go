package uncertain

import (
	"math"
	"slices"
)

// Mean returns the mean of x, 0 for none. The sum runs in rising order, so that the order in which
// readings came in never changes a bit. Source: JCGM 100:2008, 4.2.1 (from memory).
func Mean(x []float64) float64 {
	if len(x) == 0 {
		return 0
	}
	n := float64(len(x))
	sum, shares := 0.0, 0.0
	for _, v := range sorted(x) {
		sum += v
		shares += v / n
	}
	if math.IsInf(sum, 0) {
		return shares // the sum was too large for a float, the mean is not
	}
	return sum / n
}

// SampleStd returns the sample standard deviation s of x, 0 for fewer than two:
//
//	s = √(Σ(x − mean)²/(n − 1))
//
// Source: JCGM 100:2008, 4.2.2 (from memory).
func SampleStd(x []float64) float64 {
	if len(x) < 2 {
		return 0
	}
	mean := Mean(x)
	rising := sorted(x)
	// Scaled by the largest deviation, so that no square overflows or vanishes.
	largest := max(mean-rising[0], rising[len(rising)-1]-mean)
	if largest == 0 {
		return 0
	}
	sum := 0.0
	for _, v := range rising {
		d := (v - mean) / largest
		sum += float64(d * d)
	}
	return float64(largest * math.Sqrt(sum/float64(len(x)-1)))
}

func sorted(x []float64) []float64 {
	out := slices.Clone(x)
	slices.Sort(out)
	return out
}
