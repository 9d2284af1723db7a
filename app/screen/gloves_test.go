package screen

import (
	"fmt"
	"testing"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// The phone's driver in a window of its own, where a press of 300 ms or more is no tap to most
// widgets: quick, slow and wobbling presses count once each.
func TestGlovesOnThePhoneDriver(t *testing.T) {
	need(t, "Xvfb", "xdotool", "go")
	const scale = 2 // fixed in the phone driver's window on a desk
	g := newGlass(t, 411*scale, 914*scale, "mobile")
	d := openDesk(t, phone, false)
	d.newBuild("Invented estate").tap("more", "more.builds")
	g.fill(t)
	g.start()
	g.wake()
	d.onGlass(g, "build.*", scale, steady, "0.05")
	d.onGlass(g, "key.5", scale, steady, "0.05")
	d.onGlass(g, "key.2", scale, steady, "0.7")
	d.onGlass(g, "key.0", scale, wobbling, "0.05")
	d.onGlass(g, "key.0", scale, wobbling, "0.7")
	before := g.stored()
	d.onGlass(g, "keep", scale, steady, "0.5")
	g.until("the reading on the disk", func() bool { return g.stored() > before })
	g.kill()
	if got := g.kept(); len(got) != 1 || got[0] != "engine.rpm_max 5200 rev/min bench" {
		t.Errorf("stored %v", got)
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

// The ways in which a thumb rests on the glass.
var (
	steady   []string
	wobbling = []string{"mousemove_relative", "7", "5", "sleep", "0.03", "mousemove_relative", "--", "-5", "4"}
)

// onGlass presses a key for so many seconds, on the real glass and in the test's screens.
func (d *desk) onGlass(g *glass, name string, scale float32, thumb []string, hold string) {
	d.t.Helper()
	at := d.find(name).centre()
	press := []string{"mousemove", fmt.Sprint(int(at.X * scale)), fmt.Sprint(int(at.Y * scale)), "mousedown", "1"}
	press = append(append(press, thumb...), "sleep", hold, "mouseup", "1")
	if out, err := g.xdotool(press...); err != nil {
		d.t.Fatalf("xdotool: %v\n%s", err, out)
	}
	d.tap(name)
}
