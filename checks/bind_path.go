package checks

import (
	"math"
	"slices"

	"yokebook/checks/joint"
	"yokebook/measure"
)

// model is the shaft line over the axle's travel, made in one of the ways of knowing the path. One
// draw is set, then asked at any heights; whoever works beside others sets its own.
type model struct {
	way     string
	name    string // what args do not say of it
	args    []*quantity
	parts   [][]int // for each part of the line, the args that its axis rests on; nil: it knows no axes
	lengths bool    // its slide is the shaft's length
	// Heights between which it speaks, mm at the best values: on the bump side, on the droop side.
	bump, droop float64
	open        func() opened // with no draw set
	opened
	notes []Message
	read  bool // drawn through readings: nothing in it is computed from sizes
}

// opened is a model with room for one draw.
type opened struct {
	set  func(x []float64) bool
	at   func(heightMM float64, s *stand) bool
	wind func(deg float64) // turns the housing by what torque does; nil where that can't be said
}

// setBest sets the best values.
func (m *model) setBest() bool {
	x := make([]float64, len(m.args))
	for i, q := range m.args {
		x[i] = q.best
	}
	return m.set(x)
}

// stand is the line at one height.
type stand struct {
	axes   []joint.Axis
	length float64 // mm between the shaft's joint centres
	slide  float64 // mm drawn out: the length itself, or along the output axis
}

// covers reports heights within reach of what the model was made from.
func (m *model) covers(heights ...float64) bool {
	same := given("state.height")
	for _, h := range heights {
		if h < m.bump-same || h > m.droop+same {
			return false
		}
	}
	return true
}

// readLine is a state of which line and height were read.
type readLine struct {
	line   *line
	height *quantity
}

// linesRead lists them from bump to droop, states at the same height once.
func (e *engine) linesRead() []readLine {
	var list []readLine
	for _, ln := range e.lines {
		if ln.predicted || ln.state.Case != "" || !ln.complete() {
			continue
		}
		if h := e.heightOf(ln.state); h != nil {
			list = append(list, readLine{ln, h})
		}
	}
	return apart(list, func(r readLine) *quantity { return r.height })
}

// apart sorts by height and leaves out what stands at the same height as one before it.
func apart[T any](list []T, height func(T) *quantity) []T {
	slices.SortStableFunc(list, func(a, b T) int {
		switch d := height(a).best - height(b).best; {
		case d < 0:
			return -1
		case d > 0:
			return 1
		}
		return 0
	})
	var out []T
	for _, r := range list {
		if len(out) == 0 || height(r).best-height(out[len(out)-1]).best > given("state.height") {
			out = append(out, r)
		}
	}
	return out
}

// lineModelOver is the best model that gives the axes at these heights; nil when there is none. Three
// states or more that were read around them outrank sizes, sizes outrank two, and those a guess.
func (e *engine) lineModelOver(heightsMM ...float64) *model {
	drawn := e.drawnLine()
	if drawn != nil && len(e.linesRead()) > 2 && drawn.covers(heightsMM...) {
		return drawn
	}
	m := e.motionOf()
	anchor := e.anchor()
	if m.sized() && anchor != nil {
		return e.swing(m, *anchor)
	}
	if drawn != nil && drawn.covers(heightsMM...) {
		return drawn
	}
	if anchor != nil {
		return e.swing(m, *anchor)
	}
	return nil
}

// slideModel is the best model of the sliding part between two heights.
func (e *engine) slideModel(bumpMM, droopMM float64) *model {
	drawn, n := e.drawnSlide()
	if drawn != nil && n > 2 && drawn.covers(bumpMM, droopMM) {
		return drawn
	}
	anchor := e.anchor()
	if m := e.motionOf(); anchor != nil && e.take("shaft.length", anchor.line.state) != nil {
		s := e.swing(m, *anchor)
		if m.sized() || drawn == nil || !drawn.covers(bumpMM, droopMM) {
			return s
		}
	}
	return drawn
}

// swings reports a line whose moving shaft is the one called shaft. Of two shafts to a pinion in front it
// is the other one, whose length is read once for all: there only readings of each height tell.
func (e *engine) swings() bool { return e.build.Layout.Shafts == 1 || !e.build.Layout.PinionInFront() }

// anchor is the state that sizes swing the line from; nil where no line swings.
func (e *engine) anchor() *readLine {
	if !e.swings() {
		return nil
	}
	return e.bestRead()
}

// bestRead is a whole line that was read with its height, best one with the shaft's length, best
// standing; nil when there is none.
func (e *engine) bestRead() *readLine {
	var found *readLine
	order := []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump}
	best := math.MaxInt
	for _, r := range e.linesRead() {
		rank := slices.Index(order, r.line.state)
		if rank < 0 {
			rank = len(order)
		}
		if e.here("shaft.length", r.line.state) == nil {
			rank += 10
		}
		if rank < best {
			best = rank
			found = &readLine{r.line, r.height}
		}
	}
	return found
}
