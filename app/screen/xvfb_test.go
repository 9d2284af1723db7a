package screen

import (
	"image"
	"image/draw"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"yokebook/app/screen/part"
	"yokebook/app/screen/share"
)

// pair is the real window and the same screens laid out in the test: every step is done on both,
// and the real one has to show the same page before the next.
type pair struct {
	*desk
	g     *glass
	steps int
	parts []image.Rectangle // compares these parts of the glass alone; none: all of it
}

// same waits until the real window shows what the test's screens show.
func (p *pair) same(after string) {
	p.t.Helper()
	drawn := p.drawn()
	want := without(p.w.Canvas().Capture(), drawn)
	var got *image.RGBA
	p.t.Cleanup(func() {
		if p.t.Failed() && *pictures != "" && got != nil && !p.alike(got, want) {
			savePicture(p.t, got, filepath.Join(*pictures, "real-got.png"))
			savePicture(p.t, want, filepath.Join(*pictures, "real-want.png"))
		}
	})
	p.g.until("the page after "+after, func() bool {
		var err error
		if got, err = p.g.shows(); err == nil {
			got = without(got, drawn)
		}
		return err == nil && p.alike(got, want)
	})
}

// drawn lists the places of bars and intervals: they rest on draws, which differ with the ids of
// readings, and the real program's ids are its own.
func (p *pair) drawn() []image.Rectangle {
	var list []image.Rectangle
	walk(p.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, at fyne.Position) {
		text, written := o.(*part.Text)
		if _, bar := o.(*part.Bar); bar || written && strings.Contains(text.Words, "…") {
			end := at.AddXY(o.Size().Width, o.Size().Height)
			list = append(list, image.Rect(int(at.X)-2, int(at.Y)-2, int(end.X)+2, int(end.Y)+2))
		}
	})
	return list
}

// without is a picture with some places blank.
func without(img image.Image, places []image.Rectangle) *image.RGBA {
	out := image.NewRGBA(img.Bounds())
	draw.Draw(out, out.Bounds(), img, img.Bounds().Min, draw.Src)
	for _, r := range places {
		draw.Draw(out, r, image.Black, image.Point{}, draw.Src)
	}
	return out
}

// alike compares two pictures in the parts that are looked at.
func (p *pair) alike(a, b image.Image) bool {
	if len(p.parts) == 0 {
		return alike(a, b)
	}
	for _, r := range p.parts {
		if !alike(cut(a, r), cut(b, r)) {
			return false
		}
	}
	return true
}

func cut(img image.Image, r image.Rectangle) image.Image {
	type parted interface {
		SubImage(image.Rectangle) image.Image
	}
	return img.(parted).SubImage(r)
}

// tap presses keys on both; each seventh press is a slow one.
func (p *pair) tap(names ...string) *pair {
	p.t.Helper()
	for _, name := range names {
		at := p.find(name).centre()
		p.steps++
		p.g.press(at.X, at.Y, p.steps%7 == 0)
		p.desk.tap(name)
		p.same(name)
	}
	return p
}

// read types a number on both and keeps it; it returns when the reading is on the disk.
func (p *pair) read(number, side string) *pair {
	p.t.Helper()
	before := p.g.stored()
	for _, r := range number {
		p.tap(map[bool]string{true: "key.decimal", false: "key." + string(r)}[r == '.'])
	}
	switch {
	case side != "" && p.has("keep."+side):
		p.tap("keep." + side)
		side = ""
	case p.has("keep"):
		p.tap("keep")
	default: // a zero has no side
		p.tap("keep.yes")
	}
	if p.has("laid.along.fore") {
		p.tap("laid.along.fore")
	}
	if side != "" {
		p.tap("side." + side)
	}
	p.g.until("the reading on the disk", func() bool { return p.g.stored() > before })
	return p
}

// on goes to the next stop on both, heeds cautions and brings the vehicle there.
func (p *pair) on() *pair {
	p.t.Helper()
	p.tap("next")
	for p.has("bring.done") || p.has("caution.ok") {
		if p.has("bring.done") {
			p.tap("bring.done")
		} else {
			p.tap("caution.ok")
		}
	}
	return p
}

