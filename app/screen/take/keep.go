package take

import (
	"errors"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// ErrNothingTyped is the error of Keep while the display is empty.
var ErrNothingTyped = errors.New("nothing was typed yet; read the tool and type what it shows")

// Keep takes what was typed: it asks for the side where there is one, asks back where something
// looks wrong, and else keeps the reading. On the page Height it sets the height.
func (m *Model) Keep() {
	switch m.page {
	case Height:
		m.stand.Height, m.height = m.heightTyped(), Typed{}
		m.Back()
		return
	case Keypad:
	default:
		return
	}
	v, _, err := m.value(false)
	if err != nil {
		m.err = err
		return
	}
	if _, said := m.lying(); m.TakesFinder() && !said {
		m.keeping = true
		m.open(Laying)
		return
	}
	if m.stop.Point.Sense != measure.Unsigned && !m.typed.zero() {
		if m.sided == nil {
			m.open(Sides)
			return
		}
		v, _, _ = m.value(!*m.sided)
	}
	m.submit(v)
}

// KeepSide is Keep with the side said in the same breath: positive is the side that the point's
// sense names.
func (m *Model) KeepSide(positive bool) {
	m.sided = &positive
	m.Keep()
	if !m.keeping {
		m.sided = nil
	}
}

// TakesSide reports that the number at hand may be kept with its side by KeepSide.
func (m *Model) TakesSide() bool { return m.page == Keypad && m.stop.Point.Sense != measure.Unsigned }

// Side answers the page Sides: positive is the side that the point's sense names.
func (m *Model) Side(positive bool) {
	if v, _, err := m.value(!positive); err == nil && m.page == Sides {
		m.submit(v)
	}
}

// Answer answers the page Codes.
func (m *Model) Answer(code int) {
	if v, err := measure.FloatValue(float64(code)); err == nil && m.page == Codes {
		m.submit(v)
	}
}

// Wrote answers the page Write with a text.
func (m *Model) Wrote(text string) {
	if m.page != Write {
		return
	}
	if text == "" {
		m.err = ErrNothingTyped
		return
	}
	m.submit(measure.TextValue(text))
}

// submit makes the entry of a value and keeps it, or asks back.
func (m *Model) submit(v measure.Value) { m.ask(m.entryOf(v)) }

// entryOf is the entry of a value at the stop. What was built is read by the one who built it.
func (m *Model) entryOf(v measure.Value) logbook.Entry {
	if old, ok := m.Correcting(); ok {
		e := corrected(old, v)
		e.Entered = m.entered()
		return e
	}
	p := m.stop.Point
	e := logbook.Entry{Point: p.Key, Value: v, Unit: m.unitOf(p.Quantity), State: m.stop.State, Tag: m.stop.Tag,
		Setup: m.stand.Setup, Instrument: m.Tool()}
	e.Entered = m.entered()
	if m.stop.State.Ride != measure.Bench {
		e.Height = m.stand.Height
	}
	if m.TakesFinder() {
		l, _ := m.lying()
		e.Way, e.Lay = l.Way(), l.Lay()
	}
	if p.Group == measure.GroupBuilt {
		e.By = "builder"
	}
	return e
}

// ask asks back about an entry where something looks wrong, and else keeps it.
func (m *Model) ask(e logbook.Entry) {
	m.entry = e
	if m.doubts = m.log.Doubts(e); len(m.doubts) > 0 {
		m.open(Doubts)
		return
	}
	m.keep()
}

// Doubts are what the page Doubts asks back about, the first one first.
func (m *Model) Doubts() []logbook.Doubt { return m.doubts }

// KeepAllTheSame answers the first doubt: the vehicle really is like that. The last one stays, to be
// asked again where the value is refused.
func (m *Model) KeepAllTheSame() {
	switch {
	case m.page != Doubts:
	case len(m.doubts) > 1:
		m.doubts = m.doubts[1:]
	default:
		m.keep()
	}
}

// LookAgain answers a doubt by going back to the stop. What was typed stays.
func (m *Model) LookAgain() { m.show(m.pageOf(m.stop)) }

// keep writes the entry that waits. When the logbook refuses it the page Refused says why, and what
// was typed stays.
func (m *Model) keep() {
	change, err := m.log.Keep(m.entry)
	if err != nil {
		m.refuse(err)
		return
	}
	m.kept = &Kept{Reading: m.reading(change.Reading), Change: change}
	if m.mending != nil {
		m.afterCorrection()
		m.show(Result)
		return
	}
	if m.entry.Point == "hub.height" {
		m.noteHeight()
	}
	m.typed, m.written = Typed{}, ""
	m.show(m.afterKeep())
}

func (m *Model) refuse(err error) {
	m.open(Refused)
	m.err = err
}

// noteHeight takes a hub height that was just read as the height of what follows.
func (m *Model) noteHeight() {
	if mm, ok := m.kept.Reading.Number(); ok && m.stop.State == m.stand.State {
		if v, err := measure.FloatValue(mm); err == nil {
			m.stand.Height = v
		}
	}
}

// reading finds a reading of the build.
func (m *Model) reading(id measure.ID) measure.Reading {
	for _, r := range m.log.Build().Readings {
		if r.ID == id {
			return r
		}
	}
	return measure.Reading{}
}

// StrikeLast takes the reading of the page Result out of use, with the reason. It stays in the build,
// struck; what it had corrected counts again.
func (m *Model) StrikeLast(reason string) {
	if m.kept == nil || m.kept.Struck {
		return
	}
	change, err := m.log.Undo(m.kept.Reading.ID, reason)
	if err != nil {
		m.err = err
		return
	}
	m.err = nil
	m.kept.Change, m.kept.Struck = change, true
}

// Unstrike uses the struck reading of the page Result again: it is kept once more, because a strike is
// final.
func (m *Model) Unstrike() {
	if m.kept == nil || !m.kept.Struck {
		return
	}
	m.keepOnceMore(m.kept.Reading)
}

// keepOnceMore keeps a struck reading again as a new one and shows what that changed.
func (m *Model) keepOnceMore(r measure.Reading) {
	change, err := m.log.Keep(logbook.EntryOf(r))
	if err != nil {
		m.refuse(err)
		return
	}
	m.kept = &Kept{Reading: m.reading(change.Reading), Change: change}
	m.show(Result)
}

// Again takes another reading at the stop of the newest one. Repeats are welcome: they are counted.
func (m *Model) Again() {
	if m.kept == nil {
		return
	}
	if s, ok := m.findTagged(m.kept.Reading.Point, m.kept.Reading.State(), m.kept.Reading.Tag); ok {
		m.Go(s)
	}
}

// LeftOut is why the stop at hand is left out; false where it is not, or where it was read since.
func (m *Model) LeftOut() (measure.Skip, bool) {
	s, ok := m.findTagged(m.stop.Point.Key, m.stop.State, m.stop.Tag)
	if !ok || s.Skipped == nil {
		return measure.Skip{}, false
	}
	return *s.Skipped, true
}

// AskAgain takes back that the stop at hand is left out, and shows it.
func (m *Model) AskAgain() {
	if _, err := m.log.Unskip(m.stop.Point.Key, m.stop.State, m.stop.Tag); err != nil {
		m.refuse(err)
		return
	}
	if s, ok := m.findTagged(m.stop.Point.Key, m.stop.State, m.stop.Tag); ok {
		m.Go(s)
	}
}

// OpenSkipNote asks in writing why the stop is left out.
func (m *Model) OpenSkipNote() { m.open(SkipNote) }

// Skip leaves the stop out, with the reason, and goes on.
func (m *Model) Skip(reason string) {
	if reason == "" {
		m.err = ErrNothingTyped
		return
	}
	change, err := m.log.Skip(m.stop.Point.Key, m.stop.State, m.stop.Tag, reason)
	if err != nil {
		m.refuse(err)
		return
	}
	delete(m.notes, m.skipNote())
	m.typed, m.kept = Typed{}, nil
	m.goOn(change)
}
