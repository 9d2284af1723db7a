package clutch

import (
	"fmt"
	"math"
)

// Facing is a pair of rings pressed together, on one or more faces.
type Facing struct {
	OuterMM, InnerMM float64
	Friction         float64 // dimensionless
	Faces            int     // 2 for one disc
}

// WearTorque returns the torque in N·m that bedded-in facings hold at a clamp force in N, by uniform
// wear: n·μ·F·(D + d)/4. It is the lower of the two and the usual one.
//
// Source: Bhandari, Design of Machine Elements, ch. 11.
func (f Facing) WearTorque(force float64) (torqueNm float64, err error) {
	if err := f.possible(part{"clamp force", force}, part{"friction", f.Friction}); err != nil {
		return 0, err
	}
	return finite(float64(f.Faces) * f.Friction * force * (f.OuterMM + f.InnerMM) / 4 / 1000)
}

// PressureTorque returns the torque in N·m of new facings, by uniform pressure:
// n·μ·F·(D³ − d³)/(3·(D² − d²)).
//
// Source: Bhandari, Design of Machine Elements, ch. 11.
func (f Facing) PressureTorque(force float64) (torqueNm float64, err error) {
	if err := f.possible(part{"clamp force", force}, part{"friction", f.Friction}); err != nil {
		return 0, err
	}
	o, i := f.OuterMM, f.InnerMM
	// (D³ − d³)/(D² − d²) = (D² + Dd + d²)/(D + d), which keeps narrow rings exact.
	mean := (float64(o*o) + float64(o*i) + float64(i*i)) / (o + i) / 3
	return finite(float64(f.Faces) * f.Friction * force * mean / 1000)
}

type part struct {
	name  string
	value float64
}

func (f Facing) possible(parts ...part) error {
	for _, p := range append(parts, part{"outside diameter", f.OuterMM}, part{"inside diameter", f.InnerMM}, part{"count of faces", float64(f.Faces)}) {
		if !(p.value > 0) || math.IsInf(p.value, 0) {
			return fmt.Errorf("%s %g must be above 0; enter it again", p.name, p.value)
		}
	}
	if f.InnerMM >= f.OuterMM {
		return fmt.Errorf("facing: inside diameter %g mm is not below the outside diameter %g mm; measure again", f.InnerMM, f.OuterMM)
	}
	return nil
}

func finite(x float64) (float64, error) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, fmt.Errorf("clutch: the numbers are too large; check forces and diameters")
	}
	return x, nil
}
