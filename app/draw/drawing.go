package draw

import "math"

// Point is a place in a drawing, mm, or on a page.
type Point struct{ X, Y float64 }

func (p Point) plus(q Point) Point    { return Point{p.X + q.X, p.Y + q.Y} }
func (p Point) minus(q Point) Point   { return Point{p.X - q.X, p.Y - q.Y} }
func (p Point) by(f float64) Point    { return Point{p.X * f, p.Y * f} }
func (p Point) length() float64       { return math.Sqrt(p.X*p.X + p.Y*p.Y) }
func (p Point) square() Point         { return Point{-p.Y, p.X} }
func (p Point) toward(q Point) Point  { return q.minus(p).unit() }
func (p Point) middle(q Point) Point  { return p.plus(q).by(0.5) }
func (p Point) along(q Point) float64 { return p.X*q.X + p.Y*q.Y }
func (p Point) direction() float64    { return math.Atan2(p.Y, p.X) }
func pointing(angle, r float64) Point { sin, cos := math.Sincos(angle); return Point{r * cos, r * sin} }
func finite(numbers ...float64) bool {
	for _, f := range numbers {
		if math.IsNaN(f) || math.IsInf(f, 0) {
			return false
		}
	}
	return true
}

// unit is the direction of p, of length 1; to the right where p has none.
func (p Point) unit() Point {
	n := p.length()
	if n == 0 {
		return Point{1, 0}
	}
	return p.by(1 / n)
}

// Style says what a shape or a label stands for; a Theme gives it colour, width and dashes.
type Style string

// The styles.
const (
	Body      Style = "body"      // outline of a part whose size was read
	Outline   Style = "outline"   // outline of a part whose size was not read
	Read      Style = "read"      // hair line: an axis or a curve that was read
	Predicted Style = "predicted" // the same, computed
	Doubt     Style = "doubt"     // band: where a line may be
	Ghost     Style = "ghost"     // where a part stands at an end of the travel, read
	Foreseen  Style = "foreseen"  // the same, computed
	Worst     Style = "worst"     // the place that decides, out of its limit
	Unsettled Style = "unsettled" // the place that decides, unsure
	Obstacle  Style = "obstacle"  // what stands in the way
	Measure   Style = "measure"   // dimension lines and what they measure from
	Guide     Style = "guide"     // construction lines
	Leader    Style = "leader"    // from a label to what it speaks of
	Frame     Style = "frame"     // axes and grid of a chart
	Second    Style = "second"    // a second computed curve
	Third     Style = "third"     // and a third
	Plain     Style = "plain"     // text that stands for itself
	Quiet     Style = "quiet"     // lesser text
	Tool      Style = "tool"      // what a picture points at, and the tool on it
	Ground    Style = "ground"    // the paper: faces that hide what lies behind them
)

// Styles lists all of them in a fixed order.
var Styles = []Style{Body, Outline, Read, Predicted, Doubt, Ghost, Foreseen, Worst, Unsettled, Obstacle, Measure, Guide, Leader, Frame, Second, Third, Plain, Quiet, Tool, Ground}

// Shape is a line through points, an outline, or an arc.
type Shape struct {
	Name   string // what it is, in plain words: "axis of gearbox"; may be empty
	Style  Style
	Points []Point
	Closed bool  // the outline of an area
	Arc    *Arc  // instead of Points
	Shift  Point // moved by so many page units after scaling, y up
	Reach  Point // its last point moved further, likewise
}

// Arc is part of a circle, from one angle to another in radians, counter-clockwise where To is greater.
type Arc struct {
	Centre   Point
	Radius   float64
	From, To float64
}

// SignKind is a mark that has the same size at every scale.
type SignKind string

// The signs.
const (
	JointSign SignKind = "joint" // a circle with a cross
	DotSign   SignKind = "dot"
	RingSign  SignKind = "ring"  // around something that was drawn
	ArrowSign SignKind = "arrow" // a head whose tip stands at At and points along Dir
	CutSign   SignKind = "cut"   // a part that goes on: a wavy end square to Dir
	MassSign  SignKind = "mass"  // a centre of mass
)

// Sign is a mark at a place.
type Sign struct {
	Name  string
	Kind  SignKind
	Style Style
	At    Point
	Dir   Point
	Shift Point // page units, y up
}

// Side is where a label likes to stand.
type Side int

// The sides.
const (
	Above Side = iota
	Below
	Right
	Left
)

// Label is a text and what it speaks of.
type Label struct {
	Text  string
	At    Point
	Shift Point // page units, y up: with what it speaks of
	Side  Side
	Rank  int // lower ones choose first
	Style Style
}

// Box is a rectangle with sides along the axes.
type Box struct{ Min, Max Point }

