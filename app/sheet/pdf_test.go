package sheet

import (
	"bytes"
	"compress/zlib"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"codeberg.org/go-fonts/dejavu/dejavusanscondensed"
	"golang.org/x/image/font/sfnt"

	"yokebook/app/words"
	"yokebook/checks"
)

func pdfOf(t *testing.T, name string, o Options) ([]byte, []checks.Finding) {
	t.Helper()
	s, findings := sheetOf(t, buildOf(t, name), o)
	data, err := s.PDF()
	if err != nil {
		t.Fatal(err)
	}
	return data, findings
}

// numberIn finds numbers as they are printed.
var numberIn = regexp.MustCompile(`−?\d[\d.]*`)

// Source: pdftotext, which reads the document without any code of ours.
func TestPDFHoldsEachNumberOfTheFindings(t *testing.T) {
	for _, name := range demos {
		for _, u := range words.AllUnits {
			pdf, findings := pdfOf(t, name, Options{Units: u})
			have := map[string]bool{}
			for _, n := range numberIn.FindAllString(poppler(t, pdf, "pdftotext", "-layout", "IN", "-"), -1) {
				have[strings.TrimRight(n, ".")] = true
			}
			says, seen := words.English.WithUnits(u), 0
			for _, f := range findings {
				if f.Check == "build.chance" || f.Untouched {
					continue
				}
				w := says.Finding(f)
				for _, n := range numberIn.FindAllString(w.Value+" "+w.Interval+" "+w.Limit, -1) {
					seen++
					if !have[strings.TrimRight(n, ".")] {
						t.Errorf("%s, %s: %s of %q is not in the document", name, u, n, w.Title)
					}
				}
			}
			if seen < 60 {
				t.Errorf("%s: %d numbers looked for", name, seen)
			}
		}
	}
}

func TestPDFSaysWhatItIs(t *testing.T) {
	pdf, _ := pdfOf(t, "links-two-piece", Options{Paper: Letter})
	info := poppler(t, pdf, "pdfinfo", "IN")
	for _, want := range []string{"Order sheet for a propeller shaft: Invented demo: long-wheelbase camper", "NOT FOR MANUFACTURE", "612 x 792 pts (letter)", "yokebook"} {
		if !strings.Contains(info, want) {
			t.Errorf("pdfinfo does not say %q:\n%s", want, info)
		}
	}
	if !bytes.Contains(pdf, []byte("/Lang (en)")) {
		t.Error("the document does not say its language")
	}
	for _, line := range strings.Split(strings.TrimSpace(poppler(t, pdf, "pdffonts", "IN")), "\n")[2:] {
		if !regexp.MustCompile(`yes\s+(yes|no)\s+yes\s`).MatchString(line) {
			t.Errorf("a font is not embedded, or its letters can't be read back: %s", line)
		}
	}
	text := poppler(t, pdf, "pdftotext", "-layout", "IN", "-")
	if first := strings.Fields(text); strings.Join(first[:3], " ") != "NOT FOR MANUFACTURE:" {
		t.Errorf("the document begins with %q", first[:8])
	}
	for i := 1; i <= 3; i++ {
		if want := "page " + strconv.Itoa(i) + " of 3"; !strings.Contains(text, want) {
			t.Errorf("%q is nowhere", want)
		}
	}
}

// What a font lacks comes back as another sign or not at all.
func TestPDFHasAllSigns(t *testing.T) {
	b := buildOf(t, "demo")
	b.Title = "√ ≤ ≥ ° ± β ψ φ ⌀ − × ² ³ · … Ω µ ä ö ü ß é ł"
	s, _ := sheetOf(t, b, Options{})
	pdf, err := s.PDF()
	if err != nil {
		t.Fatal(err)
	}
	if text := poppler(t, pdf, "pdftotext", "-layout", "IN", "-"); !strings.Contains(packed(text), packed(b.Title)) {
		t.Errorf("the title came back as %.200q", text)
	}
	font, err := sfnt.Parse(dejavusanscondensed.TTF)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range b.Title {
		if g, err := font.GlyphIndex(nil, r); err != nil || g == 0 {
			t.Errorf("the font has no %q", r)
		}
	}
}

func packed(text string) string { return strings.Join(strings.Fields(text), "") }

// The lengths on the paper, measured with a ruler of our own on the lines of the document: 1046 and
// 812 mm were read between the joint centres of the two shafts. The scale is the one printed beside
// the drawing, to three digits.
func TestDrawingsAreToScale(t *testing.T) {
	pdf, _ := pdfOf(t, "links-two-piece", Options{})
	scale := regexp.MustCompile(`Scale 1 : ([\d.]+)`).FindStringSubmatch(poppler(t, pdf, "pdftotext", "IN", "-"))
	if scale == nil {
		t.Fatal("no scale is printed")
	}
	per, err := strconv.ParseFloat(scale[1], 64)
	if err != nil {
		t.Fatal(err)
	}
	lengths := lineLengths(t, pdf)
	for _, want := range []float64{1046, 812} {
		near := math.Inf(1)
		for _, mm := range lengths {
			if real := mm * per; math.Abs(real-want) < math.Abs(near-want) {
				near = real
			}
		}
		if math.Abs(near-want) > 0.005*want {
			t.Errorf("no line of the document is %.0f mm long at 1 : %v; the nearest is %.1f mm", want, per, near)
		}
	}
}

// lineLengths are those of the straight lines of a document's first page, mm on the paper.
func lineLengths(t *testing.T, pdf []byte) []float64 {
	t.Helper()
	line := regexp.MustCompile(`(?m)^([\d.]+) ([\d.]+) m\s+([\d.]+) ([\d.]+) l\s+S$`)
	var out []float64
	for _, content := range contents(t, pdf)[:1] {
		for _, m := range line.FindAllStringSubmatch(content, -1) {
			var v [4]float64
			for i := range v {
				v[i], _ = strconv.ParseFloat(m[i+1], 64)
			}
			out = append(out, math.Hypot(v[2]-v[0], v[3]-v[1])*25.4/72)
		}
	}
	return out
}

// contents are the unpacked streams of a document that hold drawing orders, page by page.
func contents(t *testing.T, pdf []byte) []string {
	t.Helper()
	var out []string
	for _, part := range bytes.Split(pdf, []byte("stream\n")) {
		r, err := zlib.NewReader(bytes.NewReader(part))
		if err != nil {
			continue
		}
		data, err := io.ReadAll(r)
		if err == nil && bytes.Contains(data, []byte(" m\n")) && bytes.Contains(data, []byte(" l\n")) {
			out = append(out, string(data))
		}
	}
	if len(out) == 0 {
		t.Fatal("no page of the document draws anything")
	}
	return out
}
