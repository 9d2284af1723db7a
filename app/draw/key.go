package draw

import (
	"cmp"
	"math"
	"slices"
	"strings"
)

// letterWide is the width kept for a letter, as a share of the font size: that of the widest, with air.
const letterWide = 1.0

// findLetter finds a place for a letter: near its anchor on free ground, else over the drawing's lines but
// no sign, else further and further out. It always finds one: the ground below is endless.
func (t *table) findLetter(at Point, size float64, side Side) (Box, *ink) {
	w, h := size*letterWide, size*leading
	for _, ring := range []struct {
		from, to float64
		clean    bool
	}{{4, 24, true}, {4, 24, false}, {28, 120, true}, {28, 120, false}} {
		for away := ring.from; away < ring.to; away += 8 {
			for _, b := range around(at, w, h, side, away) {
				if !t.inside(b) || !t.freeLetter(b) || t.signed(b) || ring.clean && t.inked(b) {
					continue
				}
				leader := inkOf(at, nearest(b, at))
				if away < 10 {
					return b, nil
				}
				if !t.crossed(leader) {
					return b, &leader
				}
			}
		}
	}
	x := math.Min(math.Max(at.X-w/2, margin), t.wide-margin-w)
	for y := t.bottom; ; y += rowHigh {
		if b := (Box{Point{x, y}, Point{x + w, y + h}}); t.freeLetter(b) {
			return b, nil
		}
	}
}

// freeLetter is free with less air at the sides: letters are short and don't read on.
func (t *table) freeLetter(b Box) bool {
	for _, o := range t.taken {
		if b.overlaps(o.grown(4, 1), 0) {
			return false
		}
	}
	for _, l := range t.leaders {
		if b.overlaps(l.box, 1) && b.meets(l.a, l.b) {
			return false
		}
	}
	return true
}

// letter gives the labels that found no place their letters, from left to right, and gives back the
// key: each letter with its text. lettered holds the texts in the order of the places left for them.
func (p *Page) letter(lettered []Text) []Text {
	var places []int
	for i, x := range p.Texts {
		if x.Lines == nil {
			places = append(places, i)
		}
	}
	order := make([]int, len(lettered))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		p, q := p.Texts[places[a]].Box.Min, p.Texts[places[b]].Box.Min
		return cmp.Or(cmp.Compare(p.X, q.X), cmp.Compare(p.Y, q.Y))
	})
	var key []Text
	for n, k := range order {
		name := letterName(n)
		text := &p.Texts[places[k]]
		text.Lines, text.Key = []string{name}, true
		text.Box.Min.X += (text.Box.Max.X - text.Box.Min.X - textWidth(name, text.Size)) / 2
		text.Box.Max.X = text.Box.Min.X + textWidth(name, text.Size)
		entry := lettered[k]
		entry.Lines[0] = name + "  " + entry.Lines[0]
		key = append(key, entry)
	}
	return key
}

// letterName counts A … Z, AA, BB …, without I and O, which look like a line and a nought.
func letterName(n int) string {
	const letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"
	return strings.Repeat(letters[n%len(letters):n%len(letters)+1], 1+n/len(letters))
}

// flow sets the key below the picture, side by side where there is room, and gives back where it ends.
func (p *Page) flow(key []Text, y float64) float64 {
	const gap = 28.0
	x, high := margin, 0.0
	for _, k := range key {
		k.Lines = wrapKey(k.Lines[0], k.Size, p.Wide-2*margin)
		w, h := widest(k.Lines, k.Size), float64(len(k.Lines))*k.Size*leading
		if x > margin && x+w > p.Wide-margin {
			x, y, high = margin, y+high, 0
		}
		k.Box = Box{Point{x, y}, Point{x + w, y + h}}
		p.Texts = append(p.Texts, k)
		x, high = x+w+gap, math.Max(high, h)
	}
	return y + high
}

// wrapKey wraps an entry and keeps the air behind its letter.
func wrapKey(text string, size, wide float64) []string {
	letter, rest, _ := strings.Cut(text, "  ")
	lines := wrap(rest, size, wide-textWidth(letter+"  ", size))
	if len(lines) > 0 {
		lines[0] = letter + "  " + lines[0]
	}
	return lines
}
