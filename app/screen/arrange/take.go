package arrange

import (
	"slices"

	"fyne.io/fyne/v2"
)

// Take lays out the keypad page.
type Take struct {
	Left     bool                // for the left hand: what stands on the right stands on the left, digits keep their order
	Stand    []fyne.CanvasObject // three keys: how the vehicle stands; or one field in their place
	Picture  fyne.CanvasObject
	Lay      fyne.CanvasObject // how the finder lies; nil where none is used
	Question fyne.CanvasObject
	Hint     fyne.CanvasObject // where to put the tool, in words; only a wide page has room for it
	Display  fyne.CanvasObject
	Digits   [10]fyne.CanvasObject
	Decimal  fyne.CanvasObject
	Erase    fyne.CanvasObject
	More     fyne.CanvasObject
	Keep     []fyne.CanvasObject // one key, or two: each keeps and says a side
}

// MinSize is the least page.
func (t *Take) MinSize([]fyne.CanvasObject) fyne.Size { return Least }

// Layout places everything for a page of the given size.
func (t *Take) Layout(all []fyne.CanvasObject, page fyne.Size) {
	s := For(page)
	place(t.Hint, 0, 0, 0, 0)
	switch s.Form {
	case Upright:
		t.upright(page, s)
	case Flat:
		t.flat(page, s)
	default:
		t.wide(page, s)
	}
	if t.Left {
		for _, o := range all {
			o.Move(fyne.NewPos(page.Width-o.Position().X-o.Size().Width, o.Position().Y))
		}
	}
}

// across is the order in which things of one kind are stood side by side, so that the first is on the
// left for either hand.
func (t *Take) across(objects []fyne.CanvasObject, cols int) []fyne.CanvasObject {
	if !t.Left {
		return objects
	}
	var out []fyne.CanvasObject
	for line := range slices.Chunk(objects, cols) {
		line = slices.Clone(line)
		slices.Reverse(line)
		out = append(out, line...)
	}
	return out
}

// keys returns the twelve keys in the order for so many columns.
func (t *Take) keys(cols int) []fyne.CanvasObject { return t.across(t.rightKeys(cols), cols) }

func (t *Take) rightKeys(cols int) []fyne.CanvasObject {
	d := t.Digits
	switch cols {
	case 3:
		return []fyne.CanvasObject{d[7], d[8], d[9], d[4], d[5], d[6], d[1], d[2], d[3], t.Decimal, d[0], t.Erase}
	case 4:
		return []fyne.CanvasObject{d[7], d[8], d[9], t.Erase, d[4], d[5], d[6], t.Decimal, d[1], d[2], d[3], d[0]}
	}
	return []fyne.CanvasObject{d[1], d[2], d[3], d[4], d[5], d[6], d[7], d[8], d[9], d[0], t.Decimal, t.Erase}
}

// leastMiddle is the least room for picture, question and display on an upright page.
const leastMiddle = 170

// roomy is how much more than that the middle gets before the keys grow.
const roomy = 90

// upright picks three or four columns of keys, whichever gives the larger keys, and shares what is
// left between the keys and the middle.
func (t *Take) upright(page fyne.Size, s Sizes) {
	cols, rows, high := 0, 0, float32(0)
	for _, c := range []int{3, 4} {
		r := 12 / c
		w := (page.Width - 2*s.Margin - s.Gap*float32(c-1)) / float32(c)
		h := (page.Height - 2*s.Margin - s.Gap*float32(r+2) - leastMiddle) / float32(r+2)
		if cols == 0 || min(w, h) > min(high, (page.Width-2*s.Margin-s.Gap*float32(cols-1))/float32(cols)) {
			cols, rows, high = c, r, h
		}
	}
	if high > s.Key { // the picture gains first, then the keys
		high = s.Key + max(0, high-s.Key-roomy/float32(rows+2))/2
	}
	x, w := s.Margin, page.Width-2*s.Margin
	y := s.Margin
	grid(t.across(t.Stand, 3), len(t.Stand), x, y, w, high, s.Gap)
	y += high + s.Gap
	bottom := page.Height - s.Margin - high
	pad := high*float32(rows) + s.Gap*float32(rows-1)
	top := bottom - s.Gap - pad
	t.middle(x, y, w, top-s.Gap-y, s)
	grid(t.keys(cols), cols, x, top, w, pad, s.Gap)
	t.bottom(x, bottom, w, high, s, (w-s.Gap*float32(cols-1))/float32(cols))
}

