package shaft

import "math"

// Rotor is a shaft to be balanced.
type Rotor struct {
	Kg        float64
	RevPerMin float64 // highest speed in use
	GradeMMs  float64 // balance grade G: offset of the centre of mass times angular speed, mm/s
}

// Unbalance returns the permissible residual unbalance of the whole rotor, g·mm; half of it goes to
// each end of a shaft whose centre of mass is near its middle:
//
//	U = 1000·G·m/ω,   ω = π·n/30
//
// It errs when a number is not above 0 and finite. Source: ISO 21940-11:2016, permissible residual
// unbalance from the grade (from memory).
func Unbalance(r Rotor) (gMM float64, err error) {
	if err := positive(part{"shaft mass", r.Kg}, part{"shaft speed", r.RevPerMin}, part{"balance grade", r.GradeMMs}); err != nil {
		return 0, err
	}
	return sized("unbalance", 1000*r.GradeMMs*r.Kg/(math.Pi*r.RevPerMin/30))
}
