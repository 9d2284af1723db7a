package draw

import (
	"math"

	"yokebook/checks"
	"yokebook/checks/joint"
	"yokebook/checks/slip"
	"yokebook/measure"
)

// look turns a place in the vehicle, x forward, y left, z up, into one of the drawing.
type look struct {
	view View
	see  func(x, y, z float64) Point
}

var (
	fromTheSide = look{SideView, func(x, _, z float64) Point { return Point{-x, z} }}
	fromAbove   = look{TopView, func(x, y, _ float64) Point { return Point{-x, -y} }}
)

// nominal sizes, mm, of what is drawn without having been read.
const (
	nominalShaft = 1000.0
	nominalTube  = 60.0
	stubShare    = 0.24 // of the line's length: how much of gearbox and pinion is shown
)

// bones are the places of a line in the vehicle.
type bones struct {
	stance checks.Stance
	joints []slip.Place // front to rear
	stubs  [2]slip.Place
	shafts []checks.StancePart // between the joints
	whole  bool                // every shaft's slope and length is known
}

// bonesOf puts a line together. The joint on the gearbox stays where it is; where the slip is in the
// gearbox it runs along the output axis.
func (s *Scene) bonesOf(st checks.Stance) bones {
	n := len(st.Parts)
	b := bones{stance: st, whole: true, shafts: st.Parts[1 : n-1]}
	lengths := make([]float64, len(b.shafts))
	total := 0.0
	for i, p := range b.shafts {
		length := st.ShaftMM
		if p.Name == "front_shaft" {
			length = st.FrontMM
		}
		lengths[i] = nominalShaft
		if length != nil {
			lengths[i] = *length
		}
		b.whole = b.whole && length != nil && p.Known
		total += lengths[i]
	}
	step := func(p checks.StancePart, mm float64) slip.Place { return axisOf(p).By(mm) }
	b.joints = make([]slip.Place, n-1)
	gearFront := !s.build.Layout.PinionInFront()
	first, last := st.Parts[0], st.Parts[n-1]
	if gearFront {
		b.joints[0] = step(first, -st.OutMM)
		for i := 1; i < n-1; i++ {
			b.joints[i] = b.joints[i-1].Minus(step(b.shafts[i-1], lengths[i-1]))
		}
	} else {
		b.joints[n-2] = step(last, st.OutMM)
		for i := n - 3; i >= 0; i-- {
			b.joints[i] = b.joints[i+1].Plus(step(b.shafts[i], lengths[i]))
		}
	}
	b.stubs = [2]slip.Place{b.joints[0].Plus(step(first, stubShare*total)), b.joints[n-2].Minus(step(last, stubShare*total))}
	return b
}

// axisOf is a part's direction; level where it is not known.
func axisOf(p checks.StancePart) slip.Place {
	if !p.Known {
		p.SlopeDeg = 0
	}
	return slip.Place(joint.AxisOf(p.SlopeDeg, p.PlanDeg))
}

// line draws the shaft line.
func (s *Scene) shaftLine(l look, heightMM *float64) Drawing {
	st := s.stance(heightMM)
	b := s.bonesOf(st)
	d := Drawing{View: l.view, Box: emptyBox(), Title: s.lineTitle(l.view, st)}
	p := painter{Scene: s, Drawing: &d, look: l, bones: b, state: st.State}
	p.ends()
	p.shaftTubes()
	p.ghosts()
	p.doubts()
	p.obstacles()
	p.axes()
	p.angles()
	p.lengths()
	p.worst()
	p.notes()
	p.keepInSight()
	return d
}

// painter draws one line into one drawing.
type painter struct {
	*Scene
	*Drawing
	look  look
	bones bones
	state measure.State
}

func (p *painter) at(q slip.Place) Point { return p.look.see(q.X, q.Y, q.Z) }

// style is that of a part's axis: read, or dashed where it is computed or, from above, assumed.
func (p *painter) style(part checks.StancePart) Style {
	if p.bones.stance.Predicted || p.top() && !part.PlanRead {
		return Predicted
	}
	return Read
}

func (p *painter) top() bool { return p.look.view == TopView }

