package logbook

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/measure/store"
	buildsync "yokebook/sync"
	"yokebook/sync/place"
)

// passOf does one pass of a shelf over a folder.
func passOf(t *testing.T, s *Shelf, dir string, m *buildsync.Memory) buildsync.Report {
	t.Helper()
	f, err := place.OpenFolder(dir)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	p := buildsync.Pass{Place: f, Builds: s.Builds(nil), Device: s.Device(), Now: time.Now}
	r, err := p.Run(context.Background(), m)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestTwoShelvesEndAlikeThroughAFolder(t *testing.T) {
	dir := t.TempDir()
	a := openShelf(t, t.TempDir(), newWorld())
	far := newWorld()
	far.n = 1 << 20
	b, err := OpenShelf(t.TempDir(), far.sources(deviceB))
	if err != nil {
		t.Fatal(err)
	}
	book, err := a.New("invented: two shelves", measure.NewLayout())
	if err != nil {
		t.Fatal(err)
	}
	keep(t, book, slope(t, "gearbox.slope", "2.4"))
	id := book.ID()
	ma, mb := buildsync.NewMemory(), buildsync.NewMemory()
	if r := passOf(t, a, dir, ma); !r.OK() || r.Builds[0].There != 1 {
		t.Fatalf("with the book open: %+v", r)
	}
	if r := passOf(t, b, dir, mb); !r.OK() || r.Builds[0].Here != 1 || r.Builds[0].Came.Readings != 1 {
		t.Fatalf("the other device: %+v", r)
	}
	theirs, err := b.Open(id)
	if err != nil {
		t.Fatal(err)
	}
	keep(t, theirs, slope(t, "shaft.slope", "17"))
	closeBook(t, theirs)
	passOf(t, b, dir, mb)
	if r := passOf(t, a, dir, ma); !r.OK() || r.Builds[0].Here != 2 {
		t.Fatalf("back at the first: %+v", r)
	}
	if !strings.Contains(said(book.Findings()), "mean/shaft.slope out 17") {
		t.Errorf("the open book shows %q", said(book.Findings()))
	}
	closeBook(t, book)
	x, err := a.Export(id)
	if err != nil {
		t.Fatal(err)
	}
	y, err := b.Export(id)
	if err != nil {
		t.Fatal(err)
	}
	sameBytes(t, "the two shelves", x, y)
	if r := passOf(t, a, dir, ma); r.Written != 0 || !r.Builds[0].Synced {
		t.Errorf("a pass without news wrote %d files: %+v", r.Written, r)
	}
}

// What the window holds open another program can't take in, but what is in it goes out all the same.
func TestBuildOpenElsewhereGoesOutAndComesInLater(t *testing.T) {
	dir := t.TempDir()
	s, book := newShelfBook(t)
	keep(t, book, slope(t, "gearbox.slope", "2"))
	cli := openShelf(t, s.store.Dir(), newWorld())
	m := buildsync.NewMemory()
	if r := passOf(t, cli, dir, m); !r.OK() || r.Builds[0].There != 1 {
		t.Fatalf("with nothing to take in: %+v", r)
	}
	theirs := fromElsewhere(t, bytesOf(t, book), "shaft.slope", "17")
	if err := os.WriteFile(filepath.Join(dir, "theirs.json"), theirs, 0o644); err != nil {
		t.Fatal(err)
	}
	r := passOf(t, cli, dir, m)
	if len(r.Faults) != 1 || r.Faults[0].Kind != buildsync.Here || !errors.Is(r.Faults[0].Err, store.ErrHeld) || r.Builds[0].Synced {
		t.Errorf("while it is open elsewhere: %+v", r)
	}
	closeBook(t, book)
	if r := passOf(t, cli, dir, m); !r.OK() || r.Builds[0].Here != 2 || !r.Builds[0].Synced {
		t.Errorf("once it is closed: %+v", r)
	}
}

// What a pass beside the window takes in never meets a build half opened or half closed: neither the
// person who opens it nor the pass is refused.
func TestTakingInNeverMeetsABuildHalfOpened(t *testing.T) {
	s, book := newShelfBook(t)
	keep(t, book, slope(t, "gearbox.slope", "2"))
	id := book.ID()
	theirs := book.Build()
	closeBook(t, book)
	calls, ended := make(chan func()), make(chan error)
	through := func(work func()) {
		done := make(chan struct{})
		calls <- func() { work(); close(done) }
		<-done
	}
	go func() {
		for range 60 {
			if _, _, err := s.Builds(through).Take(theirs); err != nil {
				ended <- err
				return
			}
		}
		ended <- nil
	}()
	for opened := 0; ; {
		select {
		case f := <-calls:
			f()
		case err := <-ended:
			if err != nil {
				t.Errorf("the pass: %v", err)
			}
			if opened == 0 {
				t.Error("nobody opened the build meanwhile: this proves nothing")
			}
			return
		default:
			b, err := s.Open(id)
			if err != nil {
				t.Fatalf("the person: %v", err)
			}
			opened++
			select { // now and then while it is open
			case f := <-calls:
				f()
			default:
			}
			closeBook(t, b)
		}
	}
}
