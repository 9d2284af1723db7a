package checks

import (
	"strings"

	"yokebook/measure"
)

// fitRows are the questions that only a person at the vehicle can answer, one check for each point.
var fitRows = func() []Check {
	var rows []Check
	for _, p := range measure.Points {
		if strings.HasPrefix(p.Key, "fit.") {
			rows = append(rows, Check{Key: p.Key, Group: "fit", Points: []string{p.Key}, Limit: "fit.answer", perPart: answered(p)})
		}
	}
	return rows
}()

// answered judges a person's answers: one no among them is out, and without any it waits. The
// answer of any state counts, the newest is not preferred: a no is struck by whoever put it right.
func answered(p measure.Point) func(e *engine, subject string) answer {
	return func(e *engine, _ string) answer {
		if !p.In(e.build.Layout) {
			return answer{lacking: true}
		}
		var from origin
		least := 1.0
		for _, r := range e.readings {
			if v, ok := r.Number(); ok && r.Point == p.Key {
				from = from.join(originOf(r))
				least = min(least, v)
			}
		}
		if len(from.used) == 0 {
			return answer{missing: []Missing{need(p.Key)}}
		}
		return answer{q: e.number(least, nil, from), advice: Message{MsgPutRight, []any{p.Key}}}
	}
}
