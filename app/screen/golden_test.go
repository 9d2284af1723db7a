package screen

import (
	"flag"
	"fmt"
	"image/color"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/look"
	"yokebook/app/screen/part"
)

var rewrite = flag.Bool("rewrite", false, "rewrite the goldens of all pages")

// pagesDir holds what every page shows and where: a folder for each size, a file for each page.
const pagesDir = "testdata/pages"

// TestPagesAreAsTheyWereLookedAt compares every page at every size with its golden, line by line:
// keys with their kind and place, texts with size, ink and place. The dark theme and the one for the
// sun must show the same, but for the colours.
//
//	make golden
func TestPagesAreAsTheyWereLookedAt(t *testing.T) {
	for _, size := range []fyne.Size{phone, small, onSide, desktop} {
		t.Run(fmt.Sprintf("%.0fx%.0f", size.Width, size.Height), func(t *testing.T) {
			dir := filepath.Join(pagesDir, fmt.Sprintf("%.0fx%.0f", size.Width, size.Height))
			light := pagesOf(t, size, false)
			if *rewrite {
				writePages(t, dir, light)
			}
			comparePages(t, dir, light)
			for i, page := range pagesOf(t, size, true) {
				if i < len(light) && plain(page.markup) != plain(light[i].markup) {
					t.Errorf("%s is another page in the dark", page.name)
				}
			}
		})
	}
}

type shown struct{ name, markup string }

func pagesOf(t *testing.T, size fyne.Size, dark bool) []shown {
	t.Helper()
	var out []shown
	d := openDesk(t, size, dark)
	album(d, func(name string) { out = append(out, shown{name, d.markup()}) })
	return out
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
		t.Errorf("%d goldens for %d pages; `make golden` rewrites them", len(files), len(pages))
	}
	for _, p := range pages {
		want, err := os.ReadFile(filepath.Join(dir, p.name+".txt"))
		if err != nil {
			t.Error(err)
			continue
		}
		if line, ok := firstDifference(string(want), p.markup); ok {
			t.Errorf("%s is not as it was; `make golden` rewrites it if it should be so\n%s", p.name, line)
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
