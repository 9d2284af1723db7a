// Package run opens the window on this device's builds. It alone links the toolkit's drivers, so
// that the screens are tested without a display.
package run

import (
	"fmt"
	"os"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"yokebook/app/logbook"
	"yokebook/app/screen"
	"yokebook/app/words"
)

// appID names the program to the system.
const appID = "io.github.yokebook"

// Window opens the window on the builds in the folder home and returns when it is closed. Nothing
// is lost when the program is killed instead: what was kept is on the disk. On a phone the builds
// lie in the program's own storage, which is the only folder it may write to.
func Window(home string) error {
	a := app.NewWithID(appID)
	if fyne.CurrentDevice().IsMobile() && os.Getenv("YOKEBOOK_HOME") == "" {
		home = a.Storage().RootURI().Path()
	}
	shelf, err := logbook.OpenShelf(home, logbook.System())
	if err != nil {
		return err
	}
	w, s := screen.Open(a, screen.OnShelf(shelf), words.English)
	a.Lifecycle().SetOnStopped(func() {
		if err := s.Close(); err != nil {
			fmt.Fprintln(os.Stderr, err)
		}
	})
	w.ShowAndRun()
	return shelf.Close()
}
