package screen

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/draw"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/figure"
	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/measure"
)

// inHand and onDesk are from how far a drawing is read on a phone and on a desk, mm.
const (
	inHand = 360.0
	onDesk = 500.0
)

// drawingVisit is the page of drawings.
type drawingVisit struct {
	look   string // how the build is looked at; "" at first
	of     *measure.Build
	model  *figure.Model
	choose bool // asks which drawing
}

func (v *drawingVisit) mark() string {
	if v.choose {
		return "drawing:" + whichDrawing + v.look
	}
	return "drawing:" + v.look
}

// whichDrawing stands in the mark where it is asked which drawing.
const whichDrawing = "which "

func drawingOf(rest string) *drawingVisit {
	look, choose := strings.CutPrefix(rest, whichDrawing)
	return &drawingVisit{look: look, choose: choose}
}

func (v *drawingVisit) back(*Screen) bool {
	was := v.choose
	v.choose = false
	return was
}

func (v *drawingVisit) page(s *Screen) page {
	if b := s.take.Build(); v.of != b {
		v.of = b
		v.model = figure.New(draw.NewScene(b, &checks.Result{Findings: s.book.Findings()}, s.lang), v.look)
		v.look = v.model.Mark()
	}
	if v.choose {
		return v.views(s)
	}
	return v.shown(s)
}

// views asks which drawing to show.
func (v *drawingVisit) views(s *Screen) page {
	q := question{title: s.lang.Say("drawing.which"), foot: s.back()}
	for _, view := range draw.Views {
		kind := part.Ordinary
		if view == v.model.View() {
			kind = part.Chosen
		}
		q.answers = append(q.answers, answer{name: "view." + string(view), words: s.lang.Say("drawing.view." + string(view)), kind: kind,
			tap: s.does(func() {
				v.model.Show(view)
				v.look, v.choose = v.model.Mark(), false
			})})
	}
	return s.ask(q)
}

// board is what of the page moves with the axle.
type board struct {
	sheets []*part.Sheet
	scroll *container.Scroll
	words  *part.Text
	slider *part.Slider
}

// shown is the page with a drawing.
func (v *drawingVisit) shown(s *Screen) page {
	m := v.model
	b := &board{}
	b.sheets = append(b.sheets, part.NewSheet(func(wide float64) draw.Page { return m.Page(wide, s.far()) }, v.now))
	if m.Charted() {
		b.sheets = append(b.sheets, part.NewSheet(func(wide float64) draw.Page { return m.Chart(wide, s.far()) }, v.now))
	}
	stack := container.New(sheetsUnder{})
	for _, sheet := range b.sheets {
		stack.Add(sheet)
	}
	b.scroll = container.NewVScroll(stack)
	lay := &arrange.Drawing{Picture: b.scroll, Fit: b.fit, Keys: []fyne.CanvasObject{
		s.backKey(),
		part.NewWordKey("views", part.Main, s.lang.Say("drawing.views"), s.does(func() { v.choose = true })),
	}}
	objects := append([]fyne.CanvasObject{b.scroll}, lay.Keys...)
	p := page{}
	if m.Moves() {
		moved := func(move func()) func() {
			return func() {
				move()
				v.look = m.Mark()
				b.follow(m)
			}
		}
		step := func(up bool) func() {
			return func() {
				moved(func() { m.Step(up) })()
				s.remember()
			}
		}
		down, up := step(false), step(true)
		b.words = part.NewText(figuresOf(m), part.Held, 20, part.Plain)
		b.slider = part.NewSlider("slider", s.lang.Say("drawing.hanging"), s.lang.Say("drawing.bump"), func(share float64) { moved(func() { m.Slide(share) })() })
		b.slider.Stops, b.slider.Left = m.Stops(), s.remember
		b.slider.Set(m.Share())
		lay.Figures, lay.Slider = b.words, b.slider
		lay.Lower = part.NewWordKey("lower", part.Ordinary, s.lang.Say("drawing.lower"), down)
		lay.Higher = part.NewWordKey("higher", part.Ordinary, s.lang.Say("drawing.higher"), up)
		objects = append(objects, lay.Figures, lay.Slider, lay.Lower, lay.Higher)
		p.answers = []func(){down, up}
	}
	p.object = container.New(lay, objects...)
	return p
}

// far is from how far a page of drawings is read here.
func (s *Screen) far() float64 {
	if size := s.host.Size(); min(size.Width, size.Height) < 600 {
		return inHand
	}
	return onDesk
}

// now is the line on a chart where the axle stands; false on a sheet that holds no chart.
func (v *drawingVisit) now(p draw.Page) (from, to draw.Point, ok bool) {
	if p.View != draw.TravelView {
		return from, to, false
	}
	return v.model.Now(p)
}

// fit lays the sheets for a width, before they are placed.
func (b *board) fit(wide float32) {
	grown := false
	for _, sheet := range b.sheets {
		before := sheet.MinSize().Height
		grown = sheet.Fit(wide) != before || grown
	}
	if grown {
		b.scroll.Content.Refresh()
	}
}

// follow shows where the axle stands now: the drawing anew, on the chart no more than its line.
func (b *board) follow(m *figure.Model) {
	b.slider.Set(m.Share())
	b.words.Say(figuresOf(m))
	grown := false
	for _, sheet := range b.sheets {
		if sheet.Page().View == draw.TravelView {
			sheet.Line()
			continue
		}
		grown = sheet.Again() || grown
	}
	if grown {
		b.scroll.Content.Refresh()
		b.scroll.Refresh()
	}
}

// figuresOf are the numbers that move with the axle, as they stand over the slider. No line ends between
// a number and its doubt.
func figuresOf(m *figure.Model) string {
	where, numbers := m.Lines()
	text := strings.TrimSpace(where + "\n" + strings.Join(numbers, " · "))
	return sentence(strings.ReplaceAll(text, " ± ", part.Tied+"±"+part.Tied))
}

// sheetsUnder lays sheets one under the other, each across the whole width.
type sheetsUnder struct{}

func (sheetsUnder) MinSize(objects []fyne.CanvasObject) fyne.Size {
	size := fyne.NewSize(1, 0)
	for _, o := range objects {
		size.Height += o.MinSize().Height
	}
	return size
}

func (sheetsUnder) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	y := float32(0)
	for _, o := range objects {
		high := o.MinSize().Height
		o.Move(fyne.NewPos(0, y))
		o.Resize(fyne.NewSize(size.Width, high))
		y += high
	}
}
