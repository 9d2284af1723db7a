package part

import (
	"image/color"

	"yokebook/app/draw"
	"yokebook/app/draw/tool"
	"yokebook/app/screen/look"
	"yokebook/checks"
)

// VerdictInk is the colour of a verdict; word and shape say the same without it.
func VerdictInk(v checks.Verdict) Ink {
	return func(p look.Palette) color.NRGBA {
		switch v {
		case checks.Clear:
			return p.Clear
		case checks.Out:
			return p.Out
		case checks.Unsure:
			return p.Unsure
		case checks.Waiting:
			return p.Waiting
		}
		return p.Quiet
	}
}

// NewMark returns the shape of a verdict in its colour.
func NewMark(v checks.Verdict) *Picture {
	p := NewPicture(func() draw.Page { return tool.Shape(string(v)) }, "")
	p.ink = VerdictInk(v)
	return p
}
