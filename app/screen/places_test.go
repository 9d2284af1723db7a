package screen

import (
	"net/http"
	"net/http/httptest"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"golang.org/x/net/webdav"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"yokebook/app/device"
	"yokebook/app/logbook"
	"yokebook/app/places"
	"yokebook/app/screen/share"
	"yokebook/app/words"
	"yokebook/measure"
)

// wall is a desk whose window works beside passes: what they want done on the window's goroutine
// waits in calls until the person looks again.
type wall struct {
	*desk
	calls  chan func()
	places *places.Places
}

// connect gives a desk its places, passes on goroutines of their own.
func (d *desk) connect() *wall {
	d.t.Helper()
	w := &wall{desk: d, calls: make(chan func(), 1000), places: places.Open(d.dir, time.Now)}
	d.s.connect(w.places, d.shelf, share.Runner{
		Apart: func(f func()) { go f() },
		Post:  func(f func()) { w.calls <- f },
		Through: func(f func()) {
			done := make(chan struct{})
			w.calls <- func() { f(); close(done) }
			<-done
		},
		Now: time.Now,
	})
	d.s.inline = true // what a page asks by itself
	d.s.sharing.Here = "127.0.0.1:0"
	d.t.Cleanup(func() {
		d.s.sharing.Close()
		w.until("everything ended", func() bool { return !d.s.sharing.Busy() })
	})
	return w
}

// until looks at the window until something is so.
func (w *wall) until(what string, so func() bool) *wall {
	w.t.Helper()
	end := time.After(20 * time.Second)
	for !so() {
		select {
		case f := <-w.calls:
			f()
		case <-end:
			w.t.Fatalf("waited too long until %s; the page says:\n%s", what, w.text())
		}
	}
	return w
}

// idle waits until no pass goes on.
func (w *wall) idle() *wall {
	w.t.Helper()
	return w.until("no pass goes on", func() bool { return !w.s.sharing.Busy() })
}

// reach turns the list until a key is there, and taps it.
func (d *desk) reach(name string) *desk {
	d.t.Helper()
	for !d.has(name) && d.turn("up") {
	}
	for !d.has(name) && d.turn("down") {
	}
	return d.tap(name)
}

// addFolder adds a folder by the pages.
func (w *wall) addFolder(dir string) *wall {
	w.t.Helper()
	w.tap("places.add", "add.folder").write(dir).tap("add.go")
	return w.idle()
}

// The way of a build from a phone over a stick to a second one, with real taps: added places are synced
// with, every build says how many readings are here and there, and what is kept later goes by itself.
func TestBuildGoesOverAStickByTaps(t *testing.T) {
	stick := t.TempDir()
	a := openDesk(t, phone, false).connect()
	a.newBuild("Invented estate").read("5200", "").on()
	a.tap("more").reach("more.places")
	a.sees("No place yet")
	a.addFolder(stick)
	a.sees("synced and read back", "Builds: 1 of 1 synced", "Syncs by itself")
	a.tap("place.builds").sees("Invented estate", "synced · 1 readings here, 1 there", "last by this device")

	b := otherDesk(t, phone).connect()
	b.tap("places")
	b.addFolder(stick)
	b.sees("Came in: 7 records", "Builds: 1 of 1 synced")
	b.tap("back", "back")
	b.tap(b.nth("build.", 0))
	if got := b.s.take.Build().Title; got != "Invented estate" {
		t.Errorf("the second device opened %q", got)
	}

	files, _ := filepath.Glob(filepath.Join(stick, "*.json"))
	if len(files) != 2 {
		t.Fatalf("the stick holds %d files; want one of each device", len(files))
	}
	a.tap("back", "back", "back", "back").read("1", "")
	a.idle() // by itself
	a.on().tap("more").reach("more.places").tap("place." + stick).tap("place.builds")
	a.sees("synced · 2 readings here, 2 there")
}

// A build that is open shows what came in from elsewhere at once; what is half typed stays.
func TestOpenBuildTakesInWhatCame(t *testing.T) {
	stick := t.TempDir()
	a := openDesk(t, phone, false).connect()
	a.newBuild("Invented estate").read("5200", "").on()
	a.tap("more").reach("more.places")
	a.addFolder(stick)
	b := otherDesk(t, phone).connect()
	b.tap("places")
	b.addFolder(stick)
	b.tap("back", "back").tap(b.nth("build.", 0)).read("1", "")
	b.idle()

	a.tap("back", "back", "back", "key.1")
	a.s.sharing.ByItself()
	a.idle()
	if got := len(a.s.take.Build().Readings); got != 2 {
		t.Errorf("the open build holds %d readings; want both", got)
	}
	if a.pageName() != "keypad" || a.s.take.Where().Typed != "1" {
		t.Errorf("on page %s with %q typed; want the keypad with its 1", a.pageName(), a.s.take.Where().Typed)
	}
	a.tap("keep")
	if got := len(a.s.take.Build().Readings); got != 3 {
		t.Errorf("after keeping: %d readings", got)
	}
}

// otherDesk is the desk of another device.
func otherDesk(t *testing.T, size fyne.Size) *desk {
	t.Helper()
	src := sources()
	for range 5000 { // its ids are others
		src.NewID()
	}
	shelf, err := logbook.OpenShelf(t.TempDir(), src)
	if err != nil {
		t.Fatal(err)
	}
	d := &desk{t: t, dir: t.TempDir(), shelf: shelf, s: New(OnShelf(shelf), words.English)}
	d.w = test.NewTempWindow(t, d.s.Content())
	d.w.SetPadded(false)
	d.w.Resize(size)
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

var _ = measure.ID("")
var _ device.Picked
var _ = strings.Contains
var _ = http.StatusOK
var _ = httptest.NewServer
var _ webdav.Dir
