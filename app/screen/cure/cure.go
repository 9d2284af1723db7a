// Package cure is the state of the pages that tell what to change about a finding. It knows no toolkit.
package cure

import (
	"context"
	"slices"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// Stage is how far one has come.
type Stage int

// The stages.
const (
	Looking Stage = iota // the ways are being looked for
	List                 // the ways
	OneWay               // one of them
	Short                // what does not do it alone
	Trying               // the changed build is being judged
	Tried                // what would change
)

// Model is what is asked about one finding of a build as it was then. Its methods are called from one
// goroutine, but for Solve and Judge.
type Model struct {
	build    *measure.Build
	before   []checks.Finding
	finding  checks.Finding
	stage    Stage
	done, of int
	trouble  *remedy.Trouble
	way      int
	effects  []remedy.Effect
}

// New asks about a finding of a build that is out or unsure; findings are all that the build has.
func New(b *measure.Build, findings []checks.Finding, f checks.Finding) *Model {
	return &Model{build: b, before: slices.Clone(findings), finding: f}
}

// Finding is what is asked about.
func (m *Model) Finding() checks.Finding { return m.finding }

// Stage is how far one has come.
func (m *Model) Stage() Stage { return m.stage }

// Solve looks for the ways; told hears how far it is. It changes nothing, so that it may run beside.
func (m *Model) Solve(ctx context.Context, told func(done, of int)) (*remedy.Trouble, error) {
	return remedy.SolveOne(ctx, m.build, nil, m.finding.Check, m.finding.Subject, told)
}

// Progress notes how far the search is.
func (m *Model) Progress(done, of int) { m.done, m.of = done, of }

// Looked is how many parts of the search are done, of how many.
func (m *Model) Looked() (done, of int) { return m.done, m.of }

// Found shows what the search found; nil: nothing is out or unsure there.
func (m *Model) Found(t *remedy.Trouble) {
	if t == nil {
		t = &remedy.Trouble{Check: m.finding.Check, Subject: m.finding.Subject}
	}
	m.trouble, m.stage = t, List
}

// Ways are the ways that were found: first the pair, which is there only where it is better than any single
// change, then these, best first.
func (m *Model) Ways() []remedy.Remedy {
	if m.trouble == nil {
		return nil
	}
	var out []remedy.Remedy
	if m.trouble.Pair != nil {
		out = append(out, *m.trouble.Pair)
	}
	return append(out, m.trouble.Singles...)
}

// NotAlone are the knobs that don't make it clear by themselves.
func (m *Model) NotAlone() []string {
	if m.trouble == nil {
		return nil
	}
	return m.trouble.Short
}

// Open shows one of the ways.
func (m *Model) Open(way int) {
	if way >= 0 && way < len(m.Ways()) {
		m.way, m.stage = way, OneWay
	}
}

// OpenShort shows what does not do it alone.
func (m *Model) OpenShort() { m.stage = Short }

// At is the place of the one that is shown among the ways.
func (m *Model) At() int { return m.way }

// Way is the one that is shown.
func (m *Model) Way() remedy.Remedy {
	if ways := m.Ways(); m.way < len(ways) {
		return ways[m.way]
	}
	return remedy.Remedy{}
}

// Try shows that the changed build is being judged.
func (m *Model) Try() { m.stage = Trying }

// Judge judges the changed build. It changes nothing, so that it may run beside.
func (m *Model) Judge(ctx context.Context) ([]remedy.Effect, error) {
	return remedy.Try(ctx, m.build, m.before, *m.trouble, m.Way())
}

// Judged shows what would change.
func (m *Model) Judged(effects []remedy.Effect) { m.effects, m.stage = effects, Tried }

// Effects are the findings that would say something else.
func (m *Model) Effects() []remedy.Effect { return m.effects }

// Back goes back by one stage; false where that leaves what to change.
func (m *Model) Back() bool {
	switch m.stage {
	case OneWay, Short:
		m.stage = List
	case Trying, Tried:
		m.stage = OneWay
	default:
		return false
	}
	return true
}
