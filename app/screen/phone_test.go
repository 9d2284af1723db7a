package screen

import (
	"os"
	"path/filepath"
	"reflect"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/mobile"

	"yokebook/app/device"
	"yokebook/app/logbook"
	"yokebook/app/words"
)

// pocket is a phone that notes what is asked of it.
type pocket struct {
	lit  bool
	left int
}

func (p *pocket) StayLit(on bool) { p.lit = on }
func (p *pocket) Leave()          { p.left++ }

// inPocket opens the window on a phone.
func inPocket(t *testing.T) (*desk, *pocket) {
	t.Helper()
	d, p := openDesk(t, phone, false), &pocket{}
	d.s.On(device.Device{Lamp: p, Exit: p})
	return d, p
}

// pressBack is the back key of a phone. As its driver does, it goes to what has the keyboard, if
// anything has.
func (d *desk) pressBack() *desk {
	back := &fyne.KeyEvent{Name: mobile.KeyBack}
	if f := d.w.Canvas().Focused(); f != nil {
		f.TypedKey(back)
	} else {
		d.w.Canvas().OnTypedKey()(back)
	}
	return d
}

func TestTheScreenStaysLitWhileReadingsAreTaken(t *testing.T) {
	d, p := inPocket(t)
	lit := func(where string, want bool) {
		t.Helper()
		if p.lit != want {
			t.Errorf("%s: lit %v", where, p.lit)
		}
	}
	lit("the list of builds", false)
	d.newBuild("Invented estate")
	lit("a stop", true)
	d.tap("key.2", "more")
	lit("more", true)
	d.tap("more.findings")
	lit("the findings", true)
	d.tap("back", "back")
	d.s.does(func() { d.s.visit(leavingVisit{}) })()
	lit("a page over it", false)
	d.tap("leaving.stay")
	lit("back at the stop", true)
	d.tap("more", "more.builds")
	lit("the list of builds again", false)
	d.restart()
	d.s.On(device.Device{Lamp: p, Exit: p})
	lit("started again", false)
	d.tap("build.*")
	lit("opened again", true)
}

// The back key leaves page after page, asks before it leaves a half-typed value, and leaves the
// program from the list of builds alone.
func TestTheBackKey(t *testing.T) {
	d, p := inPocket(t)
	d.tap("new").write("Invented estate").tap("go", "answer.1").pressBack()
	if !d.has("answer.2") {
		t.Fatalf("back in a new build leads to:\n%s", d.text())
	}
	d.tap("answer.1", "answer.shaft", "answer.leaf", "answer.single", "answer.single")
	d.tap("key.5", "key.2", "more", "more.route").pressBack().pressBack().sees("Engine highest speed", "52")
	d.pressBack().sees("52 rev/min is typed and not kept")
	d.pressBack().sees("Engine highest speed") // back from the question is to the stop
	d.pressBack().tap("leaving.stay", "key.0").sees("520")
	d.pressBack().tap("leaving.go").sees("Builds on this device")
	if p.left != 0 {
		t.Errorf("left the program %d times too early", p.left)
	}
	d.tap("build.*").sees("520 rev/min") // it waited there
	d.tap("key.erase", "key.erase", "key.erase").pressBack().sees("Builds on this device")
	if d.pressBack(); p.left != 1 {
		t.Errorf("left the program %d times, want once", p.left)
	}
}

// A phone may end the program at any moment without a word, and turns whenever the hand does. On
// every page: a turned window shows the same page; the files as they are then lead back to the same
// stop with the same half-typed value; and from there the back key leads out, and asks first where
// something is half typed.
func TestKilledOrTurnedOnEveryPage(t *testing.T) {
	d := openDesk(t, phone, false)
	stops, typed := 0, 0
	album(d, func(page string) {
		again := d.copied(t)
		want, got := d.s.where(), again.s.where()
		switch {
		case want.Open && want.Point == "": // after a kept reading work goes on at the next stop
			if d.s.take.Kept() == nil {
				break // the route is done, or the build was just opened
			}
			next, ok := d.s.take.Wanted(d.s.take.Kept().Change)
			if again.s.take == nil || ok && got.Point != next.Point.Key {
				t.Errorf("%s: killed, comes back at %q, next was %q", page, got.Point, next.Point.Key)
			}
		case !reflect.DeepEqual(got, want):
			t.Errorf("%s: killed, comes back at\n%+v, was\n%+v", page, got, want)
		}
		if want.Point != "" {
			stops++
		}
		if want.Typed != "" || want.HeightTyped != "" || want.Right != "" {
			typed++
			if d.s.page.redraw != nil && (again.s.page.redraw == nil || again.s.shown() != d.s.shown()) {
				t.Errorf("%s: killed, shows %q, was %q", page, again.s.shown(), d.s.shown())
			}
		}
		d.turned(t, page)
		again.leavesByBack(page)
	})
	if stops < 20 || typed < 3 {
		t.Errorf("%d pages at a stop, %d with something half typed: the walk has lost its point", stops, typed)
	}
}

// leavesByBack fails unless the back key alone leads out of the program.
func (d *desk) leavesByBack(page string) {
	d.t.Helper()
	out := &pocket{}
	d.s.On(device.Device{Exit: out})
	for range 12 {
		if d.has("leaving.go") {
			d.tap("leaving.go")
		} else {
			half := d.s.top() == nil && d.s.take != nil && d.s.take.HalfTyped()
			if d.pressBack(); half && d.s.take == nil {
				d.t.Errorf("%s: left without a word about what was half typed", page)
			}
		}
		if out.left > 0 {
			return
		}
	}
	d.t.Errorf("%s: after 12 times back still at:\n%s", page, d.text())
}

// copied opens the window on a copy of the files as they are on the disk now.
func (d *desk) copied(t *testing.T) *desk {
	t.Helper()
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS(d.dir)); err != nil {
		t.Fatal(err)
	}
	shelf, err := logbook.OpenShelf(dir, sources())
	if err != nil {
		t.Fatal(err)
	}
	again := &desk{t: t, dir: dir, shelf: shelf, s: New(OnShelf(shelf), words.English)}
	again.w = fyne.CurrentApp().NewWindow("")
	again.w.SetPadded(false)
	again.w.SetContent(again.s.Content())
	again.w.Resize(phone)
	again.s.Listen(again.w.Canvas())
	t.Cleanup(func() {
		again.s.Close()
		shelf.Close()
	})
	return again
}

// turned turns the window on its side and back: the page, what stands on it and where work stands
// are the same.
func (d *desk) turned(t *testing.T, page string) {
	t.Helper()
	before, place, shown := d.s.page.object, d.s.where(), d.text()
	d.w.Resize(onSide)
	if d.s.page.object != before || !reflect.DeepEqual(d.s.where(), place) {
		t.Errorf("%s: turned, another page is shown", page)
	}
	d.w.Resize(phone)
	if d.s.page.object != before || d.text() != shown {
		t.Errorf("%s: turned and back, it says\n%s\nand said\n%s", page, d.text(), shown)
	}
}

// Before another program comes to the front all is made safe, also where there is nothing to save.
func TestBackground(t *testing.T) {
	d, _ := inPocket(t)
	d.s.Background()
	d.newBuild("Invented estate").tap("key.5")
	if err := os.Remove(filepath.Join(d.dir, "place.json")); err != nil {
		t.Fatal(err)
	}
	d.tap("key.2").s.Background()
	if got := asRead(d.copied(t).s.shown()); got != "52 rev/min" {
		t.Errorf("comes back with %q", got)
	}
}
