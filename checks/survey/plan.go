package survey

import (
	"fmt"
	"math"
)

// PlanOfLine returns the plan angle of a part from the offsets of two places on it, to the left of a
// string along the vehicle, and their distance along the string, degrees: atan((y₁ − y₂)/s), y₁ at
// the front. It errs when the distance is not above 0 and finite.
// Source: driveline maintenance manual MM-96147, p. 87, formula 1.
func PlanOfLine(frontMM, rearMM, spanMM float64) (planDeg float64, err error) {
	if !(spanMM > 0) || math.IsInf(spanMM, 0) {
		return 0, fmt.Errorf("distance %g between the two places must be above 0; measure it again", spanMM)
	}
	return math.Atan((frontMM-rearMM)/spanMM) * deg, nil
}

// PlanOfShaft returns the plan angle of a shaft from the offsets of its ends and its own length,
// degrees: asin((y₁ − y₂)/L), for a shaft with next to no slope. It errs when the length is not
// longer than the offset. Source: as PlanOfLine, with the length along the shaft.
func PlanOfShaft(frontMM, rearMM, lengthMM float64) (planDeg float64, err error) {
	part := (frontMM - rearMM) / lengthMM
	if !(lengthMM > 0) || !(math.Abs(part) < 1) {
		return 0, fmt.Errorf("ends %g and %g aside don't fit a length of %g; measure again", frontMM, rearMM, lengthMM)
	}
	return math.Asin(part) * deg, nil
}

// Wheels is what shows whether the driven axle stands square to the other one.
type Wheels struct {
	LeftMM  float64 // wheelbase on the left
	RightMM float64 // and on the right
	TrackMM float64 // of the driven axle
	Front   bool    // the driven axle is the front one
}

// PlanOfAxle returns the plan angle of the pinion of an axle that stands square to its own pinion,
// against the other axle, degrees: atan((left − right)/track) at the rear, the opposite at the
// front. With the left side longer a rear axle's left wheel trails, so its nose points left.
//
// It errs when a length is not above 0 and finite. Source: plane geometry; worked out here.
func PlanOfAxle(w Wheels) (planDeg float64, err error) {
	for _, l := range []float64{w.LeftMM, w.RightMM, w.TrackMM} {
		if !(l > 0) || math.IsInf(l, 0) {
			return 0, fmt.Errorf("wheelbase and track %g must be above 0; measure again", l)
		}
	}
	planDeg = math.Atan((w.LeftMM-w.RightMM)/w.TrackMM) * deg
	if w.Front {
		return -planDeg, nil
	}
	return planDeg, nil
}
