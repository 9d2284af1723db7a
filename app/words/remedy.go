package words

import (
	"math"
	"strings"

	"yokebook/checks"
	"yokebook/checks/remedy"
)

// RemedyText is a remedy in words, each member ready to be shown; "" or nil where it does not apply.
type RemedyText struct {
	Changes  []string // "turn the axle (wedge) so that the front end of the pinion comes up by 0.7°"
	Span     string   // "+0.7° to +2.7°", of a single change
	Worsens  []string
	Improves []string
	Costs    []string
}

// Remedy puts a remedy into words.
func (l *Language) Remedy(r remedy.Remedy) RemedyText {
	t := RemedyText{Costs: l.Messages(r.Costs)}
	for _, c := range r.Changes {
		t.Changes = append(t.Changes, l.Turn(c))
	}
	if len(r.Changes) == 1 {
		t.Span = l.span(r)
	}
	for _, e := range r.Worsens {
		t.Worsens = append(t.Worsens, l.effect(e))
	}
	for _, e := range r.Improves {
		t.Improves = append(t.Improves, l.effect(e))
	}
	return t
}

// Knob returns what a knob is called.
func (l *Language) Knob(key string) string { return l.Say("knob." + key) }

// Turn says which way and how far a knob is turned.
func (l *Language) Turn(c remedy.Change) string {
	way := "more"
	if c.Amount < 0 {
		way = "less"
	}
	return l.Say("turn."+c.Knob+"."+way, math.Abs(c.Amount))
}

// Trouble says what a trouble is about: a check with its subject, or a group of checks together.
func (l *Language) Trouble(t remedy.Trouble) string {
	if t.Check == "" {
		return l.Say("remedy.together", l.Say("checks."+t.Group))
	}
	return l.Check(t.Check, t.Subject)
}

// Reading says what to read next.
func (l *Language) Reading(r remedy.Reading) string {
	return strings.Join(l.Messages(r.Reasons), "; ")
}

// Settled says which finding a reading may decide, and how likely.
func (l *Language) Settled(s remedy.Settled) string {
	return l.Say("remedy.settles", l.Title(s.Finding), s.Chance)
}

// span writes the amounts between which a change works.
func (l *Language) span(r remedy.Remedy) string {
	unit := r.Changes[0].Unit
	key := "remedy.span"
	switch {
	case r.FromOpen && r.ToOpen:
		key = "remedy.span_all"
	case r.FromOpen:
		key = "remedy.span_low"
	case r.ToOpen:
		key = "remedy.span_high"
	}
	return l.Say(key, l.signed(r.From, unit), l.signed(r.To, unit))
}

// signed writes a number with its sign and unit.
func (l *Language) signed(x float64, unit string) string {
	if x > 0 {
		return "+" + l.Number(x, unit, 0)
	}
	return l.Number(x, unit, 0)
}

// effect says what becomes of another finding.
func (l *Language) effect(e remedy.Effect) string {
	title := l.Title(e.After)
	if e.Before.Check == "" {
		return l.Say("remedy.effect_new", title, string(e.After.Verdict))
	}
	was, is := l.Finding(e.Before), l.Finding(e.After)
	if was.Value == "" || is.Value == "" || was.Value == is.Value {
		return l.Say("remedy.effect", title, verdictKey(e.Before), verdictKey(e.After))
	}
	return l.Say("remedy.effect_said", title, verdictKey(e.Before), verdictKey(e.After), was.Value, is.Value)
}

// Becomes says what becomes of a finding, without its title.
func (l *Language) Becomes(e remedy.Effect) string {
	if e.Before.Check == "" {
		return l.Say("remedy.becomes_new", verdictKey(e.After))
	}
	was, is := l.Finding(e.Before), l.Finding(e.After)
	if was.Value == "" || is.Value == "" || was.Value == is.Value {
		return l.Say("remedy.becomes", verdictKey(e.Before), verdictKey(e.After))
	}
	return l.Say("remedy.becomes_said", verdictKey(e.Before), verdictKey(e.After), was.Value, is.Value)
}

// verdictKey is a verdict as a gap takes it.
func verdictKey(f checks.Finding) string {
	if f.Verdict == checks.Unsaid {
		return "unsaid"
	}
	return string(f.Verdict)
}
