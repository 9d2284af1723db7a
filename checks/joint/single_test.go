package joint

import (
	"math"
	"testing"
)

// Sources, shortened. A "worked apart" row was computed from the law named, away from this code.
const (
	carvill = "Carvill, Mechanical Engineer's Data Handbook 2.4.3 p. 72 (law); worked apart from this code"
	khurmi  = "Khurmi & Gupta, Theory of Machines, ch. 9 (from memory)"
)

// near fails unless got is want to within tol.
func near(t *testing.T, what string, got, want, tol float64, source string) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.6g, want %g ± %g (%s)", what, got, want, tol, source)
	}
}

// ratioMax is the greatest ω₂/ω₁, with the driving fork in the plane of the axes; the least is its
// inverse.
func ratioMax(angleDeg float64) float64 { return 1 / RatioMin(angleDeg) }

func TestOneJoint(t *testing.T) {
	for _, row := range []struct{ angle, most, least, ripple, place, peak, small float64 }{
		{1, 1.000152, 0.999848, 0.000305, 44.991, 0.000305, 0.000305},
		{3, 1.001372, 0.998630, 0.002743, 44.921, 0.002743, 0.002742},
		{5, 1.003820, 0.996195, 0.007625, 44.782, 0.007625, 0.007615},
		{7, 1.007510, 0.992546, 0.014964, 44.571, 0.014965, 0.014926},
		{10, 1.015427, 0.984808, 0.030619, 44.123, 0.030626, 0.030462},
		{15, 1.035276, 0.965926, 0.069350, 43.018, 0.069434, 0.068539},
		{20, 1.064178, 0.939693, 0.124485, 41.459, 0.124966, 0.121847},
		{25, 1.103378, 0.906308, 0.197070, 39.451, 0.198965, 0.190386},
		{30, 1.154701, 0.866025, 0.288675, 37.021, 0.294571, 0.274156},
		{45, 1.414214, 0.707107, 0.707107, 27.918, 0.787200, 0.616850},
	} {
		near(t, "greatest ratio", ratioMax(row.angle), row.most, 6e-7, carvill)
		near(t, "least ratio", RatioMin(row.angle), row.least, 6e-7, carvill)
		near(t, "ripple", Ripple(row.angle), 100*row.ripple, 6e-5, "Dana industrial catalogue, U = tan β·sin β (law); worked apart from this code")
		near(t, "peak acceleration", PeakAcceleration(row.angle, 30/math.Pi), row.peak, 6e-7, "worked apart from this code by finite differences")

		// The place of the peak and the small-angle form stand in no function; they tie the table
		// to the simulated crosses, which give the same peak by another road.
		s := crosses{axes: []Axis{AxisOf(0, 0), AxisOf(row.angle, 0)}}
		theta := row.place * degree
		near(t, "peak of the crosses", -s.acceleration(inPlane, theta), row.peak, 2e-6, "crosses simulated in space")
		near(t, "small-angle peak", math.Pow(row.angle*degree, 2), row.small, 6e-7, "ω²β², worked apart from this code")
	}
}

// inPlane is the driving pin that lies in a plane of axes which is upright.
var inPlane = Axis{0, 0, 1}

// acceleration of the driven side for ω = 1, by a central difference of the ratio.
func (s crosses) acceleration(start Axis, theta float64) float64 {
	const h = 1e-3
	return (s.ratio(start, theta+h) - s.ratio(start, theta-h)) / (2 * h)
}

