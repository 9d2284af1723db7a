package checks

import (
	"math"
	"slices"
	"strings"

	"yokebook/measure"
)

var derivedRows = []Check{
	{Key: "derived.agreement", Group: "reading", Points: []string{"shaft.length", "shaft.slope", "shaft.plan", "gearbox.plan", "pinion.plan",
		"engine_gearbox.mass", "engine_gearbox.x", "shaft.gap", "front_flange.z", "rear_flange.z", "front_flange.y", "rear_flange.y",
		"front_end.face_to_joint", "rear_end.face_to_joint", "gearbox.y_front", "gearbox.y_rear", "gearbox.y_span", "wheelbase.left",
		"wheelbase.right", "track.width", "lift_front.mass", "lift_front.x", "lift_rear.mass", "lift_rear.x"}, whole: (*engine).agreements},
}

// derivable lists the points that follow from others, with the limit that both ways may differ by.
var derivable = []struct{ point, limit string }{
	{"engine_gearbox.mass", "derived.mass"}, {"engine_gearbox.x", "derived.centre"}, {"gearbox.plan", "derived.angle"},
	{"pinion.plan", "derived.angle"}, {"shaft.length", "derived.length"}, {"shaft.plan", "derived.angle"}, {"shaft.slope", "derived.angle"},
}

// agreements compares what was read with what follows from other readings, wherever both are there.
// One of the two is wrong where they differ; which, no number says.
func (e *engine) agreements(c *Check) []Finding {
	var out []Finding
	for _, d := range derivable {
		p, _ := measure.PointOf(d.point)
		states := []measure.State{{}}
		if p.Moves {
			states = e.statesOf(d.point)
		}
		for _, s := range states {
			at := s
			if !p.Moves {
				at = measure.OffBench
			}
			read, derived := e.takeRead(d.point, at), e.derive(d.point, at)
			if read == nil || derived == nil || read.setup != derived.setup && strings.HasSuffix(d.point, ".slope") {
				continue
			}
			out = append(out, e.differ(c, d.point, d.limit, s, read.q, derived.q))
		}
	}
	return out
}

// statesOf lists the states that a point was read in.
func (e *engine) statesOf(point string) []measure.State {
	var list []measure.State
	for _, r := range e.readings {
		if r.Point == point && !everywhere(r) && !slices.Contains(list, r.State()) {
			list = append(list, r.State())
		}
	}
	return list
}

func (e *engine) differ(c *Check, point, limit string, s measure.State, read, derived *quantity) Finding {
	q := e.combine("differ", 1, func(x, out []float64) { out[0] = math.Abs(x[0] - x[1]) }, read, derived)[0]
	l := e.limitOf(limit)
	f := Finding{Check: c.Key, Subject: point, State: s, Unit: l.Unit, Limit: l}
	f.fill(q)
	if q.bad {
		f.Verdict, f.Advice = Waiting, Message{Key: MsgNoNumber}
		return f
	}
	f.Notes = append(f.Notes, Message{MsgReadAndDerived, []any{point, read.best, derived.best}})
	e.conclude(&f, e.meets(q, l, nil), nil, Message{MsgLookAtBoth, []any{point}})
	return f
}
