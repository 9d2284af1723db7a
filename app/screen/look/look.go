// Package look is the one place of colours and sizes: three palettes, and the theme that hands them
// to the toolkit. Parts ask Now for the palette that is in use, and Scaled for a size of text.
package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// Palette holds every colour of the screens. Each text colour stands at 4.5:1 or more on the
// grounds it is used on, at 7:1 or more in Sun; a test computes that from Pairs.
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
		{"mark on paper", p.Paper, p.Mark}, {"mark on key", p.Key, p.Mark}, {"mark on state", p.State, p.Mark},
		{"clear on state", p.State, p.Clear}, {"out on state", p.State, p.Out}, {"unsure on state", p.State, p.Unsure},
		{"waiting on state", p.State, p.Waiting},
	}
}

// Sizes of running text, by name.
const (
	SizeBody    fyne.ThemeSizeName = "yokebook body"
	SizeHeading fyne.ThemeSizeName = "yokebook heading"
)

// Theme is the toolkit's theme with our colours and sizes. The zero Theme follows the system's
// light or dark, at the middle size of text.
type Theme struct {
	Fixed *fyne.ThemeVariant // holds light or dark whatever the system says
	Sun   bool               // the palette of high contrast, whatever else is said
	Text  TextSize
}

// Held returns a theme that stays light or dark whatever the system says.
func Held(dark bool) Theme {
	v := theme.VariantLight
	if dark {
		v = theme.VariantDark
	}
	return Theme{Fixed: &v}
}

// now is the theme in use and the system's light or dark.
func now() (Theme, fyne.ThemeVariant) {
	settings := fyne.CurrentApp().Settings()
	t, _ := settings.Theme().(Theme)
	return t, settings.ThemeVariant()
}

// Now returns the palette in use.
func Now() Palette {
	t, v := now()
	return t.palette(v)
}

func (t Theme) palette(v fyne.ThemeVariant) Palette {
	if t.Fixed != nil {
		v = *t.Fixed
	}
	switch {
	case t.Sun:
		return Sun
	case v == theme.VariantDark:
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
	switch {
	case t.Sun:
		v = theme.VariantLight
	case t.Fixed != nil:
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
		return 20 * t.Text.factor()
	case SizeBody:
		return body * t.Text.factor()
	case SizeHeading:
		return 14 * t.Text.factor()
	case theme.SizeNamePadding:
		return 4
	case theme.SizeNameInnerPadding:
		return 8
	}
	return theme.DefaultTheme().Size(n)
}
