package checks

import (
	"fmt"
	"slices"

	"yokebook/checks/mass"
	"yokebook/checks/uncertain"
)

// slings judges the pull in one leg by what its tag says, and the angle by what nobody lifts below.
func (e *engine) slings(c *Check) []Finding {
	f := Finding{Check: c.Key, Unit: c.Unit, Notes: []Message{{Key: MsgNoLiftPlan}}}
	var args []*quantity
	var missing []Missing
	for _, p := range []string{"engine_gearbox.mass", "sling.legs", "sling.angle"} {
		if q := e.bench(p); q != nil {
			args = append(args, q)
			continue
		}
		missing = append(missing, need(p))
	}
	limit := e.bench("sling.limit")
	if limit == nil {
		missing = append(missing, need("sling.limit"))
	} else {
		f.Limit = statedLimit("sling.limit", limit, "kg")
	}
	if len(args) < 3 {
		f.Verdict, f.Missing, f.Advice = Waiting, missing, Message{Key: MsgTakeMissing}
		return []Finding{f}
	}
	legs := int(args[1].best)
	if stiff := int(e.setting("lift.stiff_legs")); legs > stiff {
		f.Notes = append(f.Notes, Message{MsgStiffLegs, []any{legs, stiff}})
		legs = stiff
	}
	q := e.combine(fmt.Sprintf("pull in one of %d legs", legs), 1, func(x, out []float64) {
		out[0] = orNone(mass.SlingLeg(x[0], legs, x[2]))
	}, args...)[0]
	f.fill(q)
	if q.bad {
		f.Verdict, f.Advice = Waiting, Message{Key: MsgNoNumber}
		return []Finding{f}
	}
	pass := slices.Clone(e.meets(args[2], e.limitOf("lift.angle"), nil))
	advice := Message{Key: MsgStrongerSling}
	if verdictOf(uncertain.Chance(pass)) == Out {
		advice = Message{MsgTooFlat, []any{e.setting("lift.angle")}}
	}
	if limit != nil {
		f.rests(limit.from)
		for k, ok := range e.meets(q, f.Limit, limit) {
			pass[k] = pass[k] && ok
		}
	}
	e.conclude(&f, pass, missing, advice)
	return []Finding{f}
}
