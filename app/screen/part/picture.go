package part

import (
	"image"
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/look"
	"yokebook/app/screen/sketch"
)

// Picture shows a drawing in the colours of the palette in use.
type Picture struct {
	widget.BaseWidget
	draw  func(sketch.Colours) sketch.Picture
	label string // stands in the upper left corner, such as where the front is
}

// NewPicture returns a picture that fills its place without being stretched out of shape.
func NewPicture(draw func(sketch.Colours) sketch.Picture, label string) *Picture {
	p := &Picture{draw: draw, label: label}
	p.ExtendBaseWidget(p)
	return p
}

// CreateRenderer is called by the toolkit.
func (p *Picture) CreateRenderer() fyne.WidgetRenderer {
	r := &pictureRenderer{p: p, label: canvas.NewText(p.label, color.Black)}
	r.image = canvas.NewRaster(func(w, h int) image.Image { return r.drawn.Raster(w, h) })
	r.label.TextSize = 14
	r.label.TextStyle.Bold = true
	r.paint()
	return r
}

type pictureRenderer struct {
	p     *Picture
	image *canvas.Raster
	drawn sketch.Picture
	label *canvas.Text
}

func (r *pictureRenderer) Destroy()           {}
func (r *pictureRenderer) MinSize() fyne.Size { return fyne.NewSize(1, 1) }
func (r *pictureRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.image, r.label}
}

func (r *pictureRenderer) Layout(size fyne.Size) {
	r.image.Resize(size)
	r.label.Move(fyne.NewPos(0, 0))
	r.label.Resize(r.label.MinSize())
}

func (r *pictureRenderer) Refresh() {
	r.paint()
	r.image.Refresh()
	r.label.Refresh()
	canvas.Refresh(r.p)
}

func (r *pictureRenderer) paint() {
	p := look.Now()
	r.drawn = r.p.draw(Colours(p))
	r.label.Color = p.Quiet
}

// Colours are the palette's colours as the drawings want them.
func Colours(p look.Palette) sketch.Colours {
	return sketch.Colours{Ink: p.Ink, Quiet: p.Quiet, Fill: p.Field, Rule: p.Edge, Mark: p.Mark}
}
