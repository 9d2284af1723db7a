package draw

import (
	"math"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	vgdraw "gonum.org/v1/plot/vg/draw"

	"yokebook/checks"
	"yokebook/checks/limits"
)

// ringRoom is kept between an axis and its numbers for the ring around what was read at its edge.
const ringRoom = 2*signSize - 2

// shown are the panels of which something is known.
func (c chart) shown(all []panel) []panel {
	var out []panel
	for _, p := range all {
		if _, _, ok := c.span(p); ok {
			out = append(out, p)
		}
	}
	return out
}

// span is what the bands of a panel reach over; false where nothing of it is known.
func (c chart) span(p panel) (low, high float64, ok bool) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, r := range c.rows {
		for _, k := range p.curves {
			if v := k.at(r); v != nil {
				low, high = math.Min(low, v.Low), math.Max(high, v.High)
			}
		}
	}
	if p.unit == "deg" {
		low = 0
	}
	return low, high, finite(low, high)
}

// panel plots one panel whose upper edge stands at top; the lowest carries the heights.
func (c chart) panel(p panel, top float64, lowest bool) {
	low, high, _ := c.span(p)
	step := tickStep(high - low)
	low, high = math.Floor(low/step)*step, math.Ceil(high/step+0.15)*step
	sheet := c.sheet(low, high, step, lowest)
	c.fill(sheet, p, low, high)
	bottom := top - panelHigh
	if lowest {
		bottom -= tickHigh
	}
	on := vgdraw.Canvas{Canvas: &ledger{Drawing: c.Drawing}, Rectangle: vg.Rectangle{
		Min: vg.Point{X: 0, Y: vg.Length(bottom)}, Max: vg.Point{X: chartWide, Y: vg.Length(top)}}}
	sheet.Draw(on)
	c.letter(sheet, sheet.DataCanvas(on), p, high)
	c.line(Frame, "", Point{chartWide, top - panelHigh}, Point{chartWide, top})
	c.label(2, Above, Plain, Point{0, top}, p.title)
}

// sheet is an empty plot: hanging wheels on the left, its ticks at whole steps, its texts our labels.
func (c chart) sheet(low, high, step float64, lowest bool) *plot.Plot {
	s := plot.New()
	s.BackgroundColor = nil
	s.TextHandler = anchors{}
	s.X.Scale = plot.InvertedScale{Normalizer: plot.LinearScale{}}
	s.X.Padding, s.Y.Padding = 0, 0
	s.X.Width, s.Y.Width = 0, 0
	s.X.Min, s.X.Max, s.Y.Min, s.Y.Max = c.bump, c.droop, low, high
	for _, axis := range []*plot.Axis{&s.X, &s.Y} {
		axis.Label.TextStyle = text.Style{Handler: anchors{}}
		axis.Tick.LineStyle = stroke(Frame, "")
		axis.Tick.Length = 0
	}
	s.Y.Tick.Label = text.Style{Handler: anchors{}, Color: meaning{style: Quiet, side: Left, aside: Point{-ringRoom, 0}}}
	s.X.Tick.Label = text.Style{Handler: anchors{}, Color: meaning{style: Quiet, side: Below, rank: 1}}
	s.Y.Tick.Marker = c.ticks(low, high, step)
	s.X.Tick.Marker = plot.ConstantTicks(nil)
	for _, t := range c.ticks(low, high, step) {
		c.Left = math.Max(c.Left, textWidth(t.Label, TextSize(Distance, 16))+8+ringRoom)
	}
	if lowest {
		s.X.Tick.Marker, s.X.Tick.Length = c.ticks(math.Ceil(c.bump/tickStep(c.droop-c.bump))*tickStep(c.droop-c.bump), c.droop, tickStep(c.droop-c.bump)), tickHigh
	}
	return s
}

func (c chart) ticks(low, high, step float64) plot.ConstantTicks {
	var out plot.ConstantTicks
	for i := 0; low+float64(i)*step <= high+step/1000; i++ {
		v := low + float64(i)*step
		out = append(out, plot.Tick{Value: v, Label: c.s.says.Number(v, "", step)})
	}
	return out
}

// stroke is a line of a style. Any width serves: the style has its own.
func stroke(style Style, name string) vgdraw.LineStyle {
	return vgdraw.LineStyle{Color: meaning{style: style, name: name}, Width: 1}
}

// bare is a plotter that asks for no room beside the plot: what stands at an end of the travel stands at
// the edge, the same in every panel.
type bare struct{ plot.Plotter }

