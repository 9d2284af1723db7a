package look

import (
	"image/color"
	"math"
	"testing"
)

// contrast is the ratio of WCAG 2.2, "contrast ratio" and "relative luminance" (w3.org/TR/WCAG22).
func contrast(a, b color.NRGBA) float64 {
	la, lb := luminance(a), luminance(b)
	if la < lb {
		la, lb = lb, la
	}
	return (la + 0.05) / (lb + 0.05)
}

func luminance(c color.NRGBA) float64 {
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// The formula itself, against published pairs: black on white 21:1; #777 on white just fails and
// #767676 just passes 4.5:1 (WebAIM contrast checker documentation).
func TestContrastFormula(t *testing.T) {
	white := hex(0xFFFFFF)
	for _, row := range []struct {
		text uint32
		want float64
	}{{0x000000, 21}, {0x777777, 4.478}, {0x767676, 4.542}, {0x0000FF, 8.592}} {
		if got := contrast(hex(row.text), white); math.Abs(got-row.want) > 0.001 {
			t.Errorf("contrast of %06x on white = %.3f, want %.3f", row.text, got, row.want)
		}
	}
}

// palettes are all palettes with the least contrast of their texts: 4.5:1 is level AA (success
// criterion 1.4.3 of WCAG 2.2), 7:1 is level AAA (1.4.6).
var palettes = []struct {
	name  string
	least float64
	Palette
}{{"light", 4.5, Light}, {"dark", 4.5, Dark}, {"sun", 7, Sun}}

func TestTextContrast(t *testing.T) {
	for _, p := range palettes {
		for _, pair := range p.Pairs() {
			if got := contrast(pair.On, pair.Text); got < p.least {
				t.Errorf("%s: %s is %.2f:1, want %g:1", p.name, pair.Name, got, p.least)
			}
		}
	}
}

// The rim of a key tells it from the page: 3:1, WCAG 2.2 success criterion 1.4.11.
func TestRimContrast(t *testing.T) {
	for _, p := range palettes {
		for ground, c := range map[string]color.NRGBA{"paper": p.Paper, "field": p.Field} {
			if got := contrast(c, p.Edge); got < 3 {
				t.Errorf("%s: rim on %s is %.2f:1, want 3:1", p.name, ground, got)
			}
		}
	}
}

// In the sun a display of 500 cd/m² at 10,000 lx keeps 4.9 of a contrast of 1000:1 (a Lambertian veil
// of 4 %, worked apart from this code). Sun keeps at least 3:1 of it for every text: the day row of
// ISO 15008 (from memory).
func TestSunKeepsContrastUnderAVeil(t *testing.T) {
	const white, black = 500, 0.5 // cd/m²
	veil := 10000 * 0.04 / math.Pi
	seen := func(c color.NRGBA) float64 { return black + (white-black)*luminance(c) + veil }
	if got := seen(hex(0xFFFFFF)) / seen(hex(0)); math.Abs(got-4.908) > 0.001 {
		t.Fatalf("white on black is %.3f:1 under the veil, want 4.908:1", got)
	}
	for _, pair := range Sun.Pairs() {
		a, b := seen(pair.On), seen(pair.Text)
		if got := max(a, b) / min(a, b); got < 3 {
			t.Errorf("%s keeps %.2f:1, want 3:1", pair.Name, got)
		}
	}
}
