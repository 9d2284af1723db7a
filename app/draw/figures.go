package draw

import (
	"math"

	"yokebook/checks"
	"yokebook/measure"
)

// Figures are the numbers of the shaft line where the axle stands, in words.
type Figures struct {
	Where    string   // state and height, and whether that was computed; "" where nothing says it
	Joints   []string // the angle of each joint, front to rear
	Residual string   // "" where it is not known
	Slip     string   // how far the spline is drawn out; "" where it is not known
}

// Figures gives the numbers that move with the axle. heightMM is that of View.
func (s *Scene) Figures(heightMM *float64) Figures {
	st := s.stance(heightMM)
	f := Figures{Where: s.whereInShort(st)}
	for i, a := range st.AnglesDeg {
		if finite(a) {
			subject := subjectOf(i, len(st.AnglesDeg))
			f.Joints = append(f.Joints, s.says.Say("draw.joint", s.says.Subject(subject), s.angleSaid(st, i, subject)))
		}
	}
	if finite(st.Residual) {
		f.Residual = s.says.Say("draw.figure.residual", s.residualSaid(st))
	}
	if out, ok := s.drawnOut(st); ok {
		f.Slip = s.says.Say("draw.slip", s.says.Number(out, "mm", 0.5))
	}
	return f
}

// whereInShort is where without what a slider shows anyway.
func (s *Scene) whereInShort(st checks.Stance) string {
	switch {
	case st.HeightMM == nil && st.State == (measure.State{}):
		return ""
	case st.HeightMM == nil:
		return s.says.State(st.State)
	case st.State == (measure.State{}):
		return s.says.Say("draw.computed", s.says.Say("draw.figure.at", *st.HeightMM))
	case st.Predicted:
		return s.says.Say("draw.computed", s.says.Say("draw.end", st.State.String(), *st.HeightMM))
	}
	return s.says.Say("draw.end", st.State.String(), *st.HeightMM)
}

// Stop is a state at whose height the shaft line was read.
type Stop struct {
	State    measure.State
	HeightMM float64
}

// Stops are the states that were read with their heights, the wheels hanging first.
func (s *Scene) Stops() []Stop {
	var out []Stop
	for _, st := range s.stances {
		if st.Predicted || st.HeightMM == nil || !finite(st.Residual) {
			continue
		}
		at := len(out)
		for at > 0 && out[at-1].HeightMM < *st.HeightMM {
			at--
		}
		out = append(out[:at], append([]Stop{{st.State, *st.HeightMM}}, out[at:]...)...)
	}
	return out
}

// Now is the line across the travel chart where the axle stands at a height, in the chart's own space;
// false where there is no chart.
func (s *Scene) Now(heightMM float64) (top, bottom Point, ok bool) {
	d := s.travel(nil)
	if d.Box.empty() {
		return top, bottom, false
	}
	bump, droop := s.sweep.Rows[len(s.sweep.Rows)-1].HeightMM, s.sweep.Rows[0].HeightMM
	x := chartWide * (droop - math.Min(math.Max(heightMM, bump), droop)) / (droop - bump)
	return Point{x, 0}, Point{x, d.Box.Min.Y + tickHigh}, true
}

// subjectOf is what findings call a joint of so many.
func subjectOf(i, joints int) string {
	switch i {
	case 0:
		return "front"
	case joints - 1:
		return "rear"
	}
	return "centre"
}

// angleSaid is a joint's angle with the doubt of its finding, where this is a state that was judged.
func (s *Scene) angleSaid(st checks.Stance, i int, subject string) string {
	if f := s.finding("joint.angle", subject, st.State); f != nil && st.State != (measure.State{}) {
		return s.saidOf(f)
	}
	return s.says.Number(st.AnglesDeg[i], "deg", 0.1)
}

// residualSaid is the same for the residual.
func (s *Scene) residualSaid(st checks.Stance) string {
	if f := s.finding("joint.residual", "", st.State); f != nil && st.State != (measure.State{}) {
		return s.saidOf(f)
	}
	return s.says.Number(st.Residual, "deg", 0.1)
}
