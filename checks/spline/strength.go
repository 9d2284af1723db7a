package spline

import (
	"fmt"
	"math"
)

// Teeth are the sizes that carry torque. BoreMM is 0 for a solid shaft. ThicknessMM is the tooth along
// the arc at PitchMM, HeightMM the depth over which both parts touch.
type Teeth struct {
	Count       int
	PitchMM     float64
	RootMM      float64 // root diameter of the shaft
	BoreMM      float64
	ThicknessMM float64
	HeightMM    float64
	LengthMM    float64 // engaged
}

// Load is the torque with the factors of the machinery handbook: 1 leaves a factor out.
type Load struct {
	TorqueNm     float64
	Application  float64 // Ka: how hard the engine and the driven side knock
	Distribution float64 // Km: how unevenly misaligned teeth share along their length
	Fatigue      float64 // Kf: starts under full torque
	Wear         float64 // Kw: turns under full torque, for teeth that slide or rock
}

// RootShear returns the shear stress under the teeth in MPa:
//
//	solid 16·T·Ka/(π·Dr³·Kf),   hollow 16·T·Dr·Ka/(π·(Dr⁴ − Db⁴)·Kf)
//
// Source: Machinery's Handbook, Involute Splines, eqs 1 and 2.
func RootShear(t Teeth, l Load) (mpa float64, err error) {
	if err := positive(part{"torque", l.TorqueNm}, part{"root diameter", t.RootMM}, part{"application factor", l.Application},
		part{"fatigue factor", l.Fatigue}); err != nil {
		return 0, err
	}
	if !(t.BoreMM >= 0 && t.BoreMM < t.RootMM) {
		return 0, fmt.Errorf("bore %g mm leaves nothing of a root of %g mm; measure again", t.BoreMM, t.RootMM)
	}
	square, hole := float64(t.RootMM*t.RootMM), float64(t.BoreMM*t.BoreMM)
	section := math.Pi * (float64(square*square) - float64(hole*hole)) / t.RootMM / 16
	return finite("shear stress", l.TorqueNm*1000*l.Application/section/l.Fatigue)
}

// ToothShear returns the shear stress in the teeth at the pitch diameter in MPa, half of them
// carrying: 4·T·Ka·Km/(D·N·L·t·Kf).
//
// Source: Machinery's Handbook, Involute Splines, eq. 3.
func ToothShear(t Teeth, l Load) (mpa float64, err error) {
	if err := t.whole(l, part{"tooth thickness", t.ThicknessMM}, part{"fatigue factor", l.Fatigue}); err != nil {
		return 0, err
	}
	area := t.PitchMM * float64(t.Count) * t.LengthMM * t.ThicknessMM
	return finite("shear stress", 4*l.TorqueNm*1000*l.Application*l.Distribution/area/l.Fatigue)
}

// SidePressure returns the pressure on the flanks in MPa. Teeth that slide or rock under torque wear:
// 2·T·Km·Ka/(D·N·L·h·Kw). Teeth that stay in place bear nine times as much:
// 2·T·Km·Ka/(9·D·N·L·h·Kf).
//
// Source: Dudley, When Splines Need Stress Control, Product Engineering 1957; Machinery's Handbook,
// Involute Splines, eqs 4 and 5.
func SidePressure(t Teeth, l Load, inPlace bool) (mpa float64, err error) {
	if err := t.whole(l, part{"tooth height", t.HeightMM}, part{"fatigue factor", l.Fatigue}, part{"wear factor", l.Wear}); err != nil {
		return 0, err
	}
	area := t.PitchMM * float64(t.Count) * t.LengthMM * t.HeightMM
	pressure := 2 * l.TorqueNm * 1000 * l.Distribution * l.Application / area
	if inPlace {
		return finite("side pressure", pressure/9/l.Fatigue)
	}
	return finite("side pressure", pressure/l.Wear)
}

func (t Teeth) whole(l Load, more ...part) error {
	if t.Count < 3 {
		return fmt.Errorf("count %d is no spline; count again", t.Count)
	}
	return positive(append([]part{{"torque", l.TorqueNm}, {"pitch diameter", t.PitchMM}, {"engaged length", t.LengthMM},
		{"application factor", l.Application}, {"distribution factor", l.Distribution}}, more...)...)
}

// EqualShearLength returns the engaged length at which the teeth, a share of which carries, are as
// strong in shear as the shaft under them: Dr³/(4·share·D²); share 1/2 gives Dr³/(2D²), 1/4 Dr³/D².
//
// Source: a design note after Deutschman, Michels and Wilson, pp. 374-376, which takes a quarter;
// worked apart from this code from the stresses above.
func EqualShearLength(rootMM, pitchMM, share float64) (lengthMM float64, err error) {
	if err := positive(part{"root diameter", rootMM}, part{"pitch diameter", pitchMM}, part{"carrying share", share}); err != nil {
		return 0, err
	}
	return finite("engaged length", rootMM*rootMM*rootMM/(4*share*pitchMM*pitchMM))
}

// SlipForce returns the force in N along the shaft that it takes to slide a spline under torque, and
// that it can pass on: μ·T/(r·cos α), r the mean radius of the flanks; α is 0 for straight ones.
//
// Source: Bhandari, Design of Machine Elements, ch. 9 (straight); cos α worked apart from this code:
// the flanks press with T/(r·cos α).
func SlipForce(torqueNm, radiusMM, flankDeg, friction float64) (newton float64, err error) {
	if err := positive(part{"torque", torqueNm}, part{"flank radius", radiusMM}, part{"friction", friction}); err != nil {
		return 0, err
	}
	if !(flankDeg >= 0 && flankDeg < 80) {
		return 0, fmt.Errorf("flank angle %g is none of a spline; measure it again", flankDeg)
	}
	return finite("slip force", friction*torqueNm*1000/radiusMM/math.Cos(flankDeg*degree))
}
