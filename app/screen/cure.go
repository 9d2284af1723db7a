package screen

import (
	"context"
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/cure"
	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/checks/remedy"
)

// cureVisit tells what to change about a finding, and what would change then.
type cureVisit struct {
	*cure.Model
	asked cure.Stage // the last stage whose work was begun; List: none
	said  *part.Text // how far the search is, on the page that is shown
	then  *cureMark  // where the program ended, until the ways are found again; nil: nowhere
}

// cureMark is what is looked at about which finding.
type cureMark struct {
	Finding string     `json:"finding"`
	Stage   cure.Stage `json:"stage"`
	Way     int        `json:"way"`
}

func (s *Screen) newCure(f checks.Finding) *cureVisit {
	return &cureVisit{Model: cure.New(s.take.Judged(), s.take.Findings(), f), asked: cure.List}
}

// cureOf asks about a finding again; nil where it is no longer there or no longer asks.
func (s *Screen) cureOf(m cureMark) visit {
	for _, f := range s.take.Findings() {
		if f.Key() == m.Finding && remedy.Asks(f) {
			v := s.newCure(f)
			v.then = &m
			return v
		}
	}
	return nil
}

func (v *cureVisit) mark() string {
	if v.then != nil {
		return markOf("cure", *v.then)
	}
	m := cureMark{Finding: v.Finding().Key(), Stage: v.Stage()}
	switch m.Stage {
	case cure.OneWay, cure.Trying, cure.Tried:
		m.Way = v.At()
	}
	return markOf("cure", m)
}

// goOn goes where the program ended, now that the ways are found.
func (v *cureVisit) goOn() {
	if v.then == nil {
		return
	}
	at := *v.then
	v.then = nil
	if at.Stage == cure.OneWay || at.Stage == cure.Trying || at.Stage == cure.Tried {
		v.Open(at.Way)
	}
	switch {
	case at.Stage == cure.Short && len(v.NotAlone()) > 0:
		v.OpenShort()
	case at.Stage > cure.Short && v.Stage() == cure.OneWay:
		v.Try()
	}
}

func (v *cureVisit) back(s *Screen) bool {
	if v.Stage() == cure.Trying {
		s.stopWork()
	}
	v.asked = cure.List
	return v.Back()
}

func (v *cureVisit) page(s *Screen) page {
	switch v.Stage() {
	case cure.Looking:
		return v.looking(s)
	case cure.Trying:
		return v.trying(s)
	case cure.OneWay:
		return v.oneWay(s)
	case cure.Short:
		return s.ask(question{title: s.lang.Say("cure.short.title"), note: s.lang.Say("cure.short.note", v.short(s)), foot: s.back()})
	case cure.Tried:
		return v.tried(s)
	}
	return v.list(s)
}

// looking looks for the ways beside the window and says how far it is.
func (v *cureVisit) looking(s *Screen) page {
	text := s.lang.Say("cure.begins")
	if done, of := v.Looked(); of > 0 {
		text = s.lang.Say("cure.progress", done, of)
	}
	v.said = part.NewText(text, part.Held, 28, part.Plain).Bold()
	p := s.ask(question{title: s.lang.Say("cure.looking"), note: sentence(s.ofShaft(s.lang.Title(v.Finding()))), picture: v.said,
		answers: []answer{{name: "cancel", words: s.lang.Say("cure.cancel"), tap: func() { s.goBack() }}}})
	if v.asked == cure.Looking {
		return p
	}
	v.asked = cure.Looking
	s.work(func(ctx context.Context) func() {
		t, err := v.Solve(ctx, func(done, of int) {
			s.post(func() {
				v.Progress(done, of)
				v.said.Say(s.lang.Say("cure.progress", done, of))
			})
		})
		if err != nil {
			return nil
		}
		return func() {
			v.Found(t)
			v.goOn()
		}
	})
	if v.Stage() != cure.Looking { // the work was done at once
		return v.page(s)
	}
	return p
}

// list shows the ways that were found.
func (v *cureVisit) list(s *Screen) page {
	ways := v.Ways()
	if len(ways) == 0 {
		return s.ask(question{title: s.lang.Say("cure.none"), note: s.lang.Say("cure.none.note", v.short(s)), foot: s.back()})
	}
	var lines []entryRow
	for i, w := range ways {
		lines = append(lines, entryRow{fmt.Sprintf("way.%d", i), v.wayTitle(s, w), v.wayDetail(s, w), func() { v.Open(i) }})
	}
	if n := len(v.NotAlone()); n > 0 {
		lines = append(lines, entryRow{"short", s.lang.Say("cure.short", n), v.short(s), v.OpenShort})
	}
	p := page{}
	for _, l := range lines {
		p.answers = append(p.answers, s.does(l.tap))
	}
	rows := part.NewRows(len(lines), s.sizes, func(i int) fyne.CanvasObject {
		mark := part.NewMark(checks.Clear)
		if lines[i].name == "short" {
			mark = part.NewMark(checks.Unsaid)
		}
		face := part.NewRowFace(mark, part.NewText(lines[i].title, part.Held, 19, part.Plain).Bold(),
			part.NewText(lines[i].detail, part.Held, 17, part.Quiet))
		return part.NewKey(lines[i].name, part.Row, face, p.answers[i])
	})
	rows.Least = wayRoom
	p.object = s.listPage(s.lang.Say("cure.title", s.ofShaft(s.lang.Check(v.Finding().Check, v.Finding().Subject))), rows, s.backKey())
	return p
}

