package part

import (
	"slices"
	"testing"
	"unicode"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"golang.org/x/image/font/sfnt"
)

// TestCoveredCharactersAreInTheFonts reads the fonts themselves: what is set in one of them without a
// choice must be in it, or a box would be drawn.
func TestCoveredCharactersAreInTheFonts(t *testing.T) {
	for _, c := range []struct {
		source fyne.Resource
		tables []*unicode.RangeTable
	}{
		{theme.DefaultTextFont(), []*unicode.RangeTable{covered}},
		{theme.DefaultTextBoldFont(), []*unicode.RangeTable{covered}},
		{drawings, []*unicode.RangeTable{covered, signs}},
	} {
		face, err := sfnt.Parse(c.source.Content())
		if err != nil {
			t.Fatal(err)
		}
		var buf sfnt.Buffer
		for r := rune(0); r <= 0xffff; r++ {
			if !unicode.IsOneOf(c.tables, r) {
				continue
			}
			if i, err := face.GlyphIndex(&buf, r); i == 0 || err != nil {
				t.Errorf("%s: %U is called covered and is not there", c.source.Name(), r)
			}
		}
	}
}

// TestEveryTextHasItsFont: none waits for what fonts a device has, but for names in other scripts.
func TestEveryTextHasItsFont(t *testing.T) {
	for _, c := range []struct {
		words string
		style fyne.TextStyle
		want  fyne.Resource
	}{
		{"Propshaft · 2.5° ± 0.3 mm × 1′", fyne.TextStyle{}, theme.DefaultTextFont()},
		{"„Gelenkwellenwinkel“ – größer", fyne.TextStyle{Bold: true}, theme.DefaultTextBoldFont()},
		{"Каретка Ωμεγα žluť", fyne.TextStyle{}, theme.DefaultTextFont()},
		{"← FRONT", fyne.TextStyle{Bold: true}, drawings},
		{"− 2 ▲ ▼ → ⌀ 86 ≤ 90 ≥ 80 ≠ π", fyne.TextStyle{}, drawings},
		{"写真", fyne.TextStyle{}, nil},
	} {
		if got := fontOf(c.words, c.style); got != c.want {
			t.Errorf("%q is set in %s, not in %s", c.words, named(got), named(c.want))
		}
	}
}

func named(r fyne.Resource) string {
	if r == nil {
		return "what the toolkit finds"
	}
	return r.Name()
}

// TestSizesFollowInProportion holds a measured text to what the toolkit says of it at its own size.
func TestSizesFollowInProportion(t *testing.T) {
	test.NewTempApp(t)
	for _, words := range []string{"M", "Propshaft angle at the gearbox", "1046.5 mm ± 0.3", "Gelenkwellenwinkel", "→ 写真"} {
		for _, style := range []fyne.TextStyle{{}, {Bold: true}} {
			for points := float32(12); points < 60; points += 7 {
				want, _ := fyne.CurrentApp().Driver().RenderedTextSize(words, points, style, fontOf(words, style))
				got := textWidth(words, points, style)
				if off := got - want.Width; off > want.Width/200+0.3 || off < -want.Width/200-0.3 {
					t.Errorf("%q at %g: %g wide, the toolkit says %g", words, points, got, want.Width)
				}
			}
		}
	}
}

// TestASignLeavesItsNeighboursBold: a bold line with a minus sign in it was thin from end to end.
func TestASignLeavesItsNeighboursBold(t *testing.T) {
	bold := fyne.TextStyle{Bold: true}
	for words, want := range map[string][]run{
		"from −30° to 30°": {{"from ", theme.DefaultTextBoldFont()}, {"−", drawings}, {"30° to 30°", theme.DefaultTextBoldFont()}},
		"▼ Down":           {{"▼", drawings}, {" Down", theme.DefaultTextBoldFont()}},
		"plain":            {{"plain", theme.DefaultTextBoldFont()}},
		"→ 写真":             {{"→ 写真", nil}},
	} {
		if got := runsOf(words, bold); !slices.Equal(got, want) {
			t.Errorf("%q is set as %v, not as %v", words, got, want)
		}
	}
}
