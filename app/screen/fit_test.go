package screen

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"yokebook/app/screen/part"
	"yokebook/app/screen/settle"
	"yokebook/app/screen/take"
	"yokebook/app/words"
	"yokebook/measure"
	"yokebook/measure/route"
)

// limits is what a size of window asks of a page.
type limits struct {
	size     fyne.Size
	key, gap float32
}

// Keys are at least so large and so far apart, in units of 1/160 inch:
//
//	15 mm keys, 3 mm gaps = 94.5 and 18.9 units; 12 mm = 75.6 units
//
// Source: judgement from the gloved-hand rows of MIL-STD-1472 (from memory) and the 7 to 10 mm that
// Android recommends for bare hands (support.google.com/accessibility/android/answer/7101858).
var least = []limits{
	{phone, 95, 19},
	{onSide, 95, 19},
	{desktop, 95, 19},
	{small, 76, 12},
}

func leastOf(size fyne.Size) limits {
	for _, l := range least {
		if l.size == size {
			return l
		}
	}
	return limits{size: size}
}

// checkFit fails unless keys are large enough and far enough apart and lie on the glass, all texts stand
// whole in their places and beside each other, and the page asks for no more room than there is.
func checkFit(d *desk, page string, l limits) {
	d.t.Helper()
	checkKeys(d.t, d, page, l.key, l.gap)
	checkTexts(d.t, d, page)
	checkApart(d, page)
	if min := d.s.Content().MinSize(); min.Width > l.size.Width || min.Height > l.size.Height {
		d.t.Errorf("%s needs %v", page, min)
	}
}

// Every page in the other languages at every size, and with the largest text that one can choose: as
// checkFit asks. Of the first language, and of a phone at the middle size of text, the goldens say so.
func TestEveryPageFitsInEveryLanguage(t *testing.T) {
	for _, lang := range words.Languages {
		for _, l := range least {
			for _, text := range []string{"middle", "large"} {
				if text == "middle" && (lang == words.English || l.size == phone) || text == "large" && l.size != phone {
					continue
				}
				t.Run(lang.Tag+" "+sizeName(l.size)+" "+text, func(t *testing.T) {
					d := openDeskIn(t, lang, t.TempDir(), l.size, false)
					d.s.choose(settle.Text, text)
					d.s.show()
					album(d, func(page string) { checkFit(d, page, l) })
				})
			}
		}
	}
}

// checkApart fails where two texts, or a text and a bar, are drawn over each other.
func checkApart(d *desk, page string) {
	d.t.Helper()
	type drawn struct {
		what string
		at   fyne.Position
		size fyne.Size
	}
	var all []drawn
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, at fyne.Position) {
		switch o := o.(type) {
		case *part.Text:
			if o.Words != "" {
				all = append(all, drawn{o.Words, at, o.Size()})
			}
		case *part.Bar:
			all = append(all, drawn{"a bar", at, o.Size()})
		}
	})
	const hair = 1
	for i, a := range all {
		for _, b := range all[:i] {
			across := min(a.at.X+a.size.Width, b.at.X+b.size.Width) - max(a.at.X, b.at.X)
			down := min(a.at.Y+a.size.Height, b.at.Y+b.size.Height) - max(a.at.Y, b.at.Y)
			if across > hair && down > hair {
				d.t.Errorf("%s: %q and %q lie over each other by %.0f × %.0f", page, a.what, b.what, across, down)
			}
		}
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
