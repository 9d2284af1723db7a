package joint

import "math"

// Chain is a line of parts from front to rear with a universal joint between each two neighbours.
type Chain struct {
	// Axes of the parts, front to rear, at least two; joint i lies between Axes[i] and Axes[i+1].
	Axes []Axis
	// PhaseDeg of each inner shaft (inner shaft i is Axes[i+1]): how far the fork at its rear end is
	// turned against the fork at its front end, clockwise when one looks forward along it; 0 = in
	// line. Counts modulo 180°. What is missing counts as 0.
	PhaseDeg []float64
	// Double tells for each joint whether it is a double joint that turns evenly by itself. What is
	// missing is single.
	Double []bool
}

// Joints is the number of joints.
func (c Chain) Joints() int { return max(len(c.Axes)-1, 0) }

// Angle returns the working angle of joint i in degrees: the angle in space between the two axes
// that meet there. A joint that the chain doesn't have has none: 0.
func (c Chain) Angle(i int) float64 {
	if i < 0 || i >= c.Joints() {
		return 0
	}
	return Angle(c.Axes[i], c.Axes[i+1])
}

// Angles puts the working angles of all joints in degrees, front to rear, into a slice that it may
// take over.
func (c Chain) Angles(into []float64) []float64 {
	into = into[:0]
	for i := range c.Joints() {
		into = append(into, c.Angle(i))
	}
	return into
}

// Residual returns the equivalent angle of the joints first…last, both included, counted from 0 at
// the front: the angle in degrees, 0…90, of the one joint that would make the speed vary as much.
// Driving from either end gives the same. Joints that the chain doesn't have are left out.
func (c Chain) Residual(first, last int) float64 {
	m := c.through(first, last)
	turning, mirroring := m.turning.size(), m.mirroring.size()
	return 2 * math.Atan2(math.Sqrt(min(turning, mirroring)), math.Sqrt(max(turning, mirroring))) / degree
}

// Twist returns how far the plane of the joint behind inner shaft i is turned from the plane of the
// joint before it, in degrees, −90 < twist ≤ 90, clockwise when one looks forward along the shaft.
// Planes have no front and back, so it counts modulo 180°. Where the joint before it has no plane
// (under 1e-9 rad) it is 0.
func (c Chain) Twist(i int) float64 {
	if i < 0 || i+2 >= len(c.Axes) {
		return 0
	}
	before, ok := c.planeAt(i)
	if !ok {
		return 0
	}
	after, ok := c.ownPlane(i + 1)
	if !ok {
		return 0
	}
	cos, sin := twist(before, after, c.Axes[i+1])
	return halfTurn(math.Atan2(sin, cos) / degree)
}

// BestPhase returns the phase of inner shaft i, −90 < phase ≤ 90 degrees, that leaves the whole
// chain the smallest residual while all else stays as it is. Where the phase makes no difference
// it is the present one.
func (c Chain) BestPhase(i int) float64 {
	present := halfTurn(c.phase(i))
	if i < 0 || i+2 >= len(c.Axes) {
		return present
	}
	plane, have := c.planeAt(i)
	front, rear := c.through(0, i), c.throughFrom(plane, have, i+1, c.Joints()-1)
	// The mirroring parts γ of the two halves meet as e^(jρ)·α₂γ₁ + e^(−jρ)·γ₂ᾱ₁, ρ the rotation
	// between them; they work against each other fully where 2ρ = 180° + arg γ₂ᾱ₁ − arg α₂γ₁.
	a := rear.turning.times(front.mirroring)
	b := rear.mirroring.times(front.turning.conjugate())
	if a.size() < noEffect || b.size() < noEffect {
		return present
	}
	rho := (math.Pi + math.Atan2(b.im, b.re) - math.Atan2(a.im, a.re)) / 2 / degree
	if !c.double(i) {
		rho -= 90
	}
	return halfTurn(rho + c.Twist(i))
}

// noEffect is a mirroring part that no phase can make felt: that of a joint of 1e-9 rad.
const noEffect = 1e-18 / 4

func (c Chain) phase(i int) float64 {
	if i < 0 || i >= len(c.PhaseDeg) {
		return 0
	}
	return c.PhaseDeg[i]
}

func (c Chain) double(i int) bool { return i >= 0 && i < len(c.Double) && c.Double[i] }

// halfTurn brings degrees into −90 < d ≤ 90 by whole half turns.
func halfTurn(deg float64) float64 {
	deg = math.Mod(deg, 180)
	switch {
	case deg > 90:
		return deg - 180
	case deg <= -90:
		return deg + 180
	}
	return deg + 0 // never −0
}
