package checks

import (
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

var buildRows = []Check{
	{Key: "build.chance", Group: "build", whole: (*engine).buildChance},
}

// judgedFinding is a finding that holds the build back, with the draws that met its limit.
type judgedFinding struct {
	finding Finding
	pass    []bool
}

func (e *engine) judged(f Finding, pass []bool) {
	e.holds = append(e.holds, judgedFinding{f, pass})
}

// buildChance is the share of draws in which every judged limit holds together. The same draws
// serve all findings, so limits that fail for one reason fail once.
func (e *engine) buildChance(c *Check) []Finding {
	f := Finding{Check: c.Key}
	if len(e.holds) == 0 {
		f.Missing = e.lineOf(measure.RideKerb).missing
		f.Advice = Message{Key: MsgTakeMissing}
		return []Finding{f}
	}
	all := make([]bool, drawCount)
	for k := range all {
		all[k] = true
	}
	worst := e.holds[0]
	for _, h := range e.holds {
		for k, ok := range h.pass {
			all[k] = all[k] && ok
		}
		f.Used = union(f.Used, h.finding.Used)
		f.RestsOn = union(f.RestsOn, h.finding.RestsOn)
		f.Assumed = union(f.Assumed, h.finding.Assumed)
		if *h.finding.Chance < *worst.finding.Chance {
			worst = h
		}
	}
	chance := uncertain.Chance(all)
	f.Value, f.Low, f.High, f.Chance = &chance, &chance, &chance, &chance
	w := worst.finding
	if *w.Chance < 1 {
		f.Weakest, f.Shares = w.Weakest, w.Shares
		f.Notes = append(f.Notes, Message{MsgDecidedBy, []any{w.Check, w.Subject, w.State.String()}})
	}
	return []Finding{f}
}
