package draw

import (
	"math"

	"yokebook/checks"
	"yokebook/checks/slip"
	"yokebook/measure"
)

// letterAt is where along a part its slope is lettered: off the middle, clear of the joint's angle.
const letterAt = 0.62

// lineTitle says what is seen, in which state.
func (s *Scene) lineTitle(v View, st checks.Stance) string {
	what, where := s.says.Say("draw.title."+string(v)), s.where(st)
	if where == "" {
		return what
	}
	return s.says.Say("draw.title", what, where)
}

// where says in which state a line stands, at which height, and whether it was computed; "" for neither.
func (s *Scene) where(st checks.Stance) string {
	state := ""
	if st.State != (measure.State{}) {
		state = s.says.State(st.State)
	}
	switch {
	case state != "" && st.HeightMM != nil:
		state = s.says.Say("draw.state_height", state, *st.HeightMM)
	case st.HeightMM != nil:
		state = s.says.Say("draw.height", *st.HeightMM)
	case state == "":
		return ""
	}
	if st.Predicted {
		return s.says.Say("draw.computed", state)
	}
	return state
}

// angles letters the slope of every part and, from the side, the angle at every joint.
func (p *painter) angles() {
	b, parts := p.bones, p.bones.stance.Parts
	n := len(parts)
	p.letterPart(parts[0], b.joints[0], b.stubs[0])
	for i, part := range b.shafts {
		p.letterPart(part, b.joints[i], b.joints[i+1])
	}
	p.letterPart(parts[n-1], b.joints[n-2], b.stubs[1])
	for i := range b.joints {
		p.jointAngle(i)
	}
}

func (p *painter) letterPart(part checks.StancePart, from, to slip.Place) {
	if !part.Known {
		return
	}
	a, b := p.at(from), p.at(to)
	at := a.plus(b.minus(a).by(letterAt))
	name := p.says.Part(part.Name)
	value, half := part.SlopeDeg, part.SlopeHalf
	key := "draw.slope"
	if p.top() {
		value, half, key = part.PlanDeg, part.PlanHalf, "draw.plan"
		if !part.PlanRead {
			key = "draw.plan_unread"
		}
	}
	p.label(20, Above, Plain, at, p.says.Say(key, name, p.says.WithDoubt(value, "deg", half)))
}

// jointAngle draws how the front part would go on and the arc to the part behind.
func (p *painter) jointAngle(i int) {
	st := p.bones.stance
	if p.top() || !finite(st.AnglesDeg[i]) {
		return
	}
	front, rear := st.Parts[i], st.Parts[i+1]
	at := p.at(p.bones.joints[i])
	reach := 0.5 * p.span(i)
	on := at.minus(p.seen(front).by(reach))
	p.line(Guide, "extension of "+front.Name, at, on)
	from, to := p.seen(front).by(-1).direction(), p.seen(rear).by(-1).direction()
	for to-from > math.Pi {
		to -= 2 * math.Pi
	}
	for to-from < -math.Pi {
		to += 2 * math.Pi
	}
	p.Shapes = append(p.Shapes, Shape{Name: "angle of " + p.jointName(i), Style: Measure, Arc: &Arc{at, 0.9 * reach, from, to}})
	side := Below
	if to < from {
		side = Above
	}
	mark := at.plus(pointing((from+to)/2, 0.9*reach))
	text, style := p.says.Say("draw.joint", p.says.Subject(p.subject(i)), p.angleSaid(i)), Plain
	if worst, f := p.worst(); worst == i {
		if style = Unsettled; f.Verdict == checks.Out {
			style = Worst
		}
		p.sign(RingSign, style, "worst", at, Point{1, 0})
		text = p.says.Say("draw.worst", text, p.says.Verdict(f.Verdict), p.says.Number(f.Limit.Value, f.Limit.Unit, 0))
	}
	p.label(10, side, style, mark, text)
}

// span is the length in the drawing of what lies behind a joint.
func (p *painter) span(i int) float64 {
	b := p.bones
	if i+1 < len(b.joints) {
		return p.at(b.joints[i]).minus(p.at(b.joints[i+1])).length() * 0.6
	}
	return p.at(b.joints[i]).minus(p.at(b.stubs[1])).length() * 1.6
}

