package screen

import (
	"yokebook/app/device"
	"yokebook/app/screen/part"
)

// On gives the screens the device that they run on.
func (s *Screen) On(d device.Device) {
	s.device = d
	s.light()
}

// light keeps the screen lit while a build is open and its own pages are shown: hands are then on the
// tool, not on the glass. Lists, settings and places leave it to the system.
func (s *Screen) light() {
	if s.device.Lamp != nil {
		s.device.Lamp.StayLit(s.take != nil && s.top() == nil)
	}
}

// Background is called when another program comes to the front: the system may end this one without
// a further word. Readings are on the disk already; where work stands is put there to stay.
func (s *Screen) Background() {
	s.remember()
	if f, ok := s.shelf.(interface{ Flush() error }); ok {
		_ = f.Flush() // as in remember
	}
	if b, ok := s.book.(interface{ Secure() error }); ok {
		_ = b.Secure() // the file of the build tells of a copy that is missing when it is opened
	}
}

// leaveBy is the back key of a phone: back one page, from a stop to the list of builds, and from
// there out of the program. A value that was begun at a stop is asked about first.
func (s *Screen) leaveBy() {
	switch {
	case s.goBack():
	case s.take != nil && s.take.HalfTyped():
		s.does(func() { s.visit(leavingVisit{}) })()
	case s.take != nil:
		s.does(s.leave)()
	case s.device.Exit != nil:
		s.device.Exit.Leave()
	}
}

// leavingVisit asks before a stop with a half-typed value is left by the back key, which is easily
// touched. Back goes to the stop.
type leavingVisit struct{}

func (leavingVisit) mark() string      { return "leaving" }
func (leavingVisit) back(*Screen) bool { return false }

func (v leavingVisit) page(s *Screen) page {
	stay := s.does(func() { s.drop(v) })
	value := s.shown()
	if written := s.take.Written(); written != "" {
		value = written
	}
	return s.ask(question{
		title: s.lang.Say("phone.leaving", value),
		note:  s.lang.Say("phone.leaving.note"),
		answers: []answer{
			{name: "leaving.stay", words: s.lang.Say("phone.leaving.stay"), kind: part.Main, tap: stay},
			{name: "leaving.go", words: s.lang.Say("phone.leaving.go"), tap: s.does(func() { s.drop(v); s.leave() })},
		},
		enter: stay,
	})
}

// entry is a field to write into, out of which the back key of a phone leads as from everywhere.
func (s *Screen) entry() *part.Entry { return part.NewEntry(false, s.leaveBy) }

// secretEntry is an entry whose text is hidden.
func (s *Screen) secretEntry() *part.Entry { return part.NewEntry(true, s.leaveBy) }
