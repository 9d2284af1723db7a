package part

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/look"
)

// Field is a quiet ground with something on it: the display over the keypad, a block of text.
type Field struct {
	widget.BaseWidget
	face fyne.CanvasObject
	side float32 // how far the face stands from the left and right rim
}

// NewField returns a field with a face on it.
func NewField(face fyne.CanvasObject) *Field {
	f := &Field{face: face, side: 10}
	f.ExtendBaseWidget(f)
	return f
}

// newChipField is a field for a few letters.
func newChipField(face fyne.CanvasObject) *Field {
	f := NewField(face)
	f.side = 3
	return f
}

// CreateRenderer is called by the toolkit.
func (f *Field) CreateRenderer() fyne.WidgetRenderer {
	r := &fieldRenderer{f: f, ground: canvas.NewRectangle(color.Transparent)}
	r.ground.CornerRadius = 8
	r.ground.StrokeWidth = 1
	r.paint()
	return r
}

type fieldRenderer struct {
	f      *Field
	ground *canvas.Rectangle
}

func (r *fieldRenderer) Destroy()           {}
func (r *fieldRenderer) MinSize() fyne.Size { return fyne.NewSize(1, 1) }
func (r *fieldRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.ground, r.f.face}
}

func (r *fieldRenderer) Layout(size fyne.Size) {
	r.ground.Resize(size)
	put(r.f.face, r.f.side, 4, size.Width-2*r.f.side, size.Height-8)
}

func (r *fieldRenderer) Refresh() {
	r.paint()
	r.ground.Refresh()
	r.f.face.Refresh()
	canvas.Refresh(r.f)
}

func (r *fieldRenderer) paint() {
	p := look.Now()
	r.ground.FillColor, r.ground.StrokeColor = p.Field, p.Rule
}
