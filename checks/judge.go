package checks

import (
	"math"
	"strings"

	"yokebook/checks/limits"
	"yokebook/measure"
)

// limitOf is the limit of a key for this build: the default, or what a person picked with a reason.
func (e *engine) limitOf(key string) *Limit {
	row, ok := limits.Of(key)
	if !ok {
		return nil
	}
	l := &Limit{Key: key, Value: row.Value, Unit: row.Unit, Sense: string(row.Sense), Source: row.Source}
	if row.Sense == limits.Between {
		l.Upper = &row.Upper
	}
	if own, ok := e.build.Limits[key]; ok {
		if f, ok := own.Value.Float(); ok {
			l.Value, l.Reason = f, own.Reason
		}
		if f, ok := own.Upper.Float(); ok && l.Upper != nil {
			l.Upper = &f
		}
	}
	return l
}

// given is a number that the judging goes by, from the same table.
func given(key string) float64 {
	row, _ := limits.Of(key)
	return row.Value
}

// picked reports a limit that a person chose for this build.
func (e *engine) picked(key string) bool {
	return !e.build.Limits[key].Value.IsZero()
}

// rounding is how near, as a part of the limit, two numbers tie: what the last bits of a cosine cost.
const rounding = 1e-9

// meets says for each draw whether the limit is met; a tie meets it. against stands in for the
// limit's value where that was itself read. The answer is kept for later runs: never write into it.
func (e *engine) meets(q *quantity, l *Limit, against *quantity) []bool {
	if q.lean || against != nil && against.lean {
		return glanced(q, l, against)
	}
	sizes, parts := []float64{l.Value}, [][16]byte{q.sig}
	if l.Upper != nil {
		sizes = append(sizes, *l.Upper)
	}
	if against != nil {
		parts = append(parts, against.sig)
	}
	sig := signature("meets|"+l.Sense, sizes, parts...)
	pass, ok := e.memo.passes[sig]
	for m := e.prev; m != nil && !ok; m = m.older {
		pass, ok = m.passes[sig]
	}
	if !ok {
		pass = metBy(q, l, against)
	}
	e.memo.passes[sig] = pass
	return pass
}

func metBy(q *quantity, l *Limit, against *quantity) []bool {
	pass := make([]bool, drawCount)
	for k := range pass {
		v, edge := q.at(k), l.Value
		if against != nil {
			edge = against.at(k)
		}
		pass[k] = l.holds(v, edge)
	}
	return pass
}

// holds reports whether a number meets a limit whose value stands at edge.
func (l *Limit) holds(v, edge float64) bool {
	near := float64(rounding * math.Abs(edge))
	switch l.Sense {
	case "min":
		return v >= edge-near
	case "between":
		return v >= edge-near && v <= *l.Upper+near
	case "equal":
		return math.Abs(v-edge) <= near
	}
	return v <= edge+near
}

// verdictOf turns a chance into a verdict.
func verdictOf(chance float64) Verdict {
	sure := given("verdict.chance")
	switch {
	case chance >= sure:
		return Clear
	case chance <= 1-sure:
		return Out
	}
	return Unsure
}

// fill writes a quantity into a finding: value, interval, what it rests on, what decides it.
func (f *Finding) fill(q *quantity) {
	if q == nil || q.bad {
		return
	}
	value := q.best
	low, high := q.interval()
	f.Value, f.Low, f.High = &value, &low, &high
	f.Used = q.from.used
	f.RestsOn = q.from.restsOn
	f.Assumed = q.from.assumed
	if !q.lean {
		f.decidedBy(q)
	}
	if sideView(q) {
		f.Notes = append(f.Notes, Message{Key: MsgSideView})
	}
	for _, p := range q.from.assumed {
		if p == "shaft.phase" || p == "front_shaft.phase" {
			f.Notes = append(f.Notes, Message{Key: MsgPhaseAssumed})
			break
		}
	}
}

// noShare is a part of the variance that no reading can better.
const noShare = 1e-4

// decidedBy writes into a finding what adds to the doubt of q, which it is judged by.
func (f *Finding) decidedBy(q *quantity) {
	list := q.shares()
	f.Weakest, f.Shares = weakestOf(list), nil
	for _, s := range list {
		f.Shares = append(f.Shares, named(s))
	}
}

// weakestOf names the input with the largest share. A plan angle or a phase that nobody read comes
// before all others, unless it has next to no part in it: reading it is the first thing to do.
func weakestOf(list []share) *Weakest {
	if len(list) == 0 {
		return nil
	}
	pick := list[0]
	for _, s := range list {
		if s.assumed && s.part > noShare && seenFromAbove(s.input) {
			pick = s
			break
		}
	}
	w := named(pick)
	return &w
}

func named(s share) Weakest {
	w := Weakest{Input: s.input, Share: s.part}
	if s.reading != "" {
		id := s.reading
		w.Reading = &id
	}
	return w
}

// seenFromAbove reports the angles that a side view leaves out: a plan angle or a yoke phase.
func seenFromAbove(point string) bool {
	return strings.HasSuffix(point, ".plan") || strings.HasSuffix(point, ".phase")
}

// settle says what would settle an undecided finding: its weakest input.
func (e *engine) settle(w *Weakest) Message {
	if w == nil {
		return Message{}
	}
	for _, in := range e.build.Instruments {
		if w.Input == in.ID+".zero" {
			return Message{MsgZeroAgain, []any{in.ID}}
		}
	}
	for _, r := range e.readings {
		if w.Reading == nil || r.ID != *w.Reading {
			continue
		}
		if r.Basis == measure.Stated {
			return Message{MsgStateFiner, []any{w.Input}}
		}
		return Message{MsgReadAgain, []any{w.Input, r.State().String()}}
	}
	if _, ok := limits.Of(w.Input); ok {
		return Message{MsgDisputedInput, []any{w.Input}}
	}
	if p, ok := measure.PointOf(w.Input); ok && p.Basis == measure.Stated {
		return Message{MsgStateAssumed, []any{w.Input}}
	}
	return Message{MsgReadAssumed, []any{w.Input}}
}
