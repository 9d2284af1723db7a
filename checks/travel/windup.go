package travel

import "errors"

// ErrWindUp is returned for a spring without size or stiffness.
var ErrWindUp = errors.New("winding up needs halves and rates greater than 0")

// Spring is what one leaf spring holds the axle with against turning.
type Spring struct {
	FrontHalfMM, RearHalfMM float64 // edge of the axle clamp to eye centre
	RateNPerMM              float64 // of the whole spring, straight up
}

// WindUpStiffness returns the torque in N·m that turns the axle on ONE spring by a radian:
//
//	K = k·a²·b²·L/(a³ + b³)      L = a + b; equal halves: k·a²
//
// It errs with ErrWindUp.
//
// Source: as LimbStiffness, with limbs that bend to one arc (rates as 1/a³ and 1/b³); equal halves
// as SAE HS-788 (from memory).
func (s Spring) WindUpStiffness() (float64, error) {
	a, b, k := s.FrontHalfMM, s.RearHalfMM, s.RateNPerMM
	if !positive(a, b, k) {
		return 0, ErrWindUp
	}
	square := float64(a * b * (a * b))
	c := float64(k*square) / (a + b) // rate of a limb times its length cubed
	return LimbStiffness(c/float64(a*a*a), c/float64(b*b*b), a+b)
}

// LimbStiffness returns the torque in N·m that turns the axle on one spring by a radian, from the
// rates of its limbs in N/mm and the length between its eyes in mm:
//
//	K = L²/(1/ca + 1/cb)
//
// It errs with ErrWindUp.
//
// Source: free body of a spring on two eyes under a couple, worked apart from this code.
func LimbStiffness(frontNPerMM, rearNPerMM, lengthMM float64) (float64, error) {
	if !positive(frontNPerMM, rearNPerMM, lengthMM) {
		return 0, ErrWindUp
	}
	return float64(lengthMM*lengthMM) / (1/frontNPerMM + 1/rearNPerMM) / 1000, nil
}

// WindUp returns by how many degrees a torque on the axle in N·m turns its housing on springs of
// that stiffness together, in N·m/rad. It errs with ErrWindUp.
func WindUp(torqueNM, stiffness float64) (float64, error) {
	if !positive(stiffness) || !finite(torqueNM) {
		return 0, ErrWindUp
	}
	return torqueNM / stiffness / degree, nil
}
