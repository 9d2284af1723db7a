package sheet

import (
	"fmt"
	"slices"
	"strings"

	"yokebook/checks"
)

// verdicts is every finding with value, limit, verdict and the number of the limit's source; what waits
// and was not begun is named below.
func (m *maker) verdicts() {
	m.heading("sheet.verdicts")
	t := Table{Columns: []Column{m.column(2.3, "sheet.column.verdict"), m.column(6.2, "sheet.column.finding"), m.column(3.2, "sheet.column.value"),
		m.column(2.8, "sheet.column.limit"), m.column(0.9, "sheet.column.source")}}
	for _, f := range m.findings {
		if f.Untouched || f.Check == "build.chance" {
			continue
		}
		w := m.says.Finding(f)
		name, value := w.Title, m.bare(f)
		if f.Verdict == checks.Waiting && concerns(f) && len(f.Missing) > 0 {
			name = m.says.Say("sheet.finding.missing", w.Title, m.missing([]checks.Finding{f}))
		}
		if value != "" && f.Predicted {
			value = m.says.Say("sheet.predicted", value)
		}
		row := cells(m.verdict(f), name, value, w.Limit, m.source(w.Source))
		row[0].Strong = f.Verdict == checks.Out || f.Verdict == checks.Waiting
		t.Rows = append(t.Rows, row)
	}
	m.chance()
	m.grid(t)
	if names := m.untouched(); names != "" {
		m.text(Small, "sheet.untouched", names)
	}
	m.letters()
	m.text(Small, "sheet.verdicts.how")
	m.sourceList()
}

// verdict is the word for a verdict; what a clear one rests on is lettered.
func (m *maker) verdict(f checks.Finding) string {
	if f.Verdict != checks.Clear || len(f.RestsOn) == 0 {
		return m.says.VerdictOf(f)
	}
	letters := make([]string, len(f.RestsOn))
	for i, p := range f.RestsOn {
		letters[i] = m.letter(p)
	}
	plain := f
	plain.RestsOn = nil
	return m.says.Say("sheet.verdict.if", m.says.VerdictOf(plain), strings.Join(letters, " "))
}

// letter is the letter, or two, under which a stated point stands below the table.
func (m *maker) letter(point string) string {
	i := slices.Index(m.stated, point)
	if i < 0 {
		m.stated, i = append(m.stated, point), len(m.stated)
	}
	if i < 26 {
		return string(rune('a' + i))
	}
	return string(rune('a'+i/26-1)) + string(rune('a'+i%26))
}

// letters says what the letters of the verdicts stand for.
func (m *maker) letters() {
	if len(m.stated) == 0 {
		return
	}
	out := make([]string, len(m.stated))
	for i, p := range m.stated {
		out[i] = m.says.Say("sheet.letter", m.letter(m.stated[i]), m.says.Point(p), m.value(p))
	}
	m.text(Small, "sheet.letters", strings.Join(out, "; "))
}

// chance is the headline over all findings.
func (m *maker) chance() {
	for _, f := range m.findings {
		if f.Check == "build.chance" && f.Chance != nil {
			m.text(Para, "cli.headline", *f.Chance)
		}
	}
}

// untouched names once each what waits and was not begun.
func (m *maker) untouched() string {
	var list []checks.Finding
	for _, f := range m.findings {
		if f.Untouched {
			list = append(list, f)
		}
	}
	return m.names(list)
}

// source is the number under which a source stands in the list below the table.
func (m *maker) source(text string) string {
	if text == "" {
		return ""
	}
	i := slices.Index(m.sources, text)
	if i < 0 {
		m.sources, i = append(m.sources, text), len(m.sources)
	}
	return fmt.Sprint(i + 1)
}

// sourceList is the list of sources by their numbers.
func (m *maker) sourceList() {
	if len(m.sources) == 0 {
		return
	}
	m.heading("sheet.sources")
	out := make([]string, len(m.sources))
	for i, s := range m.sources {
		out[i] = m.says.Say("sheet.source", i+1, s)
	}
	m.items(out)
}

// cautions are those that go with a shaft: welding, turning, working under it, the first run.
func (m *maker) cautions() {
	m.heading("sheet.cautions")
	m.items([]string{m.says.Say("sheet.no_approval"), m.says.Caution("caution.weld"), m.says.Caution("caution.turning"),
		m.says.Caution("caution.under"), m.says.Caution("caution.firstrun")})
}
