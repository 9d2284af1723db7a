package screen

import (
	"context"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"yokebook/app/logbook"
	"yokebook/app/screen/look"
	"yokebook/app/screen/part"
	"yokebook/app/screen/settle"
	"yokebook/app/screen/shelve"
	"yokebook/app/words"
	"yokebook/measure"
)

// house is what the screens keep apart from the open build.
type house struct {
	racks     shelve.Model
	reached   int // row of the list from which a build was opened last
	set       settle.Settings
	unsettled error           // why the settings could not be read; until they are saved again
	spoken    *words.Language // by the device
}

// cabinet is what the screens ask of the shelf for the list of builds and the settings.
type cabinet interface {
	Glance() ([]logbook.Listing, error)
	Freshen(ctx context.Context, most int) ([]logbook.Listing, error)
	ImportAll(ctx context.Context, files []logbook.FileIn, told func(done int)) []logbook.TakenIn
	Duplicate(from measure.ID, title string) (Book, error)
	Settings() ([]byte, error)
	SaveSettings(data []byte, damaged bool) error
}

func (s onShelf) Duplicate(from measure.ID, title string) (Book, error) {
	b, err := s.Shelf.Duplicate(from, title)
	if err != nil {
		return nil, err
	}
	return b, nil
}

// settleIn reads the settings and puts the language into effect.
func (s *Screen) settleIn(device *words.Language) {
	s.spoken = device
	data, err := s.shelf.Settings()
	if err == nil {
		s.set, err = settle.Read(data)
	}
	s.unsettled = err
	s.lang = s.set.Speaks(device)
}

// look is the theme that is chosen.
func (s *Screen) look() look.Theme {
	var t look.Theme
	switch s.set.Value(settle.Theme) {
	case "light":
		t = look.Held(false)
	case "dark":
		t = look.Held(true)
	case "sun":
		v := theme.VariantLight
		t = look.Theme{Sun: true, Fixed: &v}
	}
	switch s.set.Value(settle.Text) {
	case "small":
		t.Text = look.SmallText
	case "large":
		t.Text = look.LargeText
	}
	return t
}

// choose sets one thing: at once, and for the next start.
func (s *Screen) choose(key settle.Key, choice string) {
	s.set = s.set.With(key, choice)
	s.lang = s.set.Speaks(s.spoken)
	s.preferUnits()
	if key == settle.Theme || key == settle.Text {
		fyne.CurrentApp().Settings().SetTheme(s.look())
	}
	data, err := s.set.Bytes()
	if err == nil {
		err = s.shelf.SaveSettings(data, s.unsettled != nil)
	}
	if s.err = err; err == nil {
		s.unsettled = nil
	}
}

// preferUnits tells the Take screen which units one types in.
func (s *Screen) preferUnits() {
	if s.take != nil {
		s.take.Prefer(s.set.Units().Of)
	}
}

// settings are the pages of the settings: all of them, or the choices of one.
type settings struct{ at settle.Key }

func (v *settings) mark() string { return "settings:" + string(v.at) }

func (v *settings) back(*Screen) bool {
	had := v.at != ""
	v.at = ""
	return had
}

func (v *settings) page(s *Screen) page {
	for _, row := range settle.Table() {
		if row.Key == v.at {
			return v.choices(s, row)
		}
	}
	table := settle.Table()
	title := s.lang.Say("settings")
	if s.unsettled != nil {
		title = s.lang.Say("settings.damaged", s.unsettled.Error())
	}
	if s.err != nil {
		title = s.lang.Say("settings.unsaved", s.err.Error())
	}
	var p page
	for _, row := range table {
		p.answers = append(p.answers, s.does(func() { v.at = row.Key }))
	}
	rows := part.NewRows(len(table), s.sizes, func(i int) fyne.CanvasObject {
		row := table[i]
		return part.NewKey("setting."+string(row.Key), part.Row, part.NewStackFace(
			part.NewText(s.lang.Say("settings."+string(row.Key)), part.Held, 18, part.Quiet),
			part.NewText(sentence(s.choiceWords(row.Key, s.set.Value(row.Key))), part.Held, 22, part.Plain).Bold()), p.answers[i])
	})
	p.object = s.listPage(title, rows, s.backKey())
	return p
}

// choices asks for one setting. What is chosen stands out.
func (v *settings) choices(s *Screen, row settle.Row) page {
	q := question{title: s.lang.Say("settings." + string(row.Key)), foot: s.back()}
	for _, choice := range row.Choices {
		kind := part.Ordinary
		if choice == s.set.Value(row.Key) {
			kind = part.Chosen
		}
		q.answers = append(q.answers, answer{name: "choice." + choice, words: sentence(s.choiceWords(row.Key, choice)), kind: kind,
			tap: s.does(func() {
				s.choose(row.Key, choice)
				v.at = ""
			})})
	}
	return s.ask(q)
}

// choiceWords are the words for a choice; languages are named in themselves.
func (s *Screen) choiceWords(key settle.Key, choice string) string {
	if key == settle.Language {
		for _, l := range words.Languages {
			if l.Tag == choice {
				return l.Name
			}
		}
	}
	return s.lang.Say("settings." + string(key) + "." + choice)
}
