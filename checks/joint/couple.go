package joint

import "math"

// Couples returns the greatest secondary couples of a joint at an angle under a torque, N·m, each
// twice a turn and falling to 0 in between:
//
//	on the driving yoke T·tan β,   on the driven yoke T·sin β
//
// They bend the shafts and load what holds these. On a tube between two joints of equal angle they
// cancel where its end shafts are parallel and add up to 2·T·sin β where these cross. Without
// friction. A torque or angle that is no number, or an angle of 90° or more, gives NaN.
//
// Source: the cross passes torque along its own normal alone (a propshaft maker's technical pages,
// section 2.2); worked out here.
func Couples(torqueNm, angleDeg float64) (drivingNm, drivenNm float64) {
	b := angleDeg * math.Pi / 180
	if !(math.Abs(b) < math.Pi/2) {
		return math.NaN(), math.NaN()
	}
	return torqueNm * math.Tan(math.Abs(b)), torqueNm * math.Sin(math.Abs(b))
}
