package draw

import (
	"math"
	"strings"
	"sync"

	"codeberg.org/go-fonts/dejavu/dejavusanscondensed"
	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// capital is the height of a capital letter of the font, as a share of its size.
const capital = 0.729

// unitsPerMM is how many page units make a millimetre: 160 to the inch.
const unitsPerMM = 160 / 25.4

// TextSize returns the font size, in page units, at which capitals are seen under an angle of so many
// minutes of arc from a distance:
//
//	h = 2·D·tan(minutes/2)
//
// Source: ISO 9241-3: 16 minutes at least, 20 to 22 preferred (as quoted by a maker's ergonomics page).
func TextSize(distanceMM, minutes float64) float64 {
	return 2 * distanceMM * math.Tan(minutes/120*math.Pi/180) * unitsPerMM / capital
}

// face is the font of all pictures: one with every sign that they need. It is locked because reading
// glyphs takes a buffer.
var face = struct {
	sync.Mutex
	once   sync.Once
	font   *sfnt.Font
	buffer sfnt.Buffer
	wide   map[rune]float64
}{wide: map[rune]float64{}}

const perEm = 2048

// loaded returns the font; it is part of the program, and a test reads it.
func loaded() *sfnt.Font {
	face.once.Do(func() { face.font, _ = sfnt.Parse(dejavusanscondensed.TTF) })
	return face.font
}

// textWidth is the length of a line of text at a font size.
func textWidth(text string, size float64) float64 {
	face.Lock()
	defer face.Unlock()
	sum := 0.0
	for _, r := range text {
		sum += advance(r)
	}
	return sum * size
}

// advance is the width of a character at font size 1.
func advance(r rune) float64 {
	if w, ok := face.wide[r]; ok {
		return w
	}
	w := 0.6
	if f := loaded(); f != nil {
		if g, err := f.GlyphIndex(&face.buffer, r); err == nil {
			if a, err := f.GlyphAdvance(&face.buffer, g, fixed.I(perEm), font.HintingNone); err == nil {
				w = float64(a) / 64 / perEm
			}
		}
	}
	face.wide[r] = w
	return w
}

// glyph returns the outline of a character at font size 1, y down, and whether the font has it.
func glyph(r rune) (sfnt.Segments, bool) {
	f := loaded()
	if f == nil {
		return nil, false
	}
	g, err := f.GlyphIndex(&face.buffer, r)
	if err != nil || g == 0 {
		return nil, false
	}
	s, err := f.LoadGlyph(&face.buffer, g, fixed.I(perEm), nil)
	return s, err == nil
}

// wrap breaks a text into lines no wider than wide, at spaces; a word that is wider stands alone. A number
// stays with its doubt and its unit.
func wrap(text string, size, wide float64) []string {
	var lines []string
	for _, word := range tied(strings.Fields(text)) {
		last := len(lines) - 1
		if last >= 0 && textWidth(lines[last]+" "+word, size) <= wide {
			lines[last] += " " + word
			continue
		}
		lines = append(lines, word)
	}
	return lines
}

// tied joins the words that belong to one number: "90.05 ± 0.09 mm".
func tied(words []string) []string {
	var out []string
	for i, word := range words {
		if i > 0 && (word == "±" || words[i-1] == "±" || words[i-1] == "⌀" || unitOf(word) && endsInDigit(words[i-1])) {
			out[len(out)-1] += " " + word
			continue
		}
		out = append(out, word)
	}
	return out
}

// unitOf reports a word that is a unit, with or without what ends a phrase behind it.
func unitOf(word string) bool {
	switch strings.TrimRight(word, ".,;:)") {
	case "mm", "in", "kg", "lb", "N", "kN", "N·m", "lbf·ft", "rad/s²":
		return true
	}
	return false
}

func endsInDigit(word string) bool {
	last := word[len(word)-1]
	return last >= '0' && last <= '9'
}
