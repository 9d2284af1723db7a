// Package run opens the window on this device's builds. It alone links the toolkit's drivers, so
// that the screens are tested without a display.
package run

import (
	"fmt"
	"os"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"yokebook/app/logbook"
	"yokebook/app/places"
	"yokebook/app/screen"
	"yokebook/app/screen/system"
	"yokebook/app/words"
)

// appID names the program to the system.
const appID = "io.github.yokebook"

// Window opens the window on the builds in the folder that home gives, and returns when it is closed.
// Nothing is lost when the program is killed instead: what was kept is on the disk. On a phone the
// builds lie in the program's own storage, the only folder that it may write to; home is not asked
// there, since a phone has none to give.
func Window(home func() (string, error)) error {
	a := app.NewWithID(appID)
	mobile := fyne.CurrentDevice().IsMobile()
	root, err := system.Storage{App: a, Mobile: mobile, Home: home}.Root()
	if err != nil {
		return err
	}
	shelf, err := logbook.OpenShelf(root, logbook.System())
	if err != nil {
		return err
	}
	w, s := screen.Open(a, screen.OnShelf(shelf), words.English)
	ps := places.Open(shelf.Dir(), time.Now)
	ps.Vault = places.SystemVault()
	s.Connect(ps, shelf)
	defer s.Disconnect()
	s.On(system.Of(a, w))
	live(a.Lifecycle(), s, mobile)
	w.ShowAndRun()
	return shelf.Close()
}

// live ties the screens to the life of the program. On a phone a window that was closed may be opened
// again without the program starting anew, and the end of the program is not told: there the build
// stays open, and all is made safe each time another program comes to the front.
func live(l fyne.Lifecycle, s *screen.Screen, mobile bool) {
	l.SetOnExitedForeground(func() { fyne.Do(s.Background) })
	if mobile {
		return
	}
	l.SetOnStopped(func() {
		if err := s.Close(); err != nil {
			fmt.Fprintln(os.Stderr, err)
		}
	})
}
