package bench

import (
	"os"
	"slices"
	"testing"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/document"
)

// demoFile is the build that is measured on.
const demoFile = "../../testdata/builds/demo.json"

func demo(tb testing.TB) *measure.Build {
	tb.Helper()
	data, err := os.ReadFile(demoFile)
	if err != nil {
		tb.Fatal(err)
	}
	b, _, err := document.Read(data)
	if err != nil {
		tb.Fatal(err)
	}
	return b
}

// plain returns the readings that can be taken out of a build and entered again: no corrections,
// nothing that was corrected, nothing struck.
func plain(b *measure.Build) []measure.Reading {
	var touched []measure.ID
	for _, r := range b.Readings {
		if r.Replaces != "" {
			touched = append(touched, r.ID, r.Replaces)
		}
	}
	for _, s := range b.Strikes {
		touched = append(touched, s.Reading)
	}
	var out []measure.Reading
	for _, r := range b.Readings {
		if !slices.Contains(touched, r.ID) {
			out = append(out, r)
		}
	}
	return out
}

// without returns the build as it was before a reading was taken.
func without(b *measure.Build, r measure.Reading) *measure.Build {
	before := *b
	before.Readings = slices.DeleteFunc(slices.Clone(b.Readings), func(o measure.Reading) bool { return o.ID == r.ID })
	return &before
}

// entryOf is what a person would enter to take the reading.
func entryOf(r measure.Reading) logbook.Entry {
	return logbook.Entry{Point: r.Point, Value: r.Value, Entered: r.Entered, Unit: r.Unit, Basis: r.Basis, State: r.State(),
		Height: r.Height, Setup: r.Setup, Instrument: r.Instrument, Way: r.Way, Lay: r.Lay, Tag: r.Tag, Note: r.Note}
}

// bookOf puts a build on a fresh shelf on disk and opens it.
func bookOf(tb testing.TB, dir string, b *measure.Build) (*logbook.Book, func()) {
	tb.Helper()
	data, err := document.Write(b)
	if err != nil {
		tb.Fatal(err)
	}
	shelf, err := logbook.OpenShelf(dir, logbook.System())
	if err != nil {
		tb.Fatal(err)
	}
	id, _, err := shelf.Import(data)
	if err != nil {
		tb.Fatal(err)
	}
	book, err := shelf.Open(id)
	if err != nil {
		tb.Fatal(err)
	}
	return book, func() {
		if err := book.Close(); err != nil {
			tb.Error(err)
		}
		if err := shelf.Close(); err != nil {
			tb.Error(err)
		}
	}
}

// TestDemoCanBeMeasured keeps one reading the way that the benchmark does and looks that it changed
// a finding: a benchmark of nothing would be fast.
func TestDemoCanBeMeasured(t *testing.T) {
	b := demo(t)
	readings := plain(b)
	i := slices.IndexFunc(readings, func(r measure.Reading) bool { return r.Point == "shaft.slope" })
	if i < 0 {
		t.Fatal("the demo build has no shaft.slope that can be entered again")
	}
	book, done := bookOf(t, t.TempDir(), without(b, readings[i]))
	defer done()
	change, err := book.Keep(entryOf(readings[i]))
	if err != nil {
		t.Fatal(err)
	}
	if len(change.Findings) == 0 {
		t.Error("keeping shaft.slope changed no finding")
	}
}
