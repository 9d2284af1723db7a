package screen

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"yokebook/app/device"
)

// counter is a device that takes what is saved and copied.
type counter struct {
	name   string
	data   []byte
	copied string
	err    error
}

func (c *counter) Save(name string, data []byte, done func(error)) {
	c.name, c.data = name, data
	done(c.err)
}
func (c *counter) Open(func([]device.Picked, error)) {}
func (c *counter) Copy(text string)                  { c.copied = text }

// onHandover opens an invented build on the page that hands it over.
func onHandover(t *testing.T, size fyne.Size, dark bool) (*desk, *counter) {
	t.Helper()
	return openDesk(t, size, dark).handover()
}

// handover takes an invented build in and goes to the page that hands it over.
func (d *desk) handover() (*desk, *counter) {
	d.t.Helper()
	c := &counter{}
	d.drawings("links-two-piece")
	d.s.inline = true
	d.s.On(device.Device{Pickers: c, Clipboard: c})
	d.tap("back")
	for !d.has("more.handover") && d.turn("down") {
	}
	return d.tap("more.handover"), c
}

// counterAlbum visits every page of the handing over.
func counterAlbum(d *desk, shot func(name string)) {
	shot("handover")
	d.tap("handover.look")
	shot("handover-page")
	d.tap("handover.large")
	shot("handover-large")
	d.tap("back", "handover.turn", "handover.turn")
	shot("handover-last")
	d.tap("back")
}

func TestASheetIsSavedInEveryForm(t *testing.T) {
	d, c := onHandover(t, phone, false)
	for _, f := range []struct{ key, ending, begins string }{
		{"handover.pdf", ".pdf", "%PDF-"}, {"handover.html", ".html", "<!DOCTYPE html>"}, {"handover.txt", ".txt", "NOT FOR MANUFACTURE"},
	} {
		d.tap(f.key)
		if !bytes.HasPrefix(c.data, []byte(f.begins)) || !strings.HasPrefix(c.name, "order-") || !strings.HasSuffix(c.name, f.ending) {
			t.Errorf("%s: saved %s, begins with %.20q", f.key, c.name, c.data)
		}
		if code := strings.TrimSuffix(strings.TrimPrefix(c.name, "order-"), f.ending); !strings.Contains(d.text(), "Saved and read back. Check code "+code) {
			t.Errorf("%s: the page says %q", f.key, d.text())
		}
	}
	c.err = errors.New("the card is full")
	d.tap("handover.pdf")
	if !strings.Contains(d.text(), "The card is full") {
		t.Errorf("a full card is not told: %q", d.text())
	}
	c.err = device.ErrDismissed
	d.tap("handover.pdf")
	if strings.Contains(d.text(), "Saved") {
		t.Error("nothing was chosen, and it says saved")
	}
}

func TestASheetIsCopiedInTheUnitsChosen(t *testing.T) {
	d, c := onHandover(t, small, false)
	for !d.has("handover.units") && d.turn("down") {
	}
	d.tap("handover.units")
	if !strings.Contains(d.text(), "inches and pounds") {
		t.Fatalf("the page says %q", d.text())
	}
	for !d.has("handover.copy") && d.turn("up") {
	}
	d.tap("handover.copy")
	if !strings.Contains(c.copied, " in") || strings.Contains(c.copied, "35 mm") || !strings.HasPrefix(c.copied, "NOT FOR MANUFACTURE") {
		t.Errorf("copied %.300q", c.copied)
	}
}

func TestThePagesAreTurnedOver(t *testing.T) {
	d, _ := onHandover(t, onSide, false)
	d.tap("handover.look")
	for _, want := range []string{"1 of 3", "2 of 3", "3 of 3", "1 of 3"} {
		if !strings.Contains(d.text(), want) {
			t.Errorf("the page says %q, not %q", d.text(), want)
		}
		d.tap("handover.turn")
	}
	d.tap("handover.large", "back", "back")
	if !d.has("handover.look") {
		t.Error("back does not lead to the page that hands over")
	}
}

func TestTheHandoverIsOpenAgainAfterARestart(t *testing.T) {
	d, _ := onHandover(t, phone, false)
	d.restart()
	if !d.has("handover.look") {
		t.Errorf("after a restart the page says %q", d.text())
	}
}

// Gaps and sizes of keys hold on these pages as on the others.
func TestHandoverKeysAreLargeAndApart(t *testing.T) {
	for _, l := range least {
		d, _ := onHandover(t, l.size, false)
		counterAlbum(d, func(page string) {
			checkKeys(t, d, page, l.key, l.gap)
			checkTexts(t, d, page)
			if min := d.s.Content().MinSize(); min.Width > l.size.Width || min.Height > l.size.Height {
				t.Errorf("%s needs %v on %v", page, min, l.size)
			}
		})
	}
}
