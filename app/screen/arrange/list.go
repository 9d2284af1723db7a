package arrange

import (
	"slices"

	"fyne.io/fyne/v2"
)

// List lays out a page of rows with keys to leave and to turn over. Nothing on it scrolls, so that a
// wobbling thumb still hits its row.
type List struct {
	Title fyne.CanvasObject
	Tall  bool // the title is a key
	Rows  fyne.CanvasObject
	Keys  []fyne.CanvasObject
	Grows bool // the first key is what the page is for: it takes the room of those that are hidden
}

// MinSize is the least page.
func (l *List) MinSize([]fyne.CanvasObject) fyne.Size { return Least }

// Layout stands the keys at the bottom, or on the right of a flat page.
func (l *List) Layout(_ []fyne.CanvasObject, page fyne.Size) {
	s := For(page)
	x, y, w, h := s.Margin, s.Margin, page.Width-2*s.Margin, page.Height-2*s.Margin
	title, below := float32(48), float32(8)
	if l.Tall {
		title, below = s.Key, s.Gap
	}
	if s.Form == Flat {
		side := float32(150)
		place(l.Title, x, y, w-side-s.Gap, title)
		place(l.Rows, x, y+title+below, w-side-s.Gap, h-title-below)
		high := min((h-s.Gap*float32(len(l.Keys)-1))/float32(max(1, len(l.Keys))), 150)
		grid(l.Keys, 1, x+w-side, y, side, high*float32(len(l.Keys))+s.Gap*float32(len(l.Keys)-1), s.Gap)
		return
	}
	if s.Form == Wide {
		x, w = x*2, w-x*2
	}
	place(l.Title, x, y, w, title)
	bottom := y + h - s.Key
	place(l.Rows, x, y+title+below, w, bottom-s.Gap-(y+title+below))
	l.PlaceKeys(page)
}

// PlaceKeys stands the keys of a page that is not flat anew, after some were hidden or shown.
func (l *List) PlaceKeys(page fyne.Size) {
	s := For(page)
	if s.Form == Flat {
		return
	}
	x, w := s.Margin, page.Width-2*s.Margin
	if s.Form == Wide {
		x *= 2
		w = min(page.Width-2*x, 700)
	}
	cols := max(1, len(l.Keys))
	if l.Grows && !slices.ContainsFunc(l.Keys[1:], fyne.CanvasObject.Visible) {
		cols = 1
	}
	grid(l.Keys[:min(cols, len(l.Keys))], cols, x, page.Height-s.Margin-s.Key, w, s.Key, s.Gap)
}

// Cell is where one row of a list stands: on which page of the list, and where on it.
type Cell struct {
	Page int
	At   fyne.Position
	Size fyne.Size
}

// headRoom is how high a heading in a list is: it is read, never tapped.
const headRoom = 34

// Cells stands n rows in columns, page after page. Rows are as high as a key or as least, whichever
// is more, and higher where that fills the place; head tells which ones are headings, nil none. No
// heading is the last of its column.
func Cells(place fyne.Size, s Sizes, n int, least float32, head func(i int) bool) []Cell {
	cols := columns(place.Width, s)
	w := (place.Width - s.Gap*float32(cols-1)) / float32(cols)
	high := rowHeight(place.Height, max(s.Key, least), s.Gap)
	if head == nil {
		return acrossCells(place, s, n, cols, w, high)
	}
	high = max(s.Key, least) // with headings between them more rows fit than a share of the place
	cells := headedCells(place, s, n, cols, w, high, head)
	for more := high * 1.25; more > high; more -= 2 {
		if higher := headedCells(place, s, n, cols, w, more, head); alike(cells, higher) {
			return higher
		}
	}
	return cells
}

// alike reports whether two lists take as many pages and begin with the same one.
func alike(a, b []Cell) bool {
	for i := range a {
		if a[i].Page == 0 && (b[i].Page != 0 || a[i].At.X != b[i].At.X) {
			return false
		}
	}
	return len(a) == 0 || a[len(a)-1].Page == b[len(b)-1].Page
}

// headedCells stands rows below each other, column after column, with headings between them.
func headedCells(place fyne.Size, s Sizes, n, cols int, w, high float32, head func(i int) bool) []Cell {
	cells := make([]Cell, n)
	top, under := float32(0), min(s.Gap, 6) // where rows begin that stand in line with those below a heading
	col, page, y := 0, 0, float32(0)
	for i := range n {
		h, need := high, high
		if head(i) {
			h = headRoom
			need = h + s.Gap + high
		}
		if y > top && y+need > place.Height+0.01 {
			col++
			if col == cols {
				col, page, top = 0, page+1, 0
			}
			y = top
			if head(i) {
				y = 0
			}
		}
		if col == 0 && y == 0 && head(i) && cols > 1 {
			top = headRoom + under
		}
		cells[i] = Cell{page, fyne.NewPos(float32(col)*(w+s.Gap), y), fyne.NewSize(w, h)}
		y += h + s.Gap
		if head(i) {
			y -= s.Gap - under
		}
	}
	return cells
}

// acrossCells stands rows side by side, line after line.
func acrossCells(place fyne.Size, s Sizes, n, cols int, w, high float32) []Cell {
	lines := max(1, int((place.Height+s.Gap)/(high+s.Gap)+0.001))
	cells := make([]Cell, n)
	for i := range n {
		on := i % (cols * lines)
		cells[i] = Cell{i / (cols * lines), fyne.NewPos(float32(on%cols)*(w+s.Gap), float32(on/cols)*(high+s.Gap)), fyne.NewSize(w, high)}
	}
	return cells
}

// columns says how many columns of a list fit a width.
func columns(width float32, s Sizes) int {
	least := float32(330)
	if s.Form == Upright {
		least = 400
	}
	return max(1, int((width+s.Gap)/(least+s.Gap)))
}

// rowHeight shares a height between as many rows as fit, none lower than least.
func rowHeight(height, least, gap float32) float32 {
	rows := max(1, int((height+gap)/(least+gap)))
	return max(least, min((height-gap*float32(rows-1))/float32(rows), least*1.25))
}
