package remedy

import (
	"math"
	"slices"

	"yokebook/checks"
)

func sqrt(x float64) float64 { return math.Sqrt(x) }

// told puts a way that works into what a person is told of it.
func (s *search) told(t *Trouble, w way) Remedy {
	r := Remedy{}
	v := s.v
	for _, c := range s.changes(w.at) {
		amount := c.dial.steps[c.step]
		r.Changes = append(r.Changes, Change{c.dial.knob.Key, amount, c.dial.knob.Unit})
		for _, cost := range c.dial.knob.costs(v, amount) {
			if !slices.ContainsFunc(r.Costs, func(m checks.Message) bool { return m.Key == cost.Key && slices.Equal(m.Args, cost.Args) }) {
				r.Costs = append(r.Costs, cost)
			}
		}
	}
	if w.at.b < 0 {
		d := s.dialAt(w.at.a)
		r.From, r.To = d.steps[w.from], d.steps[w.to]
		r.FromOpen, r.ToOpen = w.from == 0, w.to == len(d.steps)-1
	}
	after := s.whole[w.at].Findings
	r.Chance = chanceOf(after)
	s.effects(t, &r, after)
	return r
}

// effects lists what a remedy does to findings that it is not for.
func (s *search) effects(t *Trouble, r *Remedy, findings []checks.Finding) {
	after := byKey(findings)
	for _, f := range s.base.Findings {
		g, there := after[f.Key()]
		if f.Check == "build.chance" || t.about(f) || !there {
			continue
		}
		switch a, b := rank(f.Verdict), rank(g.Verdict); {
		case b > a:
			r.Worsens = append(r.Worsens, Effect{f, g})
		case b < a:
			r.Improves = append(r.Improves, Effect{f, g})
		}
	}
	for _, g := range findings {
		if _, there := s.before[g.Key()]; !there && rank(g.Verdict) > 1 && !t.about(g) {
			r.Worsens = append(r.Worsens, Effect{After: g})
		}
	}
}
