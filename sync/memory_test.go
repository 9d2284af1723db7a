package sync

import (
	"context"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/sync/place"
)

// doubled lists every name twice, as a server may.
type doubled struct{ place.Place }

func (d doubled) List(ctx context.Context) (place.Listing, error) {
	l, err := d.Place.List(ctx)
	l.Files = append(l.Files, l.Files...)
	slices.SortStableFunc(l.Files, func(a, b place.File) int { return strings.Compare(a.Name, b.Name) })
	return l, err
}

// A file that is gone, and a build that is no longer here, are not remembered: were they there again with
// the old size and date, they would have to be read.
func TestWhatIsGoneIsForgotten(t *testing.T) {
	s, a, _ := pair(t)
	for n := range 3 {
		a.keep(n, n, "2.4")
	}
	a.must()
	for _, row := range []struct {
		name  string
		place place.Place
		build int
	}{{"once", s, 0}, {"a server that lists twice", doubled{s}, 1}} {
		name := place.FileName(buildID(row.build), a.id)
		delete(s.files, name)
		delete(a.drawer.builds, buildID(row.build))
		a.place = row.place
		a.must()
		if _, is := a.memory.Files[name]; is {
			t.Errorf("%s: the file is still remembered", row.name)
		}
		if _, is := a.memory.Builds[buildID(row.build)]; is {
			t.Errorf("%s: the build is still remembered", row.name)
		}
	}
	if got := slices.Collect(maps.Keys(a.memory.Builds)); !slices.Equal(got, []measure.ID{buildID(2)}) {
		t.Errorf("remembered are %v, want the one that is left", got)
	}
}

// This device's own file that another put in its place, whole and of the same build but with less in it, is
// written again, also when nothing changed here: its sum is not the one that was read back.
func TestOwnFileThatWasSetBackIsWrittenAgain(t *testing.T) {
	s, a, _ := pair(t)
	s.clock = func() time.Time { return a.now }
	a.keep(1, 1, "2.4")
	a.must()
	old := s.files[place.FileName(buildID(1), a.id)]
	a.keep(1, 2, "2.5")
	a.keep(2, 3, "2.6")
	a.must()
	a.now = a.now.Add(time.Hour)
	a.must()
	s.files[place.FileName(buildID(1), a.id)] = old
	if r := a.must(); r.Written != 1 || !r.Builds[0].Synced || !holdsAll(t, s, a.drawer.builds[buildID(1)]) {
		t.Errorf("written %d, %+v", r.Written, r.Builds)
	}
}
