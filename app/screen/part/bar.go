package part

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/look"
)

// Scale is what a Bar shows: a value with the interval it lies in, and the side of the limit that
// is allowed. Numbers are in one unit. Upper is NaN but for a limit with two ends.
type Scale struct {
	Value, Low, High float64
	Limit, Upper     float64
	Sense            string // "max", "min", "between", "equal"
	Ink              Ink    // of the verdict
}

// Bar draws a value with its interval against a limit. The allowed side is a solid track, the other
// side only a thin line; the limit is a tall tick.
type Bar struct {
	widget.BaseWidget
	scale Scale
}

// NewBar returns the bar of a scale.
func NewBar(s Scale) *Bar {
	b := &Bar{scale: s}
	b.ExtendBaseWidget(b)
	return b
}

// Span returns the two ends of what the bar shows: everything of the scale, with a margin, and 0
// where that is near.
func (s Scale) Span() (from, to float64) {
	from, to = math.Min(s.Low, s.Limit), math.Max(s.High, s.Limit)
	if !math.IsNaN(s.Upper) {
		to = math.Max(to, s.Upper)
	}
	width := to - from
	if width <= 0 {
		width = math.Max(math.Abs(to), 1)
	}
	if from >= 0 && from <= width {
		return 0, to + 0.15*width
	}
	return from - 0.15*width, to + 0.15*width
}

// allowed returns the part of the span that the limit allows.
func (s Scale) allowed(from, to float64) (a, b float64) {
	switch s.Sense {
	case "min":
		return s.Limit, to
	case "between":
		return s.Limit, s.Upper
	case "equal":
		return s.Limit, s.Limit
	}
	return from, s.Limit
}

// Ink is the colour of the value and its interval.
func (b *Bar) Ink() color.NRGBA { return b.scale.Ink(look.Now()) }

// CreateRenderer is called by the toolkit.
func (b *Bar) CreateRenderer() fyne.WidgetRenderer {
	r := &barRenderer{b: b}
	for i := range r.boxes {
		r.boxes[i] = canvas.NewRectangle(color.Transparent)
	}
	r.rim, r.dot = canvas.NewCircle(color.Transparent), canvas.NewCircle(color.Transparent)
	r.paint()
	return r
}

// The boxes of a bar, back to front.
const (
	boxLine = iota
	boxAllowed
	boxInterval
	boxLimit
	boxUpper
	boxes
)

type barRenderer struct {
	b     *Bar
	boxes [boxes]*canvas.Rectangle
	// Two circles instead of one with an edge: windows draw the edge inside the circle, where it
	// leaves next to nothing of so small a dot, pictures around it.
	rim, dot *canvas.Circle
}

func (r *barRenderer) Destroy()           {}
func (r *barRenderer) MinSize() fyne.Size { return fyne.NewSize(40, 18) }
func (r *barRenderer) Objects() []fyne.CanvasObject {
	var out []fyne.CanvasObject
	for _, b := range r.boxes {
		out = append(out, b)
	}
	return append(out, r.rim, r.dot)
}

func (r *barRenderer) Layout(size fyne.Size) {
	s := r.b.scale
	from, to := s.Span()
	x := func(v float64) float32 { return size.Width * float32((v-from)/(to-from)) }
	mid := size.Height / 2
	put := func(i int, x1, x2, high float32) {
		x1, x2 = max(0, x1), min(size.Width, x2)
		r.boxes[i].Move(fyne.NewPos(x1, mid-high/2))
		r.boxes[i].Resize(fyne.NewSize(max(0, x2-x1), high))
	}
	high := min(size.Height, 26)
	put(boxLine, 0, size.Width, 2)
	a, b := s.allowed(from, to)
	put(boxAllowed, x(a), x(b), high*0.38)
	put(boxInterval, x(s.Low), max(x(s.High), x(s.Low)+4), high*0.62)
	put(boxLimit, x(s.Limit)-1.5, x(s.Limit)+1.5, high)
	if math.IsNaN(s.Upper) {
		put(boxUpper, 0, 0, 0)
	} else {
		put(boxUpper, x(s.Upper)-1.5, x(s.Upper)+1.5, high)
	}
	round := func(c *canvas.Circle, wide float32) {
		c.Move(fyne.NewPos(x(s.Value)-wide/2, mid-wide/2))
		c.Resize(fyne.NewSquareSize(wide))
	}
	round(r.dot, high*0.44)
	round(r.rim, high*0.44+6)
}

func (r *barRenderer) Refresh() {
	r.paint()
	r.Layout(r.b.Size())
	canvas.Refresh(r.b)
}

func (r *barRenderer) paint() {
	p := look.Now()
	ink := r.b.scale.Ink(p)
	r.boxes[boxLine].FillColor = p.Rule
	r.boxes[boxAllowed].FillColor = p.Rule
	r.boxes[boxInterval].FillColor = ink
	r.boxes[boxInterval].CornerRadius = 4
	r.boxes[boxLimit].FillColor = p.Ink
	r.boxes[boxUpper].FillColor = p.Ink
	r.rim.FillColor, r.dot.FillColor = ink, p.Field
}
