// Command empty opens a window of the toolkit that holds nothing, of the size of ours: what the start,
// the memory and the size of the program are measured against. With an argument the window holds that
// one line, which tells what the toolkit takes for its first text.
package main

import (
	"os"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"fyne.io/fyne/v2/widget"
)

func main() {
	w := app.NewWithID("io.github.yokebook.empty").NewWindow("empty")
	w.SetPadded(false)
	if len(os.Args) > 1 {
		w.SetContent(widget.NewLabel(os.Args[1]))
	}
	w.Resize(fyne.NewSize(411, 914))
	w.ShowAndRun()
}
