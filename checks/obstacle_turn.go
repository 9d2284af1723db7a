package checks

import (
	"fmt"
	"math"

	"yokebook/measure"
)

// lever is how far an obstacle stands from the joint that the moving shaft turns about, and the sign
// with which its slope lifts the line there; nil where the shaft beside it doesn't move.
func (e *engine) lever(o obstacle) (lever *quantity, sign float64, missing []Missing) {
	layout := e.build.Layout
	first, last := "", "shaft.length"
	if layout.Shafts == 2 {
		first, last = "front_shaft.length", "shaft.length"
	}
	switch {
	case layout.PinionInFront():
		end := last
		if first != "" {
			end = first
		}
		length := e.runningLength(end)
		if length == nil {
			return nil, 0, e.lacks(end, measure.RideKerb)
		}
		if first != "" && o.station.best >= length.best {
			return nil, 0, nil
		}
		return e.combine("from the rear joint", 1, func(x, out []float64) { out[0] = x[0] - x[1] }, length, o.station)[0], 1, nil
	case first != "":
		length := e.runningLength(first)
		if length == nil {
			return nil, 0, []Missing{need(first)}
		}
		if o.station.best <= length.best {
			return nil, 0, nil
		}
		return e.combine("from the centre joint", 1, func(x, out []float64) { out[0] = x[1] - x[0] }, length, o.station)[0], -1, nil
	}
	return o.station, -1, nil
}

func (e *engine) lineIn(s measure.State) *line {
	for _, ln := range e.lines {
		if ln.state == s {
			return ln
		}
	}
	return nil
}

// turnedGap is an obstacle's gap in another state than it was read in, from the slopes of both;
// nil where these don't tell.
func (e *engine) turnedGap(o obstacle, from, to *line, lever *quantity, sign float64) *quantity {
	if from == nil || lever == nil || from == to || to.state.Case != "" {
		return nil
	}
	a, b := e.against(from), e.against(to)
	if a == nil || b == nil {
		return nil
	}
	side := o.side.best
	args := []*quantity{o.gaps[0].q, lever, a[0], a[1], b[0], b[1]}
	return e.combine(fmt.Sprintf("gap, side %g, sign %g", side, sign), 1, func(x, out []float64) {
		was := x[2]
		is := was + (x[4] - x[5]) - (x[2] - x[3])
		rise := sign * x[1] * (math.Sin(is*math.Pi/180) - math.Sin(was*math.Pi/180))
		switch side {
		case 1:
			out[0] = x[0] - rise
		case 2:
			out[0] = x[0] + rise
		default:
			out[0] = x[0]
		}
	}, args...)[0]
}

// against gives the slopes of the moving shaft and of the gearbox in one state, both turned to its
// newest setup; nil where one is missing or the setups don't compare.
func (e *engine) against(ln *line) []*quantity {
	shaft := len(ln.parts) - 2
	if ln.gearAt > 0 {
		shaft = 1
	}
	if len(ln.datums) > 0 || ln.parts[shaft].slope == nil || ln.parts[ln.gearAt].slope == nil {
		return nil
	}
	var out []*quantity
	for _, p := range []part{ln.parts[shaft], ln.parts[ln.gearAt]} {
		q := p.slope
		if p.turn != nil {
			q = e.combine("turned", 1, func(x, out []float64) { out[0] = x[0] + x[1] }, p.slope, p.turn)[0]
		}
		out = append(out, q)
	}
	return out
}
