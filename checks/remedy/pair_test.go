package remedy_test

import (
	"math"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// work is the effort of changes: the root of the sum of squares of usual amounts.
func work(changes ...remedy.Change) float64 {
	square := 0.0
	for _, c := range changes {
		k, _ := remedy.KnobOf(c.Knob)
		square += (c.Amount / k.Usual) * (c.Amount / k.Usual)
	}
	return math.Sqrt(square)
}

// worse counts what a remedy makes worse among the checks of its own kind that hold a build back.
func worse(x remedy.Trouble, w remedy.Remedy) int {
	n := 0
	for _, e := range w.Worsens {
		if strings.HasPrefix(e.After.Check, x.Group+".") && e.After.Check != "joint.least_angle" {
			n++
		}
	}
	return n
}

// The pair is never worse than the best single: it makes no more findings worse, and with as many it is
// less work.
func TestThePairIsNeverWorseThanTheBestSingle(t *testing.T) {
	pairs := 0
	builds := []*measure.Build{invented(t, "demo.json"), invented(t, "steep.json")}
	for _, f := range families {
		s := newBench(t, measure.NewLayout())
		f.build(s)
		builds = append(builds, s.b)
	}
	for i, b := range builds {
		for _, x := range solve(t, b).Troubles {
			if x.Pair == nil {
				continue
			}
			pairs++
			if len(x.Pair.Changes) != 2 || x.Pair.Changes[0].Amount == 0 || x.Pair.Changes[1].Amount == 0 {
				t.Errorf("build %d: pair %v", i, x.Pair.Changes)
			}
			if len(x.Singles) == 0 {
				continue
			}
			best := x.Singles[0]
			a, c := worse(x, *x.Pair), worse(x, best)
			if a > c || a == c && work(x.Pair.Changes...) >= work(best.Changes...) {
				t.Errorf("build %d, %s %s: pair %v worsens %d at %.3f, single %v %d at %.3f", i, x.Check, x.Subject,
					x.Pair.Changes, a, work(x.Pair.Changes...), best.Changes, c, work(best.Changes...))
			}
		}
	}
	if pairs < 5 {
		t.Errorf("only %d pairs were found", pairs)
	}
}

// Of a line whose joints are out, all settings of pinion and gearbox are judged in full on a grid of a
// fifth of a degree: none that makes the joint findings clear is less work than what the solver says, give
// or take the step.
func TestGridFindsNothingBetterThanTheSolver(t *testing.T) {
	paired := 0
	for _, line := range [][3]string{{"3.0", "5.2", "-0.6"}, {"-1.0", "4.0", "1.5"}, {"2.0", "7.5", "5.8"}, {"0.0", "4.0", "8.0"}, {"0.0", "4.6", "7.4"}} {
		s := newBench(t, measure.NewLayout())
		s.line(line[0], line[1], line[2])
		for _, x := range solve(t, s.b).Troubles {
			if x.Check == "joint.least_angle" {
				continue
			}
			found := math.Inf(1)
			for _, w := range ways(x) {
				if worse(x, w) == 0 {
					found = min(found, work(w.Changes...))
				}
			}
			if x.Pair != nil && work(x.Pair.Changes...) == found {
				paired++
			}
			best, at := gridBest(s.b, x, found)
			const step = 0.1 * math.Sqrt2 // both knobs one step further
			if best < found-step {
				t.Errorf("line %v, %s %s: %v is %.3f of work, the solver's is %.3f", line, x.Check, x.Subject, at, best, found)
			}
			if math.IsInf(best, 1) != math.IsInf(found, 1) && !math.IsInf(best, 1) {
				t.Errorf("line %v, %s %s: the solver finds nothing, the grid %v", line, x.Check, x.Subject, at)
			}
		}
	}
	if paired < 3 {
		t.Errorf("only %d of the best were pairs: the test proves little", paired)
	}
}

// ways are all remedies of a trouble, singles and pair.
func ways(x remedy.Trouble) []remedy.Remedy {
	list := x.Singles[:len(x.Singles):len(x.Singles)]
	if x.Pair != nil {
		list = append(list, *x.Pair)
	}
	return list
}

// gridBest is the least work on the grid that ends a trouble and makes no other joint finding worse; settings
// of more work than most are left out.
func gridBest(b *measure.Build, x remedy.Trouble, most float64) (best float64, at []remedy.Change) {
	before := map[string]checks.Verdict{}
	joints := func(check string) bool { return strings.HasPrefix(check, "joint.") }
	run := checks.RunOnly(b, nil, joints)
	for _, f := range run.Findings {
		before[f.Key()] = f.Verdict
	}
	best = math.Inf(1)
	for p := -30; p <= 30; p++ {
		for g := -30; g <= 30; g++ {
			changes := []remedy.Change{{Knob: "pinion.angle", Amount: float64(p) / 5}, {Knob: "gearbox.angle", Amount: float64(g) / 5}}
			if w := work(changes...); w >= best || w >= most {
				continue
			}
			changed, ok := remedy.Apply(b, changes...)
			if ok && fine(x, checks.RunOnly(changed, run, joints).Findings, before) {
				best, at = work(changes...), changes
			}
		}
	}
	return best, at
}

// fine reports findings of which the trouble's are clear and no other is worse than before.
func fine(x remedy.Trouble, findings []checks.Finding, before map[string]checks.Verdict) bool {
	bad := map[checks.Verdict]int{checks.Out: 2, checks.Unsure: 1}
	about := map[string]bool{}
	for _, f := range x.Findings {
		about[f.Check+"|"+f.Subject] = true
	}
	for _, f := range findings {
		switch {
		case about[f.Check+"|"+f.Subject]:
			if bad[f.Verdict] > 0 {
				return false
			}
		case f.Check != "joint.least_angle" && bad[f.Verdict] > bad[before[f.Key()]]:
			return false
		}
	}
	return true
}
