package screen

import (
	"context"
	"errors"
	"fmt"
	"io"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"

	"yokebook/app/device"
	"yokebook/app/logbook"
	"yokebook/app/screen/part"
)

// taking takes build files in: how far it is, a key to stop it, and what came of it.
type taking struct {
	files []logbook.FileIn
	begun bool
	stop  context.CancelFunc
	said  *part.Text // how far it is, on the page that is shown
	sum   takingMark
	over  bool
}

// takingMark is what came of it so far.
type takingMark struct {
	Files   int       `json:"files"`  // that were picked
	Looked  int       `json:"looked"` // at so many of them
	In      int       `json:"in"`     // so many were taken in
	Over    bool      `json:"over"`   // all that follows is known
	Refused []refused `json:"refused"`
}

// refused is a file that was not taken in, and why.
type refused struct {
	Name string `json:"name"`
	Why  string `json:"why"`
}

func (v *taking) mark() string { return markOf("taking", v.sum) }

// takingOf is the page as it was. The files that were picked are not at hand any more: what was going on
// when the program ended is told, not gone on with.
func takingOf(m takingMark) *taking { return &taking{begun: true, sum: m, over: true} }

// pickFiles lets a person choose build files and takes them in.
func (s *Screen) pickFiles() {
	s.device.Pickers.Open(func(files []device.Picked, err error) {
		switch {
		case errors.Is(err, device.ErrDismissed):
			return
		case err != nil:
			s.err = err
			s.show()
			return
		}
		var in []logbook.FileIn
		for _, f := range files {
			in = append(in, logbook.FileIn{Name: f.Name, Data: f.Data})
		}
		s.does(func() { s.takeIn(in) })()
	})
}

// takeIn takes build files in, on a page that shows how far it is.
func (s *Screen) takeIn(files []logbook.FileIn) {
	if len(files) > 0 {
		s.visit(&taking{files: files, sum: takingMark{Files: len(files)}})
	}
}

// dropped takes in the files that were dropped on the list of builds, any number at once. Over an open
// build nothing is taken in.
func (s *Screen) dropped(uris []fyne.URI) {
	if s.book != nil || s.fresh != nil || len(uris) == 0 {
		return
	}
	s.work(func(ctx context.Context) func() {
		var in []logbook.FileIn
		for _, u := range uris {
			if ctx.Err() != nil {
				break
			}
			data, err := device.Read(u.Name(), func() (io.ReadCloser, error) { return storage.Reader(u) })
			in = append(in, logbook.FileIn{Name: u.Name(), Data: data, Err: err})
		}
		return func() { s.takeIn(in) }
	})
}

// back stops the work first; then it leaves.
func (v *taking) back(*Screen) bool {
	if !v.over && v.stop != nil {
		v.stop()
		return true
	}
	return false
}

func (v *taking) page(s *Screen) page {
	if v.over {
		return v.came(s)
	}
	v.said = part.NewText(s.lang.Say("builds.importing", 0, len(v.files)), part.Held, 28, part.Plain).Bold()
	p := s.ask(question{title: s.lang.Say("builds.import"), picture: v.said, answers: []answer{
		{name: "stop", words: s.lang.Say("builds.importing.stop"), tap: func() { v.back(s) }}}})
	if !v.begun {
		v.begun = true
		v.begin(s)
		if v.over { // the work was done at once
			return v.came(s)
		}
	}
	return p
}

// begin takes the files in beside the window. When it was stopped the page says what was done till then.
func (v *taking) begin(s *Screen) {
	until, stop := context.WithCancel(context.Background())
	v.stop = stop
	s.work(func(ctx context.Context) func() {
		defer context.AfterFunc(ctx, stop)()
		results := s.shelf.ImportAll(until, v.files, func(done int) {
			s.post(func() {
				v.sum.Looked = done
				s.remember()
				v.said.Say(s.lang.Say("builds.importing", done, len(v.files)))
			})
		})
		return func() { v.end(results) }
	})
}

// end notes what came of it.
func (v *taking) end(results []logbook.TakenIn) {
	v.over = true
	v.sum = takingMark{Files: len(v.files), Looked: len(results), Over: true}
	for _, r := range results {
		if r.Err == nil {
			v.sum.In++
		} else if len(v.sum.Refused) < mostRefused {
			v.sum.Refused = append(v.sum.Refused, refused{r.Name, r.Err.Error()})
		}
	}
}

// mostRefused is how many files that were not taken in are named.
const mostRefused = 5

// came says what came of it.
func (v *taking) came(s *Screen) page {
	m := v.sum
	ok := s.does(func() {
		s.drop(v)
		for s.top() != nil {
			s.drop(s.visits[0])
		}
	})
	title, note := s.lang.Say("builds.imported", m.In, m.Files), v.note(s)
	if !m.Over {
		title, note = s.lang.Say("builds.imported.cut", m.Looked, m.Files), s.lang.Say("builds.imported.rest")
	}
	return s.ask(question{title: title, note: note, enter: ok,
		answers: []answer{{name: "ok", words: s.lang.Say("builds.imported.ok"), kind: part.Main, tap: ok}}})
}

// note says what was not taken in, and why.
func (v *taking) note(s *Screen) string {
	m := v.sum
	bad := m.Looked - m.In
	note := s.lang.Say("builds.imported.all")
	if bad > 0 {
		note = s.lang.Say("builds.imported.some", bad)
		for _, r := range m.Refused {
			note += "\n" + s.lang.Say("builds.imported.one", r.Name, r.Why)
		}
		if bad > mostRefused {
			note += "\n" + s.lang.Say("builds.imported.more", bad-mostRefused)
		}
	}
	if left := m.Files - m.Looked; left > 0 {
		stopped := s.lang.Say("builds.imported.stopped", left)
		if bad == 0 {
			note = stopped
		} else {
			note = fmt.Sprintf("%s\n%s", stopped, note)
		}
	}
	return note
}
