package slip

import (
	"errors"
	"math"
)

// ErrReach is returned where a shaft is too short for its joints whatever the sliding yoke does.
var ErrReach = errors.New("the shaft is too short to reach from the output axis to the axle's joint")

// Place is a joint centre: X forward, Y left, Z up, in mm.
type Place struct{ X, Y, Z float64 }

// Minus returns the way from q to p.
func (p Place) Minus(q Place) Place { return Place{p.X - q.X, p.Y - q.Y, p.Z - q.Z} }

// Plus returns the place a way further on.
func (p Place) Plus(q Place) Place { return Place{p.X + q.X, p.Y + q.Y, p.Z + q.Z} }

// By returns a way, longer or shorter by a factor.
func (p Place) By(factor float64) Place {
	return Place{float64(p.X * factor), float64(p.Y * factor), float64(p.Z * factor)}
}

// Length is how long a way is, mm.
func (p Place) Length() float64 { return math.Sqrt(p.along(p)) }

func (p Place) along(q Place) float64 { return float64(p.X*q.X) + float64(p.Y*q.Y) + float64(p.Z*q.Z) }

// Distance is the length of a shaft between two joint centres, mm.
func Distance(a, b Place) float64 { return a.Minus(b).Length() }

// Tail is a gearbox on whose output a yoke slides.
type Tail struct {
	Joint    Place   // a place of the yoke's joint centre on the output axis
	Out      Place   // direction in which it is drawn out, from the gearbox toward the axle, length 1
	LengthMM float64 // of the shaft, joint centre to joint centre
}

// DrawnOut returns how far beyond Joint the yoke stands, in mm along Out, so that the shaft's other
// joint lies at axle. With e the way from Joint to axle and u the direction Out:
//
//	t = e·u − √((e·u)² − e² + L²)
//
// It errs with ErrReach where the shaft can't reach.
//
// Source: distance of a point from a line, worked apart from this code.
func (t Tail) DrawnOut(axle Place) (float64, error) {
	e := axle.Minus(t.Joint)
	along := e.along(t.Out)
	square := float64(along*along) - e.along(e) + float64(t.LengthMM*t.LengthMM)
	if !(square >= 0) || math.IsInf(square, 0) {
		return 0, ErrReach
	}
	return along - math.Sqrt(square), nil
}
