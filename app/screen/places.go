package screen

import (
	"context"
	"errors"
	"time"

	"fyne.io/fyne/v2"

	"yokebook/app/places"
	"yokebook/app/screen/part"
	"yokebook/app/screen/share"
	"yokebook/checks"
	buildsync "yokebook/sync"
)

// shareRoom is how high a row of the pages of places is at least: two lines of title, and two of what
// it says.
const shareRoom = 108

// placesVisit is the list of places.
type placesVisit struct{}

func (placesVisit) mark() string      { return "places" }
func (placesVisit) back(*Screen) bool { return false }
func (placesVisit) live() bool        { return true }

func (v placesVisit) page(s *Screen) page {
	if s.sharing == nil { // it is opened again, and the places are not there yet
		return s.ask(question{title: s.lang.Say("offer.begins"), foot: s.back()})
	}
	list, err := s.sharing.Places.List()
	if err != nil {
		s.err = err
	}
	var lines []func() fyne.CanvasObject
	for _, x := range list {
		lines = append(lines, func() fyne.CanvasObject { return s.placeRow(x) })
	}
	add := func(name string, words string, tap func()) {
		lines = append(lines, func() fyne.CanvasObject { return part.NewWordKey(name, part.Row, words, s.does(tap)) })
	}
	add("places.add", s.lang.Say("places.add"), func() { s.revive(&addVisit{}) })
	offer := "places.offer"
	if o := s.sharing.Offering(); o != nil && o.Ready {
		offer = "places.offer.on"
	}
	add("places.offer", s.lang.Say(offer), func() { s.visit(&offerVisit{}) })
	if s.device.Pickers != nil {
		add("places.files", s.lang.Say("places.files"), func() { s.revive(s.newFiles()) })
	}
	title := s.lang.Say("places.title")
	if len(list) == 0 {
		title = s.lang.Say("places.none")
	}
	return s.linesPage(title, lines)
}

// linesPage is a page of rows of all kinds under a title, or under what did not work.
func (s *Screen) linesPage(title string, lines []func() fyne.CanvasObject) page {
	return s.linesOf(title, lines, shareRoom)
}

// linesOf is linesPage with rows of a height at least.
func (s *Screen) linesOf(title string, lines []func() fyne.CanvasObject, least float32) page {
	if failure := s.failure(); failure != "" {
		title = breakable(failure)
	}
	rows := part.NewRows(len(lines), s.sizes, func(i int) fyne.CanvasObject { return lines[i]() })
	rows.Least = least
	return page{object: s.listPage(title, rows, s.backKey())}
}

func (s *Screen) placeRow(x places.Place) fyne.CanvasObject {
	mark, line := s.placeState(x)
	if mark == checks.Out || mark == checks.Unsure {
		line = s.lang.Say("places.trouble") // its own page says what
	}
	auto := "places.asked"
	if x.Auto {
		auto = "places.auto"
	}
	face := part.NewRowFace(part.NewMark(mark), part.NewText(breakable(x.Address), part.Held, 20, part.Plain).Bold(),
		part.NewText(s.lang.Say("places.row", line, s.lang.Say(auto)), part.Held, 17, part.VerdictInk(mark)))
	return part.NewKey("place."+x.Address, part.Row, face, s.does(func() { s.visit(&placeVisit{address: x.Address}) }))
}

// placeState is the shape and the line for how it stands with a place.
func (s *Screen) placeState(x places.Place) (checks.Verdict, string) {
	p, known := s.sharing.Pass(x.Address)
	switch {
	case known && p.Waiting:
		return checks.Waiting, s.lang.Say("places.waits")
	case known && p.Running:
		return checks.Waiting, s.stepLine(p.Step)
	case known && errors.Is(p.Err, share.ErrStopped):
		return checks.Unsure, s.lang.Say("places.stopped")
	case known && p.Err != nil:
		return checks.Out, s.problem(p.Err.Error())
	case known && !p.Report.OK():
		return checks.Unsure, s.faults(p.Report)
	case x.Fault != "":
		return checks.Unsure, s.problem(x.Fault)
	case x.Last.IsZero():
		return checks.Unsaid, s.lang.Say("places.never")
	}
	return checks.Clear, s.lang.Say("places.good", clock(x.Last))
}

func (s *Screen) stepLine(step buildsync.Step) string {
	if step.Of == 0 {
		return s.lang.Say("places.starts")
	}
	return s.lang.Say("places.step."+step.Phase, step.Done+1, step.Of)
}

// problem is a line about what did not work in a place.
func (s *Screen) problem(line string) string {
	return breakable(s.lang.Say("places.bad", s.lang.Fault(line)))
}

// faults are the faults of a pass in one line.
func (s *Screen) faults(r buildsync.Report) string {
	f := r.Faults[0]
	line := s.lang.Say("cli.sync."+string(f.Kind), s.lang.Fault(f.Line))
	if n := len(r.Faults) - 1; n > 0 {
		line = s.lang.Say("place.more", line, n)
	}
	return breakable(sentence(line))
}

func clock(at time.Time) string { return at.Local().Format("2006-01-02 15:04") }

// placeVisit is one place.
type placeVisit struct {
	address string
	asks    string      // "" or what is asked back: "tidy", "forget"
	builds  bool        // its builds are shown
	kept    places.Kept // where its password just went
}

func (v *placeVisit) mark() string {
	return markOf("place", placeMark{v.address, v.asks, v.builds})
}

// placeMark is what the page of a place shows.
type placeMark struct {
	Address string `json:"address"`
	Asks    string `json:"asks"`
	Builds  bool   `json:"builds"`
}

