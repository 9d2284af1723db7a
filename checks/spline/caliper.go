package spline

import "math"

// OddTip returns what flat jaws show across the tips of an external spline with an odd count, which
// they can't span: at rest, with one tip against two, and rocked to the largest reading:
//
//	rest Do·(1 + cos(180°/N − δ))/2,   rocked Do·cos(90°/N − δ),   δ = half the angle of a tip's land
//
// landRad is δ in radians; about 0.99/(N + 1) for teeth of 30°. With an even count both are Do.
//
// Source: plane geometry, worked apart from this code.
func OddTip(count int, tipMM, landRad float64) (restMM, rockedMM float64) {
	if count%2 == 0 || count < 3 {
		return tipMM, tipMM
	}
	n := float64(count)
	third := math.Max(0, math.Pi/n-landRad)
	half := math.Max(0, math.Pi/2/n-landRad)
	return tipMM * (1 + math.Cos(third)) / 2, tipMM * math.Cos(half)
}

// TipLand returns half the angle that the tip's land of a 30° tooth takes, radians.
//
// Source: worked apart from this code from the involute at the tip; within 5 % for 8 teeth and more.
func TipLand(count int) float64 { return 0.99 / (float64(count) + 1) }
