package mass

import (
	"fmt"
	"math"
)

// SlingLeg returns the pull in each of n equal legs that carry kg together, in kg as its tag says:
//
//	pull = m/(n·sin α),   α from the HORIZONTAL
//
// It errs for no leg, a mass that is not above 0, or an angle outside 0 … 90°.
// Source: rigging tables (1.155 at 60°, 1.414 at 45°, 2.000 at 30°); ASME B30.9 (from memory).
func SlingLeg(kg float64, legs int, angleDeg float64) (pullKg float64, err error) {
	if err := positive("mass", kg); err != nil {
		return 0, err
	}
	if legs < 1 || !(angleDeg > 0 && angleDeg <= 90) {
		return 0, fmt.Errorf("%d legs at %g from the horizontal can't carry; count and measure again", legs, angleDeg)
	}
	return kg / float64(float64(legs)*math.Sin(angleDeg*math.Pi/180)), nil
}

// SlingPair returns the pull in two legs at different angles from the horizontal, kg:
//
//	p₁ = m·cos α₂/sin(α₁ + α₂),   p₂ = m·cos α₁/sin(α₁ + α₂)
//
// It errs for a mass that is not above 0 or an angle that is not between 0 and 90°.
// Source: balance of two forces and a weight.
func SlingPair(kg, angle1Deg, angle2Deg float64) (pull1Kg, pull2Kg float64, err error) {
	if err := positive("mass", kg); err != nil {
		return 0, 0, err
	}
	for _, a := range []float64{angle1Deg, angle2Deg} {
		if !(a > 0 && a < 90) {
			return 0, 0, fmt.Errorf("a leg at %g from the horizontal can't pair with another; measure again", a)
		}
	}
	a, b := angle1Deg*math.Pi/180, angle2Deg*math.Pi/180
	both := math.Sin(a + b)
	return kg * math.Cos(b) / both, kg * math.Cos(a) / both, nil
}
