package bench

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/store"
	"yokebook/measure/store/disk/disktest"
)

func buildID(n int) measure.ID { return measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", n+1)) }

// cut is a full build with so many readings; more than it has are read again.
func cut(tb testing.TB, readings int) *measure.Build {
	b := *full(tb)
	for n := 0; len(b.Readings) < readings; n++ {
		r := b.Readings[n]
		r.ID = measure.ID(fmt.Sprintf("019d2a00-0000-7000-8001-%012x", n))
		b.Readings = append(b.Readings[:len(b.Readings):len(b.Readings)], r)
	}
	b.Readings = b.Readings[:readings]
	return &b
}

// stock puts so many builds of so many readings into the store of a folder, with its index as a session
// leaves it. The disk is not waited for: nothing is measured here.
func stock(tb testing.TB, dir string, builds, readings int) {
	tb.Helper()
	st, err := store.OpenOn(disktest.Quick{}, dir, time.Now)
	if err != nil {
		tb.Fatal(err)
	}
	b := cut(tb, readings)
	var rows []store.Row
	for n := range builds {
		b.ID, b.Title = buildID(n), fmt.Sprintf("Invented build %d", n+1)
		f, err := st.Create(b)
		if err != nil {
			tb.Fatal(err)
		}
		if err := f.Close(); err != nil {
			tb.Fatal(err)
		}
		if n == 0 {
			list(tb, dir)
			rows = indexOf(tb, dir)
		}
		row := rows[0]
		row.ID, row.Title = b.ID, b.Title
		if row.Stamp, err = st.StampOf(b.ID); err != nil {
			tb.Fatal(err)
		}
		if n > 0 {
			rows = append(rows, row)
		}
	}
	data, err := json.Marshal(map[string]any{"format": store.IndexFormat, "builds": rows})
	if err != nil {
		tb.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "index.json"), append(data, '\n'), 0o644); err != nil {
		tb.Fatal(err)
	}
}

// list lists the builds of a folder, as the first page does.
func list(tb testing.TB, dir string) []logbook.Listing {
	tb.Helper()
	shelf, err := logbook.OpenShelf(dir, logbook.System())
	if err != nil {
		tb.Fatal(err)
	}
	out, err := shelf.List()
	if err != nil {
		tb.Fatal(err)
	}
	return out
}

func indexOf(tb testing.TB, dir string) []store.Row {
	tb.Helper()
	data, err := os.ReadFile(filepath.Join(dir, "index.json"))
	if err != nil {
		tb.Fatal(err)
	}
	var f struct{ Builds []store.Row }
	if err := json.Unmarshal(data, &f); err != nil {
		tb.Fatal(err)
	}
	return f.Builds
}

// TestStockedIndexIsTakenAsItIs looks that the index made here is one that the shelf trusts: otherwise
// the measured start would be that after a lost index.
func TestStockedIndexIsTakenAsItIs(t *testing.T) {
	dir := t.TempDir()
	stock(t, dir, 3, 10)
	before, err := os.Stat(filepath.Join(dir, "index.json"))
	if err != nil {
		t.Fatal(err)
	}
	all := list(t, dir)
	after, err := os.Stat(filepath.Join(dir, "index.json"))
	if err != nil {
		t.Fatal(err)
	}
	if len(all) != 3 || all[2].Title != "Invented build 3" || all[2].Readings == 0 {
		t.Errorf("listed %+v", all)
	}
	if !os.SameFile(before, after) {
		t.Error("the index was made anew")
	}
}
