package sheet

import (
	"math"

	"yokebook/app/draw"
)

// Sizes of a page, in its units of 1/160 inch.
const (
	unitsPerMM = 160 / 25.4
	edge       = 10 * unitsPerMM // kept free on all sides
	gutter     = 4 * unitsPerMM  // between two columns of facts

	gap        = 0.9 * unitsPerMM // between blocks
	readingFar = 310              // mm from which the letters of a drawing are read
)

// sizes are those of the letters.
type sizes struct{ body, small, head, title float64 }

// fitting are the sizes, in points, that are tried one after the other until the sheet goes on as many
// pages as it should; the last is the least that is read in a workshop.
var fitting = []sizes{{7, 6.1, 9.4, 12}, {6.7, 5.8, 9, 11.5}, {6.4, 5.5, 8.6, 11}, {6.2, 5.3, 8.2, 10.5}}

// fewPages is how many pages a sheet should have at most. One that holds more at the least size has more.
const fewPages = 3

// points turns sizes in points into page units.
func (z sizes) points() sizes {
	const f = 160 / 72.
	return sizes{z.body * f, z.small * f, z.head * f, z.title * f}
}

// Pages lays the sheet out on paper. Each page is a drawing page as large as the paper, ready to be
// shown, written as a picture, or put into a document. No row of a table is broken over two pages, and
// no heading stands at the foot of one.
func (s *Sheet) Pages() []draw.Page {
	var l *layer
	for _, z := range fitting {
		l = &layer{sheet: s, wide: s.Paper.Wide*unitsPerMM - 2*edge, size: z.points()}
		l.turn()
		l.top()
		for i, b := range s.Blocks {
			l.block(b, s.Blocks[i+1:])
		}
		if len(l.pages) <= fewPages {
			break
		}
	}
	l.foot()
	return l.pages
}

// layer puts blocks on pages, from top to bottom.
type layer struct {
	sheet *Sheet
	pages []draw.Page
	wide  float64 // of the text
	size  sizes
	y     float64 // where the next block stands
}

// turn begins a page.
func (l *layer) turn() {
	p := l.sheet.Paper
	l.pages = append(l.pages, draw.Page{Wide: p.Wide * unitsPerMM, High: p.High * unitsPerMM, Title: l.sheet.Title})
	l.y = edge
}

func (l *layer) page() *draw.Page { return &l.pages[len(l.pages)-1] }

// bottom is how far down blocks may reach; the footer stands below.
func (l *layer) bottom() float64 { return l.page().High - edge - 1.4*l.size.small }

// need turns the page where so much does not fit any more.
func (l *layer) need(high float64) {
	if l.y+high > l.bottom() && l.y > edge {
		l.turn()
	}
}

// write puts lines at a place and says how high they are.
func (l *layer) write(x, y float64, lines []string, size float64, style draw.Style) float64 {
	if len(lines) == 0 {
		return 0
	}
	high := float64(len(lines)) * size * draw.Leading
	widest := 0.0
	for _, line := range lines {
		widest = math.Max(widest, draw.TextWidth(line, size))
	}
	at := draw.Point{X: x, Y: y}
	l.page().Texts = append(l.page().Texts, draw.Text{Lines: lines, Size: size, Style: style,
		Box: draw.Box{Min: at, Max: draw.Point{X: x + widest, Y: y + high}}})
	return high
}

// rule draws a line across the page.
func (l *layer) rule(style draw.Style, from, to, y float64) {
	l.page().Marks = append(l.page().Marks, draw.Mark{Style: style, Points: []draw.Point{{X: from, Y: y}, {X: to, Y: y}}})
}

// para puts a text over the whole width.
func (l *layer) para(text string, size float64, style draw.Style) {
	l.lines(draw.Wrap(text, size, l.wide), size, style, 0)
	l.y += gap
}

// lines puts lines one after the other, on the next page where they reach the foot.
func (l *layer) lines(lines []string, size float64, style draw.Style, in float64) {
	l.need(math.Min(float64(len(lines)), 3) * size * draw.Leading)
	for _, line := range lines {
		l.need(size * draw.Leading)
		l.y += l.write(edge+in, l.y, []string{line}, size, style)
	}
}

// first is how high the part of a block is that must not be parted from the heading above it.
func (l *layer) first(blocks []Block) float64 {
	if len(blocks) == 0 {
		return 0
	}
	switch b := blocks[0]; b.Kind {
	case Picture:
		return l.lay(b).High
	case Grid:
		return l.together(*b.Table)
	case Facts:
		return 3 * l.size.body * draw.Leading
	}
	return 2 * l.size.body * draw.Leading
}

func (l *layer) block(b Block, next []Block) {
	switch b.Kind {
	case Heading:
		high := l.size.head*draw.Leading + 2*gap
		l.need(high + gap + l.first(next))
		if l.y > edge {
			l.y += gap
		}
		l.y += l.write(edge, l.y, []string{b.Text}, l.size.head, draw.Read)
		l.rule(draw.Read, edge, edge+l.wide, l.y)
		l.y += gap
	case Para:
		l.para(b.Text, l.size.body, draw.Plain)
	case Alarm:
		l.para(b.Text, l.size.body, draw.Worst)
	case Small:
		l.para(b.Text, l.size.small, draw.Quiet)
	case List:
		for _, item := range b.Items {
			l.item(item)
		}
		l.y += gap
	case Facts:
		l.facts(b.Pairs)
	case Grid:
		l.grid(*b.Table)
	case Picture:
		l.picture(b)
	}
}

// item is one line of a list, with a dash before it.
func (l *layer) item(text string) {
	in := 2 * unitsPerMM
	lines := draw.Wrap(text, l.size.small, l.wide-in)
	l.need(l.size.small * draw.Leading)
	l.write(edge, l.y, []string{"–"}, l.size.small, draw.Plain)
	l.lines(lines, l.size.small, draw.Plain, in)
}

// lay puts a drawing on a page of its own, as wide as the text.
func (l *layer) lay(b Block) draw.Page {
	return b.Drawing.Lay(draw.Options{Wide: l.wide, Far: readingFar})
}

// picture puts a drawing on the page, with its scale where it has one.
func (l *layer) picture(b Block) {
	p := l.lay(b)
	high := p.High
	if b.Scaled && p.Scale > 0 {
		high += l.size.small * draw.Leading
	}
	l.need(high)
	p = p.Moved(draw.Point{X: edge, Y: l.y})
	on := l.page()
	on.Marks, on.Texts, on.Signs = append(on.Marks, p.Marks...), append(on.Texts, p.Texts...), append(on.Signs, p.Signs...)
	l.y += p.High
	if b.Scaled && p.Scale > 0 {
		text := l.sheet.says.Say("sheet.scale", l.sheet.says.Number(unitsPerMM/p.Scale, "", 0))
		l.y += l.write(edge+14, l.y, []string{text}, l.size.small, draw.Quiet)
	}
	l.y += gap
}
