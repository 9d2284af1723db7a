package part

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/checks"
)

// Chip is one value of a Strip.
type Chip struct {
	Words string
	Apart bool // marked by the shape of what is unsure
}

// NewStrip shows a few values side by side, with a word for them in front.
func NewStrip(word string, chips []Chip) fyne.CanvasObject {
	objects := []fyne.CanvasObject{NewText(word, Held, 16, Quiet)}
	for _, c := range chips {
		if !c.Apart {
			objects = append(objects, newChipField(NewText(c.Words, Held, 18, Plain).Bold().Centred()))
			continue
		}
		words := NewText(c.Words, Held, 18, VerdictInk(checks.Unsure)).Bold().Centred()
		objects = append(objects, newChipField(container.New(besideFace{}, NewMark(checks.Unsure), words)))
	}
	return container.New(stripFace{}, objects...)
}

// stripFace gives every object the same width.
type stripFace struct{}

func (stripFace) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (stripFace) Layout(o []fyne.CanvasObject, size fyne.Size) {
	const gap = 6
	wide := min((size.Width-gap*float32(len(o)-1))/float32(len(o)), 130)
	for i, child := range o {
		put(child, float32(i)*(wide+gap), 0, wide, size.Height)
	}
}

// besideFace puts a small mark in front of words.
type besideFace struct{}

func (besideFace) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (besideFace) Layout(o []fyne.CanvasObject, size fyne.Size) {
	mark := min(size.Height, 14)
	put(o[0], 0, 0, mark, size.Height)
	put(o[1], mark+2, 0, size.Width-mark-2, size.Height)
}
