package draw

import (
	"math"
	"slices"

	"yokebook/checks"
	"yokebook/measure"
)

// The chart's own space: panels one above the other, each chartWide × panelHigh.
const (
	chartWide = 1000.0
	panelHigh = 220.0
	panelGap  = 95.0
	tickHigh  = 14.0 // of the ticks below the lowest
	chartFlat = 0.62 // height of the chart as a share of its width
)

// curve is one line of a panel over the rows of the sweep.
type curve struct {
	name  string
	style Style
	at    func(checks.SweepRow) *checks.Span
}

// panel is one part of the chart.
type panel struct {
	title  string
	unit   string
	limit  string // key of the limit that is drawn across; "" for none
	curves []curve
}

// chart lays panels over the heights of a sweep.
type chart struct {
	*Drawing
	s           *Scene
	rows        []checks.SweepRow
	bump, droop float64
}

// travel charts length, angles and residual over the height of the axle, hanging wheels on the left, and
// marks where the axle stands. The chart itself is plotted once.
func (s *Scene) travel(heightMM *float64) Drawing {
	if s.plotted == nil {
		d := s.plot()
		s.plotted = &d
	}
	d := *s.plotted
	if heightMM == nil || d.Box.empty() {
		return d
	}
	if top, bottom, ok := s.Now(*heightMM); ok {
		d.Shapes = append(slices.Clip(d.Shapes), Shape{Name: "now", Style: Read, Points: []Point{top, bottom}})
	}
	return d
}

// plot makes the chart without a mark of where the axle stands.
func (s *Scene) plot() Drawing {
	s.sweep = checks.Sweep(s.build)
	d := Drawing{View: TravelView, Box: emptyBox(), Title: s.says.Say("draw.title.travel"), Flat: chartFlat}
	rows := s.sweep.Rows
	var missing []string
	for _, m := range s.sweep.Missing {
		missing = append(missing, m.Point)
	}
	if len(rows) < 2 {
		d.note(s.says.Say("draw.no_travel"))
		d.note(s.unread(missing))
		return d
	}
	c := chart{&d, s, rows, rows[len(rows)-1].HeightMM, rows[0].HeightMM}
	base, shown := 0.0, c.shown(s.panels())
	for i, p := range shown {
		c.panel(p, base, i == len(shown)-1)
		base -= panelHigh + panelGap
	}
	c.lettered(base + panelGap)
	d.note(s.says.Say("draw.legend.travel"))
	d.note(s.unread(missing))
	return d
}

func (s *Scene) panels() []panel {
	angles := panel{title: s.says.Say("draw.panel.angles"), unit: "deg", limit: "joint.angle"}
	styles := []Style{Predicted, Second, Third}
	if len(s.sweep.Joints) == 3 {
		styles = []Style{Predicted, Third, Second}
	}
	for i, j := range s.sweep.Joints {
		angles.curves = append(angles.curves, curve{s.says.Subject(j), styles[i], func(r checks.SweepRow) *checks.Span {
			if i >= len(r.Angles) {
				return nil
			}
			return r.Angles[i]
		}})
	}
	length := panel{title: s.says.Say("draw.panel.length"), unit: "mm",
		curves: []curve{{"", Predicted, func(r checks.SweepRow) *checks.Span { return r.Length }}}}
	if s.build.Layout.Slip == "gearbox" {
		length = panel{title: s.says.Say("draw.panel.slide"), unit: "mm",
			curves: []curve{{"", Predicted, func(r checks.SweepRow) *checks.Span { return r.Slide }}}}
	}
	residual := panel{title: s.says.Say("draw.panel.residual"), unit: "deg", limit: "joint.residual",
		curves: []curve{{"", Predicted, func(r checks.SweepRow) *checks.Span { return r.Residual }}}}
	return []panel{angles, residual, length}
}

// x is where a height stands.
func (c chart) x(heightMM float64) float64 {
	return chartWide * (c.droop - heightMM) / (c.droop - c.bump)
}

// known reports a row that a person read.
func known(r checks.SweepRow) bool { return !r.Predicted && r.State != (measure.State{}) }

// worstAt is the row and curve of a panel that lie furthest beyond their limit with their whole band, or
// with a part of it; false where all keep it.
func (c chart) worstAt(p panel, limit float64) (row int, k curve, style Style, ok bool) {
	most := math.Inf(-1)
	for i, r := range c.rows {
		for _, have := range p.curves {
			v := have.at(r)
			if v == nil || v.High <= limit {
				continue
			}
			beyond, as := v.High-limit, Unsettled
			if v.Low > limit {
				beyond, as = v.Low+1000, Worst
			}
			if beyond > most {
				most, row, k, style, ok = beyond, i, have, as, true
			}
		}
	}
	return row, k, style, ok
}

// tickStep is a step of 1, 2 or 5 that divides a range into about four.
func tickStep(span float64) float64 {
	if !(span > 0) || math.IsInf(span, 1) {
		return 1
	}
	power := 1.0
	for power > span/4 {
		power /= 10
	}
	for power*10 <= span/4 {
		power *= 10
	}
	for _, n := range []float64{1, 2, 5} {
		if n*power >= span/4.5 {
			return n * power
		}
	}
	return 10 * power
}

// apart is where a curve stands furthest from the others, off the ends.
func (c chart) apart(k curve, all []curve) (heightMM, value float64) {
	best := -1.0
	for _, r := range c.rows[len(c.rows)/8 : len(c.rows)-len(c.rows)/8] {
		v, nearest := k.at(r), math.Inf(1)
		if v == nil {
			continue
		}
		for _, o := range all {
			if w := o.at(r); w != nil && o.name != k.name {
				nearest = math.Min(nearest, math.Abs(w.Value-v.Value))
			}
		}
		if nearest > best {
			best, heightMM, value = nearest, r.HeightMM, v.Value
		}
	}
	return heightMM, value
}

// lettered names the states that were read below all panels.
func (c chart) lettered(bottom float64) {
	for _, r := range c.rows {
		if known(r) {
			c.label(40, Below, Quiet, Point{c.x(r.HeightMM), bottom - tickHigh}, c.s.says.State(r.State))
		}
	}
}
