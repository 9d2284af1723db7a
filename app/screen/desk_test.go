package screen

import (
	"fmt"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/logbook"
	"yokebook/app/screen/look"
	"yokebook/app/screen/part"
	"yokebook/app/words"
	"yokebook/measure"
)

// The sizes that every page is looked at in.
var (
	phone   = fyne.NewSize(411, 914)
	small   = fyne.NewSize(360, 640)
	onSide  = fyne.NewSize(914, 411)
	desktop = fyne.NewSize(1280, 800)
)

// desk is a person in front of the window: it finds keys by their names and taps on the glass where
// they are, so that a covered or missing key is noticed.
type desk struct {
	t     *testing.T
	dir   string
	shelf *logbook.Shelf
	s     *Screen
	w     fyne.Window
	lang  *words.Language
}

// openDesk opens the window of a size on an empty folder of builds.
func openDesk(t *testing.T, size fyne.Size, dark bool) *desk {
	t.Helper()
	return openDeskOn(t, t.TempDir(), size, dark)
}

// openDeskOn opens the window on a folder of builds.
func openDeskOn(t *testing.T, dir string, size fyne.Size, dark bool) *desk {
	t.Helper()
	return openDeskIn(t, words.English, dir, size, dark)
}

// openDeskIn opens the window in a language.
func openDeskIn(t *testing.T, lang *words.Language, dir string, size fyne.Size, dark bool) *desk {
	t.Helper()
	test.NewTempApp(t)
	test.ApplyTheme(t, look.Held(dark))
	shelf, err := logbook.OpenShelf(dir, sources())
	if err != nil {
		t.Fatal(err)
	}
	d := &desk{t: t, dir: dir, shelf: shelf, s: New(OnShelf(shelf), lang), lang: lang}
	d.w = test.NewTempWindow(t, d.s.Content())
	d.w.SetPadded(false)
	d.w.Resize(size)
	d.s.Listen(d.w.Canvas())
	t.Cleanup(func() {
		if err := d.s.Close(); err != nil {
			t.Error(err)
		}
		if err := shelf.Close(); err != nil {
			t.Error(err)
		}
	})
	return d
}

// restart ends the program and starts it again on the same folder.
func (d *desk) restart() *desk {
	d.t.Helper()
	if err := d.s.Close(); err != nil {
		d.t.Fatal(err)
	}
	d.s = New(OnShelf(d.shelf), d.tongue())
	d.w.SetContent(d.s.Content())
	d.s.Listen(d.w.Canvas())
	return d
}

// tongue is the language of the window.
func (d *desk) tongue() *words.Language {
	if d.lang == nil {
		return words.English
	}
	return d.lang
}

// sources are a clock that ticks by itself and ids that count up, so that a walk repeats. A second copy
// that is written behind the screen asks for the time too.
func sources() logbook.Sources {
	var n atomic.Int64
	return logbook.Sources{
		Now: func() time.Time {
			return time.Date(2026, 3, 2, 10, 0, int(n.Add(1)), 0, time.UTC)
		},
		NewID: func() measure.ID {
			return measure.ID(fmt.Sprintf("019ab3f0-0000-7000-8000-%012x", n.Add(1)))
		},
	}
}

// spot is a tappable thing and where it is on the glass.
type spot struct {
	key  *part.Key // nil for a widget of the toolkit
	name string
	pos  fyne.Position
	size fyne.Size
}

func (s spot) centre() fyne.Position {
	return s.pos.AddXY(s.size.Width/2, s.size.Height/2)
}

// spots are all tappable things that are shown.
func (d *desk) spots() []spot {
	var out []spot
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, at fyne.Position) {
		if key, ok := o.(*part.Key); ok {
			out = append(out, spot{key, key.Name, at, key.Size()})
		} else if _, ok := o.(fyne.Tappable); ok {
			out = append(out, spot{nil, fmt.Sprintf("%T", o), at, o.Size()})
		}
	})
	return out
}

// walk visits every shown object with its place on the glass.
func walk(o fyne.CanvasObject, at fyne.Position, visit func(fyne.CanvasObject, fyne.Position)) {
	if o == nil || !o.Visible() {
		return
	}
	at = at.Add(o.Position())
	visit(o, at)
	switch c := o.(type) {
	case *fyne.Container:
		for _, child := range c.Objects {
			walk(child, at, visit)
		}
	case fyne.Widget:
		for _, child := range test.WidgetRenderer(c).Objects() {
			walk(child, at, visit)
		}
	}
}

// find returns the one key of a name, turning a list over to it. A name may be cut short by a star.
func (d *desk) find(name string) spot {
	d.t.Helper()
	var names []string
	for {
		var down *spot
		for _, s := range d.spots() {
			names = append(names, s.name)
			if s.name == name || strings.HasSuffix(name, "*") && strings.HasPrefix(s.name, strings.TrimSuffix(name, "*")) {
				return s
			}
			if s.name == "down" {
				down = &s
			}
		}
		if down == nil {
			break
		}
		down.key.Tapped(nil)
	}
	d.t.Fatalf("no key %q here; there are %v", name, names)
	return spot{}
}

