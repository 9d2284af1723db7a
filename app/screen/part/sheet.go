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

// Sheet shows a page of drawings across its width, one page unit to a unit of the toolkit: both are
// 1/160 inch, so that texts come out as large as the page meant them.
type Sheet struct {
	widget.BaseWidget
	lay  func(wide float64) draw.Page
	line func(draw.Page) (from, to draw.Point, ok bool)

	shown *sheetRenderer // what the toolkit draws it with
	page  draw.Page
	wide  float32
	high  float32 // the most that was needed at this width, so that nothing below it jumps
}

// NewSheet returns a sheet of what lay gives for a width. line, which may be nil, is drawn over it and
// moves without the page being drawn anew.
func NewSheet(lay func(wide float64) draw.Page, line func(draw.Page) (from, to draw.Point, ok bool)) *Sheet {
	s := &Sheet{lay: lay, line: line}
	s.ExtendBaseWidget(s)
	return s
}

// Fit lays the page for a width and returns the height that it takes.
func (s *Sheet) Fit(wide float32) float32 {
	if wide != s.wide {
		s.wide, s.high = wide, 0
		s.take()
	}
	return s.high
}

func (s *Sheet) take() {
	if s.wide < 1 {
		return
	}
	s.page = s.lay(float64(s.wide))
	s.high = max(s.high, float32(s.page.High))
}

// Again lays the page anew and reports whether it takes more room than before.
func (s *Sheet) Again() (grown bool) {
	before := s.high
	s.take()
	s.Refresh()
	return s.high > before
}

// Line moves the line over the page and draws nothing else anew.
func (s *Sheet) Line() {
	if r := s.shown; r != nil {
		r.place()
		r.line.Refresh()
	}
}

// Page is the page that is shown.
func (s *Sheet) Page() draw.Page { return s.page }

// MinSize is the room that the page takes at its width.
func (s *Sheet) MinSize() fyne.Size { return fyne.NewSize(1, s.high) }

// Theme is the theme of drawings that goes with a palette.
func Theme(p look.Palette) draw.Theme {
	t := draw.Light
	if luma(p.Field) < 128 {
		t = draw.Dark
	}
	t.Paper = p.Field
	return t
}

func luma(c color.NRGBA) int { return (int(c.R) + int(c.G) + int(c.B)) / 3 }

// CreateRenderer is called by the toolkit.
func (s *Sheet) CreateRenderer() fyne.WidgetRenderer {
	r := &sheetRenderer{s: s, ground: canvas.NewRectangle(color.Transparent), line: canvas.NewLine(color.Transparent)}
	r.line.StrokeWidth = 2
	r.image = canvas.NewRaster(func(w, h int) image.Image {
		img := image.NewRGBA(image.Rect(0, 0, max(w, 1), max(h, 1)))
		if s.page.Wide > 0 {
			s.page.Over(img, Theme(look.Now()), float64(w)/s.page.Wide)
		}
		return img
	})
	r.paint()
	s.shown = r
	return r
}

type sheetRenderer struct {
	s      *Sheet
	ground *canvas.Rectangle
	image  *canvas.Raster
	line   *canvas.Line
}

func (r *sheetRenderer) Destroy()           {}
func (r *sheetRenderer) MinSize() fyne.Size { return r.s.MinSize() }
func (r *sheetRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.ground, r.image, r.line}
}

func (r *sheetRenderer) Layout(size fyne.Size) {
	r.ground.Resize(size)
	r.image.Resize(size)
	r.place()
}

// place puts the line where it belongs.
func (r *sheetRenderer) place() {
	if r.s.line == nil {
		r.line.Hide()
		return
	}
	from, to, ok := r.s.line(r.s.page)
	if !ok {
		r.line.Hide()
		return
	}
	r.line.Position1 = fyne.NewPos(float32(from.X), float32(from.Y))
	r.line.Position2 = fyne.NewPos(float32(to.X), float32(to.Y))
	r.line.Show()
}

// Refresh draws the page anew.
func (r *sheetRenderer) Refresh() {
	r.paint()
	r.place()
	r.image.Refresh()
	r.line.Refresh()
	canvas.Refresh(r.s)
}

func (r *sheetRenderer) paint() {
	r.ground.FillColor = look.Now().Field
	r.line.StrokeColor = Theme(look.Now()).Ink(draw.Body)
	r.ground.Refresh()
}
