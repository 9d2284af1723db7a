package bench

import (
	"context"
	"fmt"
	"os"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/document"
)

// manyBuilds is how many builds the list is measured with.
const manyBuilds = 500

// BenchmarkGlance is the wait for the list of 10,000 builds: what the list knows, with a look at each
// file's size and time and none at what is in it. The files are copies of one small build.
func BenchmarkGlance(b *testing.B) {
	dir := b.TempDir()
	shelf := shelfOfMany(b, dir)
	var s samples
	for b.Loop() {
		start := time.Now()
		list, err := shelf.Glance()
		if err != nil || len(list) != manyBuilds {
			b.Fatalf("%d builds, %v", len(list), err)
		}
		s = append(s, time.Since(start))
	}
	s.report(b)
}

// shelfOfMany is a shelf with so many builds that the list knows.
func shelfOfMany(b *testing.B, dir string) *logbook.Shelf {
	b.Helper()
	build := demo(b)
	build.Readings, build.Strikes, build.Skips, build.Heads = build.Readings[:1], nil, nil, nil
	shelf, err := logbook.OpenShelf(dir, logbook.System())
	if err != nil {
		b.Fatal(err)
	}
	b.Cleanup(func() { _ = shelf.Close() })
	for i := range manyBuilds {
		build.ID = measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", i))
		build.Title = fmt.Sprintf("Invented build number %d", i)
		data, err := document.Write(build)
		if err != nil {
			b.Fatal(err)
		}
		if _, _, err := shelf.Import(data); err != nil {
			b.Fatal(err)
		}
	}
	if _, err := shelf.Freshen(context.Background(), manyBuilds); err != nil {
		b.Fatal(err)
	}
	info, err := os.Stat(dir + "/index.json")
	if err != nil {
		b.Fatal(err)
	}
	b.ReportMetric(float64(info.Size())/1e6, "MB-index")
	return shelf
}