// wayRoom is how high the row of a way is at least: up to four lines of two changes, two of what it does.
const wayRoom = 184

// entryRow is one row of a list with what is to say about it.
type entryRow struct {
	name, title, detail string
	tap                 func()
}

func (v *cureVisit) short(s *Screen) string { return s.lang.List(v.NotAlone(), s.lang.Knob) }

// wayTitle says what is changed.
func (v *cureVisit) wayTitle(s *Screen, w remedy.Remedy) string {
	text := s.lang.Remedy(w)
	if len(text.Changes) == 2 {
		return sentence(s.lang.Say("cure.both", text.Changes[0], text.Changes[1]))
	}
	return sentence(strings.Join(text.Changes, "; "))
}

// wayDetail says between what it works and what it makes worse.
func (v *cureVisit) wayDetail(s *Screen, w remedy.Remedy) string {
	text := s.lang.Remedy(w)
	first := s.lang.Say("cure.pair")
	if text.Span != "" {
		first = s.lang.Say("cure.works", text.Span)
	}
	harm := s.lang.Say("cure.harm", len(text.Worsens))
	switch len(text.Worsens) {
	case 0:
		harm = s.lang.Say("cure.harmless")
	case 1:
		harm = s.lang.Say("cure.harm.one")
	}
	return s.lang.Say("rests.row", first, harm)
}

// oneWay shows one way with all that it costs.
func (v *cureVisit) oneWay(s *Screen) page {
	w := v.Way()
	text := s.lang.Remedy(w)
	value := s.lang.Say("cure.pair")
	if text.Span != "" {
		value = s.lang.Say("cure.works", text.Span)
	}
	try := part.NewWordKey("try", part.Main, s.lang.Say("cure.try"), s.does(v.Try))
	lay := &arrange.Finding{
		Title:   part.NewText(v.wayTitle(s, w), part.Held, 22, part.Plain).Bold(),
		Mark:    part.NewMark(checks.Clear),
		Verdict: part.NewText(s.lang.Say("cure.clear"), part.Held, 22, part.VerdictInk(checks.Clear)).Bold(),
		Value:   part.NewText(value, part.Held, 24, part.Plain).Bold(),
		Body:    v.wayBody(s, w),
		Back:    s.backKey(),
		Acts:    []fyne.CanvasObject{try},
		Tall:    len(w.Changes) > 1,
	}
	return page{object: container.New(lay, lay.Title, lay.Mark, lay.Verdict, lay.Value, lay.Body, lay.Back, try), enter: s.does(v.Try)}
}

func (v *cureVisit) wayBody(s *Screen, w remedy.Remedy) fyne.CanvasObject {
	box := container.NewVBox()
	add := func(heading string, lines ...string) { addText(box, s.lang.Say(heading), lines...) }
	text := s.lang.Remedy(w)
	add("cure.costs", text.Costs...)
	add("cure.worsens", text.Worsens...)
	add("cure.improves", text.Improves...)
	if w.Chance != nil {
		add("cure.chance", s.lang.Say("cure.chance.is", *w.Chance))
	}
	add("cure.care", s.lang.Say("cli.remedy.care"))
	add("cure.range", v.ranges(s, w)...)
	return container.NewVScroll(box)
}

// ranges say how far each knob was looked at, and where that range comes from.
func (v *cureVisit) ranges(s *Screen, w remedy.Remedy) []string {
	var out []string
	for _, c := range w.Changes {
		k, ok := remedy.KnobOf(c.Knob)
		switch {
		case !ok:
		case k.Least == 0 && k.Most == 0:
			out = append(out, s.lang.Say("cure.range.only", s.lang.Knob(k.Key), k.Source))
		default:
			out = append(out, s.lang.Say("cure.range.is", s.lang.Knob(k.Key), s.lang.Number(k.Least, k.Unit, 0), s.lang.Number(k.Most, k.Unit, 0), k.Source))
		}
	}
	return out
}

// trying judges the changed build beside the window.
func (v *cureVisit) trying(s *Screen) page {
	p := s.ask(question{title: s.lang.Say("cure.trying"), note: v.wayTitle(s, v.Way()),
		answers: []answer{{name: "cancel", words: s.lang.Say("cure.cancel"), tap: func() { s.goBack() }}}})
	if v.asked == cure.Trying {
		return p
	}
	v.asked = cure.Trying
	s.work(func(ctx context.Context) func() {
		effects, err := v.Judge(ctx)
		if err != nil {
			return nil
		}
		return func() { v.Judged(effects) }
	})
	if v.Stage() != cure.Trying {
		return v.page(s)
	}
	return p
}

// tried lists the findings that would change. None of it can be tapped: the build is as it was.
func (v *cureVisit) tried(s *Screen) page {
	list := v.Effects()
	title := s.lang.Say("cure.tried", len(list))
	switch len(list) {
	case 0:
		title = s.lang.Say("cure.tried.none")
	case 1:
		title = s.lang.Say("cure.tried.one")
	}
	rows := part.NewRows(len(list), s.sizes, func(i int) fyne.CanvasObject {
		after := list[i].After
		return part.NewRowFace(part.NewMark(after.Verdict), part.NewText(sentence(s.lang.Title(after)), part.Held, 19, part.Plain).Bold(),
			part.NewText(s.lang.Becomes(list[i]), part.Held, 17, part.VerdictInk(after.Verdict)).Bold())
	})
	rows.Least = twoLines
	return page{object: s.listPage(title, rows, s.backKey())}
}
