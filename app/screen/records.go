package screen

import (
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/screen/take"
	"yokebook/checks"
	"yokebook/measure"
)

// records is the list of all readings, newest first or put together by what was read; a tap opens
// one. The key over it changes the order.
func (s *Screen) records() page {
	m := s.take
	list := m.Records()
	order, tap := "screen.records.time", "screen.records.tap.point"
	if m.ByPoint() {
		list, order, tap = m.RecordsByPoint(), "screen.records.by", "screen.records.tap.time"
	}
	lines := recordLines(list, m.ByPoint())
	rows := part.NewRows(len(lines), s.sizes, func(i int) fyne.CanvasObject {
		if l := lines[i]; l.of > 0 {
			head := s.lang.Say("screen.records.head", sentence(s.lang.Point(l.record.Reading.Point)), l.of)
			return part.NewText(head, part.Held, 18, part.Quiet).Bold()
		}
		return s.recordRow(lines[i].record)
	})
	rows.Least, rows.Head = twoLines, func(i int) bool { return lines[i].of > 0 }
	if len(list) == 0 {
		return page{object: s.listPage(s.lang.Say("screen.records.none"), rows, s.backKey())}
	}
	turn := s.does(m.SwitchOrder)
	face := part.NewRowFace(part.NewMark(checks.Unsaid), part.NewText(s.lang.Say(order, len(list)), part.Held, 20, part.Plain).Bold(),
		part.NewText(s.lang.Say(tap), part.Held, 17, part.Plain))
	return page{object: s.listUnder(part.NewKey("records.order", part.Standing, face, turn), true, rows, s.backKey()), answers: []func(){turn}}
}

// recordLine is a reading in the list, or the heading over so many of one point.
type recordLine struct {
	record take.Record
	of     int // 0: a reading
}

func recordLines(list []take.Record, headed bool) []recordLine {
	of := map[string]int{}
	for _, r := range list {
		of[r.Reading.Point]++
	}
	var out []recordLine
	for i, r := range list {
		if headed && (i == 0 || list[i-1].Reading.Point != r.Reading.Point) {
			out = append(out, recordLine{r, of[r.Reading.Point]})
		}
		out = append(out, recordLine{record: r})
	}
	return out
}

func (s *Screen) recordRow(r take.Record) fyne.CanvasObject {
	mark, _ := standing(r)
	title := part.NewText(s.namedValue(r.Reading), part.Held, 19, part.Plain).Bold()
	title.Struck = r.Standing == measure.Struck
	face := part.NewRowFace(part.NewMark(mark), title, part.NewText(strings.Join(s.rowFacts(r), " · "), part.Held, 16, part.Quiet))
	return part.NewKey("record."+string(r.Reading.ID), part.Row, face, s.does(func() { s.take.OpenRecord(r) }))
}

// rowFacts are what a row of the list says of a reading: when and how it was taken; of one that does
// not count why.
func (s *Screen) rowFacts(r take.Record) []string {
	facts := []string{s.lang.State(r.Reading.State())}
	if at := when(r.Reading); at != "" {
		facts = append([]string{at}, facts...)
	}
	if r.Standing != measure.Current {
		return append([]string{s.standingWords(r)}, facts[:len(facts)-1]...)
	}
	if r.Reading.Ride != measure.Bench {
		facts = append(facts, s.lang.Say("screen.record.setup", r.Reading.Setup))
	}
	if r.Reading.Instrument != "" {
		facts = append(facts, s.toolName(r.Reading.Instrument))
	}
	if r.Reading.Lay == "face" {
		facts = append(facts, s.lang.Say("screen.record.on_face"))
	}
	if from := s.fromElsewhere(r.Reading); from != "" {
		facts = append(facts, from)
	}
	return facts
}

// fromElsewhere names the device that a reading came from; "" for one of this device.
func (s *Screen) fromElsewhere(r measure.Reading) string {
	if r.Device == "" || r.Device == s.take.Device() {
		return ""
	}
	id := string(r.Device)
	return s.lang.Say("screen.record.by_other", id[max(0, len(id)-6):])
}

func (s *Screen) namedValue(r measure.Reading) string {
	return sentence(s.lang.Say("screen.kept.text", s.lang.Point(r.Point), s.sidedValue(r)))
}

// standing is the shape for what became of a reading, and the key of its word.
func standing(r take.Record) (checks.Verdict, string) {
	switch r.Standing {
	case measure.Struck:
		return checks.Out, "struck"
	case measure.Replaced:
		return checks.Unsaid, "replaced"
	case measure.Disputed:
		return checks.Unsure, "disputed"
	}
	return checks.Clear, "counts"
}

