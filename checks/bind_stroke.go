package checks

import (
	"fmt"
	"math"
	"slices"

	"yokebook/checks/slip"
	"yokebook/measure"
)

// stroke is how the sliding part goes over the axle's travel. Positions count as the model's slide
// does: the shaft's length, or how far the yoke is drawn out along the output axis.
type stroke struct {
	least, most *quantity // positions; nil until the path is known
	travel      *quantity // the way between them
	ride        *quantity // position at ride height
	shortest    *quantity // drawn out from fully closed at the least position; nil until that was read
	longest     *quantity // and at the most
	state       measure.State
	predicted   bool
	lengths     bool      // positions are lengths of the shaft
	missing     []Missing // what the way waits for
	unread      []Missing // what shortest and longest wait for
	notes       []Message
}

// answer gives one of the stroke's numbers, or what is missing for it. An end of the travel that
// nobody read can only make the number worse.
func (s *stroke) answer(q *quantity) answer {
	a := answer{q: q, missing: slices.Clone(s.missing), notes: slices.Clone(s.notes), predicted: s.predicted}
	if q != s.travel || q == nil {
		a.missing = append(a.missing, s.unread...)
	}
	return a
}

// strokeOf works the stroke out once, at the extremes only.
func (e *engine) strokeOf() *stroke {
	if e.stroke == nil {
		e.stroke = &stroke{}
		e.workStroke(e.stroke)
	}
	return e.stroke
}

func (e *engine) workStroke(st *stroke) {
	exposed, there := e.exposedIn()
	if exposed == nil {
		st.unread = []Missing{{Point: "slip.exposed", State: measure.RideKerb}}
	}
	if e.build.Layout.Axle == "fixed" {
		e.fixedStroke(st, exposed, there)
		return
	}
	bump, droop := e.travelEnds(st)
	if bump == nil || droop.best-bump.best < given("state.height") {
		st.missing = e.strokeMissing(st.missing)
		return
	}
	m := e.slideModel(bump.best, droop.best)
	if m == nil {
		st.missing = e.strokeMissing(st.missing)
		return
	}
	low, high := bump, droop
	if !m.covers(bump.best, droop.best) { // drawn through readings that end before the travel does
		low, high = e.inside(m, bump, droop)
		st.missing = e.strokeMissing(st.missing)
	}
	e.strokeBy(st, m, low, high, exposed, there)
}

// strokeBy computes positions at the ends of the travel and where they turn between them.
func (e *engine) strokeBy(st *stroke, m *model, bump, droop, exposed *quantity, there measure.State) {
	turns, ok := e.turnsOf(m, bump.best, droop.best)
	if !ok {
		st.missing = e.strokeMissing(st.missing)
		return
	}
	ride, _ := e.rideHeight()
	if ride == nil || !m.covers(ride.best) {
		ride = bump
	}
	at := ride
	if exposed != nil {
		if at = e.heightOf(there); at == nil || !m.covers(at.best) {
			st.unread = []Missing{{Point: "slip.exposed", State: measure.RideKerb}, {Point: "hub.height", State: there}}
			exposed, at = nil, ride
		}
	}
	inner := turns[:0:0]
	for _, t := range turns {
		if t.TravelMM != bump.best && t.TravelMM != droop.best {
			inner = append(inner, t)
		}
	}
	out := e.positions(m, bump, droop, ride, at, inner)
	st.least, st.most, st.travel, st.ride, st.state = out[0], out[1], out[2], out[3], there
	st.predicted, st.lengths = !m.read, m.lengths
	st.notes = append(st.notes, m.notes...)
	st.notes = append(st.notes, Message{MsgSlipExtremes, []any{turns[0].TravelMM, turns[1].TravelMM}})
	if note, ok := e.slideWound(m, ride.best); ok {
		st.notes = append(st.notes, note)
	}
	if exposed != nil {
		e.drawnOut(st, exposed, out[4])
	}
}

// positions computes for every draw the least and the most position over the travel, the way between
// them, and the positions at two more heights that it was read at. Where the travel turns inside, at the best values, a
// draw is looked at there too: at a turn a small step aside changes nothing.
func (e *engine) positions(m *model, bump, droop, ride, at *quantity, inner []slip.Extreme) []*quantity {
	k := len(m.args)
	args := append(slices.Clone(m.args), bump, droop, ride, at)
	for _, t := range inner {
		args = append(args, exact(t.TravelMM))
	}
	same := at == ride
	name := fmt.Sprintf("stroke %s %d %v", m.name, len(inner), same)
	return e.combineOwn(name, onAll(5, len(args)), func() formula { return positionsOf(m.open(), k, same) }, args...)
}

// positionsOf is one draw of positions by a model of k args.
func positionsOf(m opened, k int, same bool) formula {
	to := &stand{}
	return func(x, out []float64) {
		ok := m.set(x[:k]) && x[k] <= x[k+1]
		position := func(h float64) float64 {
			ok = ok && m.at(h, to)
			return to.slide
		}
		low, high := x[k], x[k+1]
		out[0], out[1] = position(low), position(high)
		out[0], out[1] = min(out[0], out[1]), max(out[0], out[1])
		for _, h := range x[k+4:] {
			p := position(min(max(h, low), high))
			out[0], out[1] = min(out[0], p), max(out[1], p)
		}
		out[3] = position(x[k+2])
		out[4] = out[3]
		if !same {
			out[4] = position(x[k+3])
		}
		// It stood at both of these: a draw can't go less far than that.
		out[0], out[1] = min(out[0], out[3], out[4]), max(out[1], out[3], out[4])
		out[2] = out[1] - out[0]
		if !ok {
			fill(out, math.NaN())
		}
	}
}

