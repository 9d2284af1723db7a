package cli

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"yokebook/app/logbook"
	"yokebook/app/words"
	"yokebook/measure"
)

var rewrite = flag.Bool("rewrite", false, "rewrite the golden files from what is printed now; read the diff")

// desk is a place to run verbs at: a folder of its own, a clock and ids that repeat.
type desk struct {
	t    *testing.T
	dir  string
	made int
	in   string // what the input holds

	device measure.ID
}

func newDesk(t *testing.T) *desk {
	return &desk{t: t, dir: t.TempDir(), device: "019ab3ee-0000-7000-8000-000000000001"}
}

// path names a file on the desk.
func (d *desk) path(name string) string { return filepath.Join(d.dir, name) }

// put writes a file on the desk and returns its path.
func (d *desk) put(name, text string) string {
	d.t.Helper()
	if err := os.WriteFile(d.path(name), []byte(text), 0o644); err != nil {
		d.t.Fatal(err)
	}
	return d.path(name)
}

// run runs a verb and returns its exit code and what it printed.
func (d *desk) run(args ...string) (code int, out, err string) {
	d.t.Helper()
	var o, e bytes.Buffer
	code = d.program(&o, &e).Run(args)
	return code, o.String(), e.String()
}

func (d *desk) program(out, err *bytes.Buffer) Program {
	return Program{
		Language: words.English,
		Sources: logbook.Sources{
			Now: func() time.Time {
				return time.Date(2026, 3, 2, 10, 15, 0, 0, time.UTC).Add(time.Duration(d.made) * time.Minute)
			},
			NewID: func() measure.ID {
				d.made++
				return measure.ID(fmt.Sprintf("019ab3f1-0000-7000-8000-%012x", d.made))
			},
			Device: d.device,
		},
		Home: func() (string, error) { return d.path("home"), nil },
		Wait: func(ctx context.Context, _ time.Duration) error { return ctx.Err() },
		In:   strings.NewReader(d.in),
		Out:  out, Err: err,
	}
}

// must runs a verb that has to succeed and returns what it printed.
func (d *desk) must(args ...string) string {
	d.t.Helper()
	code, out, err := d.run(args...)
	if code != Done || err != "" {
		d.t.Fatalf("%q: exit %d, error %q", args, code, err)
	}
	return out
}

// file reads a file on the desk.
func (d *desk) file(name string) string {
	d.t.Helper()
	data, err := os.ReadFile(d.path(name))
	if err != nil {
		d.t.Fatal(err)
	}
	return string(data)
}

// oneLineOf fails unless text is exactly one line.
func oneLineOf(t *testing.T, what, text string) {
	t.Helper()
	if strings.Count(text, "\n") != 1 || !strings.HasSuffix(text, "\n") || strings.Contains(text, "Usage:") {
		t.Errorf("%s: the error is not exactly one line: %q", what, text)
	}
}

// golden compares text with a file of testdata/golden, or rewrites it.
func golden(t *testing.T, name, text string) {
	t.Helper()
	path := filepath.Join("..", "..", "testdata", "golden", name)
	if *rewrite {
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	got, wanted := strings.Split(text, "\n"), strings.Split(string(want), "\n")
	for i := range max(len(got), len(wanted)) {
		if i >= len(got) || i >= len(wanted) || got[i] != wanted[i] {
			t.Errorf("%s differs from line %d on; if it should, `make golden WHAT=texts`, and read the diff. Printed: %q", path, i+1, got[min(i, len(got)-1)])
			return
		}
	}
}

// byHand is a build written by hand: plain keys only, no heads, no sum.
const byHand = `{
  "format": "yokebook-build/1",
  "id": "019ab3f0-0000-7000-8000-0000000000b1",
  "title": "Written by hand",
  "layout": {"shafts": 1, "slip": "shaft", "axle": "leaf", "front_joint": "single", "rear_joint": "single"},
  "instruments": [{"id": "finder", "kind": "angle", "resolution": 0.1, "accuracy": 0.2, "unit": "deg"}],
  "readings": [
    {"id": "019ab3f1-0000-7000-8000-0000000000a1", "point": "gearbox.slope", "value": 2.4, "unit": "deg", "basis": "measured",
     "ride": "droop", "load": "none", "height": 612, "setup": 1, "instrument": "finder",
     "at": "2026-03-02T10:15:00Z", "device": "019ab3ee-0000-7000-8000-0000000000d1"}
  ],
  "strikes": []
}
`
