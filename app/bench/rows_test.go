package bench

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/store"
)

const rounds = 200 // samples of a wait

// keepRows measure from a pressed key to everything that the page after it says: the reading is on the
// disk, the findings are worked out, the next stop is known, and the texts of what changed are made.
func keepRows(t *testing.T) []row {
	build := full(t)
	readings := plain(build)
	var waits samples
	for i := range rounds {
		r := readings[i*7%len(readings)]
		book, done := bookOf(t, t.TempDir(), without(build, r))
		entry := entryOf(r)
		start := time.Now()
		change, err := book.Keep(entry)
		if err != nil {
			t.Fatalf("%s: %v", r.Point, err)
		}
		book.Next()
		for _, f := range change.Findings {
			words.English.Finding(f)
		}
		waits = append(waits, time.Since(start))
		done()
	}
	return []row{
		within("keep → view model, full build, p50", waits.at(0.5), frame, "one frame"),
		within("keep → view model, full build, p99", waits.at(0.99), frame, "one frame"),
		beside("  beside it: laying out and painting the page, in software", painting(t), frame, "one frame"),
	}
}

// painting is measured where the toolkit may be used.
func painting(t *testing.T) time.Duration {
	cmd := exec.Command("go", "test", "-count=1", "-v", "-run", "^TestPaint$", "yokebook/app/screen")
	cmd.Env = append(os.Environ(), "YOKEBOOK_BENCH=paint")
	out, err := cmd.Output()
	_, rest, ok := strings.Cut(string(out), "painted in ")
	if err != nil || !ok {
		t.Fatalf("painting was not measured: %v\n%s", err, out)
	}
	text, _, _ := strings.Cut(rest, "\n")
	d, err := time.ParseDuration(text)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func recheckRows(t *testing.T) []row {
	build := full(t)
	var waits samples
	for range 40 {
		start := time.Now()
		checks.Run(build, nil)
		waits = append(waits, time.Since(start))
	}
	return []row{within("recheck of a full build from nothing", waits.at(0.5), 100*time.Millisecond, "")}
}

// diskRows measure what the store adds to the one thing that it can't do without.
func diskRows(t *testing.T) []row {
	build, dir := full(t), t.TempDir()
	st, err := store.Open(dir, time.Now)
	if err != nil {
		t.Fatal(err)
	}
	records := store.RecordsOf(build)
	bare := *build
	bare.Readings = nil
	file, err := st.Create(&bare)
	if err != nil {
		t.Fatal(err)
	}
	log, err := os.Create(filepath.Join(dir, "log"))
	if err != nil {
		t.Fatal(err)
	}
	var kept, synced samples
	line := make([]byte, 400)
	for _, r := range records {
		start := time.Now()
		if _, err := log.Write(line); err != nil {
			t.Fatal(err)
		}
		if err := log.Sync(); err != nil {
			t.Fatal(err)
		}
		synced = append(synced, time.Since(start))
		start = time.Now()
		if err := file.Keep(r); err != nil {
			t.Fatal(err)
		}
		kept = append(kept, time.Since(start))
	}
	if err := file.Close(); err != nil {
		t.Fatal(err)
	}
	if err := log.Close(); err != nil {
		t.Fatal(err)
	}
	return []row{times("keep, store only", kept.at(0.5), synced.at(0.5), "fsync of 400 bytes", 2)}
}

// sweepRows hold a sweep with its doubt against the same sweep of best values, over the 61 heights of
// an axle that hangs lower than that of the full build.
func sweepRows(t *testing.T) []row {
	build := full(t)
	low, err := measure.NumberValue("852")
	if err != nil {
		t.Fatal(err)
	}
	for i := range build.Readings {
		r := &build.Readings[i]
		if r.Ride != measure.Droop {
			continue
		}
		r.Height = low
		if strings.HasPrefix(r.Point, "hub") {
			r.Value = low
		}
	}
	rows := checks.Sweep(build).Rows
	if len(rows) < 61 || slices.ContainsFunc(rows, func(r checks.SweepRow) bool { return r.Residual == nil || r.Slide == nil }) {
		t.Fatalf("the full build sweeps over %d heights, or lacks joint or slip at one of them", len(rows))
	}
	var doubted, best samples
	for range rounds {
		start := time.Now()
		checks.SweepBest(build)
		best = append(best, time.Since(start))
		start = time.Now()
		checks.Sweep(build)
		doubted = append(doubted, time.Since(start))
	}
	figure := fmt.Sprintf("sweep with doubt, %d heights", len(rows))
	return []row{
		times(figure, doubted.at(0.5), best.at(0.5), "without", 60),
		within(figure, doubted.at(0.5), 50*time.Millisecond, ""),
	}
}

var background = context.Background()
