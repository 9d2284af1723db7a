package joint

import "math"

// Duty is what a joint is asked to do on average, and what it was rated for.
type Duty struct {
	AngleDeg  float64
	RevPerMin float64
	MeanNm    float64 // average torque in use, never the peak
	RatedNm   float64 // torque for 5000 h at 3° and 100 rev/min
}

// leastAngle is what smaller angles count as: the needles hardly roll below it.
const leastAngle = 3

// Life returns the hours that nine of ten joints outlast, by both exponents that sources hold:
//
//	h = 1.5e6/(β·n) · (Tr/Tm)^p,   p = 10/3 and p = 3
//
// β in degrees, below 3 taken as 3. The mean life is about five times that. What can't be reckoned
// (a speed or torque of 0) gives NaN or infinity.
//
// Source: sizing guide of a joint supplier (p = 10/3; rating at 5000 h, 3°, 100 rev/min); small
// angles: a propshaft maker's dimension sheets; p = 3: Seherr-Thoss, Schmelz and Aucktor, Universal
// Joints and Driveshafts, 4.7.
func Life(d Duty) (hours103, hours3 float64) {
	angle := math.Max(math.Abs(d.AngleDeg), leastAngle)
	ratio := d.RatedNm / d.MeanNm
	base := 1.5e6 / (angle * d.RevPerMin)
	hours3 = base * ratio * ratio * ratio
	return hours3 * cubeRoot(ratio), hours3
}

// cubeRoot finds the cube root of a number above 0 by Newton's rule: with plain arithmetic, so that
// every processor gives the same bits.
func cubeRoot(x float64) float64 {
	if !(x > 0) || math.IsInf(x, 0) {
		return math.NaN()
	}
	_, power := math.Frexp(x)
	root := math.Ldexp(1, (power+2)/3)
	for range 60 {
		next := (float64(2*root) + x/float64(root*root)) / 3
		if math.Abs(next-root) <= 1e-16*root {
			break
		}
		root = next
	}
	return root
}
