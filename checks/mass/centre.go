package mass

import (
	"fmt"
)

// Scale is one scale under or above a part, and where it stands, mm.
type Scale struct {
	Kg, X, Y float64
}

// Centre returns the mass on all scales together, kg, and the place of its centre, mm:
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