func (v *placeVisit) live() bool { return v.asks == "" }

func (v *placeVisit) back(*Screen) bool {
	inside := v.asks != "" || v.builds
	v.asks, v.builds = "", false
	return inside
}

func (v *placeVisit) page(s *Screen) page {
	if s.sharing == nil { // it is opened again, and the places are not there yet
		return s.ask(question{title: s.lang.Say("offer.begins"), foot: s.back()})
	}
	switch {
	case v.asks == "tidy":
		return v.askTidy(s)
	case v.asks == "forget":
		return v.askForget(s)
	case v.builds:
		return v.buildsPage(s)
	}
	x := v.place(s)
	p, known := s.sharing.Pass(v.address)
	going := known && (p.Running || p.Waiting)
	lines := []func() fyne.CanvasObject{func() fyne.CanvasObject { return v.stateField(s, x, p) }}
	if v.kept != places.KeptNowhere {
		lines = append(lines, func() fyne.CanvasObject { return s.textField(s.lang.Say("places.kept."+string(v.kept)), part.Plain) })
	}
	add := func(name string, kind part.Kind, words string, tap func()) {
		lines = append(lines, func() fyne.CanvasObject { return part.NewWordKey(name, kind, words, s.does(tap)) })
	}
	if going {
		add("place.stop", part.Standing, s.lang.Say("place.stop"), func() { s.sharing.Stop(v.address) })
	} else {
		add("place.sync", part.Main, s.lang.Say("place.sync"), func() {
			v.kept = places.KeptNowhere
			s.sharing.Sync(v.address, false)
		})
	}
	synced, of := v.count(s)
	add("place.builds", part.Row, v.counted(s, synced, of), func() { v.builds = true })
	auto := "place.auto.off"
	if x.Auto {
		auto = "place.auto.on"
	}
	add("place.auto", part.Row, s.lang.Say(auto), func() { s.err = s.sharing.Places.SetAuto(v.address, !x.Auto) })
	if n := len(s.sharing.Copies(v.address)); n > 0 {
		add("place.tidy", part.Row, s.lang.Say("place.tidy", n), func() { v.asks = "tidy" })
	}
	if n := s.sharing.Tidied(v.address); n > 0 {
		add("place.back", part.Row, s.lang.Say("place.back", n), func() { s.tasks(s.sharing.PutBack(v.address)) })
	}
	if !going {
		add("place.all", part.Row, s.lang.Say("place.all"), func() { s.sharing.Sync(v.address, true) })
	}
	add("place.forget", part.Risky, s.lang.Say("place.forget"), func() { v.asks = "forget" })
	return s.linesPage(breakable(v.address), lines)
}

// place is the place as it is listed.
func (v *placeVisit) place(s *Screen) places.Place {
	list, err := s.sharing.Places.List()
	if err != nil {
		s.err = err
	}
	for _, x := range list {
		if x.Address == v.address {
			return x
		}
	}
	return places.Place{Address: v.address}
}

// stateField says how it stands: what goes on, what did not work, what came and went.
func (v *placeVisit) stateField(s *Screen, x places.Place, p share.Pass) fyne.CanvasObject {
	mark, line := s.placeState(x)
	if mark == checks.Out || mark == checks.Unsure {
		return s.textField(line, part.VerdictInk(mark))
	}
	moved := s.lang.Say("place.state")
	if came, went := total(p.Report); came+went > 0 {
		moved = s.lang.Say("place.moved", came, went)
	}
	return part.NewField(part.NewRowFace(part.NewMark(mark), part.NewText(sentence(moved), part.Held, 18, part.Plain).Bold(),
		part.NewText(line, part.Held, 18, part.VerdictInk(mark))))
}

// textField is a row with one text.
func (s *Screen) textField(text string, ink part.Ink) fyne.CanvasObject {
	return part.NewField(part.NewText(sentence(text), part.Held, 18, ink))
}

func total(r buildsync.Report) (came, went int) {
	for _, b := range r.Builds {
		came += b.Came.Total()
		went += b.Went.Total()
	}
	return came, went
}

func (v *placeVisit) askTidy(s *Screen) page {
	names := s.sharing.Copies(v.address)
	return s.ask(question{title: s.lang.Say("place.tidy.ask", len(names)), note: s.lang.Say("place.tidy.note"), answers: []answer{
		{name: "tidy.yes", words: s.lang.Say("place.tidy.yes"), kind: part.Risky, tap: s.does(func() {
			v.asks = ""
			s.tasks(s.sharing.Tidy(v.address))
		})},
		{name: "back", words: s.lang.Say("place.no"), tap: func() { s.goBack() }},
	}})
}

func (v *placeVisit) askForget(s *Screen) page {
	return s.ask(question{title: s.lang.Say("place.forget.ask"), note: breakable(s.lang.Say("place.forget.note", v.address)), answers: []answer{
		{name: "forget.yes", words: s.lang.Say("place.forget.yes"), kind: part.Risky, tap: s.does(func() {
			if s.err = s.sharing.Forget(v.address); s.err == nil {
				s.drop(v)
			}
		})},
		{name: "back", words: s.lang.Say("place.no"), tap: func() { s.goBack() }},
	}})
}

// tasks runs a task of the places for the page that is shown.
func (s *Screen) tasks(t share.Task) {
	if t == nil {
		return
	}
	s.work(func(ctx context.Context) func() {
		finish := t(ctx)
		return func() {
			if err := finish(); err != nil && !errors.Is(err, context.Canceled) {
				s.err = err
			}
		}
	})
}
