package checks

import (
	"math"

	"yokebook/checks/retain"
	"yokebook/checks/spline"
	"yokebook/checks/uncertain"
)

var retainRows = []Check{
	{Key: "retainer.clamp", Group: "retainer", Points: append([]string{"retainer.kind", "retainer.thread", "retainer.pitch", "retainer.grade",
		"retainer.torque", "retainer.nut_factor", "retainer.reach", "slip_male.major", "slip_male.minor", "slip_male.flank",
		"slip_female.minor", "slip_female.flank", "output_shaft.major", "output_shaft.minor", "output_shaft.flank", "slip_yoke.minor",
		"slip_yoke.flank"}, torque...), Unit: "N", whole: retainerClamp},
}

// weldedStud is the answer of retainer.kind that no calculation makes good.
const weldedStud = 2

// retainerClamp asks whether the thread that holds a flange clamps harder than the sliding spline can
// push or pull along the shaft, stays below its proof load, and is held over enough of its length.
// What a torque clamps is known to no better than a third, so it is never clear unless even the low
// end holds.
func retainerClamp(e *engine, c *Check) []Finding {
	a := &asked{e: e, notes: []Message{{Key: MsgRetainerCare}}}
	if kind := e.bench("retainer.kind"); kind != nil && kind.best == weldedStud {
		welded := e.number(1, nil, kind.from)
		a.ask(welded, "retainer.welded", Message{Key: MsgNotRecoverable})
		return []Finding{a.finding(c, "")}
	}
	nut := e.nutFactor()
	a.notes = append(a.notes, Message{MsgNutFactor, []any{nut.best, e.setting("retainer.spread")}})
	thread, tight := a.read("retainer.thread"), a.read("retainer.torque")
	thrust := e.thrust(a)
	if thread != nil && tight != nil {
		a.clamp(thread, tight, nut, thrust)
	}
	if reach := e.bench("retainer.reach"); reach != nil && thread != nil {
		least := e.combine("reach", 1, func(x, out []float64) { out[0] = float64(x[0] * x[1]) }, thread, exact(e.setting("retainer.reach")))[0]
		a.askWorked(reach, "retainer.reach", "mm", "min", least, Message{MsgLongerReach, []any{math.Max(0, least.best-reach.best)}})
	}
	return []Finding{a.finding(c, "")}
}

// nutFactor is what was stated, else the table's.
func (e *engine) nutFactor() *quantity {
	if q := e.bench("retainer.nut_factor"); q != nil {
		return q
	}
	return exact(e.setting("retainer.nut_factor"))
}

// clamp asks for the clamp that a torque gives, by its best value and spread, and looks at its low end.
func (a *asked) clamp(thread, tight, nut, thrust *quantity) {
	e := a.e
	spread := e.setting("retainer.spread")
	c := &cause{key: "disputed|retainer.spread", shape: rectangular, input: "retainer.spread"}
	factor := e.number(1, []term{{c, spread}}, origin{})
	preload := func(factor *quantity) *quantity {
		return e.combine("preload", 1, func(x, out []float64) {
			load, err := retain.Tightening{TorqueNm: x[1], NutFactor: x[2], NominalMM: x[0]}.Preload()
			out[0] = orNone(float64(load*x[3]), err)
		}, thread, tight, nut, factor)[0]
	}
	load := preload(factor)
	if thrust != nil {
		least := e.combine("clamp asked", 1, func(x, out []float64) { out[0] = float64(x[0] * x[1]) }, thrust, exact(e.setting("retainer.clamp")))[0]
		a.askWorked(load, "retainer.clamp", "N", "min", least, Message{Key: MsgMoreClamp})
		low := preload(exact(1 - spread))
		if !low.bad && !least.bad && verdictOf(uncertain.Chance(e.meets(low, &Limit{Value: least.best, Sense: "min"}, least))) != Clear {
			a.doubted = Message{MsgLowEndFails, []any{low.best, least.best}}
		}
	}
	a.proof(load, thread)
}

// proof asks that the clamp stays below the proof load of thread and grade.
func (a *asked) proof(load, thread *quantity) {
	pitch := a.read("retainer.pitch")
	grade, from, marked := a.grade()
	if pitch == nil || !marked {
		return
	}
	share := a.e.combine("share of proof "+grade.Mark, 1, func(x, out []float64) {
		proof, err := grade.ProofLoad(x[1], x[2])
		out[0] = orNone(x[0]/proof, err)
	}, load, thread, pitch)[0]
	a.from = a.from.join(from)
	a.ask(share, "retainer.proof", Message{Key: MsgLessTorque})
}

// grade is the strength grade as marked; not marked where it was not read or ISO 898-1 has none such.
func (a *asked) grade() (g retain.Grade, from origin, marked bool) {
	found := false
	for _, r := range a.e.readings {
		if r.Point != "retainer.grade" {
			continue
		}
		found = true
		from = originOf(r)
		if g, marked = retain.GradeOf(r.Value.Token()); !marked {
			a.notes = append(a.notes, Message{MsgGradeUnknown, []any{r.Value.Token()}})
		}
	}
	if !found || !marked {
		a.missing = append(a.missing, need("retainer.grade"))
	}
	return g, from, marked
}

// thrust is the force that the sliding spline sends along the shaft under the highest torque.
func (e *engine) thrust(a *asked) *quantity {
	male, female := e.slipSpline()
	p := splinePair{male, female}
	load := e.splineTorque(p, a)
	pitch := e.pitchOf(p)
	if pitch == nil {
		a.missing = append(a.missing, need(male+".major"))
		if e.bench(male+".major") != nil {
			a.missing[len(a.missing)-1] = need(male + ".minor")
		}
	}
	if load == nil || pitch == nil {
		return nil
	}
	flank := e.bench(male + ".flank")
	if flank == nil {
		flank = e.bench(female + ".flank")
	}
	if flank == nil {
		flank = e.unread(male+".flank", "spline.flank")
	}
	q := e.combine("thrust", 1, func(x, out []float64) {
		out[0] = orNone(spline.SlipForce(x[0], x[1]/2, math.Max(0, x[2]), x[3]))
	}, load, pitch, flank, e.contested("spline.friction"))[0]
	if !q.bad {
		a.notes = append(a.notes, Message{MsgSlipForce, []any{q.best}})
	}
	return q
}
