package remedy

// scan is into how many spans the amounts of a dial are cut for a first look.
const scan = 24

// leeway is how many steps a full run may differ from a glance in where an amount begins to work.
const leeway = 8

// single finds the best amount of one dial and the span around it that works; nil where none does.
func (s *search) single(t *Trouble, d *dial) (*way, error) {
	if !t.within(d.knob) {
		return nil, nil
	}
	marks := d.marks()
	if err := s.glance(d.settings(marks)...); err != nil {
		return nil, err
	}
	var best *way
	spans, err := s.worksAmong(t, d, marks)
	if err != nil {
		return nil, err
	}
	for _, in := range spans {
		w, err := s.within(t, d, in[0], in[1])
		if err != nil {
			return nil, err
		}
		if w != nil && (best == nil || w.order(best.rating) < 0) {
			best = w
		}
	}
	if best != nil {
		return best, nil
	}
	return s.narrow(t, d, marks)
}

// marks are the steps of a first look: 0, the ends, and what lies evenly between.
func (d *dial) marks() []int {
	last := len(d.steps) - 1
	stride := max(1, (last+scan-1)/scan)
	first := d.zero % stride
	list := []int{}
	if first > 0 {
		list = append(list, 0)
	}
	for i := first; i <= last; i += stride {
		list = append(list, i)
	}
	if list[len(list)-1] != last {
		list = append(list, last)
	}
	return list
}

func (d *dial) settings(steps []int) []setting {
	list := make([]setting, len(steps))
	for n, i := range steps {
		list[n] = d.one(i)
	}
	return list
}

// worksAmong are the runs of marks that work at a glance, widened to the steps where they begin and end.
func (s *search) worksAmong(t *Trouble, d *dial, marks []int) ([][2]int, error) {
	var spans [][2]int
	open := false
	for n, i := range marks {
		_, ok := s.rate(t, d.one(i))
		switch {
		case ok && open:
			spans[len(spans)-1][1] = n
		case ok:
			spans = append(spans, [2]int{n, n})
		}
		open = ok
	}
	for k, span := range spans {
		from, to := marks[span[0]], marks[span[1]]
		if span[0] > 0 {
			from = s.edge(t, d, from, marks[span[0]-1])
		}
		if span[1] < len(marks)-1 {
			to = s.edge(t, d, to, marks[span[1]+1])
		}
		spans[k] = [2]int{from, to}
	}
	return s.joined(t, d, spans)
}

// joined makes one of spans between which a run finds that it works too: a glance is too strict where
// joints cancel.
func (s *search) joined(t *Trouble, d *dial, spans [][2]int) ([][2]int, error) {
	var out [][2]int
	for _, span := range spans {
		if n := len(out); n > 0 {
			ok, err := s.confirmed(t, d.one((out[n-1][1]+span[0])/2))
			if err != nil {
				return nil, err
			}
			if ok {
				out[n-1][1] = span[1]
				continue
			}
		}
		out = append(out, span)
	}
	return out, nil
}

// edge halves the way from a step that works to one that does not; the last that works.
func (s *search) edge(t *Trouble, d *dial, in, out int) int {
	for in-out > 1 || out-in > 1 {
		mid := (in + out) / 2
		if ok, err := s.works(t, d.one(mid)); err != nil || !ok {
			out = mid
		} else {
			in = mid
		}
	}
	return in
}

// within picks the best step of a span that works at a glance and confirms it and the ends in full; nil
// where none of those near is confirmed.
func (s *search) within(t *Trouble, d *dial, from, to int) (*way, error) {
	near := nearest(d, from, to)
	far := from + to - near
	outward := near
	if n := near - sign(far-near); far != near && n >= 0 && n < len(d.steps) && n != d.zero {
		outward = n
	}
	if err := s.run(d.one(near), d.one(far), d.one(outward)); err != nil {
		return nil, err
	}
	near, ok, err := s.firm(t, d, outward, far)
	if err != nil || !ok {
		return nil, err
	}
	if far, ok, err = s.firm(t, d, far, near); err != nil || !ok {
		return nil, err
	}
	pick, err := s.kindest(t, d, near, far)
	if err != nil {
		return nil, err
	}
	if ok, err := s.confirmed(t, d.one(pick)); err != nil {
		return nil, err
	} else if !ok {
		pick = near
	}
	r := rating{s.harmInFull(t, d.one(pick)), s.work(d.one(pick))}
	return &way{at: d.one(pick), rating: r, from: min(near, far), to: max(near, far)}, nil
}

func sign(n int) int {
	switch {
	case n > 0:
		return 1
	case n < 0:
		return -1
	}
	return 0
}

// firm goes from one end of a span towards the other until a full run agrees.
func (s *search) firm(t *Trouble, d *dial, end, other int) (int, bool, error) {
	for n := range leeway {
		at := end + sign(other-end)*n
		if ok, err := s.confirmed(t, d.one(at)); err != nil || ok {
			return at, err == nil, err
		}
		if at == other {
			break
		}
	}
	return 0, false, nil
}

// nearest is the step of a span that is least work.
func nearest(d *dial, from, to int) int {
	if abs(d.steps[from]) <= abs(d.steps[to]) {
		return from
	}
	return to
}

// kindest is the step of a span, from its near to its far end, that makes the fewest others worse, of these the least work.
func (s *search) kindest(t *Trouble, d *dial, near, far int) (int, error) {
	list := []int{near}
	for n := 1; n <= scan/2; n++ {
		list = append(list, near+(far-near)*n/(scan/2))
	}
	if err := s.glance(d.settings(list)...); err != nil {
		return 0, err
	}
	pick, harm := near, s.harmAt(t, d.one(near))
	for n, i := range list[1:] {
		if h := s.harmAt(t, d.one(i)); h < harm {
			// Between the mark before and this one the harm ends: halve the way there.
			in, out := i, list[n]
			for in-out > 1 || out-in > 1 {
				mid := (in + out) / 2
				if err := s.glance(d.one(mid)); err != nil {
					return 0, err
				}
				if s.harmAt(t, d.one(mid)) <= h {
					in = mid
				} else {
					out = mid
				}
			}
			pick, harm = in, h
		}
	}
	return pick, nil
}

func (s *search) harmAt(t *Trouble, at setting) int { return s.harm(t, s.lookAt(at).findings) }

// narrow looks between marks for a span that slipped through: around the mark that comes nearest.
func (s *search) narrow(t *Trouble, d *dial, marks []int) (*way, error) {
	best, most := -1, 0.0
	for n, i := range marks {
		l := s.lookAt(d.one(i))
		if m := t.margin(l.findings); l.possible && (best < 0 || m > most) {
			best, most = n, m
		}
	}
	if best < 0 {
		return nil, nil
	}
	var list []int
	for i := marks[max(0, best-1)]; i <= marks[min(len(marks)-1, best+1)]; i++ {
		list = append(list, i)
	}
	if err := s.glance(d.settings(list)...); err != nil {
		return nil, err
	}
	spans, err := s.worksAmong(t, d, list)
	if err != nil {
		return nil, err
	}
	if len(spans) == 0 { // the glance may be too strict: what comes nearest is run
		spans = [][2]int{{marks[best], marks[best]}}
	}
	for _, in := range spans {
		if w, err := s.within(t, d, in[0], in[1]); err != nil || w != nil {
			return w, err
		}
	}
	return nil, nil
}
