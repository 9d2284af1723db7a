package screen

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/draw"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
)

// answer is one big answer of a page.
type answer struct {
	name    string // "answer.<what>"
	words   string
	kind    part.Kind
	picture func() draw.Page // nil: words alone
	front   bool             // the picture is seen from the side: say where the front is
	tap     func()
}

// question is a page of big answers. Nothing else on it can be tapped.
type question struct {
	title   string
	note    string
	picture fyne.CanvasObject
	field   fyne.CanvasObject
	answers []answer
	foot    *answer // leaves the page; nil where one has to answer
	enter   func()
}

// ask builds a page of big answers.
func (s *Screen) ask(q question) page {
	title := part.NewText(q.title, 14, 28, part.Plain).Bold()
	lay := &arrange.Ask{Title: title, Picture: q.picture, Field: q.field}
	objects := []fyne.CanvasObject{title}
	note, ink := q.note, part.Plain
	if failure := s.failure(); failure != "" {
		note, ink = breakable(failure), part.Risk
	}
	if note != "" {
		text := part.NewText(note, 14, 20, ink).AtTop()
		lay.Note = text
		objects = append(objects, text)
	}
	for _, o := range []fyne.CanvasObject{q.picture, q.field} {
		if o != nil {
			objects = append(objects, o)
		}
	}
	p := page{enter: q.enter}
	for _, a := range q.answers {
		key := s.answerKey(a)
		lay.Answers = append(lay.Answers, key)
		objects = append(objects, key)
		p.answers = append(p.answers, a.tap)
	}
	if q.foot != nil {
		lay.Foot = s.answerKey(*q.foot)
		objects = append(objects, lay.Foot)
	}
	p.object = container.New(lay, objects...)
	return p
}

func (s *Screen) answerKey(a answer) *part.Key {
	if a.picture == nil {
		return part.NewWordKey(a.name, a.kind, a.words, a.tap)
	}
	label := ""
	if a.front {
		label = s.lang.Say("screen.front")
	}
	text := part.NewText(a.words, 15, 24, part.InkOf(a.kind)).Bold().Centred()
	return part.NewKey(a.name, a.kind, part.NewPictureFace(part.NewPicture(a.picture, label), text), a.tap)
}

// back is the answer that leaves a page as it was.
func (s *Screen) back() *answer {
	return &answer{name: "back", words: s.lang.Say("screen.back"), kind: part.Standing, tap: func() { s.goBack() }}
}
