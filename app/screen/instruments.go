package screen

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/kit"
	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/measure"
)

// tools are the pages of the build's instruments: all of them, or one.
type tools struct{ at string }

func (v *tools) mark() string { return "tools:" + v.at }

func (v *tools) back(*Screen) bool {
	had := v.at != ""
	v.at = ""
	return had
}

// page lists the instruments with what is due, or shows one.
func (v *tools) page(s *Screen) page {
	if s.take == nil {
		return s.ask(question{title: s.lang.Say("tools.gone"), foot: s.back()})
	}
	list := s.kit()
	if v.at != "" {
		for _, t := range list {
			if t.ID == v.at {
				return v.one(s, t)
			}
		}
		return s.ask(question{title: s.lang.Say("tools.gone"), foot: s.back()})
	}
	fresh := s.does(func() { s.revive(newForming("", "")) })
	if len(list) == 0 {
		return s.ask(question{title: s.lang.Say("tools.title"), note: s.lang.Say("tools.none"), enter: fresh, foot: s.back(),
			answers: []answer{{name: "tool.new", words: s.lang.Say("tools.new"), kind: part.Main, tap: fresh}}})
	}
	var p page
	for _, t := range list {
		p.answers = append(p.answers, s.does(func() { v.at = t.ID }))
	}
	rows := part.NewRows(len(list), s.sizes, func(i int) fyne.CanvasObject { return s.kitRow(list[i], p.answers[i]) })
	rows.Least = twoLines
	head := part.NewKey("tool.new", part.Main, container.New(halves{}, part.NewText(s.lang.Say("tools.title"), part.Held, 18, part.OnIt),
		part.NewText(s.lang.Say("tools.new"), part.Held, 24, part.OnIt).Bold()), fresh)
	p.object = s.listUnder(head, true, rows, s.backKey())
	return p
}

// kit are the instruments of the open build, as the vehicle stands.
func (s *Screen) kit() []kit.Tool {
	return kit.Tools(s.take.Build(), s.take.Findings(), s.take.Stand().Setup)
}

func (s *Screen) kitRow(t kit.Tool, tap func()) fyne.CanvasObject {
	mark, due := checks.Clear, s.lang.Say("tools.due.none")
	if t.Due() {
		mark, due = checks.Waiting, s.lang.Say("tools.due", t.Setup)
	}
	detail := s.toolRow(t) + " · " + due
	face := part.NewRowFace(part.NewMark(mark), part.NewText(sentence(s.calledTool(t)), part.Held, 22, part.Plain).Bold(),
		part.NewText(detail, part.Held, 17, part.VerdictInk(mark)))
	return part.NewKey("instrument."+t.ID, part.Row, face, tap)
}

// calledTool is the name of an instrument, or the name of its kind with its id where several are alike.
func (s *Screen) calledTool(t kit.Tool) string {
	kind := s.lang.Instrument(t.Kind)
	switch {
	case t.Name != "":
		return t.Name
	case t.ID != t.Kind && t.ID != "finder":
		return s.lang.Say("tools.second", kind, t.ID)
	}
	return kind
}

// amount is a number of an instrument with its unit; "not known" where it has none.
func (s *Screen) amount(v measure.Value, unit measure.Unit) string {
	if v.IsZero() {
		return s.lang.Say("tools.unknown")
	}
	return s.lang.Entered(measure.Reading{Value: v, Unit: unit})
}

// within is how far a number of an instrument may be off; "not known" where that is not.
func (s *Screen) within(v measure.Value, unit measure.Unit) string {
	if v.IsZero() {
		return s.amount(v, unit)
	}
	return "± " + s.amount(v, unit)
}

// toolRow says how finely and how rightly an instrument reads.
func (s *Screen) toolRow(t kit.Tool) string {
	if t.Accuracy.IsZero() {
		return s.lang.Say("tools.row.unknown", s.amount(t.Resolution, t.Unit))
	}
	return s.lang.Say("tools.row", s.amount(t.Resolution, t.Unit), s.within(t.Accuracy, t.Unit))
}

