// Package start is the state of the screen that starts a build: its title, then its layout by one
// big choice after another. It knows no toolkit.
package start

import (
	"slices"
	"strconv"
	"strings"

	"yokebook/measure"
)

// Step is one question of a new build: the member of the layout that it decides.
type Step struct {
	Member  string
	Choices []string
}

// Steps are the questions after the title, in order. What may be left open is asked later, where it
// matters.
var Steps = steps()

func steps() []Step {
	out := []Step{{"shafts", []string{"1", "2"}}}
	for _, c := range measure.LayoutChoices {
		if !c.Optional {
			out = append(out, Step{c.Member, c.Choices})
		}
	}
	return out
}

// Model is a build that is being started.
type Model struct {
	title  string
	layout measure.Layout
	at     int // 0 is the title, then Steps
}

// New starts at the title.
func New() *Model { return &Model{layout: measure.NewLayout()} }

// Resume is a build that was being started when the program ended: its title, written in half or
// settled, and the answers so far. Answers that fit no question are left aside.
func Resume(title string, named bool, answers []string) *Model {
	m := New()
	if m.Writing(title); !named {
		return m
	}
	m.Name(title)
	for _, a := range answers {
		step, ok := m.Step()
		if !ok || !slices.Contains(step.Choices, a) || m.at == len(Steps) {
			break
		}
		m.Choose(a)
	}
	return m
}

// Writing notes the half-written title.
func (m *Model) Writing(title string) { m.title = title }

// Answered says whether the title is settled, and what was chosen so far.
func (m *Model) Answered() (named bool, answers []string) {
	for _, step := range Steps[:max(0, min(m.at-1, len(Steps)))] {
		answers = append(answers, m.answer(step))
	}
	return m.at > 0, answers
}

func (m *Model) answer(step Step) string {
	if step.Member == "shafts" {
		return strconv.Itoa(m.layout.Shafts)
	}
	return *m.layout.Member(step.Member)
}

// Title is the title so far.
func (m *Model) Title() string { return m.title }

// Layout is the layout so far.
func (m *Model) Layout() measure.Layout { return m.layout }

// Step is the question that is asked; false while the title is asked.
func (m *Model) Step() (Step, bool) {
	if m.at < 1 || m.at > len(Steps) {
		return Step{}, false
	}
	return Steps[m.at-1], true
}

// Name sets the title and goes on to the first question. A title of blanks does not go on.
func (m *Model) Name(title string) {
	m.title = strings.TrimSpace(title)
	if m.title != "" && m.at == 0 {
		m.at = 1
	}
}

// Choose answers the question that is asked and goes on. It reports true after the last one.
func (m *Model) Choose(choice string) (complete bool) {
	step, ok := m.Step()
	if !ok {
		return false
	}
	if step.Member == "shafts" {
		m.layout.Shafts, _ = strconv.Atoi(choice)
	} else if member := m.layout.Member(step.Member); member != nil {
		*member = choice
	}
	m.at++
	return m.at > len(Steps)
}

// Back goes one question back. It reports false at the title.
func (m *Model) Back() bool {
	if m.at == 0 {
		return false
	}
	m.at = min(m.at, len(Steps)) - 1
	return true
}