// axes draws the middle line of every part that is known.
func (p *painter) axes() {
	b, parts := p.bones, p.bones.stance.Parts
	n := len(parts)
	if parts[0].Known {
		p.line(p.style(parts[0]), "axis of "+parts[0].Name, p.at(b.stubs[0]), p.at(b.joints[0]))
	}
	for i, part := range b.shafts {
		if part.Known {
			p.line(p.style(part), "axis of "+part.Name, p.at(b.joints[i]), p.at(b.joints[i+1]))
		}
	}
	if parts[n-1].Known {
		p.line(p.style(parts[n-1]), "axis of "+parts[n-1].Name, p.at(b.joints[n-2]), p.at(b.stubs[1]))
	}
	for i := range b.joints {
		p.joint(i)
	}
}

// joint marks a joint centre; a double joint has two crosses.
func (p *painter) joint(i int) {
	at, way := p.at(p.bones.joints[i]), p.seen(p.bones.stance.Parts[i])
	double := i == 0 && p.build.Layout.FrontJoint == "double" || i == len(p.bones.joints)-1 && p.build.Layout.RearJoint == "double"
	if !double {
		p.sign(JointSign, Body, p.jointName(i), at, way)
		return
	}
	for _, side := range []float64{1, -1} {
		p.Signs = append(p.Signs, Sign{Name: p.jointName(i), Kind: JointSign, Style: Body, At: at, Dir: way, Shift: way.by(side * 1.25 * signSize)})
	}
}

func (p *painter) jointName(i int) string { return "joint " + p.subject(i) }

// subject is what findings call a joint.
func (p *painter) subject(i int) string { return subjectOf(i, len(p.bones.joints)) }

// ghosts draws the shafts at the ends of the travel.
func (p *painter) ghosts() {
	for k, st := range p.Scene.ends {
		b := p.bonesOf(st)
		style := Ghost
		if st.Predicted {
			style = Foreseen
		}
		for i := range b.shafts {
			p.line(style, "ghost of "+b.shafts[i].Name, p.at(b.joints[i]), p.at(b.joints[i+1]))
		}
		moving := b.joints[len(b.joints)-1]
		if p.build.Layout.PinionInFront() {
			moving = b.joints[0]
		}
		p.sign(DotSign, style, "", p.at(moving), Point{1, 0})
		if p.top() {
			continue
		}
		side := Above
		if k == 1 {
			side = Below
		}
		p.label(60, side, style, p.at(moving), p.endName(k, st))
	}
}

// endName says which end of the travel a ghost stands at: by the state that it was read in, else by
// the stop.
func (p *painter) endName(k int, st checks.Stance) string {
	state := []measure.State{measure.OnBump, measure.Hanging}[k]
	if h, ok := p.sight.Height(state); st.State != (measure.State{}) && (!ok || h.Value != *st.HeightMM) {
		state = st.State
	}
	return p.says.Say("draw.end", state.String(), *st.HeightMM)
}

// doubts draws the band in which each known axis lies.
func (p *painter) doubts() {
	b, parts := p.bones, p.bones.stance.Parts
	n := len(parts)
	p.band(parts[0], b.joints[0], b.stubs[0])
	for i, part := range b.shafts {
		from, to := b.joints[i], b.joints[i+1]
		if p.build.Layout.PinionInFront() {
			from, to = to, from
		}
		p.band(part, from, to)
	}
	p.band(parts[n-1], b.joints[n-2], b.stubs[1])
}

func (p *painter) band(part checks.StancePart, from, to slip.Place) {
	half := part.SlopeHalf
	if p.top() {
		half = part.PlanHalf
	}
	if !part.Known || !(half > 0) {
		return
	}
	a, b := p.at(from), p.at(to)
	way := b.minus(a)
	turn := func(deg float64) Point {
		sin, cos := math.Sincos(deg * math.Pi / 180)
		return a.plus(Point{way.X*cos - way.Y*sin, way.X*sin + way.Y*cos})
	}
	p.area(Doubt, "doubt of "+part.Name, a, turn(half), turn(-half))
}
