package arrange

import "fyne.io/fyne/v2"

// Ask lays out a page of big answers. Note, Picture and Field may be nil.
type Ask struct {
	Title   fyne.CanvasObject
	Note    fyne.CanvasObject // longer text under the title
	Picture fyne.CanvasObject
	Field   fyne.CanvasObject // what one writes into
	Answers []fyne.CanvasObject
	Foot    fyne.CanvasObject // leaves the page; nil where one has to answer
}

// MinSize is the least page.
func (a *Ask) MinSize([]fyne.CanvasObject) fyne.Size { return Least }

// Layout gives the answers as few columns as fit, stands them at the bottom where the thumb is, and
// leaves the rest to the text. The foot stands below them.
func (a *Ask) Layout(_ []fyne.CanvasObject, page fyne.Size) {
	s := For(page)
	x, w := s.Margin, page.Width-2*s.Margin
	if s.Form == Wide && w > 900 {
		x, w = (page.Width-900)/2, 900
	}
	y, h := s.Margin, page.Height-2*s.Margin
	if a.Foot != nil {
		place(a.Foot, x, y+h-s.Key, min((w-s.Gap)/2, 260), s.Key)
		h -= s.Key + s.Gap
	}
	cols, high := a.columns(len(a.Answers), w, h-s.Gap-a.leastText(s), s)
	rows := float32((len(a.Answers) + cols - 1) / cols)
	pad := rows*high + (rows-1)*s.Gap
	grid(a.Answers, cols, x, y+h-pad, w, pad, s.Gap)
	if n := len(a.Answers); cols > 1 && n%cols == 1 { // one alone in the last row takes all of it
		place(a.Answers[n-1], x, y+h-high, w, high)
	}
	a.text(x, y, w, h-pad-s.Gap, s)
}

// leastText is the room that title, note, picture and field need at least.
func (a *Ask) leastText(s Sizes) float32 {
	least := float32(52)
	if s.Form != Flat {
		least = 64
	}
	switch {
	case a.Note != nil && s.Form == Flat:
		least += 40
	case a.Note != nil:
		least += 70
	}
	if a.Picture != nil && s.Form != Flat {
		least += 110
	}
	if a.Field != nil {
		least += 70
	}
	return least
}

// columns returns how many columns the answers stand in and how high each is.
func (a *Ask) columns(n int, w, h float32, s Sizes) (cols int, high float32) {
	first, most := 1, max(1, int((w+s.Gap)/(s.Key+s.Gap)))
	if s.Form == Flat { // one row, or two
		first = max(1, n)
		if n > 4 {
			first = (n + 1) / 2
		}
	}
	tallest := float32(260)
	if a.Note != nil || a.Field != nil {
		tallest = 120
	}
	for cols = first; ; cols++ {
		rows := float32((n + cols - 1) / cols)
		high = (h - s.Gap*(rows-1)) / rows
		if high >= s.Key || cols >= most {
			return cols, clamp(high, s.Key, tallest)
		}
	}
}

// text shares the room above the answers.
func (a *Ask) text(x, y, w, h float32, s Sizes) {
	const gap = 8
	if a.Picture != nil && s.Form == Flat {
		place(a.Picture, x+w-h*1.7, y, h*1.7, h)
		w -= h*1.7 + gap
	}
	title := h
	if a.Note != nil || a.Field != nil || a.Picture != nil && s.Form != Flat {
		title = clamp(h*0.3, 44, 110)
	}
	place(a.Title, x, y, w, title)
	y, h = y+title+gap, h-title-gap
	if a.Field != nil {
		place(a.Field, x, y, w, 64)
		y, h = y+64+gap, h-64-gap
	}
	if a.Picture != nil && s.Form != Flat {
		high := h
		if a.Note != nil {
			high = h * 0.45
		}
		place(a.Picture, x, y, w, high)
		y, h = y+high+gap, h-high-gap
	}
	place(a.Note, x, y, w, h)
}
