package uncertain

import "math"

// dixon95 holds the critical values of Dixon's r10 = gap/range for 3 to 10 values, two-sided 95 %.
// Source: D. B. Rorabacher, Anal. Chem. 1991, 63, 139–146, as reprinted in LibreTexts Chemistry,
// appendix 06, column of α = 0.05.
var dixon95 = [...]float64{3: 0.970, 4: 0.829, 5: 0.710, 6: 0.625, 7: 0.568, 8: 0.526, 9: 0.493, 10: 0.466}

// Outlier returns the index of the one value that stands apart from the others by Dixon's two-sided
// test at 95 %, with its gap/range. It returns −1 when none does, for fewer than 3 or more than 10
// values, and when the range is within two display steps: then any tie would make the test cry out
// at a perfectly good set.
func Outlier(values []float64, step float64) (index int, ratio float64) {
	n := len(values)
	if n < 3 || n > 10 {
		return -1, 0
	}
	x := sorted(values)
	span := x[n-1] - x[0]
	if span <= float64(2*step)+float64(1e-9*step) || span == 0 {
		return -1, 0
	}
	low, high := (x[1]-x[0])/span, (x[n-1]-x[n-2])/span
	apart, ratio := x[0], low
	if high > low {
		apart, ratio = x[n-1], high
	}
	if ratio <= dixon95[n] {
		return -1, ratio
	}
	for i, v := range values {
		if math.Float64bits(v) == math.Float64bits(apart) {
			return i, ratio
		}
	}
	return -1, ratio
}
