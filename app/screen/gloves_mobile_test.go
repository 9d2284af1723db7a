//go:build mobile

package screen

import (
	"fmt"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"yokebook/app/logbook"
	"yokebook/app/screen/finger"
	"yokebook/app/screen/look"
	"yokebook/app/screen/part"
	"yokebook/app/words"
)

// gloved is a person with gloves on, before a window of the phone's own driver.
type gloved struct {
	*desk
	glass finger.Glass
}

// putGlovesOn opens the window of a phone's size.
func putGlovesOn(t *testing.T, size fyne.Size) *gloved {
	t.Helper()
	a := app.NewWithID("io.github.yokebook.gloves")
	a.Settings().SetTheme(look.Held(false))
	dir := t.TempDir()
	shelf, err := logbook.OpenShelf(dir, sources())
	if err != nil {
		t.Fatal(err)
	}
	d := &desk{t: t, dir: dir, shelf: shelf, s: New(OnShelf(shelf), words.English)}
	d.s.inline = true
	d.w = a.NewWindow("")
	d.w.SetPadded(false)
	d.w.SetContent(d.s.Content())
	d.w.Resize(size)
	d.s.Listen(d.w.Canvas())
	if got := d.w.Canvas().Size(); got != size || !fyne.CurrentDevice().IsMobile() {
		t.Fatalf("a window of %v, on a phone: %v", got, fyne.CurrentDevice().IsMobile())
	}
	t.Cleanup(func() {
		d.s.Close()
		shelf.Close()
	})
	return &gloved{d, finger.On(a, d.w)}
}

// press is one way in which a glove presses.
type press struct {
	name string
	hold time.Duration
	from func(spot) fyne.Position // where it comes down on the key
	over []fyne.Delta             // where it goes from there, before it goes up
	rest bool                     // another finger rests on the glass meanwhile
}

// mm3 is 3 mm in units of 1/160 inch.
const mm3 = 18.9

// inside returns a place on a key: across and down as shares of it.
func inside(across, down float32) func(spot) fyne.Position {
	return func(s spot) fyne.Position {
		const rim = 2 // a finger that comes down on the rim itself is on the key or off it
		return s.pos.AddXY(rim+across*(s.size.Width-2*rim), rim+down*(s.size.Height-2*rim))
	}
}

// Times and the wobble: common practice, no source. 300 ms is where the driver begins to take a press
// for a secondary tap, 4 units where it begins to take it for a drag (its tapSecondaryDelay and
// tapMoveThreshold).
var presses = []press{
	{name: "quick", hold: 50 * time.Millisecond, from: inside(0.5, 0.5)},
	{name: "slow", hold: 500 * time.Millisecond, from: inside(0.5, 0.5)},
	{name: "very slow", hold: 1500 * time.Millisecond, from: inside(0.5, 0.5)},
	{name: "wobbling to and fro", hold: 50 * time.Millisecond, from: inside(0.5, 0.5), over: []fyne.Delta{{DX: mm3}, {DY: -mm3}, {}}},
	{name: "slow and wobbling away", hold: 500 * time.Millisecond, from: inside(0.5, 0.5), over: []fyne.Delta{{DX: -5}, {DX: -mm3}}},
	{name: "rolling off to the right", hold: 500 * time.Millisecond, from: inside(1, 0.5), over: []fyne.Delta{{DX: 6}, {DX: mm3 - 2}}},
	{name: "rolling off to the left", hold: 50 * time.Millisecond, from: inside(0, 0.5), over: []fyne.Delta{{DX: -6}, {DX: 2 - mm3}}},
	{name: "rolling off below", hold: 1500 * time.Millisecond, from: inside(0.3, 1), over: []fyne.Delta{{DY: 9}, {DY: mm3 - 2}}},
	{name: "rolling off above and back", hold: 500 * time.Millisecond, from: inside(0.7, 0), over: []fyne.Delta{{DY: -mm3}, {DY: 3}}},
	{name: "quick, another finger resting", hold: 50 * time.Millisecond, from: inside(0.2, 0.8), rest: true},
	{name: "slow, another finger resting", hold: 1500 * time.Millisecond, from: inside(0.8, 0.2), over: []fyne.Delta{{DX: 4}, {DX: -8}}, rest: true},
}

