package screen

import (
	"context"
	"errors"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"yokebook/app/device"
	"yokebook/app/logbook"
	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// filesVisit saves builds as single files and takes files in, several at once.
type filesVisit struct {
	marked map[measure.ID]bool
	said   string // how the last thing went
}

// newFiles begins with the open build marked, if one is open.
func (s *Screen) newFiles() *filesVisit {
	v := &filesVisit{marked: map[measure.ID]bool{}}
	if s.book != nil {
		v.marked[s.book.ID()] = true
	}
	return v
}

func (*filesVisit) draft() string { return "files" }

func (v *filesVisit) back(*Screen) bool {
	v.said = ""
	return false
}

func (v *filesVisit) mark() string {
	var ids []measure.ID
	for id, marked := range v.marked {
		if marked {
			ids = append(ids, id)
		}
	}
	slices.Sort(ids)
	return markOf("files", ids)
}

// filesOf is the page with builds marked as they were.
func filesOf(ids []measure.ID) *filesVisit {
	v := &filesVisit{marked: map[measure.ID]bool{}}
	for _, id := range ids {
		v.marked[id] = true
	}
	return v
}

func (v *filesVisit) page(s *Screen) page {
	list, err := s.shelf.List()
	if err != nil {
		s.err = err
	}
	title := s.lang.Say("files.title")
	switch {
	case s.working():
		title = s.lang.Say("files.working")
	case v.said != "":
		title = breakable(v.said)
	}
	lines := []func() fyne.CanvasObject{func() fyne.CanvasObject {
		return part.NewWordKey("files.take", part.Ordinary, s.lang.Say("files.take"), s.does(func() { v.take(s) }))
	}, func() fyne.CanvasObject {
		words, kind := s.lang.Say("files.mark"), part.Standing
		if n := v.count(list); n > 0 {
			words, kind = s.lang.Say("files.save", n), part.Main
		}
		return part.NewWordKey("files.save", kind, words, s.does(func() { v.save(s, v.chosen(list), 0, 0) }))
	}}
	for _, l := range list {
		lines = append(lines, func() fyne.CanvasObject { return v.row(s, l) })
	}
	return s.linesPage(title, lines)
}

func (v *filesVisit) row(s *Screen, l logbook.Listing) fyne.CanvasObject {
	title, mark, kind, text := l.Title, checks.Unsaid, part.Row, s.lang.Say("files.plain", l.Readings)
	if title == "" {
		title = s.lang.Say("screen.builds.untitled")
	}
	if v.marked[l.ID] {
		mark, kind, text = checks.Clear, part.Standing, s.lang.Say("files.marked", l.Readings)
	}
	face := part.NewRowFace(part.NewMark(mark), part.NewText(title, part.Held, 20, part.Plain).Bold(), part.NewText(text, part.Held, 17, part.Quiet))
	return part.NewKey("file."+string(l.ID), kind, face, s.does(func() { v.marked[l.ID] = !v.marked[l.ID] }))
}

func (v *filesVisit) count(list []logbook.Listing) int { return len(v.chosen(list)) }

func (v *filesVisit) chosen(list []logbook.Listing) []measure.ID {
	var out []measure.ID
	for _, l := range list {
		if v.marked[l.ID] {
			out = append(out, l.ID)
		}
	}
	return out
}

// save saves one build after the other, each where the person says, from number at on; good is how
// many were saved and read back.
func (v *filesVisit) save(s *Screen, ids []measure.ID, at, good int) {
	if at >= len(ids) {
		if len(ids) > 0 {
			v.said = s.lang.Say("files.saved", good, len(ids))
		}
		return
	}
	data, err := s.sharing.Shelf().Export(ids[at])
	if err != nil {
		s.err = err
		return
	}
	s.device.Pickers.Save(string(ids[at])+".json", data, func(err error) {
		switch {
		case err == nil:
			good++
		case !errors.Is(err, device.ErrDismissed):
			s.err = err
			v.said = ""
			s.show()
			return
		}
		v.save(s, ids, at+1, good)
		if at+1 >= len(ids) {
			s.show()
		}
	})
}

// take takes the files in that the person picks.
func (v *filesVisit) take(s *Screen) {
	s.device.Pickers.Open(func(files []device.Picked, err error) {
		switch {
		case errors.Is(err, device.ErrDismissed):
		case err != nil:
			s.err = err
			s.show()
		default:
			v.takeAll(s, files)
			s.show()
		}
	})
}

// takeAll takes files in beside the window. A file that is no build costs only itself.
func (v *filesVisit) takeAll(s *Screen, files []device.Picked) {
	held := s.sharing.Shelf().Builds(s.through)
	s.work(func(ctx context.Context) func() {
		var came []measure.ID
		var bad []string
		for _, f := range files {
			if ctx.Err() != nil {
				break
			}
			b, _, err := document.Read(f.Data)
			if err == nil {
				_, _, err = held.Take(b)
			}
			if err != nil {
				bad = append(bad, s.lang.Say("files.bad", f.Name, err.Error()))
				continue
			}
			came = append(came, b.ID)
		}
		return func() {
			v.said = strings.Join(append([]string{s.lang.Say("files.taken", len(came), len(files))}, bad...), "; ")
			s.shared(came)
		}
	})
}
