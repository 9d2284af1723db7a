package tool

import (
	"math"

	"yokebook/app/draw"
	"yokebook/measure"
)

// LineWide and LineHigh are the size of the picture of the drive line in its own units.
const (
	LineWide = 420
	LineHigh = 132
)

// Scene is what the picture of the drive line shows.
type Scene struct {
	Point  measure.Point // the part is marked and its tool laid on
	State  measure.State // how the vehicle stands
	Shafts int           // 1, or 2 with a centre bearing
}

// frame holds the places that depend on how the vehicle stands.
type frame struct {
	axleX, axleY, wheel float64
	ground              float64
	front, centre, rear [2]float64 // joint centres
}

const (
	railY   = 38.0 // underside of the frame rail
	joint1X = 128.0
	joint1Y = 66.0
)

func frameOf(s Scene) frame {
	f := frame{axleX: 360, axleY: 78, wheel: 27}
	switch s.State.Ride {
	case measure.Droop:
		f.axleY = 88
	case measure.Bump:
		f.axleY = 68
	}
	f.ground = f.axleY + f.wheel
	if s.State.Ride == measure.Droop {
		f.ground = 126
	}
	f.front = [2]float64{joint1X, joint1Y}
	f.rear = [2]float64{f.axleX - 40, f.axleY - 2}
	f.centre = [2]float64{224, (joint1Y + f.rear[1]) / 2}
	return f
}

// Line draws where a point is read: the drive line from the side with the part marked and the tool on
// it, or that drive line small and beside it the part itself with what is measured on it. A part off the
// vehicle is marked in its place.
func Line(s Scene) draw.Page {
	d := newDrawing(LineWide, LineHigh)
	d.at, d.scale = point{detailX, 10}, detailSize
	if !d.detail(s.Point) {
		return whole(s, true)
	}
	small := whole(s, false)
	for _, m := range small.Marks {
		for i := range m.Points {
			m.Points[i] = draw.Point{X: overview * m.Points[i].X, Y: 42 + overview*m.Points[i].Y}
		}
		m.Width = math.Max(overview*m.Width, 1)
		d.Marks = append(d.Marks, m)
	}
	return d.Page
}

// Where a detail stands beside the drive line, and how small that is then.
const (
	detailX    = 194.0
	detailSize = 0.93
	overview   = 0.42
)

// whole draws the drive line, with the tool on it or without.
func whole(s Scene, withTool bool) draw.Page {
	d := newDrawing(LineWide, LineHigh)
	f := frameOf(s)
	sp := spotOf(s.Point.Key, f)
	ink := func(part string) (draw.Style, float64) {
		if part == sp.part {
			return mark, 3
		}
		return line, 1.6
	}
	d.ground(f, s.State)
	d.rail(f, ink)
	d.wheelAndSpring(f, ink)
	d.engine(ink)
	d.gearbox(ink)
	d.shafts(f, s.Shafts, sp.part, ink)
	d.axle(f, ink)
	if withTool {
		d.tool(s.Point, sp)
	}
	return d.Page
}

type inker func(part string) (stroke draw.Style, width float64)

func (d *picture) ground(f frame, s measure.State) {
	d.line(6, f.ground, 414, f.ground, rule, 2.5)
	if s.Ride == measure.Droop {
		d.shape(fill, quiet, 1.6, 234, railY, 242, railY, 254, f.ground, 222, f.ground)
		d.line(229, (railY+f.ground)/2, 247, (railY+f.ground)/2, quiet, 1.6)
	}
	if s.Load == measure.Laden {
		d.shape(fill, quiet, 1.6, 312, 6, 398, 6, 398, railY-8, 312, railY-8)
		d.line(312, 6, 398, railY-8, quiet, 1.2)
		d.line(398, 6, 312, railY-8, quiet, 1.2)
	}
}

func (d *picture) rail(f frame, ink inker) {
	stroke, width := ink("rail")
	d.shape(fill, stroke, width, 8, railY-7, 412, railY-7, 412, railY, 8, railY)
	stroke, width = ink("bumpstop")
	d.shape(fill, stroke, width, f.axleX-10, railY, f.axleX+10, railY, f.axleX+6, railY+9, f.axleX-6, railY+9)
}

