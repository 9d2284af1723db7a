package checks

import (
	"math"
	"slices"

	"yokebook/checks/joint"
	"yokebook/measure"
)

func (e *engine) jointIndex(subject string) int {
	return slices.Index(jointNames(e.build.Layout), subject)
}

// atJoint answers for one joint: its angle, or the slopes that it waits for.
func (e *engine) atJoint(ln *line, j int) answer {
	a := answer{q: e.angle(ln, j)}
	a.absent = ln.parts[j].slope == nil && ln.parts[j+1].slope == nil
	if a.q == nil {
		for _, m := range ln.missing {
			if m.Point == ln.parts[j].name+".slope" || m.Point == ln.parts[j+1].name+".slope" {
				a.missing = append(a.missing, m)
			}
		}
		a.missing = append(a.missing, ln.datums...)
	}
	return a
}

// overLine answers with a number of the whole line.
func (e *engine) overLine(ln *line, value func(*lineValues) *quantity) answer {
	if !ln.complete() {
		return answer{missing: slices.Concat(ln.missing, ln.datums)}
	}
	a := answer{q: value(e.valuesOf(ln))}
	if slices.Contains(ln.double, true) {
		a.notes = append(a.notes, Message{Key: MsgDoubleJoint})
	}
	return a
}

func jointAngle(e *engine, ln *line, subject string) answer {
	j := e.jointIndex(subject)
	a := e.atJoint(ln, j)
	if ln.double[j] {
		a.limit = "joint.double_angle"
	}
	return a
}

func leastAngle(e *engine, ln *line, subject string) answer {
	j := e.jointIndex(subject)
	a := e.atJoint(ln, j)
	a.gentle = !e.picked("joint.least_angle")
	if ln.double[j] {
		return answer{absent: true, silent: true}
	}
	return a
}

// match is the difference of the angles at the two ends; of a two-piece line, of the two joints
// nearest to the axle.
func match(e *engine, ln *line, _ string) answer {
	a := e.overLine(ln, func(v *lineValues) *quantity {
		near, far := len(v.angles)-1, len(v.angles)-2
		if ln.gearAt > 0 {
			near, far = 0, 1
		}
		return e.combine("match", 1, func(x, out []float64) { out[0] = math.Abs(x[0] - x[1]) }, v.angles[near], v.angles[far])[0]
	})
	a.silent = true
	a.notes = append(a.notes, Message{Key: MsgMatchNoVerdict})
	return a
}

func residual(e *engine, ln *line, _ string) answer {
	return e.overLine(ln, func(v *lineValues) *quantity { return v.residual })
}

func ripple(e *engine, ln *line, _ string) answer {
	a := e.overLine(ln, func(v *lineValues) *quantity {
		return e.combine("ripple", 1, func(x, out []float64) { out[0] = joint.Ripple(x[0]) }, v.residual)[0]
	})
	a.silent = true
	return a
}

func torsional(e *engine, ln *line, _ string) answer {
	return e.atSpeed(ln, func(v *lineValues) *quantity { return v.residual })
}

func inertiaDrive(e *engine, ln *line, subject string) answer {
	s := slices.Index(shaftNames(e.build.Layout), subject)
	return e.atSpeed(ln, func(v *lineValues) *quantity { return v.drive[s] })
}

func inertiaCoast(e *engine, ln *line, subject string) answer {
	s := slices.Index(shaftNames(e.build.Layout), subject)
	return e.atSpeed(ln, func(v *lineValues) *quantity { return v.coast[s] })
}

// atSpeed answers with the peak angular acceleration that an angle of the line makes at the highest
// shaft speed, rad/s².
func (e *engine) atSpeed(ln *line, angle func(*lineValues) *quantity) answer {
	s := e.speedOf()
	a := e.overLine(ln, angle)
	if s.q == nil {
		a.q = nil
		a.missing = append(a.missing, s.missing...)
		return a
	}
	a.notes = append(a.notes, s.note())
	if a.q != nil {
		a.q = e.combine("acceleration", 1, func(x, out []float64) {
			out[0] = joint.PeakAcceleration(x[0], x[1])
		}, a.q, s.q)[0]
	}
	return a
}

