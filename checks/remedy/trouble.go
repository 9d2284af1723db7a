package remedy

import (
	"slices"

	"yokebook/checks"
)

// silent are groups that no knob of a workshop is for: readings are to be read again.
var silent = []string{"build", "reading", "fit"}

// disputed are checks that sources dispute: they hold nothing back when a group is solved together.
var disputed = []string{"joint.least_angle", "shaft.half_critical"}

// Asks reports a finding that can be asked about: it is out or unsure, and not about readings or answers.
func Asks(f checks.Finding) bool {
	c, _ := checks.CheckOf(f.Check)
	return (f.Verdict == checks.Out || f.Verdict == checks.Unsure) && !slices.Contains(silent, c.Group)
}

// troubles gathers what is out or unsure by check and subject, before them each group that has several.
func (s *search) troubles() []Trouble {
	var ones, groups []Trouble
	for _, f := range s.base.Findings {
		if !Asks(f) {
			continue
		}
		c, _ := checks.CheckOf(f.Check)
		ones = gather(ones, Trouble{Group: c.Group, Check: f.Check, Subject: f.Subject}, f)
		if !slices.Contains(disputed, f.Check) {
			groups = gather(groups, Trouble{Group: c.Group}, f)
		}
	}
	several := groups[:0:0]
	for _, g := range groups {
		if slices.ContainsFunc(g.Findings, func(f checks.Finding) bool {
			return f.Check != g.Findings[0].Check || f.Subject != g.Findings[0].Subject
		}) {
			several = append(several, g)
		}
	}
	return append(several, ones...)
}

func gather(list []Trouble, t Trouble, f checks.Finding) []Trouble {
	i := slices.IndexFunc(list, func(o Trouble) bool { return o.Group == t.Group && o.Check == t.Check && o.Subject == t.Subject })
	if i < 0 {
		i, list = len(list), append(list, t)
	}
	list[i].Findings = append(list[i].Findings, f)
	return list
}

// about reports a finding that must be clear for the trouble to be over.
func (t *Trouble) about(f checks.Finding) bool {
	if t.Check != "" {
		return f.Check == t.Check && f.Subject == t.Subject
	}
	return slices.ContainsFunc(t.Findings, func(o checks.Finding) bool { return o.Check == f.Check && o.Subject == f.Subject })
}

// served reports a knob that can do something about it.
func (t *Trouble) served(k *Knob) bool {
	return slices.ContainsFunc(t.Findings, func(f checks.Finding) bool { return k.serves(f.Check) })
}

// within reports knobs that together serve all of it: others can't end it.
func (t *Trouble) within(knobs ...*Knob) bool {
	return !slices.ContainsFunc(t.Findings, func(f checks.Finding) bool {
		return !slices.ContainsFunc(knobs, func(k *Knob) bool { return k.serves(f.Check) })
	})
}

// over reports a trouble that is over: what is judged of it is clear, and nothing of it waits that did
// not wait before.
func (t *Trouble) over(findings []checks.Finding, before map[string]checks.Finding) bool {
	clear := false
	for _, f := range findings {
		if !t.about(f) {
			continue
		}
		switch f.Verdict {
		case checks.Clear:
			clear = true
		case checks.Waiting:
			if before[f.Key()].Verdict != checks.Waiting {
				return false
			}
		case checks.Out, checks.Unsure:
			return false
		}
	}
	return clear
}

// margin is how far the worst finding of a trouble is from clear, as a share of its limit; positive when
// clear. It shows a search which way to go where nothing works yet.
func (t *Trouble) margin(findings []checks.Finding) float64 {
	worst, any := 0.0, false
	for _, f := range findings {
		if !t.about(f) || f.Verdict == checks.Unsaid || f.Verdict == checks.Waiting && f.Value == nil {
			continue
		}
		m, ok := marginOf(f)
		if ok && (!any || m < worst) {
			worst, any = m, true
		}
	}
	return worst
}

func marginOf(f checks.Finding) (float64, bool) {
	if f.Limit == nil || f.Value == nil || f.Low == nil || f.High == nil {
		return 0, false
	}
	l := f.Limit
	below, above := l.Value-*f.High, *f.Low-l.Value
	scale := max(abs(l.Value), 1)
	switch l.Sense {
	case "min":
		return above / scale, true
	case "between":
		return min(above, *l.Upper-*f.High) / scale, true
	case "equal":
		return -abs(*f.Value - l.Value), true
	}
	return below / scale, true
}

func abs(x float64) float64 { return max(x, -x) }

// rank orders verdicts by how bad they are.
func rank(v checks.Verdict) int {
	switch v {
	case checks.Out:
		return 3
	case checks.Unsure:
		return 2
	case checks.Waiting:
		return 1
	}
	return 0
}

// byKey finds findings by their key.
func byKey(findings []checks.Finding) map[string]checks.Finding {
	m := make(map[string]checks.Finding, len(findings))
	for _, f := range findings {
		m[f.Key()] = f
	}
	return m
}
