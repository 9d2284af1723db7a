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