// standingWords says whether a reading counts, and why not.
func (s *Screen) standingWords(r take.Record) string {
	_, word := standing(r)
	if word == "replaced" {
		if by, ok := s.take.ReplacedBy(r.Reading.ID); ok {
			return s.lang.Say("screen.record.replaced_by", s.sidedValue(by))
		}
	}
	if word == "struck" && r.Reason != "" {
		return s.lang.Say("screen.record.struck_for", r.Reason)
	}
	return s.lang.Say("screen.record." + word)
}

// record is one reading opened: what was said of it, and the keys to correct or to strike it.
func (s *Screen) record() page {
	m := s.take
	r, ok := m.OpenedRecord()
	if !ok {
		return s.ask(question{title: s.lang.Say("screen.record.gone"), foot: s.back()})
	}
	mark, word := standing(r)
	value := part.NewText(s.sidedValue(r.Reading), 16, 26, part.Plain).Bold()
	value.Struck = r.Standing == measure.Struck
	said := part.NewText(s.lang.Say("screen.record."+word), part.Held, 22, part.VerdictInk(mark)).Bold()
	if failure := s.failure(); failure != "" {
		said = part.NewText(failure, part.Held, 22, part.Risk).Bold()
	}
	box := container.NewVBox()
	if r.Standing == measure.Struck || r.Standing == measure.Replaced {
		addText(box, s.lang.Say("screen.record.why"), s.standingWords(r))
	}
	addText(box, s.lang.Say("screen.record.how"), s.recordFacts(r.Reading)...)
	lay := &arrange.Finding{
		Title:   part.NewText(sentence(s.lang.Point(r.Reading.Point)), part.Held, 24, part.Plain).Bold(),
		Mark:    part.NewMark(mark),
		Verdict: said,
		Value:   value,
		Body:    container.NewVScroll(box),
		Back:    s.backKey(),
	}
	switch r.Standing {
	case measure.Current:
		lay.Acts = []fyne.CanvasObject{
			part.NewWordKey("correct", part.Main, s.lang.Say("screen.correct"), s.does(m.Correct)),
			part.NewWordKey("strike", part.Risky, s.lang.Say("screen.strike"), s.does(m.OpenReasons)),
		}
	case measure.Disputed:
		lay.Acts = []fyne.CanvasObject{part.NewWordKey("strike", part.Risky, s.lang.Say("screen.strike"), s.does(m.OpenReasons))}
	case measure.Struck:
		lay.Acts = []fyne.CanvasObject{part.NewWordKey("keep.again", part.Ordinary, s.lang.Say("screen.keep_again"), s.does(m.KeepOpened))}
	}
	objects := append([]fyne.CanvasObject{lay.Title, lay.Mark, lay.Verdict, lay.Value, lay.Body, lay.Back}, lay.Acts...)
	return page{object: container.New(lay, objects...)}
}

// recordFacts says how a reading was taken.
func (s *Screen) recordFacts(r measure.Reading) []string {
	facts := []string{sentence(s.lang.State(r.State())), sentence(s.lang.Basis(r.Basis))}
	if r.Ride != measure.Bench {
		facts = append(facts, sentence(s.lang.Say("screen.record.setup", r.Setup)))
	}
	if !r.Height.IsZero() {
		facts = append(facts, s.lang.Say("screen.record.height", s.lang.Entered(measure.Reading{Value: r.Height, Unit: "mm"})))
	}
	if r.Instrument != "" {
		facts = append(facts, s.lang.Say("screen.record.tool", s.toolName(r.Instrument)))
	}
	switch {
	case r.Lay == "face" && r.Way == 1:
		facts = append(facts, s.lang.Say("screen.record.face.1"))
	case r.Lay == "face" && r.Way == 2:
		facts = append(facts, s.lang.Say("screen.record.face.2"))
	case r.Lay == "face":
		facts = append(facts, sentence(s.lang.Say("screen.record.on_face")))
	case r.Way == 1:
		facts = append(facts, s.lang.Say("screen.laid.along.fore"))
	case r.Way == 2:
		facts = append(facts, s.lang.Say("screen.laid.along.aft"))
	}
	facts = append(facts, when(r))
	if from := s.fromElsewhere(r); from != "" {
		facts = append(facts, s.lang.Say("screen.record.there", from))
	} else {
		facts = append(facts, s.lang.Say("screen.record.here"))
	}
	if r.Replaces != "" {
		facts = append(facts, s.lang.Say("screen.record.corrects"))
	}
	if r.Tag != "" {
		facts = append(facts, s.obstacleName(r.Tag))
	}
	return append(facts, s.lang.By(r.By), r.Note)
}

