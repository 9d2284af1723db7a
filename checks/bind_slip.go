package checks

import (
	"yokebook/checks/slip"
	"yokebook/measure"
)

var (
	pathPoints = []string{"hub.height", "hub_left.height", "hub_right.height", "bump.gap", "bump.rubber", "shaft.length",
		"spring.front_half", "spring.rear_half", "spring.eye_rise", "spring.eye_offset", "spring.pad_z",
		"lower_link.chassis_x", "lower_link.chassis_z", "lower_link.axle_x", "lower_link.axle_z",
		"upper_link.chassis_x", "upper_link.chassis_z", "upper_link.axle_x", "upper_link.axle_z", "rear_joint.x", "rear_joint.z"}
	slipPoints = append(append([]string{}, pathPoints...), "slip.exposed", "slip.usable", "slip_male.length", "slip_female.length",
		"slip_male.major", "output_shaft.length", "slip_yoke.length", "output_shaft.major")
)

var slipRows = []Check{
	{Key: "travel.agreement", Group: "slip", Points: pathPoints, Unit: "mm", Limit: "travel.agreement", whole: (*engine).agreement},
	{Key: "slip.travel", Group: "slip", Points: slipPoints, Unit: "mm", perPart: slipTravel},
	{Key: "slip.engaged", Group: "slip", Points: slipPoints, Unit: "mm", perPart: slipEngaged},
	{Key: "slip.closing", Group: "slip", Points: slipPoints, Unit: "mm", Limit: "slip.closing", perPart: slipClosing},
	{Key: "slip.seal", Group: "slip", Points: append(append([]string{}, slipPoints...), "slip_yoke.barrel_length", "tail_seal.depth"),
		Unit: "mm", Limit: "slip.seal", perPart: slipSeal},
	{Key: "slip.length", Group: "slip", Points: slipPoints, Unit: "mm", perPart: slipLength},
}

// slipSpline names the two halves of the sliding spline.
func (e *engine) slipSpline() (male, female string) {
	if e.build.Layout.Slip == "gearbox" {
		return "output_shaft", "slip_yoke"
	}
	return "slip_male", "slip_female"
}

// slipTravel is how far the sliding part goes over the axle's travel, against the stroke that is left
// of the spline once it stays engaged and keeps its reserve.
func slipTravel(e *engine, _ string) answer {
	st := e.strokeOf()
	a := st.answer(st.travel)
	if a.q == nil {
		return a
	}
	engaged, missing := e.engagedNeed()
	usable := e.bench("slip.usable")
	if usable == nil {
		missing = append(missing, need("slip.usable"))
	}
	if len(missing) > 0 {
		a.silent = true
		a.missing = append(a.missing, missing...)
		return a
	}
	reserve := e.setting("slip.closing")
	args := []*quantity{usable, engaged, exact(reserve), a.q}
	out := e.combine("stroke to use", 2, func(x, out []float64) {
		out[0] = max(0, x[0]-x[1]-x[2])
		out[1] = x[1] + x[2] + x[3]
	}, args...)
	a.against = out[0]
	a.own = &Limit{Key: "slip.usable", Value: out[0].best, Unit: "mm", Sense: "max",
		Source: "the usable spline less what must stay engaged and the reserve: limits slip.engaged and slip.closing"}
	a.advice = Message{MsgSlipStroke, []any{out[1].best}}
	a.notes = append(a.notes, Message{MsgSlipNeeds, []any{out[1].best}})
	return a
}

// engagedNeed is the spline that must stay engaged, mm: so many outside diameters of its male half.
func (e *engine) engagedNeed() (*quantity, []Missing) {
	male, _ := e.slipSpline()
	major := e.bench(male + ".major")
	if major == nil {
		return nil, []Missing{need(male + ".major")}
	}
	return e.combine("engaged", 1, func(x, out []float64) { out[0] = float64(x[0] * x[1]) }, major, exact(e.setting("slip.engaged")))[0], nil
}

// slipEngaged is the spline engaged at the longest position. Where its low end is none at all, a note
// ahead of all others says that the shaft can fall out.
func slipEngaged(e *engine, _ string) answer {
	st := e.strokeOf()
	a := st.answer(st.longest)
	usable := e.bench("slip.usable")
	if usable == nil {
		a.missing = appendMissing(a.missing, need("slip.usable"))
	}
	if a.q == nil || usable == nil {
		a.q = nil
		return a
	}
	male, female := e.slipSpline()
	args := []*quantity{usable, a.q}
	for _, part := range []string{male, female} {
		if q := e.bench(part + ".length"); q != nil {
			args = append(args, q)
		} else {
			a.missing = appendMissing(a.missing, need(part+".length"))
		}
	}
	a.q = e.combine("engaged spline", 1, func(x, out []float64) {
		out[0] = x[0] - x[1]
		for _, length := range x[2:] {
			out[0] = min(out[0], length)
		}
	}, args...)[0]
	least, missing := e.engagedNeed()
	if low, _ := a.q.interval(); low <= 0 {
		a.notes = append([]Message{{Key: MsgSlipFalls}}, a.notes...)
	}
	if least == nil {
		a.missing, a.silent = append(a.missing, missing...), true
		return a
	}
	row := e.limitOf("slip.engaged")
	a.against = least
	a.own = &Limit{Key: row.Key, Value: least.best, Unit: "mm", Sense: "min", Source: row.Source, Reason: row.Reason}
	a.advice = e.slipAdvice(MsgSlipLonger, least.best-a.q.best)
	return a
}

