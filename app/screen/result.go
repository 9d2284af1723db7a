package screen

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/route"
)

// result takes the place of the keypad after a reading was kept: what was kept, what it changed,
// and the way to the next stop with its reason.
func (s *Screen) result() page {
	s.rank()
	m := s.take
	kept := m.Kept()
	next := s.does(m.Next)
	changed := kept.Change.Findings
	rows := part.NewRows(len(changed), s.sizes, func(i int) fyne.CanvasObject { return s.findingRow(changed[i]) })
	rows.Least = findingRoom
	head := s.changedHead(len(changed))
	if failure := s.failure(); failure != "" {
		head = part.NewText(failure, part.Held, 17, part.Risk).Bold()
	}
	lay := &arrange.Result{
		Kept:   s.keptField(kept.Reading, kept.Struck),
		Strike: part.NewNarrowKey("strike", part.Risky, s.lang.Say("screen.strike"), s.does(func() { m.StrikeLast(s.lang.Say("screen.strike.why")) })),
		Head:   head,
		Rows:   rows,
		Again:  part.NewWordKey("again", part.Ordinary, s.lang.Say("screen.again"), s.does(m.Again)),
		All:    part.NewWordKey("all", part.Ordinary, s.lang.Say("screen.all"), s.does(m.OpenFindings)),
		Next:   s.nextKey(next),
	}
	objects := []fyne.CanvasObject{lay.Kept, lay.Head, lay.Rows, lay.Again, lay.All, lay.Next}
	if strip := s.repeatsStrip(); strip != nil {
		lay.Strip = strip
		objects = append(objects, strip)
	}
	if kept.Struck {
		lay.Strike = part.NewNarrowKey("keep.again", part.Ordinary, s.lang.Say("screen.strike.undo"), s.does(m.Unstrike))
	}
	objects = append(objects, lay.Strike)
	return page{object: container.New(lay, objects...), enter: next}
}

// keptField says what was kept, how it was read, and whether it still counts.
func (s *Screen) keptField(r measure.Reading, struck bool) fyne.CanvasObject {
	word, verdict := s.lang.Say("screen.kept"), checks.Clear
	if struck {
		word, verdict = s.lang.Say("screen.struck"), checks.Out
	}
	mark := part.NewMark(verdict)
	title := part.NewText(word+" "+s.sidedValue(r), part.Held, 24, part.VerdictInk(verdict)).Bold()
	detail := part.NewText(sentence(s.lang.Point(r.Point))+", "+s.lang.State(r.State()), part.Held, 17, part.Plain)
	return part.NewField(part.NewRowFace(mark, title, detail))
}

// sidedValue writes a reading as a person said it: the size, and the side in words.
func (s *Screen) sidedValue(r measure.Reading) string {
	p, _ := measure.PointOf(r.Point)
	number, ok := r.Value.Float()
	switch {
	case !ok:
		return r.Value.Token()
	case len(p.Codes) > 0:
		for _, c := range p.Codes {
			if float64(c.Value) == number {
				return s.lang.Code(p, c)
			}
		}
	case p.Sense == measure.Unsigned || number == 0:
		return s.lang.Entered(r)
	}
	side := "yes"
	if number < 0 {
		side = "no"
		if v, err := measure.NumberValue(r.Value.Token()[1:]); err == nil {
			r.Value = v
		}
	}
	return s.lang.Entered(r) + ", " + s.lang.Say("screen.side."+string(p.Sense)+"."+side)
}

// nextKey is the big key to the next stop, with the reason for it.
func (s *Screen) nextKey(tap func()) fyne.CanvasObject {
	m := s.take
	title, reason := s.lang.Say("screen.next.done"), s.lang.Say("screen.next.done.is")
	if next, more := m.Wanted(m.Kept().Change); more {
		title, reason = s.lang.Say("screen.next", s.lang.Point(next.Point.Key)), s.reasonFor(next)
	}
	face := container.New(evenly{}, part.NewText(title, part.Held, 28, part.OnIt).Bold(), part.NewText(reason, part.Held, 18, part.OnIt))
	return part.NewKey("next", part.Main, face, tap)
}

func (s *Screen) reasonFor(next route.Stop) string {
	m := s.take
	if why, ok := s.usefulReason(next); ok {
		return why
	}
	here, walking := m.Walking()
	to, grouped := route.GroupOf(next.Point)
	switch {
	case grouped && walking && to == here:
		return s.lang.Say("screen.next.group", sentence(s.lang.Group(to)), m.LeftOfGroup())
	case grouped:
		return s.lang.Say("screen.next.begun", s.lang.Group(to))
	case walking:
		return s.lang.Say("screen.next.back")
	case next.State.Ride == measure.Bench:
		return s.lang.Say("screen.next.bench")
	case next.State == m.Stand().State:
		return s.lang.Say("screen.next.same", m.Left(next.State))
	}
	return s.lang.Say("screen.next.bring", s.lang.State(next.State))
}

// done is shown when no stop of the route is left.
func (s *Screen) done() page {
	m := s.take
	findings := s.does(m.OpenFindings)
	return s.ask(question{title: s.lang.Say("screen.done"), note: s.lang.Say("screen.done.note", s.counts()), enter: findings, answers: []answer{
		{name: "all", words: s.lang.Say("screen.all"), kind: part.Main, tap: findings},
		{name: "more.groups", words: s.lang.Say("screen.more.groups"), tap: s.does(m.OpenGroups)},
		{name: "more.route", words: s.lang.Say("screen.more.route"), tap: s.does(m.OpenRoute)},
		{name: "more.builds", words: s.lang.Say("screen.more.builds"), kind: part.Standing, tap: s.does(s.leave)},
	}})
}
