// Package mass holds the statics of a swap: where the centre of mass of engine and gearbox lies,
// what the axles carry afterwards, what the mounts carry with and without torque, and what the legs
// of a sling carry while it hangs.
//
// Masses and loads are kilograms as a scale shows them, lengths millimetres, x forward and y left of
// one origin, torques N·m, angles degrees. The package knows nothing of readings or limits.
package mass

import (
	"fmt"
	"math"
)

// G is the standard acceleration of free fall, m/s². Source: CGPM 1901, exact by definition.
const G = 9.80665

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

func positive(name string, x float64) error {
	if !(x > 0) || math.IsInf(x, 0) {
		return fmt.Errorf("%s %g must be above 0; measure it again", name, x)
	}
	return nil
}
