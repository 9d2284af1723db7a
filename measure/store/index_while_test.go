package store

import (
	"fmt"
	"testing"

	"yokebook/measure"
)

// A list of many builds shows at once what is known, and looks at the others bit by bit.
func TestIndexWhileLooksAtAsManyBuildsAsItIsLet(t *testing.T) {
	st, asked := newStore(t, sample(1)), 0
	for i := range 3 {
		b := sample(1)
		b.ID = measure.ID(fmt.Sprintf("019ab3f0-0000-7000-8000-0000000001%02x", i))
		f, err := st.Create(b)
		if err != nil {
			t.Fatal(err)
		}
		closeFile(t, f)
	}
	let := func(n int) []Row {
		t.Helper()
		rows, err := st.IndexWhile(func() bool { n--; return n >= 0 }, counting(&asked))
		if err != nil || len(rows) != 4 {
			t.Fatalf("%v, %v; want four rows", rows, err)
		}
		return rows
	}
	stale := func(rows []Row) (n int) {
		for _, r := range rows {
			if r.ID == "" {
				t.Error("a row without an id")
			}
			if r.Stale {
				n++
			}
		}
		return n
	}
	for _, step := range []struct{ let, stale, asked int }{{0, 4, 0}, {1, 3, 1}, {0, 3, 1}, {2, 1, 3}, {9, 0, 4}, {0, 0, 4}} {
		if got := stale(let(step.let)); got != step.stale || asked != step.asked {
			t.Fatalf("let look at %d: %d are stale, %d were looked at; want %d and %d", step.let, got, asked, step.stale, step.asked)
		}
	}
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	if err := f.Keep(OfReading(reading(2))); err != nil {
		t.Fatal(err)
	}
	for range 2 { // also from the file
		for _, r := range let(0) {
			if r.Stale != (r.ID == buildID) || r.Readings != 1 {
				t.Errorf("%s: stale %v, %d readings; want only the changed build stale, as it was", r.ID, r.Stale, r.Readings)
			}
		}
	}
	for _, r := range let(1) {
		if r.Stale || r.ID == buildID && r.Readings != 2 {
			t.Errorf("%s: stale %v, %d readings", r.ID, r.Stale, r.Readings)
		}
	}
	closeFile(t, f)
}
