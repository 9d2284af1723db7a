package screen

import (
	"math"
	"strings"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/look"
	"yokebook/app/screen/part"
	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/checks/remedy"
)

// finding is one finding opened: its value against the limit, what it rests on, what to do.
func (s *Screen) finding() page {
	f, ok := s.take.Opened()
	if !ok {
		return s.ask(question{title: s.lang.Say("screen.finding.gone"), foot: s.back()})
	}
	t := s.lang.Finding(f)
	ink := part.VerdictInk(f.Verdict)
	lay := &arrange.Finding{
		Title:   part.NewText(s.findingTitle(t), 16, 24, part.Plain).Bold(),
		Mark:    part.NewMark(f.Verdict),
		Verdict: part.NewText(t.Verdict, 15, 24, ink).Bold(),
		Value:   part.NewText(s.valueAndLimit(f, t), 16, 26, part.Plain).Bold(),
		Body:    s.findingBody(f, t),
		Back:    s.backKey(),
	}
	objects := []fyne.CanvasObject{lay.Title, lay.Mark, lay.Verdict, lay.Value, lay.Body, lay.Back}
	for _, act := range s.findingActs(f) {
		lay.Acts = append(lay.Acts, act)
		objects = append(objects, act)
	}
	if scale, ok := scaleOf(f, ink); ok {
		lay.Bar = part.NewBar(scale)
		lay.Scale = part.NewText(s.lang.Say("screen.finding.scale", t.Limit), 12, 15, part.Quiet)
		objects = append(objects, lay.Bar, lay.Scale)
	}
	return page{object: container.New(lay, objects...)}
}

// findingTitle names a finding, and that it is of the shaft as it was made.
func (s *Screen) findingTitle(t words.FindingText) string { return sentence(s.ofShaft(t.Title)) }

// ofShaft says of what is named that it is of the shaft as it was made, where it is.
func (s *Screen) ofShaft(name string) string {
	if s.take.AsBuilt() {
		return s.lang.Say("screen.built.of", name)
	}
	return name
}

// findingActs are the keys of what can be done about a finding.
func (s *Screen) findingActs(f checks.Finding) []fyne.CanvasObject {
	var acts []fyne.CanvasObject
	if f.Check == "reading.zero" {
		acts = append(acts, part.NewWordKey("zero", part.Main, s.lang.Say("rests.zero"), s.does(func() { s.take.OpenReversal(f.Subject) })))
	}
	if remedy.Asks(f) {
		acts = append(acts, part.NewWordKey("cure", part.Main, s.lang.Say("cure.open"), s.does(func() { s.visit(s.newCure(f)) })))
	}
	if len(f.Used) > 0 {
		acts = append(acts, part.NewWordKey("rests", part.Ordinary, s.lang.Say("rests.open"), s.does(s.take.OpenRests)))
	}
	return acts
}

func (s *Screen) valueAndLimit(f checks.Finding, t words.FindingText) string {
	text := s.valueOf(f, t)
	if t.Limit != "" {
		if text != "" {
			text += " · "
		}
		text += t.Limit
	}
	return text
}

// scaleOf is the bar of a finding; false where it has no number or no limit.
func scaleOf(f checks.Finding, ink part.Ink) (part.Scale, bool) {
	if f.Value == nil || f.Limit == nil {
		return part.Scale{}, false
	}
	sc := part.Scale{Value: *f.Value, Low: *f.Value, High: *f.Value, Limit: f.Limit.Value, Upper: math.NaN(), Sense: f.Limit.Sense, Ink: ink}
	if f.Low != nil && f.High != nil {
		sc.Low, sc.High = *f.Low, *f.High
	}
	if f.Limit.Upper != nil {
		sc.Upper = *f.Limit.Upper
	}
	return sc, true
}

// findingBody is the long text: nothing in it can be tapped, so it may scroll.
func (s *Screen) findingBody(f checks.Finding, t words.FindingText) fyne.CanvasObject {
	box := container.NewVBox()
	add := func(heading string, lines ...string) { addText(box, s.lang.Say(heading), lines...) }
	add("screen.finding.do", t.Advice)
	add("screen.finding.weak", s.weakest(f), t.Chance)
	add("screen.finding.wants", t.Missing...)
	add("screen.finding.know", t.Notes...)
	add("screen.finding.formula", s.lang.Formula(f.Check))
	add("screen.finding.from", t.Source)
	return container.NewVScroll(box)
}

// weakest names what adds most to the doubt. Which reading that is says the page of what it rests on.
func (s *Screen) weakest(f checks.Finding) string {
	if f.Weakest == nil {
		return ""
	}
	return s.lang.Say("finding.weakest_shared", f.Weakest.Input, f.Weakest.Share)
}

// itemised puts lines under each other, each after a dash where one of them may take two.
func itemised(lines []string) string {
	long := false
	for _, l := range lines {
		long = long || utf8.RuneCountInString(l) > 42
	}
	if len(lines) < 2 || !long {
		return strings.Join(lines, "\n")
	}
	return "– " + strings.Join(lines, "\n– ")
}

// addText adds a heading and its lines to a long text; nothing where there is no line.
func addText(box *fyne.Container, heading string, lines ...string) {
	var said []string
	for _, l := range lines {
		if l != "" {
			said = append(said, sentence(l))
		}
	}
	if len(said) == 0 {
		return
	}
	head := widget.NewLabelWithStyle(heading, fyne.TextAlignLeading, fyne.TextStyle{Bold: true})
	head.SizeName = look.SizeHeading
	head.Wrapping = fyne.TextWrapWord // else a long one makes all that stands below it wider than the page
	label := widget.NewLabel(itemised(said))
	label.Wrapping = fyne.TextWrapWord
	label.SizeName = look.SizeBody
	box.Add(container.New(layout.NewCustomPaddedVBoxLayout(-8), head, label))
}
