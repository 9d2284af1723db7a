package part

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/arrange"
)

// Rows shows as many rows of a list as fit its place and turns them over like pages: nothing
// scrolls. Only the rows that are shown are made.
type Rows struct {
	widget.BaseWidget
	Count int
	Make  func(i int) fyne.CanvasObject

	Laid func() // called when other rows are shown; may be nil

	first  int
	each   int // rows on a page, known once laid out
	sizeOf func() arrange.Sizes
}

// NewRows returns the rows of a list. sizes tells the least size of a row for the page.
func NewRows(count int, sizes func() arrange.Sizes, make func(i int) fyne.CanvasObject) *Rows {
	r := &Rows{Count: count, Make: make, sizeOf: sizes}
	r.ExtendBaseWidget(r)
	return r
}

// Turn turns so many pages on, or back.
func (r *Rows) Turn(pages int) {
	to := r.first + pages*max(1, r.each)
	if to >= r.Count || r.Count == 0 {
		return
	}
	r.first = max(0, to)
	r.Refresh()
}

// Reach turns to the page that has row i.
func (r *Rows) Reach(i int) { r.first = max(0, i) }

// First is the first row shown, Shown how many.
func (r *Rows) First() int { return r.first }

// Shown is how many rows are shown.
func (r *Rows) Shown() int { return max(0, min(r.each, r.Count-r.first)) }

// CreateRenderer is called by the toolkit.
func (r *Rows) CreateRenderer() fyne.WidgetRenderer { return &rowsRenderer{r: r} }

type rowsRenderer struct {
	r    *Rows
	rows []fyne.CanvasObject
	size fyne.Size
	from int
}

func (r *rowsRenderer) Destroy()                     {}
func (r *rowsRenderer) MinSize() fyne.Size           { return fyne.NewSize(1, 1) }
func (r *rowsRenderer) Objects() []fyne.CanvasObject { return r.rows }

func (r *rowsRenderer) Refresh() {
	r.rows = nil
	r.Layout(r.r.Size())
	canvas.Refresh(r.r)
}

// Layout makes the rows that fit.
func (r *rowsRenderer) Layout(size fyne.Size) {
	if size.Width < 2 || size.Height < 2 {
		return
	}
	s := r.r.sizeOf()
	cols, rows := arrange.Rows(size, s)
	r.r.each = cols * rows
	if r.r.each > 0 {
		r.r.first -= r.r.first % r.r.each
	}
	if size != r.size || r.rows == nil || r.from != r.r.first {
		r.rows = r.rows[:0]
		for i := 0; i < r.r.Shown(); i++ {
			r.rows = append(r.rows, r.r.Make(r.r.first+i))
		}
	}
	fresh := size != r.size || r.from != r.r.first
	r.size, r.from = size, r.r.first
	if fresh && r.r.Laid != nil {
		r.r.Laid()
	}
	for i, row := range r.rows {
		arrange.Row(row, i, cols, rows, size, s)
	}
}
