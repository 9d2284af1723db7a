package travel

import (
	"errors"
	"fmt"
	"math"
)

const degree = math.Pi / 180

// ErrUnreachable is returned for a height at which springs or links can't hold the axle.
var ErrUnreachable = errors.New("the axle can't reach this height")

// Point is a place in the side view: X forward, Z up, in mm.
type Point struct{ X, Z float64 }

// Pose says where the axle stands against ride height.
type Pose struct {
	ForwardMM float64 // of the axle's centre
	UpMM      float64 // of the axle's centre: the travel
	PitchDeg  float64 // turn of the housing, front end up positive
}

// Path gives the pose of the axle at a travel in mm; it errs with ErrUnreachable beyond its reach.
type Path interface {
	At(travelMM float64) (Pose, error)
}

// Carry returns where a place of the housing stands in this pose; at is that place at ride height,
// both from the axle's centre at ride height.
func (p Pose) Carry(at Point) Point {
	sin, cos := math.Sincos(p.PitchDeg * degree)
	return Point{
		p.ForwardMM + float64(at.X*cos) - float64(at.Z*sin),
		p.UpMM + float64(at.X*sin) + float64(at.Z*cos),
	}
}

// Fixed is an axle that does not move against the body, such as one without springs.
type Fixed struct{}

// At returns the pose at ride height whatever the travel, mm.
func (Fixed) At(float64) (Pose, error) { return Pose{}, nil }

// Straight is an axle of which nothing is known but its height: straight up and unturned, but for a
// bow forward of BowPerMM·travel² and a turn of PitchDegPerMM·travel. Both are guesses with a range
// that has 0 in its middle.
type Straight struct {
	BowPerMM      float64 // 1/mm
	PitchDegPerMM float64
}

// At returns the pose at any travel.
func (s Straight) At(travelMM float64) (Pose, error) {
	return Pose{float64(s.BowPerMM * travelMM * travelMM), travelMM, float64(s.PitchDegPerMM * travelMM)}, nil
}

func (p Point) minus(q Point) Point { return Point{p.X - q.X, p.Z - q.Z} }
func (p Point) plus(q Point) Point  { return Point{p.X + q.X, p.Z + q.Z} }

func (p Point) along(q Point) float64 { return float64(p.X*q.X) + float64(p.Z*q.Z) }

// round is the z part of turning p toward q: positive when q lies on the side of a rising front end.
func (p Point) round(q Point) float64 { return float64(p.X*q.Z) - float64(p.Z*q.X) }

// quarter is p turned a quarter of a turn, front end up.
func (p Point) quarter() Point { return Point{-p.Z, p.X} }

func (p Point) by(factor float64) Point { return Point{float64(p.X * factor), float64(p.Z * factor)} }

func (p Point) length() float64 { return math.Sqrt(p.along(p)) }

// turned turns p by the angle with the given cosine and sine.
func (p Point) turned(cos, sin float64) Point {
	return Point{float64(p.X*cos) - float64(p.Z*sin), float64(p.X*sin) + float64(p.Z*cos)}
}

func unreachable(travelMM float64) error {
	return fmt.Errorf("travel %.1f mm: %w; look at the heights and at the sizes read", travelMM, ErrUnreachable)
}

func positive(numbers ...float64) bool {
	for _, f := range numbers {
		if !(f > 0) || math.IsInf(f, 0) {
			return false
		}
	}
	return true
}

func finite(numbers ...float64) bool {
	for _, f := range numbers {
		if math.IsNaN(f) || math.IsInf(f, 0) {
			return false
		}
	}
	return true
}
