package words

import (
	"math"
	"slices"
	"strings"

	"yokebook/checks"
)

// FindingText is a finding in words, each member ready to be shown; "" or nil where it does not apply.
type FindingText struct {
	Title    string   // "joint angle, front joint, at ride height, own weight"
	Verdict  string   // "clear, predicted"
	Value    string   // "3.48°", cut to its doubt
	Interval string   // "± 0.08°", or "(3.40 … 3.55°)" where it is lopsided
	Limit    string   // "at most 3°"
	Chance   string   // "chance that the limit is met: 62 %"
	Why      string   // the weakest input
	Missing  []string // readings that it waits for
	Advice   string
	Notes    []string // side view only, disputed limits …
	Source   string   // where the limit comes from, and why this build uses another
}

// Finding puts a finding into words.
func (l *Language) Finding(f checks.Finding) FindingText {
	t := FindingText{
		Title:   l.Title(f),
		Verdict: l.VerdictOf(f),
		Limit:   l.limit(f.Limit),
		Why:     l.why(f.Weakest),
		Missing: l.Missing(f.Missing),
		Advice:  l.Message(f.Advice),
		Notes:   l.notes(f),
		Source:  l.source(f.Limit),
	}
	if f.Chance != nil && f.Limit != nil {
		t.Chance = l.Say("finding.chance", chance(f))
	}
	t.Value, t.Interval = l.value(f)
	return t
}

// chance is the chance of a finding that has one. All of some thousand draws alike are no certainty: that
// is left to what has no doubt, such as counts and answers.
func chance(f checks.Finding) float64 {
	const unseen = 1e-4
	if f.Low == nil || f.High == nil || *f.Low == *f.High {
		return *f.Chance
	}
	return min(max(*f.Chance, unseen), 1-unseen)
}

// Brief puts a finding into one line: verdict, value with its doubt, limit.
func (l *Language) Brief(f checks.Finding) string {
	value, interval := l.value(f)
	line := l.VerdictOf(f)
	for _, more := range []string{strings.TrimSpace(value + " " + interval), l.limit(f.Limit)} {
		if more != "" {
			line += " · " + more
		}
	}
	if f.Verdict == checks.Waiting && len(f.Missing) > 0 {
		line += " · " + strings.Join(l.Missing(f.Missing), ", ")
	}
	return line
}

// Title says what a finding is about: check, subject, state.
func (l *Language) Title(f checks.Finding) string {
	name := l.Check(f.Check, f.Subject)
	if state := f.State.String(); state != "" {
		name = l.Say("finding.title", name, state)
	}
	return name
}

// VerdictOf returns the verdict of a finding with what it rests on: "clear, predicted",
// "clear if engine speed is true".
func (l *Language) VerdictOf(f checks.Finding) string {
	if f.Verdict != checks.Clear {
		return l.Verdict(f.Verdict)
	}
	word := l.Verdict(f.Verdict)
	if f.Predicted {
		word = l.Say("verdict.predicted", word)
	}
	switch len(f.RestsOn) {
	case 0:
	case 1:
		word = l.Say("verdict.if_one", word, f.RestsOn[0])
	default:
		word = l.Say("verdict.if_all", word, l.List(f.RestsOn, l.Point))
	}
	return word
}

// List joins words: "a, b and c".
func (l *Language) List(keys []string, name func(string) string) string {
	if len(keys) == 0 {
		return ""
	}
	said := make([]string, len(keys))
	for i, k := range keys {
		said[i] = name(k)
	}
	if len(said) == 1 {
		return said[0]
	}
	last := len(said) - 1
	return l.Say("list", strings.Join(said[:last], ", "), said[last])
}

// lopsided is the share by which the two sides of an interval may differ and still be said as ±.
const lopsided = 0.2

