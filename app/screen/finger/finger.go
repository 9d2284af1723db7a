//go:build mobile

package finger

import (
	"reflect"
	"time"
	"unsafe"

	"fyne.io/fyne/v2"
)

// Glass is the glass of one window of the phone's driver.
type Glass struct {
	driver, window unsafe.Pointer
	scale          float32
	down           reflect.Value // map of when which finger came down
}

// On returns the glass of a window of the phone's driver.
func On(a fyne.App, w fyne.Window) Glass {
	d := a.Driver()
	down := reflect.ValueOf(w.Canvas()).Elem().FieldByName("lastTapDown")
	return Glass{driver: inside(&d), window: insideWindow(&w), scale: w.Canvas().Scale(),
		down: reflect.NewAt(down.Type(), unsafe.Pointer(down.UnsafeAddr())).Elem()}
}

// Held lets a finger that is on the glass be there so long, without waiting for it.
func (g Glass) Held(finger int, long time.Duration) {
	g.down.SetMapIndex(reflect.ValueOf(finger), reflect.ValueOf(time.Now().Add(-long)))
}

// Down puts a finger on the glass; fingers are told apart by number.
func (g Glass) Down(at fyne.Position, finger int) {
	tapDown(g.driver, g.window, at.X*g.scale, at.Y*g.scale, int64(finger))
}

// Move moves a finger that is on the glass.
func (g Glass) Move(to fyne.Position, finger int) {
	tapMove(g.driver, g.window, to.X*g.scale, to.Y*g.scale, int64(finger))
}

// Up takes a finger off the glass.
func (g Glass) Up(at fyne.Position, finger int) {
	tapUp(g.driver, g.window, at.X*g.scale, at.Y*g.scale, int64(finger))
}

// inside and insideWindow are the pointers that an interface holds.
func inside(d *fyne.Driver) unsafe.Pointer       { return (*[2]unsafe.Pointer)(unsafe.Pointer(d))[1] }
func insideWindow(w *fyne.Window) unsafe.Pointer { return (*[2]unsafe.Pointer)(unsafe.Pointer(w))[1] }

//go:linkname tapDown fyne.io/fyne/v2/internal/driver/mobile.(*driver).tapDownCanvas
func tapDown(driver, window unsafe.Pointer, x, y float32, finger int64)

//go:linkname tapMove fyne.io/fyne/v2/internal/driver/mobile.(*driver).tapMoveCanvas
func tapMove(driver, window unsafe.Pointer, x, y float32, finger int64)

//go:linkname tapUp fyne.io/fyne/v2/internal/driver/mobile.(*driver).tapUpCanvas
func tapUp(driver, window unsafe.Pointer, x, y float32, finger int64)
