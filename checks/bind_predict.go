package checks

import (
	"math"
	"slices"

	"yokebook/measure"
)

// predictLines lays the line of states that nobody read but whose height is known, from a line that
// was read and the path of the axle. A state of which a part was read waits for the rest instead.
func (e *engine) predictLines() {
	if e.build.Layout.Axle == "fixed" {
		return
	}
	for _, s := range []measure.State{measure.Hanging, measure.RideKerb, measure.RideLaden, measure.OnBump} {
		if slices.ContainsFunc(e.lines, func(ln *line) bool { return ln.state.Base() == s }) {
			continue
		}
		h := e.heightOf(s)
		if h == nil {
			continue
		}
		if m := e.lineModelOver(h.best); m != nil {
			e.lines = append(e.lines, e.predicted(s, m, h))
		}
	}
	slices.SortStableFunc(e.lines, func(a, b *line) int {
		switch {
		case a.state.Less(b.state):
			return -1
		case b.state.Less(a.state):
			return 1
		}
		return 0
	})
}

// predicted is the line of a state at a height as a model gives it.
func (e *engine) predicted(state measure.State, m *model, height *quantity) *line {
	from := e.bestRead()
	ln := e.blankLine(state)
	ln.predicted = true
	ln.notes = append(ln.notes, m.notes...)
	if from != nil {
		ln.notes = append(ln.notes, Message{MsgComputedFrom, []any{from.line.state.String()}})
		ln.phases = from.line.phases
	}
	k, n := len(m.args), len(ln.parts)
	uses := make([][]int, 2*n)
	for i, list := range m.parts {
		if ln.parts[i].name == "shaft" || ln.parts[i].name == "pinion" {
			list = append(slices.Clone(list), k)
		}
		uses[2*i], uses[2*i+1] = list, list
	}
	out := e.combineOwn("predicted "+m.name, uses, func() formula {
		m, to := m.open(), &stand{}
		return func(x, out []float64) {
			if !m.set(x[:k]) || !m.at(x[k], to) {
				fill(out, math.NaN())
				return
			}
			for i, a := range to.axes {
				out[2*i], out[2*i+1] = a.SlopePlan()
			}
		}
	}, append(slices.Clone(m.args), height)...)
	for i := range ln.parts {
		ln.parts[i].slope, ln.parts[i].plan = out[2*i], out[2*i+1]
	}
	return ln
}

// blankLine is a line of the layout without readings.
func (e *engine) blankLine(state measure.State) *line {
	layout := e.build.Layout
	names := partNames(layout)
	ln := &line{state: state, double: make([]bool, len(names)-1)}
	ln.double[0] = layout.FrontJoint == "double"
	ln.double[len(ln.double)-1] = layout.RearJoint == "double"
	if layout.PinionInFront() {
		ln.gearAt = len(names) - 1
	}
	for _, name := range names {
		ln.parts = append(ln.parts, part{name: name})
	}
	return ln
}

// woundLine is a complete line with its pinion turned by the wind-up of a case.
func (e *engine) woundLine(ln *line, of measure.Case) *line {
	wound := *ln
	wound.state.Case, wound.values = of, nil
	wound.parts = slices.Clone(ln.parts)
	for i, p := range wound.parts {
		if p.name == "pinion" {
			wound.parts[i].slope = e.woundUp(p.slope, wound.state)
		}
	}
	if w := e.windUp(of); w != nil {
		wound.notes = append(slices.Clone(ln.notes), w.note...)
	}
	return &wound
}