// bottom places the row of More and Keep; More is one key wide.
func (t *Take) bottom(x, y, w, h float32, s Sizes, key float32) {
	place(t.More, x, y, key, h)
	grid(t.across(t.Keep, 2), len(t.Keep), x+key+s.Gap, y, w-key-s.Gap, h, s.Gap)
}

// middle shares a column between picture, question and display. The key of the finder stands on the
// right of the picture.
func (t *Take) middle(x, y, w, h float32, s Sizes) {
	const gap = 6
	display := clamp(h*0.26, 46, 80)
	question := clamp(h*0.29, 50, 100)
	picture := h - display - question - 2*gap
	if t.Lay == nil {
		place(t.Picture, x, y, w, picture)
		place(t.Question, x, y+picture+gap, w, question)
	} else {
		left := w - s.Key - s.Gap
		place(t.Lay, x+left+s.Gap, y, s.Key, max(s.Key, picture))
		place(t.Picture, x, y, left, picture)
		place(t.Question, x, y+picture+gap, left, question)
	}
	place(t.Display, x, y+h-display, w, display)
}

// flat has two rows of six keys, the keys of the stand above them, and Keep on the right.
func (t *Take) flat(page fyne.Size, s Sizes) {
	x, y := s.Margin, s.Margin
	const display = 57
	high := (page.Height - 2*s.Margin - display - 3*s.Gap) / 3
	right := clamp(page.Width*0.235, 100, 260)
	w := page.Width - 2*s.Margin - right - s.Gap
	key := (w - 5*s.Gap) / 6
	if key < s.Key {
		key = s.Key
		w = 6*key + 5*s.Gap
		right = page.Width - 2*s.Margin - w - s.Gap
	}
	half := (w - s.Gap) / 2
	place(t.Question, x, y, half, display)
	place(t.Display, x+half+s.Gap, y, w-half-s.Gap, display)
	y += display + s.Gap
	t.flatStand(x, y, key, high, s)
	place(t.More, x+w-key, y, key, high)
	y += high + s.Gap
	grid(t.keys(6), 6, x, y, w, 2*high+s.Gap, s.Gap)
	x += w + s.Gap
	place(t.Picture, x, s.Margin, right, display+s.Gap+high)
	grid(t.Keep, 1, x, y, right, 2*high+s.Gap, s.Gap)
}

// flatStand gives the row above the keys five widths of a key: two each for state and height and one
// for the setup, or one each for height, setup and finder.
func (t *Take) flatStand(x, y, key, high float32, s Sizes) {
	wide := []float32{2, 2, 1}
	switch {
	case len(t.Stand) == 1:
		wide = []float32{5}
	case t.Lay != nil:
		wide = []float32{2, 1, 1, 1}
	}
	for i, o := range t.row() {
		w := wide[i]*key + (wide[i]-1)*s.Gap
		place(o, x, y, w, high)
		x += w + s.Gap
	}
}

// row is the stand with the key of the finder beside it.
func (t *Take) row() []fyne.CanvasObject {
	if t.Lay == nil {
		return t.Stand
	}
	return append(append([]fyne.CanvasObject{}, t.Stand...), t.Lay)
}

// wide has the picture and the question on the left and the keys on the right.
func (t *Take) wide(page fyne.Size, s Sizes) {
	m := s.Margin * 2
	right := clamp(page.Width*0.36, 3*s.Key+2*s.Gap, 480)
	left := page.Width - 2*m - right - 2*s.Gap
	high := clamp((page.Height-2*m-6*s.Gap-90)/6, s.Key, 130)
	grid(t.across(t.row(), 4), len(t.row()), m, m, left, high, s.Gap)
	y := m + high + s.Gap
	const question, hint = 76, 56 // how it is done right under what is asked
	place(t.Question, m, y, left, question)
	y += question
	place(t.Hint, m, y, left, hint)
	y += hint + s.Gap
	place(t.Picture, m, y, left, page.Height-m-y)
	x := page.Width - m - right
	pad := 4*high + 3*s.Gap
	bottom := page.Height - m - high
	place(t.Display, x, m, right, bottom-2*s.Gap-pad-m)
	grid(t.keys(3), 3, x, bottom-s.Gap-pad, right, pad, s.Gap)
	t.bottom(x, bottom, right, high, s, (right-2*s.Gap)/3)
}
