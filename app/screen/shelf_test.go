package screen

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"

	"yokebook/app/device"
	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/document"
)

// hands are pickers that give what they were told.
type hands struct {
	device.Pickers
	files []device.Picked
	err   error
}

func (h hands) Open(done func([]device.Picked, error)) { done(h.files, h.err) }

// shelfOf puts so many builds on the shelf, each with its number in its title.
func (d *desk) shelfOf(n int) *desk {
	d.t.Helper()
	for i := range n {
		b, err := d.shelf.New(fmt.Sprintf("Invented build %d", i+1), measure.NewLayout())
		if err != nil {
			d.t.Fatal(err)
		}
		if err := b.Close(); err != nil {
			d.t.Fatal(err)
		}
	}
	d.s.inline = true
	d.s.show()
	return d
}

// made counts the rows that are on the glass.
func (d *desk) made(prefix string) (n int) {
	for _, s := range d.spots() {
		if strings.HasPrefix(s.name, prefix) {
			n++
		}
	}
	return n
}

func TestSearchChangesTheRowsWhileOneTypes(t *testing.T) {
	d := openDesk(t, phone, false).shelfOf(12)
	d.sees("Builds on this device: 12", "Invented build 12")
	d.tap("search").write("build 1")
	if got := d.made("build."); got < 3 {
		t.Errorf("%d rows for \"build 1\"", got)
	}
	d.write("INVENTED 7").sees("Invented build 7")
	if got := d.made("build."); got != 1 {
		t.Errorf("%d rows for \"invented 7\", want 1", got)
	}
	d.restart()
	d.s.inline = true
	d.sees("Invented build 7") // the search is there again after a kill
	d.write("nothing like it").sees("No build has these words")
	d.write("7").tap("build.*")
	if d.s.take == nil || d.s.take.Build().Title != "Invented build 7" || d.s.top() != nil {
		t.Fatal("the found build is not open")
	}
	d.tap("more")
	d.reach("more.builds").sees("Builds on this device: 12", "Invented build 12")
}

// No row is made for a build that is not on the glass.
func TestRowsAreMadeForWhatIsShown(t *testing.T) {
	d := openDesk(t, phone, false).shelfOf(40)
	shown := d.made("build.")
	if shown < 3 || shown > 12 {
		t.Errorf("%d rows on the glass", shown)
	}
	first := d.nth("build.", 0)
	d.tap("down")
	if d.has(first) {
		t.Error("the first row is still there after turning over")
	}
}

func TestABuildThatChangedIsLookedAtWhileTheListIsShown(t *testing.T) {
	d := openDesk(t, phone, false)
	d.s.inline = true
	d.newBuild("Invented estate").read("5200", "").tap("again", "more")
	d.reach("more.builds").sees("readings: 1")
}

// buildFile is a build of another device as a file.
func buildFile(t *testing.T, n int) device.Picked {
	t.Helper()
	b := &measure.Build{ID: measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", n)), Title: fmt.Sprintf("Invented: from elsewhere %d", n),
		Layout: measure.NewLayout()}
	data, err := document.Write(b)
	if err != nil {
		t.Fatal(err)
	}
	return device.Picked{Name: fmt.Sprintf("elsewhere-%d.json", n), Data: data}
}

func TestFilesAreTakenInAndWhatIsNoBuildIsNamed(t *testing.T) {
	d := openDesk(t, phone, false)
	d.s.inline = true
	bad := device.Picked{Name: "photo.json", Data: []byte("no build")}
	d.s.On(device.Device{Pickers: hands{files: []device.Picked{buildFile(t, 1), bad, buildFile(t, 2)}}})
	d.tap("more", "import").sees("Build files taken in: 2 of 3", "photo.json", "Not taken in: 1")
	d.tap("ok").sees("Builds on this device: 2", "Invented: from elsewhere 1")
	d.s.On(device.Device{Pickers: hands{err: device.ErrDismissed}})
	d.tap("more", "import").sees("Builds: what else?")
	d.s.On(device.Device{Pickers: hands{err: errors.New("the card is gone")}})
	d.tap("import").sees("The card is gone")
}

func TestFilesDroppedOnTheListAreTakenInTogether(t *testing.T) {
	d := openDesk(t, phone, false)
	d.s.inline = true
	dir := t.TempDir()
	var uris []fyne.URI
	for i := range 2 {
		f := buildFile(t, i)
		path := filepath.Join(dir, f.Name)
		if err := os.WriteFile(path, f.Data, 0o644); err != nil {
			t.Fatal(err)
		}
		uris = append(uris, storage.NewFileURI(path))
	}
	uris = append(uris, storage.NewFileURI(filepath.Join(dir, "gone.json")))
	d.s.dropped(uris)
	d.sees("Build files taken in: 2 of 3", "gone.json: can't be read").tap("ok").sees("Builds on this device: 2")
	d.tap("build.*")
	d.s.dropped(uris)
	if d.s.top() != nil {
		t.Error("files were taken in over an open build")
	}
}

