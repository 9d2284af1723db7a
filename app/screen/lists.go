package screen

import (
	"fmt"
	"maps"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/logbook"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/screen/take"
	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure/route"
)

// route is the list of all stops; a tap goes there.
func (s *Screen) route() page {
	m := s.take
	if m.ByUse() {
		return s.usefulRoute()
	}
	turn := s.does(m.TurnUse)
	lines := m.Route()
	rows := part.NewRows(len(lines), s.sizes, func(i int) fyne.CanvasObject {
		if g := lines[i].Group; g != "" {
			return part.NewText(sentence(s.lang.Group(g)), part.Held, 18, part.Quiet).Bold()
		}
		return s.stopRow(lines[i].Stop)
	})
	rows.Least, rows.Head = twoLines, func(i int) bool { return lines[i].Group != "" }
	for i, l := range lines {
		if here := m.Stop(); l.Group == "" && sameStop(l.Stop, here) {
			rows.Reach(i)
		}
	}
	return page{object: s.listUnder(s.orderKey(turn), true, rows, s.backKey()), answers: []func(){turn}}
}

func sameStop(a, b route.Stop) bool {
	return a.Point.Key == b.Point.Key && a.State == b.State && a.Tag == b.Tag
}

// twoLines is how high a row is at least that may take two lines of title and two of what it says.
const twoLines = 106

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
		part.NewText(s.stopName(stop), part.Held, 22, part.Plain).Bold(),
		part.NewText(s.lang.State(stop.State)+" · "+said, part.Held, 17, part.Quiet))
	name := fmt.Sprintf("stop.%s.%s", stop.Point.Key, stop.State)
	if stop.Tag != "" {
		name += "." + stop.Tag
	}
	kind := part.Row
	if sameStop(s.take.Stop(), stop) {
		kind = part.Chosen
	}
	return part.NewKey(name, kind, face, s.does(func() { s.take.Go(stop) }))
}

// findings is the list of all findings, gathered by part, worst first; a tap opens one. The key over
// it cuts the list down to one verdict after the other. Once the shaft came back a row before the first
// changes between what is ordered and what was made.
func (s *Screen) findings() page {
	m := s.take
	lines := m.Found()
	change := s.does(m.SwitchBuilt)
	rows := part.NewRows(len(lines), s.sizes, func(i int) fyne.CanvasObject {
		switch l := lines[i]; {
		case l.Built:
			return s.builtRow(change)
		case l.Finding == nil:
			return s.findingsHead(l)
		}
		return s.findingRow(*lines[i].Finding)
	})
	rows.Least, rows.Head = findingRoom, func(i int) bool { return lines[i].Finding == nil && !lines[i].Built }
	if len(m.Findings()) == 0 {
		return page{object: s.listPage(s.lang.Say("screen.findings.none"), rows, s.backKey())}
	}
	turn := s.does(m.TurnFilter)
	p := page{object: s.listUnder(s.filterKey(turn), true, rows, s.backKey()), answers: []func(){turn}}
	if m.HasBuilt() {
		p.answers = append(p.answers, change)
	}
	return p
}

// builtRow says whether the findings are of the shaft as ordered or as it was made; a tap shows the
// other.
func (s *Screen) builtRow(change func()) fyne.CanvasObject {
	now, tap := "screen.built.ordered", "screen.built.tap.made"
	if s.take.AsBuilt() {
		now, tap = "screen.built.made", "screen.built.tap.ordered"
	}
	return part.NewKey("built", part.Standing, part.NewRowFace(part.NewMark(checks.Unsaid),
		part.NewText(s.lang.Say(now), part.Held, 20, part.Plain).Bold(), part.NewText(s.lang.Say(tap), part.Held, 17, part.Plain)), change)
}

// findingRoom is how high a finding's row is at least: two lines of title, two of what it says, and
// its bar, none smaller than part.Held.
const findingRoom = 120

