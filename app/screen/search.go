package screen

import (
	"strings"
	"unicode/utf8"

	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
)

// searching is the list of builds while one searches in it.
type searching struct{ query string }

// mark is how the search is found again after the program was killed.
func (v *searching) mark() string { return "search:" + v.query }

// back leaves the search; all builds are shown again.
func (v *searching) back(*Screen) bool { return false }

// page has the entry over the rows. Each letter changes the rows and nothing else.
func (v *searching) page(s *Screen) page {
	if !s.racks.Loaded() {
		s.builds()
	}
	s.racks.Find(v.query)
	rows := s.buildRows()
	none := part.NewText("", part.Held, 20, part.Quiet).AtTop()
	entry := s.entry()
	entry.SetPlaceHolder(s.lang.Say("builds.search.hint"))
	entry.SetText(v.query)
	atEnd(entry)
	entry.OnChanged = func(text string) {
		v.query = text
		s.remember()
		s.racks.Find(text)
		rows.Count = s.racks.Count()
		rows.Reach(0)
		rows.Refresh()
		rows.Laid()
		none.Say(v.nothing(s))
	}
	none.Say(v.nothing(s))
	back := part.NewWordKey("back", part.Standing, s.lang.Say("builds.search.all"), func() { s.goBack() })
	list := s.listUnder(container.New(arrange.Written{}, entry), true, rows, back)
	return page{object: container.NewStack(container.New(arrange.Below{Sizes: s.sizes}, none), list), focus: entry,
		enter: func() { s.openFirst(rows.Count) }}
}

// nothing says that no build has the words; "" where one has.
func (v *searching) nothing(s *Screen) string {
	if s.racks.Count() > 0 || strings.TrimSpace(v.query) == "" {
		return ""
	}
	return s.lang.Say("builds.search.none")
}

// openFirst opens the first build of a search.
func (s *Screen) openFirst(count int) {
	if count == 0 {
		return
	}
	id := s.racks.At(0).ID
	s.does(func() {
		s.visits = nil
		s.open(s.shelf.Open(id))
	})()
}

// buildsMore is what else can be done from the list of builds.
type buildsMore struct{}

func (buildsMore) mark() string      { return "builds" }
func (buildsMore) back(*Screen) bool { return false }

func (buildsMore) page(s *Screen) page {
	if !s.racks.Loaded() { // it is opened again
		s.builds()
	}
	var list []entry
	add := func(name, words string, tap func()) { list = append(list, entry{name, words, tap}) }
	if s.device.Pickers != nil {
		add("import", s.lang.Say("builds.import"), s.pickFiles)
	}
	if s.racks.All() > 0 {
		add("duplicate", s.lang.Say("builds.duplicate"), func() { s.revive(&again{}) })
	}
	if s.sharing != nil {
		add("places", s.lang.Say("places.open"), func() { s.visit(placesVisit{}) })
	}
	add("settings", s.lang.Say("settings"), func() { s.visit(&settings{}) })
	return s.entries(s.lang.Say("builds.more.title"), list)
}

// atEnd stands the cursor of an entry behind its text, where one goes on writing.
func atEnd(entry *part.Entry) { entry.CursorColumn = utf8.RuneCountInString(entry.Text) }
