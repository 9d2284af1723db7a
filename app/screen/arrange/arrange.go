// Package arrange lays the pages out for a phone held upright, a phone on its side, and a desktop.
// All three are told apart by the size of the page alone, so that turning the phone needs no more.
//
// Every key is at least Sizes.Key high and wide and Sizes.Gap away from the next: 95 and 19 units of
// 1/160 inch (15 mm and 3 mm) where the shorter side has 400 or more, 76 (12 mm) on smaller ones.
package arrange

import "fyne.io/fyne/v2"

// Form is how a page is laid out.
type Form int

// The forms.
const (
	Upright Form = iota // a phone held upright
	Flat                // a phone on its side
	Wide                // a desktop or a tablet on its side
)

// Sizes are the least size of keys and their gaps on a page.
type Sizes struct {
	Form   Form
	Key    float32 // least width and height of a key
	Gap    float32 // between keys
	Margin float32 // to the edge of the page
}

// Least is the smallest page that the layouts are made for, upright or flat.
var Least = fyne.NewSize(360, 360)

// For returns the sizes for a page.
func For(page fyne.Size) Sizes {
	s := Sizes{Key: 95, Gap: 19, Margin: 9}
	if min(page.Width, page.Height) < 400 || max(page.Width, page.Height) < 820 {
		s.Key, s.Gap, s.Margin = 76, 16, 4
	}
	switch {
	case page.Height >= page.Width:
		s.Form = Upright
	case page.Height < 600:
		s.Form, s.Margin = Flat, min(s.Margin, 6)
	default:
		s.Form = Wide
	}
	return s
}

// place puts an object at a place of a size; nothing happens to a missing one.
func place(o fyne.CanvasObject, x, y, w, h float32) {
	if o == nil {
		return
	}
	o.Move(fyne.NewPos(x, y))
	o.Resize(fyne.NewSize(max(w, 0), max(h, 0)))
}

// grid places objects in rows of cols, row by row.
func grid(objects []fyne.CanvasObject, cols int, x, y, w, h, gap float32) {
	if len(objects) == 0 || cols < 1 {
		return
	}
	rows := (len(objects) + cols - 1) / cols
	cw := (w - gap*float32(cols-1)) / float32(cols)
	ch := (h - gap*float32(rows-1)) / float32(rows)
	for i, o := range objects {
		place(o, x+float32(i%cols)*(cw+gap), y+float32(i/cols)*(ch+gap), cw, ch)
	}
}

func clamp(v, low, high float32) float32 { return max(low, min(v, high)) }
