package screen

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/part"
	"yokebook/app/screen/take"
	"yokebook/measure"
	"yokebook/measure/route"
)

// Keys are at least so large and so far apart, in units of 1/160 inch:
//
//	15 mm keys, 3 mm gaps = 94.5 and 18.9 units; 12 mm = 75.6 units
//
// Source: judgement from the gloved-hand rows of MIL-STD-1472 (from memory) and the 7 to 10 mm that
// Android recommends for bare hands (support.google.com/accessibility/android/answer/7101858).
var least = []struct {
	size     fyne.Size
	key, gap float32
}{
	{phone, 95, 19},
	{onSide, 95, 19},
	{desktop, 95, 19},
	{small, 76, 12},
}

// Every page, at every size: keys are large enough and far enough apart, they lie on the glass, all
// texts stand whole in their places, and the page asks for no more room than there is.
func TestEveryPageFits(t *testing.T) {
	for _, l := range least {
		t.Run(fmt.Sprintf("%.0fx%.0f", l.size.Width, l.size.Height), func(t *testing.T) {
			d := openDesk(t, l.size, false)
			album(d, func(page string) {
				checkKeys(t, d, page, l.key, l.gap)
				checkTexts(t, d, page)
				if min := d.s.Content().MinSize(); min.Width > l.size.Width || min.Height > l.size.Height {
					t.Errorf("%s needs %v", page, min)
				}
			})
		})
	}
}

// Every point of the table has its question, its picture and its answers whole on every glass.
func TestEveryPointFits(t *testing.T) {
	for _, l := range least {
		t.Run(fmt.Sprintf("%.0fx%.0f", l.size.Width, l.size.Height), func(t *testing.T) {
			d := openDesk(t, l.size, false)
			d.newBuild("Invented estate")
			for _, p := range measure.Points {
				d.s.take.Go(route.Stop{Point: p, State: measure.OffBench, Taken: 12})
				if d.s.take.Page() == take.Caution {
					d.s.take.Heeded()
				}
				d.s.show()
				checkKeys(t, d, p.Key, l.key, l.gap)
				checkTexts(t, d, p.Key)
				if p.Sense != measure.Unsigned {
					d.tap("key.8", "key.8").press(fyne.KeyReturn)
					checkTexts(t, d, p.Key+" side")
				}
			}
		})
	}
}

func checkKeys(t *testing.T, d *desk, page string, key, gap float32) {
	t.Helper()
	const hair = 0.01 // of rounding
	glass := d.w.Canvas().Size()
	spots := d.spots()
	for i, s := range spots {
		if s.key == nil {
			continue // an entry, on the pages where one writes
		}
		if s.size.Width < key-hair || s.size.Height < key-hair {
			t.Errorf("%s: %s is %.0f × %.0f, want %.0f", page, s.name, s.size.Width, s.size.Height, key)
		}
		if s.pos.X < 0 || s.pos.Y < 0 || s.pos.X+s.size.Width > glass.Width+hair || s.pos.Y+s.size.Height > glass.Height+hair {
			t.Errorf("%s: %s lies beyond the glass: %v %v", page, s.name, s.pos, s.size)
		}
		for _, o := range spots[:i] {
			if o.key != nil && apart(s, o) < gap-hair {
				t.Errorf("%s: %s and %s are %.1f apart, want %.0f", page, s.name, o.name, apart(s, o), gap)
			}
		}
	}
}

// apart is the gap between two keys: the larger of the gaps across and down.
func apart(a, b spot) float32 {
	across := max(b.pos.X-(a.pos.X+a.size.Width), a.pos.X-(b.pos.X+b.size.Width))
	down := max(b.pos.Y-(a.pos.Y+a.size.Height), a.pos.Y-(b.pos.Y+b.size.Height))
	return max(across, down)
}

func checkTexts(t *testing.T, d *desk, page string) {
	t.Helper()
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, at fyne.Position) {
		if text, ok := o.(*part.Text); ok && text.Size().Width > 0 && !text.Fits() {
			t.Errorf("%s: %q does not fit into %v", page, text.Words, text.Size())
		}
		if scroll, ok := o.(*container.Scroll); ok && scroll.Direction == container.ScrollVerticalOnly && scroll.Content.Size().Width > scroll.Size().Width+0.5 {
			t.Errorf("%s: a long text is %.0f wide and cut at %.0f", page, scroll.Content.Size().Width, scroll.Size().Width)
		}
	})
}
