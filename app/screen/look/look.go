// Package look is the one place of colours and sizes: a light and a dark palette, and the theme
// that hands them to the toolkit. Parts ask Now for the palette that is in use.
package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// Palette holds every colour of the screens. Each text colour stands at 4.5:1 or more on the
// grounds it is used on; a test computes that from Pairs.
type Palette struct {
	Paper color.NRGBA // the page
	Ink   color.NRGBA // text and drawing on Paper
	Quiet color.NRGBA // lesser text on Paper and Field
	Rule  color.NRGBA // lines that only divide
	Field color.NRGBA // ground of the display, rows and pictures
	Key   color.NRGBA // face of an ordinary key
	Edge  color.NRGBA // rim of keys
	State color.NRGBA // face of the keys that say how the vehicle stands
	Main  color.NRGBA // face of the one key that goes on
	OnIt  color.NRGBA // text on Main
	Mark  color.NRGBA // what a picture points at
	Risk  color.NRGBA // text and rim of a key that takes something out of use

	Clear, Out, Unsure, Waiting color.NRGBA // verdict words and shapes, on Paper and Field
}

// Light is the palette for daylight: ink on warm paper.
var Light = Palette{
	Paper: hex(0xF6F1E4), Ink: hex(0x1A222D), Quiet: hex(0x4A5462), Rule: hex(0xC5CCD2),
	Field: hex(0xFFFDF7), Key: hex(0xFFFFFF), Edge: hex(0x7C8895), State: hex(0xDDE7EA),
	Main: hex(0x0E4A5B), OnIt: hex(0xFFFFFF), Mark: hex(0xB4470B), Risk: hex(0x9C1C1C),
	Clear: hex(0x00613F), Out: hex(0x9C1C1C), Unsure: hex(0x7A4B00), Waiting: hex(0x3F5070),
}

// Dark is the palette for a dark shop: chalk on slate.
var Dark = Palette{
	Paper: hex(0x12171C), Ink: hex(0xF3EFE4), Quiet: hex(0xB9C2CC), Rule: hex(0x39434D),
	Field: hex(0x1A2128), Key: hex(0x27313A), Edge: hex(0x72808D), State: hex(0x1D3740),
	Main: hex(0xF0C24B), OnIt: hex(0x14181C), Mark: hex(0xFF9A57), Risk: hex(0xFF9C8A),
	Clear: hex(0x74D8A9), Out: hex(0xFF9C8A), Unsure: hex(0xFFD072), Waiting: hex(0xAFC3E6),
}

// Pair is a text colour on a ground, by name.
type Pair struct {
	Name     string
	On, Text color.NRGBA
}

// Pairs lists every text colour with each ground that it is written on.
func (p Palette) Pairs() []Pair {
	return []Pair{
		{"ink on paper", p.Paper, p.Ink}, {"ink on field", p.Field, p.Ink}, {"ink on key", p.Key, p.Ink},
		{"ink on state", p.State, p.Ink}, {"quiet on paper", p.Paper, p.Quiet}, {"quiet on field", p.Field, p.Quiet},
		{"quiet on key", p.Key, p.Quiet}, {"quiet on state", p.State, p.Quiet}, {"text on main", p.Main, p.OnIt},
		{"mark on field", p.Field, p.Mark}, {"risk on paper", p.Paper, p.Risk}, {"risk on field", p.Field, p.Risk},
		{"risk on key", p.Key, p.Risk},
		{"clear on field", p.Field, p.Clear}, {"out on field", p.Field, p.Out}, {"unsure on field", p.Field, p.Unsure},
		{"waiting on field", p.Field, p.Waiting}, {"clear on paper", p.Paper, p.Clear}, {"out on paper", p.Paper, p.Out},
		{"unsure on paper", p.Paper, p.Unsure}, {"waiting on paper", p.Paper, p.Waiting},
	}
}

// Sizes of running text, by name.
const (
	SizeBody    fyne.ThemeSizeName = "yokebook body"
	SizeHeading fyne.ThemeSizeName = "yokebook heading"
)

// Theme is the toolkit's theme with our colours and sizes. The zero Theme follows the system's
// light or dark; Fixed holds one of the two.
type Theme struct {
	Fixed *fyne.ThemeVariant
}

// Held returns a theme that stays light or dark whatever the system says.
func Held(dark bool) Theme {
	v := theme.VariantLight
	if dark {
		v = theme.VariantDark
	}
	return Theme{Fixed: &v}
}

// Now returns the palette in use.
func Now() Palette {
	settings := fyne.CurrentApp().Settings()
	if t, ok := settings.Theme().(Theme); ok {
		return t.palette(settings.ThemeVariant())
	}
	return Light
}

func (t Theme) palette(v fyne.ThemeVariant) Palette {
	if t.Fixed != nil {
		v = *t.Fixed
	}
	if v == theme.VariantDark {
		return Dark
	}
	return Light
}

// Color gives the toolkit's own widgets (text entry, scroll bar) our colours.
func (t Theme) Color(name fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	p := t.palette(v)
	switch name {
	case theme.ColorNameBackground:
		return p.Paper
	case theme.ColorNameForeground:
		return p.Ink
	case theme.ColorNameInputBackground, theme.ColorNameOverlayBackground:
		return p.Field
	case theme.ColorNameInputBorder, theme.ColorNameScrollBar:
		return p.Edge
	case theme.ColorNamePlaceHolder:
		return p.Quiet
	case theme.ColorNamePrimary, theme.ColorNameFocus:
		return p.Main
	case theme.ColorNameSeparator:
		return p.Rule
	}
	if t.Fixed != nil {
		v = *t.Fixed
	}
	return theme.DefaultTheme().Color(name, v)
}

// Font is the toolkit's own.
func (t Theme) Font(s fyne.TextStyle) fyne.Resource { return theme.DefaultTheme().Font(s) }

// Icon is the toolkit's own.
func (t Theme) Icon(n fyne.ThemeIconName) fyne.Resource { return theme.DefaultTheme().Icon(n) }

// Size makes text readable at arm's length and entries tall enough for a thumb.
func (t Theme) Size(n fyne.ThemeSizeName) float32 {
	switch n {
	case theme.SizeNameText:
		return 20
	case SizeBody:
		return 17
	case SizeHeading:
		return 14
	case theme.SizeNamePadding:
		return 4
	case theme.SizeNameInnerPadding:
		return 8
	}
	return theme.DefaultTheme().Size(n)
}

func hex(rgb uint32) color.NRGBA {
	return color.NRGBA{R: uint8(rgb >> 16), G: uint8(rgb >> 8), B: uint8(rgb), A: 0xFF}
}
