package draw

import (
	"bytes"
	"encoding/xml"
	"flag"
	"fmt"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

var english = words.English

var rewrite = flag.Bool("rewrite", false, "rewrite the golden pictures from what is drawn now; look at each")

// demos are the builds of testdata.
func demos(t testing.TB) []string {
	t.Helper()
	paths, err := filepath.Glob("../../testdata/builds/*.json")
	if err != nil || len(paths) < 3 {
		t.Fatalf("%d builds in testdata, %v", len(paths), err)
	}
	names := make([]string, len(paths))
	for i, p := range paths {
		names[i] = strings.TrimSuffix(filepath.Base(p), ".json")
	}
	return names
}

func buildOf(t testing.TB, name string) *measure.Build {
	t.Helper()
	data, err := os.ReadFile("../../testdata/builds/" + name + ".json")
	if err != nil {
		t.Fatal(err)
	}
	b, _, err := document.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func sceneOf(t testing.TB, b *measure.Build) (*Scene, []checks.Finding) {
	t.Helper()
	found := checks.Run(b, nil)
	return NewScene(b, found, english), found.Findings
}

// everyPage lays every view of every demo build at the width of a telephone and of a desk, standing
// and at three heights of its travel.
func everyPage(t *testing.T, see func(name string, p Page)) {
	t.Helper()
	for _, name := range demos(t) {
		s, _ := sceneOf(t, buildOf(t, name))
		heights := []*float64{nil}
		if bump, droop, ok := s.Heights(); ok {
			middle := (bump + droop) / 2
			heights = append(heights, &bump, &middle, &droop)
		}
		for _, v := range Views {
			for _, wide := range []float64{411, 1280} {
				for i, h := range heights {
					see(fmt.Sprintf("%s %s %.0f height %d", name, v, wide, i), s.View(v, h).Lay(Options{Wide: wide}))
				}
			}
		}
	}
}

func TestLabelsNeverOverlapAndStayOnThePage(t *testing.T) {
	labels := 0
	everyPage(t, func(name string, p Page) {
		for i, a := range p.Texts {
			if len(a.Lines) == 0 {
				t.Errorf("%s: text %d is empty", name, i)
			}
			if a.Label {
				labels++
			}
			if a.Box.Min.X < 0 || a.Box.Max.X > p.Wide || a.Box.Min.Y < 0 || a.Box.Max.Y > p.High {
				t.Errorf("%s: %q runs off the page: %v in %v × %v", name, a.Lines, a.Box, p.Wide, p.High)
			}
			for _, b := range p.Texts[i+1:] {
				if a.Box.overlaps(b.Box, 0) {
					t.Errorf("%s: %q and %q overlap", name, a.Lines, b.Lines)
				}
			}
		}
	})
	if labels < 200 {
		t.Errorf("only %d labels were looked at", labels)
	}
}

// A leader that runs through another label could be taken for a line that strikes it out.
func TestNoLeaderRunsThroughALabel(t *testing.T) {
	everyPage(t, func(name string, p Page) {
		for _, m := range p.Marks {
			if m.Style != Leader {
				continue
			}
			for _, x := range p.Texts {
				if x.Label && x.Box.grown(-1, -1).meets(m.Points[0], m.Points[1]) {
					t.Errorf("%s: a leader runs through %q", name, x.Lines)
				}
			}
		}
	})
}

// Source of 16 minutes at least: ISO 9241-3 (as quoted by a maker's ergonomics page); 2.33 mm at
// 500 mm worked apart from this code.
func TestTextIsLargeEnoughForItsDistance(t *testing.T) {
	mm := TextSize(500, 16) * capital / unitsPerMM
	if math.Abs(mm-2.327) > 0.001 {
		t.Errorf("capitals of %.4f mm at 500 mm, want 2.327", mm)
	}
	everyPage(t, func(name string, p Page) {
		for _, x := range p.Texts {
			if x.Size < TextSize(Distance, 16)-1e-9 {
				t.Errorf("%s: %q is written at %.1f", name, x.Lines, x.Size)
			}
		}
	})
}

func TestEveryLetterIsInTheFont(t *testing.T) {
	seen := map[rune]bool{'⌀': true, 'β': true, '°': true, '±': true, '−': true, '…': true, '×': true, '≤': true, '√': true}
	everyPage(t, func(_ string, p Page) {
		for _, x := range p.Texts {
			for _, r := range strings.Join(x.Lines, "") {
				seen[r] = true
			}
		}
	})
	for r := range seen {
		face.Lock()
		_, ok := glyph(r)
		face.Unlock()
		if !ok {
			t.Errorf("the font has no %q", r)
		}
	}
	if len(seen) < 40 {
		t.Errorf("only %d letters seen", len(seen))
	}
}

// Words stand out from their ground at 4.5:1, lines that must be seen at 3:1.
// Source: WCAG 2.2, success criteria 1.4.3 and 1.4.11, and its definition of contrast ratio.
func TestColoursStandOut(t *testing.T) {
	for _, theme := range Themes {
		for _, s := range Styles {
			if _, ok := theme.inks[s]; !ok {
				t.Errorf("%s has no ink for %s", theme.Name, s)
			}
			if c := contrast(luminance(theme.TextInk(s)), luminance(theme.Paper)); c < 4.5 {
				t.Errorf("%s: text of %s at %.2f:1", theme.Name, s, c)
			}
			if c := contrast(luminance(theme.Ink(s)), luminance(theme.Paper)); c < 3 && s != Doubt && s != Frame && s != Ground {
				t.Errorf("%s: lines of %s at %.2f:1", theme.Name, s, c)
			}
		}
	}
}

func luminance(c interface{ RGBA() (r, g, b, a uint32) }) float64 {
	r, g, b, _ := c.RGBA()
	part := func(v uint32) float64 {
		f := float64(v) / 65535
		if f <= 0.04045 {
			return f / 12.92
		}
		return math.Pow((f+0.055)/1.055, 2.4)
	}
	return 0.2126*part(r) + 0.7152*part(g) + 0.0722*part(b)
}

func contrast(a, b float64) float64 { return (math.Max(a, b) + 0.05) / (math.Min(a, b) + 0.05) }

func TestPicturesAreAsTheyWere(t *testing.T) {
	for _, name := range demos(t) {
		s, _ := sceneOf(t, buildOf(t, name))
		for _, v := range Views {
			for _, theme := range Themes {
				got := s.View(v, nil).Lay(Options{}).SVG(theme)
				if again := s.View(v, nil).Lay(Options{}).SVG(theme); !bytes.Equal(got, again) {
					t.Errorf("%s %s %s: drawn twice, it differs", name, v, theme.Name)
				}
				golden(t, fmt.Sprintf("testdata/golden/%s-%s-%s.svg", name, v, theme.Name), got)
			}
		}
	}
}

func golden(t *testing.T, path string, got []byte) {
	t.Helper()
	if *rewrite {
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil || !bytes.Equal(got, want) {
		t.Errorf("%s differs (%v); if it should, `make golden WHAT=drawings`, and look at it", path, err)
	}
}

func TestSVGIsWellFormed(t *testing.T) {
	b := buildOf(t, demos(t)[0])
	s, _ := sceneOf(t, b)
	d := s.View(SideView, nil)
	d.Title = `<&">`
	d.label(1, Above, Plain, Point{}, `a < b & "c"`)
	dec := xml.NewDecoder(bytes.NewReader(d.Lay(Options{}).SVG(Light)))
	for {
		if _, err := dec.Token(); err != nil {
			if err.Error() != "EOF" {
				t.Error(err)
			}
			return
		}
	}
}

func TestPNGShowsThePage(t *testing.T) {
	s, _ := sceneOf(t, buildOf(t, "demo"))
	page := s.View(SideView, nil).Lay(Options{Wide: 411})
	data, err := page.PNG(Dark, 2)
	if err != nil {
		t.Fatal(err)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	if w := img.Bounds().Dx(); w != 822 {
		t.Errorf("%d pixels wide, want 822", w)
	}
	for _, x := range page.Texts { // every text has ink in its box
		dark := 0
		for y := int(2 * x.Box.Min.Y); y < int(2*x.Box.Max.Y); y++ {
			for px := int(2 * x.Box.Min.X); px < int(2*x.Box.Max.X); px++ {
				if contrast(luminance(img.At(px, y)), luminance(Dark.Paper)) > 4.4 {
					dark++
				}
			}
		}
		if dark < 20 {
			t.Errorf("%q is not to be seen", x.Lines)
		}
	}
}

// named reads the lines and outlines of a picture file by their names.
type named struct {
	scale float64
	lines map[string][]Point
}

func readSVG(t *testing.T, data []byte) named {
	t.Helper()
	out := named{lines: map[string][]Point{}}
	dec := xml.NewDecoder(bytes.NewReader(data))
	for {
		tok, err := dec.Token()
		if err != nil {
			return out
		}
		e, ok := tok.(xml.StartElement)
		if !ok {
			continue
		}
		attr := map[string]string{}
		for _, a := range e.Attr {
			attr[a.Name.Local] = a.Value
		}
		f := func(key string) float64 { v, _ := strconv.ParseFloat(attr[key], 64); return v }
		switch e.Name.Local {
		case "svg":
			out.scale = f("data-scale")
		case "line":
			out.lines[attr["data-name"]] = []Point{{f("x1"), f("y1")}, {f("x2"), f("y2")}}
		case "circle":
			out.lines[attr["data-name"]] = []Point{{f("cx"), f("cy")}}
		case "path":
			var pts []Point
			for _, p := range strings.FieldsFunc(attr["d"], func(r rune) bool { return strings.ContainsRune("MLZ", r) }) {
				var q Point
				if n, _ := fmt.Sscanf(p, "%g %g", &q.X, &q.Y); n == 2 {
					pts = append(pts, q)
				}
			}
			out.lines[attr["data-name"]] = pts
		}
	}
}

// A number is not torn from its doubt or its unit at the end of a line.
func TestNumbersAreNotTorn(t *testing.T) {
	text := "4 × ⌀ 10 on ⌀ 90.05 ± 0.09 mm, rear joint 3.22 ± 0.28°: unsure, limit 35 mm"
	for wide := 60.0; wide < 600; wide += 20 {
		for _, line := range wrap(text, 12, wide) {
			for _, torn := range []string{"± ", "mm"} {
				if strings.HasPrefix(line, torn) {
					t.Errorf("at %g a line begins with %q", wide, line)
				}
			}
			if strings.HasSuffix(line, "±") || strings.HasSuffix(line, "⌀") {
				t.Errorf("at %g a line ends within a number: %q", wide, line)
			}
		}
	}
}
