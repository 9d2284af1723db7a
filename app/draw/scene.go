package draw

import (
	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure"
)

// View is one way of looking at a build.
type View string

// The views.
const (
	SideView    View = "side"    // the shaft line from the side
	TopView     View = "top"     // the same from above
	TravelView  View = "travel"  // angles, residual and length over the height of the axle
	StackView   View = "stack"   // the clutch in section
	MountsView  View = "mounts"  // engine and gearbox on their mounts, from above
	EndsView    View = "ends"    // the flange faces
	SplinesView View = "splines" // tooth forms that agree with the readings
)

// Views lists them in the order in which they are offered.
var Views = []View{SideView, TopView, TravelView, StackView, MountsView, EndsView, SplinesView}

// ViewOf finds a view by its name.
func ViewOf(name string) (View, bool) {
	for _, v := range Views {
		if string(v) == name {
			return v, true
		}
	}
	return "", false
}

// Scene is a build ready to be drawn. It is made once for a build and its findings and is not safe
// for concurrent use.
type Scene struct {
	build    *measure.Build
	sight    *checks.Sight
	findings []checks.Finding
	says     *words.Language
	stances  []checks.Stance
	ends     []checks.Stance // the line at the ends of the travel
	sweep    *checks.SweepResult
	plotted  *Drawing // the chart, once it was asked for
}

// NewScene makes the scene of a build with what Run found of it. b is not changed.
func NewScene(b *measure.Build, found *checks.Result, l *words.Language) *Scene {
	s := &Scene{build: b, sight: checks.Look(b, found), findings: found.Findings, says: l}
	s.stances = s.sight.Stances()
	if bump, droop, ok := s.sight.Ends(); ok && droop > bump {
		for _, h := range []float64{bump, droop} {
			if st, ok := s.sight.At(h); ok {
				s.ends = append(s.ends, st)
			}
		}
	}
	return s
}

// Heights are the ends of the axle's travel, mm from hub to arch, between which View takes a height;
// false where the axle does not move or nobody read a height.
func (s *Scene) Heights() (bumpMM, droopMM float64, ok bool) {
	if len(s.ends) < 2 {
		return 0, 0, false
	}
	return *s.ends[0].HeightMM, *s.ends[1].HeightMM, true
}

// View draws the build. heightMM, which may be nil, is where the hub stands below the arch; nil draws
// the state that the vehicle was read in, standing first. Heights beyond the travel count as its
// ends. A view of which nothing was read says so in its notes.
func (s *Scene) View(v View, heightMM *float64) Drawing {
	switch v {
	case TopView:
		return s.shaftLine(fromAbove, heightMM)
	case TravelView:
		return s.travel(heightMM)
	case StackView:
		return s.stack()
	case MountsView:
		return s.mounts()
	case EndsView:
		return s.flanges()
	case SplinesView:
		return s.teeth()
	}
	return s.shaftLine(fromTheSide, heightMM)
}

// stance chooses what is drawn.
func (s *Scene) stance(heightMM *float64) checks.Stance {
	if heightMM != nil {
		h := *heightMM
		if bump, droop, ok := s.Heights(); ok {
			h = min(max(h, bump), droop)
		}
		if st, ok := s.sight.At(h); ok {
			return st
		}
	}
	for _, state := range []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump} {
		for _, st := range s.stances {
			if st.State == state {
				return st
			}
		}
	}
	if len(s.stances) > 0 {
		return s.stances[0]
	}
	return s.sight.Empty()
}

// drawnOut is how far the sliding spline stands out from fully closed in a stance: as read in one state,
// and from there by how the shaft or its joint moves.
func (s *Scene) drawnOut(st checks.Stance) (float64, bool) {
	for _, state := range []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump} {
		n, ok := s.sight.Number("slip.exposed", state)
		if !ok {
			continue
		}
		for _, from := range s.stances {
			if from.State != state {
				continue
			}
			if s.build.Layout.Slip == "gearbox" {
				return n.Value + st.OutMM - from.OutMM, true
			}
			if now, then := s.sliding(st), s.sliding(from); now != nil && then != nil {
				return n.Value + *now - *then, true
			}
		}
	}
	return 0, false
}

// sliding is the length of the shaft that slides: the one at the axle.
func (s *Scene) sliding(st checks.Stance) *float64 {
	if s.build.Layout.Shafts == 2 && s.build.Layout.PinionInFront() {
		return st.FrontMM
	}
	return st.ShaftMM
}

// finding is that of a check for a subject in a state; nil where there is none with a value.
func (s *Scene) finding(check, subject string, state measure.State) *checks.Finding {
	for i, f := range s.findings {
		if f.Check == check && f.Subject == subject && f.State == state && f.Value != nil {
			return &s.findings[i]
		}
	}
	return nil
}

// saidOf writes a finding's value with its doubt.
func (s *Scene) saidOf(f *checks.Finding) string {
	half := 0.0
	if f.Low != nil && f.High != nil {
		half = (*f.High - *f.Low) / 2
	}
	return s.says.WithDoubt(*f.Value, f.Unit, half)
}

// number writes what is known of a point.
func (s *Scene) number(n checks.Number, unit string) string {
	return s.says.WithDoubt(n.Value, unit, (n.High-n.Low)/2)
}

// bench is a point that holds in every state.
func (s *Scene) bench(point string) (checks.Number, bool) {
	return s.sight.Number(point, measure.OffBench)
}

// unread is the note that names what nobody read; "" for nothing.
func (s *Scene) unread(points []string) string {
	if len(points) == 0 {
		return ""
	}
	return s.says.Say("draw.unread", s.says.List(points, s.says.Point))
}

// note appends what is not empty.
func (d *Drawing) note(text string) {
	if text != "" {
		d.Notes = append(d.Notes, text)
	}
}
