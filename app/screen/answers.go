package screen

import (
	"fmt"
	"strings"

	"yokebook/app/draw"
	"yokebook/app/draw/tool"
	"yokebook/app/screen/part"
	"yokebook/measure"
)

// sides asks with two pictures which side the typed number is on.
func (s *Screen) sides() page {
	m := s.take
	sense := m.Stop().Point.Sense
	q := question{title: s.lang.Say("screen.side." + string(sense))}
	for _, side := range []struct {
		name     string
		positive bool
	}{{"yes", true}, {"no", false}} {
		q.answers = append(q.answers, answer{
			name: "side." + side.name, words: s.lang.Say("screen.side." + string(sense) + "." + side.name),
			picture: func() draw.Page { return tool.Side(sense, side.positive) },
			front:   sense == measure.FrontHigh || sense == measure.FrontLeft || sense == measure.ForwardOf,
			tap:     s.does(func() { m.Side(side.positive) }),
		})
	}
	q.foot = s.back()
	return s.ask(q)
}

// codes asks for one of a few answers, or for yes or no.
func (s *Screen) codes() page {
	m := s.take
	p := m.Stop().Point
	q := question{title: s.lang.Question(p), note: s.lang.Place(p)}
	codes := p.Codes
	if len(codes) == 0 {
		codes = []measure.Code{{Value: 1, Means: "yes"}, {Value: 0, Means: "no"}}
	}
	for _, c := range codes {
		text := s.lang.Code(p, c)
		if text == "yes" || text == "no" {
			text = s.lang.Say("screen." + c.Means)
		}
		q.answers = append(q.answers, answer{name: fmt.Sprintf("answer.%d", c.Value), words: text,
			tap: s.does(func() { m.Answer(c.Value) })})
	}
	q.foot = s.moreAnswer()
	return s.ask(q)
}

// moreAnswer is the way to everything else from a page that has no keypad, and out of a correction.
func (s *Screen) moreAnswer() *answer {
	if _, ok := s.take.Correcting(); ok {
		return s.leaveCorrection()
	}
	return &answer{name: "more", words: s.lang.Say("screen.more"), kind: part.Standing, tap: s.does(s.take.OpenMore)}
}

// write is the one page of the Take screen with a text entry: for what stands on a part.
func (s *Screen) write() page {
	m := s.take
	p := m.Stop().Point
	entry := s.entry()
	entry.SetPlaceHolder(s.lang.Say("screen.write.example", p.Example()))
	entry.SetText(m.Written())
	entry.OnChanged = func(text string) {
		m.Writing(text)
		s.remember()
	}
	keep := s.does(func() { m.Wrote(strings.TrimSpace(entry.Text)) })
	entry.OnSubmitted = func(string) { keep() }
	page := s.ask(question{title: s.lang.Question(p), note: s.lang.Say("screen.write"), field: entry, answers: []answer{
		{name: "keep", words: s.lang.Say("screen.keep"), kind: part.Main, tap: keep},
	}, foot: s.moreAnswer()})
	page.focus = entry
	page.answers = nil
	return page
}

// doubts asks back in one sentence with two answers.
func (s *Screen) doubts() page {
	m := s.take
	return s.ask(question{title: sentence(s.lang.Message(m.Doubts()[0])), answers: []answer{
		{name: "doubt.again", words: s.lang.Say("screen.doubt.again"), kind: part.Main, tap: s.does(m.LookAgain)},
		{name: "doubt.keep", words: s.lang.Say("screen.doubt.keep"), tap: s.does(m.KeepAllTheSame)},
	}})
}

// refused says why the logbook did not take a value.
func (s *Screen) refused() page {
	again := s.does(s.take.LookAgain)
	return s.ask(question{title: s.lang.Say("screen.refused"), enter: again, answers: []answer{
		{name: "doubt.again", words: s.lang.Say("screen.doubt.again"), kind: part.Main, tap: again},
	}})
}

// bring says how the next stop wants the vehicle to stand.
func (s *Screen) bring() page {
	m := s.take
	stop := m.Stop()
	note := s.lang.Say("screen.bring.first", s.lang.Point(stop.Point.Key))
	if m.Stand().State.Ride != measure.Bench {
		note = s.lang.Say("screen.bring.note", s.lang.Point(stop.Point.Key), s.lang.State(m.Stand().State))
	}
	return s.ask(question{
		title:   s.lang.Say("screen.bring", s.lang.State(stop.State)),
		note:    note,
		picture: s.standPicture(stop.State),
		answers: []answer{
			{name: "bring.done", words: s.lang.Say("screen.bring.done"), kind: part.Main, tap: s.does(m.Brought)},
			{name: "bring.stay", words: s.lang.Say("screen.bring.stay"), tap: s.does(m.StayAsItIs)},
		},
		foot: s.moreAnswer(),
	})
}

