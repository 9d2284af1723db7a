package arrange

import "fyne.io/fyne/v2"

// Drawing lays out the page of drawings: the picture, which may scroll, and beside or below it the
// numbers, the slider with its step keys, and the keys of the page.
type Drawing struct {
	Picture fyne.CanvasObject
	Fit     func(wide float32) // told how wide the picture is before it is placed
	Figures fyne.CanvasObject
	Slider  fyne.CanvasObject // nil where nothing moves, as are Lower and Higher
	Lower   fyne.CanvasObject
	Higher  fyne.CanvasObject
	Keys    []fyne.CanvasObject
}

// MinSize is the least page.
func (d *Drawing) MinSize([]fyne.CanvasObject) fyne.Size { return Least }

// Layout places everything for a page of the given size.
func (d *Drawing) Layout(_ []fyne.CanvasObject, page fyne.Size) {
	s := For(page)
	x, y, w, h := s.Margin, s.Margin, page.Width-2*s.Margin, page.Height-2*s.Margin
	if s.Form == Upright {
		top := d.hands(x, y, w, h, s)
		if d.Figures != nil {
			high := float32(92)
			if s.Key < 95 {
				high = 104 // the lines are shorter, so there is one more of them
			}
			top -= high + 4
			place(d.Figures, x, top, w, high)
		}
		d.picture(x, y, w, top-8-y)
		return
	}
	right := max(300, float32(len(d.Keys))*(s.Key+s.Gap)-s.Gap)
	if s.Form == Wide {
		right = 380
	}
	left := w - right - s.Gap
	top := d.hands(x+w-right, y, right, h, s)
	switch {
	case d.Figures == nil:
	case s.Form == Wide:
		high := min(top-y, 260)
		place(d.Figures, x+w-right, top-high, right, high)
	default:
		h -= 74
		place(d.Figures, x, y+h+4, left, 70)
	}
	d.picture(x, y, left, h)
}

func (d *Drawing) picture(x, y, w, h float32) {
	if d.Fit != nil {
		d.Fit(w)
	}
	place(d.Picture, x, y, w, h)
}

// hands places what hands work at the bottom and returns where that begins.
func (d *Drawing) hands(x, y, w, h float32, s Sizes) float32 {
	at := y + h - s.Key
	grid(d.Keys, len(d.Keys), x, at, w, s.Key, s.Gap)
	if d.Slider != nil {
		at -= s.Key + s.Gap
		grid([]fyne.CanvasObject{d.Lower, d.Higher}, 2, x, at, w, s.Key, s.Gap)
		at -= s.Key + s.Gap
		place(d.Slider, x, at, w, s.Key)
	}
	return at - 4
}
