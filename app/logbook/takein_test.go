package logbook

import (
	"context"
	"slices"
	"testing"

	"yokebook/measure"
)

// files makes so many build files of different builds.
func files(t *testing.T, n int) []FileIn {
	t.Helper()
	w := newWorld()
	w.n = 1 << 24
	s := openShelf(t, t.TempDir(), w)
	var out []FileIn
	for range n {
		b, err := s.New("invented: from elsewhere", measure.NewLayout())
		if err != nil {
			t.Fatal(err)
		}
		keep(t, b, slope(t, "gearbox.slope", "2"))
		out = append(out, FileIn{Name: string(b.ID()) + ".json", Data: bytesOf(t, b)})
		closeBook(t, b)
	}
	return out
}

func TestABadFileDoesNotStopTheOthers(t *testing.T) {
	s, in := openShelf(t, t.TempDir(), newWorld()), files(t, 2)
	in = slices.Insert(in, 1, FileIn{Name: "cut.json", Data: in[0].Data[:len(in[0].Data)/2]})
	var told []int
	got := s.ImportAll(context.Background(), in, func(done int) { told = append(told, done) })
	if len(got) != 3 || got[0].Err != nil || got[1].Err == nil || got[2].Err != nil || got[1].Name != "cut.json" {
		t.Errorf("got %+v", got)
	}
	if !slices.Equal(told, []int{0, 1, 2}) {
		t.Errorf("told %v", told)
	}
	if list, err := s.List(); err != nil || len(list) != 2 {
		t.Errorf("the shelf holds %v, %v", list, err)
	}
}

func TestTakingInStopsWhenItIsCancelled(t *testing.T) {
	s, in := openShelf(t, t.TempDir(), newWorld()), files(t, 3)
	ctx, cancel := context.WithCancel(context.Background())
	got := s.ImportAll(ctx, in, func(done int) {
		if done == 1 {
			cancel()
		}
	})
	if len(got) != 2 { // the one at hand is finished
		t.Errorf("got %d files, want 2", len(got))
	}
	if list, err := s.List(); err != nil || len(list) != 2 {
		t.Errorf("the shelf holds %v, %v", list, err)
	}
}

func TestGlanceLooksAtNoBuildAndFreshenAtAsManyAsItMay(t *testing.T) {
	s := openShelf(t, t.TempDir(), newWorld())
	s.ImportAll(context.Background(), files(t, 3), func(int) {})
	pending := func(list []Listing, err error) (n int) {
		t.Helper()
		if err != nil || len(list) != 3 {
			t.Fatalf("%v, %v", list, err)
		}
		for _, l := range list {
			if l.Pending {
				n++
			} else if l.Title == "" || l.Readings != 1 {
				t.Errorf("a row that is not pending says %+v", l)
			}
		}
		return n
	}
	if n := pending(s.Glance()); n != 3 {
		t.Errorf("%d pending at first, want 3", n)
	}
	if n := pending(s.Freshen(context.Background(), 2)); n != 1 {
		t.Errorf("%d pending after two, want 1", n)
	}
	over, cancel := context.WithCancel(context.Background())
	cancel()
	if n := pending(s.Freshen(over, 9)); n != 1 {
		t.Errorf("%d pending after the work was ended, want 1", n)
	}
	if n := pending(s.Freshen(context.Background(), 9)); n != 0 {
		t.Errorf("%d pending in the end, want none", n)
	}
	if n := pending(s.Glance()); n != 0 {
		t.Errorf("%d pending at a glance, want none", n)
	}
}
