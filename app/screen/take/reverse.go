package take

import (
	"encoding/json"
	"slices"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/route"
)

// Reversal is the guided way to the zero of a finder: it is laid on a place and read, turned end for
// end in the same place and read again. Both readings are of one point, state and setup.
type Reversal struct {
	Tool  string
	Stop  route.Stop
	First measure.Reading // zero until it is kept
	laid  Laid            // how the finder lay for the first
	begun bool
	typed Typed // half typed when Back led out of it

	// where work stood before it was begun
	from  route.Stop
	left  Typed
	pages []Page // Reverse the last
}

// Second reports that the first reading is kept and the second one is due.
func (r *Reversal) Second() bool { return r != nil && r.First.ID != "" }

// Reversing is the reversal that the readings belong to now; nil where there is none.
func (m *Model) Reversing() *Reversal {
	if m.reversal == nil || !m.reversal.begun {
		return nil
	}
	return m.reversal
}

// OpenReversal shows what finding the zero of a tool takes, at the stop at hand where that is read
// with a finder as the vehicle stands, else at the frame mark.
func (m *Model) OpenReversal(tool string) {
	m.reversal = &Reversal{Tool: tool, Stop: m.placeToReverse()}
	m.open(Reverse)
}

func (m *Model) placeToReverse() route.Stop {
	if takesFinder(m.stop.Point) && m.stop.State == m.stand.State {
		s, _ := m.find(m.stop.Point.Key, m.stop.State)
		return s
	}
	const mark = "datum.slope"
	for _, s := range m.log.Stops() {
		if s.Point.Key == mark && (s.State == m.stand.State || m.stand.State.Ride == measure.Bench) {
			return s
		}
	}
	s, _ := m.find(mark, m.stand.State)
	return s
}

// Planned is the reversal that the page Reverse speaks of.
func (m *Model) Planned() Reversal {
	if m.reversal == nil {
		return Reversal{}
	}
	return *m.reversal
}

// plainFinder describes a finder of which nothing is known: its numbers are those of its kind.
var plainFinder = measure.Instrument{ID: "finder", Kind: "angle", Unit: "deg"}

// BeginReversal answers the page Reverse and goes to the stop. A build that knows no finder gets a
// plain one.
func (m *Model) BeginReversal() {
	if m.page != Reverse {
		return
	}
	r := m.reversal
	if r.Tool == "" {
		if err := m.addFinder(); err != nil {
			m.err = err
			return
		}
		r.Tool = plainFinder.ID
	}
	m.tools[measure.Angle] = r.Tool
	r.begun, r.from, r.left, r.pages = true, m.stop, m.typed, append(slices.Clone(m.under), m.page)
	half := r.typed
	m.Go(r.Stop)
	m.typed = half
}

// backFromReversal goes back to the page that says what it takes.
func (m *Model) backFromReversal() {
	r := m.reversal
	r.begun, r.typed = false, m.typed
	m.stop, m.typed = r.from, r.left
	m.under, m.page = r.pages[:len(r.pages)-1], r.pages[len(r.pages)-1]
}

// addFinder gives the build a plain finder, once.
func (m *Model) addFinder() error {
	if _, there := measure.InstrumentOf(m.log.Build().Instruments, plainFinder.ID); there {
		return nil
	}
	value, err := json.Marshal(map[string]string{"id": plainFinder.ID, "kind": plainFinder.Kind, "unit": string(plainFinder.Unit)})
	if err != nil {
		return err
	}
	_, err = m.log.Set("instruments."+plainFinder.ID, value)
	return err
}

// lying is how the finder lies for the reading at hand: as it was said, and in a reversal as the
// person is told to lay it.
func (m *Model) lying() (Laid, bool) {
	if old, ok := m.Correcting(); ok {
		return laidOf(old), true
	}
	r := m.Reversing()
	said, known := m.Laid()
	switch {
	case r.Second():
		return r.laid.Turned(), true
	case r != nil && !known:
		return AlongFore, true
	}
	return said, known
}

// Lying is how the finder has to lie for the reading of a reversal.
func (m *Model) Lying() Laid {
	l, _ := m.lying()
	return l
}

// afterKeep notes what was kept and says which page follows.
func (m *Model) afterKeep() Page {
	l, _ := m.lying()
	if m.TakesFinder() {
		m.laid[m.Tool()] = laying{l, m.stand.Setup}
	}
	r := m.Reversing()
	switch {
	case r == nil:
		return Result
	case r.Second():
		m.reversal = nil
		return Zero
	}
	r.First, r.laid = m.kept.Reading, l
	return Turn
}

// Turned answers the page Turn: the finder lies the other way round in the same place.
func (m *Model) Turned() {
	if m.page == Turn {
		m.stop, _ = m.findTagged(m.stop.Point.Key, m.stop.State, m.stop.Tag) // the first reading is counted
		m.show(Keypad)
	}
}

// EndReversal leaves the reversal. What was kept stays.
func (m *Model) EndReversal() {
	m.reversal, m.typed = nil, Typed{}
	if m.page == Turn {
		m.show(Result)
		return
	}
	m.show(m.pageOf(m.stop))
}

// leaveReversal ends the reversal when one goes to another stop, or when the vehicle was moved after
// the first reading: the two would not compare.
func (m *Model) leaveReversal() {
	r := m.Reversing()
	if r == nil {
		return
	}
	here := r.Stop.Point.Key == m.stop.Point.Key && r.Stop.State == m.stop.State
	if !here || r.Second() && r.First.Setup != m.stand.Setup {
		m.reversal = nil
	}
}

// ZeroFound says the zero of the newest reading's finder in its setup; false where none was found.
func (m *Model) ZeroFound() (checks.Message, bool) {
	if m.kept == nil {
		return checks.Message{}, false
	}
	r := m.kept.Reading
	for _, f := range m.log.Findings() {
		if f.Check != "reading.zero" || f.Subject != r.Instrument {
			continue
		}
		for _, n := range f.Notes {
			if n.Key == checks.MsgZeroFound && len(n.Args) > 1 && n.Args[1] == r.Setup {
				return n, true
			}
		}
	}
	return checks.Message{}, false
}
