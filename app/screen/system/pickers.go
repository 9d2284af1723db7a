// Package system does through the window toolkit what package device asks for: the system's dialogs
// on a phone, the toolkit's own on a desk.
package system

import (
	"io"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"yokebook/app/device"
)

// Pickers lets files be chosen over a window. On a phone a dialog calls back on a thread of the
// system's, and a stream may wait for a network: so reading and writing go on beside the window, and
// what is done comes back to the window's goroutine.
type Pickers struct {
	window fyne.Window
	apart  func(func()) // runs beside the window
	post   func(func()) // runs on the window's goroutine
}

var _ device.Pickers = (*Pickers)(nil)

// NewPickers returns the pickers of a window.
func NewPickers(w fyne.Window) *Pickers {
	return &Pickers{window: w, apart: func(f func()) { go f() }, post: fyne.Do}
}

// Save is described at device.Pickers.
func (p *Pickers) Save(name string, data []byte, done func(error)) {
	d := dialog.NewFileSave(func(to fyne.URIWriteCloser, err error) { p.save(to, err, name, data, done) }, p.window)
	d.SetFileName(name)
	d.Resize(p.window.Canvas().Size())
	d.Show()
}

// save goes on when a place was chosen, or none.
func (p *Pickers) save(to fyne.URIWriteCloser, err error, name string, data []byte, done func(error)) {
	if to == nil && err == nil {
		err = device.ErrDismissed
	}
	if err != nil {
		p.post(func() { done(err) })
		return
	}
	p.apart(func() {
		err := device.Write(name, data,
			func() (io.WriteCloser, error) { return to, nil },
			func() (io.ReadCloser, error) { return storage.Reader(to.URI()) })
		p.post(func() { done(err) })
	})
}

// Open is described at device.Pickers. It reads one file: neither the dialogs of a phone nor those
// of the toolkit give several.
func (p *Pickers) Open(done func(files []device.Picked, err error)) {
	d := dialog.NewFileOpen(func(from fyne.URIReadCloser, err error) { p.open(from, err, done) }, p.window)
	d.Resize(p.window.Canvas().Size())
	d.Show()
}

// open goes on when a file was chosen, or none.
func (p *Pickers) open(from fyne.URIReadCloser, err error, done func([]device.Picked, error)) {
	if from == nil && err == nil {
		err = device.ErrDismissed
	}
	if err != nil {
		p.post(func() { done(nil, err) })
		return
	}
	p.apart(func() {
		name := from.URI().Name()
		data, err := device.Read(name, func() (io.ReadCloser, error) { return from, nil })
		p.post(func() {
			if err != nil {
				done(nil, err)
				return
			}
			done([]device.Picked{{Name: name, Data: data}}, nil)
		})
	})
}
