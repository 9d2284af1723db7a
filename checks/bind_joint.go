package checks

import (
	"math"
	"slices"

	"yokebook/checks/joint"
	"yokebook/measure"
)

var (
	slopes = []string{"datum.slope", "gearbox.slope", "front_shaft.slope", "shaft.slope", "pinion.slope"}
	plans  = []string{"gearbox.plan", "front_shaft.plan", "shaft.plan", "pinion.plan"}
	phases = []string{"shaft.phase", "front_shaft.phase"}
	windUp = []string{"pinion.windup_drive", "pinion.windup_coast"}
	speeds = []string{"engine.rpm_max", "gear.highest", "transfer.high", "road.speed_max", "axle.ratio", "tyre.radius", "tyre.code"}

	angles  = slices.Concat(slopes, plans, windUp)
	chained = slices.Concat(angles, phases)
)

var jointRows = []Check{
	{Key: "joint.angle", Group: "joint", Points: angles, Unit: "deg", Limit: "joint.angle",
		perState: jointAngle, subjects: jointNames, hanging: true, advise: adviseAngle},
	{Key: "joint.most_angle", Group: "joint", Points: slices.Concat(angles, []string{"joint.angle_limit"}), Unit: "deg",
		whole: (*engine).mostAngle, subjects: jointNames},
	{Key: "joint.least_angle", Group: "joint", Points: angles, Unit: "deg", Limit: "joint.least_angle",
		perState: leastAngle, subjects: jointNames},
	{Key: "joint.match", Group: "joint", Points: angles, Unit: "deg", Limit: "joint.match",
		perState: match, hanging: true},
	{Key: "joint.residual", Group: "joint", Points: chained, Unit: "deg", Limit: "joint.residual",
		perState: residual, hanging: true, advise: adviseResidual},
	{Key: "joint.ripple", Group: "joint", Points: chained, Unit: "%",
		perState: ripple, hanging: true},
	{Key: "joint.torsional", Group: "joint", Points: slices.Concat(chained, speeds), Unit: "rad/s²", Limit: "joint.torsional",
		perState: torsional, advise: always(MsgSlowerOrEven)},
	{Key: "joint.inertia_drive", Group: "joint", Points: slices.Concat(chained, speeds), Unit: "rad/s²", Limit: "joint.inertia",
		perState: inertiaDrive, subjects: shaftNames, advise: always(MsgSmallerDrive)},
	{Key: "joint.inertia_coast", Group: "joint", Points: slices.Concat(chained, speeds), Unit: "rad/s²", Limit: "joint.inertia",
		perState: inertiaCoast, subjects: shaftNames, advise: always(MsgSmallerCoast)},
}

func always(key string) func(*line, string) Message {
	return func(*line, string) Message { return Message{Key: key} }
}

// shaftNames tells the shafts of a two-piece line apart; one shaft needs no name.
func shaftNames(l measure.Layout) []string {
	if l.Shafts == 2 {
		return []string{"front_shaft", "shaft"}
	}
	return []string{""}
}

func (e *engine) jointIndex(subject string) int {
	return slices.Index(jointNames(e.build.Layout), subject)
}

// atJoint answers for one joint: its angle, or the slopes that it waits for.
func (e *engine) atJoint(ln *line, j int) answer {
	a := answer{q: e.angle(ln, j)}
	a.absent = ln.parts[j].slope == nil && ln.parts[j+1].slope == nil
	if a.q == nil {
		for _, p := range ln.parts[j : j+2] {
			if p.slope == nil {
				for _, m := range e.lacks(p.name+".slope", ln.state) {
					a.missing = appendMissing(a.missing, m)
				}
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
	a.gentle, a.advice = !e.picked("joint.least_angle"), Message{Key: MsgLeastContested}
	if ln.double[j] {
		return answer{lacking: true}
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
	a := e.overLine(ln, func(v *lineValues) *quantity { return v.residual })
	if a.q != nil && !a.q.bad && ln.state.Running() && ln.state.Case == "" {
		a.notes = append(a.notes, bestPhase(ln)...)
	}
	return a
}

// bestPhase names the phase of one shaft, in whole degrees, that leaves a complete line the smallest
// residual, where that is worth a word: yokes in line are best only where the ends lie in one plane.
func bestPhase(ln *line) []Message {
	x := bestOf(ln.args(0, len(ln.parts)-1))
	chain := joint.Chain{PhaseDeg: bestOf(ln.phases), Double: ln.double}
	for i := range ln.parts {
		chain.Axes = append(chain.Axes, axis(x, i))
	}
	last := chain.Joints() - 1
	least, says := chain.Residual(0, last)-given("phase.worth"), []Message(nil)
	for s := range chain.PhaseDeg {
		turned := chain
		turned.PhaseDeg = slices.Clone(chain.PhaseDeg)
		turned.PhaseDeg[s] = math.Round(chain.BestPhase(s))
		if r := turned.Residual(0, last); r < least {
			least, says = r, []Message{{MsgBestPhase, []any{ln.parts[s+1].name + ".phase", turned.PhaseDeg[s], r}}}
		}
	}
	return says
}

func ripple(e *engine, ln *line, _ string) answer {
	a := e.overLine(ln, func(v *lineValues) *quantity { return e.rippleOf(v.residual) })
	a.silent = true
	return a
}

func (e *engine) rippleOf(residual *quantity) *quantity {
	return e.combine("ripple", 1, func(x, out []float64) { out[0] = joint.Ripple(x[0]) }, residual)[0]
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
