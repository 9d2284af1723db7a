package draw

import (
	"fmt"
	"image/color"
	"maps"
)

// Theme gives every style its colour.
type Theme struct {
	Name  string // as the command line calls it
	Paper color.NRGBA
	Text  color.NRGBA
	Quiet color.NRGBA
	inks  map[Style]color.NRGBA
}

// Light is ink on paper white, Dark chalk on slate. A test computes their contrasts.
var (
	Light = Theme{Name: "light", Paper: rgb(0xFFFDF7), Text: rgb(0x1A222D), Quiet: rgb(0x4A5462), inks: map[Style]color.NRGBA{
		Body: rgb(0x1A222D), Outline: rgb(0x838D98), Read: rgb(0x0E4A5B), Predicted: rgb(0x0E4A5B), Doubt: rgb(0xBFDDE4),
		Ghost: rgb(0x6B7684), Foreseen: rgb(0x6B7684), Worst: rgb(0x9C1C1C), Unsettled: rgb(0x7A4B00), Obstacle: rgb(0x7A4B00), Measure: rgb(0x4A5462),
		Guide: rgb(0x838D98), Leader: rgb(0x838D98), Frame: rgb(0xB4BCC4), Second: rgb(0xB4470B), Third: rgb(0x5B3A8C), Plain: rgb(0x1A222D), Quiet: rgb(0x4A5462),
		Tool: rgb(0xB4470B), Ground: rgb(0xFFFDF7),
	}}
	Dark = Theme{Name: "dark", Paper: rgb(0x1A2128), Text: rgb(0xF3EFE4), Quiet: rgb(0xB9C2CC), inks: map[Style]color.NRGBA{
		Body: rgb(0xF3EFE4), Outline: rgb(0x7F8B97), Read: rgb(0x8FD3E8), Predicted: rgb(0x8FD3E8), Doubt: rgb(0x24485A),
		Ghost: rgb(0x97A3AF), Foreseen: rgb(0x97A3AF), Worst: rgb(0xFF9C8A), Unsettled: rgb(0xFFD072), Obstacle: rgb(0xFFD072), Measure: rgb(0xB9C2CC),
		Guide: rgb(0x7F8B97), Leader: rgb(0x7F8B97), Frame: rgb(0x4C5863), Second: rgb(0xFF9A57), Third: rgb(0xC9B2F2), Plain: rgb(0xF3EFE4), Quiet: rgb(0xB9C2CC),
		Tool: rgb(0xFF9A57), Ground: rgb(0x1A2128),
	}}
)

// Themes lists both.
var Themes = []Theme{Light, Dark}

// ThemeOf finds a theme by its name.
func ThemeOf(name string) (Theme, bool) {
	for _, t := range Themes {
		if t.Name == name {
			return t, true
		}
	}
	return Theme{}, false
}

// Ink is the colour of a style.
func (t Theme) Ink(s Style) color.NRGBA {
	if s == Ground {
		return t.Paper
	}
	return t.inks[s]
}

// With is the theme with another colour for a style.
func (t Theme) With(s Style, c color.NRGBA) Theme {
	t.inks = maps.Clone(t.inks)
	t.inks[s] = c
	return t
}

// TextInk is the colour that a label of a style is written in: lines may be paler than words.
func (t Theme) TextInk(s Style) color.NRGBA {
	switch s {
	case Worst, Unsettled, Obstacle, Read, Second, Third:
		return t.inks[s]
	case Quiet, Ghost, Foreseen, Outline, Guide, Measure:
		return t.Quiet
	}
	return t.Text
}

// pen is how wide a style is drawn and in which dashes, page units.
type pen struct {
	width float64
	dash  []float64
}

func penOf(s Style) pen {
	switch s {
	case Body:
		return pen{width: 2}
	case Outline:
		return pen{width: 1.2}
	case Read:
		return pen{width: 1.4}
	case Predicted, Second, Third:
		return pen{1.8, []float64{9, 5}}
	case Ghost:
		return pen{width: 1.3}
	case Foreseen:
		return pen{1.3, []float64{7, 5}}
	case Worst, Unsettled:
		return pen{width: 3}
	case Obstacle:
		return pen{width: 2.6}
	case Guide:
		return pen{1, []float64{2.5, 3.5}}
	case Tool:
		return pen{width: 2.4}
	case Measure, Leader, Frame:
		return pen{width: 1}
	}
	return pen{width: 1}
}

// filled reports styles whose outlines are areas; faced ones hide what lies behind them.
func filled(s Style) bool { return s == Doubt }
func faced(s Style) bool  { return s == Body || s == Outline || s == Obstacle }

func rgb(v uint32) color.NRGBA {
	return color.NRGBA{R: uint8(v >> 16), G: uint8(v >> 8), B: uint8(v), A: 0xFF}
}

func hexOf(c color.NRGBA) string { return fmt.Sprintf("#%02X%02X%02X", c.R, c.G, c.B) }
