package screen

import (
	"strings"

	"fyne.io/fyne/v2/container"

	"yokebook/app/logbook"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/checks"
)

// told is the page that tells how a build was read back from the disk, when there is anything to
// tell: what was recovered from where, and what could not be. It is left to begin work.
func (s *Screen) told() page {
	var lines []string
	for _, n := range s.tell {
		lines = append(lines, strings.Split(s.lang.Message(n), "; ")...)
	}
	box := container.NewVBox()
	addText(box, s.lang.Say("screen.told.note"), lines...)
	goOn := s.does(func() { s.tell = nil })
	lay := &arrange.Finding{
		Title:   part.NewText(s.take.Build().Title, 13, 24, part.Plain).Bold(),
		Mark:    part.NewMark(checks.Unsure),
		Verdict: part.NewText(s.lang.Say("screen.told"), 13, 22, part.VerdictInk(checks.Unsure)).Bold(),
		Value:   part.NewText(s.lang.Say("screen.told.kept"), 13, 18, part.Plain),
		Body:    container.NewVScroll(box),
		Back:    part.NewWordKey("told.ok", part.Main, s.lang.Say("screen.told.ok"), goOn),
	}
	return page{object: container.New(lay, lay.Title, lay.Mark, lay.Verdict, lay.Value, lay.Body, lay.Back), enter: goOn}
}

// damageLine says in one line on the page of all builds that there is something to tell of one;
// "" when there is not.
func (s *Screen) damageLine(l logbook.Listing) string {
	switch {
	case l.Aside > 0:
		return s.lang.Say("screen.builds.aside", l.Aside)
	case len(l.Notes) > 0:
		return s.lang.Say("screen.builds.mended")
	}
	return ""
}
