package mass

import (
	"fmt"
	"math"
)

// Scale is one scale under or above a part, and where it stands.
type Scale struct {
	Kg, X, Y float64
}

// Centre returns the mass on all scales together and the place of its centre:
//
//	m = Σmᵢ,   x = Σmᵢ·xᵢ/m,   y = Σmᵢ·yᵢ/m
//
// It errs when they show nothing together, or a number is not finite. Source: statics.
func Centre(scales ...Scale) (kg, x, y float64, err error) {
	for _, s := range scales {
		kg += s.Kg
		x += float64(s.Kg * s.X)
		y += float64(s.Kg * s.Y)
	}
	if !(kg > 0) || !finite(x) || !finite(y) || !finite(kg) {
		return 0, 0, 0, fmt.Errorf("the scales show %g kg together; weigh again", kg)
	}
	return kg, x / kg, y / kg, nil
}

// Raised is a vehicle or part weighed level and again with one end up.
type Raised struct {
	BaseMM   float64 // between the two lines of support
	Kg       float64 // of all
	LowKg    float64 // on the end that stays down, level
	TiltedKg float64 // on the same end with the other raised
	RiseMM   float64 // by how much the other end was raised
}

// Height returns how far the centre of mass lies above the line through both supports, mm; where
// these are axles the loaded wheel radius comes on top:
//
//	h = R·ΔF/(W·tan β),   sin β = a/R
//
// It errs when a size is not above 0 or the rise is not less than the base. Source: statics; the
// same as the chain of a van maker's body builder guide 3.5.
func Height(r Raised) (mm float64, err error) {
	for _, size := range []struct {
		name  string
		value float64
	}{{"base", r.BaseMM}, {"mass", r.Kg}, {"rise", r.RiseMM}} {
		if err := positive(size.name, size.value); err != nil {
			return 0, err
		}
	}
	sine := r.RiseMM / r.BaseMM
	if sine >= 1 || !finite(r.LowKg) || !finite(r.TiltedKg) {
		return 0, fmt.Errorf("a rise of %g over a base of %g can't be; measure again", r.RiseMM, r.BaseMM)
	}
	tangent := sine / math.Sqrt(1-float64(sine*sine))
	return r.BaseMM * (r.TiltedKg - r.LowKg) / (r.Kg * tangent), nil
}
