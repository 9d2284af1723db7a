package sheet

import (
	"fmt"
	"slices"
	"strings"

	"yokebook/checks"
)

// verdicts is every finding with value, limit, verdict and the number of the limit's source: in a table
// what the shaft is built from and was judged, in one paragraph what was not, in one the rest of the build, in one what waits and has no
// value yet, and the names of what was not begun.
func (m *maker) verdicts() {
	m.heading("sheet.verdicts")
	t := Table{Columns: []Column{m.column(2.5, "sheet.column.verdict"), m.column(7, "sheet.column.finding"), m.column(3.3, "sheet.column.value"),
		m.column(2.4, "sheet.column.limit"), m.column(0.8, "sheet.column.source")}}
	var others, waiting, bare []string
	for _, f := range m.findings {
		family, _, _ := strings.Cut(f.Check, ".")
		switch {
		case f.Untouched || f.Check == "build.chance":
		case f.Verdict == checks.Waiting && f.Value == nil:
			waiting = append(waiting, m.waiting(f))
		case concerns(f) && family != "reading" && f.Verdict == checks.Unsaid && f.Value != nil:
			bare = append(bare, m.unjudged(f))
		case concerns(f) && family != "reading":
			t.Rows = append(t.Rows, m.verdictRow(f))
		default:
			others = append(others, m.other(f))
		}
	}
	m.grid(t)
	m.chance()
	m.packed("sheet.bares", bare)
	m.packed("sheet.others", others)
	m.packed("sheet.waiting", waiting)
	if names := m.untouched(); names != "" {
		m.text(Small, "sheet.untouched", names)
	}
	m.letters()
	m.text(Small, "sheet.verdicts.how")
	m.sourceList()
}

// verdictRow is the line of a finding in the table.
func (m *maker) verdictRow(f checks.Finding) []Cell {
	w := m.says.Finding(f)
	name, value := w.Title, m.bare(f)
	if f.Verdict == checks.Waiting && len(f.Missing) > 0 {
		name = m.says.Say("sheet.finding.missing", w.Title, m.missing([]checks.Finding{f}))
	}
	if value != "" && f.Predicted {
		value = m.says.Say("sheet.predicted", value)
	}
	row := cells(m.verdict(f), name, value, w.Limit, m.source(w.Source))
	row[0].Strong = f.Verdict == checks.Out || f.Verdict == checks.Waiting
	return row
}

// packed is several findings in one paragraph under a word.
func (m *maker) packed(key string, list []string) {
	if len(list) > 0 {
		m.text(Small, key, strings.Join(list, "; "))
	}
}

// unjudged is a finding that carries no verdict, in one phrase.
func (m *maker) unjudged(f checks.Finding) string {
	w := m.says.Finding(f)
	if w.Limit == "" {
		return m.says.Say("sheet.bare", w.Title, m.found(f))
	}
	return m.says.Say("sheet.bare.limit", w.Title, m.found(f), w.Limit, m.source(w.Source))
}

// other is a finding that the shaft is not built from, in one phrase; where it has no value, no space
// stands in front of the comma.
func (m *maker) other(f checks.Finding) string {
	w := m.says.Finding(f)
	text := m.says.Say("sheet.other", w.Title, m.bare(f), m.verdict(f))
	if w.Limit != "" {
		text = m.says.Say("sheet.other.limit", w.Title, m.bare(f), m.verdict(f), w.Limit, m.source(w.Source))
	}
	return strings.ReplaceAll(text, " , ", ", ")
}

// waiting is a finding without a value, in one phrase; what the shaft waits for stands at the top.
func (m *maker) waiting(f checks.Finding) string {
	w := m.says.Finding(f)
	text := w.Title
	if w.Limit != "" {
		text = m.says.Say("sheet.waiting.limit", text, w.Limit, m.source(w.Source))
	}
	return text
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
	out := make([]string, len(m.sources))
	for i, s := range m.sources {
		out[i] = m.says.Say("sheet.source", i+1, s)
	}
	m.packed("sheet.sources", out)
}

// cautions are those that go with a shaft: welding, turning, working under it, the first run.
func (m *maker) cautions() {
	m.heading("sheet.cautions")
	m.items([]string{m.says.Say("sheet.no_approval"), m.says.Caution("caution.weld"), m.says.Caution("caution.turning"),
		m.says.Caution("caution.under"), m.says.Caution("caution.firstrun")})
}
