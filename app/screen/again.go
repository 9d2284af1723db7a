package screen

import (
	"strings"

	"fyne.io/fyne/v2"

	"yokebook/app/logbook"
	"yokebook/app/screen/part"
)

// again starts a build from one of the shelf: first which one, then what the new one is called.
type again struct {
	from  logbook.Listing // empty: not chosen yet
	title string
}

func (v *again) back(*Screen) bool {
	had := v.from.ID != ""
	v.from = logbook.Listing{}
	return had
}

func (v *again) page(s *Screen) page {
	if v.from.ID == "" {
		return v.which(s)
	}
	entry := s.entry()
	entry.SetText(v.title)
	atEnd(entry)
	entry.OnChanged = func(text string) { v.title = text }
	start := s.does(func() {
		if title := strings.TrimSpace(v.title); title != "" {
			s.visits = nil
			s.open(s.shelf.Duplicate(v.from.ID, title))
		}
	})
	entry.OnSubmitted = func(string) { start() }
	p := s.ask(question{title: s.lang.Say("builds.duplicate.ask"), note: s.lang.Say("builds.duplicate.what", v.from.Title), field: entry,
		answers: []answer{{name: "go", words: s.lang.Say("builds.duplicate.go"), kind: part.Main, tap: start}}, foot: s.back()})
	p.focus, p.answers = entry, nil
	return p
}

// which shows the builds that can be read.
func (v *again) which(s *Screen) page {
	s.racks.Find("")
	rows := part.NewRows(s.racks.Count(), s.sizes, func(i int) fyne.CanvasObject {
		l := s.racks.At(i)
		return s.buildRow(l, "from."+string(l.ID), s.does(func() {
			if l.Damaged == "" {
				v.from, v.title = l, s.lang.Say("builds.duplicate.title", l.Title)
			}
		}))
	})
	rows.Least = twoLines
	return page{object: s.listPage(s.lang.Say("builds.duplicate.of"), rows, s.backKey())}
}
