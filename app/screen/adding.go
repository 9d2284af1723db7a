package screen

import (
	"context"

	"fyne.io/fyne/v2"

	"yokebook/app/screen/part"
	"yokebook/app/screen/share"
	"yokebook/sync/place"
)

// addVisit asks for a place, one question after the other.
type addVisit struct {
	model *share.Adding         // nil: it is opened again, and the places are not there yet
	asked share.Asked           // how far it had come then
	half  map[share.Step]string // what was written, by question
}

func (v *addVisit) mark() string {
	kept := addMark{v.asked, map[share.Step]string{}}
	if v.model != nil {
		kept.Asked = v.model.Asked()
	}
	for step, text := range v.half {
		if !share.Secret(step, text) {
			kept.Half[step] = text
		}
	}
	return markOf("add", kept)
}

// addMark is how far the adding of a place has come.
type addMark struct {
	Asked share.Asked           `json:"asked"`
	Half  map[share.Step]string `json:"half"`
}

func addOf(m addMark) *addVisit { return &addVisit{asked: m.Asked, half: m.Half} }

func (*addVisit) draft() string { return "add" }

func (v *addVisit) back(s *Screen) bool {
	s.stopWork()
	return v.model != nil && v.model.Back()
}

func (v *addVisit) page(s *Screen) page {
	if s.sharing == nil {
		return s.ask(question{title: s.lang.Say("offer.begins"), foot: s.back()})
	}
	if v.model == nil {
		v.model = s.sharing.Resume(v.asked)
	}
	if v.half == nil {
		v.half = map[share.Step]string{}
	}
	if s.working() {
		return s.ask(question{title: breakable(s.lang.Say("add.asking", v.model.Address())), foot: s.back()})
	}
	switch v.model.Step() {
	case share.AskKind:
		return v.kinds(s)
	case share.AskTrust:
		return v.trust(s)
	}
	return v.write(s)
}

func (v *addVisit) kinds(s *Screen) page {
	q := question{title: s.lang.Say("add.kind"), note: s.lang.Say("add.kind.note"), foot: s.back()}
	kinds := []share.Step{share.AskFolder, share.AskServer, share.AskDevice}
	if fyne.CurrentDevice().IsMobile() { // its system hands out no folder that files can be put into by path
		kinds = kinds[1:]
	}
	for _, kind := range kinds {
		q.answers = append(q.answers, answer{name: "add." + string(kind), words: s.lang.Say("add." + string(kind)),
			tap: s.does(func() { v.model.Choose(kind) })})
	}
	return s.ask(q)
}

// write asks a question that is answered in writing.
func (v *addVisit) write(s *Screen) page {
	step := string(v.model.Step())
	entry := s.entry()
	note := s.lang.Say("add." + step + ".note")
	switch v.model.Step() {
	case share.AskPassword:
		entry = s.secretEntry()
	case share.AskUser:
		note = breakable(s.lang.Say("add.user.note", v.model.Address()))
		entry.SetText(v.model.User())
	case share.AskFolder, share.AskServer, share.AskDevice:
		entry.SetText(v.model.Address())
	}
	if half, ok := v.half[v.model.Step()]; ok {
		entry.SetText(half)
	}
	atEnd(entry)
	entry.OnChanged = func(text string) {
		v.half[v.model.Step()] = text
		s.remember()
	}
	entry.SetPlaceHolder(s.lang.Say("add." + step + ".hint"))
	goOn := s.does(func() {
		task, err := v.model.Write(entry.Text)
		if s.err = err; err == nil {
			v.run(s, task)
		}
	})
	entry.OnSubmitted = func(string) { goOn() }
	p := s.ask(question{title: s.lang.Say("add." + step + ".ask"), note: note, field: entry, answers: []answer{
		{name: "add.go", words: s.lang.Say("add.go"), kind: part.Main, tap: goOn},
	}, foot: s.back()})
	p.focus, p.answers = entry, nil
	return p
}

// trust shows the fingerprint of a server that nobody vouches for.
func (v *addVisit) trust(s *Screen) page {
	return s.ask(question{title: s.lang.Say("add.trust.ask"), note: s.lang.Say("add.trust.note", fingerprint(v.model.Pin())), answers: []answer{
		{name: "back", words: s.lang.Say("add.trust.no"), tap: func() { s.goBack() }},
		{name: "trust.yes", words: s.lang.Say("add.trust.yes"), kind: part.Risky, tap: s.does(func() { v.run(s, v.model.Trust()) })},
	}})
}

// run asks the place; once it is added its own page is shown.
func (v *addVisit) run(s *Screen, task share.Task) {
	if task == nil {
		return
	}
	s.tasks(func(ctx context.Context) func() error {
		finish := task(ctx)
		return func() error {
			err := finish()
			if v.model.Done != "" {
				s.drop(v)
				s.visit(&placeVisit{address: v.model.Done, kept: v.model.Kept})
			}
			return err
		}
	})
}

// fingerprint is a pin in groups that can be read aloud.
func fingerprint(p place.Pin) string {
	text, out := p.String(), ""
	for i := 0; i < len(text); i += 5 {
		if i > 0 {
			out += " "
		}
		out += text[i:min(i+5, len(text))]
	}
	return out
}
