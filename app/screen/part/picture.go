package part

import (
	"image"
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/draw"
	"yokebook/app/screen/look"
)

// Picture shows a small page of drawings, as large as its place takes, in the palette's colours.
type Picture struct {
	widget.BaseWidget
	draw  func() draw.Page
	ink   Ink    // of what the picture points at
	label string // stands in the upper left corner, such as where the front is
}

// NewPicture returns a picture that fills its place without being stretched out of shape.
func NewPicture(draw func() draw.Page, label string) *Picture {
	p := &Picture{draw: draw, ink: func(p look.Palette) color.NRGBA { return p.Mark }, label: label}
	p.ExtendBaseWidget(p)
	return p
}

// Ink is the colour of what the picture points at; of a mark, of all of it.
func (p *Picture) Ink() color.NRGBA { return p.ink(look.Now()) }

// CreateRenderer is called by the toolkit.
func (p *Picture) CreateRenderer() fyne.WidgetRenderer {
	r := &pictureRenderer{p: p, label: canvas.NewText(p.label, color.Black)}
	r.image = canvas.NewRaster(func(w, h int) image.Image {
		img := image.NewRGBA(image.Rect(0, 0, max(w, 1), max(h, 1)))
		if r.drawn.Wide > 0 {
			r.drawn.Over(img, r.theme, float64(w)/r.drawn.Wide)
		}
		return img
	})
	r.label.TextSize = 14
	r.label.TextStyle.Bold = true
	r.label.FontSource = fontOf(p.label, r.label.TextStyle)
	r.paint()
	return r
}

// labelGap is between the label and what is drawn beside it; leastPart is how much of its size a
// picture keeps where it makes room for its label.
const labelGap, leastPart = 6, 0.65

type pictureRenderer struct {
	p     *Picture
	image *canvas.Raster
	drawn draw.Page
	theme draw.Theme
	label *canvas.Text
}

func (r *pictureRenderer) Destroy()           {}
func (r *pictureRenderer) MinSize() fyne.Size { return fyne.NewSize(1, 1) }
func (r *pictureRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.image, r.label}
}

// Layout puts the picture in the middle of its place, with its own proportions.
func (r *pictureRenderer) Layout(size fyne.Size) {
	w, h := size.Width, size.Height
	if r.drawn.Wide > 0 && r.drawn.High > 0 {
		scale := min(w/float32(r.drawn.Wide), h/float32(r.drawn.High))
		w, h = scale*float32(r.drawn.Wide), scale*float32(r.drawn.High)
	}
	x, y := (size.Width-w)/2, (size.Height-h)/2
	if label := r.label.MinSize(); r.p.label != "" && x < label.Width && y < label.Height { // off the label, as far as there is room
		above, beside := size.Height-label.Height, size.Width-label.Width-labelGap
		if w > beside && h > above && above > leastPart*h { // no room: a little smaller, so that there is some
			w, h = w*above/h, above
			x = (size.Width - w) / 2
		}
		if y = size.Height - h; h > above {
			x = min(label.Width+labelGap, size.Width-w)
		}
	}
	put(r.image, x, y, w, h)
	r.label.Move(fyne.NewPos(0, 0))
	r.label.Resize(r.label.MinSize())
}

func (r *pictureRenderer) Refresh() {
	r.paint()
	r.Layout(r.p.Size())
	r.image.Refresh()
	r.label.Refresh()
	canvas.Refresh(r.p)
}

func (r *pictureRenderer) paint() {
	p := look.Now()
	r.drawn = r.p.draw()
	r.theme = Theme(p).With(draw.Tool, r.p.ink(p)).With(draw.Body, p.Ink).With(draw.Ghost, p.Quiet).With(draw.Outline, p.Edge)
	r.label.Color = p.Quiet
}
