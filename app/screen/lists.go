package screen

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/logbook"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/words"
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
	return part.NewWordKey("back", part.Standing, s.lang.Say("screen.back"), func() { s.goBack() })
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
		part.NewText(sentence(s.lang.Point(stop.Point.Key)), 15, 22, part.Plain).Bold(),
		part.NewText(s.lang.State(stop.State)+" · "+said, 12, 17, part.Quiet))
	name := fmt.Sprintf("stop.%s.%s", stop.Point.Key, stop.State)
	kind := part.Row
	if here := s.take.Stop(); here.Point.Key == stop.Point.Key && here.State == stop.State {
		kind = part.Standing
	}
	return part.NewKey(name, kind, face, s.does(func() { s.take.Go(stop) }))
}

// findings is the list of all findings, worst first; a tap opens one.
func (s *Screen) findings() page {
	list := s.take.Findings()
	title := s.lang.Say("screen.findings", s.counts())
	if len(list) == 0 {
		title = s.lang.Say("screen.findings.none")
	}
	begun := len(list)
	for begun > 0 && list[begun-1].Untouched {
		begun--
	}
	count := len(list)
	if begun < count { // and the heading of what is not begun
		count++
	}
	rows := part.NewRows(count, s.sizes, func(i int) fyne.CanvasObject {
		switch {
		case i < begun:
			return s.findingRow(list[i])
		case i == begun:
			return s.untouchedHead(count - begun - 1)
		}
		return s.findingRow(list[i-1])
	})
	return page{object: s.listPage(title, rows, s.backKey())}
}

// untouchedHead stands in the list before the findings of which nothing was read yet.
func (s *Screen) untouchedHead(n int) fyne.CanvasObject {
	return part.NewField(part.NewRowFace(part.NewMark(checks.Unsaid),
		part.NewText(s.lang.Say("screen.untouched", n), 14, 20, part.Plain).Bold(), part.NewText(s.lang.Say("screen.untouched.what"), 11, 16, part.Quiet)))
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
	for _, more := range []string{s.valueOf(f, t), t.Limit} {
		if more != "" {
			detail += " · " + more
		}
	}
	if f.Verdict == checks.Waiting && len(t.Missing) > 0 {
		detail = t.Verdict + " · " + t.Missing[0]
	}
	mark := f.Verdict
	if f.Untouched {
		mark, detail = checks.Unsaid, s.lang.Say("screen.untouched.row")
	}
	face := part.NewRowFace(part.NewMark(mark),
		part.NewText(sentence(t.Title), 12, 19, part.Plain).Bold(), part.NewText(detail, 11, 17, part.VerdictInk(mark)).Bold())
	return part.NewKey("finding."+f.Key(), part.Row, face, s.does(func() { s.take.OpenFinding(f) }))
}

// valueOf is a finding's value with its doubt; "" for a bare count that no limit explains.
func (s *Screen) valueOf(f checks.Finding, t words.FindingText) string {
	if f.Limit == nil && (f.Unit == "" || f.Unit == "count") {
		return ""
	}
	return t.Value + spaced(t.Interval)
}

// listPage is a page of rows with its keys. The keys to turn over show where there is more.
func (s *Screen) listPage(title string, rows *part.Rows, keys ...fyne.CanvasObject) fyne.CanvasObject {
	head := part.NewText(title, 15, 24, part.Plain).Bold()
	up := part.NewWordKey("up", part.Ordinary, s.lang.Say("screen.up"), func() { rows.Turn(-1) })
	down := part.NewWordKey("down", part.Ordinary, s.lang.Say("screen.down"), func() { rows.Turn(1) })
	rows.Laid = func() {
		showIf(up, rows.First() > 0)
		showIf(down, rows.First()+rows.Shown() < rows.Count)
	}
	keys = append(keys, up, down)
	lay := &arrange.List{Title: head, Rows: rows, Keys: keys}
	return container.New(lay, append([]fyne.CanvasObject{head, rows}, keys...)...)
}

func showIf(o fyne.CanvasObject, show bool) {
	if show {
		o.Show()
	} else {
		o.Hide()
	}
}

func spaced(text string) string {
	if text == "" {
		return ""
	}
	return " " + text
}
