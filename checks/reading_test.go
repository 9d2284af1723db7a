package checks_test

import (
	"math"
	"slices"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// A finder that shows 0.3 too much reads a slope of 3.1 as 3.4 one way and, turned end for end, as
// 2.8 in the vehicle's sign: θ = (m₁ + m₂)/2, z = (m₁ − m₂)/2, worked apart from this code.
func TestReversalFindsTheZero(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.tool("hand", "0", "0", "0")
	s.b.Instruments[1].Zero = value("0.5")
	s.read("gearbox.slope", "3.4", measure.RideKerb, with("hand"), way(1))
	s.read("shaft.slope", "8.8", measure.RideKerb, with("hand"), way(2)) // truly 9.1
	list := s.run()
	if f := find(t, list, "reading.zero|hand|"); f.Verdict != checks.Unsure || f.Advice.Key != checks.MsgReverse {
		t.Errorf("turned between two parts: %s, %q; want unsure and the reversal asked for", f.Verdict, f.Advice.Key)
	}
	if got := width(find(t, list, "joint.angle|front|ride/kerb")) / 2; math.Abs(got-0.9) > 2e-3 {
		t.Errorf("before the reversal ±%.4f, want ±0.9: twice 0.5 at the 95 %% point", got)
	}

	s.read("gearbox.slope", "2.8", measure.RideKerb, with("hand"), way(2))
	list = s.run()
	f := find(t, list, "joint.angle|front|ride/kerb")
	if math.Abs(*f.Value-6) > 1e-9 || width(f) > 1e-9 {
		t.Errorf("after the reversal %.4f … %.4f, want 6 exactly: 9.1 − 3.1", *f.Low, *f.High)
	}
	z := find(t, list, "reading.zero|hand|")
	i := slices.IndexFunc(z.Notes, func(m checks.Message) bool { return m.Key == checks.MsgZeroFound })
	if z.Verdict != checks.Clear || i < 0 || math.Abs(z.Notes[i].Args[2].(float64)-0.3) > 1e-9 {
		t.Errorf("zero: %s, notes %v; want clear and 0.3 found", z.Verdict, z.Notes)
	}
}

func TestAReversalHoldsForItsSetupOnly(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.tool("hand", "0", "0", "0")
	s.b.Instruments[1].Zero = value("0.5")
	s.read("gearbox.slope", "3.4", measure.RideKerb, with("hand"), way(1))
	s.read("gearbox.slope", "2.8", measure.RideKerb, with("hand"), way(2))
	s.read("gearbox.slope", "3", measure.RideLaden, with("hand"), way(1), setup(2))
	s.read("shaft.slope", "9", measure.RideLaden, with("hand"), way(2), setup(2))
	f := find(t, s.run(), "reading.zero|hand|")
	if f.Verdict != checks.Unsure || f.Advice.Args[1] != 2 {
		t.Errorf("%s, %v; want it due in setup 2", f.Verdict, f.Advice)
	}
}

func TestZeroOfAFinderThatWasNeverTurned(t *testing.T) {
	for name, c := range map[string]struct {
		opts    []option
		verdict checks.Verdict
		note    bool
	}{
		"the same way each time": {[]option{way(1)}, checks.Clear, false},
		"way not said":           {nil, checks.Unsaid, true},
	} {
		s := newBench(t, measure.NewLayout())
		s.tool("hand", "0.1", "0.1", "0.1")
		s.slopes(measure.RideKerb, "3", "6", "3", append(c.opts, with("hand"))...)
		f := find(t, s.run(), "reading.zero|hand|")
		if f.Verdict != c.verdict || has(f.Notes, checks.MsgWayUnsaid) != c.note {
			t.Errorf("%s: %q, notes %v", name, f.Verdict, f.Notes)
		}
	}
}

func TestRepeatsThatDisagree(t *testing.T) {
	for _, c := range []struct {
		name    string
		values  []string
		verdict checks.Verdict
		advice  string
	}{
		{"two within the tool's doubt", []string{"6.0", "6.3"}, checks.Clear, ""},
		{"two within two display steps", []string{"6.0", "6.2"}, checks.Clear, ""},
		{"two far apart", []string{"6.0", "7.0"}, checks.Unsure, checks.MsgThirdReading},
		{"four, one far", []string{"3.1", "3.2", "3.1", "4.6"}, checks.Unsure, checks.MsgOutlier},
		{"three within two steps", []string{"3.1", "3.1", "3.2"}, checks.Clear, ""},
	} {
		s := newBench(t, measure.NewLayout())
		s.tool("hand", "0.1", "0.1", "0.1")
		var last measure.ID
		for _, v := range c.values {
			last = s.read("shaft.slope", v, measure.RideKerb, with("hand"))
		}
		f := find(t, s.run(), "reading.spread|shaft.slope|ride/kerb")
		if f.Verdict != c.verdict || f.Advice.Key != c.advice {
			t.Errorf("%s: %s, %q; want %s, %q", c.name, f.Verdict, f.Advice.Key, c.verdict, c.advice)
		}
		if c.advice == checks.MsgOutlier && (f.Weakest == nil || *f.Weakest.Reading != last || len(f.Used) != 4) {
			t.Errorf("%s: marks %+v of %d; want the last marked and all four counted", c.name, f.Weakest, len(f.Used))
		}
	}
	s := newBench(t, measure.NewLayout())
	s.slopes(measure.RideKerb, "3", "6", "3")
	for _, f := range s.run() {
		if f.Check == "reading.spread" {
			t.Errorf("%s without repeats", f.Key())
		}
	}
}
