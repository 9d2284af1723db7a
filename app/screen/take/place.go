package take

import (
	"maps"
	"slices"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/route"
)

// Where is where work stands, so that Resume can go on there after the program was killed. On a page
// that follows a kept reading it is no stop: New finds the next one.
func (m *Model) Where() logbook.Place {
	p := logbook.Place{Build: m.Build().ID, Open: true, Stands: m.stand.State.String(), Setup: m.stand.Setup, Height: m.stand.Height.Token(),
		Units: map[string]string{}, Tools: map[string]string{}, Laid: map[string]logbook.Laying{}}
	stop, typed, written := m.stop, m.typed, m.written
	if m.mending != nil {
		stop, typed, written = m.mending.stop, m.mending.typed, m.mending.written
		p.Corrects, p.Right = m.mending.old.ID, m.right()
	}
	reversing := m.Reversing()
	if reversing != nil {
		p.Reverses, p.First = reversing.Tool, reversing.First.ID
	}
	if reversing != nil || m.atStop() {
		p.Point, p.State, p.Tag, p.Typed = stop.Point.Key, stop.State.String(), stop.Tag, typed.text
		if stop.Point.Quantity == measure.Text {
			p.Typed = written
		}
	}
	if next, ok := m.nextOfGroup(); ok && p.Point == "" {
		p.Point, p.State, p.Tag = next.Point.Key, next.State.String(), next.Tag
	}
	p.HeightAsked, p.HeightTyped = m.page == Height || slices.Contains(m.under, Height), m.height.text
	p.Pages = m.pagesOver()
	for q, u := range m.units {
		p.Units[string(q)] = string(u)
	}
	for q, id := range m.tools {
		p.Tools[string(q)] = id
	}
	for id, l := range m.laid {
		p.Laid[id] = logbook.Laying{How: string(l.laid), Setup: l.setup}
	}
	for _, g := range m.chosen {
		p.Groups = append(p.Groups, string(g))
	}
	p.ByUse = m.useful.on
	p.Warned = slices.Sorted(maps.Keys(m.warned))
	return p
}

// nextOfGroup is the stop that comes after a kept reading of a group: New would go back to the line.
func (m *Model) nextOfGroup() (route.Stop, bool) {
	if _, walking := m.Walking(); !walking || m.kept == nil {
		return route.Stop{}, false
	}
	return m.Wanted(m.kept.Change)
}

// atStop reports that the page, or the one that it lies over, is part of the work at the stop.
func (m *Model) atStop() bool {
	lowest := m.page
	if len(m.under) > 0 {
		lowest = m.under[0]
	}
	switch lowest {
	case Result, Done, Run, Turn, Zero:
		return false
	}
	return true
}

// Resume returns the model of an open build at a place of it. What the build does not bear out any
// more is left aside.
func Resume(log Log, p logbook.Place) *Model {
	m := New(log)
	m.takeUp(p)
	stop, err := measure.ParseState(p.State)
	if err != nil || p.Point == "" {
		if m.page == Run { // the caution was seen before, or there is a group to go on with
			m.leaveGroup()
		}
		m.reopen(p)
		return m
	}
	if s, ok := m.findTagged(p.Point, stop, p.Tag); ok {
		m.Go(s)
		m.retype(p)
		m.reverseOn(p)
	}
	return m
}

// takeUp takes tools, units and how the vehicle stands from a place.
func (m *Model) takeUp(p logbook.Place) {
	m.useful.on = p.ByUse
	for _, key := range p.Warned {
		m.warned[key] = true
	}
	for _, g := range route.Groups(m.Build()) {
		if slices.Contains(p.Groups, string(g)) {
			m.chosen = append(m.chosen, g)
		}
	}
	for _, u := range measure.Units {
		if p.Units[string(u.Quantity)] == string(u.Unit) {
			m.units[u.Quantity] = u.Unit
		}
	}
	for q, id := range p.Tools {
		if in, ok := measure.InstrumentOf(m.Build().Instruments, id); id == "" || ok && string(in.Quantity()) == q {
			m.tools[measure.Quantity(q)] = id
		}
	}
	if stands, err := measure.ParseState(p.Stands); err == nil && stands != (measure.State{}) && p.Setup >= m.stand.Setup {
		m.stand = Stand{State: stands, Setup: p.Setup}
		if v, err := measure.NumberValue(p.Height); err == nil && p.Height != "" {
			m.stand.Height = v
		}
	}
	for id, l := range p.Laid {
		if slices.Contains(Layings, Laid(l.How)) {
			m.laid[id] = laying{Laid(l.How), l.Setup}
		}
	}
}

// retype takes what was half typed from a place.
func (m *Model) retype(p logbook.Place) {
	m.written = p.Typed
	m.typed = TypedOf(p.Typed)
	m.height = TypedOf(p.HeightTyped)
	m.reopen(p)
	for _, r := range m.Records() {
		if p.Corrects != "" && r.Reading.ID == p.Corrects && m.mending == nil && r.Standing == measure.Current {
			m.OpenRecord(r)
			m.correctOn(p)
		}
	}
}

// correctOn goes on with a correction of a place.
func (m *Model) correctOn(p logbook.Place) {
	if m.Correct(); m.mending != nil {
		m.retypeRight(p.Right)
	}
}

// reverseOn goes on with the reversal of a place, with the first reading where that is kept and the
// vehicle was not moved since.
func (m *Model) reverseOn(p logbook.Place) {
	if p.Reverses == "" || m.Tool() != p.Reverses || !m.TakesFinder() {
		return
	}
	r := &Reversal{Tool: p.Reverses, Stop: m.stop, begun: true, from: m.stop, pages: []Page{m.page, Reverse}}
	if p.First != "" {
		r.First = m.reading(p.First)
		l, said := m.Laid()
		if r.First.Setup != m.stand.Setup || r.First.Point != m.stop.Point.Key || !said || l.Way() != r.First.Way {
			return
		}
		r.laid = l
		next, more := m.log.Next()
		m.kept = &Kept{Reading: r.First, Change: logbook.Change{Reading: r.First.ID, Next: next, More: more}}
	}
	m.reversal = r
	if r.Second() && m.page == Keypad && m.typed.Empty() {
		m.show(Turn)
	}
}

// Written is the half-written text of the page Write.
func (m *Model) Written() string { return m.written }

// Writing notes the half-written text of the page Write.
func (m *Model) Writing(text string) { m.written = text }
