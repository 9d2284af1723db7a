package checks

import (
	"math"
	"slices"

	"yokebook/checks/joint"
)

// sweepModels makes a row for each height out of the models of line and slip, nil where there is none.
func (e *engine) sweepModels(out *SweepResult, heights []float64, lines, slides *model) {
	ride, _ := e.rideHeight()
	for _, h := range heights {
		row := SweepRow{HeightMM: h, Predicted: true, Angles: make([]*Span, len(out.Joints))}
		if ride != nil {
			row.TravelMM = ride.best - h
		}
		out.Rows = append(out.Rows, row)
	}
	if lines != nil {
		out.Notes = lines.notes
		e.sweepLines(out, lines)
	}
	if slides != nil {
		if lines == nil {
			out.Notes = slides.notes
		}
		e.sweepSlides(out, slides)
	}
}

// sweepLines fills in the joints.
func (e *engine) sweepLines(out *SweepResult, m *model) {
	joints, shafts := len(out.Joints), len(out.Joints)-1
	phases := e.bestRead().line.phases
	chain := joint.Chain{PhaseDeg: make([]float64, shafts), Double: e.blankLine(e.bestRead().line.state).double}
	k, each, to := len(m.args), joints+2, &stand{}
	buf := make([]float64, 0, joints)
	spans := e.spread(out.best, each*len(out.Rows), func(x, y []float64) {
		ok := m.set(x[:k])
		copy(chain.PhaseDeg, x[k:])
		for i, row := range out.Rows {
			at := y[i*each : (i+1)*each]
			if !ok || !m.covers(row.HeightMM) || !m.at(row.HeightMM, to) {
				fill(at, math.NaN())
				continue
			}
			chain.Axes = to.axes
			copy(at, chain.Angles(buf))
			at[joints] = chain.Residual(0, joints-1)
			at[joints+1] = joint.Ripple(at[joints])
		}
	}, append(slices.Clone(m.args), phases...))
	for i := range out.Rows {
		at := spans[i*each : (i+1)*each]
		for _, s := range at {
			if s != nil { // neither an angle nor what it does to the speed is ever less than 0
				s.Low = math.Max(s.Low, 0)
			}
		}
		out.Rows[i].Angles = at[:joints:joints]
		out.Rows[i].Residual, out.Rows[i].Ripple = at[joints], at[joints+1]
	}
}

// sweepSlides fills in length and position of the sliding part.
func (e *engine) sweepSlides(out *SweepResult, m *model) {
	const each = 3
	args, k := slices.Clone(m.args), len(m.args)
	ride, _ := e.rideHeight()
	exposed, there := e.exposedIn()
	at := e.heightOf(there)
	known := exposed != nil && at != nil
	if ride == nil {
		ride = exact(math.NaN())
	}
	if !known {
		exposed, at = exact(math.NaN()), ride
	}
	to := &stand{}
	spans := e.spread(out.best, each*len(out.Rows), func(x, y []float64) {
		slide := func(h float64) float64 {
			if !m.at(h, to) {
				return math.NaN()
			}
			return to.slide
		}
		if !m.set(x[:k]) {
			fill(y, math.NaN())
			return
		}
		home, from := slide(x[k]), slide(x[k+1])
		for i, row := range out.Rows {
			now := math.NaN()
			if m.covers(row.HeightMM) {
				now = slide(row.HeightMM)
			}
			y[each*i] = math.NaN()
			switch {
			case m.lengths:
				y[each*i] = now
			case finite(now):
				y[each*i] = to.length
			}
			y[each*i+1], y[each*i+2] = now-home, x[k+2]+now-from
		}
	}, append(args, ride, at, exposed))
	for i := range out.Rows {
		row := &out.Rows[i]
		row.Length, row.Slide, row.Exposed = spans[each*i], spans[each*i+1], spans[each*i+2]
	}
}

func fill(list []float64, with float64) {
	for i := range list {
		list[i] = with
	}
}

// oneSided is how many standard deviations from a normal's middle its 95 % point lies.
const oneSided = 1.6448536269514722

// spread computes many numbers at the best values and with each cause one standard deviation up and
// down, and takes them as normal: value ± 1.645 standard deviations hold the 5 % and 95 % points.
// What is not a number at the best values is nil. With onlyBest, no cause is moved.
func (e *engine) spread(onlyBest bool, outs int, f func(x, y []float64), args []*quantity) []*Span {
	x, best := make([]float64, len(args)), make([]float64, outs)
	up, down, square := make([]float64, outs), make([]float64, outs), make([]float64, outs)
	for i, a := range args {
		x[i] = a.best
	}
	f(x, best)
	seen := map[string]bool{}
	for _, a := range args {
		for _, s := range a.shifts {
			if onlyBest || seen[s.cause.key] {
				continue
			}
			seen[s.cause.key] = true
			for i, b := range args {
				x[i], _ = b.shifted(s.cause)
			}
			f(x, up)
			for i, b := range args {
				_, x[i] = b.shifted(s.cause)
			}
			f(x, down)
			for o := range square {
				a, b := up[o]-best[o], down[o]-best[o]
				square[o] += (float64(a*a) + float64(b*b)) / 2
			}
		}
	}
	spans := make([]*Span, outs)
	for o, v := range best {
		if half := float64(oneSided * math.Sqrt(square[o])); finite(v) && finite(half) {
			spans[o] = &Span{v, v - half, v + half}
		}
	}
	return spans
}
