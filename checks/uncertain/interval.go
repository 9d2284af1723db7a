package uncertain

import "math"

// Interval returns the 5 % and the 95 % point of draws, widened where needed to hold best.
//
// Of n draws in rising order, numbered from 0, low is number k and high number n−1−k with k = n/20
// rounded down: of 4,096 the 205th from below and the 205th from above. So fewer than 5 % lie
// beyond either, and "high ≤ limit" says the same as "at least 95 % of the draws are ≤ limit".
// Draws that are not a number are left out; without any left both ends are best. draws is not changed.
func Interval(draws []float64, best float64) (low, high float64) {
	x := make([]float64, 0, len(draws))
	for _, d := range draws {
		if !math.IsNaN(d) {
			x = append(x, d)
		}
	}
	if len(x) == 0 {
		return best, best
	}
	k := len(x) / 20
	low = pick(x, k)
	// Everything from k on is now at or above low, so the upper point is looked for there alone.
	high = pick(x[k:], len(x)-1-2*k)
	return min(low, best) + 0, max(high, best) + 0
}

// pick rearranges x so that x[k] is its (k+1)-th smallest, nothing before it is larger and nothing
// after it smaller, and returns it. x holds no NaN.
func pick(x []float64, k int) float64 {
	for len(x) > 1 {
		pivot := median(x[0], x[len(x)/2], x[len(x)-1])
		below := partition(x, func(v float64) bool { return v < pivot })
		if k < below {
			x = x[:below]
			continue
		}
		x, k = x[below:], k-below
		same := partition(x, func(v float64) bool { return v == pivot })
		if k < same {
			return pivot
		}
		x, k = x[same:], k-same
	}
	return x[0]
}

// partition moves what belongs to the front of x there and returns how many do.
func partition(x []float64, belongs func(float64) bool) int {
	n := 0
	for i, v := range x {
		if belongs(v) {
			x[i], x[n] = x[n], v
			n++
		}
	}
	return n
}

func median(a, b, c float64) float64 {
	return max(min(a, b), min(max(a, b), c))
}

// Chance returns the share of true ones, 0 for none at all.
func Chance(pass []bool) float64 {
	if len(pass) == 0 {
		return 0
	}
	n := 0
	for _, ok := range pass {
		if ok {
			n++
		}
	}
	return float64(n) / float64(len(pass))
}
