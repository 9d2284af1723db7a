package arrange

import "fyne.io/fyne/v2"

// Finding lays out one finding: what it says at the top, its bar, the long text, and the key back.
type Finding struct {
	Title   fyne.CanvasObject
	Mark    fyne.CanvasObject
	Verdict fyne.CanvasObject
	Value   fyne.CanvasObject
	Bar     fyne.CanvasObject // nil where there is no limit or no value
	Scale   fyne.CanvasObject // words under the bar
	Body    fyne.CanvasObject
	Back    fyne.CanvasObject
	Acts    []fyne.CanvasObject // what can be done about it here
	Tall    bool                // the title takes twice the room
}

// MinSize is the least page.
func (f *Finding) MinSize([]fyne.CanvasObject) fyne.Size { return Least }

// Layout places everything for a page of the given size.
func (f *Finding) Layout(_ []fyne.CanvasObject, page fyne.Size) {
	s := For(page)
	x, y, w, h := s.Margin+3, s.Margin, page.Width-2*s.Margin-6, page.Height-2*s.Margin
	if s.Form != Upright {
		gap := s.Gap
		if s.Form == Wide {
			x, y, w, h, gap = 2*x, 2*y, w-2*x, h-2*y, 2*s.Gap
		}
		left := w * 0.42
		f.top(x, y, left, h-s.Key-s.Gap)
		f.keys(x, y+h-s.Key, left, 180, s)
		place(f.Body, x+left+gap, y, w-left-gap, h)
		return
	}
	used := f.top(x, y, w, 250)
	foot := y + h - s.Key
	const apart = 19 // a finger that rolls off a key must not come to what scrolls: it would be taken for a drag
	place(f.Body, x, y+used+8, w, foot-max(s.Gap, apart)-(y+used+8))
	f.keys(x, foot, w, 240, s)
}

// keys stands Back and what can be done beside each other, each no wider than most.
func (f *Finding) keys(x, y, w, most float32, s Sizes) {
	keys := append([]fyne.CanvasObject{f.Back}, f.Acts...)
	n := float32(len(keys))
	if n == 1 {
		w /= 2
	}
	grid(keys, len(keys), x, y, min(w, n*most+(n-1)*s.Gap), s.Key, s.Gap)
}

// top places all but the body and the key, and returns how high that is.
func (f *Finding) top(x, y, w, h float32) float32 {
	const gap = 6
	start := y
	title := float32(60)
	if f.Tall {
		title, h = 120, h-60
	}
	place(f.Title, x, y, w, title)
	y += title + gap
	place(f.Mark, x, y, 40, 40)
	place(f.Verdict, x+50, y, w-50, 40)
	y += 40 + gap
	value := clamp(h-60-40-60-4*gap, 40, 64)
	place(f.Value, x, y, w, value)
	y += value + gap
	if f.Bar != nil {
		place(f.Bar, x, y, w, 30)
		y += 30 + gap
	}
	if f.Scale != nil {
		place(f.Scale, x, y, w, 24)
		y += 24 + gap
	}
	return y - start
}
