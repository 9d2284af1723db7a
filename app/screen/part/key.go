package part

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/look"
)

// Kind is how a key looks.
type Kind int

// The kinds of keys.
const (
	Ordinary Kind = iota
	Main          // the one that goes on
	Standing      // says how the vehicle stands
	Row           // a row of a list
	Risky         // takes something out of use
	Siding        // goes on as Main does and says a side by its picture, which needs a plain ground
	Chosen        // is what holds now, among others that may be picked
)

// Key is a large key. Whether it is pressed quickly or slowly, its event comes exactly once: on a
// phone a press of 300 ms or more arrives as a secondary tap, and both do the same. It takes no
// focus and knows no double tap, which would hold back every single one. What else fingers do to it
// stands in touch.go.
type Key struct {
	widget.BaseWidget
	Name string // what the key is, for tests and for driving the real window: "key.7", "keep"
	Kind Kind
	Face fyne.CanvasObject
	Tap  func()

	pressed bool // looks pressed
	touch   touch
}

var (
	_ fyne.Tappable          = (*Key)(nil)
	_ fyne.SecondaryTappable = (*Key)(nil)
	_ desktop.Mouseable      = (*Key)(nil)
)

// NewKey returns a key with a face of any kind.
func NewKey(name string, kind Kind, face fyne.CanvasObject, tap func()) *Key {
	k := &Key{Name: name, Kind: kind, Face: face, Tap: tap}
	k.ExtendBaseWidget(k)
	return k
}

// NewWordKey returns a key with words on it.
func NewWordKey(name string, kind Kind, words string, tap func()) *Key {
	return NewKey(name, kind, NewText(words, 15, 26, InkOf(kind)).Bold().Centred(), tap)
}

// NewNarrowKey is NewWordKey for a key that may be no wider than a finger: its word, which one knows by the
// place of the key, may be smaller before it is cut.
func NewNarrowKey(name string, kind Kind, words string, tap func()) *Key {
	return NewKey(name, kind, NewText(words, 13, 26, InkOf(kind)).Bold().Centred(), tap)
}

// InkOf is the text colour on a key of a kind.
func InkOf(kind Kind) Ink {
	switch kind {
	case Main:
		return OnIt
	case Risky:
		return Risk
	}
	return Plain
}

// Tapped is a quick press.
func (k *Key) Tapped(*fyne.PointEvent) { k.press() }

// TappedSecondary is a slow press on a phone.
func (k *Key) TappedSecondary(*fyne.PointEvent) { k.press() }

func (k *Key) press() {
	k.hold(false)
	if k.touch.stray {
		k.touch.stray = false
		return
	}
	if k.Tap != nil {
		k.Tap()
	}
}

// MouseDown shows that the key is held.
func (k *Key) MouseDown(*desktop.MouseEvent) { k.hold(true) }

// MouseUp lets it go.
func (k *Key) MouseUp(*desktop.MouseEvent) { k.hold(false) }

func (k *Key) hold(on bool) {
	if k.pressed != on {
		k.pressed = on
		k.Refresh()
	}
}

// CreateRenderer is called by the toolkit.
func (k *Key) CreateRenderer() fyne.WidgetRenderer {
	r := &keyRenderer{k: k, ground: canvas.NewRectangle(color.Transparent)}
	r.ground.CornerRadius = 12
	r.paint()
	return r
}

type keyRenderer struct {
	k      *Key
	ground *canvas.Rectangle
}

// inset is how far the face stands from the rim.
const inset = 8

func (r *keyRenderer) Destroy()           {}
func (r *keyRenderer) MinSize() fyne.Size { return fyne.NewSize(2*inset, 2*inset) }
func (r *keyRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.ground, r.k.Face}
}

func (r *keyRenderer) Layout(size fyne.Size) {
	r.ground.Resize(size)
	high := float32(inset)
	if r.k.Kind == Row { // rows hold two lines of two
		high = 5
	}
	put(r.k.Face, inset, high, size.Width-2*inset, size.Height-2*high)
}

func (r *keyRenderer) Refresh() {
	r.paint()
	r.Layout(r.k.Size())
	r.ground.Refresh()
	r.k.Face.Refresh()
	canvas.Refresh(r.k)
}

func (r *keyRenderer) paint() {
	p := look.Now()
	r.ground.StrokeWidth = 2
	r.ground.StrokeColor = p.Edge
	switch r.k.Kind {
	case Main:
		r.ground.FillColor, r.ground.StrokeColor = p.Main, p.Main
	case Siding:
		r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth = p.Key, p.Main, 5
	case Standing:
		r.ground.FillColor = p.State
	case Chosen:
		r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth = p.State, p.Main, 5
	case Row:
		r.ground.FillColor = p.Field
	case Risky:
		r.ground.FillColor, r.ground.StrokeColor = p.Key, p.Risk
	default:
		r.ground.FillColor = p.Key
	}
	if r.k.pressed {
		r.ground.StrokeWidth = 6
		r.ground.StrokeColor = p.Mark
	}
}