// drawnOut counts the extremes from fully closed, by what was read in one place.
func (e *engine) drawnOut(st *stroke, exposed, there *quantity) {
	out := e.combine("drawn out", 2, func(x, out []float64) {
		out[0], out[1] = slip.Exposed(x[0], x[1], x[2]), slip.Exposed(x[0], x[1], x[3])
	}, exposed, there, st.least, st.most)
	st.shortest, st.longest = out[0], out[1]
}

// slideWound says by how much torque draws the sliding part out further, or in, at a height: it turns
// the housing and with it the joint on the pinion. Not ok where no wind-up is known.
func (e *engine) slideWound(m *model, heightMM float64) (Message, bool) {
	drive, coast := e.windUp(measure.Drive), e.windUp(measure.Coast)
	if m.wind == nil || drive == nil || coast == nil {
		return Message{}, false
	}
	defer m.wind(0)
	to := &stand{}
	at := func(deg float64) float64 {
		m.wind(deg)
		if !m.at(heightMM, to) {
			return math.NaN()
		}
		return to.slide
	}
	m.setBest()
	home := at(0)
	more, less := at(drive.q.best)-home, at(-coast.q.best)-home
	return Message{MsgSlipWound, []any{more, less}}, finite(more) && finite(less)
}

// turnsOf finds the heights at which the sliding part is furthest in and out, at the best values.
func (e *engine) turnsOf(m *model, bump, droop float64) (turns [2]slip.Extreme, ok bool) {
	to := &stand{}
	if !m.setBest() {
		return turns, false
	}
	least, most, err := slip.Extremes(bump, droop, func(h float64) (float64, error) {
		if !m.at(h, to) || math.IsNaN(to.slide) {
			return 0, slip.ErrReach
		}
		return to.slide, nil
	})
	return [2]slip.Extreme{least, most}, err == nil
}

// fixedStroke is that of an axle that does not move: no way at all.
func (e *engine) fixedStroke(st *stroke, exposed *quantity, there measure.State) {
	st.state, st.notes = there, []Message{{MsgPath, []any{wayFixed}}}
	position := exact(0)
	if e.build.Layout.Slip == "shaft" {
		if t := e.take("shaft.length", measure.RideKerb); t != nil {
			position, st.lengths = t.q, true
		}
	}
	st.least, st.most, st.travel, st.ride = position, position, exact(0), position
	if exposed != nil {
		st.shortest, st.longest = exposed, exposed
	}
}

// exposedIn is how far the slip was drawn out, and the state that it was read in, standing first.
func (e *engine) exposedIn() (*quantity, measure.State) {
	for _, s := range []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging, measure.OnBump} {
		if q := e.here("slip.exposed", s); q != nil {
			return q, s
		}
	}
	return nil, measure.State{}
}

// travelEnds are the heights on the bump stops and with the wheels hanging; an end that nobody read
// is missing, and the outermost height that is known stands in for it. Nil when no height is known.
func (e *engine) travelEnds(st *stroke) (bump, droop *quantity) {
	bump, droop = e.heightOf(measure.OnBump), e.heightOf(measure.Hanging)
	if droop == nil {
		st.missing = append(st.missing, Missing{Point: "hub.height", State: measure.Hanging})
	}
	if bump == nil {
		for _, key := range []string{"bump.gap", "bump.rubber"} {
			if t := e.take(key, measure.RideKerb); t == nil {
				st.missing = append(st.missing, Missing{Point: key, State: measure.RideKerb})
			}
		}
		if len(st.missing) == 0 {
			st.missing = append(st.missing, Missing{Point: "hub.height", State: measure.OnBump})
		}
	}
	for _, s := range []measure.State{measure.Hanging, measure.RideKerb, measure.RideLaden, measure.OnBump} {
		h := e.heightOf(s)
		if h == nil {
			continue
		}
		if e.heightOf(measure.OnBump) == nil && (bump == nil || h.best < bump.best) {
			bump = h
		}
		if e.heightOf(measure.Hanging) == nil && (droop == nil || h.best > droop.best) {
			droop = h
		}
	}
	return bump, droop
}

// inside are the outermost heights that a model covers.
func (e *engine) inside(m *model, bump, droop *quantity) (low, high *quantity) {
	low, high = bump, droop
	if !m.covers(bump.best) {
		low = exact(m.bump)
	}
	if !m.covers(droop.best) {
		high = exact(m.droop)
	}
	return low, high
}

// strokeMissing adds what the axle's path waits for: heights, the shaft's length and sizes of springs or
// links, or the length at other heights.
func (e *engine) strokeMissing(missing []Missing) []Missing {
	if e.heightOf(measure.RideKerb) == nil {
		missing = appendMissing(missing, Missing{Point: "hub.height", State: measure.RideKerb})
	}
	if !e.swings() {
		for _, s := range []measure.State{measure.Hanging, measure.RideKerb, measure.OnBump} {
			if e.here("slip.exposed", s) == nil {
				missing = appendMissing(missing, Missing{Point: "slip.exposed", State: s})
			}
		}
		return missing
	}
	if e.anchor() == nil {
		for _, m := range e.lineOf(measure.RideKerb).missing {
			missing = appendMissing(missing, m)
		}
	}
	if e.take("shaft.length", measure.RideKerb) == nil {
		missing = appendMissing(missing, Missing{Point: "shaft.length", State: measure.RideKerb})
	}
	for _, m := range e.motionMissing() {
		missing = appendMissing(missing, m)
	}
	return missing
}
