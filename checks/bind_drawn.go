package checks

import (
	"fmt"
	"math"

	"yokebook/checks/joint"
	"yokebook/checks/travel"
	"yokebook/measure"
)

// bulge is what a straight line between two heights leaves out, 1/mm² of the way to either end.
func (e *engine) bulge(states int) *quantity {
	if states > 2 {
		return exact(0)
	}
	c := &cause{key: "assumed|travel.radius", shape: rectangular, input: "travel.radius"}
	return e.number(0, []term{{c, 0.5 / e.setting("travel.radius")}}, origin{})
}

// bowed is the bulge in mm at a height between two others.
func bowed(bulge, at float64, heights []float64) float64 {
	if bulge == 0 {
		return 0
	}
	return float64(bulge * float64((at-heights[0])*(heights[len(heights)-1]-at)))
}

// drawnLine is the model drawn through the lines that were read: slopes against the gearbox, height
// by height. Nil for fewer than two heights.
func (e *engine) drawnLine() *model {
	if e.drawn != nil {
		return e.drawn
	}
	lines := e.linesRead()
	if len(lines) < 2 {
		return nil
	}
	n, k := len(lines[0].line.parts), len(lines)
	args := []*quantity{e.bulge(k)}
	for _, r := range lines {
		args = append(args, r.height)
	}
	for _, r := range lines {
		args = append(args, r.line.args(0, n-1)...)
	}
	gear := lines[0].line.gearAt
	m := &model{way: wayRead, name: fmt.Sprintf("drawn %d %d %d", n, k, gear), args: args, read: true,
		bump: lines[0].height.best, droop: lines[k-1].height.best, notes: []Message{{MsgPath, []any{wayRead}}}}
	m.parts = drawnParts(n, k, gear)
	m.open = func() opened {
		d := &drawing{parts: n, gear: gear, slopes: make([][]float64, n), plans: make([]float64, n)}
		for i := range d.slopes {
			d.slopes[i] = make([]float64, k)
		}
		return opened{set: func(x []float64) bool { return d.set(x, k) }, at: d.at}
	}
	m.opened = m.open()
	e.drawn = m
	return m
}

// drawnParts says what each axis rests on: the gearbox on itself where it was read first, the others
// on all heights and on their own slopes and the gearbox's.
func drawnParts(n, k, gear int) [][]int {
	parts := make([][]int, n)
	own := func(state, part int) []int {
		at := 1 + k + 3*(state*n+part)
		return []int{at, at + 1, at + 2}
	}
	for i := range parts {
		if i == gear {
			parts[i] = own(0, gear)
			continue
		}
		for a := range 1 + k {
			parts[i] = append(parts[i], a)
		}
		for s := range k {
			parts[i] = append(append(parts[i], own(s, i)...), own(s, gear)...)
		}
	}
	return parts
}

// drawing is one draw of slopes over heights.
type drawing struct {
	parts, gear int
	bulge       float64
	heights     []float64
	slopes      [][]float64 // of each part against the gearbox, at each height
	plans       []float64
	base        float64 // the gearbox's own slope
}

func (d *drawing) set(x []float64, k int) bool {
	d.bulge, d.heights = x[0], x[1:1+k]
	y := x[1+k:]
	slope := func(state, part int) float64 {
		at := 3 * (state*d.parts + part)
		return y[at] + y[at+2]
	}
	for s := range k {
		for i := range d.slopes {
			d.slopes[i][s] = slope(s, i) - slope(s, d.gear)
		}
	}
	for i := range d.plans {
		d.plans[i] = y[3*i+1]
	}
	d.base = slope(0, d.gear)
	return true
}

func (d *drawing) at(heightMM float64, to *stand) bool {
	to.length, to.slide = math.NaN(), math.NaN()
	to.axes = to.axes[:0]
	for i, slopes := range d.slopes {
		rel := 0.0
		if i != d.gear {
			r, err := travel.Between(heightMM, d.heights, slopes)
			if err != nil {
				r, err = nearEnd(heightMM, d.heights, slopes)
			}
			if err != nil {
				return false
			}
			// A bow of so many mm turns a shaft of a metre by that much over its length.
			rel = r + float64(bowed(d.bulge, heightMM, d.heights)/1000*180/math.Pi)
		}
		to.axes = append(to.axes, joint.AxisOf(d.base+rel, d.plans[i]))
	}
	return true
}

// nearEnd takes the outermost reading for heights that the doubt of a draw, or no more than the same
// place, puts beyond it.
func nearEnd(at float64, heights, values []float64) (float64, error) {
	last := len(heights) - 1
	const near = 25
	switch {
	case at <= heights[0] && heights[0]-at < near:
		return values[0], nil
	case at >= heights[last] && at-heights[last] < near:
		return values[last], nil
	}
	return 0, travel.ErrBetween
}

// slidePoint is how far the sliding part stood at one height.
type slidePoint struct{ value, height *quantity }

// slidesRead lists lengths, or how far the slip was drawn out, whichever was read at more heights.
func (e *engine) slidesRead() (best []slidePoint, lengths bool) {
	keys := []string{"slip.exposed"}
	if e.build.Layout.Slip == "shaft" && e.swings() {
		keys = []string{"shaft.length", "slip.exposed"}
	}
	for _, key := range keys {
		var list []slidePoint
		for _, s := range measure.States {
			if v, h := e.here(key, s), e.heightOf(s); v != nil && h != nil {
				list = append(list, slidePoint{v, h})
			}
		}
		if list = apart(list, func(p slidePoint) *quantity { return p.height }); len(list) > len(best) {
			best, lengths = list, key == "shaft.length"
		}
	}
	return best, lengths
}

// drawnSlide is the model drawn through them, and the number of heights that it rests on. Nil for
// fewer than two.
func (e *engine) drawnSlide() (*model, int) {
	best, lengths := e.slidesRead()
	k := len(best)
	if k < 2 {
		return nil, k
	}
	args := []*quantity{e.bulge(k)}
	for _, p := range best {
		args = append(args, p.height)
	}
	for _, p := range best {
		args = append(args, p.value)
	}
	m := &model{way: wayRead, name: fmt.Sprintf("slide %d", k), args: args, lengths: lengths, read: true,
		bump: best[0].height.best, droop: best[k-1].height.best, notes: []Message{{MsgPath, []any{wayRead}}}}
	m.open = func() opened {
		var now []float64
		at := func(heightMM float64, to *stand) bool {
			heights, values := now[1:1+k], now[1+k:1+2*k]
			v, err := travel.Between(heightMM, heights, values)
			if err != nil {
				v, err = nearEnd(heightMM, heights, values)
			}
			to.axes, to.length = to.axes[:0], math.NaN()
			to.slide = v + bowed(now[0], heightMM, heights)
			return err == nil
		}
		return opened{set: func(x []float64) bool { now = x; return true }, at: at}
	}
	m.opened = m.open()
	return m, k
}
