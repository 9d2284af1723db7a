package part

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/mobile"
	"fyne.io/fyne/v2/widget"
)

// Entry is the field of a page where one writes. On a phone the back key goes to the field that has
// the keyboard, and the toolkit's own keeps it: a person would be held there.
type Entry struct {
	widget.Entry
	Back func() // the back key of a phone; nil: nothing
}

// NewEntry returns a field of one line, whose text is hidden where it is secret.
func NewEntry(secret bool, back func()) *Entry {
	e := &Entry{Entry: widget.Entry{Password: secret, Wrapping: fyne.TextWrap(fyne.TextTruncateClip)}, Back: back}
	e.ExtendBaseWidget(e)
	return e
}

// TypedKey is called by the toolkit.
func (e *Entry) TypedKey(k *fyne.KeyEvent) {
	if k.Name == mobile.KeyBack {
		if e.Back != nil {
			e.Back()
		}
		return
	}
	e.Entry.TypedKey(k)
}
