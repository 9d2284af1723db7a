package remedy

import (
	"context"
	"slices"
	"sync"

	"yokebook/checks"
)

// search looks for amounts, each changed build judged once.
type search struct {
	ctx     context.Context
	v       *vehicle
	base    *checks.Result
	before  map[string]checks.Finding // of the run
	dials   []*dial
	glanced map[string]checks.Finding // the same at a glance
	lock    sync.Mutex                // of the next two: knobs are looked at side by side
	looks   map[setting]look
	runs    map[setting]*checks.Result // of what is judged
	whole   map[setting]*checks.Result // of everything
	judged  map[string]string          // check → its group, where it has a verdict
	hears   func(done, of int)         // how far a search for one trouble is; may be nil
	done    int                        // parts of it that are done
	of      int                        // parts that there are
}

// dial is a knob that this vehicle has, with its amounts.
type dial struct {
	knob   *Knob
	at     int // place in the table of knobs
	steps  []float64
	zero   int      // index of 0 among them
	groups []string // of the checks that it serves
}

// setting is where up to two dials stand; an index of a table's place and one of steps each.
type setting struct{ a, ia, b, ib int }

// look is what a glance at a setting found.
type look struct {
	possible bool
	findings []checks.Finding
}

func newSearch(ctx context.Context, v *vehicle, prev *checks.Result) *search {
	s := &search{ctx: ctx, v: v, base: checks.Run(v.build, prev), looks: map[setting]look{}, runs: map[setting]*checks.Result{},
		whole: map[setting]*checks.Result{}, judged: map[string]string{}}
	s.before, s.glanced = byKey(s.base.Findings), byKey(checks.Glance(v.build, nil))
	for _, f := range s.base.Findings {
		if c, _ := checks.CheckOf(f.Check); f.Verdict != checks.Unsaid && !f.Untouched {
			s.judged[f.Check] = c.Group
		}
	}
	for i := range Knobs {
		k := &Knobs[i]
		if !k.usable(v) {
			continue
		}
		d := &dial{knob: k, at: i, steps: k.steps(v)}
		d.zero = slices.Index(d.steps, 0)
		for _, check := range k.Serves {
			if c, _ := checks.CheckOf(check); !slices.Contains(d.groups, c.Group) {
				d.groups = append(d.groups, c.Group)
			}
		}
		s.dials = append(s.dials, d)
	}
	return s
}

// part tells that one more part of the search for a trouble is done.
func (s *search) part() {
	s.lock.Lock()
	defer s.lock.Unlock()
	s.done++
	if s.hears != nil {
		s.hears(s.done, s.of)
	}
}

// one is the setting of one dial.
func (d *dial) one(i int) setting { return setting{a: d.at, ia: i, b: -1} }

// both is the setting of two dials; a dial at 0 is left out, so that a single is found again in a pair.
func both(d *dial, i int, e *dial, j int) setting {
	switch {
	case j == e.zero:
		return d.one(i)
	case i == d.zero:
		return e.one(j)
	}
	return setting{d.at, i, e.at, j}
}

func (s *search) dialAt(at int) *dial {
	i := slices.IndexFunc(s.dials, func(d *dial) bool { return d.at == at })
	return s.dials[i]
}

// build is the changed build of a setting; nil where that is not possible.
func (s *search) turned(at setting) *vehicle {
	v := s.v
	for _, p := range s.changes(at) {
		b := p.dial.knob.turn(v, p.dial.steps[p.step])
		if b == nil {
			return nil
		}
		v = &vehicle{b}
	}
	return v
}

// turned is one dial of a setting and where it stands.
type turned struct {
	dial *dial
	step int
}

func (s *search) changes(at setting) []turned {
	out := []turned{{s.dialAt(at.a), at.ia}}
	if at.b >= 0 {
		out = append(out, turned{s.dialAt(at.b), at.ib})
	}
	return out
}

// each does something for a list, two at a time, in any order. It errs when the context is done.
func each(ctx context.Context, n int, do func(i int)) error {
	var wait sync.WaitGroup
	const hands = 2
	for h := range hands {
		wait.Go(func() {
			for i := h; i < n && ctx.Err() == nil; i += hands {
				do(i)
			}
		})
	}
	wait.Wait()
	return ctx.Err()
}

// missing are the settings of a list that a map has nothing of, each once.
func missing[T any](lock *sync.Mutex, m map[setting]T, list []setting) []setting {
	lock.Lock()
	defer lock.Unlock()
	var open []setting
	for _, at := range list {
		if _, known := m[at]; !known && !slices.Contains(open, at) {
			open = append(open, at)
		}
	}
	return open
}

// remember puts what was found of settings into a map.
func remember[T any](lock *sync.Mutex, m map[setting]T, list []setting, found []T) {
	lock.Lock()
	defer lock.Unlock()
	for i, at := range list {
		m[at] = found[i]
	}
}

// lookAt is what a glance found of a setting.
func (s *search) lookAt(at setting) look {
	s.lock.Lock()
	defer s.lock.Unlock()
	return s.looks[at]
}

// ran is what a run found of a setting.
func (s *search) ran(at setting) *checks.Result {
	s.lock.Lock()
	defer s.lock.Unlock()
	return s.runs[at]
}

// glance judges settings that were not looked at yet.
func (s *search) glance(list ...setting) error {
	open := missing(&s.lock, s.looks, list)
	found := make([]look, len(open))
	err := each(s.ctx, len(open), func(i int) {
		if v := s.turned(open[i]); v != nil {
			found[i] = look{true, checks.Glance(v.build, s.kin(open[i]))}
		}
	})
	if err != nil {
		return err
	}
	remember(&s.lock, s.looks, open, found)
	return nil
}

// kin picks the checks of the groups that the dials of a setting serve.
func (s *search) kin(at setting) func(check string) bool {
	var groups []string
	for _, p := range s.changes(at) {
		groups = append(groups, p.dial.groups...)
	}
	return func(check string) bool { return slices.Contains(groups, s.judged[check]) }
}

// run judges settings in full by the checks of their groups; what is not possible has no result.
func (s *search) run(list ...setting) error {
	open := missing(&s.lock, s.runs, list)
	found := make([]*checks.Result, len(open))
	err := each(s.ctx, len(open), func(i int) {
		if v := s.turned(open[i]); v != nil {
			found[i] = checks.RunOnly(v.build, s.base, s.kin(open[i]))
		}
	})
	if err != nil {
		return err
	}
	remember(&s.lock, s.runs, open, found)
	return nil
}

// runWhole judges settings that were run by every check.
func (s *search) runWhole(list ...setting) error {
	list = slices.DeleteFunc(slices.Clone(list), func(at setting) bool { return s.whole[at] != nil })
	found := make([]*checks.Result, len(list))
	err := each(s.ctx, len(list), func(i int) { found[i] = checks.Run(s.turned(list[i]).build, s.runs[list[i]]) })
	if err != nil {
		return err
	}
	for i, at := range list {
		s.whole[at] = found[i]
	}
	return nil
}
