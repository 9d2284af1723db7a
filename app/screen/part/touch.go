package part

import (
	"image/color"
	"math"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/mobile"
	"fyne.io/fyne/v2/widget"
)

// roll is how far a gloved finger may roll off a key, in units of 1/160 inch, before the press no
// longer counts: 3 mm. Further off it is taken back.
//
// Source: common practice, no source.
const roll = 19

// touch is what fingers did to a key on a phone.
type touch struct {
	down   bool          // a finger came down on it and has not gone up yet
	origin fyne.Position // where the key was then, on the glass
	stray  bool          // the tap that follows is of a finger that came down elsewhere
}

// off are the keys that a finger rolled off without going up.
var off []*Key

var (
	_ mobile.Touchable = (*Key)(nil)
	_ mobile.Touchable = (*Glass)(nil)
)

// TouchDown shows that the key is held.
func (k *Key) TouchDown(e *mobile.TouchEvent) {
	k.touch = touch{down: true, origin: e.AbsolutePosition.Subtract(e.Position)}
	k.hold(true)
}

// TouchCancel is called when the finger moves off the key.
func (k *Key) TouchCancel(*mobile.TouchEvent) {
	k.hold(false)
	if k.touch.down && !slices.Contains(off, k) {
		off = append(off, k)
	}
}

// TouchUp is called before the tap. A finger that came down elsewhere, such as one that rested on the
// glass while another turned the page, is none of this key's.
func (k *Key) TouchUp(e *mobile.TouchEvent) {
	k.hold(false)
	k.touch.stray = !k.touch.down
	k.touch.down = false
	off = slices.DeleteFunc(off, func(o *Key) bool { return o == k })
	if k.touch.stray {
		goneUp(e.AbsolutePosition)
	}
}

// goneUp presses the key that a finger rolled off when it goes up near enough. Further off the press
// is taken back; the driver doesn't say whose finger it was, so that goes for all of them.
func goneUp(at fyne.Position) {
	rolled := off
	off = nil
	for _, k := range rolled {
		k.touch.down = false
		if k.away(at) <= roll {
			k.press()
			return
		}
	}
}

// away is how far a place on the glass lies from the key.
func (k *Key) away(at fyne.Position) float64 {
	p, size := at.Subtract(k.touch.origin), k.Size()
	x := max(0, -p.X, p.X-size.Width)
	y := max(0, -p.Y, p.Y-size.Height)
	return math.Sqrt(float64(x*x + y*y))
}

// Glass lies under the keys of a page and notices fingers that go up between them.
type Glass struct {
	widget.BaseWidget
}

// NewGlass returns the glass of a new page. What fingers did on the page before is forgotten.
func NewGlass() *Glass {
	off = nil
	g := &Glass{}
	g.ExtendBaseWidget(g)
	return g
}

// TouchDown does nothing: between the keys there is nothing to press.
func (g *Glass) TouchDown(*mobile.TouchEvent) {}

// TouchCancel does nothing.
func (g *Glass) TouchCancel(*mobile.TouchEvent) {}

// TouchUp ends the press of a key that the finger rolled off.
func (g *Glass) TouchUp(e *mobile.TouchEvent) { goneUp(e.AbsolutePosition) }

// CreateRenderer is called by the toolkit.
func (g *Glass) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(canvas.NewRectangle(color.Transparent))
}
