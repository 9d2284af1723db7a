package screen

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/kit"
	"yokebook/app/screen/part"
	"yokebook/app/screen/take"
	"yokebook/measure"
)

// forming is the form in which an instrument is added or changed: big answers, one written name, and
// the keypad.
type forming struct {
	of    string // the instrument that is changed; "" for a new one
	what  kit.Step
	form  *kit.Form // nil: not begun
	name  string
	half  map[kit.Step]string // what was typed, by question
	typed take.Typed          // at the question that is asked
	err   error
}

func newForming(of string, what kit.Step) *forming {
	return &forming{of: of, what: what, half: map[kit.Step]string{}}
}

func (v *forming) draft() string { return "forming:" + v.of + ":" + string(v.what) }

// formingMark is how far the form has come.
type formingMark struct {
	Of      string              `json:"of"`
	What    kit.Step            `json:"what"`
	Answers []string            `json:"answers"`
	Name    string              `json:"name"`
	Half    map[kit.Step]string `json:"half"`
}

func (v *forming) mark() string {
	m := formingMark{v.of, v.what, nil, v.name, v.half}
	if v.form != nil {
		m.Answers = v.form.Answers()
	}
	return markOf("forming", m)
}

// formingOf is the form as it was; nil where the instrument is no longer there.
func (s *Screen) formingOf(m formingMark) visit {
	v := newForming(m.Of, m.What)
	if v.name = m.Name; m.Half != nil {
		v.half = m.Half
	}
	if !v.begin(s) {
		return nil
	}
	v.form.Resume(m.Answers)
	return v
}

// begin makes the form. It reports false where the instrument is no longer there.
func (v *forming) begin(s *Screen) bool {
	if v.form = kit.Add(); v.of == "" {
		return true
	}
	in, ok := measure.InstrumentOf(s.take.Build().Instruments, v.of)
	v.form = kit.Change(in, v.what)
	return ok
}

func (v *forming) back(*Screen) bool {
	v.err = nil
	if v.form.Back() {
		return true
	}
	if v.of != "" { // it may be changed otherwise before one comes back
		v.form = nil
	}
	return false
}

func (v *forming) page(s *Screen) page {
	if v.form == nil && !v.begin(s) {
		return s.ask(question{title: s.lang.Say("tools.gone"), foot: s.back()})
	}
	switch v.form.Step() {
	case kit.Kind:
		return v.kinds(s)
	case kit.Unit:
		return v.units(s)
	case kit.Name:
		return v.call(s)
	}
	return v.number(s)
}

func (v *forming) kinds(s *Screen) page {
	q := question{title: s.lang.Say("tools.new.kind"), foot: s.back()}
	for _, k := range kit.Kinds {
		q.answers = append(q.answers, answer{name: "kind." + k.Kind, words: sentence(s.lang.Instrument(k.Kind)),
			tap: s.does(func() {
				if v.form.Instrument().Kind != k.Kind { // numbers of another kind would mean nothing
					clear(v.half)
				}
				v.form.Choose(k.Kind)
			})})
	}
	return s.ask(q)
}

func (v *forming) units(s *Screen) page {
	q := question{title: s.lang.Say("tools.unit"), foot: s.back()}
	for _, u := range v.form.Units() {
		q.answers = append(q.answers, answer{name: "unit." + string(u), words: sentence(s.lang.Say("tools.unit." + string(u))),
			tap: s.does(func() { v.form.Choose(string(u)) })})
	}
	return s.ask(q)
}

func (v *forming) call(s *Screen) page {
	entry := s.entry()
	entry.SetPlaceHolder(s.lang.Say("tools.name.hint"))
	if v.name == "" {
		v.name = v.form.Instrument().Name
	}
	entry.SetText(v.name)
	atEnd(entry)
	entry.OnChanged = func(text string) {
		v.name = text
		s.remember()
	}
	keep := s.does(func() {
		v.form.Call(v.name)
		v.finish(s)
	})
	entry.OnSubmitted = func(string) { keep() }
	p := s.ask(question{title: s.lang.Say("tools.name"), field: entry, foot: s.back(), answers: []answer{
		{name: "noname", words: s.lang.Say("tools.name.skip"), tap: s.does(func() {
			v.form.Call("")
			v.finish(s)
		})},
		{name: "go", words: s.lang.Say("tools.go"), kind: part.Main, tap: keep},
	}})
	p.focus, p.answers = entry, nil
	return p
}

