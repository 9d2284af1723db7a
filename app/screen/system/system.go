package system

import (
	"fmt"
	"os"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/mobile"

	"yokebook/app/device"
)

// Of is the device under a window.
func Of(a fyne.App, w fyne.Window) device.Device {
	return device.Device{
		Pickers:   NewPickers(w),
		Lamp:      lamp{a.Driver()},
		Clipboard: clipboard{a},
		Exit:      exit{a.Driver()},
	}
}

type lamp struct{ driver fyne.Driver }

func (l lamp) StayLit(on bool) { l.driver.SetDisableScreenBlanking(on) }

type clipboard struct{ app fyne.App }

func (c clipboard) Copy(text string) { c.app.Clipboard().SetContent(text) }

type exit struct{ driver fyne.Driver }

// Leave goes to what was shown before the program, on a phone. Elsewhere a window has its own way.
func (e exit) Leave() {
	if phone, ok := e.driver.(mobile.Driver); ok {
		phone.GoBack()
	}
}

// Storage is the folder of an app: on a phone the one that the system gave it, elsewhere Home's.
// $YOKEBOOK_HOME goes before both.
type Storage struct {
	App    fyne.App
	Mobile bool
	Home   func() (string, error)
}

var _ device.Storage = Storage{}

// Root is described at device.Storage.
func (s Storage) Root() (string, error) {
	if !s.Mobile || os.Getenv("YOKEBOOK_HOME") != "" {
		return s.Home()
	}
	root := s.App.Storage().RootURI()
	if root == nil || root.Scheme() != "file" {
		return "", fmt.Errorf("storage: the system gave no folder to keep builds in (%v); start the program again", root)
	}
	return root.Path(), nil
}
