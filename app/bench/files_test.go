package bench

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	buildsync "yokebook/sync"
	"yokebook/sync/place"
)

// filesRows read and merge the files that two devices have of 500 builds, half of whose 200 readings
// both have, and hold that against decoding the same bytes and looking at none of them.
func filesRows(t *testing.T) []row {
	const pairs = 500
	files := make([][2][]byte, pairs)
	b := cut(t, 200)
	all := b.Readings
	for n := range files {
		b.ID = buildID(n)
		for side, readings := range [][]measure.Reading{all[:150], all[50:]} {
			b.Readings = readings
			files[n][side] = written(t, b)
		}
	}
	var plain, ours samples
	for range 5 {
		var decoding, merging time.Duration
		for _, pair := range files {
			start := time.Now()
			for _, data := range pair {
				var v any
				if err := json.Unmarshal(data, &v); err != nil {
					t.Fatal(err)
				}
			}
			decoding += time.Since(start)
			start = time.Now()
			merged := merge2(t, pair)
			merging += time.Since(start)
			if len(merged.Readings) != len(all) {
				t.Fatalf("%d readings after the merge, want %d", len(merged.Readings), len(all))
			}
		}
		plain, ours = append(plain, decoding), append(ours, merging)
	}
	return []row{times("decode, verify, merge 1,000 files", ours.at(0.5), plain.at(0.5), "encoding/json decodes them", 2)}
}

func merge2(tb testing.TB, pair [2][]byte) *measure.Build {
	tb.Helper()
	var builds [2]*measure.Build
	for i, data := range pair {
		b, seal, err := document.Read(data)
		if err != nil || seal != document.Whole {
			tb.Fatal(seal, err)
		}
		builds[i] = b
	}
	merged, _, err := merge.Builds(builds[:]...)
	if err != nil {
		tb.Fatal(err)
	}
	return merged
}

func written(tb testing.TB, b *measure.Build) []byte {
	tb.Helper()
	data, err := document.Write(b)
	if err != nil {
		tb.Fatal(err)
	}
	return data
}

// quiet are medians of a shelf of which nothing changed.
type quiet struct{ pass, listing, page time.Duration }

// quietly measures, in turn, a bare listing of a folder, a pass of sync over it and the list of builds.
func quietly(t *testing.T, builds, rounds int) quiet {
	home, shared := t.TempDir(), t.TempDir()
	stock(t, home, builds, 3)
	shelf, err := logbook.OpenShelf(home, logbook.System())
	if err != nil {
		t.Fatal(err)
	}
	folder, err := place.OpenFolder(shared)
	if err != nil {
		t.Fatal(err)
	}
	defer folder.Close()
	b := cut(t, 3)
	for n := range builds {
		b.ID, b.Title = buildID(n), fmt.Sprintf("Invented build %d", n+1)
		if err := os.MkdirAll(filepath.Join(home, "snapshots", string(b.ID)), 0o755); err != nil { // each has one after a session
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(shared, place.FileName(b.ID, shelf.Device())), written(t, b), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	memory, later := buildsync.NewMemory(), time.Now().Add(time.Minute)
	run := func() buildsync.Report {
		p := buildsync.Pass{Place: folder, Builds: shelf.Builds(nil), Device: shelf.Device(), Now: func() time.Time { return later }}
		r, err := p.Run(background, memory)
		if err != nil || !r.OK() {
			t.Fatalf("%v, %+v", err, r.Faults)
		}
		return r
	}
	run()
	if r := run(); r.Read != 0 {
		t.Fatalf("a quiet pass read %d files", r.Read)
	}
	var passes, listings, pages samples
	for range rounds {
		runtime.GC() // each is charged for its own garbage
		start := time.Now()
		if _, err := folder.List(background); err != nil {
			t.Fatal(err)
		}
		listings = append(listings, time.Since(start))
		runtime.GC()
		start = time.Now()
		run()
		passes = append(passes, time.Since(start))
		runtime.GC()
		start = time.Now()
		list(t, home)
		pages = append(pages, time.Since(start))
	}
	return quiet{passes.at(0.5), listings.at(0.5), pages.at(0.5)}
}
