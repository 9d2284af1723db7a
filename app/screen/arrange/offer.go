package arrange

import "fyne.io/fyne/v2"

// Offer lays out the page that shows a code to scan, as large as there is room, with its words.
type Offer struct {
	Title fyne.CanvasObject
	Code  fyne.CanvasObject // square
	Words fyne.CanvasObject
	Keys  []fyne.CanvasObject
}

// MinSize is the least page.
func (o *Offer) MinSize([]fyne.CanvasObject) fyne.Size { return Least }

// Layout stands the words beside the code on a flat or wide page, else below it.
func (o *Offer) Layout(_ []fyne.CanvasObject, page fyne.Size) {
	s := For(page)
	x, y, w, h := s.Margin, s.Margin, page.Width-2*s.Margin, page.Height-2*s.Margin
	const gap, title = 8, 52
	if s.Form != Upright {
		side := min(h, w*0.5)
		place(o.Code, x, y+(h-side)/2, side, side)
		left, right := x+side+s.Gap, w-side-s.Gap
		place(o.Title, left, y, right, title)
		place(o.Words, left, y+title+gap, right, h-title-gap-s.Key-s.Gap)
		grid(o.Keys, len(o.Keys), left, y+h-s.Key, right, s.Key, s.Gap)
		return
	}
	grid(o.Keys, len(o.Keys), x, y+h-s.Key, w, s.Key, s.Gap)
	h -= s.Key + s.Gap
	place(o.Title, x, y, w, title)
	side := min(w, (h-title-gap)*0.6)
	place(o.Code, x+(w-side)/2, y+title, side, side)
	below := y + title + side + gap
	place(o.Words, x, below, w, y+h-below)
}
