package checks_test

import (
	"math"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// invented reads one of the invented builds.
func invented(t testing.TB, name string) *measure.Build {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "testdata", "builds", name))
	if err != nil {
		t.Fatal(err)
	}
	b, _, err := document.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func ofJoints(check string) bool { return strings.HasPrefix(check, "joint.") }

func TestRunOnlyFindsWhatRunFindsOfIt(t *testing.T) {
	for _, name := range []string{"demo.json", "steep.json"} {
		b := invented(t, name)
		var want []checks.Finding
		for _, f := range checks.Run(b, nil).Findings {
			if ofJoints(f.Check) {
				want = append(want, f)
			}
		}
		if got := checks.RunOnly(b, nil, ofJoints).Findings; len(got) == 0 || !reflect.DeepEqual(got, want) {
			t.Errorf("%s: %d findings of joints, want %d, the same ones", name, len(got), len(want))
		}
	}
}

// A glance and a run have the same findings with the same best values. Where a run is sure by more
// than a little, the glance gives the same verdict.
func TestGlanceAgreesWithRun(t *testing.T) {
	agreed := 0
	for _, name := range []string{"demo.json", "steep.json"} {
		b := invented(t, name)
		run, glance := checks.Run(b, nil).Findings, checks.Glance(b, nil)
		if len(run) != len(glance) {
			t.Fatalf("%s: %d findings at a glance, %d by a run", name, len(glance), len(run))
		}
		for i, f := range run {
			g := glance[i]
			if f.Key() != g.Key() || (f.Value == nil) != (g.Value == nil) {
				t.Fatalf("%s: %s stands where %s should", name, g.Key(), f.Key())
			}
			if f.Check == "build.chance" || f.Value == nil {
				continue
			}
			if *f.Value != *g.Value {
				t.Errorf("%s: %s is %g at a glance, %g by a run", name, f.Key(), *g.Value, *f.Value)
			}
			if f.Chance == nil || between(*f.Chance, 0.01, 0.12) || between(*f.Chance, 0.88, 0.99) {
				continue
			}
			if f.Verdict != g.Verdict && f.Check != "joint.least_angle" { // an angle near 0 is not normal
				t.Errorf("%s: %s is %s at a glance, %s by a run", name, f.Key(), g.Verdict, f.Verdict)
			}
			if math.Abs(*f.Chance-*g.Chance) > 0.1 && f.Check != "joint.least_angle" {
				t.Errorf("%s: %s has chance %g at a glance, %g by a run", name, f.Key(), *g.Chance, *f.Chance)
			}
			agreed++
		}
	}
	if agreed < 30 {
		t.Errorf("only %d findings were compared", agreed)
	}
}

func between(x, low, high float64) bool { return x >= low && x <= high }

// A sketch has the same findings with the same best values as a run, and with all draws the same chances.
func TestSketchIsARunWithFewerDraws(t *testing.T) {
	b := invented(t, "demo.json")
	run := checks.Run(b, nil)
	if got := checks.Sketch(b, run, 4096, nil); !reflect.DeepEqual(got, run.Findings) {
		t.Error("with all draws it differs from a run")
	}
	for i, g := range checks.Sketch(b, run, 256, nil) {
		f := run.Findings[i]
		if f.Key() != g.Key() || (f.Value == nil) != (g.Value == nil) || f.Value != nil && f.Check != "build.chance" && *f.Value != *g.Value {
			t.Errorf("%s stands where %s should, or has another value", g.Key(), f.Key())
		}
		if f.Chance != nil && math.Abs(*f.Chance-*g.Chance) > 0.12 {
			t.Errorf("%s has chance %g, by a run %g", f.Key(), *g.Chance, *f.Chance)
		}
	}
}
