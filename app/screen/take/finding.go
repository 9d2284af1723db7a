package take

import (
	"yokebook/app/logbook"
	"yokebook/checks"
	"yokebook/measure"
)

// Findings are all findings, worst first, of the shaft as it was made where AsBuilt says so.
func (m *Model) Findings() []checks.Finding { return logbook.WorstFirst(m.judged()) }

// OpenFinding shows one finding.
func (m *Model) OpenFinding(f checks.Finding) {
	m.opened = f.Key()
	m.open(Finding)
}

// Opened is the finding of the page Finding as it is now; false when there is none any more.
func (m *Model) Opened() (checks.Finding, bool) {
	for _, f := range m.judged() {
		if f.Key() == m.opened {
			return f, true
		}
	}
	return checks.Finding{}, false
}

// Used are the readings that a finding rests on, in its own order.
func (m *Model) Used(f checks.Finding) []measure.Reading {
	var out []measure.Reading
	for _, id := range f.Used {
		if r := m.reading(id); r.ID != "" {
			out = append(out, r)
		}
	}
	return out
}
