package remedy

import (
	"slices"

	"yokebook/checks"
)

// solve fills in the ways out of one trouble.
func (s *search) solve(t *Trouble) error {
	var dials []*dial
	for _, d := range s.dials {
		if t.served(d.knob) {
			dials = append(dials, d)
		}
	}
	s.done, s.of = 0, len(dials)+len(dials)*(len(dials)-1)/2+1
	ways, err := s.singles(t, dials)
	if err != nil {
		return err
	}
	slices.SortStableFunc(ways, func(a, b way) int { return a.order(b.rating) })
	best, err := s.pairOf(t, dials, ways)
	if err != nil {
		return err
	}
	var told []setting
	for _, w := range ways {
		told = append(told, w.at)
	}
	if best != nil {
		told = append(told, best.at)
	}
	if err := s.runWhole(told...); err != nil {
		return err
	}
	for _, w := range ways {
		t.Singles = append(t.Singles, s.told(t, w))
	}
	if best != nil {
		pair := s.told(t, *best)
		t.Pair = &pair
	}
	return nil
}

// singles are the ways out by one dial alone, in the order of the dials; what does not do it alone is noted.
func (s *search) singles(t *Trouble, dials []*dial) ([]way, error) {
	found, errs := make([]*way, len(dials)), make([]error, len(dials))
	if err := each(s.ctx, len(dials), func(i int) {
		found[i], errs[i] = s.single(t, dials[i])
		s.part()
	}); err != nil {
		return nil, err
	}
	var ways []way
	for i, w := range found {
		switch {
		case errs[i] != nil:
			return nil, errs[i]
		case w == nil:
			t.Short = append(t.Short, dials[i].knob.Key)
		default:
			ways = append(ways, *w)
		}
	}
	return ways, nil
}

// rating says how good a setting is that works: how many other findings it makes worse, then how much
// work it is.
type rating struct {
	harm int
	work float64
}

// order is negative where r is better than o.
func (r rating) order(o rating) int {
	switch {
	case r.harm != o.harm:
		return r.harm - o.harm
	case r.work < o.work:
		return -1
	case r.work > o.work:
		return 1
	}
	return 0
}

// way is a setting that works in full.
type way struct {
	at setting
	rating
	from, to int // of a single dial: the steps between which it works
}

// rate looks at a setting; not ok where it does not work at a glance.
func (s *search) rate(t *Trouble, at setting) (r rating, ok bool) {
	l := s.lookAt(at)
	if !l.possible || !t.over(l.findings, s.before) {
		return rating{}, false
	}
	return rating{s.harm(t, l.findings), s.work(at)}, true
}

// works reports a setting that works at a glance.
func (s *search) works(t *Trouble, at setting) (bool, error) {
	if err := s.glance(at); err != nil {
		return false, err
	}
	l := s.lookAt(at)
	return l.possible && t.over(l.findings, s.before), nil
}

// confirmed reports a setting that works in full.
func (s *search) confirmed(t *Trouble, at setting) (bool, error) {
	if err := s.run(at); err != nil {
		return false, err
	}
	r := s.ran(at)
	return r != nil && t.over(r.Findings, s.before), nil
}

// work is the effort of a setting: of two changes the root of the sum of squares, so that two small
// ones are less than a large one.
func (s *search) work(at setting) float64 {
	square := 0.0
	for _, c := range s.changes(at) {
		e := c.dial.knob.effort(c.dial.steps[c.step])
		square += float64(e * e)
	}
	return sqrt(square)
}

// near is the chance under which a finding that was clear counts as worse at a glance, so that a run
// still calls clear what a glance does.
const near = 0.965

// harm counts the other findings of the same kind that are worse at a setting than as it is, at a glance:
// worse than by the run and less likely than at a glance, which is too strict where joints cancel.
func (s *search) harm(t *Trouble, findings []checks.Finding) int {
	return s.count(t, findings, func(f, was checks.Finding) bool {
		g := s.glanced[f.Key()]
		if f.Chance == nil || was.Chance == nil || g.Chance == nil {
			return rank(f.Verdict) > rank(was.Verdict)
		}
		slips := was.Verdict == checks.Clear && *f.Chance < near || rank(f.Verdict) > rank(was.Verdict)
		return slips && *f.Chance < *g.Chance
	})
}

// harmInFull counts them by the run of a setting that was run.
func (s *search) harmInFull(t *Trouble, at setting) int {
	return s.count(t, s.ran(at).Findings, func(f, was checks.Finding) bool { return rank(f.Verdict) > rank(was.Verdict) })
}

// count counts the findings that a trouble is not about and that are worse than before.
func (s *search) count(t *Trouble, findings []checks.Finding, worse func(f, was checks.Finding) bool) int {
	n := 0
	for _, f := range findings {
		if t.about(f) || slices.Contains(disputed, f.Check) {
			continue
		}
		if was, known := s.before[f.Key()]; known && worse(f, was) {
			n++
		}
	}
	return n
}