// number is the keypad of the form. KEEP without a number says that it is not known.
func (v *forming) number(s *Screen) page {
	in, step := v.form.Instrument(), string(v.form.Step())
	v.typed = take.TypedOf(v.half[v.form.Step()])
	keep := s.does(func() { v.keep(s) })
	asked := part.NewText("", part.Held, 24, part.Plain).Bold()
	number := part.NewText("", 22, 52, part.Plain).Bold()
	number.Align = fyne.TextAlignTrailing
	redraw := func() {
		text := v.typed.Text(s.lang.Comma)
		if text == "" {
			text = "–"
		}
		number.Say(text + " " + s.lang.Unit(string(in.Unit)))
		words, ink := s.lang.Say("tools."+step, string(in.Unit)), part.Plain
		if v.err != nil {
			words, ink = sentence(v.err.Error()), part.Risk
		}
		asked.Ink = ink
		asked.Say(words)
		asked.Refresh()
	}
	types := func(change func()) func() {
		return func() {
			v.err = nil
			change()
			v.half[v.form.Step()] = v.typed.Text(false)
			s.remember()
			redraw()
		}
	}
	key := func(name, sign string, change func()) fyne.CanvasObject {
		return part.NewKey(name, part.Ordinary, part.NewText(sign, 24, 46, part.Plain).Bold().Centred(), types(change))
	}
	sign := "."
	if s.lang.Comma {
		sign = ","
	}
	what := part.NewText(sentence(s.lang.Instrument(in.Kind)), part.Held, 24, part.Plain).Bold()
	lay := &arrange.Take{
		Left:     s.set.Left(),
		Stand:    []fyne.CanvasObject{part.NewField(what)},
		Picture:  part.NewText(s.lang.Say("tools.type"), part.Held, 19, part.Quiet).AtTop(),
		Question: asked,
		Hint:     part.NewText("", part.Held, 19, part.Quiet),
		Display:  part.NewField(number),
		Decimal:  key("key.decimal", sign, v.typed.Decimal),
		Erase:    part.NewNarrowKey("key.erase", part.Ordinary, s.lang.Say("screen.erase"), types(v.typed.Erase)),
		More:     s.backKey(),
		Keep:     []fyne.CanvasObject{part.NewKey("keep", part.Main, part.NewText(s.lang.Say("screen.keep"), 24, 40, part.OnIt).Bold().Centred(), keep)},
	}
	for d := range lay.Digits {
		lay.Digits[d] = key("key."+strconv.Itoa(d), strconv.Itoa(d), func() { v.typed.Digit(d) })
	}
	redraw()
	return page{object: container.New(lay, takeObjects(lay)...), enter: keep, typed: func(r rune) { types(func() { v.typedRune(r) })() }}
}

// typedRune takes a key of a keyboard; backspace erases.
func (v *forming) typedRune(r rune) {
	switch {
	case r >= '0' && r <= '9':
		v.typed.Digit(int(r - '0'))
	case r == '.' || r == ',':
		v.typed.Decimal()
	case r == '\b':
		v.typed.Erase()
	}
}

func (v *forming) keep(s *Screen) {
	value, _ := v.typed.Value(false)
	if v.err = v.form.Number(value); v.err != nil {
		return
	}
	v.finish(s)
}

// finish puts the instrument into the build once nothing more is asked.
func (v *forming) finish(s *Screen) {
	if v.form.Step() != kit.Done {
		return
	}
	field, value, err := v.form.Field(s.take.Build())
	if err == nil {
		err = s.take.Set(field, value)
	}
	if err != nil {
		v.form.Back()
		s.err, v.err = err, err
		return
	}
	s.drop(v)
	if c, ok := s.top().(*changing); ok {
		s.drop(c)
	}
}