// fill adds grid, limit, bands, curves and what was read to a panel's plot.
func (c chart) fill(sheet *plot.Plot, p panel, low, high float64) {
	add := func(plotters ...plot.Plotter) {
		for _, q := range plotters {
			sheet.Add(bare{q})
		}
	}
	add(&plotter.Grid{Horizontal: stroke(Frame, "")})
	for _, r := range c.rows {
		if known(r) {
			add(&plotter.Line{XYs: plotter.XYs{{X: r.HeightMM, Y: low}, {X: r.HeightMM, Y: high}}, LineStyle: stroke(Guide, "")})
		}
	}
	if row, ok := limits.Of(p.limit); ok {
		if limit := c.limit(p, row.Value); limit < high {
			add(&plotter.Line{XYs: plotter.XYs{{X: c.droop, Y: limit}, {X: c.bump, Y: limit}}, LineStyle: stroke(Unsettled, "limit")})
		}
	}
	for _, k := range p.curves {
		if band := c.band(k, low); len(band) > 3 {
			add(&plotter.Polygon{XYs: []plotter.XYs{band}, Color: meaning{style: Doubt}})
		}
	}
	for _, k := range p.curves {
		add(&plotter.Line{XYs: c.along(k), LineStyle: stroke(k.style, k.name)})
		for _, r := range c.rows {
			if v := k.at(r); v != nil && known(r) {
				at := plotter.XYs{{X: r.HeightMM, Y: v.Value}}
				add(&plotter.YErrorBars{XYs: at, YErrors: plotter.YErrors{{Low: v.Value - math.Max(v.Low, low), High: v.High - v.Value}},
					LineStyle: stroke(Body, "bar"), CapWidth: 12},
					&plotter.Scatter{XYs: at, GlyphStyle: vgdraw.GlyphStyle{Color: meaning{style: Body, name: "read " + r.State.String()}, Shape: dots{}}})
			}
		}
	}
}

// limit is what a panel is judged by: the person's own where one was set.
func (c chart) limit(p panel, common float64) float64 {
	for _, f := range c.s.findings {
		if f.Limit != nil && f.Limit.Key == p.limit {
			return f.Limit.Value
		}
	}
	return common
}

func (c chart) along(k curve) plotter.XYs {
	var out plotter.XYs
	for _, r := range c.rows {
		if v := k.at(r); v != nil {
			out = append(out, plotter.XY{X: r.HeightMM, Y: v.Value})
		}
	}
	return out
}

// band is the doubt of a curve, none of it below the panel: no angle is less than 0.
func (c chart) band(k curve, low float64) plotter.XYs {
	var upper, lower plotter.XYs
	for _, r := range c.rows {
		if v := k.at(r); v != nil {
			upper = append(upper, plotter.XY{X: r.HeightMM, Y: v.High})
			lower = append(plotter.XYs{{X: r.HeightMM, Y: math.Max(v.Low, low)}}, lower...)
		}
	}
	return append(upper, lower...)
}

// letter names limit, curves and the worst place where they lie.
func (c chart) letter(sheet *plot.Plot, on vgdraw.Canvas, p panel, high float64) {
	x, y := sheet.Transforms(&on)
	put := func(heightMM, value float64) Point { return Point{float64(x(heightMM)), float64(y(value))} }
	for _, k := range p.curves {
		if k.name != "" && len(c.along(k)) > 0 {
			c.label(20, Above, inkOfCurve(k.style), put(c.apart(k, p.curves)), k.name)
		}
	}
	row, ok := limits.Of(p.limit)
	if !ok {
		return
	}
	limit := c.limit(p, row.Value)
	if limit < high {
		c.label(50, Above, Unsettled, put(c.droop+(c.bump-c.droop)*0.9, limit), c.s.says.Say("draw.limit", c.s.says.Number(limit, row.Unit, 0)))
	}
	if i, k, style, ok := c.worstAt(p, limit); ok {
		v := k.at(c.rows[i])
		at := put(c.rows[i].HeightMM, v.Value)
		c.sign(RingSign, style, "worst", at, Point{1, 0})
		c.Labels = append(c.Labels, Label{Text: c.worstSaid(v, style, row), At: at, Shift: Point{14, 14}, Side: Right, Rank: 15, Style: style})
	}
}

// worstSaid letters the worst place with its verdict.
func (c chart) worstSaid(v *checks.Span, style Style, row limits.Row) string {
	verdict := checks.Unsure
	if style == Worst {
		verdict = checks.Out
	}
	return c.s.says.Say("draw.judged", c.s.says.WithDoubt(v.Value, row.Unit, (v.High-v.Low)/2), c.s.says.Verdict(verdict))
}

func inkOfCurve(s Style) Style {
	if s == Predicted {
		return Read
	}
	return s
}
