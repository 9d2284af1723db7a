package tool

import (
	"yokebook/app/draw"
	"yokebook/measure"
)

// Stand draws how the vehicle stands: its wheels, what carries it, what lies on it.
func Stand(s measure.State) draw.Page {
	d := newDrawing(SideWide, SideHigh)
	if s.Ride == measure.Bench {
		d.bench()
		return d.Page
	}
	const ground = 90.0
	body := 52.0 // underside of the vehicle
	wheel := 74.0
	switch s.Ride {
	case measure.Droop:
		body, wheel = 42, 62
	case measure.Bump:
		body = 60
	}
	if s.Load == measure.Laden && s.Ride == measure.AtRide {
		body = 55
	}
	d.line(10, ground, 190, ground, rule, 2.5)
	if s.Load == measure.Laden {
		d.shape(mark, mark, 1, 112, body-34, 162, body-34, 162, body-14, 112, body-14)
	}
	d.shape(fill, line, 2, 22, body, 22, body-16, 60, body-20, 70, body-40, 100, body-40, 104, body-14, 178, body-14, 178, body)
	for _, x := range []float64{52, 148} {
		d.circle(x, wheel, 16, fill, line, 2.4)
		d.circle(x, wheel, 6, none, line, 1.4)
	}
	if s.Ride == measure.Droop {
		for _, x := range []float64{84, 118} {
			d.shape(mark, mark, 1, x-3, body, x+3, body, x+10, ground, x-10, ground)
		}
	}
	if s.Ride == measure.Bump {
		for _, x := range []float64{52, 148} {
			d.arrow(x, 4, x, body-24, mark, 3)
		}
	}
	return d.Page
}

// bench draws a shaft on a table: a part off the vehicle.
func (d *picture) bench() {
	d.bar(52, 42, 148, 42, 13, fill, mark, 2.4)
	d.circle(44, 42, 9, fill, mark, 2.4)
	d.circle(156, 42, 9, fill, mark, 2.4)
	d.shape(fill, line, 2, 20, 54, 180, 54, 180, 61, 20, 61)
	d.line(38, 61, 34, 92, line, 3)
	d.line(162, 61, 166, 92, line, 3)
}

// Shape draws the shape of a verdict, told apart without colour: a round tick, a cross in a
// square on its corner, a triangle with a bar, an open ring.
func Shape(verdict string) draw.Page {
	d := newDrawing(48, 48)
	switch verdict {
	case "clear":
		d.circle(24, 24, 20, mark, mark, 2)
		d.stroke(fill, 5, point{14, 25}, point{21, 32}, point{34, 17})
	case "out":
		d.shape(mark, mark, 2, 24, 2, 46, 24, 24, 46, 2, 24)
		d.line(17, 17, 31, 31, fill, 5)
		d.line(31, 17, 17, 31, fill, 5)
	case "unsure":
		d.shape(mark, mark, 2, 24, 4, 45, 42, 3, 42)
		d.line(24, 17, 24, 28, fill, 5)
		d.circle(24, 36, 2.8, fill, fill, 0)
	case "waiting":
		d.circle(24, 24, 19, none, mark, 4)
		d.line(24, 24, 24, 13, mark, 4)
		d.line(24, 24, 32, 24, mark, 4)
	default:
		d.line(10, 24, 38, 24, mark, 5)
	}
	return d.Page
}