// when is the time of a reading as the clock on the wall shows it here; "" where it has none.
func when(r measure.Reading) string {
	at, err := time.Parse(time.RFC3339Nano, r.At)
	if err != nil {
		return ""
	}
	return at.Local().Format("2006-01-02 15:04")
}

// strikeReasons are why a reading may be struck.
var strikeReasons = []string{"strike.misread", "strike.slipped", "strike.place", "strike.moved", "strike.state"}

// reasons asks why the opened reading is struck.
func (s *Screen) reasons() page {
	m := s.take
	q := question{title: s.lang.Say("screen.reasons")}
	for _, key := range strikeReasons {
		text := s.lang.Say(key)
		q.answers = append(q.answers, answer{name: key, words: text, tap: s.does(func() { m.StrikeOpened(text) })})
	}
	q.answers = append(q.answers, answer{name: "strike.other", words: s.lang.Say("strike.other"), tap: s.does(m.OpenReason)})
	q.foot = s.back()
	return s.ask(q)
}

// reason asks for the reason in writing.
func (s *Screen) reason() page {
	m := s.take
	entry := s.entry()
	entry.SetPlaceHolder(s.lang.Say("screen.reasons.hint"))
	s.noting(entry)
	strike := s.does(func() { m.StrikeOpened(strings.TrimSpace(entry.Text)) })
	entry.OnSubmitted = func(string) { strike() }
	p := s.ask(question{title: s.lang.Say("screen.reasons"), field: entry, answers: []answer{
		{name: "strike", words: s.lang.Say("screen.strike"), kind: part.Risky, tap: strike},
	}, foot: s.back()})
	p.focus = entry
	p.answers = nil
	return p
}

// correctionField stands in place of the keys of the stand while a reading is corrected.
func (s *Screen) correctionField(old measure.Reading) fyne.CanvasObject {
	how := s.lang.State(old.State())
	if old.Ride != measure.Bench {
		how += " · " + s.lang.Say("screen.record.setup", old.Setup)
	}
	return part.NewField(part.NewRowFace(part.NewMark(checks.Unsaid),
		part.NewText(s.lang.Say("screen.correcting", s.sidedValue(old)), part.Held, 20, part.Plain).Bold(), part.NewText(how, part.Held, 16, part.Quiet)))
}

// leaveCorrection is the answer that leaves a correction, on pages without a keypad.
func (s *Screen) leaveCorrection() *answer {
	return &answer{name: "correct.end", words: s.lang.Say("screen.zero.end"), kind: part.Standing, tap: s.does(s.take.EndCorrection)}
}

// changedHead is the heading over what a reading changed. A repeat that stands apart comes first.
func (s *Screen) changedHead(changed int) *part.Text {
	for _, r := range s.take.Repeats() {
		if r.Apart {
			return part.NewText(s.lang.Say("screen.repeats.apart", s.lang.Entered(r.Reading)), part.Held, 17, part.VerdictInk(checks.Unsure)).Bold()
		}
	}
	head := s.lang.Say("screen.changed")
	if changed == 0 {
		head = s.lang.Say("screen.changed.none")
	}
	return part.NewText(head, part.Held, 17, part.Quiet).Bold()
}

// repeatsStrip shows the repeats of the newest reading; nil where there is only one. The newest are
// shown, and the one that stands apart.
func (s *Screen) repeatsStrip() fyne.CanvasObject {
	all := s.take.Repeats()
	if len(all) < 2 {
		return nil
	}
	const most = 4
	shown := all[max(0, len(all)-most):]
	for _, r := range all[:len(all)-len(shown)] {
		if r.Apart {
			shown = append([]take.Repeat{r}, shown[1:]...)
		}
	}
	chips := make([]part.Chip, len(shown))
	for i, r := range shown {
		chips[i] = part.Chip{Words: s.lang.Entered(r.Reading), Apart: r.Apart}
	}
	word := s.lang.Say("screen.repeats", len(all))
	if len(shown) < len(all) {
		word = s.lang.Say("screen.repeats.some", len(shown), len(all))
	}
	return part.NewStrip(word, chips)
}
