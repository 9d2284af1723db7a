package draw

import (
	"math"

	"yokebook/checks"
	"yokebook/checks/limits"
	"yokebook/measure"
)

// The chart's own space: panels one above the other, each chartWide × panelHigh.
const (
	chartWide = 1000.0
	panelHigh = 220.0
	panelGap  = 95.0
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

// travel charts length, angles and residual over the height of the axle, hanging wheels on the left.
func (s *Scene) travel(heightMM *float64) Drawing {
	if s.sweep == nil {
		s.sweep = checks.Sweep(s.build)
	}
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
	base := 0.0
	for _, p := range s.panels() {
		if c.panel(p, base) {
			base -= panelHigh + panelGap
		}
	}
	c.heights(base + panelGap)
	if heightMM != nil {
		c.marker(*heightMM, base+panelGap)
	}
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

// panel draws one panel whose upper edge stands at top; false where nothing of it is known.
func (c chart) panel(p panel, top float64) bool {
	low, high := math.Inf(1), math.Inf(-1)
	for _, r := range c.rows {
		for _, k := range p.curves {
			if v := k.at(r); v != nil {
				low, high = math.Min(low, v.Low), math.Max(high, v.High)
			}
		}
	}
	if !finite(low, high) {
		return false
	}
	if p.unit == "deg" {
		low = 0
	}
	step := tickStep(high - low)
	low, high = math.Floor(low/step)*step, math.Ceil(high/step+0.15)*step
	y := func(v float64) float64 { return top - panelHigh*(high-v)/(high-low) }
	c.grid(low, high, step, y)
	if row, ok := limits.Of(p.limit); ok && row.Value < high {
		c.line(Unsettled, "limit", Point{0, y(row.Value)}, Point{chartWide, y(row.Value)})
		c.label(50, Above, Unsettled, Point{chartWide * 0.9, y(row.Value)}, c.s.says.Say("draw.limit", c.s.says.Number(row.Value, row.Unit, 0)))
	}
	for _, k := range p.curves {
		c.band(k, low, y)
	}
	for _, k := range p.curves {
		c.curve(k, p.curves, y)
	}
	for _, r := range c.rows {
		if r.State != (measure.State{}) && !r.Predicted {
			c.line(Guide, "", Point{c.x(r.HeightMM), top}, Point{c.x(r.HeightMM), top - panelHigh})
		}
	}
	c.label(2, Above, Plain, Point{0, top}, p.title)
	return true
}

// tickStep is a step of 1, 2 or 5 that divides a range into about four.
func tickStep(span float64) float64 {
	if !(span > 0) {
		return 1
	}
	power := math.Pow(10, math.Floor(math.Log10(span/4)))
	for _, n := range []float64{1, 2, 5} {
		if n*power >= span/4.5 {
			return n * power
		}
	}
	return 10 * power
}

func (c chart) grid(low, high, step float64, y func(float64) float64) {
	for i := 0; ; i++ {
		v := low + float64(i)*step
		if v > high+step/2 {
			break
		}
		c.line(Frame, "", Point{0, y(v)}, Point{chartWide, y(v)})
		c.Left = math.Max(c.Left, textWidth(c.s.says.Number(v, "", step), TextSize(Distance, 16))+8)
		c.label(0, Left, Quiet, Point{0, y(v)}, c.s.says.Number(v, "", step))
	}
	c.line(Frame, "", Point{0, y(low)}, Point{0, y(high)})
	c.line(Frame, "", Point{chartWide, y(low)}, Point{chartWide, y(high)})
}

// band draws the doubt of a curve, none of it below the panel: no angle is less than 0.
func (c chart) band(k curve, low float64, y func(float64) float64) {
	var upper, lower []Point
	for _, r := range c.rows {
		if v := k.at(r); v != nil {
			upper, lower = append(upper, Point{c.x(r.HeightMM), y(v.High)}), append(lower, Point{c.x(r.HeightMM), y(math.Max(v.Low, low))})
		}
	}
	for i := len(lower) - 1; i >= 0; i-- {
		upper = append(upper, lower[i])
	}
	if len(upper) > 3 {
		c.area(Doubt, "", upper...)
	}
}

// curve draws what is computed, and with dots and bars what was read.
func (c chart) curve(k curve, all []curve, y func(float64) float64) {
	var pts []Point
	for _, r := range c.rows {
		if v := k.at(r); v != nil {
			pts = append(pts, Point{c.x(r.HeightMM), y(v.Value)})
		}
	}
	if len(pts) == 0 {
		return
	}
	c.line(k.style, k.name, pts...)
	for _, r := range c.rows {
		v := k.at(r)
		if v == nil || r.Predicted || r.State == (measure.State{}) {
			continue
		}
		at := Point{c.x(r.HeightMM), y(v.Value)}
		c.line(Body, "bar", Point{at.X, y(v.Low)}, Point{at.X, y(v.High)})
		for _, end := range []float64{v.Low, v.High} {
			c.line(Body, "", Point{at.X - 6, y(end)}, Point{at.X + 6, y(end)})
		}
		c.sign(DotSign, Body, "read "+r.State.String(), at, Point{1, 0})
	}
	if k.name != "" {
		style := k.style
		if style == Predicted {
			style = Read
		}
		c.label(20, Above, style, c.apart(k, all, y), k.name)
	}
}

// apart is where a curve stands furthest from the others, off the ends.
func (c chart) apart(k curve, all []curve, y func(float64) float64) Point {
	best, at := -1.0, Point{}
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
			best, at = nearest, Point{c.x(r.HeightMM), y(v.Value)}
		}
	}
	return at
}

// heights letters the axis of heights below all panels, and the states that were read.
func (c chart) heights(bottom float64) {
	step := tickStep(c.droop - c.bump)
	for h := math.Ceil(c.bump/step) * step; h <= c.droop; h += step {
		x := c.x(h)
		c.line(Frame, "", Point{x, bottom}, Point{x, bottom - 14})
		c.label(1, Below, Quiet, Point{x, bottom - 14}, c.s.says.Number(h, "", step))
	}
	for _, r := range c.rows {
		if r.State != (measure.State{}) && !r.Predicted {
			c.label(40, Below, Quiet, Point{c.x(r.HeightMM), bottom - 14}, c.s.says.State(r.State))
		}
	}
}

// marker draws where the axle stands now.
func (c chart) marker(heightMM, bottom float64) {
	x := c.x(math.Min(math.Max(heightMM, c.bump), c.droop))
	c.line(Read, "now", Point{x, 0}, Point{x, bottom})
}
