package remedy

import "slices"

// lattice is into how many spans each dial of a pair is cut for a first look.
const lattice = 6

// pairOf finds the best setting of two dials, where it is better than the best single; nil where
// there is none. ways are the singles, best first.
func (s *search) pairOf(t *Trouble, dials []*dial, ways []way) (*way, error) {
	if slices.Contains(disputed, t.Check) {
		return nil, nil // not worth two changes
	}
	best, err := s.bestOf(t, dials, ways, false)
	if err != nil || best != nil || len(ways) > 0 {
		return best, err
	}
	return s.bestOf(t, dials, ways, true)
}

// bestOf goes through the pairs with a dial that rather stands alone, or through those without.
func (s *search) bestOf(t *Trouble, dials []*dial, ways []way, alone bool) (*way, error) {
	var best *way
	var mark *rating // what is to be beaten
	if len(ways) > 0 {
		mark = &ways[0].rating
	}
	for i, d := range dials {
		for _, e := range dials[i+1:] {
			if (d.knob.alone || e.knob.alone) != alone {
				continue
			}
			s.part()
			if !t.within(d.knob, e.knob) {
				continue
			}
			w, err := s.pair(t, d, e, ways, mark)
			if err != nil {
				return nil, err
			}
			if w != nil && w.beats(mark) {
				best, mark = w, &w.rating
			}
		}
	}
	return best, nil
}

// beats reports a rating that is better than a mark; any is better than none.
func (r rating) beats(mark *rating) bool { return mark == nil || r.order(*mark) < 0 }

// hopeless reports an amount of work with which nothing can beat a mark.
func hopeless(work float64, mark *rating) bool {
	return mark != nil && mark.harm == 0 && work >= mark.work
}

// pair looks at a lattice over both dials, goes down from the best setting that works there and from
// the singles of the two, whichever is best, and confirms what it comes to where that beats the mark.
func (s *search) pair(t *Trouble, d, e *dial, ways []way, mark *rating) (*way, error) {
	var starts []point
	for _, w := range ways {
		if w.at.a == d.at {
			starts = append(starts, point{w.at.ia, e.zero})
		}
		if w.at.a == e.at {
			starts = append(starts, point{d.zero, w.at.ia})
		}
	}
	found, err := s.onLattice(t, d, e, mark)
	if err != nil {
		return nil, err
	}
	if found != nil {
		starts = append(starts, *found)
	}
	var best *way
	if start, ok := s.bestStart(t, d, e, starts); ok {
		p, ok, err := s.descend(t, d, e, start)
		if err != nil {
			return nil, err
		}
		if ok && p.i != d.zero && p.j != e.zero {
			r, _ := s.rate(t, both(d, p.i, e, p.j))
			best = &way{at: both(d, p.i, e, p.j), rating: r}
		}
	}
	if best == nil || !best.beats(mark) {
		return nil, nil
	}
	return s.settle(t, d, e, *best)
}

// bestStart is the best of settings that were looked at; not ok where none works.
func (s *search) bestStart(t *Trouble, d, e *dial, starts []point) (best point, ok bool) {
	var rated rating
	for _, p := range starts {
		if r, works := s.rate(t, both(d, p.i, e, p.j)); works && (!ok || r.order(rated) < 0) {
			best, rated, ok = p, r, true
		}
	}
	return best, ok
}

// point is a step of each of two dials.
type point struct{ i, j int }

// onLattice is the best setting of a lattice that works at a glance.
func (s *search) onLattice(t *Trouble, d, e *dial, mark *rating) (*point, error) {
	var list []setting
	var points []point
	for _, i := range d.coarse() {
		for _, j := range e.coarse() {
			at := both(d, i, e, j)
			if hopeless(s.work(at), mark) {
				continue
			}
			list, points = append(list, at), append(points, point{i, j})
		}
	}
	if err := s.glance(list...); err != nil {
		return nil, err
	}
	var best *point
	var rated rating
	for n, at := range list {
		if r, ok := s.rate(t, at); ok && (best == nil || r.order(rated) < 0) {
			best, rated = &points[n], r
		}
	}
	return best, nil
}

