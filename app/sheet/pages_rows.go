package sheet

import (
	"math"

	"yokebook/app/draw"
)

// facts puts pairs in two columns, name and value side by side.
func (l *layer) facts(pairs []Pair) {
	column := (l.wide - gutter) / 2
	name := column * 0.42
	for i := 0; i < len(pairs); i += 2 {
		var high float64
		row := pairs[i:min(i+2, len(pairs))]
		laid := make([][2][]string, len(row))
		for k, p := range row {
			laid[k] = [2][]string{draw.Wrap(p.Name, l.size.body, name-gap), draw.Wrap(p.Value, l.size.body, column-name)}
			high = math.Max(high, float64(max(len(laid[k][0]), len(laid[k][1])))*l.size.body*draw.Leading)
		}
		l.need(high)
		for k, lines := range laid {
			x := edge + float64(k)*(column+gutter)
			l.write(x, l.y, lines[0], l.size.body, draw.Quiet)
			l.write(x+name, l.y, lines[1], l.size.body, draw.Plain)
		}
		l.y += high + gap/3
	}
	l.y += gap
}

// cellPad is kept free between the columns of a table.
const cellPad = 1.4 * unitsPerMM

// headings is the first row of a table.
func (l *layer) headings(t Table) []Cell {
	out := make([]Cell, len(t.Columns))
	for i, c := range t.Columns {
		out[i].Text = c.Head
	}
	return out
}

// widths are those of the columns, by their shares.
func (l *layer) widths(t Table) []float64 {
	sum := 0.0
	for _, c := range t.Columns {
		sum += c.Share
	}
	out := make([]float64, len(t.Columns))
	for i, c := range t.Columns {
		out[i] = l.wide * c.Share / sum
	}
	return out
}

// wrapped breaks the cells of a row and says how high the row is.
func (l *layer) wrapped(t Table, row []Cell) (lines [][]string, high float64) {
	lines = make([][]string, len(row))
	for i, w := range l.widths(t) {
		lines[i] = draw.Wrap(row[i].Text, l.size.small, w-cellPad)
		high = math.Max(high, float64(len(lines[i]))*l.size.small*draw.Leading)
	}
	return lines, high + 0.3*unitsPerMM
}

func (l *layer) rowHeight(t Table, row []Cell) float64 {
	_, high := l.wrapped(t, row)
	return high
}

// grid puts a table on the page; its headings stand again where it goes on overleaf.
func (l *layer) grid(t Table) {
	head := l.headings(t)
	l.need(l.together(t))
	l.row(t, head, draw.Quiet, draw.Measure)
	for _, row := range t.Rows {
		if l.y+l.rowHeight(t, row) > l.bottom() {
			l.turn()
			l.row(t, head, draw.Quiet, draw.Measure)
		}
		l.row(t, row, draw.Plain, draw.Frame)
	}
	l.y += gap
}

// together is how high the part of a table is that stays on one page: all of a short one, else its
// headings and first row.
func (l *layer) together(t Table) float64 {
	high := l.rowHeight(t, l.headings(t))
	least := high + l.rowHeight(t, t.Rows[0])
	for _, row := range t.Rows {
		high += l.rowHeight(t, row)
	}
	if high > (l.bottom()-edge)*0.3 {
		return least
	}
	return high
}

// row puts one row of a table on the page, whole.
func (l *layer) row(t Table, row []Cell, style, under draw.Style) {
	lines, high := l.wrapped(t, row)
	x := float64(edge)
	for i, w := range l.widths(t) {
		ink := style
		if row[i].Strong {
			ink = draw.Worst
		}
		l.write(x, l.y, lines[i], l.size.small, ink)
		x += w
	}
	l.y += high
	l.rule(under, edge, edge+l.wide, l.y-0.15*unitsPerMM)
}
