package sheet

import (
	"fmt"
	"slices"
	"strings"

	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure"
)

// asked are the points of the order that stand at its head.
var asked = []string{"order.number", "order.name", "order.phone", "order.mail", "order.vehicle", "order.quantity", "order.needed_by",
	"order.work", "order.measured_by", "order.stood", "order.springs", "order.body", "order.change"}

// job is what the order is and who gives it. What nobody said is named, so that nobody has to ring up to
// learn that it was forgotten.
func (m *maker) job() {
	m.heading("sheet.job")
	if m.build.Note != "" {
		m.add(Block{Kind: Para, Text: words.Plain(m.build.Note)})
	}
	m.factsOr(asked, "sheet.unsaid")
}

// factsOr adds the facts that are known and one line that names the others.
func (m *maker) factsOr(points []string, unsaid string) {
	var pairs []Pair
	var open []string
	for _, p := range points {
		switch {
		case m.known(p):
			pairs = append(pairs, m.pair(p))
		case m.layoutHas(p):
			open = append(open, m.name(p))
		}
	}
	m.facts(pairs)
	if len(open) > 0 {
		m.text(Alarm, unsaid, strings.Join(open, "; "))
	}
}

// restsOn says which readings the sheet is made from.
func (m *maker) restsOn() {
	m.heading("sheet.rests")
	var pairs []Pair
	for _, state := range m.states() {
		pairs = append(pairs, Pair{m.says.State(state), m.stateFacts(state)})
	}
	m.facts(append(pairs, m.tools()...))
	if len(pairs) == 0 {
		m.text(Alarm, "sheet.nothing_read")
	}
}

// states lists the states that readings were taken in.
func (m *maker) states() []measure.State {
	var out []measure.State
	for _, r := range m.current {
		if s := r.State(); !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	slices.SortFunc(out, func(a, b measure.State) int {
		if a.Less(b) {
			return -1
		}
		return 1
	})
	return out
}

// stateFacts counts the readings of a state by their basis, and names setups, heights and days.
func (m *maker) stateFacts(state measure.State) string {
	count := map[measure.Basis]int{}
	var setups, days []string
	for _, r := range m.current {
		if r.State() != state {
			continue
		}
		count[r.Basis]++
		if setup := fmt.Sprint(r.Setup); r.Setup > 0 && !slices.Contains(setups, setup) {
			setups = append(setups, setup)
		}
		if day, _, ok := strings.Cut(r.At, "T"); ok && !slices.Contains(days, day) {
			days = append(days, day)
		}
	}
	slices.Sort(days)
	parts := []string{m.says.Say("sheet.readings", count[measure.Measured], count[measure.Stated], count[measure.Estimated])}
	if state.Ride != measure.Bench && len(setups) > 0 {
		parts = append(parts, m.says.Say("sheet.setups", strings.Join(setups, ", ")))
	}
	if h, ok := m.sight.Height(state); ok && state.Ride != measure.Bench {
		parts = append(parts, m.says.Say("sheet.height", m.says.WithDoubt(h.Value, "mm", (h.High-h.Low)/2)))
	}
	if len(days) > 0 {
		parts = append(parts, strings.Join(days, ", "))
	}
	return strings.Join(parts, "; ")
}

// tools names the instruments that readings were taken with, and how good they are.
func (m *maker) tools() []Pair {
	var out []Pair
	for _, in := range m.build.Instruments {
		for _, r := range m.current {
			if r.Instrument != in.ID {
				continue
			}
			p, _ := measure.PointOf(r.Point)
			t := checks.ToolOf(m.build, r)
			unit := string(p.Quantity.Base())
			name := words.Plain(in.Name)
			if name == "" {
				name = m.says.Instrument(in.Kind)
			}
			out = append(out, Pair{name, m.says.Say("sheet.tool", m.says.Number(t.Resolution, unit, 0), m.says.Number(t.Accuracy, unit, 0))})
			break
		}
	}
	return out
}
