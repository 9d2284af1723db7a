package screen

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/draw"
	"yokebook/app/draw/tool"
	"yokebook/app/logbook"
	"yokebook/app/screen/part"
	"yokebook/app/screen/start"
	"yokebook/checks"
	"yokebook/measure"
)

// builds is the page of all builds on this device, newest work first.
func (s *Screen) builds() page {
	list, err := s.shelf.List()
	if err != nil {
		s.err = err
	}
	slices.SortStableFunc(list, func(a, b logbook.Listing) int {
		if c := b.LastWork.Compare(a.LastWork); c != 0 {
			return c
		}
		return strings.Compare(string(b.ID), string(a.ID))
	})
	fresh := s.does(func() { s.fresh = start.New() })
	if len(list) == 0 {
		return s.noBuild(fresh)
	}
	title := s.lang.Say("screen.builds")
	if failure := s.failure(); failure != "" {
		title = failure
	}
	rows := part.NewRows(len(list), s.sizes, func(i int) fyne.CanvasObject { return s.buildRow(list[i]) })
	return page{object: s.listPage(title, rows, part.NewWordKey("new", part.Main, s.lang.Say("screen.builds.new"), fresh)), enter: fresh}
}

func (s *Screen) buildRow(l logbook.Listing) fyne.CanvasObject {
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
	face := part.NewRowFace(part.NewMark(l.Worst), part.NewText(title, 12, 22, part.Plain).Bold(), part.NewText(detail, 12, 17, ink))
	return part.NewKey("build."+string(l.ID), part.Row, face, s.does(func() { s.open(s.shelf.Open(l.ID)) }))
}

// noBuild is shown before there is any build: what one is, and the key to start one.
func (s *Screen) noBuild(fresh func()) page {
	scene := tool.Scene{State: measure.RideKerb, Shafts: 1}
	q := question{
		title:   s.lang.Say("screen.builds.none"),
		note:    s.lang.Say("screen.builds.what"),
		picture: part.NewPicture(func() draw.Page { return tool.Line(scene) }, s.lang.Say("screen.front")),
		answers: []answer{{name: "new", words: s.lang.Say("screen.builds.new"), kind: part.Main, tap: fresh}},
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
	entry := widget.NewEntry()
	entry.SetText(s.fresh.Title())
	entry.SetPlaceHolder(s.lang.Say("screen.new.hint"))
	goOn := s.does(func() { s.fresh.Name(entry.Text) })
	entry.OnSubmitted = func(string) { goOn() }
	p := s.ask(question{title: s.lang.Say("screen.new.title"), field: entry, answers: []answer{
		{name: "go", words: s.lang.Say("screen.new.go"), kind: part.Main, tap: goOn},
	}, foot: s.back()})
	p.focus = entry
	p.answers = nil
	return p
}
