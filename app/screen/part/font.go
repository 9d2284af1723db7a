package part

import (
	"sync"
	"unicode"

	"codeberg.org/go-fonts/dejavu/dejavusanscondensed"
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// covered are the characters that the toolkit's two upright text fonts hold, as far as our texts and the
// names that people give need them.
var covered = &unicode.RangeTable{
	R16: []unicode.Range16{
		{Lo: 0x20, Hi: 0x7e, Stride: 1},   // Latin
		{Lo: 0xa0, Hi: 0x17f, Stride: 1},  // with marks; ± ° ² · × µ
		{Lo: 0x391, Hi: 0x3a1, Stride: 1}, // Greek
		{Lo: 0x3a3, Hi: 0x3a9, Stride: 1},
		{Lo: 0x3b1, Hi: 0x3c9, Stride: 1},
		{Lo: 0x400, Hi: 0x45f, Stride: 1},   // Cyrillic
		{Lo: 0x2010, Hi: 0x2015, Stride: 1}, // dashes
		{Lo: 0x2018, Hi: 0x201e, Stride: 1}, // quotation marks
		{Lo: 0x2026, Hi: 0x2026, Stride: 1}, // …
		{Lo: 0x2032, Hi: 0x2033, Stride: 1}, // minutes and seconds of arc
	},
	LatinOffset: 2,
}

// signs are the characters besides that the font of the drawings holds: arrows, relations, the diameter.
var signs = &unicode.RangeTable{
	R16: []unicode.Range16{
		{Lo: 0x2190, Hi: 0x2193, Stride: 1},  // ← ↑ → ↓
		{Lo: 0x2212, Hi: 0x2212, Stride: 1},  // minus
		{Lo: 0x2260, Hi: 0x2265, Stride: 1},  // ≠ ≤ ≥
		{Lo: 0x2300, Hi: 0x2300, Stride: 1},  // ⌀
		{Lo: 0x25b2, Hi: 0x25bc, Stride: 10}, // ▲ ▼
	},
}

// drawings is the font of the drawings, for texts with signs that the toolkit's fonts lack.
var drawings = fyne.NewStaticResource("DejaVuSansCondensed.ttf", dejavusanscondensed.TTF)

// fontOf is the font that a text is set in; nil leaves the choice to the toolkit, character by character.
// The toolkit's choice depends on the fonts of the device, reads one of emoji and looks through every font
// of the system before the first letter is drawn, so it is asked only for a text that needs it.
func fontOf(words string, style fyne.TextStyle) fyne.Resource {
	ours := true
	for _, r := range words {
		switch {
		case unicode.Is(covered, r):
		case unicode.Is(signs, r):
			ours = false
		default:
			return nil
		}
	}
	switch {
	case !ours:
		return drawings
	case style.Bold:
		return theme.DefaultTextBoldFont()
	}
	return theme.DefaultTextFont()
}

// run is a piece of a line that is set in one font; nil leaves the choice to the toolkit.
type run struct {
	words string
	font  fyne.Resource
}

// runsOf cuts a line into pieces: signs are set in the font of the drawings, and what stands beside them
// stays in the font of all other texts, bold where it is bold.
func runsOf(words string, style fyne.TextStyle) []run {
	font := fontOf(words, style)
	if font != drawings {
		return []run{{words, font}}
	}
	var runs []run
	begin, sign := 0, false
	for i, r := range words {
		if is := unicode.Is(signs, r); is != sign {
			if i > begin {
				runs = append(runs, run{words: words[begin:i]})
			}
			begin, sign = i, is
		}
	}
	runs = append(runs, run{words: words[begin:]})
	for i := range runs {
		runs[i].font = fontOf(runs[i].words, style)
	}
	return runs
}

// reference is the size, in points, at which a text is measured; other sizes follow in proportion.
const reference = 64

// measured holds the sizes of runs at the reference size: the toolkit shapes a text anew for each size,
// and a text that fits itself to its place is asked for at a dozen. It is emptied when full.
var measured = struct {
	sync.Mutex
	sizes map[phrase]extent
}{sizes: map[phrase]extent{}}

type extent struct {
	fyne.Size
	base float32 // how far below its top the letters stand
}

const phrases = 4096

type phrase struct {
	words string
	bold  bool
}

func sizeOf(r run, points float32, style fyne.TextStyle) extent {
	key := phrase{r.words, style.Bold}
	measured.Lock()
	defer measured.Unlock()
	at, ok := measured.sizes[key]
	if !ok {
		at.Size, at.base = fyne.CurrentApp().Driver().RenderedTextSize(r.words, reference, style, r.font)
		if len(measured.sizes) >= phrases {
			clear(measured.sizes)
		}
		measured.sizes[key] = at
	}
	in := points / reference
	return extent{fyne.NewSize(at.Width*in, at.Height*in), at.base * in}
}

func textWidth(s string, points float32, style fyne.TextStyle) float32 {
	wide := float32(0)
	for _, r := range runsOf(s, style) {
		wide += sizeOf(r, points, style).Width
	}
	return wide
}

// ordinary is a run that has the height of every line, whatever stands in it.
func ordinary(style fyne.TextStyle) run { return run{"Mg", fontOf("Mg", style)} }

func lineHeight(points float32, style fyne.TextStyle) float32 {
	return sizeOf(ordinary(style), points, style).Height
}
