package screen

import (
	"errors"
	"maps"
	"strings"
	"unicode"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/device"
	"yokebook/app/logbook"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/screen/share"
	"yokebook/app/screen/start"
	"yokebook/app/screen/take"
	"yokebook/app/words"
	"yokebook/measure"
)

// Book is an open build, as the screens use it.
type Book interface {
	take.Log
	ID() measure.ID
	Notes() []logbook.Note
	Close() error
}

// Shelf is the folder of builds, as the screens use it.
type Shelf interface {
	cabinet
	List() ([]logbook.Listing, error)
	New(title string, layout measure.Layout) (Book, error)
	Open(id measure.ID) (Book, error)
	Place() logbook.Place
	PlaceOf(build measure.ID) (logbook.Place, bool)
	SavePlace(logbook.Place) error
}

// OnShelf makes a logbook's shelf one that the screens use.
func OnShelf(s *logbook.Shelf) Shelf { return onShelf{s} }

type onShelf struct{ *logbook.Shelf }

func (s onShelf) New(title string, layout measure.Layout) (Book, error) {
	b, err := s.Shelf.New(title, layout)
	if err != nil {
		return nil, err
	}
	return b, nil
}

func (s onShelf) Open(id measure.ID) (Book, error) {
	b, err := s.Shelf.Open(id)
	if err != nil {
		return nil, err
	}
	return b, nil
}

// Screen is everything in the window. It shows one page at a time.
type Screen struct {
	house
	lang  *words.Language
	shelf Shelf
	host  *fyne.Container

	fresh *start.Model // a build that is being started; nil: none
	book  Book         // the open build; nil: the list of builds is shown
	take  *take.Model
	tell  []logbook.Note // how the open build was read back, until it was seen
	err   error

	drafts map[string]visit // pages that were left with something typed, by what they are about
	draft  *start.Model     // a build that was left before it was started

	visits []visit        // pages with models of their own that lie over the rest
	tops   map[string]int // see logbook.Place
	job    *job           // goes on off the toolkit's goroutine; nil: none
	inline bool           // in tests: tasks run at once

	sharing *share.Sharing // passes over places and offers, which go on beside the window; nil: none
	seen    seen

	device device.Device // what the device can do; members may be nil

	page page
}

// page is what is shown now and how the keyboard works on it.
type page struct {
	object  fyne.CanvasObject
	redraw  func()   // after digits were typed; nil on pages without a keypad
	enter   func()   // the key that goes on; nil where there is none
	answers []func() // big answers, picked by a digit of the keyboard
	focus   fyne.Focusable
	typed   func(rune) // takes what a keyboard types, backspace as \b; nil on pages without a keypad of their own
}

// New returns the screens on a shelf of builds, in a language. They show where work stood when the
// program ended, however it ended.
func New(shelf Shelf, lang *words.Language) *Screen {
	return (&Screen{shelf: shelf, host: container.NewStack()}).wake(lang)
}

// wake shows where work stood.
func (s *Screen) wake(lang *words.Language) *Screen {
	s.settleIn(lang)
	p := s.shelf.Place()
	if p.Open {
		s.open(s.shelf.Open(p.Build))
	}
	if f := p.Fresh; f != nil && s.take == nil {
		s.fresh = start.Resume(f.Title, f.Named, f.Answers)
	}
	if p.Open == (s.take != nil) {
		s.revisit(p.Visits)
		s.tops = p.Tops
	}
	s.show()
	return s
}

// Content is what the window holds.
func (s *Screen) Content() fyne.CanvasObject { return s.host }

// Close closes the open build. What was kept is on the disk already.
func (s *Screen) Close() error {
	s.stopWork()
	if s.book == nil {
		return nil
	}
	err := s.book.Close()
	s.book, s.take, s.tell, s.visits, s.drafts = nil, nil, nil, nil, nil
	return err
}

// show builds the page of the present state.
func (s *Screen) show() {
	if s.job != nil && s.job.owner != s.owner() {
		s.stopWork()
	}
	s.forgetTops()
	switch {
	case s.top() != nil:
		s.page = s.top().page(s)
	case s.fresh != nil:
		s.page = s.newBuild()
	case len(s.tell) > 0:
		s.page = s.told()
	case s.take != nil:
		s.page = s.takePage()
	default:
		s.page = s.builds()
	}
	s.remember()
	s.light()
	s.noticed()
	s.host.Objects = []fyne.CanvasObject{part.NewGlass(), s.page.object}
	s.host.Refresh()
	if c := fyne.CurrentApp().Driver().CanvasForObject(s.host); c != nil && s.page.focus != nil {
		c.Focus(s.page.focus)
	} else if c != nil {
		c.Unfocus()
	}
}

// does returns a handler that changes the state and shows it.
func (s *Screen) does(change func()) func() {
	return func() {
		s.err = nil
		change()
		s.show()
	}
}

// sizes are the sizes of keys for the page as it is now.
func (s *Screen) sizes() arrange.Sizes { return arrange.For(s.host.Size()) }

// open shows the Take screen of a build.
func (s *Screen) open(b Book, err error) {
	if err != nil {
		s.err = err
		return
	}
	s.fresh, s.draft, s.book, s.tell = nil, nil, b, b.Notes()
	if p, ok := s.shelf.PlaceOf(b.ID()); ok {
		s.take = take.Resume(b, p)
	} else {
		s.take = take.New(b)
	}
	s.preferUnits()
}

// remember saves where work stands. Where that can't be saved work goes on all the same: nothing
// that was kept depends on it.
func (s *Screen) remember() {
	_ = s.shelf.SavePlace(s.where())
}

// where is where work stands, with the pages that lie over it.
func (s *Screen) where() logbook.Place {
	p := s.shelf.Place()
	if s.take != nil {
		p = s.take.Where()
	}
	p.Visits, p.Fresh, p.Tops = s.marks(), nil, maps.Clone(s.tops)
	if s.fresh != nil {
		named, answers := s.fresh.Answered()
		p.Fresh = &logbook.Fresh{Title: s.fresh.Title(), Named: named, Answers: answers}
	}
	return p
}

// leave closes the build and shows the list.
func (s *Screen) leave() {
	place := s.take.Where()
	place.Open, place.Pages = false, nil
	_ = s.shelf.SavePlace(place) // as in remember
	s.err = s.Close()
}

// failure is the line for what could not be done; "" when all went well.
func (s *Screen) failure() string {
	err := s.err
	if err == nil && s.take != nil {
		err = s.take.Error()
	}
	switch {
	case err == nil:
		return ""
	case err == take.ErrNothingTyped:
		return s.lang.Say("screen.type_first")
	case err == take.ErrMinutes:
		return s.lang.Say("screen.minutes.invalid")
	}
	var no *measure.Refusal
	if errors.As(err, &no) {
		return sentence(s.lang.Say(no.Key, no.Args...))
	}
	text := strings.TrimPrefix(err.Error(), "value: ")
	if s.take != nil {
		key := s.take.Stop().Point.Key
		text = strings.ReplaceAll(text, key, s.lang.Point(key))
	}
	return sentence(s.lang.Fault(text))
}

// sentence starts a text with a capital.
func sentence(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(first)) + text[size:]
}
