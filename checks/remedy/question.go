package remedy

import (
	"slices"
	"strings"

	"yokebook/checks"
	"yokebook/measure"
)

// question is one more reading that could be taken.
type question struct {
	kind, point string
	state       measure.State
	setup       int
	instrument  string
	about       int // index of the reading that it is about; −1: none
}

// answers reports a missing reading that the question gives.
func (q question) answers(m checks.Missing) bool {
	return q.kind == ReadNew && m.Point == q.point && m.State == q.state && (m.Setup == 0 || m.Setup == q.setup)
}

func (q question) reasons() []checks.Message {
	switch q.kind {
	case ReadTurned:
		return []checks.Message{{Key: MsgNextTurned, Args: []any{q.instrument, q.point, q.state.String(), q.setup}}}
	case ReadRepeat:
		return []checks.Message{{Key: MsgNextRepeat, Args: []any{q.point, q.state.String()}}}
	case ReadBetter:
		return []checks.Message{{Key: MsgNextBetter, Args: []any{q.point, q.state.String()}}}
	case ReadInstead:
		return []checks.Message{{Key: MsgNextMeasure, Args: []any{q.point, q.state.String()}}}
	}
	if p, _ := measure.PointOf(q.point); p.Basis == measure.Stated {
		return []checks.Message{{Key: MsgNextState, Args: []any{q.point}}}
	}
	return []checks.Message{{Key: MsgNextRead, Args: []any{q.point, q.state.String()}}}
}

// questions lists what could be read: first what is missing or taken for granted, then what could be read
// better. None comes twice.
func (n *asking) questions() []question {
	var list []question
	add := func(q question) {
		same := func(o question) bool { return o.kind == q.kind && o.point == q.point && o.state == q.state }
		if q.kind == ReadTurned {
			same = func(o question) bool { return o.kind == q.kind && o.instrument == q.instrument && o.setup == q.setup }
		}
		if p, ok := measure.PointOf(q.point); ok && p.In(n.v.build.Layout) && !slices.ContainsFunc(list, same) {
			list = append(list, q)
		}
	}
	for _, f := range n.undecided {
		for _, m := range f.Missing {
			add(n.fresh(m.Point, m.State, m.Setup))
		}
		for _, p := range n.granted(f) {
			add(n.fresh(p, n.wantedIn(p, f.State), 0))
		}
	}
	for _, f := range n.undecided {
		if f.Verdict != checks.Unsure {
			continue
		}
		for i, r := range n.v.build.Readings {
			if !slices.Contains(f.Used, r.ID) {
				continue
			}
			for _, q := range n.again(i, r) {
				add(q)
			}
		}
	}
	return list
}

// granted are the points that a finding took for granted: assumed, worked out, or in a range.
func (n *asking) granted(f checks.Finding) []string {
	list := slices.Clone(f.Assumed)
	for _, p := range f.RestsOn {
		if !n.v.has(p) {
			list = append(list, p)
		}
	}
	if w := f.Weakest; w != nil && w.Reading == nil && !n.v.has(w.Input) {
		list = append(list, w.Input)
	}
	return list
}

// wantedIn is the state in which a point that nobody read is read: that of the finding where it moves with
// the axle, on the bench where it can be, else standing on its wheels.
func (n *asking) wantedIn(point string, of measure.State) measure.State {
	p, _ := measure.PointOf(point)
	switch {
	case p.Moves && of.Ride != "" && of.Ride != measure.Bench:
		return of.Base()
	case p.Moves, p.Caution == measure.CautionUnder:
		return measure.RideKerb
	}
	return measure.OffBench
}

// fresh is a point that was not read yet, with the tool that others of its kind were read with in that
// state, in the state's newest setup.
func (n *asking) fresh(point string, state measure.State, setup int) question {
	q := question{kind: ReadNew, point: point, state: state, setup: setup, about: -1}
	newest, highest := 0, 0
	for _, r := range n.v.build.Readings {
		highest = max(highest, r.Setup)
		if r.State() != state || everywhere(r) {
			continue
		}
		newest = max(newest, r.Setup)
		if strings.HasSuffix(point, ".slope") && strings.HasSuffix(r.Point, ".slope") {
			q.instrument = r.Instrument
		}
	}
	switch {
	case q.setup > 0:
	case state == measure.OffBench, newest > 0:
		q.setup = max(newest, 1)
	default:
		q.setup = highest + 1
	}
	return q
}

// again lists the ways of reading better what was read.
func (n *asking) again(i int, r measure.Reading) []question {
	p, _ := measure.PointOf(r.Point)
	q := question{point: r.Point, state: r.State(), setup: r.Setup, instrument: r.Instrument, about: i}
	of := func(kind string) question { q.kind = kind; return q }
	switch {
	case p.Quantity == measure.Count, p.Quantity == measure.Answer, p.Quantity == measure.Text:
		return nil
	case r.Basis != measure.Measured && p.Basis == measure.Stated:
		return nil
	case r.Basis != measure.Measured:
		return []question{of(ReadInstead)}
	}
	tool := checks.ToolOf(n.v.build, r)
	var list []question
	if tool.Zero > 0 && p.Quantity == measure.Angle && r.Instrument != "" && !n.turnedIn(r) {
		list = append(list, of(ReadTurned))
	}
	if tool.Placing > 0 || tool.Resolution > 0 {
		list = append(list, of(ReadRepeat))
	}
	if tool.Accuracy > 0 || tool.Zero > 0 {
		list = append(list, of(ReadBetter))
	}
	return list
}

// turnedIn reports that a reading's instrument was turned end for end in its setup, in one place.
func (n *asking) turnedIn(r measure.Reading) bool {
	for _, a := range n.v.build.Readings {
		for _, b := range n.v.build.Readings {
			if a.Instrument == r.Instrument && a.Setup == r.Setup && b.Instrument == r.Instrument && b.Setup == r.Setup &&
				a.Point == b.Point && a.State() == b.State() && a.Way == 1 && b.Way == 2 && a.Lay == b.Lay {
				return true
			}
		}
	}
	return false
}
