package screen

import (
	"context"
	"errors"
	"image"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"yokebook/app/device"
	"yokebook/app/draw"
	"yokebook/app/screen/arrange"
	"yokebook/app/screen/part"
	"yokebook/app/sheet"
	"yokebook/app/words"
	"yokebook/checks"
)

// sheetPixels are the pixels that one unit of a page is shown with.
const sheetPixels = 1.5

// handoverVisit makes the order sheet for a shaft builder: how it is written, what it looks like, and
// where it goes.
type handoverVisit struct {
	paper sheet.Paper
	units words.Units
	lang  *words.Language
	said  string // how the last thing went

	again   bool // the pages were looked at when the program ended: they are to be made again
	looking bool // at the pages
	pages   []image.Image
	at      int
	large   bool // as large as on paper, to be moved about
}

func (v *handoverVisit) mark() string {
	return markOf("handover", handoverMark{v.paper.Name, v.units, v.lang.Tag, v.looking, v.at, v.large})
}

// handoverMark is how the sheet is written, and what of it is looked at.
type handoverMark struct {
	Paper   string      `json:"paper"`
	Units   words.Units `json:"units"`
	Lang    string      `json:"lang"`
	Looking bool        `json:"looking"`
	At      int         `json:"at"`
	Large   bool        `json:"large"`
}

// handoverOf is the page as it was.
func (s *Screen) handoverOf(m handoverMark) *handoverVisit {
	v := s.newHandover()
	for _, p := range sheet.Papers {
		if p.Name == m.Paper {
			v.paper = p
		}
	}
	if slices.Contains(words.AllUnits, m.Units) {
		v.units = m.Units
	}
	for _, l := range words.Languages {
		if l.Tag == m.Lang {
			v.lang = l
		}
	}
	v.again, v.at, v.large = m.Looking, max(0, m.At), m.Large
	return v
}

// newHandover begins with what the window speaks, on A4.
func (s *Screen) newHandover() *handoverVisit {
	return &handoverVisit{paper: sheet.A4, units: words.Metric, lang: s.lang}
}

func (v *handoverVisit) back(*Screen) bool {
	switch {
	case v.large:
		v.large = false
	case v.looking:
		v.looking, v.pages, v.at = false, nil, 0
	default:
		return false
	}
	return true
}

func (v *handoverVisit) page(s *Screen) page {
	if v.again {
		v.again = false
		v.look(s)
	}
	switch {
	case v.looking && len(v.pages) > 0:
		return v.shown(s)
	case v.looking:
		return s.ask(question{title: s.lang.Say("handover.writing"), note: s.lang.Say("handover.writing.note"), foot: s.back()})
	}
	title := s.lang.Say("handover.title")
	switch {
	case s.working():
		title = s.lang.Say("handover.writing")
	case v.said != "":
		title = breakable(v.said)
	}
	return s.entries(title, v.list(s))
}

// list is what can be done with the sheet, and how it is written.
func (v *handoverVisit) list(s *Screen) []entry {
	list := []entry{{"handover.look", s.lang.Say("handover.look"), func() { v.look(s) }}}
	if s.device.Pickers != nil {
		list = append(list, entry{"handover.pdf", s.lang.Say("handover.pdf"), func() { v.save(s, ".pdf") }},
			entry{"handover.html", s.lang.Say("handover.html"), func() { v.save(s, ".html") }},
			entry{"handover.txt", s.lang.Say("handover.txt"), func() { v.save(s, ".txt") }})
	}
	if s.device.Clipboard != nil {
		list = append(list, entry{"handover.copy", s.lang.Say("handover.copy"), func() { v.copy(s) }})
	}
	choose := func(name string, said func() string, next func()) {
		list = append(list, entry{name, said(), func() {
			next()
			v.said = said() // the list begins at its top again, where the row may be out of sight
		}})
	}
	choose("handover.paper", func() string { return s.lang.Say("handover.paper", s.lang.Say("handover.paper."+v.paper.Name)) },
		func() { v.paper = after(sheet.Papers, v.paper) })
	choose("handover.units", func() string { return s.lang.Say("handover.units", s.lang.Say("handover.units."+string(v.units))) },
		func() { v.units = after(words.AllUnits, v.units) })
	if len(words.Languages) > 1 {
		choose("handover.lang", func() string { return s.lang.Say("handover.lang", v.lang.Name) }, v.nextLanguage)
	}
	return list
}

