package screen

import (
	"context"
	"fmt"

	"fyne.io/fyne/v2"

	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure/route"
)

// rank reckons beside the window what settles most, where the route goes by that and it is not known yet.
func (s *Screen) rank() {
	m := s.take
	if !m.ByUse() || m.Ranked() || s.working() {
		return
	}
	of, task := m.Ranking()
	s.work(func(ctx context.Context) func() {
		list, err := task(ctx)
		if err != nil {
			return nil
		}
		return func() {
			if s.take == m {
				m.SetRanking(of, list)
			}
		}
	})
}

// orderKey says by what the route is ordered, and what a tap orders it by.
func (s *Screen) orderKey(turn func()) fyne.CanvasObject {
	is, tap := "useful.by.route", "useful.tap.use"
	if s.take.ByUse() {
		is, tap = "useful.by.use", "useful.tap.route"
	}
	face := part.NewRowFace(part.NewMark(checks.Unsaid), part.NewText(s.lang.Say(is), part.Held, 20, part.Plain).Bold(),
		part.NewText(s.lang.Say(tap), part.Held, 17, part.Plain))
	return part.NewKey("route.order", part.Standing, face, turn)
}

// usefulRoute lists what to read next by how much it settles; a tap goes there.
func (s *Screen) usefulRoute() page {
	s.rank()
	m := s.take
	turn := s.does(m.TurnUse)
	list, lines := m.Useful(), 1
	if len(list) > 0 {
		lines = len(list)
	}
	rows := part.NewRows(lines, s.sizes, func(i int) fyne.CanvasObject {
		switch {
		case !m.Ranked():
			return part.NewText(s.lang.Say("useful.reckons"), part.Held, 20, part.Plain)
		case len(list) == 0:
			return part.NewText(s.lang.Say("useful.none"), part.Held, 20, part.Plain)
		}
		return s.usefulRow(i, list[i])
	})
	rows.Least = usefulRoom
	return page{object: s.listUnder(s.orderKey(turn), true, rows, s.backKey()), answers: []func(){turn}}
}

// usefulRoom is how high a row of it is at least: three lines of what to read, three of what that settles.
const usefulRoom = 148

func (s *Screen) usefulRow(i int, r remedy.Reading) fyne.CanvasObject {
	face := part.NewRowFace(part.NewMark(checks.Waiting), part.NewText(sentence(s.lang.Reading(r)), part.Held, 19, part.Plain).Bold(),
		part.NewText(s.useOf(r), part.Held, 17, part.Quiet))
	return part.NewKey(fmt.Sprintf("useful.%d", i), part.Row, face, s.does(func() { s.take.GoUseful(r) }))
}

// useOf says how much a reading is expected to settle, and which finding most likely.
func (s *Screen) useOf(r remedy.Reading) string {
	if len(r.Settles) == 0 {
		return s.lang.Say("useful.nearer")
	}
	return s.lang.Say("useful.settles", r.Share, s.lang.Settled(r.Settles[0]))
}

// usefulReason is why a stop comes next where the route goes by use; false where it goes on by its own order.
func (s *Screen) usefulReason(next route.Stop) (string, bool) {
	m := s.take
	if !m.ByUse() {
		return "", false
	}
	if !m.Ranked() {
		return s.lang.Say("useful.pending"), true
	}
	if r, ok := m.ReasonOf(next); ok {
		if r.Decides == 0 {
			return s.lang.Say("useful.nearer"), true
		}
		return s.lang.Say("useful.next", r.Share), true
	}
	return "", false
}
