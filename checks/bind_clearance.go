package checks

import (
	"fmt"

	"yokebook/measure"
)

// clearances says for each obstacle how much room the tube keeps over the whole travel. Without an
// obstacle it waits for the first.
func (e *engine) clearances(c *Check) []Finding {
	list := e.obstacles()
	if len(list) == 0 {
		return []Finding{{Check: c.Key, Unit: c.Unit, Verdict: Waiting, Limit: e.clearanceLimit(), Advice: Message{Key: MsgTakeMissing},
			Missing: []Missing{{Point: "obstacle.gap", State: measure.RideKerb}, need("obstacle.station"), need("obstacle.side")}}}
	}
	var out []Finding
	for _, o := range list {
		out = append(out, e.clearance(c, o))
	}
	return out
}

func (e *engine) clearance(c *Check, o obstacle) Finding {
	f := Finding{Check: c.Key, Subject: o.tag, Unit: c.Unit, Limit: e.clearanceLimit()}
	r := e.roomAt(o)
	od := "tube.od"
	if r.front {
		od = "front_shaft.tube_od"
	}
	outer := e.bench(od)
	if r.q == nil || outer == nil {
		if f.Missing = r.missing; outer == nil {
			f.Missing = append(f.Missing, need(od))
		}
		f.Verdict, f.Advice = Waiting, Message{Key: MsgTakeMissing}
		return f
	}
	q := e.leftOver(r.q, outer)
	f.Predicted = r.guessed
	f.fill(q)
	f.Notes = append(f.Notes, Message{MsgNearestState, []any{r.at.String()}})
	if q.bad {
		f.Verdict, f.Advice = Waiting, Message{Key: MsgNoNumber}
		return f
	}
	e.conclude(&f, e.meets(q, f.Limit, nil), r.missing, Message{Key: MsgMoreRoom})
	return f
}

// leftOver is the room beside a tube.
func (e *engine) leftOver(room, outer *quantity) *quantity {
	return e.combine("clearance", 1, func(x, out []float64) { out[0] = x[0] - x[1]/2 }, room, outer)[0]
}

// clearanceLimit is the room that must be left, with what the engine takes of it when it rolls.
func (e *engine) clearanceLimit() *Limit {
	l := e.limitOf("shaft.clearance")
	roll := e.setting("shaft.engine_roll")
	l.Value += roll
	l.Source = fmt.Sprintf("%s; %g mm of it for the engine rolling", l.Source, roll)
	return l
}
