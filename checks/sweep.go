package checks

import (
	"math"
	"slices"

	"yokebook/checks/slip"
	"yokebook/measure"
)

// SweepResult is the shaft line over the axle's travel, from hanging wheels to the bump stops as far
// as their heights are known.
type SweepResult struct {
	Way     string     // how the axle's path is known: "fixed", "links", "leaf", "read", "straight"; "" where it is not
	Joints  []string   // names of the joints, front to rear
	Rows    []SweepRow // no more than 10 mm apart, hanging first
	Missing []Missing  // what would let it say more
	Notes   []Message

	best bool // made without doubt
}

// SweepRow is the line at one height. A nil Span is not known.
type SweepRow struct {
	HeightMM  float64       // hub centre to arch
	TravelMM  float64       // from ride height, toward bump positive
	State     measure.State // what was read at this height; zero where nothing was
	Predicted bool          // computed, not read
	Length    *Span         // mm between the shaft's joint centres
	Slide     *Span         // mm by which the sliding part is further out than at ride height
	Exposed   *Span         // mm drawn out from fully closed
	Angles    []*Span       // deg, one for each joint
	Residual  *Span         // deg
	Ripple    *Span         // per cent
}

// Span is a number with its 5 % and 95 % points.
type Span struct{ Value, Low, High float64 }

// Sweep moves the axle of a build over its travel. Heights at which the line was read show what was
// read, the others what follows from the path of the axle, with intervals by how strongly each cause
// of doubt moves a number (JCGM 100:2008, 5.1; from memory). Where no path is known there are no rows,
// and Missing says what it waits for. b is not changed.
func Sweep(b *measure.Build) *SweepResult {
	return newEngine(b, nil).sweep(&SweepResult{Joints: jointNames(b.Layout)})
}

// SweepBest is Sweep by best values alone: the low and high ends of each Span are its value. It is for
// what moves while somebody looks on; a number without its doubt is not to be judged.
func SweepBest(b *measure.Build) *SweepResult {
	e := emptyEngine(b)
	e.lean = true
	e.gather()
	out := e.sweep(&SweepResult{Joints: jointNames(b.Layout), best: true})
	for _, row := range out.Rows {
		for _, s := range append([]*Span{row.Length, row.Slide, row.Exposed, row.Residual, row.Ripple}, row.Angles...) {
			if s != nil {
				s.Low, s.High = s.Value, s.Value
			}
		}
	}
	return out
}

func (e *engine) sweep(out *SweepResult) *SweepResult {
	b := e.build
	st := &stroke{}
	bump, droop := e.travelEnds(st)
	out.Missing = st.missing
	if bump == nil || b.Layout.Axle == "fixed" {
		return e.sweepStanding(out)
	}
	lines, slides := e.lineModelOver(bump.best, droop.best), e.slideModel(bump.best, droop.best)
	if lines == nil && slides == nil {
		out.Missing = e.strokeMissing(out.Missing)
		return e.sweepStanding(out)
	}
	if out.Way = wayOf(lines, slides); out.Way == wayStraight {
		out.Missing = e.strokeMissing(out.Missing)
	}
	e.sweepModels(out, e.sweepHeights(bump.best, droop.best), lines, slides)
	e.sweepRead(out)
	return out
}

func wayOf(models ...*model) string {
	for _, m := range models {
		if m != nil {
			return m.way
		}
	}
	return ""
}

// sweepHeights lists the heights from hanging to bump: both ends, whole steps of travel between them,
// and those that a line was read at.
func (e *engine) sweepHeights(bump, droop float64) []float64 {
	list := []float64{bump, droop}
	for _, ln := range e.lines {
		if h := e.heightOf(ln.state); h != nil {
			list = append(list, h.best)
		}
	}
	home := bump
	if ride, _ := e.rideHeight(); ride != nil {
		home = ride.best
	}
	first, last := math.Ceil((bump-home)/slip.Step), math.Floor((droop-home)/slip.Step)
	for n := first; n <= last && len(list) < 1000; n++ {
		h := home + float64(n*slip.Step)
		if !slices.ContainsFunc(list, func(have float64) bool { return math.Abs(have-h) < 0.5 }) {
			list = append(list, h)
		}
	}
	slices.Sort(list)
	slices.Reverse(list)
	return slices.CompactFunc(list, func(a, b float64) bool { return math.Abs(a-b) < 1e-9 })
}

// sweepStanding is the one row of an axle that does not move, or of a build without heights: the
// states that were read.
func (e *engine) sweepStanding(out *SweepResult) *SweepResult {
	if e.build.Layout.Axle == "fixed" {
		out.Way, out.Missing = wayFixed, nil
	}
	for _, ln := range e.lines {
		if ln.state.Case == "" && ln.complete() {
			row := SweepRow{State: ln.state}
			e.readRow(&row, ln)
			out.Rows = append(out.Rows, row)
		}
	}
	return out
}

// sweepRead puts what was read in the place of what was computed.
func (e *engine) sweepRead(out *SweepResult) {
	for _, ln := range e.lines {
		if ln.predicted || ln.state.Case != "" || !ln.complete() {
			continue
		}
		h := e.heightOf(ln.state)
		if h == nil {
			continue
		}
		for i := range out.Rows {
			if row := &out.Rows[i]; math.Abs(row.HeightMM-h.best) < 1e-9 {
				row.Predicted, row.State = false, ln.state
				e.readRow(row, ln)
			}
		}
	}
}

// readRow fills in a line that was read.
func (e *engine) readRow(row *SweepRow, ln *line) {
	v := e.valuesOf(ln)
	row.Angles = nil
	for _, q := range v.angles {
		row.Angles = append(row.Angles, spanOf(q))
	}
	row.Residual = spanOf(v.residual)
	row.Ripple = spanOf(e.rippleOf(v.residual))
	if q := e.here("shaft.length", ln.state); q != nil {
		row.Length = spanOf(q)
	}
	if q := e.here("slip.exposed", ln.state); q != nil {
		row.Exposed = spanOf(q)
	}
}

func spanOf(q *quantity) *Span {
	if q == nil || q.bad {
		return nil
	}
	low, high := q.interval()
	return &Span{q.best, low, high}
}
