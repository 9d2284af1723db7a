package checks

import (
	"math"
	"slices"
	"sort"
	"sync"

	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// RunOnly is Run for the checks that only picks: its findings are those that Run gives of them. A Run
// that is handed its result finds the work of prev too.
func RunOnly(b *measure.Build, prev *Result, only func(check string) bool) *Result {
	e := newEngine(b, prev)
	e.memo.older = e.prev
	return &Result{Findings: e.findings(only), memo: e.memo}
}

// Glance judges the checks that only picks without drawing: it moves each cause of doubt by one
// standard deviation, as JCGM 100:2008, 5.1, does (from memory), and takes what comes of it as
// normal. That is some twenty times as fast as Run and good for looking where an answer may lie; a
// verdict near 95 % can differ from Run's, which is the one that counts.
func Glance(b *measure.Build, only func(check string) bool) []Finding {
	e := emptyEngine(b)
	e.lean = true
	e.gather()
	return e.findings(only)
}

// Sketch judges like Run by the first draws of each column only, no more than there are: a chance of 95 %
// from 256 draws is off by 1.4 % as often as not. It takes columns from prev, which may be nil, and nothing
// else. Unlike a glance it holds where numbers are far from linear, such as where joints cancel.
func Sketch(b *measure.Build, prev *Result, draws int, only func(check string) bool) []Finding {
	e := emptyEngine(b)
	e.short = min(max(draws, 1), drawCount)
	for m := memoOf(prev); m != nil; m = m.older {
		e.prev = &memo{columns: m.columns, older: e.prev}
	}
	e.gather()
	return e.findings(only)
}

func memoOf(r *Result) *memo {
	if r == nil {
		return nil
	}
	return r.memo
}

// ownTogether makes one cause of what a reading is off by on its own: step, accuracy, placing. No other
// number shares these, so that a glance loses nothing.
func ownTogether(terms []term) []term {
	var out []term
	for _, t := range terms {
		c := t.cause
		if c.reading == "" || c.assumed {
			out = append(out, t)
			continue
		}
		size := float64(t.scale * c.shape.Std())
		key := "own|" + string(c.reading)
		i := slices.IndexFunc(out, func(o term) bool { return o.cause.key == key })
		if i < 0 {
			out = append(out, term{&cause{key: key, shape: normal, input: c.input, reading: c.reading}, math.Abs(size)})
			continue
		}
		out[i].scale = math.Sqrt(float64(out[i].scale*out[i].scale) + float64(size*size))
	}
	return out
}

// std is the standard deviation of a quantity by its causes.
func (q *quantity) std() float64 {
	if q.sigma == nil {
		square := 0.0
		for _, s := range q.shifts {
			up, down := s.up-q.best, s.down-q.best
			square += (float64(up*up) + float64(down*down)) / 2
		}
		sigma := math.Sqrt(square)
		q.sigma = &sigma
	}
	return *q.sigma
}

// stdOfMargin is that of the difference of two quantities, causes that both rest on counted once.
func stdOfMargin(q, against *quantity) float64 {
	if against == nil {
		return q.std()
	}
	square := 0.0
	add := func(c *cause) {
		up, down := q.shifted(c)
		upper, lower := against.shifted(c)
		up, down = up-q.best-upper+against.best, down-q.best-lower+against.best
		square += (float64(up*up) + float64(down*down)) / 2
	}
	seen := map[string]bool{}
	for _, s := range q.shifts {
		seen[s.cause.key] = true
		add(s.cause)
	}
	for _, s := range against.shifts {
		if !seen[s.cause.key] {
			add(s.cause)
		}
	}
	return math.Sqrt(square)
}

// bell is the normal distribution in rising order, one value for each draw.
var bell = sync.OnceValue(func() *[drawCount]float64 {
	b := new([drawCount]float64)
	for k := range b {
		b[k] = uncertain.NormalQuantile((float64(k) + 0.5) / drawCount)
	}
	return b
})

// glanced says which draws would meet a limit if the margin over it were normal. They stand in rising
// order, so those that do are a run of them.
func glanced(q *quantity, l *Limit, against *quantity) []bool {
	edge := l.Value
	if against != nil {
		edge = against.best
	}
	sigma := stdOfMargin(q, against)
	meets := func(k int) bool { return l.holds(q.best+float64(sigma*bell()[k]), edge) }
	pass := make([]bool, drawCount)
	within := func(k int) int { // −1 below, 0 in, 1 beyond what meets it
		switch v := q.best + float64(sigma*bell()[k]); {
		case meets(k):
			return 0
		case l.Sense == "min", (l.Sense == "between" || l.Sense == "equal") && v < edge:
			return -1
		}
		return 1
	}
	first := sort.Search(drawCount, func(k int) bool { return within(k) >= 0 })
	last := sort.Search(drawCount, func(k int) bool { return within(k) > 0 })
	for k := first; k < last; k++ {
		pass[k] = true
	}
	return pass
}
