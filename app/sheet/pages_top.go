package sheet

import (
	"rsc.io/qr"

	"yokebook/app/draw"
)

// codeSide is how wide the QR code is printed.
const codeSide = 24 * unitsPerMM

// quiet is kept free between the code and the box above it: with the gap there, more than the four
// modules that a reader of such codes needs (ISO/IEC 18004; from memory).
const quiet = 1.6 * unitsPerMM

// top is the head of the first page: what the sheet may be used for, what it is, and its codes.
func (l *layer) top() {
	s, size := l.sheet, l.size.title
	lines := draw.Wrap(s.First, size, l.wide-4*gap)
	high := float64(len(lines))*size*draw.Leading + 2*gap
	style := draw.Body
	if s.Alarm {
		style = draw.Worst
	}
	l.box(style, edge, l.y, l.wide, high)
	text := draw.Plain
	if s.Alarm {
		text = draw.Worst
	}
	l.write(edge+2*gap, l.y+gap, lines, size, text)
	l.y += high + 2*gap
	start := l.y
	room := l.wide - codeSide - gutter
	l.y += l.write(edge, l.y, draw.Wrap(s.Name, l.size.head, room), l.size.head, draw.Plain) + gap
	l.y += l.write(edge, l.y, draw.Wrap(s.Title, l.size.title, room), l.size.title, draw.Read) + 2*gap
	for _, p := range s.identity() {
		name := 26 * unitsPerMM
		l.write(edge, l.y, []string{p.Name}, l.size.body, draw.Quiet)
		l.y += l.write(edge+name, l.y, draw.Wrap(p.Value, l.size.body, room-name), l.size.body, draw.Plain)
	}
	start += quiet
	if l.code(edge+l.wide-codeSide, start) && l.y < start+codeSide {
		l.y = start + codeSide
	}
	l.y += gap
}

// box is an outline.
func (l *layer) box(style draw.Style, x, y, w, h float64) {
	l.page().Marks = append(l.page().Marks, draw.Mark{Style: style, Closed: true,
		Points: []draw.Point{{X: x, Y: y}, {X: x + w, Y: y}, {X: x + w, Y: y + h}, {X: x, Y: y + h}}})
}

// code draws the QR code of build and check code: neighbours in a row as one bar.
func (l *layer) code(x, y float64) bool {
	code, err := qr.Encode(CodeText(l.sheet.Build, l.sheet.Code), qr.M)
	if err != nil {
		return false
	}
	cell := codeSide / float64(code.Size)
	for row := range code.Size {
		for from := 0; from < code.Size; from++ {
			to := from
			for to < code.Size && code.Black(to, row) {
				to++
			}
			if to == from {
				continue
			}
			x0, x1, y0, y1 := x+float64(from)*cell, x+float64(to)*cell, y+float64(row)*cell, y+float64(row+1)*cell
			l.page().Marks = append(l.page().Marks, draw.Mark{Name: "code", Style: draw.Plain, Closed: true, Solid: true,
				Points: []draw.Point{{X: x0, Y: y0}, {X: x1, Y: y0}, {X: x1, Y: y1}, {X: x0, Y: y1}}})
			from = to
		}
	}
	return true
}

// foot numbers the pages, each with the title and the check code.
func (l *layer) foot() {
	s := l.sheet
	for i := range l.pages {
		right := s.says.Say("sheet.footer", s.Code) + "   " + s.says.Say("sheet.page", i+1, len(l.pages))
		p := &l.pages[i]
		y := p.High - edge - l.size.small*draw.Leading
		rest := edge + l.wide - draw.TextWidth(right, l.size.small)
		left := draw.Wrap(s.Title, l.size.small, rest-edge-gutter)
		put := func(x float64, text string) {
			at := draw.Point{X: x, Y: y}
			p.Texts = append(p.Texts, draw.Text{Lines: []string{text}, Size: l.size.small, Style: draw.Quiet,
				Box: draw.Box{Min: at, Max: draw.Point{X: x + draw.TextWidth(text, l.size.small), Y: y + l.size.small*draw.Leading}}})
		}
		if len(left) > 0 {
			put(edge, left[0])
		}
		put(rest, right)
	}
}
