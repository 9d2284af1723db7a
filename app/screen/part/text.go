package part

import (
	"image/color"
	"regexp"
	"strings"
	"unicode/utf8"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"yokebook/app/screen/look"
)

// Ink picks a colour from the palette in use.
type Ink func(look.Palette) color.NRGBA

// The inks of plain text.
var (
	Plain Ink = func(p look.Palette) color.NRGBA { return p.Ink }
	Quiet Ink = func(p look.Palette) color.NRGBA { return p.Quiet }
	Risk  Ink = func(p look.Palette) color.NRGBA { return p.Risk }
	OnIt  Ink = func(p look.Palette) color.NRGBA { return p.OnIt }
)

// Held is the least size of a text that has to be read: its capitals stand 16 minutes of arc high to
// an eye 360 mm away, the least of ISO 9241-3 (from memory), where a phone is held in a hand.
const Held = 15

// Break is where a long word may be broken without a sign (U+200B, zero width space): behind the
// slashes of an address. It is not drawn.
const Break = "\u200b"

// Tied is a space where a line is broken only if nothing else helps (U+00A0): between a number and
// its unit.
const Tied = "\u00a0"

// Text is text in the largest size between Least and Most at which it fits its place, broken
// between words. Where even Least does not fit it is cut with an ellipsis and Fits says so.
type Text struct {
	widget.BaseWidget
	Words       string
	Least, Most float32
	Style       fyne.TextStyle
	Align       fyne.TextAlign
	Ink         Ink
	Struck      bool // a line is drawn through every line of the text
	Top         bool // stands at the top of its place instead of in the middle

	fits bool
}

// NewText returns text that fits itself to its place.
func NewText(words string, least, most float32, ink Ink) *Text {
	t := &Text{Words: words, Least: least, Most: most, Ink: ink, fits: true}
	t.ExtendBaseWidget(t)
	return t
}

// Bold makes the text bold.
func (t *Text) Bold() *Text { t.Style.Bold = true; return t }

// Centred sets the text in the middle of each line.
func (t *Text) Centred() *Text { t.Align = fyne.TextAlignCenter; return t }

// AtTop sets the text at the top of its place.
func (t *Text) AtTop() *Text { t.Top = true; return t }

// Say changes the words.
func (t *Text) Say(words string) {
	if t.Words == words {
		return
	}
	t.Words = words
	t.Refresh()
}

// Fits reports whether the whole text stood in its place when it was last laid out.
func (t *Text) Fits() bool { return t.fits }

// need is the height that the text takes of a place, and whether all of it stands there.
func (t *Text) need(place fyne.Size) (high float32, fits bool) {
	lines, points, fits := breakToFit(t.Words, place, t.Least, max(t.Least, look.Scaled(t.Most)), t.Style)
	return lineHeight(points, t.Style) * float32(len(lines)), fits
}

// needLeast is the height that the text takes in its least size.
func (t *Text) needLeast(wide float32) float32 {
	lines, points, _ := breakToFit(t.Words, fyne.NewSize(wide, 10000), t.Least, t.Least, t.Style)
	return lineHeight(points, t.Style) * float32(len(lines))
}

// CreateRenderer is called by the toolkit.
func (t *Text) CreateRenderer() fyne.WidgetRenderer { return &textRenderer{t: t} }

type textRenderer struct {
	t     *Text
	lines []fyne.CanvasObject
	size  fyne.Size
}

func (r *textRenderer) Destroy()                     {}
func (r *textRenderer) MinSize() fyne.Size           { return fyne.NewSize(1, r.t.Least*1.2) }
func (r *textRenderer) Objects() []fyne.CanvasObject { return r.lines }

func (r *textRenderer) Refresh() {
	r.Layout(r.t.Size())
	canvas.Refresh(r.t)
}

