package screen

import (
	"io"
	"log"
	"net/http"
	"net/http/httptest"
	"os"
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
	"yokebook/sync/place"
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
	a.tap("place.builds").sees("Invented estate", "synced · readings here 1, there 1", "last by this device")

	b := otherDesk(t, phone).connect()
	b.tap("places")
	b.addFolder(stick)
	b.sees("Records that came in: 7", "Builds: 1 of 1 synced")
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
	a.sees("synced · readings here 2, there 2")
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
	if p, b := a.s.take.Stop().Point.Key, b.s.take.Kept().Reading.Point; p != b {
		t.Fatalf("the devices stand at %s and %s: this proves nothing", p, b)
	}

	a.tap("back", "back", "back", "key.1")
	a.s.sharing.ByItself()
	a.idle()
	if got := len(a.s.take.Build().Readings); got != 2 {
		t.Errorf("the open build holds %d readings; want both", got)
	}
	if a.pageName() != "keypad" || a.s.take.Where().Typed != "1" {
		t.Errorf("on page %s with %q typed; want the keypad with its 1", a.pageName(), a.s.take.Where().Typed)
	}
	a.sees("read once already")
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

// ask is a server that asks for a user and a password, over TLS that nobody vouches for.
func askingServer(t *testing.T, dir string) *httptest.Server {
	t.Helper()
	dav := &webdav.Handler{FileSystem: webdav.Dir(dir), LockSystem: webdav.NewMemLS()}
	server := httptest.NewTLSServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if user, password, _ := r.BasicAuth(); user != "me" || password != "right" {
			w.WriteHeader(http.StatusUnauthorized)
			return
		}
		dav.ServeHTTP(w, r)
	}))
	server.Config.ErrorLog = log.New(io.Discard, "", 0)
	t.Cleanup(server.Close)
	return server
}

// A server is added by answering only what it wants to know: is this its fingerprint, who are you.
func TestServerIsAddedByItsFingerprint(t *testing.T) {
	dir := t.TempDir()
	server := askingServer(t, dir)
	pin := place.PinOf(server.Certificate())
	a := openDesk(t, phone, false).connect()
	a.newBuild("Invented estate").read("5200", "").on().tap("more").reach("more.places")
	a.tap("places.add", "add.server").write("http://192.0.2.1/dav/").tap("add.go").sees("use https://")
	a.write(server.URL).tap("add.go").sees("Does its own screen show", fingerprint(pin)[:13])
	a.tap("trust.yes").sees("Which user name?").write("me").tap("add.go").sees("Which password?")
	a.write("wrong").tap("add.go").sees("Which user name?", "refused the user name or password")
	a.tap("add.go").write("right").tap("add.go")
	a.idle()
	a.sees("Builds: 1 of 1 synced", "No key store of the system took the password")
	if strings.Contains(a.text(), "right\n") {
		t.Error("the page shows the password")
	}
	for name, want := range map[string]int{"*.json": 1} {
		if got, _ := filepath.Glob(filepath.Join(dir, name)); len(got) != want {
			t.Errorf("the server holds %q; want one file", got)
		}
	}
	a.reach("place.forget").tap("forget.yes").sees("No place yet")
	if data, err := os.ReadFile(filepath.Join(a.dir, "secrets.json")); err != nil || strings.Contains(string(data), "right") {
		t.Errorf("the password stayed: %v", err)
	}
}

// One device offers, the other types what it shows: address, then the fingerprint is compared, then the
// code. What is wrong is said in a line, and a build goes over.
func TestDevicesArePairedByCode(t *testing.T) {
	a := openDesk(t, phone, false).connect()
	a.newBuild("Invented estate").read("5200", "").on().tap("more").reach("more.places")
	a.reach("places.offer").tap("offer.here")
	a.until("the invitation is there", func() bool { return a.has("offer.stop") })
	i := a.s.sharing.Offering().Invitation
	a.sees(i.Address, i.Code, fingerprint(i.Pin), "Paired devices: 0")

	b := otherDesk(t, phone).connect()
	b.tap("places", "places.add", "add.device").write(strings.TrimPrefix(i.Address, "https://")).tap("add.go")
	b.sees("Does its own screen show", fingerprint(i.Pin)).tap("trust.yes")
	b.write("00000-00000").tap("add.go")
	b.sees("the code is wrong")
	b.write(strings.ToLower(i.Code)).tap("add.go")
	both(a, b, "b is done", func() bool { return !b.s.sharing.Busy() })
	b.sees("No key store of the system", "Builds: 1 of 1 synced")
	both(a, b, "a knows b and shows a new code", func() bool {
		o := a.s.sharing.Offering()
		return o.Newest != nil && o.Invitation.Code != i.Code
	})
	a.sees("Paired devices: 1", "Paired: ")
	a.tap("offer.devices").tap(a.nth("paired.", 0)).tap("unpair.yes").sees("No device is paired")
	b.tap("place.sync")
	both(a, b, "b was refused", func() bool { return !b.s.sharing.Busy() })
	b.sees("refused the user name or password")
	a.tap("back", "offer.stop").sees("Who may reach these builds?")
}

// both looks at two windows until something is so.
func both(a, b *wall, what string, so func() bool) {
	a.t.Helper()
	end := time.After(20 * time.Second)
	for !so() {
		select {
		case f := <-a.calls:
			f()
		case f := <-b.calls:
			f()
		case <-end:
			a.t.Fatalf("waited too long until %s; the pages say:\n%s\n%s", what, a.text(), b.text())
		}
	}
}

