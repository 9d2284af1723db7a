package logbook

import (
	"os"
	"testing"
)

// What is flushed is the place that was saved, and flushing nothing is no fault.
func TestFlush(t *testing.T) {
	s, b := newShelfBook(t)
	if err := s.Flush(); err != nil {
		t.Errorf("nothing saved: %v", err)
	}
	want := Place{Build: b.ID(), Open: true, Point: "gearbox.slope", Typed: "2."}
	if err := s.SavePlace(want); err != nil {
		t.Fatal(err)
	}
	if err := s.Flush(); err != nil {
		t.Fatal(err)
	}
	if got := s.Place(); got.Typed != want.Typed || got.Point != want.Point {
		t.Errorf("after the flush: %+v", got)
	}
	if err := os.Remove(s.placePath()); err != nil {
		t.Fatal(err)
	}
	if err := os.Mkdir(s.placePath(), 0o755); err != nil {
		t.Fatal(err)
	}
	if s.Flush() == nil {
		t.Error("a place that can't be opened was flushed")
	}
}
