package part

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/mobile"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/look"
)

// Slider is a large slider: all of it answers to a finger, wherever the handle stands. A tap, quick or
// slow, moves the handle there; a drag takes it along.
type Slider struct {
	widget.BaseWidget
	Name  string
	Stops []float64           // shares that are ticked
	Moved func(share float64) // asked for a share of the way, 0 … 1
	Left  func()              // the finger has left it where it is; may be nil

	at   float64
	ends [2]*Text

	touched  bool    // a finger is down that has not moved yet
	dragging bool    // a drag has begun
	down     float32 // where it came down
	off      float32 // by how much the toolkit misplaces this drag
}

var (
	_ fyne.Draggable         = (*Slider)(nil)
	_ fyne.Tappable          = (*Slider)(nil)
	_ fyne.SecondaryTappable = (*Slider)(nil)
	_ mobile.Touchable       = (*Slider)(nil)
)

// Sizes of a slider, units.
const (
	handle  = 46 // width of its handle
	wording = 24 // height of the words over it
)

// NewSlider returns a slider whose ends are named.
func NewSlider(name, left, right string, moved func(share float64)) *Slider {
	s := &Slider{Name: name, Moved: moved}
	s.ends[0], s.ends[1] = NewText(left, Held, 18, Quiet), NewText(right, Held, 18, Quiet)
	s.ends[1].Align = fyne.TextAlignTrailing
	s.ExtendBaseWidget(s)
	return s
}

// Set moves the handle without asking back.
func (s *Slider) Set(share float64) {
	if share == s.at {
		return
	}
	s.at = share
	s.Refresh()
}

// At is where the handle stands.
func (s *Slider) At() float64 { return s.at }

// X is where a share of the way lies across the slider.
func (s *Slider) X(share float64) float32 {
	return handle/2 + float32(share)*(s.Size().Width-handle)
}

func (s *Slider) follow(x float32) {
	long := s.Size().Width - handle
	if long <= 0 || s.Moved == nil {
		return
	}
	s.Moved(min(max(float64((x-handle/2)/long), 0), 1))
}

func (s *Slider) leave() {
	if s.Left != nil {
		s.Left()
	}
}

// Tapped moves the handle.
func (s *Slider) Tapped(e *fyne.PointEvent) {
	s.follow(e.Position.X)
	s.leave()
}

// TappedSecondary is a slow press on a phone.
func (s *Slider) TappedSecondary(e *fyne.PointEvent) { s.Tapped(e) }

// Dragged takes the handle along. The phone's driver counts the first way of a finger twice: the places
// of its drag are set right by that way, also where the page was built anew under the finger.
func (s *Slider) Dragged(e *fyne.DragEvent) {
	if !s.dragging {
		_, phone := fyne.CurrentApp().Driver().(mobile.Driver)
		switch {
		case s.touched:
			s.off = e.Position.X - (s.down + e.Dragged.DX)
		case phone:
			s.off = e.Dragged.DX
		}
	}
	s.dragging, s.touched = true, false
	s.follow(e.Position.X - s.off)
}

// DragEnd leaves it where it is.
func (s *Slider) DragEnd() {
	s.off, s.dragging = 0, false
	s.leave()
}

// TouchDown moves the handle under the finger at once.
func (s *Slider) TouchDown(e *mobile.TouchEvent) {
	s.touched, s.down = true, e.Position.X
	s.follow(e.Position.X)
}

// TouchUp leaves it where it is.
func (s *Slider) TouchUp(*mobile.TouchEvent) { s.touched = false }

// TouchCancel leaves it where it is.
func (s *Slider) TouchCancel(*mobile.TouchEvent) {}

// CreateRenderer is called by the toolkit.
func (s *Slider) CreateRenderer() fyne.WidgetRenderer {
	r := &sliderRenderer{s: s, ground: canvas.NewRectangle(color.Transparent), track: canvas.NewRectangle(color.Transparent), grip: canvas.NewRectangle(color.Transparent)}
	r.ground.CornerRadius, r.track.CornerRadius, r.grip.CornerRadius = 12, 5, 10
	for range s.Stops {
		r.ticks = append(r.ticks, canvas.NewRectangle(color.Transparent))
	}
	for range 3 {
		r.ribs = append(r.ribs, canvas.NewRectangle(color.Transparent))
	}
	r.paint()
	return r
}

type sliderRenderer struct {
	s                   *Slider
	ground, track, grip *canvas.Rectangle
	ticks, ribs         []*canvas.Rectangle
}

func (r *sliderRenderer) Destroy()           {}
func (r *sliderRenderer) MinSize() fyne.Size { return fyne.NewSize(2*handle, wording+handle) }

func (r *sliderRenderer) Objects() []fyne.CanvasObject {
	out := []fyne.CanvasObject{r.ground, r.s.ends[0], r.s.ends[1], r.track}
	for _, t := range r.ticks {
		out = append(out, t)
	}
	out = append(out, r.grip)
	for _, rib := range r.ribs {
		out = append(out, rib)
	}
	return out
}

func (r *sliderRenderer) Layout(size fyne.Size) {
	r.ground.Resize(size)
	put(r.s.ends[0], 10, 3, size.Width/2-14, wording)
	put(r.s.ends[1], size.Width/2+4, 3, size.Width/2-14, wording)
	r.place(size)
}

// place puts handle and ticks where they belong.
func (r *sliderRenderer) place(size fyne.Size) {
	top, high := float32(wording+4), size.Height-wording-10
	middle := top + high/2
	put(r.track, handle/2-4, middle-5, size.Width-handle+8, 10)
	for i, t := range r.ticks {
		put(t, r.s.X(r.s.Stops[i])-2, middle-high*0.36, 4, high*0.72)
	}
	x := r.s.X(r.s.at)
	put(r.grip, x-handle/2, top, handle, high)
	for i, rib := range r.ribs {
		put(rib, x-1.5+float32(i-1)*9, middle-high*0.22, 3, high*0.44)
	}
}

func (r *sliderRenderer) Refresh() {
	r.paint()
	r.place(r.s.Size())
	canvas.Refresh(r.s)
}

func (r *sliderRenderer) paint() {
	p := look.Now()
	r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth = p.Key, p.Edge, 2
	r.track.FillColor = p.Edge
	for _, t := range r.ticks {
		t.FillColor = p.Ink
	}
	r.grip.FillColor = p.Main
	for _, rib := range r.ribs {
		rib.FillColor = p.OnIt
	}
}
