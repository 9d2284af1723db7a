package remedy_test

import (
	"context"
	"errors"
	"math"
	"reflect"
	"sync/atomic"
	"testing"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// Every remedy of the invented builds, put on the build and run from nothing, makes clear what it is for,
// in every state; a step beyond either end of its span it does not.
func TestRemediesMakeClearWhatTheyAreFor(t *testing.T) {
	for _, name := range []string{"demo.json", "steep.json"} {
		b := invented(t, name)
		for _, x := range solve(t, b).Troubles {
			for _, w := range ways(x) {
				changed, ok := remedy.Apply(b, w.Changes...)
				if !ok {
					t.Fatalf("%s: %v can't be applied", name, w.Changes)
				}
				if !over(x, changed) {
					t.Errorf("%s: %v does not make %s %s %s clear", name, w.Changes, x.Group, x.Check, x.Subject)
				}
			}
		}
	}
}

// over reports that all findings that a trouble names, in all states, are clear or not judged.
func over(x remedy.Trouble, b *measure.Build) bool {
	about := map[[2]string]bool{}
	for _, f := range x.Findings {
		about[[2]string{f.Check, f.Subject}] = true
	}
	clear := 0
	for _, f := range checks.Run(b, nil).Findings {
		if !about[[2]string{f.Check, f.Subject}] {
			continue
		}
		if f.Verdict == checks.Out || f.Verdict == checks.Unsure {
			return false
		}
		if f.Verdict == checks.Clear {
			clear++
		}
	}
	return clear > 0
}

// The smallest amount is the smallest: one step nearer to nothing it is not clear.
func TestTheSmallestChangeIsTheSmallest(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.line("3.0", "6.4", "-1.0") // 3.4° and 7.4°: out at both ends and as a whole
	x := troubleOf(t, s.solve(), "joint.residual", "")
	if len(x.Singles) == 0 {
		t.Fatal("nothing is found")
	}
	seen := 0
	for _, w := range x.Singles {
		c := w.Changes[0]
		k, _ := remedy.KnobOf(c.Knob)
		if len(w.Worsens) > 0 || k.Step == 0 {
			continue
		}
		c.Amount -= math.Copysign(k.Step, c.Amount)
		nearer, ok := remedy.Apply(s.b, c)
		if !ok || over(x, nearer) {
			t.Errorf("%v: a step less, %g, works too", w.Changes, c.Amount)
		}
		seen++
	}
	if seen == 0 {
		t.Error("every remedy worsens something: the test proves nothing")
	}
}

func TestSolveIsPure(t *testing.T) {
	b := invented(t, "steep.json")
	first := solve(t, b)
	again, err := remedy.Solve(context.Background(), b, checks.Run(b, nil))
	if err != nil || !reflect.DeepEqual(first, again) {
		t.Errorf("another prev gives another report (%v)", err)
	}
	if !reflect.DeepEqual(b, invented(t, "steep.json")) {
		t.Error("the build was changed")
	}
}

func TestSolveEndsWithItsContext(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if r, err := remedy.Solve(ctx, invented(t, "demo.json"), nil); !errors.Is(err, context.Canceled) || r != nil {
		t.Errorf("got %v, %v", r, err)
	}
}

// A build of which nothing is wrong has nothing to change.
func TestNothingWrongNothingToChange(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.line("3.0", "4.5", "3.0")
	if r := s.solve(); len(r.Troubles) != 0 {
		t.Errorf("%d troubles, first %+v", len(r.Troubles), r.Troubles[0])
	}
}

// counted is a context that is over once it was asked a number of times, and counts how often it is asked
// after that.
type counted struct {
	context.Context
	left  atomic.Int64
	after atomic.Int64
}

func (c *counted) Err() error {
	if c.left.Add(-1) >= 0 {
		return nil
	}
	c.after.Add(1)
	return context.Canceled
}

// Wherever in the search its context ends, nothing more is judged: Solve asks before each build that it judges,
// so what it asks afterwards is how it finds its way out.
func TestSolveEndsAtOnceWhereverItIs(t *testing.T) {
	b := invented(t, "demo.json")
	whole := &counted{Context: context.Background()}
	whole.left.Store(1 << 40)
	solveIn := func(c *counted) (*remedy.Trouble, error) {
		return remedy.SolveOne(c, b, nil, "joint.angle", "rear", nil)
	}
	if _, err := solveIn(whole); err != nil {
		t.Fatal(err)
	}
	all := 1<<40 - whole.left.Load()
	if all < 100 {
		t.Fatalf("asked only %d times: the test proves nothing", all)
	}
	for n := int64(0); n < all; n += 1 + all/10 {
		c := &counted{Context: context.Background()}
		c.left.Store(n)
		if x, err := solveIn(c); !errors.Is(err, context.Canceled) || x != nil {
			t.Errorf("ended after %d of %d: %v, %v", n, all, x, err)
		}
		if more := c.after.Load(); more > 60 {
			t.Errorf("ended after %d of %d: asked %d times more", n, all, more)
		}
	}
}

// What is asked for one finding is what the whole report says of it, and its progress rises to the end.
func TestOneTroubleIsThatOfTheReport(t *testing.T) {
	b := invented(t, "steep.json")
	last := 0
	told := func(done, of int) {
		if done != last+1 || done > of {
			t.Errorf("told %d of %d after %d", done, of, last)
		}
		last = done
	}
	one, err := remedy.SolveOne(context.Background(), b, nil, "joint.torsional", "", told)
	if err != nil || one == nil || last == 0 {
		t.Fatalf("%v, %v, told %d times", one, err, last)
	}
	if whole := troubleOf(t, solve(t, b), "joint.torsional", ""); !reflect.DeepEqual(*one, whole) {
		t.Errorf("alone %+v, in the report %+v", *one, whole)
	}
	if none, err := remedy.SolveOne(context.Background(), b, nil, "joint.angle", "nowhere", nil); none != nil || err != nil {
		t.Errorf("of nothing: %v, %v", none, err)
	}
}
