package take

import (
	"slices"

	"yokebook/app/logbook"
	"yokebook/checks"
)

// Line is one line of the list of findings: a heading or a finding.
type Line struct {
	Group   string // of the heading; "" for a finding and for the heading of all that is not begun
	Of      int    // how many findings follow the heading
	Later   bool   // the heading stands over what nobody began to read
	Finding *checks.Finding
	Built   bool // stands for the change between what is ordered and what was made
}

// filters are what the list of findings can be cut down to, in the order of Filter's turns.
var filters = []checks.Verdict{checks.Unsaid, checks.Out, checks.Unsure, checks.Waiting, checks.Clear}

// Filter is the one verdict that the list of findings is cut down to; Unsaid: all.
func (m *Model) Filter() checks.Verdict { return m.filter }

// TurnFilter cuts the list down to the next verdict that any finding has, and after the last of them
// shows all again.
func (m *Model) TurnFilter() {
	m.filter = m.NextFilter()
}

// NextFilter is what TurnFilter turns to.
func (m *Model) NextFilter() checks.Verdict {
	_, counts := logbook.Worst(m.judged())
	at := slices.Index(filters, m.filter)
	for i := 1; i < len(filters); i++ {
		next := filters[(at+i)%len(filters)]
		if next == checks.Unsaid || counts[next] > 0 {
			return next
		}
	}
	return checks.Unsaid
}

// Found is the list of findings: gathered by part, the worst part first and the worst first in each;
// what nobody began to read follows, gathered likewise.
func (m *Model) Found() []Line {
	var begun, later []checks.Finding
	for _, f := range m.Findings() {
		switch {
		case m.filter != checks.Unsaid && f.Verdict != m.filter:
		case f.Untouched:
			later = append(later, f)
		default:
			begun = append(begun, f)
		}
	}
	var lines []Line
	if m.HasBuilt() {
		lines = []Line{{Built: true}}
	}
	lines = append(lines, byGroup(begun, false)...)
	if len(later) > 0 {
		lines = append(lines, Line{Of: len(later), Later: true})
	}
	return append(lines, byGroup(later, true)...)
}

// byGroup gathers findings under the groups of their checks, in the order in which the groups come
// first.
func byGroup(list []checks.Finding, later bool) []Line {
	var groups []string
	of := map[string][]checks.Finding{}
	for _, f := range list {
		c, _ := checks.CheckOf(f.Check)
		if !slices.Contains(groups, c.Group) {
			groups = append(groups, c.Group)
		}
		of[c.Group] = append(of[c.Group], f)
	}
	var lines []Line
	for _, g := range groups {
		lines = append(lines, Line{Group: g, Of: len(of[g]), Later: later})
		for i := range of[g] {
			lines = append(lines, Line{Finding: &of[g][i]})
		}
	}
	return lines
}
