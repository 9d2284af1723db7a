package uncertain

import "math"

// naturalLog returns ln x for a normal x > 0, the same bits on every processor:
//
//	x = m·2^e, ½√2 ≤ m < √2,   ln x = e·ln 2 + 2·(s + s³/3 + s⁵/5 + …),   s = (m−1)/(m+1)
//
// |s| < 0.172, so eleven terms reach 1e-18. Source: the area tangent series, Abramowitz & Stegun
// 4.1.27 (from memory).
func naturalLog(x float64) float64 {
	m, e := math.Frexp(x)
	if m < math.Sqrt2/2 {
		m, e = 2*m, e-1
	}
	s := (m - 1) / (m + 1)
	square := s * s
	sum := 0.0
	for k := 21; k >= 1; k -= 2 {
		sum = float64(sum*square) + 1/float64(k)
	}
	return float64(float64(e)*math.Ln2) + float64(2*s*sum)
}
