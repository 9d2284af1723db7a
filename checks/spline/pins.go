package spline

import (
	"fmt"
	"math"
)

// Pins are two equal pins in opposite gaps of an involute spline; with an odd count in the two gaps
// that are nearest to opposite.
type Pins struct {
	Count       int
	PitchMM     float64 // pitch diameter D, on which the pressure angle is given
	PressureDeg float64
	FlankMM     float64 // along the arc at D: tooth thickness of an external, space width of an internal spline
	PinMM       float64
}

// Over returns the size over pins of an external spline and the pressure angle at the pins' centres:
//
//	inv φ = t/D + inv α + d/Db − π/N,   M = Db/cos φ + d,   odd N: M = cos(90°/N)·Db/cos φ + d
//
// d is PinMM and Db = D·cos α the base diameter. It errs for sizes that are none and for pins that
// no gap holds.
//
// Source: texts on gear measurement (from memory); checked against circles laid into involutes.
func Over(p Pins) (overMM, centreDeg float64, err error) {
	return p.size(1)
}

// Between returns the size between pins of an internal spline and the pressure angle at their
// centres; with s the space width:
//
//	inv φ = s/D + inv α − d/Db,   M = Db/cos φ − d,   odd N: M = cos(90°/N)·Db/cos φ − d
//
// Source: ANSI B92.1, as quoted in a discussion among engineers that dropped a minus sign; checked
// against circles laid into involutes.
func Between(p Pins) (betweenMM, centreDeg float64, err error) {
	return p.size(-1)
}

func (p Pins) size(side float64) (mm, centreDeg float64, err error) {
	if err := p.possible(part{"tooth thickness", p.FlankMM}); err != nil {
		return 0, 0, err
	}
	base := p.baseMM()
	inv := p.FlankMM/p.PitchMM + Inv(p.PressureDeg) + float64(side*p.PinMM)/base
	if side > 0 {
		inv -= math.Pi / float64(p.Count)
	}
	centreDeg, err = InvAngle(inv)
	if err != nil {
		return 0, 0, fmt.Errorf("a pin of %g mm does not lie between these teeth; take another", p.PinMM)
	}
	mm, err = finite("size over pins", float64(p.across()*base)/math.Cos(centreDeg*degree)+float64(side*p.PinMM))
	return mm, centreDeg, err
}

// contactMM is the diameter at which the pins touch the flanks of an external spline, from the
// pressure angle at their centres: sqrt(Db² + (Db·tan φ − d)²).
func (p Pins) contactMM(centreDeg float64) float64 {
	along := float64(p.baseMM()*math.Tan(centreDeg*degree)) - p.PinMM
	base := p.baseMM()
	return math.Sqrt(float64(base*base) + float64(along*along))
}

// Sit errs where the pins don't measure the flanks of an external spline between its tip and root
// diameters: they touch beyond the flank, lie below the tips, or rest on the root.
func (p Pins) Sit(tipMM, rootMM float64) error {
	_, centre, err := Over(p)
	if err != nil {
		return err
	}
	contact := p.contactMM(centre)
	out := p.baseMM()/math.Cos(centre*degree) + p.PinMM
	in := p.baseMM()/math.Cos(centre*degree) - p.PinMM
	switch {
	case contact > tipMM || contact < rootMM:
		return fmt.Errorf("pins of %g mm touch at %.2f mm, not between root and tip; take others", p.PinMM, contact)
	case out <= tipMM:
		return fmt.Errorf("pins of %g mm don't stand proud of the tips; take thicker ones", p.PinMM)
	case in <= rootMM:
		return fmt.Errorf("pins of %g mm rest on the roots; take thicker ones", p.PinMM)
	}
	return nil
}

func (p Pins) possible(size part) error {
	if p.Count < 3 {
		return fmt.Errorf("count %d is no spline; count again", p.Count)
	}
	if !(p.PressureDeg > 0 && p.PressureDeg < 80) {
		return fmt.Errorf("flank angle %g is none of an involute; measure it again", p.PressureDeg)
	}
	return positive(part{"pitch diameter", p.PitchMM}, part{"pin diameter", p.PinMM}, size)
}

func (p Pins) baseMM() float64 { return float64(p.PitchMM * math.Cos(p.PressureDeg*degree)) }

// across is 1 where the pins lie opposite, less with an odd count.
func (p Pins) across() float64 {
	if p.Count%2 == 0 {
		return 1
	}
	return math.Cos(90 / float64(p.Count) * degree)
}
