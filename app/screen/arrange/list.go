package arrange

import "fyne.io/fyne/v2"

// List lays out a page of rows with keys to leave and to turn over. Nothing on it scrolls, so that a
// wobbling thumb still hits its row.
type List struct {
	Title fyne.CanvasObject
	Rows  fyne.CanvasObject
	Keys  []fyne.CanvasObject
}

// MinSize is the least page.
func (l *List) MinSize([]fyne.CanvasObject) fyne.Size { return Least }

// Layout stands the keys at the bottom, or on the right of a flat page.
func (l *List) Layout(_ []fyne.CanvasObject, page fyne.Size) {
	s := For(page)
	x, y, w, h := s.Margin, s.Margin, page.Width-2*s.Margin, page.Height-2*s.Margin
	const title = 48
	if s.Form == Flat {
		side := float32(150)
		place(l.Title, x, y, w-side-s.Gap, title)
		place(l.Rows, x, y+title+6, w-side-s.Gap, h-title-6)
		high := min((h-s.Gap*float32(len(l.Keys)-1))/float32(max(1, len(l.Keys))), 150)
		grid(l.Keys, 1, x+w-side, y, side, high*float32(len(l.Keys))+s.Gap*float32(len(l.Keys)-1), s.Gap)
		return
	}
	if s.Form == Wide {
		x, w = x*2, w-x*2
	}
	place(l.Title, x, y, w, title)
	bottom := y + h - s.Key
	place(l.Rows, x, y+title+8, w, bottom-s.Gap-(y+title+8))
	keys := w
	if s.Form == Wide {
		keys = min(w, 700)
	}
	grid(l.Keys, max(1, len(l.Keys)), x, bottom, keys, s.Key, s.Gap)
}

// Rows says how many columns and rows of a list fit a place, with rows no lower than a key.
func Rows(place fyne.Size, s Sizes) (cols, rows int) {
	cols = max(1, int((place.Width+s.Gap)/(300+s.Gap)))
	if s.Form == Upright {
		cols = max(1, int((place.Width+s.Gap)/(400+s.Gap)))
	}
	return cols, max(1, int((place.Height+s.Gap)/(s.Key+s.Gap)))
}

// Row places row number i of a page of rows.
func Row(o fyne.CanvasObject, i, cols, rows int, size fyne.Size, s Sizes) {
	w := (size.Width - s.Gap*float32(cols-1)) / float32(cols)
	h := min((size.Height-s.Gap*float32(rows-1))/float32(rows), s.Key*1.25)
	place(o, float32(i%cols)*(w+s.Gap), float32(i/cols)*(h+s.Gap), w, h)
}
