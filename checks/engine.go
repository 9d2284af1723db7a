package checks

import (
	"slices"
	"strings"
	"sync"

	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// engine carries one run: the build, what counts of it, and the work of earlier runs.
type engine struct {
	build    *measure.Build
	readings []measure.Reading            // current ones, sorted by id
	byPoint  map[string][]measure.Reading // the same by point, in the same order
	roams    map[measure.ID]bool          // those that hold in one state only
	disputed []measure.Reading
	memo     *memo
	prev     *memo
	lines    []*line
	holds    []judgedFinding
	taken    map[place]*taken            // what take found
	heights  map[measure.State]*quantity // of the hub, once asked for
	means    map[measure.State]height    // what stateHeight found
	turned   map[laying]turning          // what reversalOf found
	tyre     *rolling                    // what rollingRadius found
	moves    *motion                     // how the axle moves, once asked for
	drawn    *model                      // the line drawn through readings, once made
	stroke   *stroke                     // of the sliding part, once worked out
	wound    map[measure.Case]*woundBy   // wind-up of a case, once asked for
	lean     bool                        // no draws: see Glance
	short    int                         // draws of a sketch; 0: all
}

// memo keeps work by signature, so that a run after one new reading only computes what it touches.
type memo struct {
	columns    map[string][]float64
	quantities map[[16]byte][]*quantity
	passes     map[[16]byte][]bool
	older      *memo // of a run that this one was a part of
}

func newMemo() *memo {
	return &memo{columns: map[string][]float64{}, quantities: map[[16]byte][]*quantity{}, passes: map[[16]byte][]bool{}}
}

// column returns the unit draws of a cause.
func (e *engine) column(c *cause) []float64 {
	col, ok := e.drawnColumn(c)
	if !ok {
		col = uncertain.Column(c.key, c.shape)
		e.memo.columns[columnKey(c)] = col
	}
	return col
}

func columnKey(c *cause) string { return c.key + "|" + shapeText(c.shape) }

// drawnColumn returns a column that was drawn before, in this run or in an earlier one.
func (e *engine) drawnColumn(c *cause) ([]float64, bool) {
	key := columnKey(c)
	col, ok := e.memo.columns[key]
	for m := e.prev; m != nil && !ok; m = m.older {
		if col, ok = m.columns[key]; ok {
			e.memo.columns[key] = col
		}
	}
	return col, ok
}

// drawColumns draws the columns that are still missing for some terms beside each other, which is a
// quarter of the work when a build is opened. Each follows from its key alone, so that nothing depends
// on which is ready first.
func (e *engine) drawColumns(terms []term) {
	var missing []*cause
	for _, t := range terms {
		if _, ok := e.drawnColumn(t.cause); !ok && t.scale != 0 {
			missing = append(missing, t.cause)
		}
	}
	if len(missing) < 2 {
		return
	}
	columns := make([][]float64, len(missing))
	var all sync.WaitGroup
	for i, c := range missing {
		all.Go(func() { columns[i] = uncertain.Column(c.key, c.shape) })
	}
	all.Wait()
	for i, c := range missing {
		e.memo.columns[columnKey(c)] = columns[i]
	}
}

func (e *engine) recall(sig [16]byte) ([]*quantity, bool) {
	if q, ok := e.memo.quantities[sig]; ok {
		return q, true
	}
	for m := e.prev; m != nil; m = m.older {
		if q, ok := m.quantities[sig]; ok {
			e.memo.quantities[sig] = q
			return q, true
		}
	}
	return nil, false
}

// term is a cause with the size of its unit draw in the unit of the number it moves.
type term struct {
	cause *cause
	scale float64
}

// number makes a quantity that is linear in its causes.
func (e *engine) number(best float64, terms []term, from origin) *quantity {
	terms = gather(terms)
	if e.lean {
		terms = ownTogether(terms)
	}
	var name strings.Builder
	name.WriteString("number")
	sizes := append(make([]float64, 0, len(terms)+1), best)
	for _, t := range terms {
		for _, part := range [...]string{t.cause.key, shapeText(t.cause.shape), t.cause.input, string(t.cause.reading)} {
			name.WriteByte('|')
			name.WriteString(part)
		}
		sizes = append(sizes, t.scale)
	}
	writeOrigin(&name, from)
	sig := signature(name.String(), sizes)
	if q, ok := e.recall(sig); ok {
		return q[0]
	}
	q := &quantity{best: best, from: from, sig: sig, bad: !finite(best), lean: e.lean}
	if !e.lean {
		e.drawColumns(terms)
	}
	for _, t := range terms {
		if t.scale == 0 {
			continue
		}
		if !e.lean {
			e.draw(q, t)
		}
		step := float64(t.scale * t.cause.shape.Std())
		q.shifts = append(q.shifts, shift{t.cause, best + step, best - step})
	}
	e.memo.quantities[sig] = []*quantity{q}
	return q
}

// draws is how many draws of each column count.
func (e *engine) draws() int {
	if e.short > 0 {
		return e.short
	}
	return drawCount
}

// draw adds the draws of one term to those of q.
func (e *engine) draw(q *quantity, t term) {
	col := e.column(t.cause)[:e.draws()]
	if q.draws == nil {
		q.draws = make([]float64, e.draws())
		for k := range q.draws {
			q.draws[k] = q.best
		}
	}
	for k, u := range col {
		q.draws[k] += float64(t.scale * u)
	}
}

// gather adds up the terms of one cause, in the order in which causes first appear.
func gather(terms []term) []term {
	var out []term
	for _, t := range terms {
		i := slices.IndexFunc(out, func(o term) bool { return o.cause.key == t.cause.key })
		if i < 0 {
			out = append(out, t)
			continue
		}
		out[i].scale += t.scale
	}
	return out
}

// formula works out numbers from numbers, and puts them into out.
type formula func(x, out []float64)

// combine computes outs numbers from args by f, at the best values, for every draw, and with each
// cause one standard deviation up and down. name says everything about f that args do not. Draws are
// worked out beside each other, so f must write to nothing but out: see combineOwn.
func (e *engine) combine(name string, outs int, f formula, args ...*quantity) []*quantity {
	return e.combineOwn(name, onAll(outs, len(args)), func() formula { return f }, args...)
}

// onAll lets each of outs numbers rest on all of n args.
func onAll(outs, n int) [][]int {
	all := make([]int, n)
	for i := range all {
		all[i] = i
	}
	uses := make([][]int, outs)
	for o := range uses {
		uses[o] = all
	}
	return uses
}

// combineOwn is combine for outputs that each rest on some of the args only, uses[o] lists them, and
// for formulas that keep numbers of their own: each worker makes itself one.
func (e *engine) combineOwn(name string, uses [][]int, own func() formula, args ...*quantity) []*quantity {
	outs := len(uses)
	sigs := make([][16]byte, len(args))
	for i, a := range args {
		sigs[i] = a.sig
	}
	sig := signature("combine|"+name, nil, sigs...)
	if q, ok := e.recall(sig); ok {
		return q
	}
	f, x, y := own(), make([]float64, len(args)), make([]float64, outs)
	result := make([]*quantity, outs)
	for i, a := range args {
		x[i] = a.best
	}
	f(x, y)
	for o := range result {
		result[o] = &quantity{best: y[o], bad: !finite(y[o]), lean: e.lean}
		for _, i := range uses[o] {
			result[o].from = result[o].from.join(args[i].from)
		}
		result[o].sig = signature("output", []float64{float64(o)}, sig)
	}
	if !e.lean {
		drawAll(e.draws(), result, own, args)
	}
	e.shift(result, f, args, x, y)
	e.memo.quantities[sig] = result
	return result
}

func writeOrigin(to *strings.Builder, o origin) {
	for _, id := range o.used {
		to.WriteString("|" + string(id))
	}
	for _, p := range o.restsOn {
		to.WriteString("|?" + p)
	}
	for _, p := range o.assumed {
		to.WriteString("|~" + p)
	}
}
