package screen

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/mobile"

	"yokebook/app/screen/take"
)

// Listen lets a hardware keyboard work the pages: digits and the decimal sign type, Enter goes on,
// Backspace erases, Escape goes back, left and right move along the route. On a page of big answers
// a digit picks one, counted from the first.
func (s *Screen) Listen(c fyne.Canvas) {
	c.SetOnTypedRune(s.typedRune)
	c.SetOnTypedKey(func(e *fyne.KeyEvent) { s.typedKey(e.Name) })
}

func (s *Screen) typedRune(r rune) {
	digit := int(r - '0')
	switch {
	case s.page.typed != nil:
		s.page.typed(r)
	case s.page.redraw != nil && r >= '0' && r <= '9':
		s.types(func() { s.take.Digit(digit) })
	case s.page.redraw != nil && (r == '.' || r == ','):
		s.types(s.take.Decimal)
	case digit >= 1 && digit <= len(s.page.answers):
		s.page.answers[digit-1]()
	}
}

func (s *Screen) typedKey(name fyne.KeyName) {
	switch name {
	case fyne.KeyReturn, fyne.KeyEnter:
		if s.page.enter != nil {
			s.page.enter()
		}
	case fyne.KeyBackspace:
		if s.page.typed != nil {
			s.page.typed('\b')
		}
		if s.page.redraw != nil {
			s.types(s.take.Erase)
		}
	case fyne.KeyEscape:
		s.goBack()
	case mobile.KeyBack:
		s.leaveBy()
	case fyne.KeyRight:
		s.along((*take.Model).Later)
	case fyne.KeyLeft:
		s.along((*take.Model).Earlier)
	}
}

// types changes the half-typed value and redraws no more than the display.
func (s *Screen) types(change func()) {
	change()
	s.remember()
	if s.page.redraw != nil {
		s.page.redraw()
	}
}

// along moves along the route from a page that stands for a stop.
func (s *Screen) along(step func(*take.Model)) {
	if s.take == nil || len(s.tell) > 0 || s.top() != nil {
		return
	}
	switch s.take.Page() {
	case take.Keypad, take.Codes, take.Write, take.Bring, take.Caution, take.Result, take.Run, take.Done:
		s.does(func() { step(s.take) })()
	}
}

// goBack leaves a page that lies over another. It reports false where there is none to go back to.
func (s *Screen) goBack() bool {
	moved := false
	switch {
	case s.top() != nil:
		moved = true
		s.does(s.leaveVisit)()
	case len(s.tell) > 0:
		moved = true
		s.does(func() { s.tell = nil })()
	case s.fresh != nil:
		moved = true
		s.does(func() {
			if !s.fresh.Back() {
				s.fresh, s.draft = nil, s.fresh
			}
		})()
	case s.take != nil:
		s.does(func() { moved = s.take.Back() })()
	}
	return moved
}
