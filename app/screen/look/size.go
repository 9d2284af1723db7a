package look

import "math"

// TextSize is how large texts are: for how far from the glass one reads.
type TextSize string

// The sizes of text. Middle is the zero value.
const (
	SmallText TextSize = "small"
	Middle    TextSize = ""
	LargeText TextSize = "large"
)

// body is the size of running text at the middle size, in units of 1/160 inch.
const body = 18

// factor is what the sizes of the middle are multiplied by.
func (s TextSize) factor() float32 {
	switch s {
	case SmallText:
		return 0.8
	case LargeText:
		return 1.4
	}
	return 1
}

// CapitalMM is how high a capital letter of running text stands on a display of 160 units to the
// inch, in mm. Real displays differ from that by up to a third.
func (s TextSize) CapitalMM() float64 {
	const capital = 0.714 // of the size, in the toolkit's own font
	return float64(body*s.factor()) * capital * 25.4 / 160
}

// Scaled is a size of text in the theme in use, from that of the middle, in whole points.
func Scaled(points float32) float32 {
	t, _ := now()
	return float32(math.Round(float64(points * t.Text.factor())))
}