// do presses a key once; rest is where another finger rests where the press says so.
func (g *gloved) do(p press, s spot, rest fyne.Position) {
	const thumb, palm = 0, 1
	if p.rest {
		g.glass.Down(rest, palm)
	}
	at := p.from(s)
	g.glass.Down(at, thumb)
	to := at
	for _, d := range p.over {
		to = g.onGlass(at.AddXY(d.DX, d.DY))
		g.glass.Move(to, thumb)
		if p.rest {
			g.glass.Move(rest.AddXY(1, 1), palm) // the driver tells of all fingers when one moves
		}
	}
	g.glass.Held(thumb, p.hold)
	g.glass.Up(to, thumb)
	if p.rest {
		g.glass.Held(palm, 5*time.Second)
		g.glass.Up(rest, palm)
	}
}

func (g *gloved) onGlass(p fyne.Position) fyne.Position {
	size := g.w.Canvas().Size()
	return fyne.NewPos(min(max(p.X, 0), size.Width-1), min(max(p.Y, 0), size.Height-1))
}

// freePlace is a place on the glass that is no key's, as far from all as can be found.
func (g *gloved) freePlace() fyne.Position {
	size, best, most, keys := g.w.Canvas().Size(), fyne.Position{}, float32(-1), g.spots()
	for x := float32(1); x < size.Width; x += 12 {
		for y := float32(1); y < size.Height; y += 12 {
			near := float32(1e6)
			for _, s := range keys {
				near = min(near, max(s.pos.X-x, x-s.pos.X-s.size.Width, s.pos.Y-y, y-s.pos.Y-s.size.Height))
			}
			if near > most {
				best, most = fyne.NewPos(x, y), near
			}
		}
	}
	return best
}

// On every page, at every size, however a glove presses: every key gives exactly one event, and no
// other does. Nothing but these keys can be tapped there, save a field that one writes into and the bar
// beside a long text, which moves the text alone.
func TestGlovesOnEveryKeyOfEveryPage(t *testing.T) {
	for _, size := range []fyne.Size{small, phone, onSide, fyne.NewSize(640, 360)} {
		t.Run(fmt.Sprintf("%.0fx%.0f", size.Width, size.Height), func(t *testing.T) {
			g := putGlovesOn(t, size)
			pages, keys := 0, 0
			album(g.desk, func(page string) {
				pages++
				keys += g.pressAll(page)
			})
			if pages < 40 || keys < 300 {
				t.Errorf("%d pages with %d keys: the walk has lost its point", pages, keys)
			}
			t.Logf("%d pages, %d keys, %d presses each", pages, keys, len(presses))
		})
	}
}

// pressAll presses every key of the page in every way, with counters in place of what the keys do.
func (g *gloved) pressAll(page string) int {
	all, rest := g.spots(), g.freePlace()
	counted := map[*part.Key]int{}
	n := 0
	for _, s := range all {
		if s.key == nil {
			if s.name != "*part.Entry" && s.name != "*widget.scrollBarArea" { // a field; beside a long text
				g.t.Errorf("%s: a %s where gloves reach", page, s.name)
			}
			continue
		}
		n++
		tap := s.key.Tap
		s.key.Tap = func() { counted[s.key]++ }
		defer func() { s.key.Tap = tap }()
	}
	for _, s := range all {
		for _, p := range presses {
			if s.key == nil {
				continue
			}
			clear(counted)
			g.do(p, s, rest)
			sum := 0
			for _, c := range counted {
				sum += c
			}
			if counted[s.key] != 1 || sum != 1 {
				g.t.Errorf("%s: %s pressed %s: %d events, %d in all", page, s.name, p.name, counted[s.key], sum)
			}
		}
	}
	return n
}

// A finger that rests while another turns the page presses nothing on the new one.
func TestARestingFingerPressesNothingOnTheNextPage(t *testing.T) {
	g := putGlovesOn(t, phone)
	g.newBuild("Invented estate").tap("key.5")
	resting := g.find("key.8").centre()
	g.glass.Down(resting, 1)
	g.do(presses[1], g.find("more"), g.freePlace())
	if !g.has("more.route") {
		t.Fatal("more did not open while a finger rests")
	}
	before := g.text()
	g.glass.Held(1, 3*time.Second)
	g.glass.Up(resting, 1)
	if g.text() != before {
		t.Errorf("the resting finger led to:\n%s", g.text())
	}
	g.pressBack().sees("5 rev/min")
}

// What gloves type is what is kept.
func TestGlovesTypeAReading(t *testing.T) {
	g := putGlovesOn(t, small)
	g.newBuild("Invented estate")
	for i, name := range []string{"key.5", "key.2", "key.0", "key.0"} {
		g.do(presses[(i*5+2)%len(presses)], g.find(name), g.freePlace())
	}
	g.sees("5200 rev/min")
	g.do(presses[2], g.find("keep"), g.freePlace())
	g.sees("KEPT 5200 rev/min")
}