// slipClosing is how far the spline is still drawn out at the shortest position.
func slipClosing(e *engine, _ string) answer {
	st := e.strokeOf()
	a := st.answer(st.shortest)
	if a.q != nil {
		a.advice = e.slipAdvice(MsgSlipShorter, e.setting("slip.closing")-a.q.best)
	}
	return a
}

// slipAdvice moves the shaft's length by what is lacking in mm, unless no length makes the spline do.
func (e *engine) slipAdvice(key string, lacking float64) Message {
	engaged, _ := e.engagedNeed()
	usable, st := e.bench("slip.usable"), e.strokeOf()
	if engaged != nil && usable != nil && st.travel != nil {
		needs := engaged.best + e.setting("slip.closing") + st.travel.best
		if needs > usable.best {
			return Message{MsgSlipStroke, []any{needs}}
		}
	}
	return Message{key, []any{max(0, lacking)}}
}

// slipSeal is the barrel that stays beyond the lip of the seal at the longest position. Fully closed,
// the barrel is taken to be in up to its end.
func slipSeal(e *engine, _ string) answer {
	if e.build.Layout.Slip != "gearbox" {
		return answer{lacking: true}
	}
	st := e.strokeOf()
	a := st.answer(st.longest)
	barrel, seal := e.bench("slip_yoke.barrel_length"), e.bench("tail_seal.depth")
	for _, p := range []struct {
		q   *quantity
		key string
	}{{barrel, "slip_yoke.barrel_length"}, {seal, "tail_seal.depth"}} {
		if p.q == nil {
			a.missing = appendMissing(a.missing, need(p.key))
		}
	}
	if a.q == nil || barrel == nil || seal == nil {
		a.q = nil
		return a
	}
	a.q = e.combine("barrel in", 1, func(x, out []float64) { out[0] = x[0] - x[1] - x[2] }, barrel, seal, a.q)[0]
	a.advice = Message{MsgSlipSeal, []any{max(0, e.setting("slip.seal")-a.q.best)}}
	return a
}

// slipLength is the length at which the shaft should be made so that what is spare of its stroke is the
// same at both ends: fully closed where the slip is in the shaft, from joint to joint where it is
// in the gearbox. It carries no verdict.
func slipLength(e *engine, _ string) answer {
	st := e.strokeOf()
	a := st.answer(st.travel)
	a.silent = true
	tail := e.build.Layout.Slip == "gearbox"
	engaged, missing := e.engagedNeed()
	usable, length := e.bench("slip.usable"), e.bench("shaft.length")
	if usable == nil {
		missing = append(missing, need("slip.usable"))
	}
	if tail {
		missing = append(missing, st.unread...)
	}
	if length == nil && st.state != (measure.State{}) {
		length = e.lengthNear(st.state)
	}
	a.missing = append(a.missing, missing...)
	if tail && length == nil || !tail && !st.lengths && a.q != nil {
		a.missing = appendMissing(a.missing, Missing{Point: "shaft.length", State: measure.RideKerb})
		a.q = nil
	}
	if a.q == nil || len(missing) > 0 {
		a.q = nil
		return a
	}
	fixed := []*quantity{usable, engaged, exact(e.setting("slip.closing"))}
	if tail {
		a.q = e.lengthInTail(st, length, fixed)
		a.notes = append(a.notes, Message{Key: MsgSlipTail})
	} else {
		out := e.lengthClosed(st, fixed)
		a.q = out[0]
		a.notes = append(a.notes, Message{MsgSlipExposed, []any{out[1].best}})
	}
	if advice := e.slipAdvice(MsgSlipTail, 0); advice.Key == MsgSlipStroke {
		a.notes = append(a.notes, advice)
	}
	return a
}

// lengthClosed is the best length fully closed, and how far the shaft then stands drawn out at ride
// height; fixed holds usable spline, what must stay engaged and the reserve.
func (e *engine) lengthClosed(st *stroke, fixed []*quantity) []*quantity {
	return e.combine("best length closed", 2, func(x, out []float64) {
		use := slip.Use{UsableMM: x[0], EngagedMM: x[1], ReserveMM: x[2], ShortestMM: x[3], LongestMM: x[4]}
		out[0] = use.BestClosed()
		out[1] = x[5] - out[0]
	}, append(fixed, st.least, st.most, st.ride)...)
}

// lengthInTail is the best length of a shaft whose slip is in the gearbox: what it is drawn out too
// far at its shortest position goes into its length. Good to the cosine of the front joint's angle.
func (e *engine) lengthInTail(st *stroke, length *quantity, fixed []*quantity) *quantity {
	return e.combine("best length in the tail", 1, func(x, out []float64) {
		use := slip.Use{UsableMM: x[0], EngagedMM: x[1], ReserveMM: x[2], ShortestMM: x[3], LongestMM: x[4]}
		out[0] = x[5] + x[6] - use.ReserveMM - use.Spare()/2
	}, append(fixed, st.least, st.most, length, st.shortest)...)[0]
}
