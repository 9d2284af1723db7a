package draw

import (
	"cmp"
	"math"
	"slices"
)

const (
	apartBy  = 3.0   // between two labels, one above the other
	beside   = 16.0  // and side by side, so that they don't read as one
	rows     = 14    // of a shelf
	reach    = 170.0 // longest leader
	rowHigh  = 8.0   // from one row of a shelf to the next
	signSize = 8.0   // half the size of a sign
)

// ink is a straight piece of the drawing that labels keep clear of.
type ink struct {
	a, b Point
	box  Box
}

func inkOf(a, b Point) ink {
	k := ink{a: a, b: b, box: emptyBox()}
	k.box.extend(a, b)
	return k
}

// table is what labels are placed on.
type table struct {
	wide        float64
	top, bottom float64 // how far the drawing reaches
	inks        []ink
	signs       []Box
	taken       []Box
	leaders     []ink
}

// place finds a place for every label and gives back how far the picture reaches up and down, and the
// labels that only left a letter.
func (p *Page) place(d Drawing, f frame, size, high float64) (top, bottom float64, key []Text) {
	t := p.table(high)
	labels := slices.Clone(d.Labels)
	slices.SortStableFunc(labels, func(a, b Label) int {
		return cmp.Or(cmp.Compare(a.Rank, b.Rank), cmp.Compare(a.At.X, b.At.X), cmp.Compare(a.At.Y, b.At.Y), cmp.Compare(a.Text, b.Text))
	})
	var lettered []Text
	for _, l := range labels {
		at := f.put(l.At, l.Shift)
		text := Text{Size: size, Style: l.Style, Label: true}
		text.Lines = wrap(l.Text, size, math.Min(t.wide-2*margin, math.Max(13*size, t.wide*0.42)))
		box, leader, ok := t.find(at, widest(text.Lines, size), float64(len(text.Lines))*size*leading, l.Side)
		if !ok {
			lettered = append(lettered, Text{Lines: []string{l.Text}, Size: size, Style: l.Style})
			text.Lines = nil // its letter follows from where it stands
			box, leader = t.findLetter(at, size, l.Side)
		}
		text.Box = box
		t.taken = append(t.taken, box)
		if leader != nil {
			t.leaders = append(t.leaders, *leader)
			p.Marks = append(p.Marks, Mark{Name: "leader", Style: Leader, Points: []Point{leader.a, leader.b}})
		}
		p.Texts = append(p.Texts, text)
	}
	top, bottom = t.top, t.bottom
	for _, b := range t.taken {
		top, bottom = math.Min(top, b.Min.Y), math.Max(bottom, b.Max.Y)
	}
	return top, bottom, p.letter(lettered)
}

// table gathers the lines and signs of a page.
func (p *Page) table(high float64) *table {
	t := &table{wide: p.Wide, bottom: high}
	for _, m := range p.Marks {
		if m.Style == Doubt {
			continue
		}
		pts := m.flat()
		for i := 1; i < len(pts); i++ {
			k := inkOf(pts[i-1], pts[i])
			t.inks = append(t.inks, k)
			t.top, t.bottom = math.Min(t.top, k.box.Min.Y-4), math.Max(t.bottom, k.box.Max.Y+4)
		}
	}
	for _, s := range p.Signs {
		r := signSize
		switch s.Kind {
		case ArrowSign, DotSign:
			r = 4
		case RingSign:
			r = 2 * signSize
		}
		b := Box{s.At, s.At}.grown(r, r)
		t.signs = append(t.signs, b)
		t.top, t.bottom = math.Min(t.top, b.Min.Y), math.Max(t.bottom, b.Max.Y)
	}
	return t
}

// find is the rule: near the anchor, else on the nearest row of a shelf.
func (t *table) find(at Point, w, h float64, side Side) (Box, *ink, bool) {
	for _, away := range []float64{5, 12, 22, 34, 50, 70, 95} {
		for _, b := range around(at, w, h, side, away) {
			if !t.inside(b) || !t.free(b) || t.inked(b) {
				continue
			}
			if away <= 12 {
				return b, nil, true
			}
			if leader := inkOf(at, nearest(b, at)); !t.crossed(leader) {
				return b, &leader, true
			}
		}
	}
	sides := []Side{Above, Below}
	if side == Below {
		sides = []Side{Below, Above}
	}
	for row := range rows {
		for _, s := range sides {
			if b, leader := t.onShelf(at, w, h, s, row); leader != nil {
				return b, leader, true
			}
		}
	}
	return Box{}, nil, false
}

