package part

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/arrange"
)

// Rows shows as many rows of a list as fit their place and turns them over like pages: nothing
// scrolls. Only the rows that are shown are made.
type Rows struct {
	widget.BaseWidget
	Count int
	Make  func(i int) fyne.CanvasObject

	Least float32          // least height of a row; that of a key where it is less
	Head  func(i int) bool // tells which rows are headings; may be nil
	Laid  func()           // called when other rows are shown; may be nil

	cells  []arrange.Cell // known once laid out
	page   int
	anchor int // a row that stays in sight when the place gets another size
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
	r.page = max(0, min(r.page+pages, r.lastPage()))
	r.anchor = r.First()
	r.Refresh()
}

func (r *Rows) lastPage() int {
	if len(r.cells) == 0 {
		return 0
	}
	return r.cells[len(r.cells)-1].Page
}

// Reach turns to the page that has row i.
func (r *Rows) Reach(i int) { r.anchor = max(0, i) }

// First is the first row shown.
func (r *Rows) First() int {
	i := 0
	for i < len(r.cells) && r.cells[i].Page < r.page {
		i++
	}
	return i
}

// Shown is how many rows are shown.
func (r *Rows) Shown() int {
	n := 0
	for _, c := range r.cells {
		if c.Page == r.page {
			n++
		}
	}
	return n
}

// CreateRenderer is called by the toolkit.
func (r *Rows) CreateRenderer() fyne.WidgetRenderer { return &rowsRenderer{r: r} }

type rowsRenderer struct {
	r    *Rows
	rows []fyne.CanvasObject
	size fyne.Size
	page int
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
	rows := r.r
	rows.cells = arrange.Cells(size, rows.sizeOf(), rows.Count, rows.Least, rows.Head)
	rows.page = rows.lastPage()
	if rows.anchor < len(rows.cells) {
		rows.page = rows.cells[rows.anchor].Page
	}
	fresh := size != r.size || r.page != rows.page
	first, n := rows.First(), rows.Shown()
	if fresh || r.rows == nil {
		r.rows = make([]fyne.CanvasObject, n)
		for i := range r.rows {
			r.rows[i] = rows.Make(first + i)
		}
	}
	r.size, r.page = size, rows.page
	if fresh && rows.Laid != nil {
		rows.Laid()
	}
	for i, row := range r.rows {
		cell := rows.cells[first+i]
		row.Move(cell.At)
		row.Resize(cell.Size)
	}
}
