package screen

import (
	"fyne.io/fyne/v2"

	"yokebook/app/draw"
	"yokebook/app/draw/tool"
	"yokebook/app/screen/part"
	"yokebook/app/screen/take"
	"yokebook/checks"
	"yokebook/measure"
)

// layKey shows how the finder lies and leads to the page that changes it; nil where none is used.
func (s *Screen) layKey() fyne.CanvasObject {
	m := s.take
	if !m.TakesFinder() || m.Page() == take.Height {
		return nil
	}
	laid, said := m.Laid()
	word := s.lang.Say("screen.laid")
	if !said {
		laid, word = "", s.lang.Say("screen.laid.ask")
	}
	face := part.NewCaptionFace(part.NewText(word, 12, 14, part.Quiet), laidPicture(laid, ""))
	return part.NewKey("stand.laid", part.Standing, face, s.does(m.OpenLaying))
}

func laidPicture(l take.Laid, label string) *part.Picture {
	return part.NewPicture(func() draw.Page { return tool.Laid(string(l)) }, label)
}

// laying asks with pictures how the finder lies. How it lay before stands out.
func (s *Screen) laying() page {
	m := s.take
	q := question{title: s.lang.Say("screen.laid.which")}
	before, _ := m.Laid()
	for _, l := range take.Layings {
		kind := part.Ordinary
		if l == before {
			kind = part.Chosen
		}
		q.answers = append(q.answers, answer{name: "laid." + string(l), words: s.lang.Say("screen.laid." + string(l)), kind: kind, front: true,
			picture: func() draw.Page { return tool.Laid(string(l)) }, tap: s.does(func() { m.Lay(l) })})
	}
	q.foot = s.back()
	return s.ask(q)
}

// reverse says what finding the zero of a finder takes.
func (s *Screen) reverse() page {
	m := s.take
	plan := m.Planned()
	begin := s.does(m.BeginReversal)
	return s.ask(question{
		title:   s.lang.Say("screen.zero.title"),
		note:    sentence(s.lang.Say("screen.zero.how", s.lang.Point(plan.Stop.Point.Key), s.lang.State(plan.Stop.State))),
		picture: part.NewPicture(tool.Turned, s.lang.Say("screen.front")),
		answers: []answer{{name: "zero.begin", words: s.lang.Say("screen.zero.begin"), kind: part.Main, tap: begin}},
		foot:    s.back(), enter: begin,
	})
}

// turn says to turn the finder, after the first of the two readings.
func (s *Screen) turn() page {
	m := s.take
	turned := s.does(m.Turned)
	return s.ask(question{
		title:   s.lang.Say("screen.zero.turn"),
		note:    s.lang.Say("screen.zero.first", s.sidedValue(m.Kept().Reading)),
		picture: laidPicture(m.Lying(), s.lang.Say("screen.front")),
		answers: []answer{{name: "zero.turned", words: s.lang.Say("screen.zero.turned"), kind: part.Main, tap: turned}},
		foot:    &answer{name: "zero.end", words: s.lang.Say("screen.zero.end"), kind: part.Standing, tap: s.does(m.EndReversal)},
		enter:   turned,
	})
}

// zero says the zero that the two readings found, and the way on.
func (s *Screen) zero() page {
	m := s.take
	title := s.lang.Say("screen.zero.none")
	if found, ok := m.ZeroFound(); ok {
		title = sentence(s.lang.Message(found))
	}
	next := s.does(m.Next)
	words := s.lang.Say("screen.next.done")
	if stop, more := m.Wanted(m.Kept().Change); more {
		words = s.lang.Say("screen.next", s.lang.Point(stop.Point.Key))
	}
	return s.ask(question{title: title, note: s.lang.Say("screen.zero.second", s.sidedValue(m.Kept().Reading)), enter: next, answers: []answer{
		{name: "all", words: s.lang.Say("screen.all"), tap: s.does(m.OpenFindings)},
		{name: "next", words: words, kind: part.Main, tap: next},
	}})
}

// reversalField stands in place of the keys of the stand while a finder's zero is being found.
func (s *Screen) reversalField(r *take.Reversal) fyne.CanvasObject {
	step := 1
	if r.Second() {
		step = 2
	}
	where := sentence(s.lang.Point(r.Stop.Point.Key)) + ", " + s.lang.State(r.Stop.State)
	return part.NewField(part.NewRowFace(part.NewMark(checks.Waiting),
		part.NewText(s.lang.Say("screen.zero.step", step), 14, 22, part.Plain).Bold(), part.NewText(where, 12, 17, part.Quiet)))
}

// zeroTool is the tool whose zero More offers to find; false at a stop that is read without a finder.
func (s *Screen) zeroTool() (string, bool) {
	m := s.take
	if !m.TakesFinder() {
		return "", false
	}
	if id := m.Tool(); id != "" {
		return id, true
	}
	for _, in := range m.Build().Instruments {
		if in.Quantity() == measure.Angle {
			return in.ID, true
		}
	}
	return "", true
}
