package checks_test

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"reflect"
	"testing"

	"yokebook/checks"
	"yokebook/checks/limits"
	"yokebook/measure"
)

// As readings come in, are corrected and struck, and limits are picked, each run is handed the one
// before. It finds what a run that is handed nothing finds, and leaves what was found before as it was.
func TestRunsOneAfterTheOtherFindWhatEachFindsAlone(t *testing.T) {
	for i, b := range demoBuilds(t) {
		t.Run(b.Title, func(t *testing.T) {
			rnd := rand.New(rand.NewPCG(uint64(i), 1))
			prev, before, judged := checks.Run(b, nil), checks.Run(b, nil).Findings, 0
			for step := range 12 {
				next, what := changed(b, rnd, step)
				alone, older := checks.Run(next, nil).Findings, prev
				if step%3 == 0 { // as a search for ways out hands on the work of some checks
					prev = checks.RunOnly(next, prev, func(check string) bool { return check == "joint.residual" || check == "slip.travel" })
				}
				handed := checks.Run(next, prev)
				if len(handed.Findings) != len(alone) {
					t.Fatalf("step %d, %s: %d findings after the run before, %d alone", step, what, len(handed.Findings), len(alone))
				}
				for k, f := range alone {
					if !reflect.DeepEqual(f, handed.Findings[k]) {
						t.Fatalf("step %d, %s: after the run before %+v, alone %+v", step, what, handed.Findings[k], f)
					}
					if f.Chance != nil {
						judged++
					}
				}
				if !reflect.DeepEqual(older.Findings, before) {
					t.Fatalf("step %d, %s: what was found before has changed", step, what)
				}
				b, prev, before = next, handed, alone
			}
			if judged == 0 {
				t.Error("nothing was judged: the test has lost its point")
			}
		})
	}
}

// changed is a build with one more record, and what that is. The build itself stays as it is.
func changed(b *measure.Build, rnd *rand.Rand, step int) (*measure.Build, string) {
	next := *b
	id := measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", 0xfff000+step))
	r := b.Readings[rnd.IntN(len(b.Readings))]
	switch rnd.IntN(4) {
	case 0:
		next.Strikes = append(b.Strikes[:len(b.Strikes):len(b.Strikes)], measure.Strike{ID: id, Reading: r.ID, Reason: "read on the wrong part"})
		return &next, "struck " + r.Point
	case 1:
		if next.Limits = maps.Clone(b.Limits); next.Limits == nil {
			next.Limits = map[string]measure.LimitChoice{}
		}
		row, pick := limits.Table[rnd.IntN(len(limits.Table))], measure.LimitChoice{Reason: "as the maker of the part has it"}
		for row.Sense == limits.Input && rnd.IntN(4) > 0 { // rather one that something is judged by
			row = limits.Table[rnd.IntN(len(limits.Table))]
		}
		other := 0.6 + 0.2*float64(rnd.IntN(5))
		pick.Value, _ = measure.FloatValue(row.Value * other)
		if row.Upper != 0 {
			pick.Upper, _ = measure.FloatValue(row.Upper * other)
		}
		next.Limits[row.Key] = pick
		return &next, "picked " + row.Key
	}
	what := "read again " + r.Point
	if rnd.IntN(2) == 0 {
		r.Replaces, what = r.ID, "corrected "+r.Point
	}
	if r.Basis == measure.Stated && rnd.IntN(2) == 0 { // the same number with more doubt
		r.Basis = measure.Estimated
	} else if f, ok := r.Value.Float(); ok && f != float64(int(f)) { // counts and answers stay whole
		r.Value, _ = measure.FloatValue(f * (1 + 0.04*float64(rnd.IntN(5)-2)))
	}
	r.ID = id
	next.Readings = append(b.Readings[:len(b.Readings):len(b.Readings)], r)
	return &next, what
}

// A limit that is read again as the same number, but with more doubt, is judged anew.
func TestLimitOfMoreDoubtIsJudgedAnew(t *testing.T) {
	run := func(of measure.Basis, prev *checks.Result) (*checks.Result, checks.Finding) {
		s := newBench(t, measure.NewLayout())
		s.bare("engine_gearbox.mass", "400", "sling.legs", "2", "sling.angle", "60")
		s.read("sling.limit", "250.0", measure.OffBench, basis(of))
		result := checks.Run(s.b, prev)
		return result, find(t, result.Findings, "lift.slings||bench")
	}
	result, stated := run(measure.Stated, nil)
	_, handed := run(measure.Estimated, result)
	_, alone := run(measure.Estimated, nil)
	if stated.Verdict != checks.Clear || alone.Verdict != checks.Unsure {
		t.Fatalf("%q, then %q: the test has lost its point", stated.Verdict, alone.Verdict)
	}
	if !reflect.DeepEqual(handed, alone) {
		t.Errorf("after the run before %+v, alone %+v", handed, alone)
	}
}

// Slings that are too weak but not too flat are told so in the second run too: what met the angle was
// not mixed up with what met the load.
func TestWeakSlingsStayWeakInTheNextRun(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.bare("engine_gearbox.mass", "400", "sling.legs", "2", "sling.angle", "60")
	s.plate("sling.limit", "100.0")
	first := checks.Run(s.b, nil)
	for _, result := range []*checks.Result{first, checks.Run(s.b, first)} {
		if f := find(t, result.Findings, "lift.slings||bench"); f.Verdict != checks.Out || f.Advice.Key != checks.MsgStrongerSling {
			t.Errorf("%s, %v", f.Verdict, f.Advice)
		}
	}
}