// Layout breaks the words anew for a place of the given size.
func (r *textRenderer) Layout(size fyne.Size) {
	r.size = size
	r.lines = r.lines[:0]
	if size.Width < 1 || size.Height < 1 { // no place on this page
		return
	}
	broken, points, fits := breakToFit(r.t.Words, size, r.t.Least, max(r.t.Least, look.Scaled(r.t.Most)), r.t.Style)
	r.t.fits = fits
	ink := r.t.Ink(look.Now())
	high := lineHeight(points, r.t.Style)
	y := (size.Height - high*float32(len(broken))) / 2
	if r.t.Top || y < 0 {
		y = 0
	}
	for _, words := range broken {
		r.lines = append(r.lines, r.line(words, points, fyne.NewPos(0, y), fyne.NewSize(size.Width, high), ink)...)
		if r.t.Struck {
			r.lines = append(r.lines, r.through(words, points, y+high*0.55, size.Width))
		}
		y += high
	}
}

// line is one line of the text: one object, or one for each of its runs, all on one base line.
func (r *textRenderer) line(words string, points float32, at fyne.Position, place fyne.Size, ink color.Color) []fyne.CanvasObject {
	style := r.t.Style
	runs := runsOf(words, style)
	if len(runs) == 1 {
		line := newLine(runs[0], points, style, ink)
		line.Alignment = r.t.Align
		line.Move(at)
		line.Resize(place)
		return []fyne.CanvasObject{line}
	}
	var out []fyne.CanvasObject
	base := sizeOf(ordinary(style), points, style).base
	x, _ := r.from(words, points, place.Width)
	for _, run := range runs {
		size := sizeOf(run, points, style)
		line := newLine(run, points, style, ink)
		line.Move(at.AddXY(x, base-size.base))
		line.Resize(size.Size)
		out = append(out, line)
		x += size.Width
	}
	return out
}

func newLine(r run, points float32, style fyne.TextStyle, ink color.Color) *canvas.Text {
	line := canvas.NewText(r.words, ink)
	line.TextSize, line.TextStyle, line.FontSource = points, style, r.font
	return line
}

// from is where a line begins in a width, and how long it is.
func (r *textRenderer) from(words string, points, width float32) (x, long float32) {
	long = min(textWidth(words, points, r.t.Style), width)
	switch r.t.Align {
	case fyne.TextAlignCenter:
		x = (width - long) / 2
	case fyne.TextAlignTrailing:
		x = width - long
	}
	return x, long
}

// through is the line through a line of the text, at a height of its place.
func (r *textRenderer) through(words string, points, y, width float32) fyne.CanvasObject {
	x, long := r.from(words, points, width)
	line := canvas.NewLine(r.t.Ink(look.Now()))
	line.StrokeWidth = 2
	line.Position1, line.Position2 = fyne.NewPos(x, y), fyne.NewPos(x+long, y)
	return line
}

// breakToFit finds the largest size at which words fit, and the lines they break into. What is tied
// together is torn only where nothing else helps.
func breakToFit(words string, place fyne.Size, least, most float32, style fyne.TextStyle) (lines []string, points float32, fits bool) {
	if strings.TrimSpace(words) == "" {
		return nil, least, true
	}
	tied := tie(words)
	if lines, points, fits = breakWhole(tied, place, least, most, style); fits {
		return lines, points, true
	}
	if strings.Contains(tied, Tied) {
		return breakWhole(strings.ReplaceAll(tied, Tied, " "), place, least, most, style)
	}
	return lines, points, false
}

// numbers are a number with its unit, and the two ends of an interval.
var numbers = regexp.MustCompile(`(\d) (mm|in|kg|lb|N|kN|N·m|lbf·ft|rad/s²|1/min|rev/min)\b|(\d) … (−?\d)`)

// tie keeps numbers in one piece, and lines from beginning with a dot.
func tie(words string) string {
	words = numbers.ReplaceAllStringFunc(words, func(n string) string { return strings.ReplaceAll(n, " ", Tied) })
	return strings.ReplaceAll(words, " · ", Tied+"· ")
}

