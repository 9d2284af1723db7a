package checks_test

import (
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks"
	"yokebook/measure"
)

// What the shaft line means, worked apart from this code: two joints of one plane and yokes in line
// leave cos β_R = cos β_front / cos β_rear or its inverse (closed form of the coplanar chain; the
// small-angle rule √|β₁² − β₂²| is in W. Elbe's technical pages, section 3.3, in words).
func TestLineAgainstTheClosedForm(t *testing.T) {
	for _, c := range []struct {
		name                   string
		gearbox, shaft, pinion string
		front, rear, residual  float64
		source                 string
	}{
		{"ends within 0.4 at 15 leave 3.5", "2.4", "17", "2", 14.6, 15, 3.47896, "common practice, no source; residual worked apart from this code"},
		{"10 and 9", "0", "10", "1", 10, 9, 4.3770, "cos β_R = cos 10/cos 9, worked apart from this code"},
		{"6 and 5", "1", "7", "2", 6, 5, 3.3208, "cos β_R = cos 6/cos 5, worked apart from this code"},
		{"3 and 2", "0", "3", "1", 3, 2, 2.2365, "cos β_R = cos 3/cos 2, worked apart from this code"},
		{"equal and parallel", "3", "8", "3", 5, 5, 0, "parallel ends, yokes in line: constant velocity (Elbe technical pages, section 1)"},
		{"equal and crossing", "3", "8", "13", 5, 5, 0, "W layout, yokes in line: constant velocity (Elbe technical pages, section 1)"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := newBench(t, measure.NewLayout())
			s.inPlan()
			s.slopes(measure.RideKerb, c.gearbox, c.shaft, c.pinion, with("exact"))
			list := s.run()
			for key, want := range map[string]float64{"joint.angle|front|ride/kerb": c.front,
				"joint.angle|rear|ride/kerb": c.rear, "joint.residual||ride/kerb": c.residual,
				"joint.match||ride/kerb": math.Abs(c.front - c.rear)} {
				if got := number(t, find(t, list, key).Value); math.Abs(got-want) > 5e-5 {
					t.Errorf("%s = %.5f, want %.5f (%s)", key, got, want, c.source)
				}
			}
		})
	}
}

// A probability of conformity as in JCGM 106:2012 clause 7 (one-sided upper limit, normal): limit 3,
// Φ((3 − y)/u). The values Φ(1.6) and Φ(−0.4) are those of any table of the normal distribution.
func TestChanceAndVerdict(t *testing.T) {
	for _, c := range []struct {
		shaft, placing string
		chance         float64
		verdict        checks.Verdict
	}{
		{"2.6", "0.25", 0.9452, checks.Unsure},
		{"3.1", "0.25", 0.3446, checks.Unsure},
		{"2.5", "0.25", 0.9772, checks.Clear},
		{"3.5", "0.25", 0.0228, checks.Out},
		{"3.0", "0", 1, checks.Clear}, // a tie meets the limit
	} {
		s := newBench(t, measure.NewLayout())
		s.inPlan()
		s.tool("hand", "0", "0", c.placing)
		s.read("gearbox.slope", "0", measure.RideKerb, with("exact"))
		s.read("shaft.slope", c.shaft, measure.RideKerb, with("hand"))
		f := find(t, s.run(), "joint.angle|front|ride/kerb")
		if f.Verdict != c.verdict || math.Abs(number(t, f.Chance)-c.chance) > 1e-3 {
			t.Errorf("%s ± %s: %s with chance %.4f, want %s with %.4f", c.shaft, c.placing, f.Verdict, *f.Chance, c.verdict, c.chance)
		}
	}
}

// The interval is a pair of one-sided 95 % bounds: ±1.645 standard deviations of a normal cause,
// ±0.9 half-widths of a rectangular one.
func TestInterval(t *testing.T) {
	for _, c := range []struct {
		name, resolution, placing string
		half, tol                 float64
	}{
		{"placing 0.2", "0", "0.2", 0.2 * 1.6449, 2e-3},
		{"display step 1", "1", "0", 0.45, 1e-3},
	} {
		s := newBench(t, measure.NewLayout())
		s.inPlan()
		s.tool("hand", c.resolution, "0", c.placing)
		s.read("gearbox.slope", "0", measure.RideKerb, with("exact"))
		s.read("shaft.slope", "6", measure.RideKerb, with("hand"))
		f := find(t, s.run(), "joint.angle|front|ride/kerb")
		if math.Abs(*f.Low-(6-c.half)) > c.tol || math.Abs(*f.High-(6+c.half)) > c.tol {
			t.Errorf("%s: %.4f … %.4f, want 6 ± %.4f", c.name, *f.Low, *f.High, c.half)
		}
	}
}

func TestAnyPreviousRunGivesTheSameFindings(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		a, b := randomBuild(rt, t), randomBuild(rt, t)
		want := checks.Run(a.b, nil)
		for _, prev := range []*checks.Result{{}, want, checks.Run(b.b, nil), checks.Run(b.b, want)} {
			if got := checks.Run(a.b, prev); !reflect.DeepEqual(got.Findings, want.Findings) {
				rt.Fatalf("findings depend on the run before")
			}
		}
	})
}

func TestOrderOfReadingsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := randomBuild(rt, t)
		want := checks.Run(s.b, nil).Findings
		s.b.Readings = rapid.Permutation(s.b.Readings).Draw(rt, "order")
		if got := checks.Run(s.b, nil).Findings; !reflect.DeepEqual(got, want) {
			rt.Fatal("findings depend on the order of the readings in the file")
		}
	})
}

// Whatever is read, a finding is whole: one of each key, in order, finite numbers, an interval that
// holds the value, and no running check that is clear from hanging wheels.
func TestFindingsAreWhole(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := randomBuild(rt, t)
		before := len(s.b.Readings)
		list := checks.Run(s.b, nil).Findings
		if len(s.b.Readings) != before {
			rt.Fatal("the build was changed")
		}
		seen := map[string]bool{}
		for _, f := range list {
			if seen[f.Key()] {
				rt.Fatalf("%s stands twice", f.Key())
			}
			seen[f.Key()] = true
			checkWhole(rt, f)
		}
		if !slices.IsSortedFunc(list, func(a, b checks.Finding) int { return tableIndex(a.Check) - tableIndex(b.Check) }) {
			rt.Fatal("findings are not in the order of the table")
		}
	})
}

func checkWhole(t *rapid.T, f checks.Finding) {
	for _, p := range []*float64{f.Value, f.Low, f.High, f.Chance} {
		if p != nil && (math.IsNaN(*p) || math.IsInf(*p, 0)) {
			t.Fatalf("%s has a number that is none", f.Key())
		}
	}
	if f.Value != nil && (f.Low == nil || *f.Low > *f.Value || *f.High < *f.Value) {
		t.Fatalf("%s: the interval does not hold the value", f.Key())
	}
	judged := f.Verdict == checks.Clear || f.Verdict == checks.Out
	if judged && f.Value == nil || f.Verdict == checks.Waiting && f.Advice.Key == "" {
		t.Fatalf("%s: %s without value or advice", f.Key(), f.Verdict)
	}
	if judged && strings.HasPrefix(f.Check, "joint.") && f.State.Ride != "" && f.State.Ride != measure.Bench && !f.State.Running() {
		t.Fatalf("%s is %s in a state that it does not run in", f.Key(), f.Verdict)
	}
}

func tableIndex(key string) int {
	return slices.IndexFunc(checks.Table, func(c checks.Check) bool { return c.Key == key })
}

// randomBuild reads any points in any states with any of three tools.
func randomBuild(rt *rapid.T, t testing.TB) *bench {
	l := measure.NewLayout()
	l.Shafts = rapid.IntRange(1, 2).Draw(rt, "shafts")
	l.Drives = rapid.SampledFrom([]string{"", "rear", "front", "transfer"}).Draw(rt, "drives")
	l.FrontJoint = rapid.SampledFrom([]string{"single", "double"}).Draw(rt, "front joint")
	l.RearJoint = rapid.SampledFrom([]string{"single", "double"}).Draw(rt, "rear joint")
	s := newBench(t, l)
	s.tool("fine", "0.1", "0.05", "0.05")
	s.tool("coarse", "1", "0.5", "0.2")
	states := []measure.State{measure.Hanging, measure.RideKerb, measure.RideLaden, measure.OnBump, measure.OffBench}
	angles := []string{"datum.slope", "gearbox.slope", "front_shaft.slope", "shaft.slope", "pinion.slope",
		"gearbox.plan", "shaft.plan", "pinion.plan", "shaft.phase"}
	others := map[string][]string{"engine.rpm_max": {"3000", "4200"}, "gear.highest": {"0.8", "1"}, "joint.angle_limit": {"15", "22"},
		"pinion.windup_drive": {"1.5"}, "pinion.windup_coast": {"0.5"}, "road.speed_max": {"110"}, "axle.ratio": {"3.7"}, "tyre.radius": {"330"}}
	keys := []string{"engine.rpm_max", "gear.highest", "joint.angle_limit", "pinion.windup_drive", "pinion.windup_coast",
		"road.speed_max", "axle.ratio", "tyre.radius"}
	for range rapid.IntRange(0, 22).Draw(rt, "readings") {
		if rapid.IntRange(0, 3).Draw(rt, "kind") == 0 {
			key := rapid.SampledFrom(keys).Draw(rt, "stated")
			s.read(key, rapid.SampledFrom(others[key]).Draw(rt, "value"), measure.OffBench, basis(measure.Stated))
			continue
		}
		value := rapid.SampledFrom([]string{"0", "1.5", "2.4", "3", "-2.0", "17", "5.25", "-8", "85"}).Draw(rt, "value")
		s.read(rapid.SampledFrom(angles).Draw(rt, "point"), value, rapid.SampledFrom(states).Draw(rt, "state"),
			setup(rapid.IntRange(1, 3).Draw(rt, "setup")), with(rapid.SampledFrom([]string{"", "fine", "coarse"}).Draw(rt, "tool")),
			height(rapid.SampledFrom([]string{"500", "503", "520"}).Draw(rt, "height")))
	}
	return s
}
