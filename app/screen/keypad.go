package screen

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/draw"
	"yokebook/app/draw/tool"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/screen/take"
	"yokebook/measure"
)

// keypad is the page where a number is typed: how the vehicle stands, where the tool goes, the
// question, the display and the keys.
func (s *Screen) keypad() page {
	m := s.take
	stop := m.Stop()
	keep := s.does(m.Keep)
	lay := &arrange.Take{
		Stand:   s.standKeys(),
		Picture: s.linePicture(stop.Point),
		Lay:     s.layKey(),
		Decimal: s.typeKey("key.decimal", s.decimalSign(), m.Decimal),
		Erase:   part.NewNarrowKey("key.erase", part.Ordinary, s.lang.Say("screen.erase"), func() { s.types(m.Erase) }),
		More:    part.NewWordKey("more", part.Standing, s.lang.Say("screen.more"), s.does(m.OpenMore)),
		Keep:    s.keepKeys(keep),
		Hint:    part.NewText(s.lang.Place(stop.Point), 14, 20, part.Quiet).AtTop(),
	}
	name := s.stopName(stop)
	asked := s.lang.Question(stop.Point)
	if m.Page() == take.Height {
		name, asked = s.lang.Say("screen.height.name"), s.lang.Say("screen.type_height")
		hub, _ := measure.PointOf("hub.height")
		lay.Picture, lay.Hint = s.linePicture(hub), part.NewText(s.lang.Place(hub), 14, 20, part.Quiet).AtTop()
		lay.More = part.NewWordKey("back", part.Standing, s.lang.Say("screen.back"), func() { s.goBack() })
	}
	if r := m.Reversing(); r != nil && m.Page() == take.Keypad {
		asked = s.lang.Say("screen.zero.lay")
		if r.Second() {
			asked = s.lang.Say("screen.zero.lay_turned")
		}
		lay.Stand, lay.Lay = []fyne.CanvasObject{s.reversalField(r)}, nil
		lay.Picture = laidPicture(m.Lying(), s.lang.Say("screen.front"))
		lay.More = part.NewNarrowKey("zero.end", part.Standing, s.lang.Say("screen.zero.end"), s.does(m.EndReversal))
	}
	if old, ok := m.Correcting(); ok {
		asked = s.lang.Say("screen.correct.type")
		if stop.Point.Sense != measure.Unsigned {
			asked = s.lang.Say("screen.correct.side")
		}
		lay.Stand, lay.Lay = []fyne.CanvasObject{s.correctionField(old)}, nil
		end := s.leaveCorrection()
		lay.More = part.NewNarrowKey(end.name, end.kind, end.words, end.tap)
	}
	words := part.NewText(asked, 13, 24, part.Plain).Bold()
	lay.Question = words
	number := part.NewText("", 22, 52, part.Plain).Bold()
	number.Align = fyne.TextAlignTrailing
	lay.Display = part.NewField(part.NewEndsFace(s.stopWords(name), number, numberShare(name)))
	for d := range lay.Digits {
		lay.Digits[d] = s.typeKey("key."+strconv.Itoa(d), strconv.Itoa(d), func() { m.Digit(d) })
	}
	lay.Left = s.set.Left()
	redraw := func() {
		number.Say(s.shown())
		ink, text := part.Plain, asked
		if failure := s.failure(); failure != "" {
			ink, text = part.Risk, failure
		}
		words.Ink = ink
		words.Say(text)
		words.Refresh()
	}
	redraw()
	return page{object: container.New(lay, takeObjects(lay)...), redraw: redraw, enter: keep}
}

func takeObjects(l *arrange.Take) []fyne.CanvasObject {
	objects := append([]fyne.CanvasObject{}, l.Stand...)
	if l.Lay != nil {
		objects = append(objects, l.Lay)
	}
	objects = append(objects, l.Picture, l.Question, l.Hint, l.Display)
	objects = append(objects, l.Digits[:]...)
	return append(append(objects, l.Decimal, l.Erase, l.More), l.Keep...)
}

// keepKeys is the key that keeps, or where the number has a side the two that keep it with its side.
func (s *Screen) keepKeys(keep func()) []fyne.CanvasObject {
	m := s.take
	if !m.TakesSide() {
		return []fyne.CanvasObject{part.NewKey("keep", part.Main, part.NewText(s.lang.Say("screen.keep"), 24, 40, part.OnIt).Bold().Centred(), keep)}
	}
	var keys []fyne.CanvasObject
	sense := m.Stop().Point.Sense
	for _, side := range []struct {
		name     string
		positive bool
	}{{"yes", true}, {"no", false}} {
		picture := part.NewPicture(func() draw.Page { return tool.Side(sense, side.positive) }, "")
		words := part.NewText(s.lang.Say("screen.side."+string(sense)+"."+side.name), part.Held, 20, part.Plain)
		keys = append(keys, part.NewKey("keep."+side.name, part.Siding, part.NewSideFace(picture, words.Bold().Centred()),
			s.does(func() { m.KeepSide(side.positive) })))
	}
	return keys
}

