package spline

import (
	"fmt"
	"math"
)

// Reference is a spline of DIN 5480, 30°: every size follows from the reference diameter, the module
// and the count.
type Reference struct {
	ReferenceMM float64 // dB: the nominal size
	ModuleMM    float64
	Count       int
}

// The profile shifts that DIN 5480 uses, in modules. Outside them a guess of count or module is
// wrong. From memory; inside them is necessary, not enough: whether the standard lists a size was
// not looked up.
const (
	ShiftLeast = -0.05
	ShiftMost  = 0.45
)

// Roots of a shaft by the way it was cut, below the reference diameter in modules: hobbed and
// cold-rolled, both from memory.
const (
	Hobbed     = 2.3
	ColdRolled = 2.4
)

// Shift is the profile shift x·m in mm: (dB − m·z − 1.1·m)/2.
func (r Reference) Shift() float64 {
	return (r.ReferenceMM - float64(r.ModuleMM*float64(r.Count)) - float64(1.1*r.ModuleMM)) / 2
}

// Sizes returns the diameters: shaft tip dB − 0.2m, shaft root hobbed, and as its deep form
// cold-rolled, hub tip dB − 2m, hub root dB, tooth πm/2 + 2·xm·tan 30°. It errs for sizes that are none.
//
// Source: relations of DIN 5480 on a printed data sheet, all its sizes reproduced.
func (r Reference) Sizes() (Sizes, error) {
	if r.Count < 3 {
		return Sizes{}, fmt.Errorf("count %d is no spline; count again", r.Count)
	}
	if err := positive(part{"reference diameter", r.ReferenceMM}, part{"module", r.ModuleMM}); err != nil {
		return Sizes{}, err
	}
	pitch := float64(r.ModuleMM * float64(r.Count))
	tooth := ShiftedTooth(r.ModuleMM, r.Shift(), 30)
	return Sizes{
		PitchMM: pitch, BaseMM: pitch * math.Cos(30*degree),
		ExtTipMM: r.below(0.2), ExtRootMM: r.below(Hobbed), ExtRootDeepMM: r.below(ColdRolled),
		IntRootMM: r.ReferenceMM, IntTipMM: r.below(2),
		ToothMM: tooth, SpaceMM: tooth, ModuleMM: r.ModuleMM, Degrees: 30,
	}, nil
}

func (r Reference) below(modules float64) float64 {
	return r.ReferenceMM - float64(modules*r.ModuleMM)
}

// Designation is how the standard writes the size: 30×2×14.
func (r Reference) Designation() string {
	return fmt.Sprintf("%g×%g×%d", r.ReferenceMM, r.ModuleMM, r.Count)
}

// ShiftedTooth returns the tooth thickness along the arc of the pitch circle, π·m/2 + 2·xm·tan α,
// with the profile shift xm in mm.
func ShiftedTooth(moduleMM, shiftMM, pressureDeg float64) float64 {
	return float64(math.Pi/2*moduleMM) + float64(2*shiftMM*math.Tan(pressureDeg*degree))
}
