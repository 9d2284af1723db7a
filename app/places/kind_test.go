package places

import (
	"context"
	"net/http/httptest"
	"os"
	"path/filepath"
	"testing"
	"time"

	"golang.org/x/net/webdav"

	"yokebook/app/logbook"
	"yokebook/measure"
)

// samples are an empty place of each kind, in the order of the table.
var samples = []struct {
	kind string
	at   func(t *testing.T) (address, listed string)
}{
	{"server", func(t *testing.T) (string, string) {
		s := httptest.NewServer(&webdav.Handler{FileSystem: webdav.Dir(t.TempDir()), LockSystem: webdav.NewMemLS()})
		t.Cleanup(s.Close)
		return s.URL, s.URL + "/"
	}},
	{"folder", func(t *testing.T) (string, string) {
		t.Chdir(t.TempDir())
		if err := os.Mkdir("stick", 0o755); err != nil {
			t.Fatal(err)
		}
		here, err := os.Getwd()
		if err != nil {
			t.Fatal(err)
		}
		return "stick", filepath.Join(here, "stick")
	}},
}

// Of every kind: its address belongs to it and is listed in one form, however it was written; the place
// calls itself by that form, so that what is remembered of it is found again; and it can be listed.
func TestEveryKindOfPlaceIsKnownByItsAddress(t *testing.T) {
	if len(samples) != len(kinds) {
		t.Fatalf("kind.go has %d kinds, %d have a sample here; add one", len(kinds), len(samples))
	}
	for i, s := range samples {
		t.Run(s.kind, func(t *testing.T) {
			address, listed := s.at(t)
			for j, k := range kinds[:i] {
				if k.has(address) {
					t.Errorf("%s is taken for a %s", address, samples[j].kind)
				}
			}
			if !kinds[i].has(address) {
				t.Errorf("%s is not taken for a %s", address, s.kind)
			}
			p := Open(t.TempDir(), time.Now)
			for _, written := range []string{address, listed} {
				if got, err := p.Add(written, true); err != nil || got.Address != listed {
					t.Errorf("%s is listed as %q, %v; want %s", written, got.Address, err, listed)
				}
				at, err := p.open(written)
				if err != nil {
					t.Fatal(err)
				}
				if at.Name() != listed {
					t.Errorf("the place calls itself %s, it is listed as %s", at.Name(), listed)
				}
				if _, err := at.List(context.Background()); err != nil {
					t.Error(err)
				}
				if err := at.Close(); err != nil {
					t.Error(err)
				}
			}
			if all, err := p.List(); err != nil || len(all) != 1 {
				t.Errorf("listed %v, %v", all, err)
			}
			if err := p.Forget(address); err != nil {
				t.Error(err)
			}
		})
	}
}

// Of every kind: what one device puts there another finds, and its answer comes back.
func TestABuildTravelsThroughEveryKindOfPlace(t *testing.T) {
	for _, s := range samples {
		t.Run(s.kind, func(t *testing.T) {
			_, address := s.at(t)
			one, other := shelfAt(t, t.TempDir()), shelfAt(t, t.TempDir())
			book, err := one.New("invented: on its way", measure.NewLayout())
			if err != nil {
				t.Fatal(err)
			}
			if err := book.Close(); err != nil {
				t.Fatal(err)
			}
			for n, shelf := range []*logbook.Shelf{one, other, one} {
				if n == 1 {
					syncOnce(t, shelf, address) // until then there is no build to keep in
				}
				if _, err := keepOne(shelf, n); err != nil {
					t.Fatal(err)
				}
				syncOnce(t, shelf, address)
			}
			syncOnce(t, other, address)
			for _, shelf := range []*logbook.Shelf{one, other} {
				if list, err := shelf.List(); err != nil || len(list) != 1 || list[0].Readings != 3 {
					t.Errorf("a device has %+v, %v; want one build with 3 readings", list, err)
				}
			}
		})
	}
}

func shelfAt(t *testing.T, dir string) *logbook.Shelf {
	t.Helper()
	shelf, err := logbook.OpenShelf(dir, logbook.System())
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = shelf.Close() })
	return shelf
}

func syncOnce(t *testing.T, shelf *logbook.Shelf, address string) {
	t.Helper()
	p := Open(shelf.Dir(), time.Now)
	p.Wait = func(ctx context.Context, _ time.Duration) error { return ctx.Err() }
	if report, err := p.Sync(context.Background(), shelf, address, Options{}); err != nil || !report.OK() {
		t.Fatalf("sync: %+v, %v", report, err)
	}
}
