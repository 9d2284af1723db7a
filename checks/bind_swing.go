package checks

import (
	"fmt"
	"math"

	"yokebook/checks/joint"
	"yokebook/checks/slip"
	"yokebook/checks/travel"
	"yokebook/measure"
)

// swinging is one draw of a line whose shaft swings between the gearbox and the moving axle.
type swinging struct {
	e       *engine
	shaft   int // index of the moving shaft among the parts
	pinion  int
	toward  float64 // 1: the gearbox is ahead of the axle
	tail    bool    // the front joint runs along the output axis
	path    travel.Path
	ride    float64
	rear    travel.Point
	parts   []joint.Axis // at the anchor
	pitch   float64      // of the axle there
	wound   float64      // degrees by which torque turns the axle's housing
	front   slip.Place
	sliding slip.Tail
}

// swing is the model that swings the line read in one state along the path of the axle.
func (e *engine) swing(m motion, from readLine) *model {
	ln := from.line
	n := len(ln.parts)
	s := &swinging{e: e, toward: e.towardGearbox(), tail: e.build.Layout.Slip == "gearbox"}
	for i, p := range ln.parts {
		switch p.name {
		case "shaft":
			s.shaft = i
		case "pinion":
			s.pinion = i
		}
	}
	ride, state := e.rideHeight()
	if ride == nil {
		ride = from.height
	}
	args := append([]*quantity{}, m.args...)
	args = append(args, ride, from.height, e.lengthNear(ln.state), e.benchOr("rear_joint.x"), e.benchOr("rear_joint.z"), e.leaning(ln, state))
	base := len(args)
	args = append(args, ln.args(0, n-1)...)
	out := &model{way: m.way, name: fmt.Sprintf("%s %v %v %d", m.name, s.toward, s.tail, n), args: args, lengths: !s.tail,
		bump: math.Inf(-1), droop: math.Inf(1), notes: m.note}
	out.parts = swingParts(s, n, len(m.args), base)
	out.open = func() opened {
		own, path := *s, m.open()
		own.parts = make([]joint.Axis, n)
		return opened{
			set:  func(x []float64) bool { return own.set(path(x[:len(m.args)]), x[len(m.args):base], x[base:]) },
			at:   own.at,
			wind: func(deg float64) { own.wound = deg },
		}
	}
	out.opened = out.open()
	return out
}

// swingParts says what each axis rests on: itself and the body's lean, the pinion also on the path,
// the shaft on everything but the pinion.
func swingParts(s *swinging, n, motion, base int) [][]int {
	parts := make([][]int, n)
	for i := range parts {
		for k := range base {
			switch lean := k == base-1; {
			case i == s.shaft, lean, i == s.pinion && k < motion+2:
				parts[i] = append(parts[i], k)
			}
		}
		for k := range 3 {
			parts[i] = append(parts[i], base+3*i+k)
		}
	}
	if s.tail { // the joint runs along the axis of the part before the shaft
		before := s.shaft - int(s.toward)
		for k := range 3 {
			parts[s.shaft] = append(parts[s.shaft], base+3*before+k)
		}
	}
	return parts
}

// leaning is by how much the body turned from the state of a line to the state that springs and
// links are measured in: what the frame mark says, else 0 within the default.
func (e *engine) leaning(ln *line, ride measure.State) *quantity {
	if ln.state.Base() == ride || e.build.Layout.Axle == "fixed" {
		return exact(0)
	}
	setup := 0
	for _, r := range e.byPoint["datum.slope"] {
		if r.State() == ride {
			setup = max(setup, r.Setup)
		}
	}
	was, is := e.datum(ln.state, ln.setup), e.datum(ride, setup)
	if was == nil || is == nil {
		return e.assume("datum.slope", given("assumed.datum.slope"))
	}
	return e.combine("turn", 1, func(x, out []float64) { out[0] = x[1] - x[0] }, was, is)[0]
}

// set lays the line at the anchor: x holds ride height, its own height, length, place of the
// axle's joint and lean, y slope, plan and turn of each part.
func (s *swinging) set(path travel.Path, x, y []float64) bool {
	s.path, s.ride = path, x[0]
	s.rear = travel.Point{X: x[3], Z: x[4]}
	for i := range s.parts {
		s.parts[i] = axis(y, i).Pitched(x[5])
	}
	at, err := path.At(s.ride - x[1])
	if err != nil || !(x[2] > 0) {
		return false
	}
	s.pitch = at.PitchDeg
	shaft := s.parts[s.shaft]
	s.front = sideways(at.Carry(s.rear)).Plus(slip.Place(shaft).By(float64(s.toward * x[2])))
	if s.tail {
		before := s.parts[s.shaft-int(s.toward)]
		s.sliding = slip.Tail{Joint: s.front, Out: slip.Place(before).By(-s.toward), LengthMM: x[2]}
	}
	return true
}

// at swings the line to a height.
func (s *swinging) at(heightMM float64, to *stand) bool {
	now, err := s.path.At(s.ride - heightMM)
	if err != nil {
		return false
	}
	now.PitchDeg += s.wound
	rear, front := sideways(now.Carry(s.rear)), s.front
	to.slide = 0
	if s.tail {
		if to.slide, err = s.sliding.DrawnOut(rear); err != nil {
			return false
		}
		front = front.Plus(s.sliding.Out.By(to.slide))
	}
	way := front.Minus(rear).By(s.toward)
	to.length = way.Length()
	if !s.tail {
		to.slide = to.length
	}
	to.axes = append(to.axes[:0], s.parts...)
	to.axes[s.shaft] = joint.Axis(way.By(1 / to.length))
	to.axes[s.pinion] = s.parts[s.pinion].Pitched(now.PitchDeg - s.pitch)
	return to.length > 0
}

// sideways puts a place of the side view into space, in the vertical plane of the axle's joint.
func sideways(p travel.Point) slip.Place { return slip.Place{X: p.X, Z: p.Z} }
