package screen

import (
	"context"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/draw"
	"yokebook/app/draw/tool"
	"yokebook/app/logbook"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/screen/start"
	"yokebook/checks"
	"yokebook/measure"
)

// freshAtOnce is how many builds are looked at before the list is shown anew.
const freshAtOnce = 32

// builds is the page of all builds on this device, newest work first.
func (s *Screen) builds() page {
	stale := s.racks.All() >= manyBuilds
	if !stale {
		s.glance()
	}
	s.racks.Find("")
	fresh := s.does(func() {
		if s.fresh = s.draft; s.fresh == nil {
			s.fresh = start.New()
		}
	})
	if s.racks.All() == 0 {
		return s.noBuild(fresh)
	}
	rows := s.buildRows()
	rows.Reach(s.reached)
	search := part.NewKey("search", part.Ordinary, s.searchFace(), s.does(func() { s.visit(&searching{}) }))
	more := part.NewWordKey("more", part.Standing, s.lang.Say("builds.more"), s.does(func() { s.visit(buildsMore{}) }))
	head := container.New(arrange.Beside{Sizes: s.sizes}, search, more)
	newKey := part.NewWordKey("new", part.Main, s.lang.Say("screen.builds.new"), fresh)
	p := page{object: s.listUnder(head, true, rows, newKey), enter: fresh}
	s.freshen(rows, stale)
	return p
}

// manyBuilds is how many builds are too many to look at the date of each file before the list is
// shown: what was known last is shown first then.
const manyBuilds = 500

// lookedAtFirst is how many builds that have changed are looked at before the list is shown: the one
// that was left just now, and one more.
const lookedAtFirst = 2

// glance takes over what the list knows.
func (s *Screen) glance() {
	if list, err := s.shelf.Freshen(context.Background(), lookedAtFirst); err != nil {
		s.err = err
	} else {
		s.racks.Set(list)
	}
}

// searchFace says how many builds there are, or what did not work, and that the key searches.
func (s *Screen) searchFace() fyne.CanvasObject {
	heading := part.NewText(s.lang.Say("builds.count", s.racks.All()), part.Held, 18, part.Quiet)
	failure := s.failure()
	if failure == "" && s.unsettled != nil {
		failure = s.lang.Say("settings.damaged", s.unsettled.Error())
	}
	if failure != "" {
		return part.NewText(failure, part.Held, 18, part.Risk).Bold()
	}
	return container.New(halves{}, heading, part.NewText(s.lang.Say("builds.search"), part.Held, 24, part.Plain).Bold())
}

// buildRows are the rows of the builds that are shown. Only those on the glass are made.
func (s *Screen) buildRows() *part.Rows {
	rows := part.NewRows(s.racks.Count(), s.sizes, func(i int) fyne.CanvasObject {
		l := s.racks.At(i)
		return s.buildRow(l, "build."+string(l.ID), s.does(func() {
			s.reached, s.visits = i, nil
			s.open(s.shelf.Open(l.ID))
		}))
	})
	rows.Least = twoLines
	return rows
}

// freshen looks at builds that have changed, a few at a time, while the list is shown, and says in the
// rows what it found. Where the list itself is stale it looks which ones have.
func (s *Screen) freshen(rows *part.Rows, stale bool) {
	if !stale && !s.racks.Pending() {
		return
	}
	s.beside(func(ctx context.Context) func() {
		list, err := s.shelf.Freshen(ctx, freshAtOnce)
		return func() {
			if err != nil {
				return // the list stays as it was; opening a build says what is wrong
			}
			before := s.racks.Shown(rows.First(), rows.Shown())
			s.racks.Set(list)
			rows.Count = s.racks.Count()
			if !s.racks.Same(rows.First(), before) {
				rows.Refresh()
				rows.Laid()
			}
			s.freshen(rows, false)
		}
	})
}