func TestPublishedSingleJoints(t *testing.T) {
	near(t, "500 rev/min at 20°, greatest", 500*ratioMax(20), 532.1, 0.05, "exam copy of a "+khurmi)
	near(t, "500 rev/min at 20°, least", 500*RatioMin(20), 469.85, 0.005, "exam copy of a "+khurmi)

	near(t, "swing of 100 in 1200 rev/min", Ripple(16.423), 100*100.0/1200, 0.001, khurmi+": prints 16.4°")
	near(t, "then greatest", 1200*ratioMax(16.423), 1251, 0.1, khurmi)
	near(t, "then least", 1200*RatioMin(16.423), 1151, 0.1, khurmi)

	near(t, "1500 rev/min, axes include 160°", PeakAcceleration(180-160, 1500), 3083.4, 0.1, "worked apart from this code")
	near(t, "the same in print", PeakAcceleration(180-160, 1500), 3090, 0.0025*3090, khurmi+": rounded on the way")
	near(t, "torque of 12 kg at k 0.1 m", 12*0.1*0.1*PeakAcceleration(20, 1500), 370.0, 0.05, khurmi+": prints 371; worked apart from this code")

	twenty := crosses{axes: []Axis{AxisOf(0, 0), AxisOf(20, 0)}}
	omega := 240 * math.Pi / 30
	alpha := omega * omega * twenty.acceleration(inPlane, 45*degree)
	near(t, "240 rev/min at 20°, fork at 45°", alpha, -78.33, 0.01, "worked apart from this code")
	torque := (200 + 55*0.15*0.15*alpha) * twenty.ratio(inPlane, 45*degree)
	near(t, "its drive torque", torque, 102.87, 0.01, khurmi+": prints 102.6, rounded on the way; worked apart from this code")

	near(t, "swing of 24 in 240 rev/min", Ripple(17.964), 10, 0.001, khurmi+": prints 18.2°, having rounded the cosine; worked apart from this code")

	near(t, "fork in the plane, 30°", ratioMax(30), 1/math.Cos(math.Pi/6), 1e-12, "mechanics.stackexchange.com question 30314")
	near(t, "fork square to the plane, 30°", RatioMin(30), math.Cos(math.Pi/6), 1e-12, "the same")

	near(t, "driving pin in the plane of the shafts, 20°", twenty.ratio(inPlane, 0), 1.06418, 1e-5, "after a problem of Beer & Johnston; worked apart from this code")
	near(t, "driving pin square to it, 20°", twenty.ratio(inPlane, math.Pi/2), math.Cos(20*degree), 1e-5, "the same")

	near(t, "100 rad/s at 25°, greatest", 100*ratioMax(25), 110.338, 1e-3, carvill)
	near(t, "100 rad/s at 25°, least", 100*RatioMin(25), 90.631, 1e-3, carvill)

	near(t, "60°, greatest", ratioMax(60), 2, 1e-12, "Dana industrial catalogue, diagram of i over a turn")
	near(t, "60°, least", RatioMin(60), 0.5, 1e-12, "the same")
	near(t, "60°, ripple", Ripple(60), 150, 1e-9, "the same, U = tan β·sin β")

	near(t, "±8 % of the mean", Ripple(22.602), 16, 0.001, "Rattan, Theory of Machines (from memory): prints 22.6°")
	near(t, "8 % in all", Ripple(16.096), 8, 0.001, "worked apart from this code")
}

func TestRightAnglesAndBeyondStayNumbers(t *testing.T) {
	for _, angle := range []float64{0, 1e-12, 89.999999, 90, 120, 180, 360, -20, 1e300} {
		for name, got := range map[string]float64{
			"RatioMin": RatioMin(angle), "Ripple": Ripple(angle),
			"Peak": PeakAcceleration(angle, 3000), "Peak at rest": PeakAcceleration(angle, 0), "Peak at 1e300": PeakAcceleration(angle, 1e300),
		} {
			if math.IsNaN(got) || math.IsInf(got, 0) || got < 0 {
				t.Errorf("%s(%g) = %g", name, angle, got)
			}
		}
	}
	// With c = cos β the peak near a right angle is 3√3/8/c², worked apart from this code.
	c := math.Cos(89.999 * degree)
	near(t, "peak at 89.999°", PeakAcceleration(89.999, 30/math.Pi)*c*c, 3*math.Sqrt(3)/8, 1e-6, "limit of the standard result")
}
