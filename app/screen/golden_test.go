package screen

import (
	"flag"
	"fmt"
	"image/color"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/look"
	"yokebook/app/screen/part"
	"yokebook/app/words"
)

var rewrite = flag.Bool("rewrite", false, "rewrite the goldens of all pages")

// pagesDir holds what every page shows and where: a folder for each size and language, a file for
// each page.
const pagesDir = "testdata/pages"

// The clock on the pages is the same wherever the tests are run.
func init() { time.Local = time.UTC }

// TestPagesAreAsTheyWereLookedAt compares every page at every size with its golden, line by line:
// keys with their kind and place, texts with size, ink and place. In English that is every size; in
// the other languages a phone, for the rest of them TestEveryPageFitsInEveryLanguage answers. The dark theme
// and the one for the sun must show the same of the first album, but for the colours; on each of its pages
// the rules of checkFit and checkInks hold.
//
//	make golden WHAT=pages
func TestPagesAreAsTheyWereLookedAt(t *testing.T) {
	t.Setenv("TMPDIR", "/tmp") // stands on pages of places, which look the same only where it is as long
	for _, lang := range words.Languages {
		for _, size := range []fyne.Size{phone, small, onSide, desktop} {
			g := pane{size, "light", lang}
			if lang != words.English && size != phone {
				continue
			}
			name := sizeName(size)
			if lang != words.English {
				name += "-" + lang.Tag
			}
			t.Run(name, func(t *testing.T) {
				dir := filepath.Join(pagesDir, name)
				first := pagesOf(t, g, 0)
				all := first
				for n := 1; n < len(albums); n++ {
					all = append(all, pagesOf(t, g, n)...)
				}
				if *rewrite {
					writePages(t, dir, all)
					return // the other themes are compared when the diff was read
				}
				comparePages(t, dir, all)
				if lang == words.English {
					sameInEveryTheme(t, g, first)
				}
			})
		}
	}
}

// sameInEveryTheme fails where a page shows something else, or in another place, in other colours.
func sameInEveryTheme(t *testing.T, g pane, light []shown) {
	t.Helper()
	for _, g.theme = range []string{"dark", "sun"} {
		pages := pagesOf(t, g, 0)
		if len(pages) != len(light) {
			t.Fatalf("%s has %d pages, light has %d", g.theme, len(pages), len(light))
		}
		for i, page := range pages {
			if line, other := firstDifference(plain(light[i].markup), plain(page.markup)); other {
				t.Errorf("%s is another page in the theme %s\n%s", page.name, g.theme, line)
			}
		}
	}
}

type shown struct{ name, markup string }

// pagesOf are the pages of one of the albums. What differs between two runs, in the album of places, is
// written as #.
func pagesOf(t *testing.T, g pane, n int) (pages []shown) {
	t.Helper()
	albums[n].see(t, g, func(d *desk, name string) {
		name = albums[n].name + strings.ReplaceAll(name, "/", "-")
		if ofThisRun[name] != "" {
			return
		}
		markup := d.markup()
		if strings.HasPrefix(name, "places-") {
			markup = differs.ReplaceAllString(markup, "$1$2#")
		}
		pages = append(pages, shown{name, markup})
		if n > 0 {
			return // its own tests look at its inks, and whether it fits
		}
		checkInks(d, name)
		if g.theme == "light" {
			checkFit(d, name, leastOf(g.size))
		}
	})
	return pages
}

// differs finds folders of a run, its ports and its clock.
var differs = regexp.MustCompile(`(media)\d+(?:\\u200b)?\d*|(127\.0\.0\.1:)(?:\\u200b)?\d+|20\d\d-\d\d-\d\d \d\d:\d\d`)

// ofThisRun are the pages without a golden, and why. TestPagesOfPlacesFit has them too.
var ofThisRun = map[string]string{
	"places-offer":        "a new code and a new fingerprint, as wide as their letters are",
	"places-offer-paired": "a new code and a new fingerprint, as wide as their letters are",
	"places-devices":      "the name of this machine",
	"places-unpair":       "the name of this machine",
}

func writePages(t *testing.T, dir string, pages []shown) {
	t.Helper()
	if err := os.RemoveAll(dir); err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	for _, p := range pages {
		if err := os.WriteFile(filepath.Join(dir, p.name+".txt"), []byte(p.markup), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

func comparePages(t *testing.T, dir string, pages []shown) {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(dir, "*.txt"))
	if err != nil || len(files) != len(pages) {
		t.Errorf("%d goldens for %d pages; `make golden WHAT=pages` rewrites them", len(files), len(pages))
	}
	for _, p := range pages {
		want, err := os.ReadFile(filepath.Join(dir, p.name+".txt"))
		if err != nil {
			t.Error(err)
			continue
		}
		if line, ok := firstDifference(string(want), p.markup); ok {
			t.Errorf("%s is not as it was; if it should be so, `make golden WHAT=pages`, and read the diff\n%s", p.name, line)
		}
	}
}

func firstDifference(want, got string) (string, bool) {
	w, g := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := range max(len(w), len(g)) {
		line := func(l []string) string {
			if i < len(l) {
				return l[i]
			}
			return "(nothing)"
		}
		if line(w) != line(g) {
			return fmt.Sprintf("line %d: was %s\n         is  %s", i+1, line(w), line(g)), true
		}
	}
	return "", false
}

// plain is a markup without its colours.
func plain(markup string) string {
	var out []string
	for _, line := range strings.Split(markup, "\n") {
		before, _, _ := strings.Cut(line, " ink=")
		out = append(out, before)
	}
	return strings.Join(out, "\n")
}

// markup says what is on the glass and where, a line for each thing.
func (d *desk) markup() string {
	var b strings.Builder
	walk(d.s.Content(), fyne.NewPos(0, 0), func(o fyne.CanvasObject, at fyne.Position) {
		place := fmt.Sprintf("%.0f,%.0f %.0fx%.0f", at.X, at.Y, o.Size().Width, o.Size().Height)
		switch o := o.(type) {
		case *part.Key:
			fmt.Fprintf(&b, "key %s kind=%d %s\n", o.Name, o.Kind, place)
		case *part.Text:
			size, ink := drawn(o)
			fmt.Fprintf(&b, "  text %q %s size=%.0f ink=%s\n", o.Words, place, size, ink)
		case *part.Picture:
			fmt.Fprintf(&b, "  picture %s\n", place)
		case *part.Bar:
			fmt.Fprintf(&b, "  bar %s\n", place)
		case *part.Field:
			fmt.Fprintf(&b, "field %s\n", place)
		case *widget.Label:
			fmt.Fprintf(&b, "label %q\n", o.Text)
		case *part.Entry:
			fmt.Fprintf(&b, "entry %q %s\n", o.Text, place)
		}
	})
	return b.String()
}

// drawn is the size that a text is drawn in, and the name of its colour; 0 where it has no place.
func drawn(text *part.Text) (float32, string) {
	for _, o := range test.WidgetRenderer(text).Objects() {
		if line, ok := o.(*canvas.Text); ok {
			return line.TextSize, inkName(line.Color)
		}
	}
	return 0, ""
}

// inkName is the first colour of the palette that is the given one.
func inkName(c color.Color) string {
	palette := reflect.ValueOf(look.Now())
	for i := range palette.NumField() {
		if palette.Field(i).Interface() == c {
			return palette.Type().Field(i).Name
		}
	}
	return fmt.Sprint(c)
}
