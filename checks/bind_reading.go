package checks

import (
	"yokebook/measure"
)

var readingRows = []Check{
	{Key: "reading.setup", Group: "reading", Points: slopes, Unit: "count", whole: (*engine).readingSetup},
	{Key: "reading.spread", Group: "reading", whole: (*engine).readingSpread},
	{Key: "reading.zero", Group: "reading", Points: slopes, Unit: "count", whole: (*engine).readingZero},
	{Key: "reading.state", Group: "reading", Unit: "count", whole: (*engine).readingState},
}

// readingSetup says for each state whether its slopes can be compared: all of one setup, or tied
// together by datum.slope taken in both.
func (e *engine) readingSetup(c *Check) []Finding {
	var out []Finding
	for _, ln := range e.lines {
		if ln.state.Case != "" || ln.predicted {
			continue
		}
		f := Finding{Check: c.Key, State: ln.state, Unit: c.Unit, Verdict: Clear, Missing: ln.datums}
		count := float64(len(ln.older))
		f.Value, f.Low, f.High = &count, &count, &count
		for _, p := range ln.parts {
			if p.slope != nil {
				f.Used = union(f.Used, p.slope.from.used)
			}
			if p.turn != nil {
				f.Used = union(f.Used, p.turn.from.used)
			}
		}
		for _, older := range ln.older {
			f.Notes = append(f.Notes, Message{MsgSetupsBridged, []any{older, ln.setup}})
		}
		if len(ln.datums) > 0 {
			f.Verdict = Waiting
			f.Value, f.Low, f.High = nil, nil, nil
			f.Advice = Message{MsgDatumBoth, []any{ln.datums[0].Setup, ln.setup}}
		}
		out = append(out, f)
	}
	if len(out) == 0 {
		out = append(out, Finding{Check: c.Key, Unit: c.Unit, Verdict: Waiting,
			Missing: e.lineOf(measure.RideKerb).missing, Advice: Message{Key: MsgTakeMissing}})
	}
	return out
}

// readingState counts for each state the readings that don't fit it: ride and load that can't go
// together, records that share an id, values no such part has, heights apart.
func (e *engine) readingState(c *Check) []Finding {
	var states []measure.State
	seen := map[measure.State]bool{}
	add := func(list []measure.Reading) {
		for _, r := range list {
			if s := r.State(); !seen[s] {
				seen[s] = true
				states = append(states, s)
			}
		}
	}
	add(e.readings)
	add(e.disputed)
	var out []Finding
	for _, s := range states {
		out = append(out, e.ofState(c, s))
	}
	if len(out) == 0 {
		out = append(out, Finding{Check: c.Key, Unit: c.Unit, Verdict: Waiting,
			Missing: e.lineOf(measure.RideKerb).missing, Advice: Message{Key: MsgTakeMissing}})
	}
	return out
}

func (e *engine) ofState(c *Check, s measure.State) Finding {
	f := Finding{Check: c.Key, State: s, Unit: c.Unit, Verdict: Clear}
	count := 0.0
	flag := func(v Verdict, m Message) {
		count++
		if f.Verdict != Out {
			f.Verdict = v
		}
		if f.Advice.Key == "" || v == Out && f.Advice.Key != MsgContradiction {
			f.Advice = m
		} else {
			f.Notes = append(f.Notes, m)
		}
	}
	for _, r := range e.readings {
		if r.State() != s {
			continue
		}
		f.Used = append(f.Used, r.ID)
		p, _ := measure.PointOf(r.Point)
		if s.Contradiction() {
			flag(Out, Message{MsgContradiction, []any{s.String()}})
		}
		if v, ok := r.Number(); ok && !p.Plausible(r.Along(v)) {
			flag(Unsure, Message{MsgImplausible, []any{r.Point, r.Along(v), p.Low, p.High}})
		}
	}
	for _, r := range e.disputed {
		if r.State() == s {
			flag(Out, Message{MsgDisputedID, []any{string(r.ID)}})
		}
	}
	for _, ln := range e.lines {
		if ln.state != s {
			continue
		}
		for _, h := range ln.moved {
			f.Notes = append(f.Notes, Message{MsgHeightMoved, []any{h.point, h.mm}})
		}
		for _, h := range ln.heights {
			flag(Unsure, Message{MsgHeights, []any{h.point, h.mm}})
		}
	}
	for _, key := range lengthsOfHeight {
		if t := e.take(key, s); t != nil && t.heightOff > 0 {
			flag(Unsure, Message{MsgHeights, []any{key, t.heightOff}})
		}
	}
	if s.Ride == measure.Droop {
		f.Notes = append(f.Notes, Message{Key: MsgHanging})
	}
	f.Value, f.Low, f.High = &count, &count, &count
	return f
}
