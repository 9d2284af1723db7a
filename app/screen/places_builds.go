package screen

import (
	"slices"
	"strings"
	"time"

	"fyne.io/fyne/v2"

	"yokebook/app/places"
	"yokebook/app/screen/part"
	"yokebook/checks"
	"yokebook/measure"
)

// standing lists how the builds stand in the place, those that are not synced first.
func (v *placeVisit) standing(s *Screen) []places.Standing {
	list, err := s.sharing.Standing(v.address)
	if err != nil {
		s.err = err
	}
	slices.SortStableFunc(list, func(a, b places.Standing) int {
		switch {
		case a.Synced == b.Synced:
			return strings.Compare(a.Title, b.Title)
		case b.Synced:
			return -1
		}
		return 1
	})
	return list
}

// count says how many builds are synced, of how many.
func (v *placeVisit) count(s *Screen) (synced, of int) {
	list := v.standing(s)
	for _, b := range list {
		if b.Synced {
			synced++
		}
	}
	return synced, len(list)
}

// buildsPage lists the builds with how many readings are here and there, and what moved.
func (v *placeVisit) buildsPage(s *Screen) page {
	list := v.standing(s)
	lines := make([]func() fyne.CanvasObject, len(list))
	synced := 0
	for i, b := range list {
		if b.Synced {
			synced++
		}
		lines[i] = func() fyne.CanvasObject { return s.standingRow(b) }
	}
	const room = 142 // two lines of title, three of what it says
	return s.linesOf(v.counted(s, synced, len(list)), lines, room)
}

// counted says how many builds are synced; where the newest pass did not come to its end, as of an
// earlier one.
func (v *placeVisit) counted(s *Screen, synced, of int) string {
	if p, known := s.sharing.Pass(v.address); known && p.Err != nil {
		return s.lang.Say("place.builds.then", synced, of)
	}
	return s.lang.Say("place.builds", synced, of)
}

func (s *Screen) standingRow(b places.Standing) fyne.CanvasObject {
	mark, text := checks.Clear, s.lang.Say("place.build.synced", b.Here, b.There)
	switch {
	case !b.Known:
		mark, text = checks.Waiting, s.lang.Say("place.build.unknown", b.Here)
	case !b.Synced:
		mark, text = checks.Unsure, s.lang.Say("place.build.not", b.Here, b.There)
	}
	if at, err := time.Parse(time.RFC3339Nano, b.LastAt); err == nil {
		text = s.lang.Say("place.build.last", text, s.deviceName(b.LastDevice), clock(at))
	}
	if b.Came.Total()+b.Went.Total() > 0 {
		text = s.lang.Say("place.build.moved", text, b.Came.Total(), b.Went.Total())
	}
	if b.Conflicts > 0 {
		text = s.lang.Say("place.build.conflicts", text, b.Conflicts)
	}
	title := b.Title
	if title == "" {
		title = s.lang.Say("screen.builds.untitled")
	}
	return part.NewField(part.NewRowFace(part.NewMark(mark), part.NewText(title, part.Held, 19, part.Plain).Bold(),
		part.NewText(text, part.Held, 17, part.VerdictInk(mark))))
}

// deviceName is what a person calls a device: by the name under which it was paired, else the end of
// its id.
func (s *Screen) deviceName(id measure.ID) string {
	if id == s.sharing.Device() {
		return s.lang.Say("place.device.this")
	}
	paired, _ := s.sharing.Places.Paired() // a list that can't be read costs a name
	for _, d := range paired {
		if d.ID == id && d.Name != "" {
			return d.Name
		}
	}
	text := string(id)
	return s.lang.Say("place.device.other", text[max(0, len(text)-6):])
}

// breakable lets long words without blanks, such as paths and addresses, be broken behind a slash,
// and otherwise after so many letters.
func breakable(text string) string {
	const longest = 18
	var out strings.Builder
	run := 0
	for _, r := range text {
		out.WriteRune(r)
		run++
		switch {
		case r == ' ' || r == '\n':
			run = 0
		case r == '/' && run > 8 || run >= longest:
			out.WriteString(part.Break)
			run = 0
		}
	}
	return out.String()
}
