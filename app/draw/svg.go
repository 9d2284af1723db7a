package draw

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// SVG writes the page as a picture that stands alone. The same page and theme give the same bytes.
// Its root says in data-scale how many units make a millimetre.
func (p Page) SVG(t Theme) []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" width="%s" height="%s" viewBox="0 0 %s %s" data-view="%s" data-scale="%s" role="img">`+"\n",
		num(p.Wide), num(p.High), num(p.Wide), num(p.High), p.View, strconv.FormatFloat(p.Scale, 'f', 6, 64))
	fmt.Fprintf(&b, "<title>%s</title>\n", escaped(p.Title))
	p.writeStyles(&b, t)
	fmt.Fprintf(&b, `<rect width="%s" height="%s" fill="%s"/>`+"\n", num(p.Wide), num(p.High), hexOf(t.Paper))
	for _, m := range p.Marks {
		m.write(&b)
	}
	for _, s := range p.Signs {
		for _, m := range s.marks() {
			m.write(&b)
		}
	}
	for _, x := range p.Texts {
		x.write(&b)
	}
	b.WriteString("</svg>\n")
	return b.Bytes()
}

func (p Page) writeStyles(b *bytes.Buffer, t Theme) {
	b.WriteString("<style>\n")
	b.WriteString("path,line,circle{fill:none;stroke-linecap:round;stroke-linejoin:round}\n")
	fmt.Fprintf(b, "text{font-family:'DejaVu Sans Condensed','DejaVu Sans',Verdana,sans-serif;font-stretch:condensed;paint-order:stroke;stroke:%s;stroke-width:4px;stroke-linejoin:round}\n", hexOf(t.Paper))
	for _, s := range Styles {
		pen := penOf(s)
		fill := "none"
		switch {
		case filled(s):
			fill = hexOf(t.Ink(s))
		case faced(s):
			fill = hexOf(t.Paper)
		}
		stroke := fmt.Sprintf("stroke:%s;stroke-width:%s", hexOf(t.Ink(s)), num(pen.width))
		if filled(s) {
			stroke = "stroke:none"
		}
		if pen.dash != nil {
			stroke += ";stroke-dasharray:" + num(pen.dash[0]) + " " + num(pen.dash[1])
		}
		fmt.Fprintf(b, ".%s{%s}.%s.area{fill:%s}.%s.solid{fill:%s;stroke:none}text.%s{fill:%s}\n",
			s, stroke, s, fill, s, hexOf(t.Ink(s)), s, hexOf(t.TextInk(s)))
	}
	b.WriteString("</style>\n")
}

func (m Mark) write(b *bytes.Buffer) {
	class := string(m.Style)
	switch {
	case m.Solid:
		class += " solid"
	case m.Closed:
		class += " area"
	}
	head := fmt.Sprintf(`class="%s"`, class)
	if m.Name != "" {
		head += fmt.Sprintf(` data-name="%s"`, escaped(m.Name))
	}
	if m.Width > 0 {
		head += fmt.Sprintf(` style="stroke-width:%s"`, num(m.Width))
	}
	switch {
	case m.Arc != nil && m.Closed:
		fmt.Fprintf(b, `<circle %s cx="%s" cy="%s" r="%s"/>`+"\n", head, num(m.Arc.Centre.X), num(m.Arc.Centre.Y), num(m.Arc.Radius))
	case m.Arc != nil:
		pts := m.flat()
		from, to, large, sweep := pts[0], pts[len(pts)-1], 0, 0
		if math.Abs(m.Arc.To-m.Arc.From) > math.Pi {
			large = 1
		}
		if m.Arc.To < m.Arc.From {
			sweep = 1
		}
		fmt.Fprintf(b, `<path %s d="M%s %sA%s %s 0 %d %d %s %s"/>`+"\n", head, num(from.X), num(from.Y), num(m.Arc.Radius), num(m.Arc.Radius),
			large, sweep, num(to.X), num(to.Y))
	case len(m.Points) == 2 && !m.Closed:
		fmt.Fprintf(b, `<line %s x1="%s" y1="%s" x2="%s" y2="%s"/>`+"\n", head, num(m.Points[0].X), num(m.Points[0].Y), num(m.Points[1].X), num(m.Points[1].Y))
	case len(m.Points) > 0:
		var d strings.Builder
		for i, p := range m.Points {
			if i > 0 {
				d.WriteByte('L')
			} else {
				d.WriteByte('M')
			}
			d.WriteString(num(p.X) + " " + num(p.Y))
		}
		if m.Closed {
			d.WriteByte('Z')
		}
		fmt.Fprintf(b, `<path %s d="%s"/>`+"\n", head, d.String())
	}
}

func (t Text) write(b *bytes.Buffer) {
	for i, line := range t.Lines {
		fmt.Fprintf(b, `<text class="%s" x="%s" y="%s" font-size="%s">%s</text>`+"\n", t.Style, num(t.Box.Min.X), num(t.baseline(i)), num(t.Size), escaped(line))
	}
}

// baseline is where line i stands.
func (t Text) baseline(i int) float64 {
	return t.Box.Min.Y + t.Size*(float64(i)*leading+(leading-capital)/2+capital)
}

// num writes a number of page units to a hundredth.
func num(f float64) string {
	s := strconv.FormatFloat(math.Round(f*100)/100, 'f', 2, 64)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" || s == "" {
		return "0"
	}
	return s
}

func escaped(s string) string {
	var b bytes.Buffer
	_ = xml.EscapeText(&b, []byte(s)) // a buffer takes everything
	return b.String()
}
