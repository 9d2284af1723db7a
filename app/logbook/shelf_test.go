package logbook

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/measure/store"
)

func TestTwoBooksOnOneBuildAreRefused(t *testing.T) {
	s, b := newShelfBook(t)
	other := openShelf(t, s.store.Dir(), newWorld())
	for name, shelf := range map[string]*Shelf{"the same shelf": s, "another shelf": other} {
		_, err := shelf.Open(b.ID())
		if !errors.Is(err, store.ErrHeld) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want ErrHeld in one line", name, err)
		}
	}
	closeBook(t, b)
	if _, err := other.Open(b.ID()); err != nil {
		t.Errorf("after closing: %v", err)
	}
}

func TestListIsRightWhileABookIsOpenAndAfter(t *testing.T) {
	s, b := newShelfBook(t)
	keep(t, b, slope(t, "gearbox.slope", "2"))
	struck := keep(t, b, slope(t, "shaft.slope", "17"))
	check := func(when string, open bool, readings int, worst checks.Verdict) Listing {
		t.Helper()
		list, err := s.List()
		if err != nil || len(list) != 1 {
			t.Fatalf("%s: %v, %v", when, list, err)
		}
		l := list[0]
		if l.ID != b.ID() || l.Title != b.Build().Title || l.Open != open || l.Readings != readings || l.Worst != worst || l.LastWork.IsZero() {
			t.Errorf("%s: %+v; want open %v, %d readings, worst %s", when, l, open, readings, worst)
		}
		return l
	}
	check("open", true, 2, checks.Out)
	if _, err := b.Strike(struck.Reading, "on the weld"); err != nil {
		t.Fatal(err)
	}
	live := check("after a strike", true, 1, checks.Waiting)
	closeBook(t, b)
	cached := check("closed", false, 1, checks.Waiting)
	if live.Wanted != cached.Wanted || live.Wanted == 0 || !live.LastWork.Equal(cached.LastWork) || live.Counts[checks.Clear] != cached.Counts[checks.Clear] {
		t.Errorf("the list says %+v while open and %+v from the file", live, cached)
	}
	if err := os.Remove(filepath.Join(s.store.Dir(), "index.json")); err != nil {
		t.Fatal(err)
	}
	check("without its index", false, 1, checks.Waiting)
}

// fromElsewhere makes a file of the same build with one more reading, as another device would.
func fromElsewhere(t *testing.T, data []byte, point, value string) []byte {
	t.Helper()
	b, _, err := document.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	w := newWorld()
	w.n = 1 << 20
	src := w.sources(deviceB).orSystem()
	k := &memory{}
	book := newBook(src, k, b)
	keep(t, book, slope(t, point, value))
	return bytesOf(t, book)
}

// memory keeps nothing.
type memory struct{}

func (*memory) Close() error { return nil }
func (*memory) keep(next *measure.Build, _ []store.Record) (*measure.Build, error) {
	return next, nil
}

func TestImportMergesAndAgainChangesNothing(t *testing.T) {
	for _, row := range []struct {
		name string
		open bool
	}{{"into a closed build", false}, {"into the open build", true}} {
		t.Run(row.name, func(t *testing.T) {
			s, b := newShelfBook(t)
			keep(t, b, slope(t, "gearbox.slope", "2"))
			theirs := fromElsewhere(t, bytesOf(t, b), "shaft.slope", "17")
			keep(t, b, slope(t, "pinion.slope", "3"))
			if !row.open {
				closeBook(t, b)
			}
			id, _, err := s.Import(theirs)
			if err != nil || id != b.ID() {
				t.Fatalf("import: %s, %v", id, err)
			}
			first, err := s.Export(id)
			if err != nil {
				t.Fatal(err)
			}
			merged, _, err := document.Read(first)
			if err != nil || len(merged.Readings) != 3 {
				t.Errorf("%d readings, %v; want both of ours and theirs", len(merged.Readings), err)
			}
			if row.open && said(b.Findings()) != "mean/gearbox.slope clear 2; mean/shaft.slope out 17; mean/pinion.slope clear 3; " {
				t.Errorf("the open book shows %q", said(b.Findings()))
			}

			before := storeFile(t, s, id)
			for range 2 {
				if _, _, err := s.Import(theirs); err != nil {
					t.Fatal(err)
				}
			}
			again, err := s.Export(id)
			if err != nil {
				t.Fatal(err)
			}
			sameBytes(t, "after importing the same file again", again, first)
			sameBytes(t, "the store's file after importing again", storeFile(t, s, id), before)
		})
	}
}

