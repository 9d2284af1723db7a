package logbook

import (
	"bytes"
	"fmt"
	"testing"
	"time"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// world is a set of sources that repeats: a clock that moves on a second each time it is read, and
// ids that count up.
type world struct {
	now time.Time
	n   int
}

func newWorld() *world { return &world{now: time.Date(2026, 3, 2, 10, 0, 0, 0, time.UTC)} }

func (w *world) sources(device measure.ID) Sources {
	return Sources{
		Now:    func() time.Time { w.now = w.now.Add(time.Second); return w.now },
		NewID:  func() measure.ID { w.n++; return measure.ID(fmt.Sprintf("019ab3f0-0000-7000-8000-%012x", w.n)) },
		Device: device,
		run:    means,
	}
}

const (
	deviceA measure.ID = "019ab3ee-0000-7000-8000-00000000000a"
	deviceB measure.ID = "019ab3ee-0000-7000-8000-00000000000b"
)

// means is an engine for these tests: for each point that was read in a state the mean, out above
// 10, unsure above 5, else clear; and one finding that waits for pinion.slope.
func means(b *measure.Build, _ *checks.Result) *checks.Result {
	res, current := &checks.Result{}, b.CurrentReadings(document.Hash)
	for _, p := range measure.Points {
		for _, s := range measure.States {
			sum, n := 0.0, 0.0
			for _, r := range current {
				if f, ok := r.Number(); ok && r.Point == p.Key && r.State() == s {
					sum, n = sum+f, n+1
				}
			}
			if n > 0 {
				res.Findings = append(res.Findings, mean(p.Key, s, sum/n))
			}
		}
	}
	if _, ok := newest(b, func(r measure.Reading) bool { return r.Point == "pinion.slope" }); !ok {
		res.Findings = append(res.Findings, checks.Finding{Check: "waits", Verdict: checks.Waiting})
	}
	return res
}

func mean(point string, s measure.State, value float64) checks.Finding {
	f := checks.Finding{Check: "mean", Subject: point, State: s, Value: &value, Verdict: checks.Clear}
	switch {
	case value > 10:
		f.Verdict = checks.Out
	case value > 5:
		f.Verdict = checks.Unsure
	}
	return f
}

func openShelf(t *testing.T, dir string, w *world) *Shelf {
	t.Helper()
	s, err := OpenShelf(dir, w.sources(deviceA))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = s.Close() })
	return s
}

// newShelfBook starts a build on a shelf of its own.
func newShelfBook(t *testing.T) (*Shelf, *Book) {
	t.Helper()
	s := openShelf(t, t.TempDir(), newWorld())
	b, err := s.New("invented: logbook test", measure.NewLayout())
	if err != nil {
		t.Fatal(err)
	}
	return s, b
}

// slope is an entry of an angle in degrees.
func slope(t *testing.T, point, value string) Entry {
	t.Helper()
	return Entry{Point: point, Value: number(t, value), Unit: "deg", State: measure.Hanging, Setup: 1}
}

func number(t *testing.T, token string) measure.Value {
	t.Helper()
	v, err := measure.NumberValue(token)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func keep(t *testing.T, b *Book, e Entry) Change {
	t.Helper()
	c, err := b.Keep(e)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func closeBook(t *testing.T, b *Book) {
	t.Helper()
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
}

func bytesOf(t *testing.T, b *Book) []byte {
	t.Helper()
	data, err := b.Bytes()
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func sameBytes(t *testing.T, what string, got, want []byte) {
	t.Helper()
	if !bytes.Equal(got, want) {
		t.Errorf("%s:\n%s\nwant:\n%s", what, got, want)
	}
}

// said writes findings as "check/subject verdict value", for short rows in tests.
func said(findings []checks.Finding) string {
	text := ""
	for _, f := range findings {
		text += f.Check + "/" + f.Subject + " " + string(f.Verdict)
		if f.Value != nil {
			text += fmt.Sprintf(" %g", *f.Value)
		}
		text += "; "
	}
	return text
}
