package take

import (
	"slices"

	"yokebook/checks"
	"yokebook/measure"
)

// built is the build judged by its shaft as that was made. It is reckoned for one build and kept until
// that changes.
type built struct {
	on    bool // the list of findings shows it
	of    *measure.Build
	made  *measure.Build // nil: nothing of what was built was read
	found []checks.Finding
}

// made is the build as its shaft was made; nil where nothing of what was built was read.
func (m *Model) made() *measure.Build {
	b := m.log.Build()
	if m.built.of != b {
		m.built = built{on: m.built.on, of: b}
		if made, ok := checks.AsBuilt(b); ok {
			m.built.made = made
		}
	}
	return m.built.made
}

// HasBuilt reports that the list of findings can show the shaft as it was made beside what is ordered.
func (m *Model) HasBuilt() bool { return m.made() != nil }

// SwitchBuilt changes between what is ordered and what was made.
func (m *Model) SwitchBuilt() { m.built.on = !m.built.on }

// AsBuilt reports that the list of findings, and what is opened from it, show the shaft as it was made.
func (m *Model) AsBuilt() bool {
	return m.built.on && (m.page == Findings || slices.Contains(m.under, Findings)) && m.HasBuilt()
}

// Judged is the build that the findings shown are of.
func (m *Model) Judged() *measure.Build {
	if m.AsBuilt() {
		return m.made()
	}
	return m.log.Build()
}

// judged are the findings of it.
func (m *Model) judged() []checks.Finding {
	if !m.AsBuilt() {
		return m.log.Findings()
	}
	if m.built.found == nil {
		m.built.found = checks.Run(m.made(), nil).Findings
	}
	return slices.Clone(m.built.found)
}
