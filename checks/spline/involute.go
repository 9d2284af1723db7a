package spline

import (
	"fmt"
	"math"
)

const degree = math.Pi / 180

// involuteMost is the largest pressure angle looked for when an involute is inverted, radians.
const involuteMost = 1.5

// Inv returns the involute of a pressure angle, tan x − x with x in radians.
//
// Source: any text on gearing; the angle at which an involute stands off its base radius.
func Inv(deg float64) float64 {
	x := deg * degree
	return math.Tan(x) - x
}

// InvAngle returns the pressure angle in degrees of which the involute is inv, by bisection between
// 0 and 1.5 rad. It errs outside 0 … 12.6.
func InvAngle(inv float64) (deg float64, err error) {
	low, high := 0.0, involuteMost
	if !(inv >= 0 && inv <= math.Tan(high)-high) {
		return 0, fmt.Errorf("involute %g is none of a tooth; check diameters, count and pin", inv)
	}
	for range 64 {
		mid := (low + high) / 2
		if math.Tan(mid)-mid < inv {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2 / degree, nil
}

// positive errs for the first number that is not above 0 and finite.
func positive(parts ...part) error {
	for _, p := range parts {
		if !(p.value > 0) || math.IsInf(p.value, 0) {
			return fmt.Errorf("%s %g must be above 0; enter it again", p.name, p.value)
		}
	}
	return nil
}

type part struct {
	name  string
	value float64
}

// finite errs where sums of possible numbers left the range of numbers.
func finite(what string, x float64) (float64, error) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, fmt.Errorf("%s is too large or too small for a number; check the sizes", what)
	}
	return x, nil
}
