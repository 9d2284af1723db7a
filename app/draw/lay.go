package draw

import "math"

// Page sizes of Lay, page units.
const (
	margin   = 14.0
	leading  = 1.22 // line to line, as a share of the font size
	Distance = 500  // mm from which a picture is read by default: arm's length
)

// Options say how a drawing is laid on a page.
type Options struct {
	Wide float64 // of the page, page units of 1/160 inch; 0 is 1280
	Far  float64 // mm from which it is read; 0 is Distance
	Bare bool    // without the heading: what it says stands beside the page
}

// Page is a drawing laid out: everything in page units, y down.
type Page struct {
	View       View
	Wide, High float64
	Title      string
	Scale      float64 // page units per mm; 0 where the drawing has no scale
	Origin     Point   // where the drawing's own zero stands
	Marks      []Mark
	Texts      []Text
	Signs      []Placed
	frame      frame
}

// Put is where a place of the drawing stands on the page.
func (p Page) Put(at Point) Point { return p.frame.put(at, Point{}) }

// Mark is a line, an outline or an arc on the page.
type Mark struct {
	Name   string
	Style  Style
	Points []Point
	Closed bool
	Arc    *Arc    // angles as in the drawing: counter-clockwise, although y is down
	Solid  bool    // an area filled with the ink of its style
	Width  float64 // of its line, page units; 0: that of its style
}

// Placed is a sign on the page; Dir has y down.
type Placed struct {
	Name  string
	Kind  SignKind
	Style Style
	At    Point
	Dir   Point
}

// Text is a label, heading or note with its lines; Box holds them.
type Text struct {
	Lines []string
	Size  float64
	Style Style
	Box   Box
	Label bool // false for heading, notes and key
	Key   bool // a letter that the key explains
}

// frame maps a drawing onto the page before its top is known.
type frame struct {
	x, y float64 // page units per mm
	at   Point   // page place of the drawing's zero
}

func (f frame) put(p, shift Point) Point {
	return Point{f.at.X + f.x*p.X + shift.X, f.at.Y - f.y*p.Y - shift.Y}
}

// Lay puts the drawing on a page.
func (d Drawing) Lay(o Options) Page {
	if !(o.Wide >= 200) {
		o.Wide = 1280
	}
	if !(o.Far > 0) {
		o.Far = Distance
	}
	size, large := TextSize(o.Far, 16), TextSize(o.Far, 18)
	f, high := d.frame(o.Wide)
	p := Page{View: d.View, Wide: o.Wide, Title: d.Title, Origin: f.at, frame: f}
	if d.Flat == 0 {
		p.Scale = f.x
	}
	for _, s := range d.Shapes {
		p.Marks = append(p.Marks, f.mark(s))
	}
	for _, s := range d.Signs {
		dir := s.Dir.unit()
		p.Signs = append(p.Signs, Placed{s.Name, s.Kind, s.Style, f.put(s.At, s.Shift), Point{dir.X, -dir.Y}})
	}
	top, bottom, key := p.place(d, f, size, high)
	head := block(d.Title, large, o.Wide, Plain)
	if o.Bare {
		head.Lines = nil
	}
	down := margin - top
	if head.Lines != nil {
		down += head.Box.Max.Y + margin
	}
	p.shift(Point{0, down})
	if head.Lines != nil {
		p.Texts = append(p.Texts, head.moved(Point{0, margin}))
	}
	y := p.flow(key, bottom+down+margin)
	if len(key) > 0 {
		y += margin
	}
	for _, note := range d.Notes {
		b := block(note, size, o.Wide, Quiet).moved(Point{0, y})
		p.Texts = append(p.Texts, b)
		y = b.Box.Max.Y + size*0.4
	}
	p.High = math.Ceil(y + margin/2)
	return p
}

// frame chooses the scale: as large as the width takes, and no higher than it is wide.
func (d Drawing) frame(wide float64) (frame, float64) {
	b := d.Box
	if b.empty() {
		b = Box{Point{0, 0}, Point{1, 0}}
	}
	room := wide - 2*margin - d.Left
	w, h := math.Max(b.Max.X-b.Min.X, 1e-6), b.Max.Y-b.Min.Y
	f := frame{x: room / w, y: room / w}
	most := math.Min(room*0.8, 620)
	switch {
	case d.Flat > 0:
		high := math.Min(math.Max(room*d.Flat, 640), 780)
		f.y = high / math.Max(h, 1e-6)
	case h*f.x > most:
		f.x, f.y = most/h, most/h
	}
	left := margin + d.Left + (room-f.x*w)/2
	f.at = Point{left - f.x*b.Min.X, f.y * b.Max.Y}
	return f, f.y * h
}

func (f frame) mark(s Shape) Mark {
	m := Mark{Name: s.Name, Style: s.Style, Closed: s.Closed}
	for i, p := range s.Points {
		shift := s.Shift
		if i == len(s.Points)-1 {
			shift = shift.plus(s.Reach)
		}
		m.Points = append(m.Points, f.put(p, shift))
	}
	if s.Arc != nil {
		m.Arc = &Arc{f.put(s.Arc.Centre, s.Shift), s.Arc.Radius * f.x, s.Arc.From, s.Arc.To}
	}
	return m
}

// block is a text over the page's whole width, at its top.
func block(text string, size, wide float64, style Style) Text {
	t := Text{Lines: wrap(text, size, wide-2*margin), Size: size, Style: style}
	t.Box = Box{Point{margin, 0}, Point{margin + widest(t.Lines, size), float64(len(t.Lines)) * size * leading}}
	return t
}

func widest(lines []string, size float64) float64 {
	w := 0.0
	for _, l := range lines {
		w = math.Max(w, textWidth(l, size))
	}
	return w
}

func (t Text) moved(by Point) Text {
	t.Box = Box{t.Box.Min.plus(by), t.Box.Max.plus(by)}
	return t
}

// shift moves everything that is on the page.
func (p *Page) shift(by Point) {
	p.Origin = p.Origin.plus(by)
	p.frame.at = p.Origin
	for i := range p.Marks {
		for k := range p.Marks[i].Points {
			p.Marks[i].Points[k] = p.Marks[i].Points[k].plus(by)
		}
		if a := p.Marks[i].Arc; a != nil {
			a.Centre = a.Centre.plus(by)
		}
	}
	for i := range p.Signs {
		p.Signs[i].At = p.Signs[i].At.plus(by)
	}
	for i := range p.Texts {
		p.Texts[i] = p.Texts[i].moved(by)
	}
}

// flat is a mark as straight lines.
func (m Mark) flat() []Point {
	if m.Arc == nil {
		if m.Closed && len(m.Points) > 0 {
			return append(append([]Point{}, m.Points...), m.Points[0])
		}
		return m.Points
	}
	a := m.Arc
	steps := int(math.Min(math.Max(math.Abs(a.To-a.From)*a.Radius/3, 8), 96))
	out := make([]Point, steps+1)
	for i := range out {
		q := pointing(a.From+(a.To-a.From)*float64(i)/float64(steps), a.Radius)
		out[i] = Point{a.Centre.X + q.X, a.Centre.Y - q.Y}
	}
	return out
}
