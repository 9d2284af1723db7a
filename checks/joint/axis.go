package joint

import "math"

const degree = math.Pi / 180

// Axis is the forward direction of a part, of length 1, dimensionless: x forward, y left, z up.
type Axis struct{ X, Y, Z float64 }

// AxisOf returns the axis of a part with a slope (front end high: positive) and a plan angle (front
// end left: positive), both in degrees: (cos s·cos a, cos s·sin a, sin s).
func AxisOf(slopeDeg, planDeg float64) Axis {
	sinS, cosS := math.Sincos(slopeDeg * degree)
	sinA, cosA := math.Sincos(planDeg * degree)
	return Axis{float64(cosS * cosA), float64(cosS * sinA), sinS}
}

// SlopePlan returns the slope, −90…90, and the plan angle, −180…180, of an axis in degrees.
func (a Axis) SlopePlan() (slopeDeg, planDeg float64) {
	level := math.Sqrt(float64(a.X*a.X) + float64(a.Y*a.Y))
	return math.Atan2(a.Z, level) / degree, math.Atan2(a.Y, a.X) / degree
}

// Pitched returns the axis after the whole body it belongs to turned about the vehicle's y axis, so
// that a part with plan angle 0 gains deg of slope (its front end rises).
func (a Axis) Pitched(deg float64) Axis {
	sin, cos := math.Sincos(deg * degree)
	return Axis{float64(a.X*cos) - float64(a.Z*sin), a.Y, float64(a.X*sin) + float64(a.Z*cos)}
}

// Angle returns the angle between two axes in degrees, 0…180. From the tangent of cross and dot
// product, so that it stays exact for axes nearly in line.
func Angle(a, b Axis) float64 {
	return math.Atan2(length(cross(a, b)), dot(a, b)) / degree
}

func cross(a, b Axis) Axis {
	return Axis{
		float64(a.Y*b.Z) - float64(a.Z*b.Y),
		float64(a.Z*b.X) - float64(a.X*b.Z),
		float64(a.X*b.Y) - float64(a.Y*b.X),
	}
}

func dot(a, b Axis) float64 { return float64(a.X*b.X) + float64(a.Y*b.Y) + float64(a.Z*b.Z) }

func length(a Axis) float64 { return math.Sqrt(dot(a, a)) }