func breakWhole(words string, place fyne.Size, least, most float32, style fyne.TextStyle) (lines []string, points float32, fits bool) {
	for points = most; points >= least; points-- {
		high := lineHeight(points, style)
		if room := int(place.Height / high); room >= 1 {
			if lines, ok := breakLines(words, place.Width, points, style); ok && len(lines) <= room {
				return evened(lines, words, place.Width, points, style), points, true
			}
		}
	}
	lines, _ = breakLines(words, place.Width, least, style)
	room := max(1, int(place.Height/lineHeight(least, style)))
	if len(lines) > room {
		lines = lines[:room]
		lines[room-1] += " …"
	}
	return lines, least, false
}

// evened breaks two or three lines anew: two where a phrase ends, else so that they are about as long, and
// no word is left alone.
func evened(lines []string, words string, width, points float32, style fyne.TextStyle) []string {
	n := len(lines)
	if n < 2 || n > 3 || strings.Contains(words, "\n") {
		return lines
	}
	if n == 2 {
		for _, ends := range []string{"·", ",;:.?!"} {
			if left, right, ok := halved(words, ends, width, points, style); ok {
				return []string{left, right}
			}
		}
	}
	low, high := width/float32(n)/2, width
	for high-low > 4 {
		mid := (low + high) / 2
		if even, ok := breakLines(words, mid, points, style); ok && len(even) == n {
			lines, high = even, mid
		} else {
			low = mid
		}
	}
	return lines
}

// lopsided is how much shorter one of two lines may be than the other, for the sake of the phrase.
const lopsided = 0.3

// halved breaks a text in two behind a word that ends with one of ends, as evenly as that can be.
func halved(words, ends string, width, points float32, style fyne.TextStyle) (left, right string, ok bool) {
	best := float32(lopsided)
	for i := range words {
		if words[i] != ' ' || i == 0 || !strings.ContainsRune(ends, lastRune(words[:i])) {
			continue
		}
		l, r := strings.ReplaceAll(words[:i], Break, ""), strings.ReplaceAll(words[i+1:], Break, "")
		a, b := textWidth(l, points, style), textWidth(r, points, style)
		if max(a, b) <= width && min(a, b) > best*max(a, b) {
			left, right, ok, best = l, r, true, min(a, b)/max(a, b)
		}
	}
	return left, right, ok
}

func lastRune(s string) rune {
	r, _ := utf8.DecodeLastRuneInString(s)
	return r
}

// breakLines breaks words into lines no wider than width; false when one word alone is wider.
func breakLines(words string, width, points float32, style fyne.TextStyle) ([]string, bool) {
	space := textWidth(" ", points, style)
	var lines []string
	fits := true
	for _, paragraph := range strings.Split(words, "\n") {
		line, used := "", float32(0)
		for _, word := range strings.FieldsFunc(paragraph, func(r rune) bool { return r == ' ' || r == '\t' }) {
			gap, wide := " ", space
			for _, piece := range strings.Split(hyphened(word), Break) {
				w := textWidth(piece, points, style)
				fits = fits && w <= width
				switch {
				case line == "":
					line, used = piece, w
				case used+wide+w <= width:
					line, used = line+gap+piece, used+wide+w
				default:
					lines = append(lines, line)
					line, used = piece, w
				}
				gap, wide = "", 0
			}
		}
		lines = append(lines, line)
	}
	return lines, fits
}

func digit(b byte) bool { return b >= '0' && b <= '9' }

// hyphened lets a word break behind its hyphens; a minus sign in front of a number is none, and no
// date is torn.
func hyphened(word string) string {
	first, rest, ok := strings.Cut(word, "-")
	if !ok || first == "" || rest == "" || digit(first[len(first)-1]) && digit(rest[0]) {
		return word
	}
	return first + "-" + Break + rest
}
