package checks

import (
	"fmt"
	"slices"

	"yokebook/checks/mass"
	"yokebook/checks/survey"
	"yokebook/measure"
)

// derive works out what a point would read from other readings, where no shaft exists yet or the
// point is one that no tool shows; nil where those are missing too. It rests on the real readings.
func (e *engine) derive(key string, state measure.State) *taken {
	switch key {
	case "shaft.length", "shaft.slope":
		return e.surveyed(key, state)
	case "slip.exposed":
		return e.drawnFromClosed(state)
	case "shaft.plan":
		return e.surveyedPlan(state)
	case "gearbox.plan":
		return only(e.of("plan of gearbox", func(x, out []float64) { out[0] = orNone(survey.PlanOfLine(x[0], x[1], x[2])) },
			state, "gearbox.y_front", "gearbox.y_rear", "gearbox.y_span"))
	case "pinion.plan":
		return e.axlePlan(state)
	case "engine_gearbox.mass", "engine_gearbox.x":
		return e.weighed(key)
	}
	return nil
}

// drawnFromClosed is how far the slip is drawn out where its shaft was read both between the joint
// centres as it stands and fully closed.
func (e *engine) drawnFromClosed(state measure.State) *taken {
	length, closed := e.takeRead("shaft.length", state), e.takeRead("shaft.closed", measure.OffBench)
	if e.build.Layout.Slip != "shaft" || length == nil || closed == nil || length.setup == 0 {
		return nil
	}
	out := e.combine("drawn out from closed", 1, func(x, out []float64) { out[0] = x[0] - x[1] }, length.q, closed.q)[0]
	return &taken{q: out, setup: length.setup, heightOff: length.heightOff}
}

// only is what holds in every setup; nil for no quantity.
func only(q *quantity) *taken {
	if q == nil {
		return nil
	}
	return &taken{q: q}
}

// of combines readings of one state; nil until all of them are there.
func (e *engine) of(name string, f formula, state measure.State, points ...string) *quantity {
	var args []*quantity
	for _, p := range points {
		t := e.takeRead(p, state)
		if t == nil {
			return nil
		}
		args = append(args, t.q)
	}
	return e.combine(name, 1, f, args...)[0]
}

// surveyPoints are the readings that a shaft between two flanges is worked out from, in the order
// in which they are asked for; the first three change with the axle.
func (e *engine) surveyPoints() []string {
	ends := partNames(e.build.Layout)
	return []string{"shaft.gap", "front_flange.z", "rear_flange.z", "front_end.face_to_joint", "rear_end.face_to_joint",
		ends[0] + ".slope", ends[len(ends)-1] + ".slope"}
}

// surveyed works out length or slope of a one-piece shaft between the two flanges. Offsets sideways
// and plan angles of the ends count where they are known, else as 0. Heights above the floor of two
// setups don't go together: the vehicle was moved between them.
func (e *engine) surveyed(key string, state measure.State) *taken {
	if e.build.Layout.Shafts != 1 {
		return nil
	}
	var args []*quantity
	older, setup := e.otherSetup(state)
	if older != "" {
		return nil
	}
	for _, p := range e.surveyPoints() {
		t := e.takeRead(p, state)
		if t == nil {
			return nil
		}
		args = append(args, t.q)
	}
	ends := partNames(e.build.Layout)
	for _, p := range []string{"front_flange.y", "rear_flange.y", ends[0] + ".plan", ends[len(ends)-1] + ".plan"} {
		q := exact(0)
		if t := e.take(p, state); t != nil {
			q = t.q
		}
		args = append(args, q)
	}
	which := []string{"shaft.length", "shaft.slope", "shaft.plan"}
	all := e.combine("surveyed shaft", len(which), func(x, out []float64) {
		s, err := survey.Between(survey.Flanges{GapMM: x[0], RiseMM: x[1] - x[2], FrontMM: x[3], RearMM: x[4],
			FrontSlope: x[5], RearSlope: x[6], AsideMM: x[7] - x[8], FrontPlan: x[9], RearPlan: x[10]})
		out[0], out[1], out[2] = orNone(s.LengthMM, err), orNone(s.SlopeDeg, err), orNone(s.PlanDeg, err)
	}, args...)
	return &taken{q: all[slices.Index(which, key)], setup: setup}
}

