package screen

import (
	"fyne.io/fyne/v2"

	"yokebook/app/screen/part"
)

// entry is one row of a list of things to do.
type entry struct {
	name, words string
	tap         func()
}

// more is everything else that one can do at a stop.
func (s *Screen) more() page {
	m := s.take
	var list []entry
	add := func(name, words string, tap func()) { list = append(list, entry{name, words, tap}) }
	if skip, ok := m.LeftOut(); ok {
		add("more.unskip", s.lang.Say("screen.more.unskip", skip.Reason), m.AskAgain)
	} else {
		add("more.skip", s.lang.Say("screen.more.skip"), m.OpenSkips)
	}
	if g, ok := m.Walking(); ok {
		add("more.leave", s.lang.Say("screen.more.leave", s.lang.Group(g)), func() { m.LeaveGroup(g) })
	}
	add("more.route", s.lang.Say("screen.more.route"), m.OpenRoute)
	add("more.groups", s.lang.Say("screen.more.groups"), m.OpenGroups)
	add("more.drawing", s.lang.Say("screen.more.drawing"), func() { s.visit(&drawingVisit{}) })
	add("more.handover", s.lang.Say("handover.open"), func() { s.visit(s.newHandover()) })
	add("more.findings", s.lang.Say("screen.all"), m.OpenFindings)
	if other, ok := m.OtherUnit(); ok {
		add("more.unit", s.lang.Say("screen.more.unit", s.lang.Unit(string(other)), s.lang.Unit(string(m.Unit()))), m.SwitchUnit)
	}
	if m.TakesFinder() || len(m.ToolChoices()) > 0 {
		add("more.tool", s.lang.Say("screen.more.tool", s.toolName(m.Tool())), m.OpenTools)
	}
	if tool, ok := s.zeroTool(); ok {
		add("more.zero", s.lang.Say("screen.more.zero"), func() { m.OpenReversal(tool) })
	}
	if _, ok := m.Last(); ok {
		add("more.undo", s.lang.Say("screen.more.undo"), func() { m.UndoLast(s.lang.Say("screen.undo.why")) })
	}
	if len(m.Records()) > 0 {
		add("more.records", s.lang.Say("screen.more.records"), m.OpenRecords)
	}
	if notes := s.book.Notes(); len(notes) > 0 {
		add("more.told", s.lang.Say("screen.more.told"), func() { s.tell = notes })
	}
	if s.sharing != nil {
		add("more.places", s.lang.Say("places.open"), func() { s.visit(placesVisit{}) })
	}
	add("more.instruments", s.lang.Say("screen.more.tools"), func() { s.visit(&tools{}) })
	add("more.settings", s.lang.Say("screen.more.settings"), func() { s.visit(&settings{}) })
	add("more.builds", s.lang.Say("screen.more.builds"), s.leave)
	return s.entries(sentence(s.lang.Say("screen.more.title", s.lang.Point(m.Stop().Point.Key))), list)
}

// entries is a page of things to do, each a row; digits of the keyboard pick them too.
func (s *Screen) entries(title string, list []entry) page {
	if failure := s.failure(); failure != "" {
		title = failure
	}
	p := page{}
	for _, e := range list {
		p.answers = append(p.answers, s.does(e.tap))
	}
	rows := part.NewRows(len(list), s.sizes, func(i int) fyne.CanvasObject {
		return part.NewWordKey(list[i].name, part.Row, list[i].words, p.answers[i])
	})
	p.object = s.listPage(title, rows, s.backKey())
	return p
}