// onShelf looks for a free place in one row, the nearest to the anchor first.
func (t *table) onShelf(at Point, w, h float64, side Side, row int) (Box, *ink) {
	y := t.top - apartBy - 6 - h - float64(row)*rowHigh
	if side == Below {
		y = t.bottom + apartBy + 6 + float64(row)*rowHigh
	}
	want := math.Min(math.Max(at.X-w/2, margin), math.Max(t.wide-margin-w, margin))
	starts := []float64{want}
	for _, b := range t.taken {
		if b.Min.Y < y+h+apartBy && y < b.Max.Y+apartBy {
			starts = append(starts, b.Max.X+beside+1, b.Min.X-beside-1-w)
		}
	}
	for step := 1; step < 6; step++ {
		starts = append(starts, want+float64(step)*h, want-float64(step)*h)
	}
	slices.SortStableFunc(starts, func(a, b float64) int { return cmp.Compare(math.Abs(a-want), math.Abs(b-want)) })
	for _, x := range starts {
		b := Box{Point{x, y}, Point{x + w, y + h}}
		if math.Abs(x-want) > 0.3*t.wide || !t.inside(b) || !t.free(b) {
			continue
		}
		if leader := inkOf(at, nearest(b, at)); leader.a.minus(leader.b).length() <= reach && !t.crossed(leader) {
			return b, &leader
		}
	}
	return Box{}, nil
}

// around lists boxes beside an anchor, the liked side first.
func around(at Point, w, h float64, side Side, away float64) []Box {
	from := func(x, y float64) Box { return Box{Point{x, y}, Point{x + w, y + h}} }
	above := []Box{from(at.X-w/2, at.Y-away-h), from(at.X, at.Y-away-h), from(at.X-w, at.Y-away-h)}
	below := []Box{from(at.X-w/2, at.Y+away), from(at.X, at.Y+away), from(at.X-w, at.Y+away)}
	right, left := []Box{from(at.X+away, at.Y-h/2)}, []Box{from(at.X-away-w, at.Y-h/2)}
	switch side {
	case Below:
		return slices.Concat(below, right, left, above)
	case Right:
		return slices.Concat(right, above, below, left)
	case Left:
		return slices.Concat(left, above, below, right)
	}
	return slices.Concat(above, right, left, below)
}

func (t *table) inside(b Box) bool { return b.Min.X >= margin-1e-9 && b.Max.X <= t.wide-margin+1e-9 }

// free reports a box that touches no label and no leader.
func (t *table) free(b Box) bool {
	for _, o := range t.taken {
		if b.overlaps(o.grown(beside, apartBy), 0) {
			return false
		}
	}
	for _, l := range t.leaders {
		if b.overlaps(l.box, 1) && b.grown(2, 1).meets(l.a, l.b) {
			return false
		}
	}
	return true
}

// inked reports a box that a line or a sign of the drawing runs through.
func (t *table) inked(b Box) bool {
	if t.signed(b) {
		return true
	}
	for _, k := range t.inks {
		if b.overlaps(k.box, 1) && b.meets(k.a, k.b) {
			return true
		}
	}
	return false
}

// signed reports a box over a sign.
func (t *table) signed(b Box) bool {
	for _, s := range t.signs {
		if b.overlaps(s, 0) {
			return true
		}
	}
	return false
}

// crossed reports a leader that runs through a label or a sign that is not its own, or over another
// leader.
func (t *table) crossed(l ink) bool {
	for _, s := range t.signs {
		if b := s.grown(-2, -2); !s.meets(l.a, l.a) && b.overlaps(l.box, 0) && b.meets(l.a, l.b) {
			return true
		}
	}
	for _, b := range t.taken {
		if b.overlaps(l.box, 2) && b.grown(1, 1).meets(l.a, l.b) {
			return true
		}
	}
	for _, o := range t.leaders {
		if cross(l.a, l.b, o.a, o.b) {
			return true
		}
	}
	return false
}

// cross reports two straight pieces that cut each other.
func cross(a, b, c, d Point) bool {
	side := func(p, q, r Point) float64 { return (q.X-p.X)*(r.Y-p.Y) - (q.Y-p.Y)*(r.X-p.X) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

// nearest is the place on a box's edge that a leader ends at.
func nearest(b Box, at Point) Point {
	in := b
	if at.Y < b.Min.Y || at.Y > b.Max.Y {
		in = b.grown(-2, 0)
	}
	return Point{math.Min(math.Max(at.X, in.Min.X), in.Max.X), math.Min(math.Max(at.Y, in.Min.Y), in.Max.Y)}
}
