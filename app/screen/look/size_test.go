package look

import (
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
)

// readAtMM is how far away a letter of a height still fills an angle: h = 2·D·tan(angle/2).
func readAtMM(heightMM, minutes float64) float64 {
	return heightMM / (2 * math.Tan(minutes/60/2*math.Pi/180))
}

// Letters of 16 minutes of arc are the least for reading (ISO 9241-3, as an ergonomics page of a
// maker of displays quotes it); 500 mm want 2.33 mm, worked apart from this code.
func TestReadingDistance(t *testing.T) {
	if got := readAtMM(2.327, 16); math.Abs(got-500) > 0.5 {
		t.Fatalf("2.327 mm fill 16 minutes at %.1f mm, want 500", got)
	}
	for _, row := range []struct {
		size TextSize
		far  float64 // mm, as the settings page says it
	}{{SmallText, 350}, {Middle, 430}, {LargeText, 600}} {
		if got := readAtMM(row.size.CapitalMM(), 16); got < row.far {
			t.Errorf("size %q is read at up to %.0f mm, the settings say %.0f", row.size, got, row.far)
		}
	}
}

// CapitalMM counts with the capitals of the font that texts are written in.
func TestCapitalsOfTheFont(t *testing.T) {
	f, err := opentype.Parse(theme.DefaultTextFont().Content())
	if err != nil {
		t.Fatal(err)
	}
	face, err := opentype.NewFace(f, &opentype.FaceOptions{Size: 1000, DPI: 72, Hinting: font.HintingNone})
	if err != nil {
		t.Fatal(err)
	}
	high := float64(face.Metrics().CapHeight) / 64 / 1000
	if got, want := Middle.CapitalMM(), body*high*25.4/160; math.Abs(got-want) > 0.01 {
		t.Errorf("a capital is %.3f mm high, by the font %.3f", got, want)
	}
}

func TestSizesOfTheThemeFollowTheTextSize(t *testing.T) {
	for _, name := range []fyne.ThemeSizeName{theme.SizeNameText, SizeBody, SizeHeading} {
		var last float32
		for _, s := range []TextSize{SmallText, Middle, LargeText} {
			size := Theme{Text: s}.Size(name)
			if size <= last {
				t.Errorf("%s at %q is %.1f, not above %.1f", name, s, size, last)
			}
			last = size
		}
	}
}
