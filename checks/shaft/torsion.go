package shaft

import "math"

// Shear returns the shear stress that a torque makes in the outer skin of a tube, MPa:
//
//	τ = 16·T·D/(π·(D⁴ − d⁴))
//
// It errs when a size is not above 0 and finite, the wall is too thick or the torque below 0.
// Source: torsion of a round tube (Hibbeler, Mechanics of Materials, ch. 5).
func Shear(t Tube, torqueNm float64) (mpa float64, err error) {
	if err := t.check(); err != nil {
		return 0, err
	}
	if err := torque(torqueNm); err != nil {
		return 0, err
	}
	return sized("stress", 16*torqueNm*1000*t.OuterMM/(math.Pi*t.fourths()))
}

// Twist returns by how much a torque turns one end of the tube against the other, degrees:
//
//	φ = T·L/(G·J),   J = π·(D⁴ − d⁴)/32
//
// The whole length counts as tube, so yokes make the true twist a little smaller. It errs like
// Shear. Source: torsion of a round tube (Hibbeler, Mechanics of Materials, ch. 5).
func Twist(t Tube, m Material, torqueNm float64) (deg float64, err error) {
	if err := t.check(); err != nil {
		return 0, err
	}
	if err := positive(part{"shear modulus", m.ShearGPa}); err != nil {
		return 0, err
	}
	if err := torque(torqueNm); err != nil {
		return 0, err
	}
	j := math.Pi * t.fourths() / 32
	return sized("twist", torqueNm*1000*t.LengthMM/(m.ShearGPa*1000*j)*180/math.Pi)
}

func torque(nm float64) error { return positive(part{"torque", nm}) }
