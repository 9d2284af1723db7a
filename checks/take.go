package checks

import (
	"slices"

	"yokebook/measure"
)

// taken is what the current readings of one point give in one state.
type taken struct {
	q         *quantity
	setup     int     // newest setup it was read in; 0: holds in every setup
	moved     float64 // mm of height by which it was carried along the axle's path to the state's height
	heightOff float64 // mm between its height and the state's, where that is more than counts as the same
}

// everywhere reports a reading that holds in every state: taken on the bench, or stated.
func everywhere(r measure.Reading) bool {
	return r.Ride == measure.Bench || r.Basis == measure.Stated
}

// fallback is the order in which other states serve for what does not change with the axle, such as
// the yokes' phase, a tube's diameter or the plan angles.
var fallback = []measure.Ride{measure.AtRide, measure.Droop, measure.Bump}

// take returns what is known of a point in a state: as read, else worked out from other readings;
// nil where neither is there.
func (e *engine) take(key string, state measure.State) *taken {
	at := place{key, state}
	if t, known := e.taken[at]; known {
		return t
	}
	t := e.takeRead(key, state)
	if t == nil {
		t = e.derive(key, state)
	}
	e.taken[at] = t
	return t
}

// takeRead returns what was read of a point in a state, nil when nothing was.
func (e *engine) takeRead(key string, state measure.State) *taken {
	point, ok := measure.PointOf(key)
	if !ok {
		return nil
	}
	var here, all []measure.Reading
	for _, r := range e.byPoint[key] {
		switch {
		case everywhere(r):
			all = append(all, r)
		case r.State() == state.Base():
			here = append(here, r)
		}
	}
	if len(here) == 0 && len(all) == 0 && !point.Moves {
		here = e.elsewhere(key)
	}
	if len(here) > 0 {
		setup := 0
		for _, r := range here {
			setup = max(setup, r.Setup)
		}
		here = slices.DeleteFunc(here, func(r measure.Reading) bool { return r.Setup != setup })
		here, off := e.sameHeight(here, state)
		if off > 0 && movesWithAxle(key) {
			reference, _ := e.stateHeight(state)
			if q := e.moved(key, e.repeats(point, here, 0), meanHeight(here), reference); q != nil {
				return &taken{q: q, setup: setup, moved: off}
			}
		}
		q := e.repeats(point, here, off)
		if off > 0 {
			reference, _ := e.stateHeight(state)
			q = e.lengthAtHeight(key, q, here, reference)
		}
		return &taken{q: q, setup: setup, heightOff: off}
	}
	if len(all) > 0 {
		return &taken{q: e.repeats(point, all, 0)}
	}
	return nil
}

func (e *engine) elsewhere(key string) []measure.Reading {
	for _, ride := range fallback {
		var found []measure.Reading
		for _, r := range e.byPoint[key] {
			if r.Ride == ride && !everywhere(r) && (len(found) == 0 || r.State() == found[0].State()) {
				found = append(found, r)
			}
		}
		if len(found) > 0 {
			return found
		}
	}
	return nil
}
