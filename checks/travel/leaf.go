package travel

import (
	"errors"
	"math"
)

// ErrLeaf is returned for a leaf spring whose sizes can't be true.
var ErrLeaf = errors.New("both halves of the spring must be longer than 0 and the radius factor between 0 and 1")

// Leaf is a leaf spring on which the axle is clamped, one end held by a fixed eye, the other by a
// shackle.
type Leaf struct {
	FrontHalfMM, RearHalfMM float64 // edge of the axle clamp to eye centre, along the leaf
	FixedInRear             bool    // the fixed eye is the rear one
	EyeRiseMM               float64 // fixed eye's centre above the main leaf at the clamp, at ride height
	EyeOffsetMM             float64 // fixed eye's centre above its own leaf's centre line
	PadMM                   float64 // main leaf at the clamp above the axle's centre, at ride height
	// RadiusFactor is the equivalent link's length over the limb's for equal halves: 0.75 where each
	// limb bends to an arc (uniform strength), 0.833 for one uniform leaf. Real packs lie between.
	RadiusFactor float64
}

// Link is the link that holds the clamp as the limb with the fixed eye does.
type Link struct {
	RadiusMM float64
	DropMM   float64 // pivot above the clamp, less what the fixed eye is above it
}

// Link returns the equivalent link. With a the half of the fixed eye, b the other one, f the radius
// factor, e the eye's offset and k the limb's tip turn per y/a (2 for an arc, 1.5 for one uniform
// leaf, in proportion between):
//
//	r = a/(1 + (a/b)²·(1/f − 1))      equal halves: f·a
//	pivot above the eye = r·e·(k·a − a + b)/(a·b) − e      equal halves, arc: e/2
//
// It errs with ErrLeaf.
//
// Source: three-quarter rule of SAE HS-788 (from memory) for equal halves; unequal ones and the eye's
// offset derived from the endwise shortening y²/(2·f·a) of a limb and the turn of the seat (SeatTurn).
func (l Leaf) Link() (Link, error) {
	a, b, f := l.FrontHalfMM, l.RearHalfMM, l.RadiusFactor
	if l.FixedInRear {
		a, b = b, a
	}
	if !positive(a, b, f) || f > 1 || !finite(l.EyeRiseMM, l.EyeOffsetMM, l.PadMM) {
		return Link{}, ErrLeaf
	}
	k := 2 - float64(6*(f-0.75))
	r := a / (1 + float64(a/b*(a/b)*(1/f-1)))
	turn := (float64(k*a) - a + b) / float64(a*b)
	return Link{RadiusMM: r, DropMM: float64(r*turn*l.EyeOffsetMM) - l.EyeOffsetMM}, nil
}

// SeatTurn returns by how many degrees the spring's seat, and with it the pinion, turns over a
// travel in mm, front end up positive:
//
//	Δθ = travel·(a − b)/(a·b)      a front half, b rear half
//
// A short front half turns the nose DOWN in bump.
//
// Source: limbs of one stress bend to one common arc; derived, worked apart from this code.
func (l Leaf) SeatTurn(travelMM float64) float64 {
	a, b := l.FrontHalfMM, l.RearHalfMM
	return float64(travelMM*(a-b)) / float64(a*b) / degree
}

// At returns the pose at a travel: the clamp goes round the pivot of the equivalent link, the seat
// turns where the halves differ, and the axle's centre hangs PadMM under it. It errs with ErrLeaf,
// or with ErrUnreachable where the link is too short.
func (l Leaf) At(travelMM float64) (Pose, error) {
	link, err := l.Link()
	if err != nil {
		return Pose{}, err
	}
	// The seat's own travel differs from the centre's by what its turn does to PadMM.
	seat, sin, cos := travelMM, 0.0, 1.0
	for range 4 {
		sin, cos = math.Sincos(l.SeatTurn(seat) * degree)
		seat = travelMM - float64(l.PadMM*(1-cos))
	}
	ride := l.EyeRiseMM + link.DropMM
	now := ride - seat
	was, is := link.reach(ride), link.reach(now)
	if was < 0 || is < 0 || !finite(seat) {
		return Pose{}, unreachable(travelMM)
	}
	forward := was - is
	if l.FixedInRear {
		forward = is - was
	}
	return Pose{forward + float64(l.PadMM*sin), travelMM, l.SeatTurn(seat)}, nil
}

// reach is how far along the vehicle the clamp stands from a pivot that much above it; −1: too far.
func (l Link) reach(aboveMM float64) float64 {
	square := float64(l.RadiusMM*l.RadiusMM) - float64(aboveMM*aboveMM)
	if !(square >= 0) {
		return -1
	}
	return math.Sqrt(square)
}
