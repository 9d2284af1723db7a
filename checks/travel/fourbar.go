package travel

import (
	"errors"
	"math"
)

// ErrLinks is returned for links or a housing without length.
var ErrLinks = errors.New("links need different places for their ends, and the two axle ends must differ")

// FourBar is an axle held by a lower and an upper link, seen from the side: the four places at ride
// height, from the axle's centre. Two links from one place of the chassis make a trailing arm.
type FourBar struct {
	LowerChassis, LowerAxle Point
	UpperChassis, UpperAxle Point
}

// linked is the linkage in one position.
type linked struct {
	turn         float64 // of the lower link against ride height, radians, front end up
	lower, upper Point   // axle ends of the links
	cos, sin     float64 // of the housing's turn
	centre       Point
	rise         float64 // of the centre for each radian of turn
	side         float64 // on which side of the line from lower to upper the upper link stands
}

const (
	stride    = 50.0  // mm of travel from one solved pose to the next
	turnMost  = 0.2   // radians of the lower link in one correction
	onTheWay  = 0.1   // mm: near enough for a pose that is only passed through
	closeMM   = 1e-10 // near enough for the pose asked for
	goodMM    = 1e-7
	tries     = 40
	deadPoint = 1e-9
)

// At returns the pose at a travel, solved exactly on the height of the axle's centre: from ride
// height in strides, each time on the branch nearest to the pose before. It errs with ErrLinks, or
// with ErrUnreachable where the links can't hold the axle at that height or only beyond a dead point.
//
// Source: closure of two circles (see Close); the way to the height by Newton's method.
func (f FourBar) At(travelMM float64) (Pose, error) {
	if !finite(travelMM) {
		return Pose{}, unreachable(travelMM)
	}
	now, err := f.start()
	if err != nil {
		return Pose{}, err
	}
	steps := int(math.Ceil(math.Abs(travelMM) / stride))
	if steps > 1000 {
		return Pose{}, unreachable(travelMM)
	}
	for i := 1; i <= steps; i++ {
		near := onTheWay
		if i == steps {
			near = closeMM
		}
		if now, err = f.to(now, travelMM*float64(i)/float64(steps), near); err != nil {
			return Pose{}, unreachable(travelMM)
		}
	}
	return Pose{now.centre.X, travelMM, math.Atan2(now.sin, now.cos) / degree}, nil
}

// start is the linkage at ride height.
func (f *FourBar) start() (linked, error) {
	lower, upper := f.LowerAxle.minus(f.LowerChassis).length(), f.UpperAxle.minus(f.UpperChassis).length()
	if !positive(lower, upper, f.UpperAxle.minus(f.LowerAxle).length()) {
		return linked{}, ErrLinks
	}
	now := linked{lower: f.LowerAxle, upper: f.UpperAxle, cos: 1}
	if err := f.rates(&now); err != nil {
		return linked{}, unreachable(0)
	}
	return now, nil
}

// to turns the lower link until the centre stands at a height, from a pose nearby.
func (f *FourBar) to(from linked, heightMM, near float64) (linked, error) {
	now := from
	for range tries {
		off := heightMM - now.centre.Z
		if math.Abs(off) <= near {
			return now, nil
		}
		by := math.Max(-turnMost, math.Min(turnMost, off/now.rise))
		next, err := f.turned(now, now.turn+by)
		if err != nil || next.rise*from.rise <= 0 || next.side*from.side <= 0 {
			return linked{}, ErrUnreachable
		}
		if math.Abs(heightMM-next.centre.Z) >= math.Abs(off) && math.Abs(off) <= goodMM {
			return now, nil // as near as the numbers go
		}
		now = next
	}
	return linked{}, ErrUnreachable
}

// turned is the linkage with the lower link turned, on the branch nearest to a pose.
func (f *FourBar) turned(near linked, turn float64) (linked, error) {
	sin, cos := math.Sincos(turn)
	now := linked{turn: turn, lower: f.LowerChassis.plus(f.LowerAxle.minus(f.LowerChassis).turned(cos, sin))}
	body := f.UpperAxle.minus(f.LowerAxle)
	one, other, err := Close(now.lower, f.UpperChassis, body.length(), f.UpperAxle.minus(f.UpperChassis).length())
	if err != nil {
		return linked{}, err
	}
	now.upper = one
	if other.minus(near.upper).length() < one.minus(near.upper).length() {
		now.upper = other
	}
	is, square := now.upper.minus(now.lower), body.along(body)
	now.cos, now.sin = body.along(is)/square, body.round(is)/square
	now.centre = now.lower.minus(f.LowerAxle.turned(now.cos, now.sin))
	return now, f.rates(&now)
}

// rates fills in how the centre rises as the lower link turns: the upper axle end can only move
// square to its link.
func (f *FourBar) rates(now *linked) error {
	link := now.upper.minus(f.UpperChassis)
	speed := now.lower.minus(f.LowerChassis).quarter() // of the lower axle end for one radian
	across := now.upper.minus(now.lower).quarter()
	now.side = across.along(link)
	if math.Abs(now.side) <= deadPoint*across.length()*link.length() {
		return ErrUnreachable
	}
	housing := -speed.along(link) / now.side
	now.rise = speed.Z + float64(housing*(now.centre.X-now.lower.X))
	if math.Abs(now.rise) <= deadPoint*speed.length() {
		return ErrUnreachable
	}
	return nil
}

// Close returns the two places at which a bar of barMM from a moving joint and a link of linkMM from
// a fixed pivot meet:
//
//	k = (b² − c² + q²)/(2q),   h = √(b² − k²)      q from joint to pivot, b bar, c link
//
// It errs with ErrUnreachable where they don't meet: h² < 0.
//
// Source: closure of two circles, as for the four-bar linkage in R. L. Norton, Design of Machinery,
// chapter 4 (from memory).
func Close(joint, pivot Point, barMM, linkMM float64) (left, right Point, err error) {
	to := pivot.minus(joint)
	q := to.length()
	k := (float64(barMM*barMM) - float64(linkMM*linkMM) + float64(q*q)) / (2 * q)
	square := float64(barMM*barMM) - float64(k*k)
	if !(square >= 0) || !positive(q) {
		return Point{}, Point{}, ErrUnreachable
	}
	h := math.Sqrt(square)
	along, across := joint.plus(to.by(k/q)), to.quarter().by(h/q)
	return along.plus(across), along.minus(across), nil
}
