package checks

import (
	"yokebook/checks/limits"
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// setting is a number that goes into the sums: what a person picked for this build, else the table's.
func (e *engine) setting(key string) float64 {
	if l := e.limitOf(key); l != nil {
		return l.Value
	}
	return 0
}

// contested is a number that sources dispute: anywhere in the range of the table's row, one cause for
// all that rests on it. A value picked for this build ends the dispute, unless it is a range too.
func (e *engine) contested(key string) *quantity {
	return e.within(key, &cause{key: "disputed|" + key, shape: rectangular, input: key})
}

// unread stands in for a point that nobody read: anywhere in a range of the table. It is the first
// thing to read.
func (e *engine) unread(point, key string) *quantity {
	return e.within(key, &cause{key: "unread|" + point, shape: rectangular, input: point, assumed: true})
}

// within is a number anywhere in the range of a row, moved by one cause.
func (e *engine) within(key string, c *cause) *quantity {
	low, high := e.rangeOf(key)
	if !(high > low) {
		return exact(low)
	}
	return e.number((low+high)/2, []term{{c, (high - low) / 2}}, origin{})
}

// rangeOf is the range of a row, or what a person picked for it.
func (e *engine) rangeOf(key string) (low, high float64) {
	row, _ := limits.Of(key)
	low, high = row.Value, row.Upper
	if own, ok := e.build.Limits[key]; ok {
		if f, ok := own.Value.Float(); ok {
			low, high = f, f
			if f, ok := own.Upper.Float(); ok {
				high = f
			}
		}
	}
	return low, high
}

// conclude judges a finding by the draws that meet all it demands, for checks that make their
// findings themselves. A missing reading leaves it waiting, unless it is out without it. out is the
// advice for that.
func (e *engine) conclude(f *Finding, pass []bool, missing []Missing, out Message) {
	if f.State == (measure.State{}) && e.fromBench(f.Used) {
		f.State = measure.OffBench
	}
	chance := uncertain.Chance(pass)
	f.Verdict = verdictOf(chance)
	switch {
	case f.Verdict == Out:
		f.Advice = out
	case len(missing) > 0:
		f.Verdict, f.Missing, f.Advice = Waiting, missing, Message{Key: MsgTakeMissing}
		return
	case f.Verdict == Unsure:
		f.Advice = e.settle(f.Weakest)
	}
	f.Chance = &chance
	e.judged(*f, pass)
}

// allPass is a draw's verdict before anything was demanded of it.
func allPass() []bool {
	pass := make([]bool, drawCount)
	for k := range pass {
		pass[k] = true
	}
	return pass
}

// rests adds what stands behind a number that a finding was judged by.
func (f *Finding) rests(from origin) {
	f.Used = union(f.Used, from.used)
	f.RestsOn = union(f.RestsOn, from.restsOn)
	f.Assumed = union(f.Assumed, from.assumed)
}

// need is a missing reading that holds in every state; where it has to be taken under the vehicle or
// by looking at it, that is done as it stands.
func need(point string) Missing {
	p, _ := measure.PointOf(point)
	if p.Caution == measure.CautionUnder || p.Group == measure.GroupFit {
		return Missing{Point: point, State: measure.RideKerb}
	}
	return Missing{Point: point, State: measure.OffBench}
}
