package checks_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks"
	"yokebook/measure"
)

// twelve is ANSI B92.1, 14 teeth 12/24, 30° flat root: 31.75 over 26.78, in a hub of 32.49 over 27.52
// (basic dimensions of the standard, worked apart from this code).
func twelve(t testing.TB) *bench {
	s := newBench(t, measure.NewLayout())
	s.bare("input_shaft.splines", "14", "input_shaft.major", "31.70", "input_shaft.minor", "26.78", "input_shaft.length", "40",
		"disc_hub.splines", "14", "disc_hub.major", "32.49", "disc_hub.minor", "27.55", "disc_hub.length", "25")
	return s
}

func TestSplinesOfOneSizeAgree(t *testing.T) {
	s := twelve(t)
	f := s.says("spline.input||bench", checks.Clear)
	if !has(f.Notes, checks.MsgTryByHand) {
		t.Errorf("notes %v; want: try by hand, lash not measured", f.Notes)
	}
}

// Common practice, no source: a hub of 14 teeth and a shaft of 24.
func TestUnequalCountsAreOutWhateverElseAgrees(t *testing.T) {
	s := twelve(t).without("input_shaft.splines")
	s.bare("input_shaft.splines", "24")
	f := s.says("spline.input||bench", checks.Out)
	if *f.Value != 10 || f.Unit != "count" || f.Advice.Key != checks.MsgOtherSpline || has(f.Notes, checks.MsgTryByHand) {
		t.Errorf("%v %s, advice %v, notes %v", *f.Value, f.Unit, f.Advice, f.Notes)
	}
	// Nothing but the counts is needed to know that.
	s = newBench(t, measure.NewLayout())
	s.bare("slip_male.splines", "16", "slip_female.splines", "17")
	s.says("spline.slip||bench", checks.Out)
}

func TestSplinesThatDontAgree(t *testing.T) {
	for _, row := range []struct {
		name          string
		point, value  string
		want          checks.Verdict
		advice, limit string
	}{
		{"a shaft larger than its hub", "input_shaft.major", "33.1", checks.Out, checks.MsgSplineTight, "spline.overlap"},
		{"a hub of the next size", "disc_hub.major", "35.3", checks.Out, checks.MsgSplineLoose, "spline.loose"},
		{"a hair's breadth of overlap", "disc_hub.major", "31.56", checks.Unsure, checks.MsgReadAgain, "spline.overlap"},
		{"equal to the hair: two caliper readings", "disc_hub.major", "31.70", checks.Clear, "", ""},
		{"a hub of which hardly anything carries", "disc_hub.length", "6", checks.Out, checks.MsgSplineShort, "spline.share"},
	} {
		s := twelve(t).without(row.point)
		s.bare(row.point, row.value)
		f := s.says("spline.input||bench", row.want)
		if f.Advice.Key != row.advice || row.limit != "" && f.Limit.Key != row.limit {
			t.Errorf("%s: advice %v by %v", row.name, f.Advice, f.Limit)
		}
	}
	s := twelve(t).without("disc_hub.minor")
	f := s.says("spline.input||bench", checks.Waiting)
	waitsFor(t, f, "disc_hub.minor")
}

func TestSplineChecksFollowTheLayout(t *testing.T) {
	inTail := measure.NewLayout()
	inTail.Slip = "gearbox"
	noClutch := measure.NewLayout()
	noClutch.Clutch = "none"
	for _, row := range []struct {
		l     measure.Layout
		there string
	}{{measure.NewLayout(), "spline.input spline.slip"}, {inTail, "spline.input spline.output"}, {noClutch, "spline.slip"}} {
		var got []string
		for _, f := range newBench(t, row.l).run() {
			if slices.Contains([]string{"spline.input", "spline.output", "spline.slip"}, f.Check) {
				got = append(got, f.Check)
			}
		}
		if strings.Join(got, " ") != row.there {
			t.Errorf("%+v: %q, want %s", row.l, got, row.there)
		}
	}
}

