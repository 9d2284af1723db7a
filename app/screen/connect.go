package screen

import (
	"slices"
	"time"

	"fyne.io/fyne/v2"

	"yokebook/app/logbook"
	"yokebook/app/places"
	"yokebook/app/screen/share"
	"yokebook/measure"
)

// Connect gives the screens the places that the shelf's builds are synced with, and begins with those
// that sync by themselves.
func (s *Screen) Connect(ps *places.Places, shelf *logbook.Shelf) {
	s.connect(ps, shelf, share.Runner{Apart: s.apart, Post: s.post, Through: s.through, Now: time.Now})
}

func (s *Screen) connect(ps *places.Places, shelf *logbook.Shelf, run share.Runner) {
	run.Changed = s.shared
	s.sharing = share.New(ps, shelf, run)
	s.sharing.ByItself()
	s.show()
}

// through runs f on the toolkit's goroutine, from any other, and returns when it is done.
func (s *Screen) through(f func()) {
	if s.inline {
		f()
		return
	}
	fyne.DoAndWait(f)
}

// noticed syncs by itself when something was kept since the page was shown last.
func (s *Screen) noticed() {
	if s.sharing == nil || s.book == nil {
		return
	}
	id, n := s.book.ID(), records(s.take.Build())
	if s.seen.build == id && s.seen.records < n {
		s.sharing.ByItself()
	}
	s.seen = seen{id, n}
}

// seen is how much of which build the screens have seen.
type seen struct {
	build   measure.ID
	records int
}

func records(b *measure.Build) int {
	return len(b.Readings) + len(b.Strikes) + len(b.Skips) + len(b.Heads)
}

// live is a page that shows what goes on beside the window.
type live interface{ live() bool }

// shared shows what is new: on the pages of places always, elsewhere when records came into what is
// shown. A page that one writes on is left alone.
func (s *Screen) shared(came []measure.ID) {
	mine := s.book == nil && len(came) > 0
	if s.book != nil && slices.Contains(came, s.book.ID()) {
		s.take.Came()
		s.seen = seen{s.book.ID(), records(s.take.Build())}
		mine = true
	}
	l, ok := s.top().(live)
	if s.page.focus == nil && (ok && l.live() || mine && s.fresh == nil) {
		s.show()
	}
}

// Disconnect ends what goes on beside the window and does not wait for it: what was taken in is on
// the disk.
func (s *Screen) Disconnect() {
	if s.sharing != nil {
		s.sharing.Close()
	}
}