// filterKey says which findings are shown, how many there are of each verdict, and what a tap shows.
func (s *Screen) filterKey(turn func()) fyne.CanvasObject {
	m := s.take
	mark := m.Filter()
	face := part.NewRowFace(part.NewMark(mark),
		part.NewText(s.ofShaft(s.filterTitle(mark)), 13, 20, part.Plain).Bold(),
		part.NewText(s.lang.Say("screen.filter.tap."+filterWord(m.NextFilter())), part.Held, 17, part.Plain))
	return part.NewKey("filter", part.Standing, face, turn)
}

func (s *Screen) filterTitle(only checks.Verdict) string {
	if only == checks.Unsaid {
		return s.lang.Say("screen.filter.all", s.counts())
	}
	all := s.take.Findings()
	_, n := logbook.Worst(all)
	return s.lang.Say("screen.filter."+string(only), n[only], len(all))
}

func filterWord(v checks.Verdict) string {
	if v == checks.Unsaid {
		return "all"
	}
	return string(v)
}

// findingsHead is a heading in the list of findings.
func (s *Screen) findingsHead(l take.Line) fyne.CanvasObject {
	switch {
	case l.Group == "":
		return part.NewText(s.lang.Say("screen.untouched", l.Of), part.Held, 18, part.Plain).Bold()
	case l.Later:
		return part.NewText(s.lang.Say("screen.found.later", s.lang.Say("found."+l.Group), l.Of), part.Held, 18, part.Quiet).Bold()
	}
	return part.NewText(s.lang.Say("screen.found.head", s.lang.Say("found."+l.Group), l.Of), part.Held, 18, part.Quiet).Bold()
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
	var bar *part.Bar
	if scale, ok := scaleOf(f, part.VerdictInk(mark)); ok {
		bar = part.NewBar(scale)
	}
	face := part.NewBarFace(part.NewMark(mark),
		part.NewText(sentence(t.Title), part.Held, 19, part.Plain).Bold(), part.NewText(detail, part.Held, 17, part.VerdictInk(mark)).Bold(), bar)
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
	return s.listUnder(part.NewText(title, part.Held, 24, part.Plain).Bold(), false, rows, keys...)
}

// listUnder is listPage with a head of any kind; tall where that is a key. A first key that the page is
// for takes all the room while no other stands beside it.
func (s *Screen) listUnder(head fyne.CanvasObject, tall bool, rows *part.Rows, keys ...fyne.CanvasObject) fyne.CanvasObject {
	path := s.path()
	if top, turned := s.tops[path]; turned {
		rows.Reach(min(top, rows.Count-1))
	}
	turn := func(pages int) func() {
		return func() {
			rows.Turn(pages)
			if s.tops == nil {
				s.tops = map[string]int{}
			}
			s.tops[path] = rows.First()
			s.remember()
		}
	}
	up := part.NewWordKey("up", part.Ordinary, s.lang.Say("screen.up"), turn(-1))
	down := part.NewWordKey("down", part.Ordinary, s.lang.Say("screen.down"), turn(1))
	keys = append(keys, up, down)
	first, isKey := keys[0].(*part.Key)
	lay := &arrange.List{Title: head, Tall: tall, Rows: rows, Keys: keys, Grows: isKey && first.Kind == part.Main}
	c := container.New(lay, append([]fyne.CanvasObject{head, rows}, keys...)...)
	rows.Laid = func() {
		showIf(up, rows.First() > 0)
		showIf(down, rows.First()+rows.Shown() < rows.Count)
		lay.PlaceKeys(c.Size())
	}
	return c
}

// path names the pages that lead to the one that is shown, the lowest first.
func (s *Screen) path() string {
	var pages []string
	if s.take != nil {
		pages = s.take.Where().Pages
	}
	return strings.Join(append(pages, s.marks()...), "\n")
}

// forgetTops lets lists that were left begin at their top when they are opened again; those under the
// page that is shown stay where they were turned to.
func (s *Screen) forgetTops() {
	path := s.path()
	maps.DeleteFunc(s.tops, func(list string, _ int) bool { return list != path && !strings.HasPrefix(path, list+"\n") })
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
