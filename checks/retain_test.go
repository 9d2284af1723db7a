package checks_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks"
	"yokebook/measure"
)

// flangeNut is an M20×1.5 of 10.9 at 250 N·m behind a slip spline of 38 over 32; about 1100 N·m on the shaft.
func flangeNut(t testing.TB) *bench {
	s := newBench(t, measure.NewLayout())
	s.bare("slip_male.major", "40.00", "slip_male.minor", "35.00", "slip_female.minor", "36.00", "slip_male.flank", "30.0")
	s.plate("engine.torque_max", "300", "gear.lowest", "4.00000", "retainer.thread", "20.000", "retainer.pitch", "1.5000", "retainer.torque", "250.0")
	s.grade("10.9")
	return s
}

func (s *bench) grade(mark string) {
	s.t.Helper()
	s.n++
	id := measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", s.n))
	s.b.Readings = append(s.b.Readings, measure.Reading{ID: id, Point: "retainer.grade", Value: measure.TextValue(mark),
		Basis: measure.Stated, Ride: measure.Bench, Setup: 1})
}

func noteOf(f checks.Finding, key string) []any {
	i := slices.IndexFunc(f.Notes, func(m checks.Message) bool { return m.Key == key })
	if i < 0 {
		return nil
	}
	return f.Notes[i].Args
}

// 250 N·m at 0.20 on 20 mm clamp 62.5 kN, give or take 30 % (worked apart from this code); proof load
// of M20×1.5 10.9 is 225.8 kN (ISO 898-1, worked apart from this code).
func TestClampOfTheFlangeNut(t *testing.T) {
	f := flangeNut(t).says("retainer.clamp||bench", checks.Clear)
	if math.Abs(*f.Value-62500) > 1 || math.Abs(*f.Low-62500*0.73) > 100 || !has(f.Notes, checks.MsgRetainerCare) {
		t.Errorf("clamps %v (%v … %v)", *f.Value, *f.Low, *f.High)
	}
	force := noteOf(f, checks.MsgSlipForce)
	if force == nil || f.Limit.Key != "retainer.clamp" || math.Abs(f.Limit.Value-1.5*force[0].(float64)) > 1e-6 {
		t.Errorf("thrust %v against %v", force, f.Limit)
	}
	for _, row := range []struct {
		name, point, value, advice, limit string
		want                              checks.Verdict
	}{
		{"hand tight", "retainer.torque", "20.0", checks.MsgMoreClamp, "retainer.clamp", checks.Out},
		{"the mean would do, the low end not", "retainer.torque", "73.0", checks.MsgLowEndFails, "", checks.Unsure},
		{"stretched", "retainer.torque", "1400.0", checks.MsgLessTorque, "retainer.proof", checks.Out},
		{"stretched if it is slippery", "retainer.torque", "900.0", checks.MsgDisputedInput, "retainer.proof", checks.Unsure},
		{"too little thread", "retainer.reach", "9.00", checks.MsgLongerReach, "retainer.reach", checks.Out},
	} {
		f := flangeNut(t).change(row.point, row.value).says("retainer.clamp||bench", row.want)
		if f.Advice.Key != row.advice || row.limit != "" && f.Limit.Key != row.limit {
			t.Errorf("%s: %v by %v", row.name, f.Advice, f.Limit)
		}
	}
	waitsFor(t, flangeNut(t).without("retainer.torque").says("retainer.clamp||", checks.Waiting), "retainer.torque")
	waitsFor(t, flangeNut(t).without("retainer.grade").says("retainer.clamp||bench", checks.Waiting), "retainer.grade")
	odd := flangeNut(t).without("retainer.grade")
	odd.grade("soft")
	f = odd.says("retainer.clamp||bench", checks.Waiting)
	if noteOf(f, checks.MsgGradeUnknown) == nil {
		t.Errorf("an unknown grade passes in silence: %v", f.Notes)
	}
}

// Whatever the torque, a clear finding means that the low end of the clamp holds the thrust.
func TestNeverClearUnlessTheLowEndHolds(t *testing.T) {
	clear := 0
	rapid.Check(t, func(rt *rapid.T) {
		s := flangeNut(t)
		v, _ := measure.FloatValue(float64(rapid.IntRange(40, 400).Draw(rt, "torque")))
		for i, r := range s.b.Readings {
			if r.Point == "retainer.torque" {
				s.b.Readings[i].Value = v
			}
		}
		f := find(t, s.run(), "retainer.clamp||bench")
		if f.Limit.Key == "retainer.clamp" && f.Verdict == checks.Clear {
			clear++
			if low := *f.Value * 0.7; low < f.Limit.Value {
				rt.Fatalf("clear at %v N, low end %v, asked for %v", *f.Value, low, f.Limit.Value)
			}
		}
	})
	if clear == 0 {
		t.Error("nothing was clear: the test has gone blind")
	}
}

func TestWeldedStudIsOutWhateverTheTorque(t *testing.T) {
	s := flangeNut(t)
	s.bare("retainer.kind", "2")
	f := s.says("retainer.clamp||bench", checks.Out)
	if f.Advice.Key != checks.MsgNotRecoverable || f.Value == nil || f.Limit.Key != "retainer.welded" {
		t.Errorf("%v against %v, advice %v", f.Value, f.Limit, f.Advice)
	}
	s = newBench(t, measure.NewLayout())
	s.bare("retainer.kind", "2")
	s.says("retainer.clamp||bench", checks.Out)
	s.change("retainer.kind", "1").says("retainer.clamp||", checks.Waiting)
}
