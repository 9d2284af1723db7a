package checks

import (
	"yokebook/measure"
)

// heightOf is how far the hub's centre stands below the arch in a state, mm: as read, the mean of both
// sides, or what the readings of the state carry with them; on the bump stops also from the gap
// left at another height. Nil when nothing says it.
func (e *engine) heightOf(state measure.State) *quantity {
	state = state.Base()
	if q, known := e.heights[state]; known {
		return q
	}
	q := e.heightRead(state)
	if q == nil && state == measure.OnBump {
		q = e.bumpHeight()
	}
	if e.heights == nil {
		e.heights = map[measure.State]*quantity{}
	}
	e.heights[state] = q
	return q
}

func (e *engine) heightRead(state measure.State) *quantity {
	if t := e.here("hub.height", state); t != nil {
		return t
	}
	left, right := e.here("hub_left.height", state), e.here("hub_right.height", state)
	if left != nil && right != nil {
		return e.combine("mean height", 1, func(x, out []float64) { out[0] = (x[0] + x[1]) / 2 }, left, right)[0]
	}
	return e.heightCarried(state)
}

// here is a point as read in this very state; nil for what holds everywhere.
func (e *engine) here(key string, state measure.State) *quantity {
	if t := e.take(key, state); t != nil && t.setup > 0 {
		return t.q
	}
	return nil
}

// heightCarried is the height that the state's readings carry with them, as good as a tape.
func (e *engine) heightCarried(state measure.State) *quantity {
	value, ok := e.stateHeight(state)
	if !ok {
		return nil
	}
	for _, r := range e.readings {
		if h, ok := r.Height.Float(); !ok || h != value || r.State() != state || everywhere(r) {
			continue
		}
		t := usualTool("tape", measure.Length)
		own := func(name string) string { return "height of state|" + name + "|" + state.String() }
		point := "hub.height"
		return e.number(value, []term{
			{&cause{key: own("accuracy"), shape: rectangular, input: point, reading: r.ID}, t.accuracy},
			{&cause{key: own("resolution"), shape: rectangular, input: point, reading: r.ID}, t.resolution / 2},
			{&cause{key: own("placing"), shape: normal, input: point, reading: r.ID}, t.placing},
		}, origin{used: []measure.ID{r.ID}})
	}
	return nil
}

// bumpHeight is the height on the bump stops, from the gap left at another height and what the rubber
// gives way by. It counts as estimated.
func (e *engine) bumpHeight() *quantity {
	rubber := e.bench("bump.rubber")
	if rubber == nil {
		return nil
	}
	for _, s := range []measure.State{measure.RideKerb, measure.RideLaden, measure.Hanging} {
		gap := e.here("bump.gap", s)
		if gap == nil {
			continue
		}
		at := e.heightOf(s)
		if at == nil {
			continue
		}
		share := e.setting("travel.bump_rubber")
		c := &cause{key: "estimated|bump.rubber share", shape: rectangular, input: "bump.rubber"}
		pressed := e.number(share, []term{{c, float64(share * given("travel.bump_doubt"))}}, origin{restsOn: []string{"bump.rubber"}})
		return e.combine("bump height", 1, func(x, out []float64) {
			out[0] = x[0] - x[1] - float64(x[2]*x[3])
		}, at, gap, rubber, pressed)[0]
	}
	return nil
}

// rideHeight is the height that travel counts from and that springs and links are measured at.
func (e *engine) rideHeight() (*quantity, measure.State) {
	for _, s := range []measure.State{measure.RideKerb, measure.RideLaden} {
		if q := e.heightOf(s); q != nil {
			return q, s
		}
	}
	return nil, measure.RideKerb
}
