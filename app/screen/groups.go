package screen

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/screen/take"
	"yokebook/checks"
	"yokebook/measure/route"
)

// groups lists what can be measured beyond the shaft line; a tap opens a group.
func (s *Screen) groups() page {
	list := s.take.Groups()
	rows := part.NewRows(len(list), s.sizes, func(i int) fyne.CanvasObject { return s.groupRow(list[i]) })
	rows.Least = twoLines
	return page{object: s.listPage(s.lang.Say("screen.groups"), rows, s.backKey())}
}

func (s *Screen) groupRow(g take.Group) fyne.CanvasObject {
	title := sentence(s.lang.Group(g.Group))
	if g.Chosen {
		title += " · " + s.lang.Say("screen.groups.chosen")
	}
	mark, _ := groupStanding(g)
	face := part.NewRowFace(part.NewMark(mark), part.NewText(title, part.Held, 20, part.Plain).Bold(),
		part.NewText(s.lang.Say("screen.groups.row", g.Done(), len(g.Stops), len(g.Waits)), part.Held, 17, part.Quiet))
	return part.NewKey("group."+string(g.Group), part.Row, face, s.does(func() { s.take.OpenGroup(g.Group) }))
}

// groupStanding is the shape for how far a group was read, and the key of its words.
func groupStanding(g take.Group) (checks.Verdict, string) {
	switch {
	case g.Done() == len(g.Stops):
		return checks.Clear, "screen.group.done"
	case g.Chosen:
		return checks.Waiting, "screen.group.chosen"
	}
	return checks.Unsaid, "screen.group.open"
}

// group is one group opened: how far it was read, what waits for it, and the key to measure it.
func (s *Screen) group() page {
	m := s.take
	g := m.LookedAt()
	enter := s.does(m.EnterGroup)
	mark, standing := groupStanding(g)
	box := container.NewVBox()
	var waits, stops []string
	for _, f := range g.Waits {
		waits = append(waits, s.lang.Check(f.Check, ""))
	}
	if len(waits) == 0 {
		waits = []string{s.lang.Say("screen.group.opens.none")}
	}
	for _, stop := range g.Stops {
		if name := sentence(s.lang.Point(stop.Point.Key)); len(stops) == 0 || stops[len(stops)-1] != name {
			stops = append(stops, name)
		}
	}
	addText(box, s.lang.Say("screen.group.opens"), waits...)
	addText(box, s.lang.Say("screen.group.stops"), stops...)
	begin := "screen.group.begin"
	if g.Done() > 0 {
		begin = "screen.group.on"
	}
	lay := &arrange.Finding{
		Title:   part.NewText(sentence(s.lang.Group(g.Group)), part.Held, 24, part.Plain).Bold(),
		Mark:    part.NewMark(mark),
		Verdict: part.NewText(s.lang.Say(standing), part.Held, 22, part.VerdictInk(mark)).Bold(),
		Value:   part.NewText(s.lang.Say("screen.group.count", g.Done(), len(g.Stops)), part.Held, 22, part.Plain).Bold(),
		Body:    container.NewVScroll(box),
		Back:    s.backKey(),
		Acts:    []fyne.CanvasObject{part.NewWordKey("group.enter", part.Main, s.lang.Say(begin), enter)},
	}
	if g.Chosen {
		leave := part.NewWordKey("group.leave", part.Ordinary, s.lang.Say("screen.group.leave"), s.does(func() { m.LeaveGroup(g.Group) }))
		lay.Acts = append([]fyne.CanvasObject{leave}, lay.Acts...)
	}
	objects := append([]fyne.CanvasObject{lay.Title, lay.Mark, lay.Verdict, lay.Value, lay.Body, lay.Back}, lay.Acts...)
	return page{object: container.New(lay, objects...), enter: enter}
}

// obstacles asks which of several obstacles is read.
func (s *Screen) obstacles() page {
	m := s.take
	list := m.ObstacleList()
	rows := part.NewRows(len(list), s.sizes, func(i int) fyne.CanvasObject {
		o := list[i]
		enter := s.does(func() { m.EnterObstacle(o.Tag) })
		if i == len(list)-1 {
			return part.NewWordKey("obstacle.new", part.Main, s.lang.Say("screen.obstacle.new", o.Tag), enter)
		}
		done := take.Group{Stops: o.Stops}.Done()
		mark := checks.Waiting
		if done == len(o.Stops) {
			mark = checks.Clear
		}
		face := part.NewRowFace(part.NewMark(mark), part.NewText(s.obstacleName(o.Tag), part.Held, 20, part.Plain).Bold(),
			part.NewText(s.lang.Say("screen.obstacle.row", done, len(o.Stops)), part.Held, 17, part.Quiet))
		return part.NewKey("obstacle."+o.Tag, part.Row, face, enter)
	})
	return page{object: s.listPage(s.lang.Say("screen.obstacles"), rows, s.backKey())}
}

// obstacleName is what an obstacle is called: by its number, or by the name that it was given elsewhere.
func (s *Screen) obstacleName(tag string) string {
	if strings.TrimSpace(tag) == "" {
		return s.lang.Say("screen.obstacle.unnamed")
	}
	return s.lang.Say("screen.obstacle", tag)
}

// stopName is what a stop is called, with the obstacle that it belongs to.
func (s *Screen) stopName(stop route.Stop) string {
	name := sentence(s.lang.Point(stop.Point.Key))
	if stop.Tag != "" {
		return sentence(s.lang.Say("screen.obstacle.of", stop.Tag, s.lang.Point(stop.Point.Key)))
	}
	return name
}

// run says what can hurt before the shaft runs for the first time.
func (s *Screen) run() page {
	ok := s.does(s.take.HeedRun)
	return s.ask(question{title: s.lang.Say("screen.run"), note: s.lang.Caution("caution.firstrun"), enter: ok, answers: []answer{
		{name: "run.ok", words: s.lang.Say("screen.caution.ok"), kind: part.Main, tap: ok},
	}})
}
