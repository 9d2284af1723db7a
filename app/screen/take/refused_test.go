package take

import (
	"testing"

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
