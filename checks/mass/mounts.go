package mass

import (
	"fmt"
	"math"
)

// Place is where a mount stands, mm.
type Place struct {
	X, Y float64
}

// Unit is what three mounts carry, with its centre, mm.
type Unit struct {
	Kg, X, Y float64
	TorqueNm float64 // reaction about the length of the vehicle: turns the unit's left side down
}

// Mounts returns the load on each of three mounts, kg, downward positive. They balance weight and
// torque:
//
//	ΣF = W,   ΣF·x = W·x,   ΣF·y = W·y + T/g
//
// A negative load is a mount that is pulled upward: without torque it says that the centre of mass
// lies outside the triangle and the unit tips. It errs when the three stand in one line.
// Source: statics of a free body. The torque that a unit with a lengthwise engine puts on its
// mounts is that of its output shaft: engine torque times gearbox ratio.
func Mounts(u Unit, at [3]Place) (kg [3]float64, err error) {
	// twice the signed area of the triangle; cover is that of each part seen from the point loaded.
	area := float64((at[1].X-at[0].X)*(at[2].Y-at[0].Y)) - float64((at[2].X-at[0].X)*(at[1].Y-at[0].Y))
	size := 0.0
	for i, p := range at {
		q := at[(i+1)%3]
		size = math.Max(size, math.Max(math.Abs(p.X-q.X), math.Abs(p.Y-q.Y)))
	}
	if !finite(area) || !(math.Abs(area) > 1e-9*float64(size*size)) {
		return kg, fmt.Errorf("the three mounts stand in one line; check where they are")
	}
	twist := u.TorqueNm * 1000 / G
	for i := range at {
		b, c := at[(i+1)%3], at[(i+2)%3]
		cover := float64((b.X-u.X)*(c.Y-u.Y)) - float64((c.X-u.X)*(b.Y-u.Y))
		// a moment about x is the weight moved aside: the load changes with ∂cover/∂y.
		aside := c.X - b.X
		kg[i] = (float64(u.Kg*cover) + float64(twist*aside)) / area
	}
	return kg, nil
}
