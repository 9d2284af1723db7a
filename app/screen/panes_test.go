package screen

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"yokebook/app/screen/look"
	"yokebook/app/words"
)

// pane is what pages are looked at on: a size, the colours and the language.
type pane struct {
	size  fyne.Size
	theme string // "light", "dark" or "sun"
	lang  *words.Language
}

// panes are all that the pages are looked at on: every size light and dark in every language, and
// a phone in the sun.
func panes() []pane {
	var out []pane
	for _, lang := range words.Languages {
		for _, size := range []fyne.Size{phone, small, onSide, desktop} {
			out = append(out, pane{size, "light", lang}, pane{size, "dark", lang})
		}
		out = append(out, pane{phone, "sun", lang})
	}
	return out
}

// name names size and colours, and any language but the first.
func (g pane) name() string {
	name := sizeName(g.size) + "-" + g.theme
	if g.lang != words.English {
		name += "-" + g.lang.Tag
	}
	return name
}

func sizeName(size fyne.Size) string { return fmt.Sprintf("%.0fx%.0f", size.Width, size.Height) }

// look is the theme of the toolkit that shows the colours.
func (g pane) look() look.Theme {
	if g.theme == "sun" {
		v := theme.VariantLight
		return look.Theme{Sun: true, Fixed: &v}
	}
	return look.Held(g.theme == "dark")
}

// desk opens the window on an empty folder of builds.
func (g pane) desk(t *testing.T) *desk {
	t.Helper()
	d := openDeskIn(t, g.lang, t.TempDir(), g.size, g.theme == "dark")
	test.ApplyTheme(t, g.look())
	d.s.show()
	return d
}
