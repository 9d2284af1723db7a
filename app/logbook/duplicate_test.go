package logbook

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"yokebook/measure"
)

func TestDuplicateStartsWithLayoutAndStatedValuesOnly(t *testing.T) {
	w := newWorld()
	s := openShelf(t, t.TempDir(), w)
	layout := measure.NewLayout()
	layout.Shafts, layout.Axle = 2, "links"
	from, err := s.New("invented: the first vehicle", layout)
	if err != nil {
		t.Fatal(err)
	}
	stated := func(value string) Entry {
		return Entry{Point: "engine.rpm_max", Value: number(t, value), Unit: "rev/min", Basis: measure.Stated, State: measure.OffBench, Note: "from the plate"}
	}
	first := keep(t, from, stated("5000"))
	right := stated("5200")
	right.Replaces = first.Reading
	keep(t, from, right)
	gone := keep(t, from, Entry{Point: "gear.highest", Value: number(t, "0.8"), Basis: measure.Stated, State: measure.OffBench})
	if _, err := from.Strike(gone.Reading, "of another gearbox"); err != nil {
		t.Fatal(err)
	}
	keep(t, from, slope(t, "gearbox.slope", "2.4"))
	before := bytesOf(t, from)
	for _, when := range []string{"open", "closed"} {
		if when == "closed" {
			closeBook(t, from)
		}
		b, err := s.Duplicate(from.ID(), "invented: the second vehicle")
		if err != nil {
			t.Fatalf("%s: %v", when, err)
		}
		got := b.Build()
		if got.ID == from.ID() || got.Title != "invented: the second vehicle" || !reflect.DeepEqual(got.Layout, from.Build().Layout) {
			t.Errorf("%s: id %s, title %q, layout %+v", when, got.ID, got.Title, got.Layout)
		}
		if len(got.Readings) != 1 || len(got.Strikes) != 0 || len(got.Instruments) != 0 {
			t.Fatalf("%s: %d readings, %d strikes; want the one stated value that counts", when, len(got.Readings), len(got.Strikes))
		}
		r := got.Readings[0]
		if r.Value.Token() != "5200" || r.Unit != "rev/min" || r.Note != "from the plate" || r.Replaces != "" || r.State() != measure.OffBench {
			t.Errorf("%s: stated value came over as %+v", when, r)
		}
		if slices.ContainsFunc(from.Build().Readings, func(old measure.Reading) bool { return old.ID == r.ID }) {
			t.Errorf("%s: the reading kept its id", when)
		}
		for _, h := range got.Heads {
			if slices.ContainsFunc(from.Build().Heads, func(old measure.Head) bool { return old.ID == h.ID }) {
				t.Errorf("%s: the head of %s kept its id", when, h.Field)
			}
		}
		id := b.ID()
		closeBook(t, b)
		again, err := s.Open(id)
		if err != nil || len(again.Build().Readings) != 1 {
			t.Fatalf("%s: read back: %v", when, err)
		}
		closeBook(t, again)
	}
	after, err := s.Export(from.ID())
	if err != nil {
		t.Fatal(err)
	}
	sameBytes(t, "the starting point", after, before)
}

func TestDuplicateOfNothingIsRefused(t *testing.T) {
	s := openShelf(t, t.TempDir(), newWorld())
	_, err := s.Duplicate("019ab3f0-0000-7000-8000-0000000000ff", "x")
	if err == nil || strings.Contains(err.Error(), "\n") {
		t.Errorf("got %v", err)
	}
}
