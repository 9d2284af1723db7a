package take

import (
	"slices"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/route"
)

// correction is a reading that is being corrected, and where work stood before.
type correction struct {
	old     measure.Reading
	stop    route.Stop
	typed   Typed
	written string
	pages   []Page // that lay over each other, OneRecord the last
}

// Correcting is the reading that the next value stands in place of; false where there is none.
func (m *Model) Correcting() (measure.Reading, bool) {
	if m.mending == nil {
		return measure.Reading{}, false
	}
	return m.mending.old, true
}

// Correct asks for the right value of the opened reading. All else of it stays: how the vehicle
// stood, with what it was read.
func (m *Model) Correct() {
	r, ok := m.OpenedRecord()
	if !ok || r.Standing != measure.Current {
		return
	}
	stop, ok := m.findTagged(r.Reading.Point, r.Reading.State(), r.Reading.Tag)
	if !ok {
		return
	}
	m.reversal = nil
	m.mending = &correction{old: r.Reading, stop: m.stop, typed: m.typed, written: m.written, pages: append(slices.Clone(m.under), m.page)}
	m.stop = stop
	m.retypeRight(m.notes[m.rightNote()])
	m.show(m.pageOf(stop))
}

// rightNote is under what the half-typed value of a correction is noted.
func (m *Model) rightNote() string { return "right:" + m.record }

// right is the half-typed value of a correction.
func (m *Model) right() string {
	if m.stop.Point.Quantity == measure.Text {
		return m.written
	}
	return m.typed.text
}

func (m *Model) retypeRight(text string) {
	m.typed, m.written = Typed{}, ""
	if m.stop.Point.Quantity == measure.Text {
		m.written = text
		return
	}
	m.typed = TypedOf(text)
}

// backFromCorrection goes back to the page of the reading.
func (m *Model) backFromCorrection() {
	m.notes[m.rightNote()] = m.right()
	pages := m.mending.pages
	m.leaveCorrection()
	m.under, m.page = pages[:len(pages)-1], pages[len(pages)-1]
}

// EndCorrection goes back to where work stood; the reading stays as it is.
func (m *Model) EndCorrection() {
	if m.mending == nil {
		return
	}
	m.leaveCorrection()
	m.Go(m.stop)
}

// leaveCorrection brings back the stop and what was typed there.
func (m *Model) leaveCorrection() {
	if m.mending == nil {
		return
	}
	m.stop, m.typed, m.written = m.mending.stop, m.mending.typed, m.mending.written
	m.mending = nil
	if s, ok := m.findTagged(m.stop.Point.Key, m.stop.State, m.stop.Tag); ok {
		m.stop = s
	}
}

// corrected makes the entry that corrects a reading.
func corrected(old measure.Reading, v measure.Value) logbook.Entry {
	e := logbook.EntryOf(old)
	e.Value, e.Entered, e.Replaces = v, "", old.ID
	return e
}

// afterCorrection goes back to where work stood; the way on from the page Result leads there, unless
// that stop is done.
func (m *Model) afterCorrection() {
	delete(m.notes, m.rightNote())
	m.leaveCorrection()
	if !m.stop.Done() {
		m.kept.Change.Next, m.kept.Change.More = m.stop, true
	}
}

// OpenReasons asks why the opened reading is struck.
func (m *Model) OpenReasons() { m.open(Reasons) }

// OpenReason asks for the reason in writing.
func (m *Model) OpenReason() { m.open(Reason) }

// StrikeOpened takes the opened reading out of use, with the reason.
func (m *Model) StrikeOpened(reason string) {
	if m.page != Reasons && m.page != Reason {
		return
	}
	if reason == "" {
		m.err = ErrNothingTyped
		return
	}
	r, ok := m.OpenedRecord()
	if !ok {
		return
	}
	content := ""
	if r.Standing == measure.Disputed { // of two records with one id
		content = r.hash
	}
	change, err := m.log.StrikeRecord(r.Reading.ID, content, reason)
	if err != nil {
		m.err = err
		return
	}
	delete(m.notes, m.reasonNote())
	m.kept = &Kept{Reading: r.Reading, Change: change, Struck: true}
	m.show(Result)
}

// KeepOpened keeps the opened reading, which was struck, once more as a new one: a strike is final.
func (m *Model) KeepOpened() {
	r, ok := m.OpenedRecord()
	if !ok || r.Standing != measure.Struck {
		return
	}
	m.keepOnceMore(r.Reading)
}

// Last is the reading that UndoLast takes back; false where there is none.
func (m *Model) Last() (measure.Reading, bool) { return m.log.Last() }

// UndoLast takes the last entry back, with the reason. It stays in the build, struck.
func (m *Model) UndoLast(reason string) {
	last, ok := m.log.Last()
	if !ok {
		return
	}
	change, err := m.log.Undo(last.ID, reason)
	if err != nil {
		m.refuse(err)
		return
	}
	m.kept = &Kept{Reading: last, Change: change, Struck: true}
	m.reversal = nil
	m.show(Result)
}