func (v *handoverVisit) nextLanguage() {
	i := slices.IndexFunc(words.Languages, func(l *words.Language) bool { return l.Tag == v.lang.Tag })
	v.lang = words.Languages[(i+1)%len(words.Languages)]
}

// after is the choice that follows one, the first after the last.
func after[T comparable](all []T, one T) T { return all[(slices.Index(all, one)+1)%len(all)] }

// making makes the sheet of the open build, beside the window.
func (v *handoverVisit) making(s *Screen, then func(context.Context, *sheet.Sheet) (func(), error)) {
	build, found, o := s.take.Build(), &checks.Result{Findings: s.book.Findings()}, sheet.Options{Paper: v.paper, Units: v.units, Language: v.lang}
	v.said = ""
	s.work(func(ctx context.Context) func() {
		made, err := sheet.Make(build, found, o)
		var finish func()
		if err == nil && ctx.Err() == nil {
			finish, err = then(ctx, made)
		}
		return func() {
			if s.err = err; err == nil && finish != nil {
				finish()
			}
		}
	})
}

// look shows the pages as they will be printed.
func (v *handoverVisit) look(s *Screen) {
	v.looking = true
	v.making(s, func(ctx context.Context, made *sheet.Sheet) (func(), error) {
		var pages []image.Image
		for _, p := range made.Pages() {
			if ctx.Err() != nil {
				return nil, nil
			}
			pages = append(pages, p.Image(draw.Light, sheetPixels))
		}
		return func() { v.pages, v.at = pages, min(v.at, len(pages)-1) }, nil
	})
}

// save writes the sheet and asks where to.
func (v *handoverVisit) save(s *Screen, ending string) {
	v.making(s, func(_ context.Context, made *sheet.Sheet) (func(), error) {
		data, err := sheet.Forms[ending](made)
		return func() {
			s.device.Pickers.Save("order-"+made.Code+ending, data, func(err error) {
				switch {
				case err == nil:
					v.said = s.lang.Say("handover.saved", made.Code)
				case !errors.Is(err, device.ErrDismissed):
					s.err = err
				}
				s.show()
			})
		}, err
	})
}

// copy puts the text form where a message can take it from.
func (v *handoverVisit) copy(s *Screen) {
	v.making(s, func(_ context.Context, made *sheet.Sheet) (func(), error) {
		text := string(made.Text())
		return func() {
			s.device.Clipboard.Copy(text)
			v.said = s.lang.Say("handover.copied", made.Code)
		}, nil
	})
}

// shown is one page of the sheet, whole or as large as on paper.
func (v *handoverVisit) shown(s *Screen) page {
	picture := canvas.NewImageFromImage(v.pages[v.at])
	picture.FillMode = canvas.ImageFillContain
	var object fyne.CanvasObject = picture
	zoom := s.lang.Say("handover.large")
	if v.large {
		size := v.pages[v.at].Bounds().Size()
		picture.SetMinSize(fyne.NewSize(float32(size.X)/sheetPixels, float32(size.Y)/sheetPixels))
		object, zoom = container.NewScroll(picture), s.lang.Say("handover.whole")
	}
	turn := s.does(func() { v.at = (v.at + 1) % len(v.pages) })
	lay := &arrange.Drawing{Picture: object, Keys: []fyne.CanvasObject{
		s.backKey(),
		part.NewWordKey("handover.large", part.Ordinary, zoom, s.does(func() { v.large = !v.large })),
		part.NewWordKey("handover.turn", part.Main, s.lang.Say("handover.turn", v.at+1, len(v.pages)), turn),
	}}
	return page{object: container.New(lay, append([]fyne.CanvasObject{object}, lay.Keys...)...), enter: turn}
}
