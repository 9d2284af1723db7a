package sync

import (
	"context"
	"encoding/json"
	"fmt"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/sync/place"
)

// BenchmarkQuietPass is a pass over builds of which none changed, as a multiple of listing the folder.
func BenchmarkQuietPass(b *testing.B) {
	for _, count := range []int{100, 1000, 10_000} {
		b.Run(fmt.Sprintf("%d-builds", count), func(b *testing.B) { quietPass(b, count) })
	}
}

func quietPass(b *testing.B, count int) {
	folder, err := place.OpenFolder(b.TempDir())
	if err != nil {
		b.Fatal(err)
	}
	defer folder.Close()
	d := newDrawer()
	for n := range count {
		d.change(buildID(n), func(x *measure.Build) { x.Readings = append(x.Readings, slope(id(1, n), deviceID(1), "2.4", start)) })
		// Without waiting for the disk: what is measured is the pass after.
		if err := folder.Put(context.Background(), place.FileName(buildID(n), deviceID(1)), bytesOf(b, d.builds[buildID(n)])); err != nil {
			b.Fatal(err)
		}
	}
	m := NewMemory()
	later := time.Now().Add(time.Minute)
	pass := func() Report {
		p := Pass{Place: folder, Builds: d, Device: deviceID(1), Now: func() time.Time { return later }}
		r, err := p.Run(context.Background(), m)
		if err != nil || !r.OK() {
			b.Fatalf("%v, %+v", err, r.Faults)
		}
		return r
	}
	pass()
	if r := pass(); r.Read != 0 || len(r.Builds) != count {
		b.Fatalf("a quiet pass read %d files", r.Read)
	}
	var listing time.Duration
	for b.Loop() {
		from := time.Now()
		if _, err := folder.List(context.Background()); err != nil {
			b.Fatal(err)
		}
		listing += time.Since(from)
		pass()
	}
	total := b.Elapsed()
	b.ReportMetric(float64(total-listing)/float64(listing), "x-listing")
	b.ReportMetric(float64(total-listing)/float64(b.N)/float64(count), "ns/build")
}

// BenchmarkReadAndMerge reads a build of 200 readings strictly, and merges it with itself, as multiples of
// what plain encoding/json takes to decode the same bytes.
func BenchmarkReadAndMerge(b *testing.B) {
	d := newDrawer()
	d.change(buildID(1), func(x *measure.Build) {
		for n := range 200 {
			x.Readings = append(x.Readings, slope(id(1, n), deviceID(1), "2.4", start))
		}
	})
	data := bytesOf(b, d.builds[buildID(1)])
	var plain, read, merged time.Duration
	for b.Loop() {
		from := time.Now()
		var v any
		if err := json.Unmarshal(data, &v); err != nil {
			b.Fatal(err)
		}
		plain += time.Since(from)
		from = time.Now()
		x, _, err := document.Read(data)
		if err != nil {
			b.Fatal(err)
		}
		read += time.Since(from)
		from = time.Now()
		if _, _, err := merge.Builds(x, x); err != nil {
			b.Fatal(err)
		}
		merged += time.Since(from)
	}
	b.ReportMetric(float64(read)/float64(plain), "read/json")
	b.ReportMetric(float64(merged)/float64(plain), "merge/json")
}
