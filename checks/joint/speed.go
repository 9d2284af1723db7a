package joint

import "math"

// RatioMin returns the least ω₂/ω₁ of one joint at an angle of 0…90°: cos β, with the driving fork
// square to the plane of the axes. Source: J. Carvill, Mechanical Engineer's Data Handbook, 2.4.3,
// p. 72.
func RatioMin(angleDeg float64) float64 { return math.Abs(math.Cos(angleDeg * degree)) }

// Ripple returns 100·(r_max − r_min) = 100·sin β·tan β in per cent for a joint, or for a chain by
// its residual. Source: Dana industrial driveshaft catalogue, degree of non-uniformity
// U = tan β·sin β.
func Ripple(residualDeg float64) float64 {
	sin := math.Sin(residualDeg * degree)
	return 100 * float64(sin*sin) / RatioMin(residualDeg)
}

// PeakAcceleration returns the largest angular acceleration in rad/s² behind one joint at an angle
// of 0…90° driven evenly at revPerMin, or behind a chain by its residual:
//
//	α = ω²·cos β·sin²β·sin 2θ/(1 − sin²β·cos²θ)²
//	cos 2θ = (√(1 + 8k²) − 1)/(2k),   k = sin²β/(2 − sin²β)
//
// What is too large for a number comes back as the largest number.
//
// Source: the standard result, differentiated from the speed ratio; the place of the peak is worked
// apart from this code (textbooks give cos 2θ ≈ 2k, 1.6 % low at 45°).
func PeakAcceleration(angleDeg, revPerMin float64) float64 {
	omega := revPerMin * (math.Pi / 30)
	return min(float64(omega*peakOfJoint(angleDeg)*omega), math.MaxFloat64)
}

// peakOfJoint is the peak for ω = 1, written so that neither a small nor a right angle loses digits.
func peakOfJoint(angleDeg float64) float64 {
	sin, cos := math.Sincos(angleDeg * degree)
	square, rest := float64(sin*sin), float64(cos*cos)
	k := square / (1 + rest)
	lessK := 2 * rest / (1 + rest) // 1 − k
	root := math.Sqrt(1 + float64(8*float64(k*k)))
	cos2 := 4 * k / (root + 1)
	less := (root + 1 - 4*k) / (root + 1) // 1 − cos 2θ
	if 4*k > 1 {
		less = float64(8*float64(k*lessK)) / float64((root+4*k-1)*(root+1))
	}
	sin2 := math.Sqrt(float64(less * (1 + cos2)))
	bottom := float64((1 + rest) * (lessK + float64(k*less)) / 2) // 1 − sin²β·cos²θ
	return math.Abs(cos) * square * sin2 / float64(bottom*bottom)
}
