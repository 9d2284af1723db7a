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
	files   []logbook.FileIn
	begun   bool
	stop    context.CancelFunc
	said    *part.Text // how far it is, on the page that is shown
	results []logbook.TakenIn
	over    bool
}

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
		s.visit(&taking{files: files})
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
			s.post(func() { v.said.Say(s.lang.Say("builds.importing", done, len(v.files))) })
		})
		return func() { v.results, v.over = results, true }
	})
}

// mostRefused is how many files that were not taken in are named.
const mostRefused = 5

// came says what came of it.
func (v *taking) came(s *Screen) page {
	var refused []string
	in := 0
	for _, r := range v.results {
		if r.Err == nil {
			in++
		} else if len(refused) < mostRefused {
			refused = append(refused, s.lang.Say("builds.imported.one", r.Name, r.Err.Error()))
		}
	}
	bad := len(v.results) - in
	note := s.lang.Say("builds.imported.all")
	if bad > 0 {
		note = s.lang.Say("builds.imported.some", bad)
		for _, line := range refused {
			note += "\n" + line
		}
		if bad > mostRefused {
			note += "\n" + s.lang.Say("builds.imported.more", bad-mostRefused)
		}
	}
	if left := len(v.files) - len(v.results); left > 0 {
		stopped := s.lang.Say("builds.imported.stopped", left)
		if bad == 0 {
			note = stopped
		} else {
			note = fmt.Sprintf("%s\n%s", stopped, note)
		}
	}
	ok := s.does(func() {
		s.drop(v)
		for s.top() != nil {
			s.drop(s.visits[0])
		}
	})
	return s.ask(question{title: s.lang.Say("builds.imported", in, len(v.files)), note: note, enter: ok,
		answers: []answer{{name: "ok", words: s.lang.Say("builds.imported.ok"), kind: part.Main, tap: ok}}})
}
