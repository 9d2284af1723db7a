package part

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// NewPictureFace is the face of a key with a picture: beside the words on a wide key, above them on
// a narrow one.
func NewPictureFace(picture *Picture, words *Text) fyne.CanvasObject {
	return container.New(pictureFace{}, picture, words)
}

type pictureFace struct{}

func (pictureFace) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (pictureFace) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const gap = 8
	if size.Width > 1.9*size.Height {
		wide := min(size.Width*0.45, size.Height*2)
		put(o[0], 0, 0, wide, size.Height)
		put(o[1], wide+gap, 0, size.Width-wide-gap, size.Height)
		return
	}
	words := min(60, size.Height*0.36)
	put(o[0], 0, 0, size.Width, size.Height-words-gap)
	put(o[1], 0, size.Height-words, size.Width, words)
}

// NewSideFace is the face of a key that keeps with a side: two lines of words, and the picture above
// them where that leaves room for it.
func NewSideFace(picture *Picture, words *Text) fyne.CanvasObject {
	return container.New(sideFace{}, picture, words)
}

type sideFace struct{}

func (sideFace) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (sideFace) Layout(o []fyne.CanvasObject, size fyne.Size) {
	words := max(42, size.Height*0.4)
	if size.Height-words < 24 {
		put(o[0], 0, 0, 0, 0)
		put(o[1], 0, 0, size.Width, size.Height)
		return
	}
	put(o[0], 0, 0, size.Width, size.Height-words)
	put(o[1], 0, size.Height-words, size.Width, words)
}

// NewRowFace is the face of a row in a list: a mark, what it is, and what is to say about it.
func NewRowFace(mark fyne.CanvasObject, title, detail *Text) fyne.CanvasObject {
	return container.New(rowFace{}, mark, title, detail)
}

type rowFace struct{}

func (rowFace) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

// Layout stands what is said right under what it is, both together in the middle.
func (rowFace) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const mark, gap, apart = 34, 10, 3
	put(o[0], 0, 0, mark, size.Height)
	x, w := float32(mark+gap), size.Width-mark-gap
	title, detail := o[1].(*Text), o[2].(*Text)
	var above, below float32
	whole := false
	for _, share := range []float32{0.48, 0.58, 0.7, 0.48} { // more for what is said only where that helps
		var fits, all bool
		below, fits = detail.need(fyne.NewSize(w, size.Height*share))
		above, all = title.need(fyne.NewSize(w, size.Height-below-apart))
		if whole = fits && all; whole {
			break
		}
	}
	if !whole { // in its least size what is said makes room for what it is, else the other way round
		below = min(below, detail.needLeast(w))
		above, _ = title.need(fyne.NewSize(w, size.Height-below-apart))
		if _, fits := detail.need(fyne.NewSize(w, size.Height-above-apart)); !fits {
			above = min(above, title.needLeast(w))
		}
	}
	below, _ = detail.need(fyne.NewSize(w, size.Height-above-apart))
	y := max(0, (size.Height-above-below-apart)/2)
	put(title, x, y, w, above+0.1)
	put(detail, x, y+above+apart, w, below+0.1)
}

// NewBarFace is the face of a row with a bar below: a mark, what it is, what is to say about it, and
// the bar, which may be nil.
func NewBarFace(mark fyne.CanvasObject, title, detail *Text, bar *Bar) fyne.CanvasObject {
	objects := []fyne.CanvasObject{mark, title, detail}
	if bar != nil {
		objects = append(objects, bar)
	}
	return container.New(barFace{}, objects...)
}

type barFace struct{}

func (barFace) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (barFace) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const bar, gap = 16, 2
	if len(o) == 3 {
		rowFace{}.Layout(o, size)
		return
	}
	rowFace{}.Layout(o[:3], fyne.NewSize(size.Width, size.Height-bar-gap))
	put(o[3], 44, size.Height-bar, size.Width-44, bar)
}

// NewStackFace is a small heading over one or two lines of words.
func NewStackFace(heading *Text, lines ...*Text) fyne.CanvasObject {
	objects := []fyne.CanvasObject{heading}
	for _, l := range lines {
		objects = append(objects, l)
	}
	return container.New(stackFace{}, objects...)
}

type stackFace struct{}

func (stackFace) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (stackFace) Layout(o []fyne.CanvasObject, size fyne.Size) {
	heading := size.Height * 0.28
	put(o[0], 0, 0, size.Width, heading)
	high := (size.Height - heading) / float32(max(1, len(o)-1))
	for i, line := range o[1:] {
		put(line, 0, heading+float32(i)*high, size.Width, high)
	}
}

// NewCaptionFace is a small heading over a picture.
func NewCaptionFace(heading *Text, picture *Picture) fyne.CanvasObject {
	return container.New(stackFace{}, heading, picture)
}

// NewEndsFace puts one thing at the left end and another at the right, which gets the share of the width.
func NewEndsFace(left, right fyne.CanvasObject, share float32) fyne.CanvasObject {
	return container.New(endsFace{share}, left, right)
}

type endsFace struct{ share float32 }

func (endsFace) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (f endsFace) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const gap = 8
	right := size.Width * f.share
	put(o[0], 0, 0, size.Width-right-gap, size.Height)
	put(o[1], size.Width-right, 0, right, size.Height)
}

func put(o fyne.CanvasObject, x, y, w, h float32) {
	o.Move(fyne.NewPos(x, y))
	o.Resize(fyne.NewSize(max(w, 0), max(h, 0)))
}
