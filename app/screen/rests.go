package screen

import (
	"cmp"
	"slices"

	"fyne.io/fyne/v2"

	"yokebook/app/screen/part"
	"yokebook/app/screen/take"
	"yokebook/checks"
	"yokebook/measure"
)

// ground is one thing that a finding rests on: a reading, or what several share, or what nobody read.
type ground struct {
	record take.Record // no id where it is no reading
	input  string
	share  float64
	known  bool // the finding has doubt, so that the share says something
}

// rests lists what the opened finding rests on, with the share of each in its doubt; a tap goes to the
// reading.
func (s *Screen) rests() page {
	f, ok := s.take.Opened()
	if !ok {
		return s.ask(question{title: s.lang.Say("screen.finding.gone"), foot: s.back()})
	}
	list := groundsOf(f, s.take.Records())
	p := page{}
	for _, g := range list {
		if g.record.Reading.ID != "" {
			p.answers = append(p.answers, s.openGround(g))
		}
	}
	rows := part.NewRows(len(list), s.sizes, func(i int) fyne.CanvasObject { return s.groundRow(list[i]) })
	rows.Least = twoLines
	title := s.lang.Say("rests.title", sentence(s.ofShaft(s.lang.Check(f.Check, f.Subject))))
	if len(list) == 0 {
		title = s.lang.Say("rests.none")
	}
	p.object = s.listPage(title, rows, s.backKey())
	return p
}

// groundsOf lists the readings that a finding uses and what else adds to its doubt, the largest share first.
func groundsOf(f checks.Finding, records []take.Record) []ground {
	var out []ground
	share := func(id measure.ID) (sum float64) {
		for _, w := range f.Shares {
			if w.Reading != nil && *w.Reading == id {
				sum += w.Share
			}
		}
		return sum
	}
	for _, id := range f.Used {
		i := slices.IndexFunc(records, func(r take.Record) bool { return r.Reading.ID == id })
		if i >= 0 {
			out = append(out, ground{records[i], records[i].Reading.Point, share(id), len(f.Shares) > 0})
		}
	}
	for _, w := range f.Shares {
		if w.Reading == nil {
			out = append(out, ground{input: w.Input, share: w.Share, known: true})
		}
	}
	slices.SortStableFunc(out, func(a, b ground) int { return cmp.Compare(b.share, a.share) })
	return out
}

func (s *Screen) groundRow(g ground) fyne.CanvasObject {
	share := ""
	switch {
	case g.known && g.share < 0.005:
		share = s.lang.Say("rests.little")
	case g.known:
		share = s.lang.Say("rests.share", g.share)
	}
	title, what := sentence(s.lang.Input(g.input)), s.lang.Say("rests.taken")
	reading := g.record.Reading
	switch {
	case reading.ID != "":
		title, what = s.namedValue(reading), s.lang.State(reading.State())
	case isZero(g.input):
		what = s.lang.Say("rests.shared")
	}
	if share != "" {
		what = s.lang.Say("rests.row", what, share)
	}
	face := part.NewRowFace(part.NewMark(checks.Unsaid), part.NewText(title, part.Held, 19, part.Plain).Bold(),
		part.NewText(what, part.Held, 17, part.Quiet))
	if reading.ID == "" {
		return face
	}
	return part.NewKey("record."+string(reading.ID), part.Row, face, s.openGround(g))
}

// isZero reports an input that is the zero of an instrument.
func isZero(input string) bool {
	const suffix = ".zero"
	return len(input) > len(suffix) && input[len(input)-len(suffix):] == suffix
}

// openGround goes to a reading's record.
func (s *Screen) openGround(g ground) func() {
	return s.does(func() { s.take.OpenRecord(g.record) })
}
