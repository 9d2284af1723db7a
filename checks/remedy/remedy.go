package remedy

import (
	"context"

	"yokebook/checks"
	"yokebook/measure"
)

// Change is a knob turned by an amount, in the knob's unit; positive is up, longer, thicker, further
// toward the gearbox or clockwise, as the knob goes.
type Change struct {
	Knob   string
	Amount float64
	Unit   string
}

// Effect is another finding that a remedy changes. The state of both is the same; Before or After has
// no check where there is no such finding.
type Effect struct{ Before, After checks.Finding }

// Remedy is one way out: one knob or two, run in full at the amounts told.
type Remedy struct {
	Changes []Change
	// From and To bound the amounts of a single knob that work, ends included; Open where nothing
	// beyond was looked at. A pair has none.
	From, To         float64
	FromOpen, ToOpen bool
	Worsens          []Effect // other findings that were clear and no longer are, or are out now
	Improves         []Effect // other findings that come nearer to clear
	Chance           *float64 // that every judged limit of the changed build holds
	Costs            []checks.Message
}

// Trouble is what is out or unsure of one check and subject, or of a whole group of checks together,
// with the ways out of it.
type Trouble struct {
	Group    string // of the checks; with Check empty, all of the group together
	Check    string
	Subject  string
	Findings []checks.Finding
	Singles  []Remedy // one knob alone, best first
	Pair     *Remedy  // two knobs, where that is better than any one
	Short    []string // knobs that serve it and don't do it alone within their range
}

// Report is what can be done about a build.
type Report struct {
	Troubles []Trouble // groups first, then in the order of the findings
	Chance   *float64  // that every judged limit holds as it is
}

// Solve finds for everything that is out or unsure the smallest change of each knob alone, and the
// best pair, that makes it clear in all states that its checks speak for. Best is what makes the
// fewest other findings of the same kind worse, and of these the least work. prev, which may be nil,
// only saves work. It errs with the context's error, and never otherwise. b is not changed.
func Solve(ctx context.Context, b *measure.Build, prev *checks.Result) (*Report, error) {
	if ctx.Err() != nil {
		return nil, ctx.Err()
	}
	s := newSearch(ctx, vehicleOf(b), prev)
	report := &Report{Chance: chanceOf(s.base.Findings)}
	for _, t := range s.troubles() {
		if err := s.solve(&t); err != nil {
			return nil, err
		}
		report.Troubles = append(report.Troubles, t)
	}
	return report, nil
}

// SolveOne is Solve for one check and subject only, for a person who asks about a finding. told, which may
// be nil, hears how many parts of the search are done, from any goroutine but one call at a time. Nil
// without an error: nothing of that check and subject is out or unsure.
func SolveOne(ctx context.Context, b *measure.Build, prev *checks.Result, check, subject string, told func(done, of int)) (*Trouble, error) {
	if ctx.Err() != nil {
		return nil, ctx.Err()
	}
	s := newSearch(ctx, vehicleOf(b), prev)
	s.hears = told
	for _, t := range s.troubles() {
		if t.Check == check && t.Subject == subject {
			if err := s.solve(&t); err != nil {
				return nil, err
			}
			return &t, nil
		}
	}
	return nil, nil
}

func chanceOf(findings []checks.Finding) *float64 {
	for _, f := range findings {
		if f.Check == "build.chance" {
			return f.Chance
		}
	}
	return nil
}