// buildRow is a build in a list: its worst verdict as word, shape and colour, and what is still wanted.
func (s *Screen) buildRow(l logbook.Listing, name string, tap func()) fyne.CanvasObject {
	title, detail, ink := l.Title, s.lang.Say("screen.builds.row", l.Readings, l.Wanted), part.VerdictInk(l.Worst)
	if title == "" {
		title = s.lang.Say("screen.builds.untitled")
	}
	if l.Wanted == 0 {
		detail = s.lang.Say("screen.builds.done", l.Readings)
	}
	if l.Worst != "" {
		detail = s.lang.Verdict(l.Worst) + " · " + detail
	}
	if line := s.damageLine(l); line != "" {
		detail, ink = line, part.VerdictInk(checks.Unsure)
	}
	if l.Damaged != "" {
		detail, ink = l.Damaged, part.Risk
	}
	mark := l.Worst
	if l.Pending && l.LastWork.IsZero() { // nothing is known of it yet
		title, detail, ink, mark = "…"+string(l.ID)[max(0, len(l.ID)-8):], s.lang.Say("builds.pending"), part.Quiet, checks.Unsaid
	}
	face := part.NewRowFace(part.NewMark(mark), part.NewText(title, part.Held, 22, part.Plain).Bold(), part.NewText(detail, part.Held, 17, ink))
	return part.NewKey(name, part.Row, face, tap)
}

// noBuild is shown before there is any build: what one is, and the key to start one.
func (s *Screen) noBuild(fresh func()) page {
	scene := tool.Scene{State: measure.RideKerb, Shafts: 1}
	q := question{
		title:   s.lang.Say("screen.builds.none"),
		note:    s.lang.Say("screen.builds.what"),
		picture: part.NewPicture(func() draw.Page { return tool.Line(scene) }, s.lang.Say("screen.front")),
		answers: []answer{{name: "new", words: s.lang.Say("screen.builds.new"), kind: part.Main, tap: fresh}},
		foot:    &answer{name: "more", words: s.lang.Say("builds.more"), kind: part.Standing, tap: s.does(func() { s.visit(buildsMore{}) })},
		enter:   fresh,
	}
	if s.sharing != nil { // builds of another device may be had from there
		q.answers = append(q.answers, answer{name: "places", words: s.lang.Say("places.open"), tap: s.does(func() { s.visit(placesVisit{}) })})
	}
	return s.ask(q)
}

// newBuild is the page that asks the next thing about a build that is being started.
func (s *Screen) newBuild() page {
	step, ok := s.fresh.Step()
	if !ok {
		return s.askTitle()
	}
	q := question{title: s.lang.Say("screen.new." + step.Member)}
	for _, choice := range step.Choices {
		q.answers = append(q.answers, answer{
			name: "answer." + choice, words: s.lang.Say("choice." + step.Member + "." + choice),
			picture: func() draw.Page { return tool.Choice(step.Member, choice) },
			tap: s.does(func() {
				if s.fresh.Choose(choice) {
					s.open(s.shelf.New(s.fresh.Title(), s.fresh.Layout()))
				}
			}),
		})
	}
	q.foot = s.back()
	return s.ask(q)
}

// askTitle is the one page of a new build where one writes.
func (s *Screen) askTitle() page {
	entry := s.entry()
	entry.SetText(s.fresh.Title())
	entry.SetPlaceHolder(s.lang.Say("screen.new.hint"))
	entry.OnChanged = func(text string) {
		s.fresh.Writing(text)
		s.remember()
	}
	goOn := s.does(func() { s.fresh.Name(entry.Text) })
	entry.OnSubmitted = func(string) { goOn() }
	p := s.ask(question{title: s.lang.Say("screen.new.title"), field: entry, answers: []answer{
		{name: "go", words: s.lang.Say("screen.new.go"), kind: part.Main, tap: goOn},
	}, foot: s.back()})
	p.focus = entry
	p.answers = nil
	return p
}