func (s *Screen) standPicture(state measure.State) *part.Picture {
	return part.NewPicture(func() draw.Page { return tool.Stand(state) }, s.lang.Say("screen.front"))
}

// caution shows what can hurt before the first stop under the vehicle.
func (s *Screen) caution() page {
	var texts []string
	for _, key := range s.take.Cautions() {
		texts = append(texts, s.lang.Caution(key))
	}
	ok := s.does(s.take.Heeded)
	return s.ask(question{title: s.lang.Say("screen.caution"), note: strings.Join(texts, "\n"), answers: []answer{
		{name: "caution.ok", words: s.lang.Say("screen.caution.ok"), kind: part.Main, tap: ok},
	}})
}

// stances asks how the vehicle stands, ride and load in one answer.
func (s *Screen) stances() page {
	m := s.take
	q := question{title: s.lang.Say("screen.stances")}
	for _, state := range measure.States {
		kind := part.Ordinary
		if state == m.Stop().State {
			kind = part.Chosen
		}
		q.answers = append(q.answers, answer{name: "stance." + state.String(), words: sentence(s.lang.State(state)), kind: kind,
			picture: func() draw.Page { return tool.Stand(state) }, tap: s.does(func() { m.SetState(state) })})
	}
	q.foot = s.back()
	return s.ask(q)
}

// setup asks whether the vehicle was moved.
func (s *Screen) setup() page {
	m := s.take
	return s.ask(question{title: s.lang.Say("screen.setup.ask"), note: s.lang.Say("screen.setup.note", m.Stand().Setup), answers: []answer{
		{name: "setup.moved", words: s.lang.Say("screen.setup.moved"), tap: s.does(m.Moved)},
		{name: "back", words: s.lang.Say("screen.setup.same"), tap: func() { s.goBack() }},
	}})
}

// skipReasons are why a stop may be left out.
var skipReasons = []string{"skip.reach", "skip.fitted", "skip.tool", "skip.absent", "skip.unsafe", "skip.later"}

// skips asks why the stop is left out.
func (s *Screen) skips() page {
	q := question{title: s.lang.Say("screen.skips")}
	for _, key := range skipReasons {
		text := s.lang.Say(key)
		q.answers = append(q.answers, answer{name: key, words: text, tap: s.does(func() { s.take.Skip(text) })})
	}
	q.answers = append(q.answers, answer{name: "skip.other", words: s.lang.Say("screen.skips.write"), tap: s.does(s.take.OpenSkipNote)})
	q.foot = s.back()
	return s.ask(q)
}

// skipNote asks in writing why the stop is left out.
func (s *Screen) skipNote() page {
	entry := s.entry()
	entry.SetPlaceHolder(s.lang.Say("screen.skips.hint"))
	s.noting(entry)
	skip := s.does(func() { s.take.Skip(strings.TrimSpace(entry.Text)) })
	entry.OnSubmitted = func(string) { skip() }
	p := s.ask(question{title: s.lang.Say("screen.skips"), field: entry, answers: []answer{
		{name: "skip", words: s.lang.Say("screen.skips.ok"), kind: part.Main, tap: skip},
	}, foot: s.back()})
	p.focus = entry
	p.answers = nil
	return p
}

// noting lets an entry hold the half-written reason of the page.
func (s *Screen) noting(entry *part.Entry) {
	entry.SetText(s.take.Note())
	atEnd(entry)
	entry.OnChanged = func(text string) {
		s.take.Noting(text)
		s.remember()
	}
}

// tools asks what one reads with.
func (s *Screen) tools() page {
	m := s.take
	q := question{title: s.lang.Say("screen.tools")}
	for _, in := range m.ToolChoices() {
		q.answers = append(q.answers, answer{name: "tool." + in.ID, words: s.toolName(in.ID), tap: s.does(func() { m.SetTool(in.ID) })})
	}
	if m.TakesFinder() && len(q.answers) == 0 {
		q.answers = append(q.answers, answer{name: "tool.new", words: s.lang.Say("screen.tools.finder"), tap: s.does(m.NewFinder)})
	}
	q.answers = append(q.answers,
		answer{name: "tool.none", words: s.lang.Say("screen.tools.none"), tap: s.does(func() { m.SetTool("") })})
	q.foot = s.back()
	return s.ask(q)
}

// toolName is what an instrument of the build is called.
func (s *Screen) toolName(id string) string {
	in, ok := measure.InstrumentOf(s.take.Build().Instruments, id)
	switch {
	case !ok:
		return s.lang.Say("screen.tools.none")
	case in.Name != "":
		return in.Name
	}
	return s.lang.Instrument(in.Kind)
}
