package checks

import (
	"math"
	"slices"

	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// mostAngle is the largest working angle that a joint takes in any state, wound up or not, against
// what the joint is allowed. It is never clear before the axle's whole travel was read.
func (e *engine) mostAngle(c *Check) []Finding {
	var out []Finding
	allowed := e.bench("joint.angle_limit")
	for j, subject := range jointNames(e.build.Layout) {
		f := Finding{Check: c.Key, Subject: subject, Unit: c.Unit, Verdict: Waiting}
		var angles []*quantity
		seen := map[measure.Ride]bool{}
		worst := measure.State{}
		for _, ln := range e.lines {
			q := e.angle(ln, j)
			if q == nil {
				continue
			}
			seen[ln.state.Ride] = true
			f.Predicted = f.Predicted || ln.predicted
			if len(angles) == 0 || q.best > maxBest(angles) {
				worst = ln.state
			}
			angles = append(angles, q)
		}
		f.wait(e.mostMissing(j, seen, allowed != nil))
		if len(angles) > 0 {
			q := e.combine("most", 1, func(x, out []float64) { out[0] = slices.Max(x) }, angles...)[0]
			f.fill(q)
			f.Notes = append(f.Notes, Message{MsgWorstState, []any{worst.String()}})
			if allowed != nil && !q.bad {
				e.judgeMost(&f, q, allowed)
			}
		}
		out = append(out, f)
	}
	return out
}

func (e *engine) judgeMost(f *Finding, q, allowed *quantity) {
	f.Limit = &Limit{Key: "joint.angle_limit", Value: allowed.best, Unit: "deg", Sense: "max",
		Source: "stated for the joint"}
	f.Used = union(f.Used, allowed.from.used)
	f.RestsOn = union(f.RestsOn, allowed.from.restsOn)
	pass := e.meets(q, f.Limit, allowed)
	chance := uncertain.Chance(pass)
	f.Chance = &chance
	f.Verdict = verdictOf(chance)
	switch {
	case f.Verdict == Out:
		f.Missing = nil
		f.Advice = Message{Key: MsgOtherJoint}
	case len(f.Missing) > 0:
		f.Verdict, f.Chance = Waiting, nil
		return
	case f.Verdict == Unsure:
		f.Advice = e.settle(f.Weakest)
	default:
		f.Advice = Message{}
	}
	e.judged(*f, pass)
}

// mostMissing lists what the worst angle still waits for: the limit, and for an axle that moves the
// slopes at both ends of its travel and at ride height.
func (e *engine) mostMissing(j int, seen map[measure.Ride]bool, limit bool) []Missing {
	var missing []Missing
	names := partNames(e.build.Layout)
	want := []measure.State{measure.Hanging, measure.RideKerb, measure.OnBump}
	if e.build.Layout.Axle == "fixed" {
		want = want[1:2]
	}
	for _, s := range want {
		if !seen[s.Ride] {
			missing = append(missing, Missing{Point: names[j] + ".slope", State: s}, Missing{Point: names[j+1] + ".slope", State: s})
		}
	}
	if !limit {
		missing = append(missing, Missing{Point: "joint.angle_limit", State: measure.OffBench})
	}
	return missing
}

func maxBest(list []*quantity) float64 {
	m := math.Inf(-1)
	for _, q := range list {
		m = math.Max(m, q.best)
	}
	return m
}
