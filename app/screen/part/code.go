package part

import (
	"image"
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"
	"rsc.io/qr"
)

// quiet is the light border that a reader of such codes needs (ISO/IEC 18004: four modules).
const quiet = 4

// Code is a text as a QR code, black on white in every palette, since readers want it so.
type Code struct {
	widget.BaseWidget
	picture image.Image
}

// NewCode returns the code of a text; nothing is drawn for one that is too long for a code.
func NewCode(text string) *Code {
	c := &Code{}
	if code, err := qr.Encode(text, qr.L); err == nil {
		c.picture = modules(code.Size, code.Black)
	}
	c.ExtendBaseWidget(c)
	return c
}

// modules is the picture of a code, one pixel a module.
func modules(size int, black func(x, y int) bool) image.Image {
	img := image.NewGray(image.Rect(0, 0, size+2*quiet, size+2*quiet))
	for y := range size + 2*quiet {
		for x := range size + 2*quiet {
			shade := color.Gray{Y: 255}
			if black(x-quiet, y-quiet) { // outside of the code nothing is black
				shade.Y = 0
			}
			img.SetGray(x, y, shade)
		}
	}
	return img
}

// CreateRenderer is called by the toolkit.
func (c *Code) CreateRenderer() fyne.WidgetRenderer {
	if c.picture == nil {
		return widget.NewSimpleRenderer(canvas.NewRectangle(color.Transparent))
	}
	img := canvas.NewImageFromImage(c.picture)
	img.ScaleMode = canvas.ImageScalePixels
	img.FillMode = canvas.ImageFillContain
	return widget.NewSimpleRenderer(img)
}

// Picture is what is drawn; nil for a text that is too long.
func (c *Code) Picture() image.Image { return c.picture }