// Drawing is a picture in its own space.
type Drawing struct {
	View   View
	Title  string
	Notes  []string // stand below the picture: what was not read, how to take it
	Shapes []Shape
	Signs  []Sign
	Labels []Label
	Box    Box // what must be in sight, mm
	// Flat drawings may be stretched: a chart has no scale of lengths. Their height is this share of
	// their width; 0 keeps one scale in both directions.
	Flat float64
	Left float64 // page units kept free on its left
}

// extend makes a box hold a point; a box that holds nothing yet has Min > Max.
func (b *Box) extend(points ...Point) {
	for _, p := range points {
		if !finite(p.X, p.Y) {
			continue
		}
		b.Min = Point{math.Min(b.Min.X, p.X), math.Min(b.Min.Y, p.Y)}
		b.Max = Point{math.Max(b.Max.X, p.X), math.Max(b.Max.Y, p.Y)}
	}
}

func emptyBox() Box {
	return Box{Point{math.Inf(1), math.Inf(1)}, Point{math.Inf(-1), math.Inf(-1)}}
}

func (b Box) empty() bool { return !(b.Max.X >= b.Min.X && b.Max.Y >= b.Min.Y) }

// overlaps reports boxes that share more than an edge once both are grown by half of pad.
func (b Box) overlaps(o Box, pad float64) bool {
	return b.Min.X < o.Max.X+pad && o.Min.X < b.Max.X+pad && b.Min.Y < o.Max.Y+pad && o.Min.Y < b.Max.Y+pad
}

func (b Box) grown(x, y float64) Box {
	return Box{Point{b.Min.X - x, b.Min.Y - y}, Point{b.Max.X + x, b.Max.Y + y}}
}

// meets reports a box that a straight line from p to q runs through.
func (b Box) meets(p, q Point) bool {
	t0, t1 := 0.0, 1.0
	d := q.minus(p)
	for _, e := range [4][2]float64{{-d.X, p.X - b.Min.X}, {d.X, b.Max.X - p.X}, {-d.Y, p.Y - b.Min.Y}, {d.Y, b.Max.Y - p.Y}} {
		switch {
		case e[0] == 0:
			if e[1] < 0 {
				return false
			}
		case e[0] < 0:
			t0 = math.Max(t0, e[1]/e[0])
		default:
			t1 = math.Min(t1, e[1]/e[0])
		}
	}
	return t0 <= t1
}

func (d *Drawing) line(style Style, name string, points ...Point) {
	d.Shapes = append(d.Shapes, Shape{Name: name, Style: style, Points: points})
	d.Box.extend(points...)
}

func (d *Drawing) area(style Style, name string, points ...Point) {
	d.Shapes = append(d.Shapes, Shape{Name: name, Style: style, Points: points, Closed: true})
	d.Box.extend(points...)
}

func (d *Drawing) circle(style Style, name string, centre Point, r float64) {
	d.Shapes = append(d.Shapes, Shape{Name: name, Style: style, Arc: &Arc{centre, r, 0, 2 * math.Pi}, Closed: true})
	d.Box.extend(Point{centre.X - r, centre.Y - r}, Point{centre.X + r, centre.Y + r})
}

func (d *Drawing) sign(kind SignKind, style Style, name string, at, dir Point) {
	d.Signs = append(d.Signs, Sign{Name: name, Kind: kind, Style: style, At: at, Dir: dir})
	d.Box.extend(at)
}

func (d *Drawing) label(rank int, side Side, style Style, at Point, text string) {
	if text != "" {
		d.Labels = append(d.Labels, Label{Text: text, At: at, Side: side, Rank: rank, Style: style})
	}
}

// bar is an outline of length a…b and width wide, square to it.
func bar(a, b Point, wide float64) []Point {
	o := a.toward(b).square().by(wide / 2)
	return []Point{a.plus(o), b.plus(o), b.minus(o), a.minus(o)}
}

// dimension draws a measured length from a to b, aside by page units, with its text.
func (d *Drawing) dimension(a, b Point, aside float64, name, text string, rank int) {
	way := a.toward(b)
	out := way.square().by(aside)
	for _, p := range []Point{a, b} {
		d.Shapes = append(d.Shapes, Shape{Style: Measure, Points: []Point{p, p}, Reach: out.by(1.15)})
	}
	d.Shapes = append(d.Shapes, Shape{Name: name, Style: Measure, Points: []Point{a, b}, Shift: out})
	d.Signs = append(d.Signs, Sign{Kind: ArrowSign, Style: Measure, At: a, Dir: way.by(-1), Shift: out},
		Sign{Kind: ArrowSign, Style: Measure, At: b, Dir: way, Shift: out})
	side := Below
	if out.Y > 0 {
		side = Above
	}
	d.Labels = append(d.Labels, Label{Text: text, At: a.middle(b), Shift: out, Side: side, Rank: rank, Style: Plain})
}
