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
	linear := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
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

// Text needs 4.5:1: WCAG 2.2 success criterion 1.4.3, level AA.
func TestTextContrast(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light, "dark": Dark} {
		for _, pair := range p.Pairs() {
			if got := contrast(pair.On, pair.Text); got < 4.5 {
				t.Errorf("%s: %s is %.2f:1, want 4.5:1", name, pair.Name, got)
			}
		}
	}
}

// The rim of a key tells it from the page: 3:1, WCAG 2.2 success criterion 1.4.11.
func TestRimContrast(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light, "dark": Dark} {
		for ground, c := range map[string]color.NRGBA{"paper": p.Paper, "field": p.Field} {
			if got := contrast(c, p.Edge); got < 3 {
				t.Errorf("%s: rim on %s is %.2f:1, want 3:1", name, ground, got)
			}
		}
	}
}