// typed is what the person of TestRealWindow types, in the order of the route.
var typed = []struct {
	number, side string // side: "yes" is the front end high, clockwise; "no" the other; "" none
	want         string // point, value with sign, state, setup
}{
	{"5200", "", "engine.rpm_max 5200 rev/min bench"},
	{"0.83", "", "gear.highest 0.83  bench"},
	{"20", "", "joint.angle_limit 20 deg bench"},
	{"0", "", "shaft.phase 0 deg bench"},
	{"0.6", "yes", "datum.slope 0.6 deg droop/none setup 1"},
	{"2.4", "yes", "gearbox.slope 2.4 deg droop/none setup 1"},
	{"17.0", "yes", "shaft.slope 17.0 deg droop/none setup 1"},
	{"2.0", "yes", "pinion.slope 2.0 deg droop/none setup 1"},
	{"0.4", "no", "datum.slope -0.4 deg ride/kerb setup 2"},
	{"2.2", "yes", "gearbox.slope 2.2 deg ride/kerb setup 2"},
	{"5.7", "yes", "shaft.slope 5.7 deg ride/kerb setup 2"},
	{"2.1", "yes", "pinion.slope 2.1 deg ride/kerb setup 2"},
	{"0.9", "no", "datum.slope -0.9 deg ride/laden setup 3"},
	{"1.9", "yes", "gearbox.slope 1.9 deg ride/laden setup 3"},
	{"3.7", "yes", "shaft.slope 3.7 deg ride/laden setup 3"},
	{"2.6", "yes", "pinion.slope 2.6 deg ride/laden setup 3"},
}

// What is looked at on the pages that follow from a finding: its title and the row of keys. Between
// them stand the bar and amounts that rest on draws, which differ with the ids of readings.
var (
	titleOfFinding = image.Rect(0, 0, 411, 60)
	titleOfWays    = image.Rect(0, 0, 411, 64)
	titleOfTried   = image.Rect(0, 0, 106, 35) // "If it were so", not how many findings
	rowOfKeys      = image.Rect(0, 800, 411, 914)
)

// cures opens a finding in trouble, then what to change, one of the ways, and what would change then;
// and goes all the way back to the list. Nothing of it is stored.
func (p *pair) cures(finding string) {
	p.t.Helper()
	before := p.g.stored()
	p.parts = []image.Rectangle{titleOfFinding, rowOfKeys}
	p.tap(finding)
	if f, ok := p.s.take.Opened(); !ok || "finding."+f.Key() != finding {
		p.t.Fatalf("opened %v for %s", f.Key(), finding)
	}
	p.s.inline = true // here the search ends before the page is shown; the real window is waited for
	p.parts[0] = titleOfWays
	p.tap("cure").sees("Ways to make it clear")
	p.parts = []image.Rectangle{rowOfKeys} // of one way the title tells an amount
	p.tap("way.0").sees("clear in every state it is judged in")
	p.parts = []image.Rectangle{titleOfTried, rowOfKeys}
	p.tap("try").sees("The build stays as it is", "out becomes clear")
	p.parts = []image.Rectangle{rowOfKeys}
	p.tap("back")
	p.parts = []image.Rectangle{titleOfWays, rowOfKeys}
	p.tap("back")
	p.parts[0] = titleOfFinding
	p.tap("back")
	p.parts = nil
	p.tap("back")
	p.s.inline = false
	if after := p.g.stored(); after != before {
		p.t.Errorf("%d bytes of builds are stored after trying, %d before", after, before)
	}
}

// The real program under a display of its own: a whole route by touch alone, killed in the middle of
// a value, started again, finished, and on to what to change about a finding that is out; what is
// stored is what was typed.
func TestRealWindow(t *testing.T) {
	need(t, "Xvfb", "xdotool", "go")
	g := newGlass(t, 411, 914, "")
	p := &pair{desk: openDesk(t, phone, false), g: g}
	p.desk.s.sharing = new(share.Sharing) // the real program offers places too
	p.desk.s.show()
	g.start()
	p.same("start")
	p.desk.s.sharing = nil

	p.tap("new")
	if out, err := g.xdotool("type", "--delay", "20", "Invented estate"); err != nil {
		t.Fatalf("xdotool: %v\n%s", err, out)
	}
	p.write("Invented estate")
	p.tap("go", "answer.1", "answer.shaft", "answer.leaf", "answer.single", "answer.single")
	for _, r := range typed[:6] {
		p.read(r.number, r.side).on()
	}
	p.tap("key.1", "key.7") // half a value, never kept
	g.kill()

	p.restart()
	g.start()
	p.same("the second start") // at the same stop, with the same half value
	p.read(strings.TrimPrefix(typed[6].number, "17"), typed[6].side)
	for _, r := range typed[7:] {
		p.on().read(r.number, r.side)
	}
	p.tap("all", "filter") // on to the findings, and to one of them
	if !strings.Contains(p.text(), "Only what is") {
		t.Errorf("the list is not cut down:\n%s", p.text())
	}
	p.cures("finding.joint.inertia_drive||ride/kerb")
	p.tap("back")
	g.kill()

	want := make([]string, len(typed))
	for i, r := range typed {
		want[i] = r.want
	}
	if got := g.kept(); strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("stored:\n%s\ntyped:\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	for _, bad := range []string{"Error in Fyne call thread", "panic", "fatal error"} {
		if strings.Contains(g.log.String(), bad) {
			t.Errorf("the program's log says %q:\n%s", bad, g.log.String())
		}
	}
}