// otherSetup names the flange whose height was read in an older setup than the other's, "" for none, and
// the newer setup.
func (e *engine) otherSetup(state measure.State) (older string, setup int) {
	front, rear := e.takeRead("front_flange.z", state), e.takeRead("rear_flange.z", state)
	if front == nil || rear == nil {
		return "", 0
	}
	switch {
	case front.setup < rear.setup:
		return "front_flange.z", rear.setup
	case rear.setup < front.setup:
		return "rear_flange.z", front.setup
	}
	return "", front.setup
}

// surveyedPlan is the shaft's plan angle from the offsets of its ends, in this state or in one that
// serves for it, by the survey where it is whole, else by the shaft's own length.
func (e *engine) surveyedPlan(state measure.State) *taken {
	if e.build.Layout.Shafts != 1 || e.takeRead("front_flange.y", state) == nil || e.takeRead("rear_flange.y", state) == nil {
		return nil
	}
	states := []measure.State{state, measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump}
	for _, s := range states {
		if t := e.surveyed("shaft.plan", s); t != nil {
			return only(t.q)
		}
	}
	for _, s := range states {
		q := e.of("plan of shaft", func(x, out []float64) { out[0] = orNone(survey.PlanOfShaft(x[0], x[1], x[2])) },
			s, "front_flange.y", "rear_flange.y", "shaft.length")
		if q != nil {
			return only(q)
		}
	}
	return nil
}

// axlePlan is the pinion's plan angle from the wheelbases of both sides.
func (e *engine) axlePlan(state measure.State) *taken {
	if e.build.Layout.Drives == "transfer" {
		return nil // the line ends at a transfer box, no axle
	}
	front := e.build.Layout.PinionInFront()
	return only(e.of(fmt.Sprintf("plan of axle, front %v", front), func(x, out []float64) {
		out[0] = orNone(survey.PlanOfAxle(survey.Wheels{LeftMM: x[0], RightMM: x[1], TrackMM: x[2], Front: front}))
	}, state, "wheelbase.left", "wheelbase.right", "track.width"))
}

// weighed is mass or place of engine and gearbox from two scales.
func (e *engine) weighed(key string) *taken {
	which := []string{"engine_gearbox.mass", "engine_gearbox.x"}
	var args []*quantity
	for _, p := range []string{"lift_front.mass", "lift_front.x", "lift_rear.mass", "lift_rear.x"} {
		t := e.takeRead(p, measure.OffBench)
		if t == nil {
			return nil
		}
		args = append(args, t.q)
	}
	uses := [][]int{{0, 2}, {0, 1, 2, 3}}
	all := e.combineOwn("two scales", uses, func() formula { return twoScales }, args...)
	return only(all[slices.Index(which, key)])
}

func twoScales(x, out []float64) {
	kg, at, _, err := mass.Centre(mass.Scale{Kg: x[0], X: x[1]}, mass.Scale{Kg: x[2], X: x[3]})
	out[0], out[1] = orNone(kg, err), orNone(at, err)
}

// lacks names what to read for a point that is missing: the rest of the survey where one was begun,
// else the point itself.
func (e *engine) lacks(key string, state measure.State) []Missing {
	itself := []Missing{{Point: key, State: state.Base()}}
	if key != "shaft.length" && key != "shaft.slope" || e.build.Layout.Shafts != 1 {
		return itself
	}
	var rest []Missing
	older, setup := e.otherSetup(state)
	begun := older != ""
	if begun {
		rest = append(rest, Missing{Point: older, State: state.Base(), Setup: setup})
	}
	for i, p := range e.surveyPoints() {
		if e.takeRead(p, state) != nil {
			begun = begun || i < 5 // the slopes of both ends are read with a shaft too
			continue
		}
		at := state.Base()
		if i == 3 || i == 4 {
			at = measure.OffBench
		}
		rest = append(rest, Missing{Point: p, State: at})
	}
	if !begun || len(rest) == 0 {
		return itself
	}
	return rest
}