func TestIdentityNamesAllAndSaysWhatSettles(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.bare("slip_male.splines", "13", "slip_male.major", "44.20")
	f := s.says("spline.identity|slip_male|bench", checks.Unsaid)
	var named string
	for _, n := range f.Notes {
		if n.Key == checks.MsgSplineByTips {
			named += n.Args[0].(string) + "; "
		}
	}
	if !strings.Contains(named, "ANSI B92.1 8/16, 13 T") || !strings.Contains(named, "DIN 5480 45×3×13") {
		t.Errorf("named %q", named)
	}
	if !slices.ContainsFunc(f.Notes, func(m checks.Message) bool {
		return m.Key == checks.MsgSplineSettle && m.Args[0] == "slip_male.over_pins"
	}) || !has(f.Notes, checks.MsgOddCount) {
		t.Errorf("notes %v; want pins to settle it, and the odd count", f.Notes)
	}
	if got := len(checks.SplineCandidates(s.b, "slip_male")); float64(got) != *f.Value || got < 2 {
		t.Errorf("%d candidates for drawing, %v in the finding", got, *f.Value)
	}
	s.bare("slip_male.over_pins", "50.26", "slip_male.pin_dia", "6.00")
	after := find(t, s.run(), "spline.identity|slip_male|bench")
	if *after.Value >= *f.Value || *after.Value < 1 {
		t.Errorf("%v candidates, with pins %v", *f.Value, *after.Value)
	}
	waitsFor(t, s.says("spline.identity|slip_female|", checks.Waiting), "slip_female.splines")
	if list := checks.SplineCandidates(s.b, "slip_female"); list != nil {
		t.Errorf("nothing read: %v", list)
	}
	s.bare("slip_female.splines", "13", "slip_female.minor", "90")
	if f := find(t, s.run(), "spline.identity|slip_female|bench"); *f.Value != 0 || !has(f.Notes, checks.MsgSplineUnknown) {
		t.Errorf("a bore of 90 with 13 teeth: %v, %v", *f.Value, f.Notes)
	}
}

func TestStrengthOfSplines(t *testing.T) {
	s := twelve(t)
	waitsFor(t, s.says("spline.capacity|input_shaft|", checks.Waiting), "engine.torque_max")
	s.plate("engine.torque_max", "200", "input_shaft.hardness", "60.0", "disc_hub.hardness", "35.0")
	f := s.says("spline.capacity|input_shaft|bench", checks.Clear)
	if !has(f.Notes, checks.MsgStressShares) {
		t.Errorf("notes %v", f.Notes)
	}
	// Ten times the torque is too much for any steel.
	s.plate("engine.torque_max", "2000")
	strong := s.without("engine.torque_max")
	strong.plate("engine.torque_max", "2500")
	strong.says("spline.capacity|input_shaft|bench", checks.Out)
	// A hardness that nobody read may be any: it decides.
	soft := s.without("engine.torque_max", "input_shaft.hardness", "disc_hub.hardness")
	soft.plate("engine.torque_max", "250")
	f = soft.says("spline.capacity|input_shaft|bench", checks.Unsure)
	if f.Weakest == nil || f.Weakest.Input != "input_shaft.hardness" || f.Advice.Key != checks.MsgReadAssumed {
		t.Errorf("weakest %v, advice %v", f.Weakest, f.Advice)
	}
}

// With little length teeth and flanks decide, and of two halves the softer one.
func TestTheSofterHalfDecides(t *testing.T) {
	worth := func(shaft, hub string) float64 {
		s := twelve(t).without("disc_hub.length")
		s.bare("disc_hub.length", "8")
		s.plate("engine.torque_max", "200", "input_shaft.hardness", shaft, "disc_hub.hardness", hub)
		return number(t, find(t, s.run(), "spline.capacity|input_shaft|bench").Value)
	}
	hard, soft := worth("60.0", "60.0"), worth("10.0", "10.0")
	if hard < 2*soft {
		t.Errorf("two hard halves are worth %g, two soft ones %g", hard, soft)
	}
	for _, pair := range [][2]string{{"60.0", "10.0"}, {"10.0", "60.0"}} {
		if got := worth(pair[0], pair[1]); math.Abs(got-soft) > 1e-9 {
			t.Errorf("%s and %s HRC are worth %g, want %g as two soft halves", pair[0], pair[1], got, soft)
		}
	}
}

// The same spline read in inches is judged the same.
func TestSplinesInInches(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		major := float64(rapid.IntRange(3100, 3260).Draw(rt, "major")) / 100
		one, two := twelve(t).without("input_shaft.major"), twelve(t).without("input_shaft.major")
		mm, _ := measure.FloatValue(major)
		in, _ := measure.FloatValue(major / 25.4)
		one.bare("input_shaft.major", "31")
		two.bare("input_shaft.major", "31")
		one.b.Readings[len(one.b.Readings)-1].Value = mm
		last := &two.b.Readings[len(two.b.Readings)-1]
		last.Value, last.Unit = in, "in"
		a, b := find(t, one.run(), "spline.input||bench"), find(t, two.run(), "spline.input||bench")
		if a.Verdict != b.Verdict || math.Abs(*a.Value-*b.Value) > 1e-9 || math.Abs(*a.Chance-*b.Chance) > 1e-3 {
			rt.Fatalf("%g mm: %s %v, in inches %s %v", major, a.Verdict, *a.Value, b.Verdict, *b.Value)
		}
	})
}
