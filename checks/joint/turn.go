package joint

import "math"

// planar is a vector of the plane or a complex number.
type planar struct{ re, im float64 }

func (a planar) times(b planar) planar {
	return planar{
		float64(a.re*b.re) - float64(a.im*b.im),
		float64(a.re*b.im) + float64(a.im*b.re),
	}
}

func (a planar) plus(b planar) planar { return planar{a.re + b.re, a.im + b.im} }
func (a planar) conjugate() planar    { return planar{a.re, -a.im} }
func (a planar) by(factor float64) planar {
	return planar{float64(a.re * factor), float64(a.im * factor)}
}
func (a planar) size() float64 { return math.Sqrt(float64(a.re*a.re) + float64(a.im*a.im)) }

// turn is the real 2×2 matrix of a run of joints: it takes e to turning·e + mirroring·ē.
type turn struct{ turning, mirroring planar }

// throughJoint follows m by a joint given by its half-angle square s = sin²(β/2).
func (m turn) throughJoint(s float64) turn {
	return turn{
		m.turning.by(1 - s).plus(m.mirroring.conjugate().by(-s)),
		m.mirroring.by(1 - s).plus(m.turning.conjugate().by(-s)),
	}
}

// rotated follows m by a rotation.
func (m turn) rotated(by planar) turn {
	return turn{by.times(m.turning), by.times(m.mirroring)}
}

// through is the matrix of joints first…last.
func (c Chain) through(first, last int) turn {
	return c.throughFrom(Axis{}, false, first, last)
}

// throughFrom is the matrix of joints first…last, from the driving fork of the first, where the
// joint before them turned in a plane (have) or there is none.
func (c Chain) throughFrom(plane Axis, have bool, first, last int) turn {
	m := turn{turning: planar{re: 1}}
	first = max(first, 0)
	for i := first; i <= last && i < c.Joints(); i++ {
		own, ok := c.ownPlane(i)
		if !ok && !have {
			continue // in line and nothing before it: no effect
		}
		if have && i > first {
			by := c.onward(i - 1)
			if ok {
				cos, sin := twist(plane, own, c.Axes[i])
				by = by.times(planar{cos, -sin})
			}
			m = m.rotated(by)
		}
		if ok {
			plane, have = own, true
		}
		if !c.double(i) {
			m = m.throughJoint(halfAngleSquare(c.Axes[i], c.Axes[i+1]))
		}
	}
	return m
}

// onward is the rotation from the turn that joint i gives to the driving fork of the next one, as
// long as the plane stays: a quarter turn from fork to fork of a single joint, and the phase.
func (c Chain) onward(i int) planar {
	phase := c.phase(i)
	by := planar{re: 1}
	if phase != 0 {
		sin, cos := math.Sincos(math.Mod(phase, 360) * degree)
		by = planar{cos, sin}
	}
	if !c.double(i) {
		by = planar{-by.im, by.re}
	}
	return by
}

// inLine is the sine of the angle under which a joint has no plane of its own.
const inLine = 1e-9

// ownPlane returns the normal of the plane of joint i, front axis × rear axis, of length 1; not ok
// when its axes are in line.
func (c Chain) ownPlane(i int) (normal Axis, ok bool) {
	n := cross(c.Axes[i], c.Axes[i+1])
	size := length(n)
	if !(size >= inLine) {
		return Axis{}, false
	}
	return Axis{n.X / size, n.Y / size, n.Z / size}, true
}

// planeAt returns the plane that joint i turns in: its own, else that of the nearest joint before
// it that has one.
func (c Chain) planeAt(i int) (normal Axis, ok bool) {
	for ; i >= 0; i-- {
		if normal, ok = c.ownPlane(i); ok {
			return normal, true
		}
	}
	return Axis{}, false
}

// twist returns cosine and sine of the turn about a shaft from one plane to another, by their
// normals; both lie square to the shaft, or so nearly that only the direction matters.
func twist(from, to, shaft Axis) (cos, sin float64) {
	cos, sin = dot(from, to), dot(cross(from, to), shaft)
	size := math.Sqrt(float64(cos*cos) + float64(sin*sin))
	if size == 0 {
		return 1, 0
	}
	return cos / size, sin / size
}

// halfAngleSquare is sin²(β/2) of the angle between two axes, exact for small ones.
func halfAngleSquare(a, b Axis) float64 {
	n := cross(a, b)
	square, d := dot(n, n), dot(a, b)
	whole := math.Sqrt(square + float64(d*d)) // 1 but for rounding
	if d <= 0 {
		return (whole - d) / (2 * whole)
	}
	return square / (2 * float64(whole*(whole+d)))
}