// coarse are the steps of a dial on the lattice.
func (d *dial) coarse() []int {
	last := len(d.steps) - 1
	stride := max(1, last/lattice)
	var list []int
	for i := d.zero % stride; i <= last; i += stride {
		list = append(list, i)
	}
	return list
}

// strides are the lengths that descend tries, longest first.
var strides = []int{16, 8, 4, 2, 1}

// descend goes from a setting that works to better ones, in all directions and ever shorter strides,
// until none of the neighbours is better.
func (s *search) descend(t *Trouble, d, e *dial, p point) (point, bool, error) {
	if ok, err := s.works(t, both(d, p.i, e, p.j)); err != nil || !ok {
		return p, false, err
	}
	now, _ := s.rate(t, both(d, p.i, e, p.j))
	for n := 0; n < len(strides); {
		moves := s.around(d, e, p, strides[n], now)
		var list []setting
		for _, q := range moves {
			list = append(list, both(d, q.i, e, q.j))
		}
		if err := s.glance(list...); err != nil {
			return p, false, err
		}
		better := -1
		for k, at := range list {
			if r, ok := s.rate(t, at); ok && r.order(now) < 0 {
				better, now = k, r
			}
		}
		if better < 0 {
			n++
			continue
		}
		p = moves[better]
	}
	return p, true, nil
}

// around are the settings one stride away that could be better: those of less work, or all while others
// are made worse.
func (s *search) around(d, e *dial, p point, stride int, now rating) []point {
	var list []point
	for _, m := range []point{{-1, 0}, {1, 0}, {0, -1}, {0, 1}, {-1, -1}, {-1, 1}, {1, -1}, {1, 1},
		{-2, 1}, {-2, -1}, {2, 1}, {2, -1}, {-1, 2}, {1, 2}, {-1, -2}, {1, -2}} {
		q := point{p.i + m.i*stride, p.j + m.j*stride}
		if q.i < 0 || q.j < 0 || q.i >= len(d.steps) || q.j >= len(e.steps) || q.i == d.zero && q.j == e.zero {
			continue
		}
		if now.harm == 0 && s.work(both(d, q.i, e, q.j)) >= now.work {
			continue
		}
		list = append(list, q)
	}
	return list
}

// settle confirms a pair in full; where a run does not agree, it takes the least work near by that it
// does agree to.
func (s *search) settle(t *Trouble, d, e *dial, w way) (*way, error) {
	i, j := w.at.ia, w.at.ib
	var near []setting
	for di := -2; di <= 2; di++ {
		for dj := -2; dj <= 2; dj++ {
			if q := (point{i + di, j + dj}); q.i >= 0 && q.j >= 0 && q.i < len(d.steps) && q.j < len(e.steps) && q.i != d.zero && q.j != e.zero {
				near = append(near, both(d, q.i, e, q.j))
			}
		}
	}
	if err := s.glance(near...); err != nil {
		return nil, err
	}
	var list []way
	for _, at := range near {
		if l := s.lookAt(at); l.possible {
			list = append(list, way{at: at, rating: rating{s.harm(t, l.findings), s.work(at)}})
		}
	}
	slices.SortStableFunc(list, func(a, b way) int { return a.order(b.rating) })
	var best *way
	tries := 0
	for _, c := range list {
		if m := t.margin(s.lookAt(c.at).findings); m < -0.01 || c.order(w.rating) < 0 && m < -0.002 {
			continue
		}
		if tries++; tries > leeway {
			break
		}
		ok, err := s.confirmed(t, c.at)
		if err != nil {
			return nil, err
		}
		if !ok {
			continue
		}
		glanced := c.harm
		if c.harm = s.harmInFull(t, c.at); best == nil || c.order(best.rating) < 0 {
			best = &c
		}
		if c.harm <= glanced {
			break
		}
	}
	return best, nil
}
