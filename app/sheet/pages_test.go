package sheet

import (
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"yokebook/app/draw"
	"yokebook/checks"
)

// eachSheet runs a test on the sheet of every demo, on both papers, in every choice of units.
func eachSheet(t *testing.T, test func(t *testing.T, s *Sheet)) {
	for _, s := range everySheet(t) {
		t.Run(s.name, func(t *testing.T) { test(t, s.sheet) })
	}
}

type namedSheet struct {
	name  string
	sheet *Sheet
}

var made []namedSheet

// everySheet makes them once for all tests.
func everySheet(t *testing.T) []namedSheet {
	if made != nil {
		return made
	}
	for _, name := range demos {
		b := buildOf(t, name)
		found := checks.Run(b, nil)
		for _, o := range allOptions() {
			s, err := Make(b, found, o)
			if err != nil {
				t.Fatal(err)
			}
			made = append(made, namedSheet{fmt.Sprintf("%s %s %s %s", name, o.Paper.Name, o.Units, s.Tag), s})
		}
	}
	return made
}

func TestPagesHoldWhatIsOnThem(t *testing.T) {
	eachSheet(t, func(t *testing.T, s *Sheet) {
		pages := s.Pages()
		if len(pages) < 1 || len(pages) > fewPages {
			t.Errorf("%d pages", len(pages))
		}
		for n, p := range pages {
			for _, x := range p.Texts {
				if x.Box.Min.X < edge-1 || x.Box.Max.X > p.Wide-edge+1 || x.Box.Min.Y < edge-1 || x.Box.Max.Y > p.High-edge+1 {
					t.Errorf("page %d: %q stands at %v, beyond the edge", n+1, x.Lines, x.Box)
				}
			}
		}
	})
}

func TestNoTextCoversAnother(t *testing.T) {
	eachSheet(t, func(t *testing.T, s *Sheet) {
		for n, p := range s.Pages() {
			for i, a := range p.Texts {
				for _, b := range p.Texts[:i] {
					wide := math.Min(a.Box.Max.X, b.Box.Max.X) - math.Max(a.Box.Min.X, b.Box.Min.X)
					high := math.Min(a.Box.Max.Y, b.Box.Max.Y) - math.Max(a.Box.Min.Y, b.Box.Min.Y)
					if wide > 0.5 && high > 0.5 {
						t.Errorf("page %d: %q covers %q", n+1, a.Lines, b.Lines)
					}
				}
			}
		}
	})
}

// A heading is larger than what stands below it; the last text above the footer must not be one, and
// neither may the row of a table's headings.
func TestNoHeadingStandsAtTheFootOfAPage(t *testing.T) {
	eachSheet(t, func(t *testing.T, s *Sheet) {
		var headings []string
		for _, b := range s.Blocks {
			switch b.Kind {
			case Heading:
				headings = append(headings, b.Text)
			case Grid:
				headings = append(headings, b.Table.Columns[0].Head)
			}
		}
		for n, p := range s.Pages() {
			last := slices.MaxFunc(p.Texts[:len(p.Texts)-2], func(a, b draw.Text) int {
				switch {
				case a.Box.Min.Y < b.Box.Min.Y-1, a.Box.Min.Y < b.Box.Min.Y+1 && a.Box.Min.X > b.Box.Min.X:
					return -1
				}
				return 1
			})
			if slices.Contains(headings, strings.Join(last.Lines, " ")) {
				t.Errorf("page %d ends with the heading %q", n+1, last.Lines)
			}
		}
	})
}

// The rows of a table keep their cells on one page: the first cell of every row of the findings stands
// on the page, and as high, as its value.
func TestRowsStandOnOnePage(t *testing.T) {
	eachSheet(t, func(t *testing.T, s *Sheet) {
		pages := s.Pages()
		for _, b := range s.Blocks {
			if b.Kind != Grid {
				continue
			}
			for _, row := range b.Table.Rows {
				if !onOnePage(pages, row) {
					t.Errorf("the row %q is broken", row[0].Text)
				}
			}
		}
	})
}

func onOnePage(pages []draw.Page, row []Cell) bool {
	for _, p := range pages {
		tops := map[float64]int{}
		want := 0
		for i, c := range row {
			if c.Text == "" || slices.ContainsFunc(row[:i], func(o Cell) bool { return o.Text == c.Text }) {
				continue
			}
			want++
			seen := map[float64]bool{}
			for _, x := range p.Texts {
				if top := x.Box.Min.Y; strings.Join(x.Lines, " ") == strings.Join(strings.Fields(c.Text), " ") && !seen[top] {
					seen[top] = true
					tops[top]++
				}
			}
		}
		for _, n := range tops {
			if n == want {
				return true
			}
		}
	}
	return false
}

// Pictures of the pages as poppler draws them, small, against those that a person looked at.
func TestPagesLookAsReviewed(t *testing.T) {
	for _, c := range []struct {
		name  string
		paper Paper
	}{{"demo", Letter}, {"links-two-piece", A4}} {
		s, _ := sheetOf(t, buildOf(t, c.name), Options{Paper: c.paper})
		pdf, err := s.PDF()
		if err != nil {
			t.Fatal(err)
		}
		dir := t.TempDir()
		poppler(t, pdf, "pdftoppm", "-r", "24", "-gray", "-png", "IN", filepath.Join(dir, "page"))
		files, err := filepath.Glob(filepath.Join(dir, "page*.png"))
		if err != nil || len(files) != len(s.Pages()) {
			t.Fatalf("%d pictures of %d pages: %v", len(files), len(s.Pages()), err)
		}
		for _, f := range files {
			golden := filepath.Join("testdata", "golden", c.name+"-"+filepath.Base(f))
			worst := 255.0
			if _, err := os.Stat(golden); err == nil {
				worst = farthest(readPNG(t, f), readPNG(t, golden))
			}
			switch {
			case worst <= 34: // what a person looked at stays
			case *rewrite:
				data, err := os.ReadFile(f)
				if err == nil {
					err = os.WriteFile(golden, data, 0o644)
				}
				if err != nil {
					t.Fatal(err)
				}
			default:
				t.Errorf("%s differs by %.0f of 255 in one place; if it should, `make golden WHAT=sheet`, and look at it", golden, worst)
			}
		}
	}
}

func readPNG(t *testing.T, path string) image.Image {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return img
}

// farthest compares the mean grey of fields of 20 × 20 pixels: letters may be drawn a little otherwise,
// a block that moved or went is seen.
func farthest(a, b image.Image) float64 {
	const side = 20
	if a.Bounds() != b.Bounds() {
		return 255
	}
	worst := 0.0
	for y := 0; y < a.Bounds().Dy(); y += side {
		for x := 0; x < a.Bounds().Dx(); x += side {
			field := image.Rect(x, y, x+side, y+side).Intersect(a.Bounds())
			worst = math.Max(worst, math.Abs(grey(a, field)-grey(b, field)))
		}
	}
	return worst
}

func grey(img image.Image, field image.Rectangle) float64 {
	sum := 0.0
	for y := field.Min.Y; y < field.Max.Y; y++ {
		for x := field.Min.X; x < field.Max.X; x++ {
			r, _, _, _ := img.At(x, y).RGBA()
			sum += float64(r >> 8)
		}
	}
	return sum / float64(field.Dx()*field.Dy())
}
