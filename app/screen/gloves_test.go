package screen

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// scale is that of the phone driver's window on a desk.
const scale = 2

// The phone's driver in a window of its own, where a press of 300 ms or more is no tap to most
// widgets: presses of 50, 500 and 1,500 ms, still ones and such that wobble by 3 mm, count once each;
// the window is turned in the middle of a value. What a second finger does stands in
// gloves_mobile_test.go, since a display has but one.
func TestGlovesOnThePhoneDriver(t *testing.T) {
	need(t, "Xvfb", "xdotool", "go")
	for _, size := range []fyne.Size{small, phone, onSide} {
		t.Run(fmt.Sprintf("%.0fx%.0f", size.Width, size.Height), func(t *testing.T) {
			longer := int(max(size.Width, size.Height)) * scale
			g := newGlass(t, longer, longer, "mobile")
			g.wide, g.high = int(size.Width)*scale, int(size.Height)*scale
			d := openDesk(t, size, false)
			d.newBuild("Invented estate").tap("more", "more.builds")
			g.fill(t)
			g.start()
			g.wake()
			d.onGlass(g, "build.*", steady, "0.05")
			d.onGlass(g, "key.5", steady, "0.05")
			d.onGlass(g, "key.2", steady, "0.5")
			d.onGlass(g, "key.6", steady, "1.5")
			d.onGlass(g, "key.erase", wobbling, "0.05")
			d.turnGlass(g)
			d.onGlass(g, "key.0", wobbling, "0.05")
			d.onGlass(g, "key.0", wobbling, "1.5")
			before := g.stored()
			d.onGlass(g, "keep", steady, "0.5")
			g.until("the reading on the disk", func() bool { return g.stored() > before })
			g.kill()
			if got := g.kept(); len(got) != 1 || got[0] != "engine.rpm_max 5200 rev/min bench" {
				t.Errorf("stored %v", got)
			}
		})
	}
}

// fill puts one new build into the program's folder.
func (g *glass) fill(t *testing.T) {
	t.Helper()
	shelf, err := logbook.OpenShelf(g.home, logbook.System())
	if err != nil {
		t.Fatal(err)
	}
	if _, err := shelf.New("Invented estate", measure.NewLayout()); err != nil {
		t.Fatal(err)
	}
	if err := shelf.Close(); err != nil {
		t.Fatal(err)
	}
}

// wake resizes the window until it paints: the phone driver stays black until it is told a new size.
func (g *glass) wake() {
	g.t.Helper()
	less := 0
	g.until("a painted window", func() bool {
		less = 40 - less
		if err := g.resize(g.wide-less, g.high-less); err != nil {
			return false
		}
		img, err := g.shows()
		return err == nil && less == 0 && img.RGBAAt(g.wide/2, 4).R > 200
	})
}

// turnGlass turns the phone, in the test's screens too, and returns when the part of the display is
// painted that the window did not cover before.
func (d *desk) turnGlass(g *glass) {
	d.t.Helper()
	wide := g.high > g.wide
	g.wide, g.high = g.high, g.wide
	d.w.Resize(fyne.NewSize(float32(g.wide)/scale, float32(g.high)/scale))
	x, y := g.wide/2, g.high-4
	if wide {
		x, y = g.wide-4, g.high/2
	}
	g.until("a turned window", func() bool {
		if err := g.resize(g.wide, g.high); err != nil {
			return false
		}
		img, err := g.shows()
		return err == nil && img.RGBAAt(x, y).R > 100
	})
}

// The ways in which a thumb rests on the glass; the second moves by 3 mm (38 pixels) and back.
var (
	steady   []string
	wobbling = []string{"mousemove_relative", "30", "23", "sleep", "0.03", "mousemove_relative", "--", "-26", "-20"}
)

// onGlass presses a key for so many seconds, on the real glass and in the test's screens.
func (d *desk) onGlass(g *glass, name string, thumb []string, hold string) {
	d.t.Helper()
	at := d.find(name).centre()
	press := []string{"mousemove", fmt.Sprint(int(at.X * scale)), fmt.Sprint(int(at.Y * scale)), "mousedown", "1"}
	press = append(append(press, thumb...), "sleep", hold, "mouseup", "1")
	if out, err := g.xdotool(press...); err != nil {
		d.t.Fatalf("xdotool: %v\n%s", err, out)
	}
	d.tap(name)
}
