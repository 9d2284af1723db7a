package screen

import (
	"fmt"

	"fyne.io/fyne/v2"

	"yokebook/app/logbook"
	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/measure/route"
)

// route is the list of all stops; a tap goes there.
func (s *Screen) route() page {
	m := s.take
	stops := m.Stops()
	rows := part.NewRows(len(stops), s.sizes, func(i int) fyne.CanvasObject { return s.stopRow(stops[i]) })
	if at, _ := m.Place(); at > 0 {
		rows.Reach(at - 1)
	}
	return page{object: s.listPage(s.lang.Say("screen.route"), rows, s.backKey())}
}

func (s *Screen) backKey() fyne.CanvasObject {
	return part.NewWordKey("back", part.Standing, s.lang.Say("screen.back"), s.goBack)
}

func (s *Screen) stopRow(stop route.Stop) fyne.CanvasObject {
	verdict, said := checks.Waiting, s.lang.Say("screen.route.open")
	switch {
	case stop.Taken == 1:
		verdict, said = checks.Clear, s.lang.Say("screen.route.once")
	case stop.Taken > 1:
		verdict, said = checks.Clear, s.lang.Say("screen.route.taken", stop.Taken)
	case stop.Skipped != nil:
		verdict, said = checks.Unsaid, s.lang.Say("screen.route.skipped", stop.Skipped.Reason)
	case stop.Point.Optional:
		verdict, said = checks.Unsaid, s.lang.Say("screen.route.option")
	}
	face := part.NewRowFace(part.NewMark(verdict),
		part.NewText(s.lang.Point(stop.Point.Key), 15, 22, part.Plain).Bold(),
		part.NewText(s.lang.State(stop.State)+" · "+said, 12, 17, part.Quiet))
	name := fmt.Sprintf("stop.%s.%s", stop.Point.Key, stop.State)
	return part.NewKey(name, part.Row, face, s.does(func() { s.take.Go(stop) }))
}

// findings is the list of all findings, worst first; a tap opens one.
func (s *Screen) findings() page {
	list := s.take.Findings()
	title := s.lang.Say("screen.findings", s.counts())
	if len(list) == 0 {
		title = s.lang.Say("screen.findings.none")
	}
	rows := part.NewRows(len(list), s.sizes, func(i int) fyne.CanvasObject { return s.findingRow(list[i]) })
	return page{object: s.listPage(title, rows, s.backKey())}
}

// counts says how many findings there are of each verdict.
func (s *Screen) counts() string {
	_, n := logbook.Worst(s.take.Findings())
	return s.lang.Say("cli.counts", n[checks.Out], n[checks.Unsure], n[checks.Waiting], n[checks.Clear])
}

// findingRow is one finding in a list: verdict as word, shape and colour, value with its doubt, limit.
func (s *Screen) findingRow(f checks.Finding) fyne.CanvasObject {
	t := s.lang.Finding(f)
	detail := t.Verdict
	for _, more := range []string{t.Value + spaced(t.Interval), t.Limit} {
		if more != "" {
			detail += " · " + more
		}
	}
	if f.Verdict == checks.Waiting && len(t.Missing) > 0 {
		detail = t.Verdict + " · " + t.Missing[0]
	}
	face := part.NewRowFace(part.NewMark(f.Verdict),
		part.NewText(t.Title, 13, 19, part.Plain).Bold(), part.NewText(detail, 12, 17, part.VerdictInk(f.Verdict)).Bold())
	return part.NewKey("finding."+f.Key(), part.Row, face, s.does(func() { s.take.OpenFinding(f) }))
}

func spaced(text string) string {
	if text == "" {
		return ""
	}
	return " " + text
}
