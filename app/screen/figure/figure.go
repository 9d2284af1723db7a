// Package figure is the model of the page of drawings: which view of a build is looked at, and where
// the axle stands in it. It knows no toolkit.
package figure

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"yokebook/app/draw"
	"yokebook/measure"
)

// Step is how far a step key moves the axle, mm.
const Step = 10.0

// catch is the share of the travel within which a finger on the slider means a height that was read.
const catch = 0.022

// Model is one build looked at.
type Model struct {
	scene       *draw.Scene
	view        draw.View
	height      *float64 // nil: the axle does not move
	bump, droop float64
	stops       []draw.Stop
}

// New looks at a scene as a mark of Mark says; "" looks from the side, standing at ride height.
func New(scene *draw.Scene, mark string) *Model {
	m := &Model{scene: scene, view: draw.SideView, stops: scene.Stops()}
	name, at, _ := strings.Cut(mark, " ")
	if v, ok := draw.ViewOf(name); ok {
		m.view = v
	}
	bump, droop, ok := scene.Heights()
	if !ok {
		return m
	}
	m.bump, m.droop = bump, droop
	h, err := strconv.ParseFloat(at, 64)
	if err != nil || math.IsNaN(h) {
		h = m.home()
	}
	m.move(h)
	return m
}

// home is the height that is shown first.
func (m *Model) home() float64 {
	for _, state := range []measure.State{measure.RideKerb, measure.RideLaden} {
		for _, s := range m.stops {
			if s.State == state {
				return s.HeightMM
			}
		}
	}
	if len(m.stops) > 0 {
		return m.stops[0].HeightMM
	}
	return (m.bump + m.droop) / 2
}

func (m *Model) move(heightMM float64) {
	h := min(max(heightMM, m.bump), m.droop)
	m.height = &h
}

// Mark tells New how to look at it as it is looked at now.
func (m *Model) Mark() string {
	if m.height == nil {
		return string(m.view)
	}
	return string(m.view) + " " + strconv.FormatFloat(*m.height, 'f', 3, 64)
}

// View is what is looked at.
func (m *Model) View() draw.View { return m.view }

// Show looks at something else.
func (m *Model) Show(v draw.View) { m.view = v }

// Moves reports a view in which the axle can be moved.
func (m *Model) Moves() bool {
	return m.height != nil && (m.view == draw.SideView || m.view == draw.TopView || m.view == draw.TravelView)
}

// HeightMM is where the hub stands below the arch; false where the axle does not move.
func (m *Model) HeightMM() (float64, bool) {
	if m.height == nil {
		return 0, false
	}
	return *m.height, true
}

// Share is where the axle stands on its way: 0 with the wheels hanging, 1 on the bump stops.
func (m *Model) Share() float64 {
	if m.height == nil {
		return 0
	}
	return m.share(*m.height)
}

func (m *Model) share(heightMM float64) float64 { return (m.droop - heightMM) / (m.droop - m.bump) }

// Stops are the shares at which the line was read.
func (m *Model) Stops() []float64 {
	var out []float64
	for _, s := range m.stops {
		if share := m.share(s.HeightMM); share >= 0 && share <= 1 {
			out = append(out, share)
		}
	}
	return out
}

// Slide moves the axle to a share of its way, or to the height read that is nearly there.
func (m *Model) Slide(share float64) {
	if m.height == nil || math.IsNaN(share) {
		return
	}
	to, near := m.droop+(m.bump-m.droop)*min(max(share, 0), 1), catch*(m.droop-m.bump)
	for _, s := range m.stops {
		if off := math.Abs(s.HeightMM - m.droop - (m.bump-m.droop)*share); off < near {
			to, near = s.HeightMM, off
		}
	}
	m.move(to)
}

// Step moves the axle to the next whole step of height, or to a height read that comes before it: up
// (toward the bump stops) for true.
func (m *Model) Step(up bool) {
	if m.height == nil {
		return
	}
	const hair = 1e-6
	at := *m.height
	if up {
		to := Step * (math.Ceil(at/Step-hair) - 1)
		for _, s := range m.stops {
			if s.HeightMM < at-hair {
				to = max(to, s.HeightMM)
			}
		}
		m.move(to)
		return
	}
	to := Step * (math.Floor(at/Step+hair) + 1)
	for _, s := range m.stops {
		if s.HeightMM > at+hair {
			to = min(to, s.HeightMM)
		}
	}
	m.move(to)
}

// Page lays what is looked at on a page of a width that is read from so many mm.
func (m *Model) Page(wide, farMM float64) draw.Page {
	if m.view == draw.TravelView {
		return m.Chart(wide, farMM)
	}
	return m.scene.View(m.view, m.height).Lay(draw.Options{Wide: wide, Far: farMM, Bare: m.Moves()})
}

// Charted reports a view that has the travel chart under it.
func (m *Model) Charted() bool { return m.view == draw.SideView || m.view == draw.TopView }

// Chart lays the travel chart, without a line where the axle stands.
func (m *Model) Chart(wide, farMM float64) draw.Page {
	return m.scene.View(draw.TravelView, nil).Lay(draw.Options{Wide: wide, Far: farMM})
}

// Now is the line on a page of Chart where the axle stands.
func (m *Model) Now(p draw.Page) (top, bottom draw.Point, ok bool) {
	if m.height == nil {
		return top, bottom, false
	}
	top, bottom, ok = m.scene.Now(*m.height)
	return p.Put(top), p.Put(bottom), ok
}

// Figures are the numbers that move with the axle.
func (m *Model) Figures() draw.Figures { return m.scene.Figures(m.height) }

// Lines are the figures in lines: where the axle stands, and the numbers there.
func (m *Model) Lines() (where string, numbers []string) {
	f := m.Figures()
	numbers = slices.Clone(f.Joints)
	for _, text := range []string{f.Residual, f.Slip} {
		if text != "" {
			numbers = append(numbers, text)
		}
	}
	return f.Where, numbers
}
