package checks

import (
	"fmt"
	"strings"

	"yokebook/measure"
)

// part is one axis of the shaft line in one state.
type part struct {
	name  string
	slope *quantity // nil: not read
	plan  *quantity
	turn  *quantity // degrees by which its body is turned to the state's newest setup; nil: none
}

// line is the shaft line in one state, front to rear.
type line struct {
	state     measure.State
	setup     int // the state's newest setup
	parts     []part
	phases    []*quantity // one for each shaft between two joints
	double    []bool      // one for each joint
	missing   []Missing   // slopes not read
	datums    []Missing   // datum readings that setups can't be compared without
	older     []int       // setups that were moved to the newest
	heights   []heightOff
	moved     []heightOff // slopes carried along the axle's path to the state's height
	predicted bool        // computed for a state that was not read
	notes     []Message   // what to know of every number of the line
	gearAt    int         // index of the gearbox among parts: 0, or the last where the pinion is in front
	values    *lineValues
}

type heightOff struct {
	point string
	mm    float64
}

// lineValues are the numbers that a complete line gives.
type lineValues struct {
	angles   []*quantity // one for each joint, deg
	residual *quantity   // of all joints, deg
	drive    []*quantity // for each shaft: residual between gearbox and it, deg
	coast    []*quantity // for each shaft: residual between axle and it, deg
}

// partNames lists the axes of a layout from front to rear.
func partNames(l measure.Layout) []string {
	shafts := []string{"shaft"}
	if l.Shafts == 2 {
		shafts = []string{"front_shaft", "shaft"}
	}
	if l.PinionInFront() {
		return append(append([]string{"pinion"}, shafts...), "gearbox")
	}
	return append(append([]string{"gearbox"}, shafts...), "pinion")
}

// jointNames lists the joints of a layout from front to rear.
func jointNames(l measure.Layout) []string {
	if l.Shafts == 2 {
		return []string{"front", "centre", "rear"}
	}
	return []string{"front", "rear"}
}

// lineOf reads the shaft line of a state, wound up where the state has a case.
func (e *engine) lineOf(state measure.State) *line {
	ln := e.blankLine(state)
	slopes := make([]*taken, len(ln.parts))
	for i, p := range ln.parts {
		key := p.name + ".slope"
		t := e.take(key, state)
		slopes[i] = t
		if t == nil {
			for _, m := range e.lacks(key, state) {
				ln.missing = appendMissing(ln.missing, m)
			}
			continue
		}
		ln.setup = max(ln.setup, t.setup)
		if t.moved > 0 {
			ln.moved = append(ln.moved, heightOff{key, t.moved})
		}
		if t.heightOff > 0 {
			ln.heights = append(ln.heights, heightOff{key, t.heightOff})
		}
	}
	for i := range ln.parts {
		p := &ln.parts[i]
		p.plan = e.planOf(p.name, state)
		if t := slopes[i]; t != nil {
			p.slope = t.q
			p.turn = e.turnTo(ln, t.setup)
		}
		if p.name == "pinion" && p.slope != nil && state.Case != "" {
			p.slope = e.woundUp(p.slope, state)
		}
		if i > 0 && i < len(ln.parts)-1 {
			ln.phases = append(ln.phases, e.phaseOf(p.name, state))
		}
	}
	return ln
}

// turnTo is the turn of the vehicle from an older setup to the line's newest: the difference of
// datum.slope taken in both. Where one is missing the line can't be put together.
func (e *engine) turnTo(ln *line, setup int) *quantity {
	if setup == 0 || setup == ln.setup {
		return nil
	}
	was, is := e.datum(ln.state, setup), e.datum(ln.state, ln.setup)
	for _, d := range []struct {
		q     *quantity
		setup int
	}{{was, setup}, {is, ln.setup}} {
		if d.q == nil {
			ln.datums = appendMissing(ln.datums, Missing{"datum.slope", ln.state.Base(), d.setup})
		}
	}
	if was == nil || is == nil {
		return nil
	}
	if len(ln.older) == 0 || ln.older[len(ln.older)-1] != setup {
		ln.older = append(ln.older, setup)
	}
	return e.combine("turn", 1, func(x, out []float64) { out[0] = x[1] - x[0] }, was, is)[0]
}

// datum is datum.slope of one setup; nil when it was not read there.
func (e *engine) datum(state measure.State, setup int) *quantity {
	var list []measure.Reading
	for _, r := range e.byPoint["datum.slope"] {
		if r.Setup == setup && r.State() == state.Base() && !everywhere(r) {
			list = append(list, r)
		}
	}
	if len(list) == 0 {
		return nil
	}
	point, _ := measure.PointOf("datum.slope")
	return e.repeats(point, list, 0)
}

// planOf is the plan angle of a part: as read, else 0 within the default for what nobody read.
func (e *engine) planOf(name string, state measure.State) *quantity {
	key := name + ".plan"
	if t := e.take(key, state); t != nil {
		return t.q
	}
	return e.assume(key, given("assumed."+key))
}

// phaseOf is the yoke phase of a shaft: as read, else in line within the default.
func (e *engine) phaseOf(name string, state measure.State) *quantity {
	key := name + ".phase"
	if t := e.take(key, state); t != nil {
		return t.q
	}
	return e.assume(key, given("assumed."+key))
}

func (e *engine) assume(key string, half float64) *quantity {
	c := &cause{key: "assumed|" + key, shape: rectangular, input: key, assumed: true}
	return e.number(0, []term{{c, half}}, origin{assumed: []string{key}})
}

// woundUp turns the pinion by its wind-up: under drive the axle housing turns against the
// wheels, so the pinion's front end rises on a front axle as on a rear axle; on the overrun it drops.
func (e *engine) woundUp(slope *quantity, state measure.State) *quantity {
	sign := 1.0
	if state.Case == measure.Coast {
		sign = -1
	}
	w := e.windUp(state.Case)
	if w == nil {
		return slope
	}
	name := fmt.Sprintf("wound up %g", sign)
	return e.combine(name, 1, func(x, out []float64) { out[0] = x[0] + float64(sign*x[1]) }, slope, w.q)[0]
}

func appendMissing(list []Missing, m Missing) []Missing {
	for _, have := range list {
		if have == m {
			return list
		}
	}
	return append(list, m)
}

// sideView reports whether a quantity rests on plan angles that nobody read.
func sideView(q *quantity) bool {
	for _, p := range q.from.assumed {
		if strings.HasSuffix(p, ".plan") {
			return true
		}
	}
	return false
}