func (d *picture) wheelAndSpring(f frame, ink inker) {
	stroke, width := ink("wheel")
	d.circle(f.axleX, f.axleY, f.wheel, none, stroke, width)
	d.circle(f.axleX, f.axleY, f.wheel-7, none, quiet, 1)
	stroke, width = ink("spring")
	d.stroke(stroke, width+0.8, bow(point{306, railY + 6}, point{f.axleX, 2*f.axleY - 30 - (railY + 6)}, point{410, railY + 6})...)
	d.circle(306, railY+6, 3, fill, stroke, width)
	d.circle(410, railY+6, 3, fill, stroke, width)
	if s, w := ink("link"); s == mark {
		d.line(290, railY+18, f.axleX, f.axleY+8, s, w)
		d.circle(290, railY+18, 3, fill, s, w)
	}
}

func (d *picture) engine(ink inker) {
	stroke, width := ink("engine")
	d.shape(fill, stroke, width, 14, 46, 52, 46, 52, 90, 44, 98, 20, 98, 14, 90)
	stroke, width = ink("bell")
	d.shape(fill, stroke, width, 52, 46, 72, 54, 72, 82, 52, 90)
}

func (d *picture) gearbox(ink inker) {
	stroke, width := ink("gearbox")
	d.shape(fill, stroke, width, 72, 54, 104, 54, 116, 60, 116, 72, 104, 82, 72, 82)
	d.shape(fill, stroke, width, 116, 60, 120, 60, 120, 72, 116, 72)
}

func (d *picture) shafts(f frame, shafts int, part string, ink inker) {
	if shafts == 2 {
		stroke, width := ink("front shaft")
		d.tube(f.front, f.centre, stroke, width)
		stroke, width = ink("shaft")
		d.tube(f.centre, f.rear, stroke, width)
	} else {
		stroke, width := ink("shaft")
		if part == "front shaft" {
			stroke, width = mark, 3
		}
		d.tube(f.front, f.rear, stroke, width)
	}
	stroke, width := ink("front joint")
	d.joint(f.front, stroke, width)
	stroke, width = ink("rear joint")
	d.joint(f.rear, stroke, width)
	if shafts == 2 {
		stroke, width = ink("centre")
		d.line(f.centre[0]-6, railY, f.centre[0]-6, f.centre[1]-8, stroke, width)
		d.circle(f.centre[0]-6, f.centre[1], 8, fill, stroke, width)
		d.joint(f.centre, stroke, width)
	}
}

// tube draws a shaft between two joint centres, its yokes narrower than its tube.
func (d *picture) tube(a, b [2]float64, stroke draw.Style, width float64) {
	d.bar(a[0], a[1], b[0], b[1], 5, fill, stroke, width)
	at := func(t float64) (float64, float64) { return a[0] + t*(b[0]-a[0]), a[1] + t*(b[1]-a[1]) }
	x1, y1 := at(0.16)
	x2, y2 := at(0.86)
	d.bar(x1, y1, x2, y2, 11, fill, stroke, width)
}

func (d *picture) joint(at [2]float64, stroke draw.Style, width float64) {
	d.circle(at[0], at[1], 6, fill, stroke, width)
	d.line(at[0]-3, at[1], at[0]+3, at[1], stroke, 1.4)
	d.line(at[0], at[1]-3, at[0], at[1]+3, stroke, 1.4)
}

func (d *picture) axle(f frame, ink inker) {
	stroke, width := ink("pinion")
	x, y := f.axleX, f.axleY
	d.shape(fill, stroke, width, f.rear[0]+8, y-8, x-22, y-6, x-12, y-11, x-12, y+11, x-22, y+6, f.rear[0]+8, y+5)
	stroke, width = ink("axle")
	d.circle(x, y, 14, fill, stroke, width)
	d.circle(x, y, 4, fill, stroke, 1.4)
}

func slopeOf(a, b [2]float64) float64 { return math.Atan2(b[1]-a[1], b[0]-a[0]) }
