package retain

import (
	"fmt"
	"math"
)

// StressArea returns the stress area of a metric thread in mm²: (π/4)·(d − 0.938194·P)².
//
// Source: ISO 898-1 with ISO 724: the mean of pitch diameter d − 0.649519·P and minor diameter
// d − 1.226869·P (clause from memory).
func StressArea(nominalMM, pitchMM float64) (mm2 float64, err error) {
	if err := positive(part{"thread", nominalMM}, part{"pitch", pitchMM}); err != nil {
		return 0, err
	}
	core := nominalMM - float64(0.938194*pitchMM)
	if core <= 0.4*nominalMM {
		return 0, fmt.Errorf("pitch %g mm is too coarse for a thread of %g mm; measure both again", pitchMM, nominalMM)
	}
	return finite(math.Pi / 4 * core * core)
}

// Grade is a strength grade of a bolt or stud.
type Grade struct {
	Mark            string
	ProofMPa        float64 // up to 16 mm
	ProofMPaAbove16 float64 // above
}

// Grades of ISO 898-1. A textbook table rounds 8.8 to 600 for every size; the standard's 580 up to
// 16 mm is the lower.
//
// Source: ISO 898-1, proof stresses.
var Grades = []Grade{{"8.8", 580, 600}, {"10.9", 830, 830}, {"12.9", 970, 970}}

// GradeOf finds a grade by its mark.
func GradeOf(mark string) (Grade, bool) {
	for _, g := range Grades {
		if g.Mark == mark {
			return g, true
		}
	}
	return Grade{}, false
}

// ProofLoad returns the load in N that a bolt or stud of the grade stands without lasting stretch.
func (g Grade) ProofLoad(nominalMM, pitchMM float64) (newton float64, err error) {
	area, err := StressArea(nominalMM, pitchMM)
	if err != nil {
		return 0, err
	}
	stress := g.ProofMPa
	if nominalMM > 16 {
		stress = g.ProofMPaAbove16
	}
	return finite(area * stress)
}

// Tightening is a thread and how it is tightened.
type Tightening struct {
	TorqueNm     float64
	PrevailingNm float64 // running torque of a self-locking nut; it clamps nothing
	NutFactor    float64
	NominalMM    float64
}

// Preload returns the clamp in N: (T − Tp)/(K·d). Sources disagree about K by a third, so it is
// known to no better than that.
//
// Source: Mechanical Fastening, Joining, and Assembly, p. 85.
func (t Tightening) Preload() (newton float64, err error) {
	if err := positive(part{"torque", t.TorqueNm}, part{"nut factor", t.NutFactor}, part{"thread", t.NominalMM}); err != nil {
		return 0, err
	}
	if !(t.PrevailingNm >= 0 && t.PrevailingNm < t.TorqueNm) {
		return 0, fmt.Errorf("running torque %g N·m is not below the torque of %g N·m; measure it again", t.PrevailingNm, t.TorqueNm)
	}
	return finite((t.TorqueNm - t.PrevailingNm) * 1000 / t.NutFactor / t.NominalMM)
}

type part struct {
	name  string
	value float64
}

func positive(parts ...part) error {
	for _, p := range parts {
		if !(p.value > 0) || math.IsInf(p.value, 0) {
			return fmt.Errorf("%s %g must be above 0; enter it again", p.name, p.value)
		}
	}
	return nil
}

func finite(x float64) (float64, error) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, fmt.Errorf("retainer: the numbers are too large; check thread and torque")
	}
	return x, nil
}
