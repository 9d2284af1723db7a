package sheet

import (
	"yokebook/app/draw"
	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/checks/limits"
	"yokebook/measure"
	"yokebook/measure/document"
)

// maker gathers what is known of a build and writes it out block by block.
type maker struct {
	build    *measure.Build
	findings []checks.Finding
	says     *words.Language
	scene    *draw.Scene
	sight    *checks.Sight
	sweep    *checks.SweepResult
	current  []measure.Reading
	read     map[string][]measure.Reading // by point, those that count
	blocks   []Block
	sources  []string   // of limits, as they are numbered in the table of findings
	stated   []string   // points that clear findings rest on, as they are lettered there
	ordered  *asOrdered // on a fitting sheet: the build as it was ordered
}

func newMaker(b *measure.Build, found *checks.Result, says *words.Language) *maker {
	m := &maker{build: b, findings: found.Findings, says: says, scene: draw.NewScene(b, found, says), sight: checks.Look(b, found),
		sweep: checks.Sweep(b), current: b.CurrentReadings(document.Hash), read: map[string][]measure.Reading{}}
	for _, r := range m.current {
		m.read[r.Point] = append(m.read[r.Point], r)
	}
	return m
}

// all writes the blocks in the order in which a builder needs them.
func (m *maker) all() []Block {
	m.unsettled()
	if m.ordered != nil {
		m.fitting()
	}
	m.job()
	m.restsOn()
	m.drawings()
	m.layout()
	m.lengths()
	m.angles()
	m.running()
	m.tubes()
	m.ends()
	m.bolts()
	m.splines()
	m.verdicts()
	m.cautions()
	return m.blocks
}

// key is the key of a text that a fitting sheet says otherwise.
func (m *maker) key(key string) string {
	if m.ordered != nil {
		return key + ".fit"
	}
	return key
}

func (m *maker) heading(key string) { m.add(Block{Kind: Heading, Text: m.says.Say(key)}) }

func (m *maker) text(kind Kind, key string, args ...any) {
	m.add(Block{Kind: kind, Text: m.says.Say(key, args...)})
}

func (m *maker) add(b Block) { m.blocks = append(m.blocks, b) }

// facts adds pairs, where there are any.
func (m *maker) facts(pairs []Pair) {
	if len(pairs) > 0 {
		m.add(Block{Kind: Facts, Pairs: pairs})
	}
}

// items adds a list, where it holds anything.
func (m *maker) items(list []string) {
	if len(list) > 0 {
		m.add(Block{Kind: List, Items: list})
	}
}

// grid adds a table, where it has rows.
func (m *maker) grid(t Table) {
	if len(t.Rows) > 0 {
		m.add(Block{Kind: Grid, Table: &t})
	}
}

// column is a column whose heading is a key.
func (m *maker) column(share float64, key string, args ...any) Column {
	return Column{m.says.Say(key, args...), share}
}

// cells makes plain cells.
func cells(texts ...string) []Cell {
	out := make([]Cell, len(texts))
	for i, t := range texts {
		out[i].Text = t
	}
	return out
}

// setting is a limit or input of the table, or what the build chose instead.
func (m *maker) setting(key string) float64 {
	if chosen, ok := m.build.Limits[key]; ok {
		if f, ok := chosen.Value.Float(); ok {
			return f
		}
	}
	row, _ := limits.Of(key)
	return row.Value
}

// layoutHas reports a point whose part the layout has.
func (m *maker) layoutHas(point string) bool {
	p, ok := measure.PointOf(point)
	return ok && p.In(m.build.Layout)
}

// find is the first finding of a check for a subject with a value.
func (m *maker) find(check, subject string) (checks.Finding, bool) {
	for _, f := range m.findings {
		if f.Check == check && f.Subject == subject && f.Value != nil {
			return f, true
		}
	}
	return checks.Finding{}, false
}

// of lists the findings of a check, those without a value too.
func (m *maker) of(check string) []checks.Finding {
	var out []checks.Finding
	for _, f := range m.findings {
		if f.Check == check {
			out = append(out, f)
		}
	}
	return out
}
