package screen

import (
	"strings"

	"fyne.io/fyne/v2"

	"yokebook/app/logbook"
	"yokebook/app/screen/part"
	"yokebook/measure"
)

// again starts a build from one of the shelf: first which one, then what the new one is called.
type again struct {
	from  logbook.Listing // empty: not chosen yet
	title string
	was   measure.ID // the build that the title was made for
}

func (v *again) mark() string {
	return markOf("again", againMark{v.from.ID, v.from.Title, v.title, v.was})
}

// againMark is which build is started from, and the half-written title.
type againMark struct {
	From  measure.ID `json:"from"`
	Of    string     `json:"of"`
	Title string     `json:"title"`
	Was   measure.ID `json:"was"`
}

func againOf(m againMark) *again {
	return &again{from: logbook.Listing{ID: m.From, Title: m.Of}, title: m.Title, was: m.Was}
}

func (*again) draft() string { return "again" }

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
	entry.OnChanged = func(text string) {
		v.title = text
		s.remember()
	}
	start := s.does(func() {
		if title := strings.TrimSpace(v.title); title != "" {
			s.visits = nil
			delete(s.drafts, v.draft())
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
	if !s.racks.Loaded() { // it is opened again
		s.builds()
	}
	s.racks.Find("")
	rows := part.NewRows(s.racks.Count(), s.sizes, func(i int) fyne.CanvasObject {
		l := s.racks.At(i)
		return s.buildRow(l, "from."+string(l.ID), s.does(func() {
			if l.Damaged != "" {
				return
			}
			if v.from = l; v.was != l.ID {
				v.was, v.title = l.ID, s.lang.Say("builds.duplicate.title", l.Title)
			}
		}))
	})
	rows.Least = twoLines
	return page{object: s.listPage(s.lang.Say("builds.duplicate.of"), rows, s.backKey())}
}
