package take

import (
	"errors"
	"slices"
	"strconv"
	"strings"

	"yokebook/app/logbook"
	"yokebook/checks"
	"yokebook/measure"
)

// correcting stands among the marks for a correction, which begins a pile of pages of its own.
const correcting = "correcting"

// asBuilt stands in the mark of the findings of the shaft as it was made.
const asBuilt = "built "

// pagesOver are the marks of the pages that lie over the stop, the lowest first, so that reopen can
// open them again. A page about a reading that was kept lies there in place of the stop.
func (m *Model) pagesOver() []string {
	var out []string
	add := func(pages []Page) {
		for _, p := range pages {
			out = append(out, m.markOf(p))
		}
	}
	if m.mending != nil {
		out = append(out, m.lowestMark(m.mending.pages[0])...)
		add(m.mending.pages[1:])
		out = append(out, correcting)
	}
	pages := append(slices.Clone(m.under), m.page)
	if m.mending == nil {
		out = append(out, m.lowestMark(pages[0])...)
	}
	add(pages[1:])
	return out
}

// markOf is the name of a page and, after a colon, what it is about.
func (m *Model) markOf(p Page) string {
	about := ""
	switch p {
	case Findings:
		about = string(m.filter)
		if m.built.on {
			about = asBuilt + about
		}
	case Finding:
		about = m.opened
	case Route: // by what settles most it is another list
		if m.useful.on {
			about = "by use"
		}
	case Records:
		if m.byPoint {
			about = "by point"
		}
	case OneRecord:
		about = m.record
	case Reason, SkipNote:
		about = m.Note()
	case OneGroup:
		about = string(m.looked)
	case Reverse:
		about = m.reversal.Tool
	case Laying:
		about = m.layingMark()
	case Doubts:
		about = strconv.Itoa(len(m.doubts)) + ":" + m.entry.Value.Token()
	case Refused:
		about = m.entry.Value.Token() + ":"
		if no := new(measure.Refusal); m.err != nil && !errors.As(m.err, &no) { // it may not be about a value
			about = ":" + m.err.Error()
		}
	}
	if about == "" {
		return string(p)
	}
	return string(p) + ":" + about
}

// layingMark says whether Keep waits for how the finder lies, and for which side.
func (m *Model) layingMark() string {
	switch {
	case !m.keeping:
		return ""
	case m.sided == nil:
		return "keep"
	}
	return "keep." + strconv.FormatBool(*m.sided)
}

// reopen opens the pages of a place over the stop, up to one that the build does not bear out any more.
func (m *Model) reopen(p logbook.Place) {
	pages := p.Pages
	if len(pages) == 0 && p.HeightAsked && m.page == Keypad {
		pages = []string{string(Height)}
	}
	for _, mark := range pages {
		name, about, _ := strings.Cut(mark, ":")
		switch lowest := Page(name); {
		case name == correcting:
			m.correctOn(p)
			continue
		case lowest == Result, lowest == Zero:
			if m.reopenKept(lowest, about) {
				continue
			}
			return
		}
		if !m.reopenOne(Page(name), about) {
			return
		}
	}
}

// reopenOne opens one page. It reports false where that is not possible.
func (m *Model) reopenOne(p Page, about string) bool {
	switch p {
	case More, Stances, Setup, Skips, Tools, Route, Rests, Groups, Obstacles, Height:
	case Findings:
		about, m.built.on = strings.CutPrefix(about, asBuilt)
		if v := checks.Verdict(about); slices.Contains(filters, v) {
			m.filter = v
		}
	case Finding:
		m.opened = about
	case Records:
		m.byPoint = about != ""
	case OneRecord, Reasons:
		if p == OneRecord {
			m.record = about
		}
		if _, ok := m.OpenedRecord(); !ok {
			return false
		}
	case Reason, SkipNote:
		m.open(p)
		m.Noting(about)
	case OneGroup:
		m.looked = measure.Group(about)
		if len(m.LookedAt().Stops) == 0 {
			return false
		}
	case Reverse:
		m.OpenReversal(about)
	case Laying:
		m.reopenLaying(about)
	case Sides:
		if m.page != Keypad || m.typed.Empty() || m.stop.Point.Sense == measure.Unsigned {
			return false
		}
	case Doubts:
		return m.reopenDoubts(about)
	case Refused:
		m.refuse(m.refusal(about))
	default:
		return false
	}
	if m.page != p {
		m.open(p)
	}
	return true
}

// refusal is why a value was refused: told in words of its own where the point refuses it still.
func (m *Model) refusal(about string) error {
	token, text, _ := strings.Cut(about, ":")
	if v, err := measure.NumberValue(token); err == nil {
		e := m.entryOf(v)
		if no := m.stop.Point.Possible(measure.Reading{Point: e.Point, Value: e.Value, Unit: e.Unit}); no != nil {
			m.entry = e
			return no
		}
	}
	return errors.New(text)
}

func (m *Model) reopenLaying(about string) {
	m.OpenLaying()
	keep, side, sided := strings.Cut(about, ".")
	if m.keeping = keep != ""; sided {
		positive := side == "true"
		m.sided = &positive
	}
}

// reopenDoubts asks about a value again; the doubts that were answered are the first ones.
func (m *Model) reopenDoubts(about string) bool {
	left, token, _ := strings.Cut(about, ":")
	n, err := strconv.Atoi(left)
	v, notNumber := measure.NumberValue(token)
	if err != nil || notNumber != nil {
		return false
	}
	e := m.entryOf(v)
	doubts := m.log.Doubts(e)
	if n < 1 || n > len(doubts) {
		return false
	}
	m.entry, m.doubts = e, doubts[len(doubts)-n:]
	m.open(Doubts)
	return true
}

func (m *Model) reasonNote() string { return "strike:" + m.record }
func (m *Model) skipNote() string {
	return "skip:" + m.stop.Point.Key + "|" + m.stop.State.String() + "|" + m.stop.Tag
}

// noted is what the text of the page is about; "" on a page without one.
func (m *Model) noted() string {
	pages := append(slices.Clone(m.under), m.page)
	switch {
	case slices.Contains(pages, Reason):
		return m.reasonNote()
	case slices.Contains(pages, SkipNote):
		return m.skipNote()
	}
	return ""
}

// Note is the half-written text of the pages Reason and SkipNote.
func (m *Model) Note() string { return m.notes[m.noted()] }

// Noting notes the half-written text of the pages Reason and SkipNote.
func (m *Model) Noting(text string) {
	if of := m.noted(); of != "" {
		m.notes[of] = text
	}
}

// OpenRests shows what the opened finding rests on.
func (m *Model) OpenRests() { m.open(Rests) }