// value returns the value cut to its doubt and the interval around it.
func (l *Language) value(f checks.Finding) (value, interval string) {
	if f.Value == nil {
		return "", ""
	}
	if f.Low == nil || f.High == nil {
		return l.said(f, 0), ""
	}
	up, down := *f.High-*f.Value, *f.Value-*f.Low
	doubt := math.Max(up, down)
	switch {
	case !(doubt > 0):
		return l.said(f, 0), ""
	case math.Abs(up-down) <= lopsided*doubt && !crosses(f, doubt):
		return l.said(f, doubt), "± " + l.inUnits(f.Unit, func(unit string, size float64) string {
			return l.digits(doubt/size, doubt/size, unit) + l.unitAfter(unit)
		})
	}
	return l.said(f, (*f.High-*f.Low)/2), l.Say("finding.around", l.Between(*f.Low, *f.High, f.Unit))
}

// crosses reports a limit that lies outside the interval, but within the value ± doubt: said like that, a
// finding that is out would seem undecided.
func crosses(f checks.Finding, doubt float64) bool {
	if f.Limit == nil {
		return false
	}
	edges := []float64{f.Limit.Value}
	if f.Limit.Upper != nil {
		edges = append(edges, *f.Limit.Upper)
	}
	return slices.ContainsFunc(edges, func(edge float64) bool {
		within := *f.Low <= edge && edge <= *f.High
		return !within && math.Abs(edge-*f.Value) <= doubt
	})
}

// said writes the value, in a phrase where the check has one: "ends within 0.4°".
func (l *Language) said(f checks.Finding, doubt float64) string {
	value := l.Number(*f.Value, f.Unit, doubt)
	if key := "value." + f.Check; l.Has(key) {
		return l.Say(key, value)
	}
	return value
}

func (l *Language) limit(limit *checks.Limit) string {
	if limit == nil {
		return ""
	}
	value := l.Number(limit.Value, limit.Unit, 0)
	if limit.Sense == "between" && limit.Upper != nil {
		return l.Say("limit.between", value, l.Number(*limit.Upper, limit.Unit, 0))
	}
	return l.Say("limit."+limit.Sense, value)
}

func (l *Language) source(limit *checks.Limit) string {
	switch {
	case limit == nil:
		return ""
	case limit.Reason != "":
		return l.Say("limit.chosen", l.Source(limit.Source), limit.Reason)
	}
	return l.Source(limit.Source)
}

func (l *Language) why(w *checks.Weakest) string {
	switch {
	case w == nil:
		return ""
	case w.Reading == nil:
		return l.Say("finding.weakest_shared", w.Input, w.Share)
	}
	return l.Say("finding.weakest", w.Input, w.Share, string(*w.Reading))
}

// Missing names readings that something waits for: "pinion slope, hanging".
func (l *Language) Missing(list []checks.Missing) []string {
	var out []string
	for _, m := range list {
		switch {
		case m.Setup > 0:
			out = append(out, l.Say("finding.missing_setup", m.Point, m.State.String(), m.Setup))
		case m.State.String() == "":
			out = append(out, l.Point(m.Point))
		default:
			out = append(out, l.Say("finding.missing", m.Point, m.State.String()))
		}
	}
	return out
}

// notes says what the finding took for granted, then the notes that it brings. What names the
// assumed points stands in for the note that only says that there are some.
func (l *Language) notes(f checks.Finding) []string {
	var plan, other []string
	for _, key := range f.Assumed {
		if strings.HasSuffix(key, ".plan") {
			plan = append(plan, key)
		} else {
			other = append(other, key)
		}
	}
	var out []string
	if len(plan) > 0 {
		out = append(out, l.Say("finding.side_view", l.List(plan, l.Point)))
	}
	if len(other) > 0 {
		out = append(out, l.Say("finding.assumed", l.List(other, l.Point)))
	}
	for _, m := range f.Notes {
		said := m.Key == checks.MsgSideView && len(plan) > 0 || m.Key == checks.MsgPhaseAssumed && len(other) > 0
		if s := l.Message(m); s != "" && !said {
			out = append(out, s)
		}
	}
	return out
}