// adviseAngle names the part whose turn makes the angle at a joint smaller, and which way.
func adviseAngle(ln *line, subject string) Message {
	j := 0
	switch subject {
	case "centre":
		return Message{MsgSmallerAngle, []any{subject}}
	case "rear":
		j = len(ln.parts) - 2
	}
	for i := j; i <= j+1; i++ {
		if ln.parts[i].name == "gearbox" || ln.parts[i].name == "pinion" {
			return turn(ln, i, func(axes []joint.Axis) float64 { return joint.Angle(axes[j], axes[j+1]) },
				Message{MsgSmallerAngle, []any{subject}})
		}
	}
	return Message{MsgSmallerAngle, []any{subject}}
}

// adviseResidual prefers the pinion, then the gearbox: what a wedge or a mount turns.
func adviseResidual(ln *line, _ string) Message {
	chain := joint.Chain{PhaseDeg: make([]float64, len(ln.phases)), Double: ln.double}
	for i, p := range ln.phases {
		chain.PhaseDeg[i] = p.best
	}
	left := func(axes []joint.Axis) float64 {
		chain.Axes = axes
		return chain.Residual(0, len(axes)-2)
	}
	pinion := len(ln.parts) - 1 - ln.gearAt
	gearbox := turn(ln, ln.gearAt, left, Message{Key: MsgSlowerOrEven})
	return turn(ln, pinion, left, gearbox)
}

// turn tries part i half a degree both ways at the best values and says which way makes the number
// smaller; otherwise it gives back the message it was handed.
func turn(ln *line, i int, number func([]joint.Axis) float64, otherwise Message) Message {
	const step = 0.5
	at := func(deg float64) float64 {
		axes := make([]joint.Axis, len(ln.parts))
		for n, p := range ln.parts {
			if p.slope == nil {
				continue // the number asked for does not use this part
			}
			slope := p.slope.best
			if n == i {
				slope += deg
			}
			x := []float64{slope, p.plan.best, 0}
			if p.turn != nil {
				x[2] = p.turn.best
			}
			axes[n] = axis(x, 0)
		}
		return number(axes)
	}
	key := MsgTurnGearbox
	if ln.parts[i].name == "pinion" {
		key = MsgTurnPinion
	}
	now, up, down := at(0), at(step), at(-step)
	switch {
	case up < now && up <= down:
		return Message{key, []any{"up"}}
	case down < now:
		return Message{key, []any{"down"}}
	}
	return otherwise
}

// mostAngle is the largest working angle that a joint takes in any state, wound up or not, against
// what the joint is allowed. It is never clear before the axle's whole travel was read.
func (e *engine) mostAngle(c *Check) []Finding {
	var out []Finding
	allowed := e.bench("joint.angle_limit")
	for j, subject := range jointNames(e.build.Layout) {
		f := Finding{Check: c.Key, Subject: subject, Unit: "deg", Verdict: Waiting}
		var angles []*quantity
		seen := map[measure.Ride]bool{}
		worst := measure.State{}
		for _, ln := range e.lines {
			q := e.angle(ln, j)
			if q == nil {
				continue
			}
			seen[ln.state.Ride] = true
			if len(angles) == 0 || q.best > maxBest(angles) {
				worst = ln.state
			}
			angles = append(angles, q)
		}
		f.Missing = e.mostMissing(j, seen, allowed != nil)
		f.Advice = Message{Key: MsgTakeMissing}
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
	pass := meets(q, f.Limit, allowed)
	chance := chanceOf(pass)
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
		f.Advice = settle(f, measure.State{}, e.build.Instruments)
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
