package arrange

import "fyne.io/fyne/v2"

// Result lays out the page after keeping: what was kept with the key to strike it at the top, what
// changed below, and at the bottom the way on, far from the key that strikes.
type Result struct {
	Kept   fyne.CanvasObject
	Strike fyne.CanvasObject
	Strip  fyne.CanvasObject // the repeats; nil where there is only one
	Head   fyne.CanvasObject // heading of what changed
	Rows   fyne.CanvasObject
	Again  fyne.CanvasObject
	All    fyne.CanvasObject
	Next   fyne.CanvasObject
}

// MinSize is the least page.
func (r *Result) MinSize([]fyne.CanvasObject) fyne.Size { return Least }

// Layout places everything for a page of the given size.
func (r *Result) Layout(_ []fyne.CanvasObject, page fyne.Size) {
	s := For(page)
	x, y, w, h := s.Margin, s.Margin, page.Width-2*s.Margin, page.Height-2*s.Margin
	const head = 30
	strike, kept := s.Key+5, max(s.Key, 98)
	if s.Form == Upright {
		place(r.Kept, x, y, w-strike-s.Gap, kept)
		place(r.Strike, x+w-strike, y, strike, kept)
		next := clamp(h*0.14, max(s.Key, 104), 140)
		foot := y + h - next
		place(r.Next, x, foot, w, next)
		foot -= s.Gap + s.Key
		place(r.Again, x, foot, (w-s.Gap)/2, s.Key)
		place(r.All, x+(w+s.Gap)/2, foot, (w-s.Gap)/2, s.Key)
		y += kept + 8
		y += r.strip(x, y, w)
		place(r.Head, x, y, w, head)
		y += head + 4
		place(r.Rows, x, y, w, foot-s.Gap-y)
		return
	}
	side := clamp(w*0.26, 200, 360)
	if s.Form == Wide {
		x, y, w, h = 2*x, 2*y, w-2*x, h-2*y
	}
	left := w - side - s.Gap
	place(r.Kept, x, y, left-strike-s.Gap, kept)
	place(r.Strike, x+left-strike, y, strike, kept)
	top := y + kept + 6
	top += r.strip(x, top, left)
	place(r.Head, x, top, left, head)
	top += head + 4
	place(r.Rows, x, top, left, y+h-top)
	x += left + s.Gap
	place(r.All, x, y, side, s.Key)
	place(r.Again, x, y+s.Key+s.Gap, side, s.Key)
	next := clamp(h-2*(s.Key+s.Gap), s.Key, 190)
	place(r.Next, x, y+h-next, side, next)
}

// strip places the repeats and returns how much room they take.
func (r *Result) strip(x, y, w float32) float32 {
	const high, gap = 46, 6
	if r.Strip == nil {
		return 0
	}
	place(r.Strip, x, y, w, high)
	return high + gap
}
