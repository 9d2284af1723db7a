package bench

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"yokebook/checks"
	"yokebook/measure"
)

// The builds that are measured on: the demo, and one with 300 readings in which every check speaks.
var measured = []struct {
	name  string
	build func(testing.TB) *measure.Build
}{{"demo", demo}, {"full", full}}

func onEach(b *testing.B, run func(*testing.B, *measure.Build)) {
	for _, m := range measured {
		b.Run(m.name, func(b *testing.B) { run(b, m.build(b)) })
	}
}

// BenchmarkKeepToFindings is the wait of the person who presses the keep key: the build lacks one
// reading (each in turn), it is kept, is synced to disk, and the findings are there.
func BenchmarkKeepToFindings(b *testing.B) { onEach(b, keepToFindings) }

func keepToFindings(b *testing.B, build *measure.Build) {
	readings := plain(build)
	dir := b.TempDir()
	var waits samples
	for i := range b.N {
		r := readings[i%len(readings)]
		shelf := filepath.Join(dir, "shelf")
		book, done := bookOf(b, shelf, without(build, r))
		entry := entryOf(r)
		start := time.Now()
		_, err := book.Keep(entry)
		waits = append(waits, time.Since(start))
		if err != nil {
			b.Fatalf("%s: %v", r.Point, err)
		}
		done()
		if err := os.RemoveAll(shelf); err != nil {
			b.Fatal(err)
		}
	}
	waits.report(b)
}

// BenchmarkFindingsAfterOneReading is the part of it that computes: no disk.
func BenchmarkFindingsAfterOneReading(b *testing.B) { onEach(b, afterOneReading) }

func afterOneReading(b *testing.B, build *measure.Build) {
	readings := plain(build)
	var waits samples
	for i := range b.N {
		before := checks.Run(without(build, readings[i%len(readings)]), nil)
		start := time.Now()
		found := checks.Run(build, before)
		waits = append(waits, time.Since(start))
		mustFind(b, found)
	}
	waits.report(b)
}

// BenchmarkFindingsFromNothing is what opening a build costs: every finding, with no earlier work.
func BenchmarkFindingsFromNothing(b *testing.B) { onEach(b, fromNothing) }

func fromNothing(b *testing.B, build *measure.Build) {
	var waits samples
	for range b.N {
		start := time.Now()
		found := checks.Run(build, nil)
		waits = append(waits, time.Since(start))
		mustFind(b, found)
	}
	waits.report(b)
}

// BenchmarkDiskAlone is one small record appended and synced, the least that keeping can cost on
// the disk of this run.
func BenchmarkDiskAlone(b *testing.B) {
	f, err := os.Create(filepath.Join(b.TempDir(), "record"))
	if err != nil {
		b.Fatal(err)
	}
	record := make([]byte, 400)
	var waits samples
	for range b.N {
		start := time.Now()
		if _, err := f.Write(record); err != nil {
			b.Fatal(err)
		}
		if err := f.Sync(); err != nil {
			b.Fatal(err)
		}
		waits = append(waits, time.Since(start))
	}
	if err := f.Close(); err != nil {
		b.Fatal(err)
	}
	waits.report(b)
}

func mustFind(b *testing.B, r *checks.Result) {
	b.Helper()
	if len(r.Findings) == 0 {
		b.Fatal("no findings: nothing was measured")
	}
}