// A copy that another program made is tidied away after a question, and comes back on request.
func TestCopyIsTidiedByTaps(t *testing.T) {
	stick := t.TempDir()
	a := openDesk(t, phone, false).connect()
	a.newBuild("Invented estate").read("5200", "").on().tap("more").reach("more.places")
	a.addFolder(stick)
	if a.has("place.tidy") {
		t.Error("tidying is offered where there is no copy")
	}
	files, _ := filepath.Glob(filepath.Join(stick, "*.json"))
	data, err := os.ReadFile(files[0])
	if err != nil {
		t.Fatal(err)
	}
	copied := filepath.Join(stick, "build (1).json")
	if err := os.WriteFile(copied, data, 0o644); err != nil {
		t.Fatal(err)
	}
	a.tap("place.sync")
	a.idle().reach("place.tidy").sees("Tidy copies away? 1 of them", "kept on this device first")
	a.tap("back")
	if _, err := os.Stat(copied); err != nil {
		t.Fatalf("the copy went without a yes: %v", err)
	}
	a.reach("place.tidy").tap("tidy.yes")
	if _, err := os.Stat(copied); err == nil {
		t.Error("the copy is still there")
	}
	a.reach("place.back")
	if back, err := os.ReadFile(copied); err != nil || string(back) != string(data) {
		t.Errorf("put back: %v", err)
	}
}

// What did not work is one plain line on the page, and the next try is a tap.
func TestPlaceThatIsGoneIsSaidInALine(t *testing.T) {
	stick := filepath.Join(t.TempDir(), "stick")
	a := openDesk(t, phone, false).connect()
	a.newBuild("Invented estate").read("5200", "").on().tap("more").reach("more.places")
	a.tap("places.add", "add.folder").write(stick).tap("add.go").sees("there is no such folder")
	if err := os.Mkdir(stick, 0o755); err != nil {
		t.Fatal(err)
	}
	a.tap("add.go")
	a.idle().sees("Builds: 1 of 1 synced")
	if err := os.RemoveAll(stick); err != nil {
		t.Fatal(err)
	}
	a.tap("place.sync")
	a.idle().sees("plug it in", "1 of 1 synced when it was reached last")
	a.tap("place.auto").sees("Syncs only when asked")
}

// tray are the system's dialogs: what is saved lands in it, and what lies in it is picked.
type tray struct {
	saved  map[string][]byte
	picked []device.Picked
	err    error
}

func (d *tray) Save(name string, data []byte, done func(error)) {
	if d.err == nil {
		d.saved[name] = data
	}
	done(d.err)
}

func (d *tray) Open(done func([]device.Picked, error)) { done(d.picked, d.err) }

// Builds are saved as single files and taken in, several at once; one that is no build costs only itself.
func TestFilesGoOutAndInByTaps(t *testing.T) {
	out := &tray{saved: map[string][]byte{}}
	a := openDesk(t, phone, false).connect()
	a.s.On(device.Device{Pickers: out})
	a.newBuild("Invented estate").read("5200", "").on().tap("more").reach("more.places")
	a.reach("places.files").tap("files.save").sees("Saved and read back: 1 of 1 files")
	id := string(a.s.book.ID())
	if len(out.saved[id+".json"]) == 0 {
		t.Fatalf("saved %v; want the build under its id", out.saved)
	}
	out.err = device.ErrDismissed
	a.tap("files.save").sees("Saved and read back: 0 of 1 files")

	b := otherDesk(t, phone).connect()
	in := &tray{picked: []device.Picked{{Name: "a.json", Data: out.saved[id+".json"]}, {Name: "no.json", Data: []byte("{}")}}}
	b.s.On(device.Device{Pickers: in})
	b.tap("places").reach("places.files").tap("files.take").sees("Taken in: 1 of 2 files", "no.json:")
	b.tap("file."+id).sees("MARKED").tap("back", "back")
	b.tap(b.nth("build.", 0))
	if got := len(b.s.take.Build().Readings); got != 1 {
		t.Errorf("%d readings came in", got)
	}
}

// A server that does not answer keeps nobody waiting: readings are typed and kept meanwhile, the place says
// what goes on, and a tap ends it.
func TestSilentServerHoldsUpNothing(t *testing.T) {
	asked, gone := make(chan struct{}, 10), make(chan struct{})
	server := httptest.NewServer(http.HandlerFunc(func(_ http.ResponseWriter, r *http.Request) {
		asked <- struct{}{}
		select {
		case <-r.Context().Done():
		case <-gone:
		}
	}))
	t.Cleanup(server.Close)
	t.Cleanup(func() { close(gone) })
	d := openDesk(t, phone, false)
	if _, err := places.Open(d.dir, time.Now).Add(server.URL, true); err != nil {
		t.Fatal(err)
	}
	a := d.connect() // and begins by itself
	<-asked
	a.newBuild("Invented estate").read("5200", "").on().read("1", "").on()
	if got := len(a.s.take.Build().Readings); got != 2 || !a.s.sharing.Busy() {
		t.Fatalf("%d readings were kept, busy: %v", got, a.s.sharing.Busy())
	}
	a.tap("more").reach("more.places").sees("asks for the list of files")
	a.tap("place." + server.URL + "/").sees("asks for the list of files").tap("place.stop")
	a.idle().sees("Stopped; what came in stays", "Sync now")
	a.tap("back", "back", "back").read("20", "")
	if a.s.sharing.Busy() {
		t.Error("a place that did not answer a moment ago is asked again by itself")
	}
}

// Where one stood is shown again after the program was killed.
func TestPageOfAPlaceIsShownAgain(t *testing.T) {
	stick := t.TempDir()
	a := openDesk(t, phone, false).connect()
	a.newBuild("Invented estate").read("5200", "").on().tap("more").reach("more.places")
	a.addFolder(stick)
	a.s.sharing.Close()
	a.restart()
	b := a.connect()
	b.idle().sees("Builds: 1 of 1 synced", "synced and read back").tap("back").sees("Places that hold")
}
