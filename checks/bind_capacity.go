package checks

import (
	"fmt"
	"math"

	"yokebook/checks/spline"
)

func capacityPoints() []string {
	keys := append([]string{}, torque...)
	for _, p := range []splinePair{inputPair, outputPair, slipPair} {
		keys = append(keys, p.pointsOf("splines", "major", "minor", "length", "hardness")...)
	}
	return keys
}

// splineCapacity is the least of allowed over computed stress: shear in the shaft under its teeth,
// shear in the teeth, pressure on the flanks. The shaft is taken as solid. Teeth of the clutch hub
// stay in place under torque, those of a slip rub.
func splineCapacity(e *engine, male string) answer {
	p := pairOf(male)
	a := &asked{e: e}
	counts := a.read(male + ".splines")
	sizes, whole := a.readAll(male+".major", male+".minor", p.female+".minor")
	length, inPlace := e.engagedOf(p, a), p == inputPair
	load := e.splineTorque(p, a)
	if counts == nil || !whole || length == nil || load == nil {
		return answer{missing: a.missing}
	}
	hard := []*quantity{e.hardnessOf(male, a), e.hardnessOf(p.female, a)}
	factors := []*quantity{e.contested("spline.application"), e.contested("spline.distribution"), e.contested("spline.fatigue"), e.contested("spline.wear")}
	args := append([]*quantity{load, counts, sizes[0], sizes[1], sizes[2], length, hard[0], hard[1]}, factors...)
	out := e.combine(fmt.Sprintf("capacity in place %v", inPlace), 4, func(x, out []float64) { capacity(x, out, inPlace) }, args...)
	notes := append(a.notes, Message{MsgStressShares, []any{out[1].best, out[2].best, out[3].best}})
	if out[0].bad {
		notes = a.notes
	}
	return answer{q: out[0], notes: notes}
}

// capacity works out one draw: torque, count, male tip and root, female tip, length, hardness of both,
// factors. Teeth are taken as half a pitch thick, which those of ISO 14 miss by up to a fifth.
func capacity(x, out []float64, inPlace bool) {
	for i := range out {
		out[i] = math.NaN()
	}
	pitch := (x[2] + x[4]) / 2
	t := spline.Teeth{Count: int(math.Round(x[1])), PitchMM: pitch, RootMM: x[3], LengthMM: x[5],
		ThicknessMM: math.Pi * pitch / 2 / math.Max(1, x[1]), HeightMM: (x[2] - x[4]) / 2}
	l := spline.Load{TorqueNm: x[0], Application: x[8], Distribution: x[9], Fatigue: x[10], Wear: x[11]}
	root, err := spline.RootShear(t, l)
	teeth, err2 := spline.ToothShear(t, l)
	side, err3 := spline.SidePressure(t, l, inPlace)
	if err != nil || err2 != nil || err3 != nil {
		return
	}
	shaft, soft := spline.AllowedAt(x[6]), spline.AllowedAt(math.Min(x[6], x[7]))
	out[0] = math.Min(shaft.ShearMPa/root, math.Min(soft.ShearMPa/teeth, soft.SideMPa/side))
	out[1], out[2], out[3] = root, teeth, side
}

// engagedOf is the length over which a pair carries: what the sliding spline still engages at its
// longest where that is known, else the shorter half.
func (e *engine) engagedOf(p splinePair, a *asked) *quantity {
	if p != inputPair {
		if s := slipEngaged(e, ""); s.q != nil {
			return s.q
		}
	}
	lengths, whole := a.readAll(p.male+".length", p.female+".length")
	if !whole {
		return nil
	}
	return e.combine("shorter", 1, func(x, out []float64) { out[0] = math.Min(x[0], x[1]) }, lengths...)[0]
}

// splineTorque is the highest torque on a pair: the engine's on the input shaft, otherwise the
// shaft's.
func (e *engine) splineTorque(p splinePair, a *asked) *quantity {
	if p == inputPair {
		return a.read("engine.torque_max")
	}
	c := e.torqueCase()
	a.missing = append(a.missing, c.missing...)
	if c.q != nil && c.notes != nil {
		a.notes = append(a.notes, c.notes()...)
	}
	return c.q
}

// hardnessOf is a part's hardness: as read, else anywhere in the range of the table.
func (e *engine) hardnessOf(part string, a *asked) *quantity {
	key := part + ".hardness"
	if q := e.bench(key); q != nil {
		return q
	}
	a.notes = append(a.notes, Message{MsgHardnessUnread, []any{key}})
	return e.unread(key, "spline.hardness")
}
