package remedy

import (
	"context"
	"slices"

	"yokebook/checks"
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// The kinds of a reading to take.
const (
	ReadNew     = "read"    // a point that was not read, or only taken for granted
	ReadInstead = "measure" // a point that is stated or estimated
	ReadTurned  = "reverse" // one place again with the finder turned end for end
	ReadRepeat  = "repeat"  // the same four times more
	ReadBetter  = "better"  // with a tool twice as good whose zero is known
)

// Reading is one more reading, and what it is worth.
type Reading struct {
	Kind       string
	Point      string
	State      measure.State
	Instrument string  // that it is taken with; "" where the default of the quantity is reckoned with
	Decides    float64 // how many of the undecided findings it is expected to decide
	Share      float64 // that as a share of all of them
	Nearer     float64 // of those that wait: 1 for each that it completes, 1/n where n readings are missing
	Settles    []Settled
	Reasons    []checks.Message
}

// Settled is an undecided finding that a reading may decide, with the chance that it does.
type Settled struct {
	Finding checks.Finding
	Chance  float64
}

// Next ranks the readings that could be taken next by how many of the findings that are unsure or wait
// each is expected to decide; where two decide as much, by how much nearer they bring what waits. Findings
// of which nothing was read yet don't count, unless there are no others. It errs with the context's
// error, and never otherwise. b is not changed.
//
// Method: preposterior analysis. What is believed of a point now says which values a reading of it may
// show; for each of some equally likely ones the build with that reading is judged by a part of the same
// draws, those that lead by all of them, and what is decided is counted. Source: H. Raiffa, R. Schlaifer, Applied Statistical Decision Theory (1961),
// on the value of sample information (from memory).
func Next(ctx context.Context, b *measure.Build) ([]Reading, error) {
	v := vehicleOf(b)
	n := &asking{ctx: ctx, v: v}
	n.base = checks.Run(v.build, nil) // from nothing, so that it holds every column
	n.gather(n.base.Findings)
	n.sketched = byKey(n.judge(v.build, few, n.only))
	var list []ranked
	for _, q := range n.questions() {
		r, err := n.worth(q, few)
		if err != nil {
			return nil, err
		}
		if r.Decides > 0 || r.Nearer > 0 {
			list = append(list, ranked{q, r})
		}
	}
	sortRanked(list)
	for i, l := range list[:min(len(list), leaders)] {
		if l.reading.Decides == 0 {
			break
		}
		r, err := n.worth(l.question, 0)
		if err != nil {
			return nil, err
		}
		list[i].reading = r
	}
	sortRanked(list)
	out := make([]Reading, len(list))
	for i, l := range list {
		out[i] = l.reading
	}
	return out, nil
}

// ranked is a question with what it is worth.
type ranked struct {
	question question
	reading  Reading
}

// leaders is how many readings at the head of the ranking are looked at with all draws.
const leaders = 5

func sortRanked(list []ranked) {
	slices.SortStableFunc(list, func(l, m ranked) int {
		const same = 1e-9
		a, b := l.reading, m.reading
		switch {
		case a.Decides > b.Decides+same:
			return -1
		case a.Decides < b.Decides-same:
			return 1
		case a.Nearer > b.Nearer+same:
			return -1
		case a.Nearer < b.Nearer-same:
			return 1
		}
		return 0
	})
}

// asking is the search for what to read next.
type asking struct {
	ctx       context.Context
	v         *vehicle
	undecided []checks.Finding
	base      *checks.Result
	sketched  map[string]checks.Finding // they and their like by few draws
}

// few is how many draws outcomes are judged by at first.
const few = 256

// judge judges a build by so many draws; 0 stands for all.
func (n *asking) judge(b *measure.Build, draws int, only func(check string) bool) []checks.Finding {
	if draws == 0 {
		return checks.RunOnly(b, n.base, only).Findings
	}
	return checks.Sketch(b, n.base, draws, only)
}

// gather picks the findings that are undecided and begun.
func (n *asking) gather(findings []checks.Finding) {
	var untouched []checks.Finding
	for _, f := range findings {
		c, _ := checks.CheckOf(f.Check)
		if f.Verdict != checks.Unsure && f.Verdict != checks.Waiting || slices.Contains(silent, c.Group) {
			continue
		}
		if f.Untouched {
			untouched = append(untouched, f)
			continue
		}
		n.undecided = append(n.undecided, f)
	}
	if len(n.undecided) == 0 {
		n.undecided = untouched
	}
}

// only picks the checks of the undecided findings.
func (n *asking) only(check string) bool {
	return slices.ContainsFunc(n.undecided, func(f checks.Finding) bool { return f.Check == check })
}

// touched picks those of them that a reading can change: of what was read, the checks whose findings used
// it, or anything that its instrument showed in that setup; of what was not, those made from the point.
func (n *asking) touched(q question) func(check string) bool {
	var list []string
	for _, f := range n.undecided {
		c, _ := checks.CheckOf(f.Check)
		touches := slices.Contains(c.Points, q.point) || slices.ContainsFunc(f.Missing, q.answers) || slices.Contains(n.granted(f), q.point)
		for _, r := range n.v.build.Readings {
			same := q.kind == ReadTurned && r.Instrument == q.instrument && r.Setup == q.setup || r.Point == q.point
			touches = touches || same && slices.Contains(f.Used, r.ID)
		}
		if touches && !slices.Contains(list, f.Check) {
			list = append(list, f.Check)
		}
	}
	return func(check string) bool { return slices.Contains(list, check) }
}

// worth looks at what a reading may show and counts what that decides.
func (n *asking) worth(q question, draws int) (Reading, error) {
	r := Reading{Kind: q.kind, Point: q.point, State: q.state, Instrument: q.instrument, Reasons: q.reasons()}
	for _, f := range n.undecided {
		if slices.ContainsFunc(f.Missing, q.answers) {
			r.Nearer += 1 / float64(len(f.Missing))
		}
	}
	counts, of, err := n.tally(q, draws)
	if err != nil {
		return Reading{}, err
	}
	for i, f := range n.undecided {
		if counts[i] > 0 {
			chance := float64(counts[i]) / float64(of)
			r.Decides += chance
			r.Settles = append(r.Settles, Settled{f, chance})
		}
	}
	if len(n.undecided) > 0 {
		r.Share = r.Decides / float64(len(n.undecided))
	}
	slices.SortStableFunc(r.Settles, func(a, b Settled) int {
		switch {
		case a.Chance > b.Chance:
			return -1
		case a.Chance < b.Chance:
			return 1
		}
		return 0
	})
	return r, nil
}

// tally counts over the outcomes of a reading, in rising order of what it shows, how often each undecided finding is
// decided. Where a few of them, spread from end to end, decide nothing, the rest are not looked at.
func (n *asking) tally(q question, draws int) (counts []int, of int, err error) {
	outcomes, only := n.outcomes(q), n.touched(q)
	counts = make([]int, len(n.undecided))
	const apart = 3
	first := func(i int) bool { return i%apart == 0 || i == len(outcomes)-1 }
	for _, pass := range []bool{true, false} {
		var list []*measure.Build
		for i, b := range outcomes {
			if first(i) == pass {
				list = append(list, b)
			}
		}
		found := make([][]checks.Finding, len(list))
		if err := each(n.ctx, len(list), func(i int) { found[i] = n.judge(list[i], draws, only) }); err != nil {
			return nil, 0, err
		}
		for _, after := range found {
			for i, f := range n.undecided {
				if only(f.Check) && n.decided(f, after, draws) {
					counts[i]++
				}
			}
		}
		if slices.Max(append(counts, 0)) == 0 {
			break
		}
	}
	return counts, len(outcomes), nil
}

// decided reports that a finding, undecided before, is so no longer: it is clear, out or no longer judged,
// or others of its check and subject are clear or out where it waited for a state.
func (n *asking) decided(f checks.Finding, after []checks.Finding, draws int) bool {
	others := false
	for _, g := range after {
		if g.Check != f.Check || g.Subject != f.Subject {
			continue
		}
		if g.State == f.State {
			return g.Verdict == checks.Unsaid || n.sure(f, g, draws)
		}
		others = others || n.sure(f, g, draws) && f.State == (measure.State{})
	}
	return others
}

// sure reports a finding that is clear or out. Where it was judged before, the few draws are put right by
// as much as they then differed from all.
func (n *asking) sure(before, after checks.Finding, draws int) bool {
	sure := after.Verdict == checks.Clear || after.Verdict == checks.Out
	was := n.sketched[before.Key()]
	if draws == 0 || before.Chance == nil || was.Chance == nil || after.Chance == nil || after.Verdict == checks.Waiting {
		return sure
	}
	z := score(*after.Chance) + score(*before.Chance) - score(*was.Chance)
	return abs(z) >= score(given("verdict.chance"))
}

// score is how many standard deviations a margin is that holds with a chance.
func score(chance float64) float64 {
	const most = 1 - 1e-4
	return uncertain.NormalQuantile(min(max(chance, 1-most), most))
}