func storeFile(t *testing.T, s *Shelf, id measure.ID) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(s.store.Dir(), "builds", string(id)+".db"))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func TestImportOfANewBuildKeepsWhatThisVersionDoesNotKnow(t *testing.T) {
	const file = `{"format":"yokebook-build/1","id":"019ab3f0-0000-7000-8000-0000000000aa","title":"invented: by hand",
"layout":{"shafts":1,"slip":"shaft","axle":"leaf","front_joint":"single","rear_joint":"single"},
"colour":{"tailgate":1.10},"readings":[{"id":"019ab3f0-0000-7000-8000-0000000000ab","point":"gearbox.slope","value":2.40,
"unit":"deg","basis":"measured","ride":"droop","load":"none","setup":1,"weather":"wet"}]}`
	s := openShelf(t, t.TempDir(), newWorld())
	id, _, err := s.Import([]byte(file))
	if err != nil {
		t.Fatal(err)
	}
	out, err := s.Export(id)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`"colour":{"tailgate":1.10}`, `"weather":"wet"`, `"value":2.40`, `"title":"invented: by hand"`} {
		if !strings.Contains(string(out), want) {
			t.Errorf("%s is lost in:\n%s", want, out)
		}
	}
	b, err := s.Open(id)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := b.SetTitle("invented: renamed"); err != nil {
		t.Fatal(err)
	}
	closeBook(t, b)
	if b, err = s.Open(id); err != nil || b.Build().Title != "invented: renamed" {
		t.Errorf("title %v, %v", b.Build().Title, err)
	}
}

func TestBadImportTouchesNothing(t *testing.T) {
	s, b := newShelfBook(t)
	good := bytesOf(t, b)
	closeBook(t, b)
	before := storeFile(t, s, b.ID())
	for name, data := range map[string][]byte{
		"cut off": good[:len(good)/2], "empty": nil, "altered": []byte(strings.Replace(string(good), "logbook test", "logbook tesT", 1)),
	} {
		if _, _, err := s.Import(data); err == nil || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want one line", name, err)
		}
	}
	sameBytes(t, "after bad imports", storeFile(t, s, b.ID()), before)

	stranger := openShelf(t, t.TempDir(), newWorld())
	other, err := stranger.New("invented: another build", measure.NewLayout())
	if err != nil {
		t.Fatal(err)
	}
	if b, err = s.Open(b.ID()); err != nil {
		t.Fatal(err)
	}
	ofAnother := *other.Build()
	ofAnother.ID = "019ab3f0-0000-7000-8000-0000000000bb"
	if _, _, err := b.Merge(&ofAnother); !errors.Is(err, merge.ErrOther) {
		t.Errorf("merging another build: %v; want ErrOther", err)
	}
}

func TestDeviceIsMadeOnceAndKept(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "made on first start")
	w := newWorld()
	first, err := OpenShelf(dir, w.sources(""))
	if err != nil {
		t.Fatal(err)
	}
	again, err := OpenShelf(dir, w.sources(""))
	if err != nil || first.Device() == "" || again.Device() != first.Device() {
		t.Errorf("device %q, then %q, %v; want one and the same", first.Device(), again.Device(), err)
	}
	if err := os.WriteFile(filepath.Join(dir, "device.json"), []byte(`{"format":"yokebook-device/1","id":"../x"}`), 0o644); err != nil {
		t.Fatal(err)
	}
	renewed, err := OpenShelf(dir, w.sources(""))
	if err != nil || renewed.Device() == first.Device() {
		t.Errorf("after damage: %q, %v; want a new one", renewed.Device(), err)
	}
	if _, err := os.Stat(filepath.Join(dir, "device.json.damaged")); err != nil {
		t.Errorf("the damaged file is gone: %v", err)
	}
}

func TestHomeIsWhereTheEnvironmentSays(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("YOKEBOOK_HOME", dir)
	if got, err := Home(); err != nil || got != dir {
		t.Errorf("%q, %v; want %q", got, err, dir)
	}
	t.Setenv("YOKEBOOK_HOME", "")
	t.Setenv("XDG_CONFIG_HOME", dir)
	if got, err := Home(); err != nil || filepath.Base(got) != "yokebook" || !filepath.IsAbs(got) {
		t.Errorf("%q, %v; want a folder yokebook in the user's configuration", got, err)
	}
}
