package draw

import (
	"yokebook/checks"
	"yokebook/checks/slip"
)

// half the size, mm, of the piece of an obstacle that is shown: its face is read, the rest of it not.
const obstacleHalf = 45.0

// obstacles draws the face of each obstacle where it was read, and its gap to the shaft as it stands.
func (p *painter) obstacles() {
	for _, o := range p.sight.Obstacles() {
		from, ok := p.readIn(o)
		if !ok || (o.Side == 3) != p.top() {
			continue
		}
		foot, way, ok := p.onString(p.bonesOf(from), o.StationMM)
		if !ok {
			continue
		}
		sides := []float64{1}
		switch o.Side {
		case 2:
			sides = []float64{-1}
		case 3:
			sides = []float64{1, -1}
		}
		for k, sign := range sides {
			p.obstacle(o, foot, way, sign, k == 0)
		}
	}
}

// readIn is the line in the state that an obstacle's gap was read in.
func (p *painter) readIn(o checks.SeenObstacle) (checks.Stance, bool) {
	for _, st := range p.stances {
		if st.State == o.State {
			return st, true
		}
	}
	return checks.Stance{}, false
}

// onString is the place on the line between joint centres so far behind the front joint, and the
// direction of the line there, both in the drawing.
func (p *painter) onString(b bones, station float64) (foot, way Point, ok bool) {
	for i, part := range b.shafts {
		long := slip.Distance(b.joints[i], b.joints[i+1])
		if part.Known && b.whole && (station <= long || i == len(b.shafts)-1) {
			way = p.seen(part)
			return p.at(b.joints[i].Minus(axisOf(part).By(station))), way, true
		}
		station -= long
	}
	return Point{}, Point{}, false
}

func (p *painter) obstacle(o checks.SeenObstacle, foot, way Point, sign float64, first bool) {
	out := way.square()
	if out.Y < 0 {
		out = out.by(-1)
	}
	out = out.by(sign)
	at := foot.plus(out.by(o.Gap.Value))
	style := Obstacle
	if o.Side == 3 {
		style = Foreseen // which side it stands on was not read
	}
	a, b := at.plus(way.by(obstacleHalf)), at.minus(way.by(obstacleHalf))
	p.line(style, "face of obstacle", a, b)
	for i := range 4 { // hatching away from the shaft
		q := a.plus(b.minus(a).by((float64(i) + 0.5) / 4))
		p.Shapes = append(p.Shapes, Shape{Style: Outline, Points: []Point{q, q}, Reach: out.by(9).plus(way.by(6))})
	}
	now, _, ok := p.onString(p.bones, o.StationMM)
	if !ok || !first {
		return
	}
	gap := at.minus(now).along(out)
	p.line(Measure, "gap of obstacle", now, now.plus(out.by(gap)))
	p.sign(ArrowSign, Measure, "", now.plus(out.by(gap)), out)
	side := Above
	if out.Y < 0 {
		side = Below
	}
	key := "draw.obstacle"
	if o.Side == 3 {
		key = "draw.obstacle_beside"
	}
	text := p.says.Number(gap, "mm", 0.5) // as it follows from the line; its doubt was not worked out
	if p.state == o.State {
		text = p.number(o.Gap, "mm")
	}
	said, ink := p.says.Say(key, o.Tag, text), Obstacle
	if f := p.tight(o); f != nil {
		ink = styleOf(f.Verdict)
		p.sign(RingSign, ink, "worst", now.plus(out.by(gap)), Point{1, 0})
		said = p.says.Say("draw.room", said, p.saidOf(f), p.says.Verdict(f.Verdict), p.says.Number(f.Limit.Value, f.Limit.Unit, 0))
	}
	p.label(25, side, ink, at, said)
}

// tight is the finding that an obstacle keeps too little room somewhere on the travel, or perhaps does;
// nil where there is none.
func (p *painter) tight(o checks.SeenObstacle) *checks.Finding {
	for i, f := range p.findings {
		if f.Check == "shaft.clearance" && f.Subject == o.Tag && f.Value != nil && f.Limit != nil && styleOf(f.Verdict) != Plain {
			return &p.findings[i]
		}
	}
	return nil
}
