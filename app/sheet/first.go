package sheet

import (
	"slices"
	"strings"

	"yokebook/checks"
)

// needed are the families of checks that a shaft is built from; a shaft can be built while a mount or
// the clutch still waits.
var needed = []string{"joint", "slip", "travel", "shaft", "flange", "retainer", "reading", "derived"}

// concerns reports a finding that the shaft is built from. The splines that count are those of the shaft.
func concerns(f checks.Finding) bool {
	family, _, _ := strings.Cut(f.Check, ".")
	return slices.Contains(needed, family) || f.Check == "spline.output" || f.Check == "spline.slip"
}

// standing sorts the findings that the shaft is built from by what is to be said of them at the top.
type standing struct{ out, unsure, waiting, computed []checks.Finding }

func (m *maker) standing() standing {
	var s standing
	read, computed := map[string]bool{}, map[string]checks.Finding{}
	var order []string
	for _, f := range m.findings {
		if f.Verdict == checks.Out {
			s.out = append(s.out, f)
		}
		if !concerns(f) {
			continue
		}
		switch f.Verdict {
		case checks.Waiting:
			s.waiting = append(s.waiting, f)
			continue
		case checks.Unsure:
			s.unsure = append(s.unsure, f)
		case checks.Unsaid:
			continue
		}
		key := f.Check + "|" + f.Subject
		if !f.Predicted {
			read[key] = true
		} else if _, have := computed[key]; !have {
			computed[key] = f
			order = append(order, key)
		}
	}
	for _, key := range order {
		if !read[key] {
			s.computed = append(s.computed, computed[key])
		}
	}
	return s
}

// first is the first line of the sheet, and whether it warns.
func (m *maker) first() (line string, alarm bool) {
	s := m.standing()
	var why []string
	reason := func(list []checks.Finding, one, many string) {
		switch {
		case len(list) == 1:
			why = append(why, m.says.Say(one))
		case len(list) > 1:
			why = append(why, m.says.Say(many, len(list)))
		}
	}
	reason(s.waiting, "sheet.why.waiting.one", "sheet.why.waiting")
	reason(s.computed, "sheet.why.computed.one", "sheet.why.computed")
	stop := len(why) > 0
	reason(s.out, "sheet.why.out.one", "sheet.why.out")
	reason(s.unsure, "sheet.why.unsure.one", "sheet.why.unsure")
	said := strings.Join(why, "; ")
	switch {
	case stop:
		return m.says.Say(m.key("sheet.first.stop"), said), true
	case len(s.out) > 0:
		return m.says.Say(m.key("sheet.first.out"), said), true
	case said != "":
		return m.says.Say(m.key("sheet.first.unsure"), said), false
	}
	return m.says.Say(m.key("sheet.first.clear")), false
}

// unsettled says in words what is out, unsure, computed or waiting, before anything else.
func (m *maker) unsettled() {
	s := m.standing()
	if n := len(s.out) + len(s.unsure) + len(s.computed) + len(s.waiting); n == 0 {
		return
	}
	m.heading("sheet.unsettled")
	var lines []string
	for _, f := range s.out {
		lines = append(lines, m.says.Say("sheet.unsettled.out", m.says.Title(f), m.found(f), m.says.Finding(f).Limit))
	}
	for _, l := range []struct {
		key  string
		list []checks.Finding
	}{{"sheet.unsettled.unsure", s.unsure}, {"sheet.unsettled.computed", s.computed}} {
		if len(l.list) > 0 {
			lines = append(lines, m.says.Say(l.key, m.names(l.list)))
		}
	}
	if len(s.waiting) > 0 {
		lines = append(lines, m.says.Say("sheet.unsettled.waiting", m.names(s.waiting)))
		if slices.ContainsFunc(s.waiting, func(f checks.Finding) bool { return len(f.Missing) > 0 }) {
			lines = append(lines, m.says.Say("sheet.unsettled.missing", m.missing(s.waiting)))
		}
	}
	m.items(lines)
}

// names lists the checks of findings once each, without their states.
func (m *maker) names(list []checks.Finding) string {
	var out []string
	for _, f := range list {
		name := m.says.Check(f.Check, f.Subject)
		if f.Untouched {
			name = m.says.Check(f.Check, "")
		}
		if !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return strings.Join(out, "; ")
}

// missing names once each the points that findings wait for.
func (m *maker) missing(list []checks.Finding) string {
	var out []string
	for _, f := range list {
		for _, x := range f.Missing {
			if name := m.says.Point(x.Point); !slices.Contains(out, name) {
				out = append(out, name)
			}
		}
	}
	if len(out) == 0 {
		return m.says.Say("sheet.unknown")
	}
	return strings.Join(out, "; ")
}
