package checks

import (
	"math"
	"slices"

	"yokebook/measure"
)

// lengthsOfHeight are the lengths that change while the axle moves against the body.
var lengthsOfHeight = []string{"bump.gap", "shaft.length", "slip.exposed"}

// lengthAtHeight is a length read at one height as it stands at the state's own, mm: the gap over a
// bump stop changes as the height does, a shaft's length by a share of it to either side, and the room
// beside the shaft by all of it at most.
func (e *engine) lengthAtHeight(key string, q *quantity, list []measure.Reading, reference float64) *quantity {
	lower, share := reference-meanHeight(list), 1.0
	switch key {
	case "bump.gap":
		return e.combine("gap at height", 1, func(x, out []float64) { out[0] = max(0, x[0]+x[1]) }, q, exact(lower))[0]
	case "shaft.length", "slip.exposed":
		share = e.setting("travel.length_share")
		fallthrough
	case "obstacle.gap":
		c := &cause{key: "height|" + string(list[0].ID), shape: rectangular, input: key, reading: list[0].ID}
		off := e.number(0, []term{{c, float64(math.Abs(lower) * share)}}, origin{})
		return e.combine("length at height", 1, func(x, out []float64) { out[0] = x[0] + x[1] }, q, off)[0]
	}
	return q
}

// height is a height in mm, where one was read.
type height struct {
	mm   float64
	read bool
}

// stateHeight is the height that a state means as a number: as read of the hub, else the lower median of
// those that its readings carry; false when none was read.
func (e *engine) stateHeight(state measure.State) (float64, bool) {
	state = state.Base()
	h, known := e.means[state]
	if !known {
		h.mm, h.read = e.findHeight(state)
		e.means[state] = h
	}
	return h.mm, h.read
}

func (e *engine) findHeight(state measure.State) (float64, bool) {
	var hub, carried []float64
	for i := range e.readings {
		r := &e.readings[i]
		if r.Ride != state.Ride || r.Load != state.Load || everywhere(*r) {
			continue
		}
		if h, ok := r.Number(); ok && r.Point == "hub.height" {
			hub = append(hub, h)
		}
		if h, ok := r.Height.Float(); ok {
			carried = append(carried, h)
		}
	}
	heights := hub
	if len(hub) == 0 {
		heights = carried
	}
	if len(heights) == 0 {
		return 0, false
	}
	slices.Sort(heights)
	return heights[(len(heights)-1)/2], true
}

// sameHeight keeps the readings taken at the state's height (or at none). Where there are none of
// these it keeps those nearest to it and says how far off they are in mm.
func (e *engine) sameHeight(list []measure.Reading, state measure.State) ([]measure.Reading, float64) {
	reference, ok := e.stateHeight(state)
	if !ok {
		return list, 0
	}
	off := func(r measure.Reading) float64 {
		h, ok := r.Height.Float()
		if !ok {
			return 0
		}
		return math.Abs(h - reference)
	}
	nearest := math.Inf(1)
	for _, r := range list {
		nearest = math.Min(nearest, off(r))
	}
	same := given("state.height")
	keep := slices.DeleteFunc(slices.Clone(list), func(r measure.Reading) bool { return off(r) > math.Max(nearest, same) })
	if nearest <= same {
		return keep, 0
	}
	return keep, nearest
}

// meanHeight is where readings that carry a height were taken.
func meanHeight(list []measure.Reading) float64 {
	sum := 0.0
	for _, r := range list {
		h, _ := r.Height.Float()
		sum += h
	}
	return sum / float64(len(list))
}
