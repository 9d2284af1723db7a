package screen

import (
	"fyne.io/fyne/v2"

	"yokebook/app/screen/look"
	"yokebook/app/words"
)

// first is the size of a new window on a desktop: that of a common phone, which also fits a laptop.
var first = fyne.NewSize(411, 914)

// Open makes the window of the program. The caller shows it and closes the screen when the window
// is gone.
func Open(a fyne.App, shelf Shelf, lang *words.Language) (fyne.Window, *Screen) {
	a.Settings().SetTheme(look.Theme{}) // its sizes, before anything is laid out
	s := New(shelf, lang)
	a.Settings().SetTheme(s.look())
	w := a.NewWindow(s.lang.Say("screen.title"))
	w.SetPadded(false)
	w.SetContent(s.Content())
	w.Resize(first)
	w.SetOnDropped(func(_ fyne.Position, files []fyne.URI) { s.dropped(files) })
	s.Listen(w.Canvas())
	return w, s
}
