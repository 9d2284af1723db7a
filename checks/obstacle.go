package checks

import (
	"slices"

	"yokebook/measure"
)

// obstacle is something beside the shaft, told apart by the tag of its readings.
type obstacle struct {
	tag           string
	station, side *quantity
	gaps          []gapRead // one for each state it was read in
}

type gapRead struct {
	state measure.State
	q     *quantity
}

// tagged is what was read of a point under one tag, in one state or, for a point that stays, in any.
func (e *engine) tagged(key, tag string, fits func(measure.Reading) bool) *quantity {
	var list []measure.Reading
	for _, r := range e.byPoint[key] {
		if r.Tag == tag && fits(r) && (len(list) == 0 || r.State() == list[0].State()) {
			list = append(list, r)
		}
	}
	if len(list) == 0 {
		return nil
	}
	p, _ := measure.PointOf(key)
	if !p.Moves {
		return e.repeats(p, list, 0)
	}
	state := list[0].State()
	list, off := e.sameHeight(list, state)
	q := e.repeats(p, list, 0)
	if reference, ok := e.stateHeight(state); ok && off > 0 {
		return e.lengthAtHeight(key, q, list, reference)
	}
	return q
}

func (e *engine) obstacles() []obstacle {
	var tags []string
	for _, r := range e.readings {
		if r.Point == "obstacle.gap" || r.Point == "obstacle.station" || r.Point == "obstacle.side" {
			tags = append(tags, r.Tag)
		}
	}
	slices.Sort(tags)
	var all []obstacle
	for _, tag := range slices.Compact(tags) {
		anywhere := func(measure.Reading) bool { return true }
		o := obstacle{tag: tag, station: e.tagged("obstacle.station", tag, anywhere), side: e.tagged("obstacle.side", tag, anywhere)}
		for _, s := range []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump, measure.OffBench} {
			q := e.tagged("obstacle.gap", tag, func(r measure.Reading) bool { return r.State() == s })
			if q != nil {
				o.gaps = append(o.gaps, gapRead{s, q})
			}
		}
		all = append(all, o)
	}
	return all
}

// room is how near the shaft's centre line comes to an obstacle over the travel, mm.
type room struct {
	q       *quantity
	at      measure.State // where it is nearest
	front   bool          // of two shafts the front one passes there
	guessed bool          // a state that nobody read went into it
	missing []Missing
}

// roomAt follows the centre line to every state read. Where the gap itself was not read, the shaft's
// slope against the gearbox says how far the line has turned about the joint that stays.
func (e *engine) roomAt(o obstacle) room {
	var r room
	if o.station == nil {
		r.missing = append(r.missing, need("obstacle.station"))
	}
	if o.side == nil {
		r.missing = append(r.missing, need("obstacle.side"))
	}
	if len(o.gaps) == 0 {
		r.missing = append(r.missing, Missing{Point: "obstacle.gap", State: measure.RideKerb})
	}
	if len(r.missing) > 0 {
		return r
	}
	lever, sign, missing := e.lever(o)
	if lever == nil && len(missing) > 0 {
		r.missing = missing
		return r
	}
	var near []*quantity
	seen := map[measure.Ride]bool{}
	add := func(s measure.State, q *quantity) {
		if len(near) == 0 || q.best < slices.MinFunc(near, byBest).best {
			r.at = s
		}
		near = append(near, q)
		seen[s.Ride] = true
	}
	for _, g := range o.gaps {
		add(g.state, g.q)
	}
	from := e.lineIn(o.gaps[0].state)
	for _, ln := range e.lines {
		read := slices.ContainsFunc(o.gaps, func(g gapRead) bool { return g.state == ln.state })
		if q := e.turnedGap(o, from, ln, lever, sign); !read && q != nil {
			add(ln.state, q)
			r.guessed = r.guessed || ln.predicted
		}
	}
	r.q = e.combine("least", 1, func(x, out []float64) { out[0] = slices.Min(x) }, near...)[0]
	r.front = e.build.Layout.Shafts == 2 && (lever == nil) != e.build.Layout.PinionInFront()
	if lever == nil || o.side.best == 3 || e.build.Layout.Axle == "fixed" {
		return r
	}
	for _, s := range []measure.State{measure.Hanging, measure.OnBump} {
		if !seen[s.Ride] {
			r.missing = append(r.missing, Missing{Point: "obstacle.gap", State: s})
		}
	}
	return r
}

func byBest(a, b *quantity) int {
	switch {
	case a.best < b.best:
		return -1
	case a.best > b.best:
		return 1
	}
	return 0
}
