package arrange

import "fyne.io/fyne/v2"

// Beside stands a wide key and a narrow one beside each other: at the head of a list, where a title
// stands else.
type Beside struct {
	Sizes func() Sizes // of the page that they stand on
}

// MinSize is as small as it gets.
func (Beside) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

// Layout gives the second a third of the width, and no less than a key wants.
func (b Beside) Layout(o []fyne.CanvasObject, size fyne.Size) {
	s := b.Sizes()
	narrow := clamp(size.Width*0.3, s.Key, 220)
	place(o[0], 0, 0, size.Width-narrow-s.Gap, size.Height)
	place(o[1], size.Width-narrow, 0, narrow, size.Height)
}

// Written stands a text entry over its place, no higher than one line of it wants.
type Written struct{}

// MinSize is as small as it gets.
func (Written) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

// Layout centres the entry up and down.
func (Written) Layout(o []fyne.CanvasObject, size fyne.Size) {
	high := min(size.Height, 64)
	place(o[0], 0, (size.Height-high)/2, size.Width, high)
}

// Below stands a text where the rows of a list with a tall title begin.
type Below struct {
	Sizes func() Sizes
}

// MinSize is as small as it gets.
func (Below) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

// Layout leaves the room of the title above and of the keys below or beside.
func (b Below) Layout(o []fyne.CanvasObject, page fyne.Size) {
	s := b.Sizes()
	top := s.Margin + s.Key + s.Gap
	x := s.Margin
	if s.Form == Wide {
		x *= 2 // as the rows do
	}
	w := page.Width - 2*x
	if s.Form == Flat {
		w -= 150 + s.Gap
	}
	place(o[0], x, top, w, max(0, page.Height-top-s.Key-s.Gap-s.Margin))
}