// seen is a part's forward direction in the drawing.
func (p *painter) seen(part checks.StancePart) Point { return p.at(axisOf(part)).unit() }

func (p *painter) angleSaid(i int) string { return p.Scene.angleSaid(p.bones.stance, i, p.subject(i)) }

// lengths letters the shafts' lengths, or says that nobody read them.
func (p *painter) lengths() {
	b := p.bones
	for i, part := range b.shafts {
		length, key := b.stance.ShaftMM, "shaft.length"
		if part.Name == "front_shaft" {
			length, key = b.stance.FrontMM, "front_shaft.length"
		}
		a, e := p.at(b.joints[i]), p.at(b.joints[i+1])
		text := p.says.Say("draw.no_length")
		if length != nil {
			half := 0.0
			if n, ok := p.sight.Number(key, p.state); ok && p.state != (measure.State{}) {
				half = (n.High - n.Low) / 2
			}
			text = p.says.WithDoubt(*length, "mm", half)
		}
		if !part.Known || p.top() {
			continue
		}
		if a.X < e.X { // below the shaft
			a, e = e, a
		}
		p.dimension(a, e, 46, "length of "+part.Name, text, 15)
	}
	if out, ok := p.drawnOut(b.stance); ok && !p.top() {
		n := len(b.joints)
		from, to := p.at(b.joints[n-2]), p.at(b.joints[n-1]) // the shaft at the axle, whose front end slides
		if p.build.Layout.PinionInFront() {
			from, to = p.at(b.joints[1]), p.at(b.joints[0])
		}
		p.label(30, Below, Plain, from.plus(to.minus(from).by(0.22)), p.says.Say("draw.slip", p.says.Number(out, "mm", 0.5)))
	}
}

// worst is the joint whose angle is furthest out or unsettled in this state, and its finding; -1 where
// none is.
func (p *painter) worst() (int, *checks.Finding) {
	best, at := 0.0, -1
	var which *checks.Finding
	for i := range p.bones.joints {
		f := p.finding("joint.angle", p.subject(i), p.state)
		if f == nil || f.Limit == nil || f.Verdict != checks.Out && f.Verdict != checks.Unsure {
			continue
		}
		bad := *f.Value / f.Limit.Value
		if f.Verdict == checks.Out {
			bad += 1000
		}
		if bad > best {
			best, at, which = bad, i, f
		}
	}
	return at, which
}

// notes says what the numbers leave open.
func (p *painter) notes() {
	st := p.bones.stance
	if !p.top() && finite(st.Residual) {
		p.note(p.says.Say("draw.residual", p.residualSaid(st)))
	}
	var unread []string
	for _, part := range st.Parts {
		switch {
		case !part.Known:
			unread = append(unread, part.Name+".slope")
		case p.top() && !part.PlanRead:
			unread = append(unread, part.Name+".plan")
		}
	}
	if st.ShaftMM == nil {
		unread = append(unread, "shaft.length")
	}
	if st.FrontMM == nil && len(p.bones.shafts) == 2 {
		unread = append(unread, "front_shaft.length")
	}
	if _, ok := p.bench("tube.od"); !ok {
		unread = append(unread, "tube.od")
	}
	if st.HeightMM == nil && p.build.Layout.Axle != "fixed" {
		unread = append(unread, "hub.height")
	}
	p.note(p.unread(unread))
	p.note(p.says.Say("draw.legend." + string(p.look.view)))
	if st.ShaftMM == nil {
		p.note(p.says.Say("draw.not_to_scale", nominalShaft))
	}
}

// keepInSight makes the picture stand still while the axle moves: it holds the ends of the travel at
// every height.
func (p *painter) keepInSight() {
	for _, st := range p.Scene.ends {
		b := p.bonesOf(st)
		for _, q := range append(b.joints, b.stubs[:]...) {
			p.Box.extend(p.at(q))
		}
	}
}
