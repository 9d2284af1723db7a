package draw

import (
	"image"
	"image/color"

	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	vgdraw "gonum.org/v1/plot/vg/draw"
)

// meaning is the colour that plotters are given: it has no shade, it says what is drawn.
type meaning struct {
	style Style
	name  string
	side  Side // of a text
	rank  int
	aside Point // by which a text is moved, page units, y up
}

// RGBA makes it a colour; nobody looks at it.
func (meaning) RGBA() (r, g, b, a uint32) { return 0, 0, 0, 0xFFFF }

// ledger is a canvas of the plotting library that writes down what is drawn on it as shapes, signs and
// labels of a Drawing. Widths and dashes follow from the style, not from what the plotter says, and
// nothing that we plot is turned or scaled.
type ledger struct {
	*Drawing
	now   meaning
	thick vg.Length
	saved []meaning
}

var _ vg.Canvas = (*ledger)(nil)

// SetLineWidth notes whether lines are drawn at all.
func (l *ledger) SetLineWidth(w vg.Length) { l.thick = w }

// SetColor takes a meaning; other colours are frame.
func (l *ledger) SetColor(c color.Color) {
	m, ok := c.(meaning)
	if !ok {
		m = meaning{style: Frame}
	}
	l.now = m
}

// Push keeps the meaning for Pop.
func (l *ledger) Push() { l.saved = append(l.saved, l.now) }

// Pop takes it back.
func (l *ledger) Pop() {
	if n := len(l.saved) - 1; n >= 0 {
		l.now, l.saved = l.saved[n], l.saved[:n]
	}
}

// SetLineDash does nothing: dashes follow from the style.
func (l *ledger) SetLineDash([]vg.Length, vg.Length) {}

// Rotate does nothing, as said above.
func (l *ledger) Rotate(float64) {}

// Translate does nothing, as said above.
func (l *ledger) Translate(vg.Point) {}

// Scale does nothing, as said above.
func (l *ledger) Scale(_, _ float64) {}

// DrawImage does nothing: no chart holds one.
func (l *ledger) DrawImage(vg.Rectangle, image.Image) {}

// FillString does nothing: texts go through anchors.
func (l *ledger) FillString(font.Face, vg.Point, string) {}

// Stroke writes a line down.
func (l *ledger) Stroke(p vg.Path) {
	if pts := pointsOf(p); l.thick > 0 && len(pts) > 1 {
		l.line(l.now.style, l.now.name, pts...)
	}
}

// Fill writes an area down.
func (l *ledger) Fill(p vg.Path) {
	if pts := pointsOf(p); len(pts) > 2 {
		l.area(l.now.style, l.now.name, pts...)
	}
}

// pointsOf are the corners of a path of straight lines.
func pointsOf(p vg.Path) []Point {
	var out []Point
	for _, c := range p {
		if c.Type == vg.MoveComp || c.Type == vg.LineComp {
			out = append(out, pointOf(c.Pos))
		}
	}
	return out
}

func pointOf(p vg.Point) Point { return Point{float64(p.X), float64(p.Y)} }

// ledgerOf finds the ledger under the library's canvas.
func ledgerOf(c vg.Canvas) *ledger {
	switch c := c.(type) {
	case *ledger:
		return c
	case vgdraw.Canvas:
		return ledgerOf(c.Canvas)
	case *vgdraw.Canvas:
		return ledgerOf(c.Canvas)
	}
	return &ledger{Drawing: &Drawing{}}
}

// anchors hands the library's texts over as labels. They take no room in the plot: Lay places them.
type anchors struct{}

var _ text.Handler = anchors{}

// Cache is the library's own; no font is taken from it.
func (anchors) Cache() *font.Cache { return font.DefaultCache }

// Extents are none.
func (anchors) Extents(font.Font) font.Extents { return font.Extents{} }

// Lines are one.
func (anchors) Lines(txt string) []string { return []string{txt} }

// Box is empty.
func (anchors) Box(string, font.Font) (width, height, depth vg.Length) { return 0, 0, 0 }

// Draw writes a label down.
func (anchors) Draw(c vg.Canvas, txt string, sty text.Style, at vg.Point) {
	l := ledgerOf(c)
	l.SetColor(sty.Color)
	l.label(l.now.rank, l.now.side, l.now.style, pointOf(at), txt)
	l.Labels[len(l.Labels)-1].Shift = l.now.aside
}

// dots marks points that were read.
type dots struct{}

// DrawGlyph writes a sign down.
func (dots) DrawGlyph(c *vgdraw.Canvas, sty vgdraw.GlyphStyle, at vg.Point) {
	l := ledgerOf(c.Canvas)
	l.SetColor(sty.Color)
	l.sign(DotSign, l.now.style, l.now.name, pointOf(at), Point{1, 0})
}
