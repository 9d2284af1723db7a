package draw

import "image/color"

// Vector is a mark of a page with everything that a pen needs, for whoever draws pages elsewhere: as
// vectors in a document, for one. Points and widths are in page units, y down.
type Vector struct {
	Name   string
	Points []Point
	Closed bool
	Ink    color.NRGBA  // of the line; its width is 0 for none
	Fill   *color.NRGBA // of the area; nil for none
	Width  float64
	Dash   []float64 // line and gap by turns; nil for a full line
}

// Vectors lists what is to be drawn of a page besides its texts, in order, arcs and signs as lines.
func (p Page) Vectors(t Theme) []Vector {
	var out []Vector
	add := func(m Mark) {
		pts := m.flat()
		if len(pts) < 2 {
			return
		}
		pen := penOf(m.Style)
		ink := t.Ink(m.Style)
		v := Vector{Name: m.Name, Points: pts, Closed: m.Closed, Ink: ink, Width: pen.width, Dash: pen.dash}
		switch {
		case m.Solid, m.Closed && filled(m.Style):
			v.Fill, v.Width = &ink, 0
		case m.Closed && faced(m.Style):
			paper := t.Paper
			v.Fill = &paper
		}
		out = append(out, v)
	}
	for _, m := range p.Marks {
		add(m)
	}
	for _, s := range p.Signs {
		for _, m := range s.marks() {
			add(m)
		}
	}
	return out
}

// Baseline is how far down the page line i of a text stands.
func (t Text) Baseline(i int) float64 { return t.baseline(i) }

// Moved is the page with everything on it moved; its size stays. The page that it is made from must not
// be used any more.
func (p Page) Moved(by Point) Page {
	p.shift(by)
	return p
}

// TextWidth is the length of a line of text at a font size, page units.
func TextWidth(text string, size float64) float64 { return textWidth(text, size) }

// Wrap breaks a text into lines no wider than wide, at spaces; a word that is wider stands alone.
func Wrap(text string, size, wide float64) []string { return wrap(text, size, wide) }

// Leading is how far one line of text stands below the one above it, as a share of the font size.
const Leading = leading