// typeKey is a key that changes the half-typed value.
func (s *Screen) typeKey(name, sign string, change func()) fyne.CanvasObject {
	face := part.NewText(sign, 24, 46, part.Plain).Bold().Centred()
	return part.NewKey(name, part.Ordinary, face, func() { s.types(change) })
}

// decimalSign is what the key between the digits types.
func (s *Screen) decimalSign() string {
	switch {
	case s.take.Minutes():
		return "°"
	case s.lang.Comma:
		return ","
	}
	return "."
}

// shown is the number on the display with its unit.
func (s *Screen) shown() string {
	if typed := s.take.Typed(); s.take.Minutes() && !typed.Empty() {
		return strings.Replace(typed.Minutes(), "'", "′", 1)
	}
	text := s.take.Typed().Text(s.lang.Comma)
	if text == "" {
		text = "–"
	}
	unit := s.lang.Unit(string(s.take.Unit()))
	if unit == "" || unit == "°" {
		return text + unit
	}
	return text + part.Tied + unit
}

// numberShare is how much of the display's width the number gets: less beside a long name.
func numberShare(name string) float32 {
	if utf8.RuneCountInString(name) > 34 {
		return 0.42
	}
	return 0.52
}

// longName is the longest name that leaves room for a second line below it.
const longName = 22

// stopWords names the stop and, where the name leaves room, says where it is on the route.
func (s *Screen) stopWords(name string) fyne.CanvasObject {
	at, of := s.take.Place()
	below := ""
	_, correcting := s.take.Correcting()
	switch taken := s.take.Stop().Taken; {
	case correcting:
	case taken == 1:
		below = s.lang.Say("screen.once")
	case taken > 1:
		below = s.lang.Say("screen.repeat", taken)
	case at > 0:
		below = s.lang.Say("screen.place", at, of)
	}
	heading := part.NewText(name, 11, 18, part.Plain).Bold()
	if utf8.RuneCountInString(name) > longName {
		return heading
	}
	return container.New(halves{}, heading, part.NewText(below, 10, 15, part.Quiet))
}

// halves puts one thing over another.
type halves struct{}

func (halves) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (halves) Layout(o []fyne.CanvasObject, size fyne.Size) {
	upper := size.Height * 0.58
	o[0].Resize(fyne.NewSize(size.Width, upper))
	o[1].Move(fyne.NewPos(0, upper))
	o[1].Resize(fyne.NewSize(size.Width, size.Height-upper))
}

// evenly puts one thing over another of the same height.
type evenly struct{}

func (evenly) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }

func (evenly) Layout(o []fyne.CanvasObject, size fyne.Size) {
	for i, child := range o {
		child.Move(fyne.NewPos(0, float32(i)*size.Height/2))
		child.Resize(fyne.NewSize(size.Width, size.Height/2))
	}
}

// linePicture shows where the tool goes for a point, as the vehicle stands at the stop.
func (s *Screen) linePicture(p measure.Point) *part.Picture {
	scene := tool.Scene{Point: p, State: s.take.Stop().State, Shafts: s.take.Build().Layout.Shafts}
	return part.NewPicture(func() draw.Page { return tool.Line(scene) }, s.lang.Say("screen.front"))
}

// standKeys are the three keys that say how the vehicle stands; each leads to a page that changes it.
func (s *Screen) standKeys() []fyne.CanvasObject {
	m := s.take
	stand, state := m.Stand(), m.Stop().State
	load := ""
	if state.Load != "" {
		load = s.lang.Say("screen.load." + string(state.Load))
	}
	height := s.lang.Say("screen.height.none")
	if !stand.Height.IsZero() {
		height = s.lang.Entered(measure.Reading{Value: stand.Height, Unit: "mm"})
	}
	key := func(name, heading string, tap func(), lines ...string) fyne.CanvasObject {
		var texts []*part.Text
		for _, l := range lines {
			if strings.TrimSpace(l) != "" {
				texts = append(texts, part.NewText(l, 13, 20, part.Plain).Bold())
			}
		}
		return part.NewKey(name, part.Standing, part.NewStackFace(part.NewText(heading, 12, 14, part.Quiet), texts...), s.does(tap))
	}
	return []fyne.CanvasObject{
		key("stand.state", s.lang.Say("screen.stance"), m.OpenStances, s.lang.Say("screen.stance."+string(state.Ride)), load),
		key("stand.height", s.lang.Say("screen.height"), m.OpenHeight, height),
		key("stand.setup", s.lang.Say("screen.setup"), m.OpenSetup, strconv.Itoa(stand.Setup)),
	}
}
