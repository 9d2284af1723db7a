package checks

import (
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// asked gathers what a check asks for at once: each thing with its own limit, all judged by the same
// draws. The one least likely to be met gives the finding its value and limit; the first of equals.
type asked struct {
	e       *engine
	list    []must
	missing []Missing
	notes   []Message
	from    origin  // what else it rests on: a grade, an answer
	doubted Message // why the finding can't be clear whatever the draws say; zero: it can
}

// must is one thing that is asked for.
type must struct {
	q       *quantity
	limit   *Limit
	against *quantity // the limit's value with its doubt; nil: exact
	advice  Message   // when it is missed
}

// read takes a point, and notes it as missing where it was not read.
func (a *asked) read(key string) *quantity {
	q := a.e.bench(key)
	if q == nil {
		a.missing = append(a.missing, need(key))
	}
	return q
}

// readAll takes several points; false when one was not read.
func (a *asked) readAll(keys ...string) ([]*quantity, bool) {
	list, whole := make([]*quantity, len(keys)), true
	for i, key := range keys {
		list[i] = a.read(key)
		whole = whole && list[i] != nil
	}
	return list, whole
}

// ask demands that q meets a limit of the table as it stands.
func (a *asked) ask(q *quantity, key string, advice Message) {
	a.list = append(a.list, must{q: q, limit: a.e.limitOf(key), advice: advice})
}

// askWorked demands that q is, by sense, at least or at most a number that was itself worked out or
// read; key names the table's row behind it.
func (a *asked) askWorked(q *quantity, key, unit, sense string, against *quantity, advice Message) {
	a.list = append(a.list, must{q, a.e.workedLimit(key, against, unit, sense), against, advice})
}

// askStated demands the same of a limit that a maker states.
func (a *asked) askStated(q *quantity, key, unit, sense string, against *quantity, advice Message) {
	limit := statedLimit(key, against, unit)
	limit.Sense = sense
	a.list = append(a.list, must{q, limit, against, advice})
}

// finding judges all that was asked for together.
func (a *asked) finding(c *Check, subject string) Finding {
	f := Finding{Check: c.Key, Subject: subject, Unit: c.Unit, Notes: a.notes}
	if len(a.list) == 0 {
		f.Verdict, f.Missing, f.Advice = Waiting, a.missing, Message{Key: MsgTakeMissing}
		if c.Limit != "" {
			f.Limit = a.e.limitOf(c.Limit)
		}
		return f
	}
	pass, speaker, least := allPass(), 0, 2.0
	for i, m := range a.list {
		if m.q.bad || m.against != nil && m.against.bad {
			f.Verdict, f.Advice = Waiting, Message{Key: MsgNoNumber}
			return f
		}
		met := a.e.meets(m.q, m.limit, m.against)
		for k, ok := range met {
			pass[k] = pass[k] && ok
		}
		if chance := uncertain.Chance(met); chance < least {
			speaker, least = i, chance
		}
	}
	s := a.list[speaker]
	f.fill(s.q)
	f.Unit, f.Limit = s.limit.Unit, s.limit
	if s.against != nil {
		f.decidedBy(a.e.combine("less", 1, func(x, out []float64) { out[0] = x[0] - x[1] }, s.q, s.against)[0])
	}
	f.rests(a.from)
	for _, m := range a.list {
		f.rests(m.q.from)
		if m.against != nil {
			f.rests(m.against.from)
		}
	}
	if a.e.fromBench(f.Used) {
		f.State = measure.OffBench
	}
	a.e.conclude(&f, pass, a.missing, s.advice)
	if f.Verdict == Clear && a.doubted.Key != "" {
		f.Verdict, f.Advice = Unsure, a.doubted
	}
	return f
}
