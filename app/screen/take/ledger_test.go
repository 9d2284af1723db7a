package take

import (
	"errors"
	"testing"

	"yokebook/measure"
)

// read goes to a point of the bench and keeps a number there.
func read(t *testing.T, m *Model, point, number string) measure.Reading {
	t.Helper()
	at(t, m, point, measure.OffBench)
	press(m, number)
	keep(m)
	wantPage(t, m, Result)
	return m.Kept().Reading
}

// openRecord opens the reading that the list shows at a place, the newest being 0.
func openRecord(t *testing.T, m *Model, i int) Record {
	t.Helper()
	m.OpenRecords()
	r := m.Records()[i]
	m.OpenRecord(r)
	wantPage(t, m, OneRecord)
	return r
}

func TestRecordsAreNewestFirstAndAllOfThem(t *testing.T) {
	m, _ := open(t)
	read(t, m, "engine.rpm_max", "5200")
	m.StrikeLast("misread")
	read(t, m, "gear.highest", "0.83")
	got := m.Records()
	if len(got) != 2 || got[0].Reading.Point != "gear.highest" || got[1].Standing != measure.Struck || got[1].Reason != "misread" {
		t.Errorf("records %+v", got)
	}
}

func TestACorrectionStandsInPlaceAndKeepsTheRest(t *testing.T) {
	m, book := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	press(m, "42")
	m.Keep()
	m.Lay(AlongAft)
	m.Side(true)
	m.KeepAllTheSame()
	wrong := m.Kept().Reading
	m.Next()
	m.Moved()
	m.Heeded()
	press(m, "1") // half a value at another stop
	here := m.Stop()
	openRecord(t, m, 0)
	m.Correct()
	wantPage(t, m, Keypad)
	if old, ok := m.Correcting(); !ok || old.ID != wrong.ID || !m.Typed().Empty() {
		t.Fatalf("corrects %v, typed %q", old.ID, m.Typed().Text(false))
	}
	press(m, "2.4")
	m.Keep()
	wantPage(t, m, Sides)
	m.Side(true)
	wantPage(t, m, Result)
	r := m.Kept().Reading
	if r.Replaces != wrong.ID || r.Value.Token() != "2.4" || r.Setup != wrong.Setup || r.Way != 2 || r.State() != wrong.State() {
		t.Errorf("kept %+v", r)
	}
	if got := m.Records()[1]; got.Standing != measure.Replaced {
		t.Errorf("the wrong one stands %v", got.Standing)
	}
	if by, ok := m.ReplacedBy(wrong.ID); !ok || by.ID != r.ID {
		t.Errorf("replaced by %v", by.ID)
	}
	m.Next()
	if got := m.Stop(); got.Point.Key != here.Point.Key || m.Typed().Text(false) != "1" {
		t.Errorf("back at %s with %q typed", got.Point.Key, m.Typed().Text(false))
	}
	if n := len(book.Build().Readings); n != 2 {
		t.Errorf("%d readings", n)
	}
}

func TestACorrectionThatIsLeftChangesNothing(t *testing.T) {
	for _, leave := range []func(*Model){(*Model).EndCorrection, (*Model).Later} {
		m, book := open(t)
		read(t, m, "engine.rpm_max", "5200")
		m.Next()
		press(m, "0.8")
		openRecord(t, m, 0)
		m.Correct()
		press(m, "99")
		leave(m)
		if _, on := m.Correcting(); on || len(book.Build().Readings) != 1 {
			t.Error("the correction goes on")
		}
		if got := m.Typed().Text(false); got == "99" {
			t.Error("what was typed for the correction stays typed for another stop")
		}
	}
}

// A correction that is taken back brings the earlier value back.
func TestACorrectionIsUndone(t *testing.T) {
	m, book := open(t)
	read(t, m, "engine.rpm_max", "5200")
	openRecord(t, m, 0)
	m.Correct()
	press(m, "5300")
	m.Keep()
	m.StrikeLast("taken back")
	count := 0
	for _, r := range m.Records() {
		if r.Standing == measure.Current {
			count++
			if r.Reading.Value.Token() != "5200" {
				t.Errorf("%s counts", r.Reading.Value.Token())
			}
		}
	}
	if count != 1 || len(book.Build().Readings) != 3 {
		t.Errorf("%d count of %d", count, len(book.Build().Readings))
	}
}

func TestUndoTakesTheLastEntryBack(t *testing.T) {
	m, _ := open(t)
	if _, ok := m.Last(); ok {
		t.Fatal("something to undo in a new build")
	}
	read(t, m, "engine.rpm_max", "5200")
	m.Next()
	m.OpenMore()
	m.UndoLast("taken back")
	wantPage(t, m, Result)
	if k := m.Kept(); !k.Struck || k.Reading.Point != "engine.rpm_max" {
		t.Errorf("took back %+v", k)
	}
	if _, ok := m.Last(); ok {
		t.Error("what was taken back is taken back again")
	}
}

func TestAStrikeHasItsReason(t *testing.T) {
	m, book := open(t)
	read(t, m, "engine.rpm_max", "5200")
	read(t, m, "gear.highest", "0.83")
	openRecord(t, m, 1)
	m.OpenReasons()
	m.OpenReason()
	m.StrikeOpened("")
	wantPage(t, m, Reason)
	if !errors.Is(m.Error(), ErrNothingTyped) {
		t.Errorf("error %v", m.Error())
	}
	m.StrikeOpened("the plate is of another engine")
	wantPage(t, m, Result)
	if got := book.Build().Strikes; len(got) != 1 || got[0].Reason != "the plate is of another engine" || !m.Kept().Struck ||
		m.Kept().Reading.Point != "engine.rpm_max" {
		t.Errorf("strikes %+v", got)
	}
	openRecord(t, m, 1)
	m.KeepOpened()
	if r := m.Kept().Reading; r.Value.Token() != "5200" || len(book.Build().Readings) != 3 {
		t.Errorf("kept again %+v", r)
	}
}

// Of three readings the finding about repeats marks the one that stands apart: 2.4, 2.5 and 9.
func TestTheRepeatThatStandsApartIsMarked(t *testing.T) {
	m, _ := open(t)
	at(t, m, "gearbox.slope", measure.RideKerb)
	for _, number := range []string{"2.4", "2.5", "2.4", "9.0"} {
		press(m, number)
		keep(m)
		m.Side(true)
		if number != "9.0" {
			m.Again()
		}
	}
	got := m.Repeats()
	if len(got) != 4 || got[0].Reading.Value.Token() != "2.4" {
		t.Fatalf("repeats %+v", got)
	}
	for i, r := range got {
		if r.Apart != (i == 3) {
			t.Errorf("%s stands apart: %v", r.Reading.Value.Token(), r.Apart)
		}
	}
	m.StrikeLast("misread")
	if got := m.Repeats(); len(got) != 3 {
		t.Errorf("%d repeats after the strike", len(got))
	}
}
