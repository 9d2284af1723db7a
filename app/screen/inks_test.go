package screen

import (
	"image/color"
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"yokebook/app/screen/look"
	"yokebook/app/screen/part"
	"yokebook/app/words"
)

// leastContrast is the least contrast of everything that is read: 4.5:1 is level AA (success criterion
// 1.4.3 of WCAG 2.2, w3.org/TR/WCAG22), 7:1 is level AAA (1.4.6) and asked of the theme for the sun.
func leastContrast() float64 {
	if look.Now() == look.Sun {
		return 7
	}
	return 4.5
}

// written is an ink on what lies beneath it.
type written struct {
	what       string
	ink, under color.NRGBA
}

// inks are all texts, marks and bars of the page, in the order in which they are painted, each with the
// colour of what was painted there last before it.
func (d *desk) inks() []written {
	type ground struct {
		at    fyne.Position
		size  fyne.Size
		paint color.NRGBA
	}
	grounds := []ground{{size: d.w.Canvas().Size(), paint: look.Now().Paper}}
	under := func(p fyne.Position) color.NRGBA {
		for i := len(grounds) - 1; ; i-- {
			g := grounds[i]
			if i == 0 || p.X >= g.at.X && p.Y >= g.at.Y && p.X < g.at.X+g.size.Width && p.Y < g.at.Y+g.size.Height {
				return g.paint
			}
		}
	}
	var out []written
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, at fyne.Position) {
		middle := at.AddXY(o.Size().Width/2, o.Size().Height/2)
		switch o := o.(type) {
		case *canvas.Rectangle:
			if c := nrgba(o.FillColor); c.A == 0xFF && o.Size().Width > 0 && o.Size().Height > 0 {
				grounds = append(grounds, ground{at, o.Size(), c})
			}
		case *canvas.Text:
			if o.Text != "" {
				out = append(out, written{o.Text, nrgba(o.Color), under(middle)})
			}
		case *part.Picture:
			out = append(out, written{"a mark, or what a picture points at", o.Ink(), under(middle)})
		case *part.Bar:
			out = append(out, written{"a bar", o.Ink(), under(at)})
		}
	})
	return out
}

func nrgba(c color.Color) color.NRGBA {
	if c == nil {
		return color.NRGBA{}
	}
	return color.NRGBAModel.Convert(c).(color.NRGBA)
}

// contrast is the contrast ratio of WCAG 2.2; package look tests the formula against published pairs.
func contrast(a, b color.NRGBA) float64 {
	bright, dull := luminance(a), luminance(b)
	return (max(bright, dull) + 0.05) / (min(bright, dull) + 0.05)
}

func luminance(c color.NRGBA) float64 {
	linear := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// checkInks fails where something of the page does not stand out from what lies beneath it. It returns
// the pairs of colours.
func checkInks(d *desk, page string) map[string]bool {
	d.t.Helper()
	pairs := map[string]bool{}
	for _, w := range d.inks() {
		pair := inkName(w.ink) + " on " + inkName(w.under)
		if pairs[pair] {
			continue
		}
		pairs[pair] = true
		if got := contrast(w.ink, w.under); w.ink.A != 0xFF || got < leastContrast() {
			d.t.Errorf("%s: %q is %s at %.2f:1, want %g:1", page, w.what, pair, got, leastContrast())
		}
	}
	return pairs
}

// On every page of the other albums, in every theme, all that is read stands out from what it is drawn
// on; of the pages at the stops the goldens say so.
func TestEveryInkStandsOutFromItsGround(t *testing.T) {
	for _, theme := range []string{"light", "dark", "sun"} {
		t.Run(theme, func(t *testing.T) {
			pairs, g := map[string]bool{}, pane{phone, theme, words.English}
			see := func(d *desk, page string) {
				for pair := range checkInks(d, page) {
					pairs[pair] = true
				}
			}
			for _, a := range albums {
				switch a.name {
				case "": // seen in the goldens
				case "drawing-":
					d := g.desk(t).drawings("demo")
					gallery(d, func(page string) { see(d, page) })
				default:
					a.see(t, g, see)
				}
			}
			if len(pairs) < 10 {
				t.Errorf("only %d pairs of colours: %v", len(pairs), pairs)
			}
		})
	}
}