// nth is the name of the key at a place among those whose names begin alike; 0 is the first.
func (d *desk) nth(prefix string, n int) string {
	d.t.Helper()
	for _, s := range d.spots() {
		if strings.HasPrefix(s.name, prefix) {
			if n--; n < 0 {
				return s.name
			}
		}
	}
	d.t.Fatalf("not so many keys %s… here", prefix)
	return ""
}

// has reports whether a key is shown.
func (d *desk) has(name string) bool {
	for _, s := range d.spots() {
		if s.name == name {
			return true
		}
	}
	return false
}

// tap presses keys one after the other, on the glass.
func (d *desk) tap(names ...string) *desk {
	d.t.Helper()
	for _, name := range names {
		d.turnTo(name)
		test.TapCanvas(d.w.Canvas(), d.find(name).centre())
	}
	return d
}

// turnTo turns a list over until a key is shown.
func (d *desk) turnTo(name string) {
	for !d.any(name) && d.has("up") {
		test.TapCanvas(d.w.Canvas(), d.find("up").centre())
	}
	for !d.any(name) && d.has("down") {
		test.TapCanvas(d.w.Canvas(), d.find("down").centre())
	}
}

// any is has for a name that may be cut short by a star.
func (d *desk) any(name string) bool {
	for _, s := range d.spots() {
		if s.name == name || strings.HasSuffix(name, "*") && strings.HasPrefix(s.name, strings.TrimSuffix(name, "*")) {
			return true
		}
	}
	return false
}

// read types a number on the keypad and keeps it; side is "yes", "no" or "" for a value without one.
// Where the finder's lie is asked it lies along the part, marked end forward.
func (d *desk) read(number, side string) *desk {
	d.t.Helper()
	for _, r := range number {
		name := "key." + string(r)
		if r == '.' {
			name = "key.decimal"
		}
		d.tap(name)
	}
	switch {
	case side != "" && d.has("keep."+side):
		d.tap("keep." + side)
		side = ""
	case d.has("keep"):
		d.tap("keep")
	default: // a zero has no side
		d.tap("keep.yes")
	}
	if d.has("laid.along.fore") {
		d.tap("laid.along.fore")
	}
	if side != "" && d.has("side."+side) {
		d.tap("side." + side)
	}
	return d
}

// on goes to the next stop, heeds its cautions, and brings the vehicle to where it is wanted.
func (d *desk) on() *desk {
	d.t.Helper()
	d.tap("next")
	for d.has("bring.done") || d.has("caution.ok") {
		if d.has("bring.done") {
			d.tap("bring.done")
		} else {
			d.tap("caution.ok")
		}
	}
	return d
}

// write types a text into the entry of the page.
func (d *desk) write(text string) *desk {
	d.t.Helper()
	found := false
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, _ fyne.Position) {
		if e, ok := o.(*part.Entry); ok {
			e.SetText(text)
			found = true
		}
	})
	if !found {
		d.t.Fatal("nothing to write into here")
	}
	return d
}

// newBuild starts a build with the plainest layout.
func (d *desk) newBuild(title string) *desk {
	d.t.Helper()
	d.tap("new").write(title).tap("go", "answer.1", "answer.shaft", "answer.leaf", "answer.single", "answer.single")
	return d
}

// goTo jumps to a stop by the list of the route.
func (d *desk) goTo(stop string) *desk {
	d.t.Helper()
	d.tap("more", "more.route")
	for !d.has("stop."+stop) && d.turn("up") {
	}
	for !d.has("stop."+stop) && d.turn("down") {
	}
	return d.tap("stop." + stop)
}

// turn turns a list over and reports whether there was more.
func (d *desk) turn(key string) bool {
	if !d.has(key) {
		return false
	}
	d.tap(key)
	return true
}

// asRead is a text with the ties between a number and its unit as the spaces that a person sees.
func asRead(text string) string { return strings.ReplaceAll(text, part.Tied, " ") }

// text is everything that is written on the page, a line each, as it is read.
func (d *desk) text() string {
	var out []string
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, _ fyne.Position) {
		switch t := o.(type) {
		case *part.Text:
			out = append(out, t.Words)
		case *widget.Label:
			out = append(out, t.Text)
		}
	})
	return asRead(strings.Join(out, "\n"))
}

// sees fails unless every text is on the page.
func (d *desk) sees(texts ...string) *desk {
	d.t.Helper()
	page := d.text()
	for _, text := range texts {
		if !strings.Contains(page, text) {
			d.t.Errorf("page %q lacks %q; it says:\n%s", d.pageName(), text, page)
		}
	}
	return d
}

func (d *desk) pageName() string {
	if d.s.take == nil {
		return "builds"
	}
	return string(d.s.take.Page())
}
