package remedy_test

import (
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/optimize"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// Of a line whose joints are out, a simplex that knows nothing of the solver looks for amounts of pinion and
// gearbox between the steps, over full runs and from two sides: it finds nothing that is less work by more
// than the step. Source: the method of Nelder and Mead as gonum's optimize has it.
func TestSimplexFindsNothingBetterThanTheSolver(t *testing.T) {
	compared := 0
	for _, line := range [][3]string{{"-1.0", "4.0", "1.5"}, {"2.0", "7.5", "5.8"}, {"0.0", "4.6", "7.4"}} {
		s := newBench(t, measure.NewLayout())
		s.line(line[0], line[1], line[2])
		for _, x := range solve(t, s.b).Troubles {
			if x.Check != "joint.residual" && x.Check != "" {
				continue
			}
			found := math.Inf(1)
			for _, w := range ways(x) {
				if worse(x, w) == 0 {
					found = min(found, work(w.Changes...))
				}
			}
			least := simplexBest(t, s.b, x)
			const step = 0.1 * math.Sqrt2 // both knobs one step further
			if least < found-step {
				t.Errorf("line %v, %s %s: the simplex finds %.3f of work, the solver %.3f", line, x.Group, x.Check, least, found)
			}
			if !math.IsInf(least, 1) {
				compared++
			}
		}
	}
	if compared < 3 {
		t.Errorf("the simplex found a way in %d cases only: the test proves little", compared)
	}
}

// simplexBest is the least work that a simplex meets which ends a trouble and makes no other joint finding worse.
func simplexBest(t *testing.T, b *measure.Build, x remedy.Trouble) float64 {
	t.Helper()
	joints := func(check string) bool { return strings.HasPrefix(check, "joint.") }
	run := checks.RunOnly(b, nil, joints)
	before := map[string]checks.Verdict{}
	for _, f := range run.Findings {
		before[f.Key()] = f.Verdict
	}
	least := math.Inf(1)
	worth := func(deg []float64) float64 {
		changes := []remedy.Change{{Knob: "pinion.angle", Amount: deg[0]}, {Knob: "gearbox.angle", Amount: deg[1]}}
		if w := work(changes...); w >= least {
			return 1e3 + w
		}
		changed, ok := remedy.Apply(b, changes...)
		if !ok {
			return 1e6
		}
		findings := checks.RunOnly(changed, run, joints).Findings
		if !fine(x, findings, before) {
			return 1e3 + excess(x, findings)
		}
		least = work(changes...)
		return least
	}
	for _, from := range [][]float64{{2, -2}, {-2, 2}} {
		_, err := optimize.Minimize(optimize.Problem{Func: worth}, from, &optimize.Settings{FuncEvaluations: 50}, &optimize.NelderMead{SimplexSize: 1})
		if err != nil {
			t.Fatal(err)
		}
	}
	return least
}

// excess is by how much the worst finding of a trouble is over its limit, in limits.
func excess(x remedy.Trouble, findings []checks.Finding) float64 {
	most := 0.0
	for _, f := range findings {
		for _, o := range x.Findings {
			if f.Check == o.Check && f.Subject == o.Subject && f.High != nil && f.Limit != nil && f.Limit.Sense == "max" {
				most = max(most, *f.High/f.Limit.Value)
			}
		}
	}
	return most
}
