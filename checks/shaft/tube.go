package shaft

import (
	"fmt"
	"math"
)

// Tube is the tube of a shaft.
type Tube struct {
	LengthMM float64 // joint centre to joint centre
	OuterMM  float64
	WallMM   float64
}

// Material is what a tube is made of.
type Material struct {
	ModulusGPa float64 // Young's modulus
	ShearGPa   float64 // shear modulus
	KgPerM3    float64
}

// InnerMM returns the inside diameter.
func (t Tube) InnerMM() float64 { return t.OuterMM - float64(2*t.WallMM) }

// MassKg returns the mass of the tube over its whole length: ρ·π/4·(D² − d²)·L.
func (t Tube) MassKg(m Material) float64 {
	return m.KgPerM3 * math.Pi / 4 * float64(t.squares(-1)) * t.LengthMM * 1e-9
}

// squares returns D² + sign·d², mm².
func (t Tube) squares(sign float64) float64 {
	d := t.InnerMM()
	return float64(t.OuterMM*t.OuterMM) + float64(sign*float64(d*d))
}

// fourths returns D⁴ − d⁴, mm⁴.
func (t Tube) fourths() float64 { return float64(t.squares(1) * t.squares(-1)) }

func (t Tube) check() error {
	if err := positive(part{"shaft length", t.LengthMM}, part{"tube diameter", t.OuterMM}, part{"tube wall", t.WallMM}); err != nil {
		return err
	}
	if t.InnerMM() < 0 {
		return fmt.Errorf("tube wall %g is more than half of the diameter %g; measure both again", t.WallMM, t.OuterMM)
	}
	return nil
}

// EndMass is what sits near the two joints and bends with the tube: yokes, weld ends, the slip.
type EndMass struct {
	Kg        float64 // of both ends together; 0 for none
	StationMM float64 // from the joint centre to its middle
}

// CriticalSpeed returns the first bending critical speed of a uniform tube on two joints, rev/min:
//
//	n = 60/2π · (π/L)² · √(E·I/(ρ·A)),   I/A = (D² + d²)/16
//
// and with a mass near each end, half of Kg at StationMM, a bit lower (Dunkerley's rule, which errs
// on the low side):
//
//	1/ω² = 1/ω₀² + Σ mᵢ·a²·(L−a)²/(3·E·I·L)
//
// D and d are the outside and inside diameter, L is joint centre to joint centre. Give in bearings,
// slip and gearbox tail is left out, so a real shaft is slower: the margin belongs in the limit. It
// errs when a size is not above 0 and finite, the wall is too thick, a mass or station is below 0
// or the station beyond the middle.
//
// Source: Euler–Bernoulli beam on pinned ends, first mode (Blevins, Formulas for Natural Frequency
// and Mode Shape; from memory); Dunkerley's rule and the give of a pinned beam under one load: any
// text on vibration and strength (from memory).
func CriticalSpeed(t Tube, m Material, e EndMass) (revPerMin float64, err error) {
	if err := t.check(); err != nil {
		return 0, err
	}
	if err := positive(part{"modulus", m.ModulusGPa}, part{"density", m.KgPerM3}); err != nil {
		return 0, err
	}
	if !(e.Kg >= 0) || !(e.StationMM >= 0) || e.StationMM > t.LengthMM/2 || math.IsInf(e.Kg, 0) {
		return 0, fmt.Errorf("end mass %g kg at %g mm can't be; the station lies between a joint and the middle", e.Kg, e.StationMM)
	}
	length, young := t.LengthMM/1000, m.ModulusGPa*1e9
	over := math.Pi / length
	// radius of gyration k of the section: k² = I/A
	gyration := t.squares(1) / 16 * 1e-6
	omega2 := over * over * over * over * young * gyration / m.KgPerM3
	bend := 3 * young * math.Pi / 64 * t.fourths() * 1e-12 * length
	a := e.StationMM / 1000
	way := a * (length - a)
	slow := float64(e.Kg * way * way / bend)
	return sized("critical speed", 30/math.Pi*math.Sqrt(1/(1/omega2+slow)))
}

// sized errs where a computed size is no number or nothing at all.
func sized(name string, x float64) (float64, error) {
	if !(x > 0) || math.IsInf(x, 0) {
		return 0, fmt.Errorf("%s is too large or too small for a number; check the sizes it is made from", name)
	}
	return x, nil
}
