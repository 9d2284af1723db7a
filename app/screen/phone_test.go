package screen

import (
	"os"
	"path/filepath"
	"reflect"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/mobile"

	"yokebook/app/device"
	"yokebook/app/logbook"
	"yokebook/app/places"
	"yokebook/app/screen/share"
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
	woken := &Screen{shelf: OnShelf(shelf), host: container.NewStack(), inline: true}
	woken.device.Pickers, woken.device.Clipboard = d.s.device.Pickers, d.s.device.Clipboard
	again := &desk{t: t, dir: dir, shelf: shelf, s: woken.wake(words.English)}
	if d.s.sharing != nil {
		again.quietPlaces()
	}
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

// quietPlaces gives a desk its places, over which nothing goes.
func (d *desk) quietPlaces() {
	d.s.sharing = share.New(places.Open(d.dir, time.Now), d.shelf, share.Runner{Apart: func(func()) {}, Post: func(func()) {},
		Through: func(func()) {}, Changed: d.s.shared, Now: time.Now})
	d.s.show()
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