// one shows an instrument: what is known of it, its zero, what is due, and what can be done.
func (v *tools) one(s *Screen, t kit.Tool) page {
	mark, due := checks.Clear, s.lang.Say("tools.due.not")
	switch {
	case t.Due():
		mark, due = checks.Waiting, s.lang.Say("tools.due.long", t.Setup)
	case t.Turns:
		due = s.lang.Say("tools.due.done", t.Setup)
	}
	box := container.NewVBox()
	addText(box, s.lang.Say("tools.due.head"), due)
	facts := []string{s.lang.Say("tools.fact.kind", s.lang.Instrument(t.Kind), string(t.Unit)),
		s.lang.Say("tools.fact.resolution", s.amount(t.Resolution, t.Unit)), s.lang.Say("tools.fact.accuracy", s.within(t.Accuracy, t.Unit))}
	if !t.Zero.IsZero() {
		facts = append(facts, s.lang.Say("tools.fact.zero", s.within(t.Zero, t.Unit)))
	}
	facts = append(facts, s.lang.Say("tools.fact.readings", t.Readings))
	if !t.Last.IsZero() {
		facts = append(facts, s.lang.Say("tools.fact.last", t.Last.Local().Format("2006-01-02 15:04")))
	}
	if t.Turns {
		addText(box, s.lang.Say("tools.found.head"), s.zeroLines(t)...)
	}
	addText(box, s.lang.Say("tools.how"), facts...)
	head := s.lang.Say("tools.due.none")
	if t.Due() {
		head = s.lang.Say("tools.due", t.Setup)
	}
	lay := &arrange.Finding{
		Title:   part.NewText(sentence(s.calledTool(t)), part.Held, 26, part.Plain).Bold(),
		Mark:    part.NewMark(mark),
		Verdict: part.NewText(sentence(head), part.Held, 22, part.VerdictInk(mark)).Bold(),
		Value:   part.NewText(s.toolRow(t), part.Held, 22, part.Plain),
		Body:    container.NewVScroll(box),
		Back:    s.backKey(),
		Acts:    []fyne.CanvasObject{part.NewWordKey("tool.change", part.Ordinary, s.lang.Say("tools.change"), s.does(func() { s.visit(&changing{t.ID}) }))},
	}
	if t.Turns {
		lay.Acts = append(lay.Acts, part.NewWordKey("tool.reverse", part.Main, s.lang.Say("tools.reverse"), s.does(func() {
			s.visits = nil
			s.take.OpenReversal(t.ID)
		})))
	}
	objects := append([]fyne.CanvasObject{lay.Title, lay.Mark, lay.Verdict, lay.Value, lay.Body, lay.Back}, lay.Acts...)
	return page{object: container.New(lay, objects...)}
}

// zeroLines say what reversals found, the newest setup first.
func (s *Screen) zeroLines(t kit.Tool) []string {
	var out []string
	for _, z := range t.Zeros {
		value := s.lang.WithDoubt(z.Value, "deg", z.Doubt)
		if z.At.IsZero() {
			out = append(out, s.lang.Say("tools.zero.found", z.Setup, value))
		} else {
			out = append(out, s.lang.Say("tools.zero.found.at", z.Setup, value, z.At.Local().Format("2006-01-02 15:04")))
		}
	}
	if len(out) == 0 {
		out = []string{s.lang.Say("tools.zero.none")}
	}
	return out
}

// changing asks what is to be changed about an instrument.
type changing struct{ id string }

func (v *changing) mark() string { return "changing:" + v.id }

func (*changing) back(*Screen) bool { return false }

func (v *changing) page(s *Screen) page {
	in, ok := measure.InstrumentOf(s.take.Build().Instruments, v.id)
	if !ok {
		return s.ask(question{title: s.lang.Say("tools.gone"), foot: s.back()})
	}
	name := in.Name
	if strings.TrimSpace(name) == "" {
		name = s.lang.Say("tools.unnamed")
	}
	q := question{title: s.lang.Say("tools.change.title"), foot: s.back()}
	add := func(what kit.Step, words string) {
		q.answers = append(q.answers, answer{name: "change." + string(what), words: words, tap: s.does(func() {
			s.revive(newForming(in.ID, what))
		})})
	}
	add(kit.Name, s.lang.Say("tools.change.name", name))
	add(kit.Resolution, s.lang.Say("tools.change.res", s.amount(in.Resolution, in.Unit)))
	add(kit.Accuracy, s.lang.Say("tools.change.acc", s.within(in.Accuracy, in.Unit)))
	add(kit.ZeroWithin, s.lang.Say("tools.change.zero", s.within(in.Zero, in.Unit)))
	return s.ask(q)
}