func TestTakingInCanBeStopped(t *testing.T) {
	d := openDesk(t, phone, false)
	var picked []device.Picked
	for i := range 5 {
		picked = append(picked, buildFile(t, i))
	}
	d.s.On(device.Device{Pickers: hands{files: picked}})
	d.s.inline = true
	stopper := &stopAfter{Shelf: d.s.shelf, d: d, n: 2}
	d.s.shelf = stopper
	d.tap("more", "import").sees("Build files taken in: 2 of 5", "Not looked at: 3")
}

// stopAfter presses Stop when so many files are done.
type stopAfter struct {
	Shelf
	d *desk
	n int
}

func (s *stopAfter) ImportAll(ctx context.Context, files []logbook.FileIn, told func(int)) []logbook.TakenIn {
	return s.Shelf.ImportAll(ctx, files, func(done int) {
		told(done)
		if done == s.n-1 {
			s.d.s.goBack()
		}
	})
}

func TestDuplicateStartsFromABuildOfTheShelf(t *testing.T) {
	d := openDesk(t, phone, false)
	d.s.inline = true
	d.newBuild("Invented estate").read("5200", "")
	d.tap("again", "more")
	d.reach("more.builds").tap("more", "duplicate", "from.*").sees("stated values of “Invented estate”")
	d.write("Invented pickup").tap("go")
	b := d.s.take.Build()
	if b.Title != "Invented pickup" || len(b.Readings) != 1 || b.Readings[0].Value.Token() != "5200" {
		t.Errorf("the new build is %q with %d readings", b.Title, len(b.Readings))
	}
}

func TestInstrumentsAreAddedChangedAndLeadToTheReversal(t *testing.T) {
	d := openDesk(t, phone, false)
	d.readyForASlope().tap("more")
	d.reach("more.instruments").sees("No instrument yet")
	d.tap("tool.new", "kind.angle").write("my finder").tap("go").sees("One step of its display")
	d.tap("key.0", "keep").sees("more than 0")
	d.tap("key.erase", "key.0", "key.decimal", "key.1", "keep").sees("right to within how many °")
	for _, r := range []rune{'0', '.', '2'} { // a keyboard types too
		d.s.typedRune(r)
	}
	d.tap("keep").sees("My finder", "step 0.1°, right to ± 0.2°", "due: its zero in setup")
	d.tap("instrument.angle").sees("No zero found by reversal yet", "Readings taken with it: 0")
	d.tap("tool.change", "change.accuracy", "key.0", "key.decimal", "key.3", "keep").sees("right to ± 0.3°")
	d.tap("tool.reverse").sees("Find the finder's zero")
	d.tap("zero.begin").read("2.0", "yes").tap("zero.turned").read("1.4", "yes")
	d.tap("next", "more")
	d.reach("more.instruments").sees("nothing due").tap("instrument.angle").sees("Zero in setup", "found by reversal on", "Readings taken with it: 2")
	in, _ := measure.InstrumentOf(d.s.take.Build().Instruments, "angle")
	if in.Name != "my finder" || in.Resolution.Token() != "0.1" || in.Accuracy.Token() != "0.3" {
		t.Errorf("in the build %+v", in)
	}
}

// A list of 10,000 builds turns over without making more rows than fit the glass, and a letter typed
// into the search changes them.
func TestTenThousandBuildsShowOnlyWhatFits(t *testing.T) {
	d := openDesk(t, phone, false)
	many := &manyShelf{Shelf: d.s.shelf}
	d.s.shelf = many
	d.s.inline = true
	d.s.show()
	for range 50 {
		d.tap("down")
		if got := d.made("build."); got > 12 {
			t.Fatalf("%d rows on the glass", got)
		}
	}
	d.tap("search").write("number 9999")
	if got := d.made("build."); got != 1 {
		t.Errorf("%d rows, want 1", got)
	}
	if many.opened > 0 {
		t.Errorf("%d builds were opened", many.opened)
	}
}

// manyShelf lists 10,000 builds.
type manyShelf struct {
	Shelf
	opened int
}

func (s *manyShelf) Glance() ([]logbook.Listing, error) {
	out := make([]logbook.Listing, 10_000)
	for i := range out {
		out[i] = logbook.Listing{ID: measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", i)), Title: fmt.Sprintf("Invented build number %d", i)}
	}
	return out, nil
}

func (s *manyShelf) Freshen(context.Context, int) ([]logbook.Listing, error) { return s.Glance() }

func (s *manyShelf) Open(id measure.ID) (Book, error) {
	s.opened++
	return s.Shelf.Open(id)
}
