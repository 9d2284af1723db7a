package take

import (
	"testing"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// The disk refuses a value whose doubts were all answered: back leads to the last of them, with the
// value still typed.
func TestBackFromARefusalAsksTheLastDoubtAgain(t *testing.T) {
	_, book := open(t)
	m := New(full{book})
	at(t, m, "gearbox.slope", measure.Hanging)
	press(m, "45")
	keep(m)
	m.Side(true)
	for len(m.Doubts()) > 1 {
		m.KeepAllTheSame()
	}
	wantPage(t, m, Doubts)
	last := m.Doubts()[0]
	m.KeepAllTheSame()
	wantPage(t, m, Refused)
	m.Back()
	wantPage(t, m, Doubts)
	if left := m.Doubts(); len(left) != 1 || left[0].Key != last.Key {
		t.Fatalf("asks back about %v, want %s again", left, last.Key)
	}
	m.LookAgain()
	if got := m.Typed().Text(false); got != "45" {
		t.Errorf("typed is %q now", got)
	}
}

// noSkips is a disk that is full once a stop is left out.
type noSkips struct{ *logbook.Book }

func (noSkips) Skip(string, measure.State, string, string) (logbook.Change, error) {
	return logbook.Change{}, errFull
}

// A skip is refused and the program killed: it still says why, and nothing about the value read before.
func TestRefusalOfASkipOutlivesAKill(t *testing.T) {
	_, book := open(t)
	m := New(noSkips{book})
	at(t, m, "gearbox.slope", measure.Hanging)
	press(m, "2.4")
	keep(m)
	m.Side(true)
	wantPage(t, m, Result)
	at(t, m, "crank.bolts", measure.OffBench)
	m.OpenSkips()
	m.Skip("no time")
	wantPage(t, m, Refused)
	again := Resume(noSkips{book}, m.Where())
	wantPage(t, again, Refused)
	if got := again.Error().Error(); got != errFull.Error() {
		t.Errorf("after the kill it says %q, want %q", got, errFull)
	}
}
