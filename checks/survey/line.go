package survey

import (
	"fmt"
	"math"
)

// Flanges is what is measured between the two flanges that a shaft will bolt to; angles in degrees.
type Flanges struct {
	GapMM      float64 // middle of the front flange's face to that of the rear one, straight
	RiseMM     float64 // front flange above the rear one, from one level floor
	AsideMM    float64 // front flange left of the rear one, from one string along the vehicle
	FrontMM    float64 // flange face to joint centre on the yoke of the front end
	RearMM     float64 // likewise at the rear
	FrontSlope float64 // slope and plan angle of the part that carries the front flange
	FrontPlan  float64
	RearSlope  float64 // and of the one that carries the rear flange
	RearPlan   float64
}

// Shaft is a shaft between two joint centres.
type Shaft struct {
	LengthMM float64
	SlopeDeg float64
	PlanDeg  float64
}

// Between returns the shaft that fits between two flanges. With f and r the flange centres, u and v
// the directions of the parts that carry them (pointing forward) and a, b the yokes:
//
//	J₁ = f − a·u,   J₂ = r + b·v,   shaft = J₁ − J₂
//
// It errs when the flanges can't stand like that: the gap is not longer than rise and offset, or
// the yokes use it up. Source: vectors; worked out here.
func Between(m Flanges) (Shaft, error) {
	run := float64(m.GapMM*m.GapMM) - float64(m.RiseMM*m.RiseMM) - float64(m.AsideMM*m.AsideMM)
	if !(run > 0) || math.IsInf(run, 0) {
		return Shaft{}, fmt.Errorf("flanges %g apart can't differ by %g in height and %g sideways; measure again", m.GapMM, m.RiseMM, m.AsideMM)
	}
	u, v := ahead(m.FrontSlope, m.FrontPlan), ahead(m.RearSlope, m.RearPlan)
	d := [3]float64{math.Sqrt(run), m.AsideMM, m.RiseMM}
	square := 0.0
	for i := range d {
		d[i] -= float64(m.FrontMM*u[i]) + float64(m.RearMM*v[i])
		square += float64(d[i] * d[i])
	}
	length := math.Sqrt(square)
	if !(d[0] > 0) || math.IsInf(length, 0) {
		return Shaft{}, fmt.Errorf("yokes of %g and %g leave no shaft in a gap of %g; measure again", m.FrontMM, m.RearMM, m.GapMM)
	}
	return Shaft{LengthMM: length, SlopeDeg: math.Asin(d[2]/length) * deg, PlanDeg: math.Atan2(d[1], d[0]) * deg}, nil
}

const deg = 180 / math.Pi

// ahead is the direction of a part with a slope and a plan angle.
func ahead(slope, plan float64) [3]float64 {
	s, a := slope/deg, plan/deg
	return [3]float64{float64(math.Cos(s) * math.Cos(a)), float64(math.Cos(s) * math.Sin(a)), math.Sin(s)}
}
