package sketch

import (
	"image/color"
	"math"
)

// none is the colour of what is not filled.
var none = color.NRGBA{}

// newDrawing starts a picture.
func newDrawing(wide, high float64) *Picture { return &Picture{Wide: wide, High: high} }

// add fills outlines; each is turned so that overlapping ones don't cancel.
func (d *Picture) add(colour color.NRGBA, outlines ...[]point) {
	if colour.A == 0 {
		return
	}
	for _, o := range outlines {
		if area(o) < 0 {
			for i, j := 0, len(o)-1; i < j; i, j = i+1, j-1 {
				o[i], o[j] = o[j], o[i]
			}
		}
	}
	d.fills = append(d.fills, fill{colour, outlines})
}

func area(o []point) float64 {
	sum := 0.0
	for i, p := range o {
		q := o[(i+1)%len(o)]
		sum += p.x*q.y - q.x*p.y
	}
	return sum
}

// stroke draws along points with round ends and corners.
func (d *Picture) stroke(colour color.NRGBA, width float64, along ...point) {
	var outlines [][]point
	for i, p := range along {
		outlines = append(outlines, round(p, width/2))
		if i > 0 {
			if q := ribbon(along[i-1], p, width); q != nil {
				outlines = append(outlines, q)
			}
		}
	}
	d.add(colour, outlines...)
}

// ribbon is the rectangle of a width around a straight line; nil where it has no length.
func ribbon(a, b point, width float64) []point {
	dx, dy := b.x-a.x, b.y-a.y
	n := math.Sqrt(dx*dx + dy*dy)
	if n == 0 {
		return nil
	}
	ox, oy := -dy/n*width/2, dx/n*width/2
	return []point{{a.x + ox, a.y + oy}, {b.x + ox, b.y + oy}, {b.x - ox, b.y - oy}, {a.x - ox, a.y - oy}}
}

// round is a circle as an outline.
func round(at point, r float64) []point { return arc(at, r, 0, 2*math.Pi)[1:] }

// arc is part of a circle, from one angle to another, clockwise on the page from where x grows.
func arc(at point, r, from, to float64) []point {
	const steps = 64
	out := make([]point, steps+1)
	for i := range out {
		a := from + (to-from)*float64(i)/steps
		out[i] = point{at.x + r*math.Cos(a), at.y + r*math.Sin(a)}
	}
	return out
}

// bow is a curve from a to b that is drawn toward c.
func bow(a, c, b point) []point {
	const steps = 24
	out := make([]point, steps+1)
	for i := range out {
		t := float64(i) / steps
		u := 1 - t
		out[i] = point{u*u*a.x + 2*u*t*c.x + t*t*b.x, u*u*a.y + 2*u*t*c.y + t*t*b.y}
	}
	return out
}

func (d *Picture) line(x1, y1, x2, y2 float64, colour color.NRGBA, width float64) {
	d.stroke(colour, width, point{x1, y1}, point{x2, y2})
}

func (d *Picture) circle(x, y, r float64, face, rim color.NRGBA, width float64) {
	d.add(face, round(point{x, y}, r))
	if width > 0 {
		d.stroke(rim, width, arc(point{x, y}, r, 0, 2*math.Pi)...)
	}
}

// shape draws a closed outline through x, y pairs.
func (d *Picture) shape(face, rim color.NRGBA, width float64, xy ...float64) {
	var outline []point
	for i := 0; i+1 < len(xy); i += 2 {
		outline = append(outline, point{xy[i], xy[i+1]})
	}
	d.add(face, append([]point{}, outline...))
	d.stroke(rim, width, append(outline, outline[0])...)
}

// bar draws a rectangle of length × thick whose middle line runs from x1, y1 to x2, y2.
func (d *Picture) bar(x1, y1, x2, y2, thick float64, face, rim color.NRGBA, width float64) {
	r := ribbon(point{x1, y1}, point{x2, y2}, thick)
	if r == nil {
		return
	}
	d.add(face, append([]point{}, r...))
	d.stroke(rim, width, append(r, r[0])...)
}

// arrow draws a line with a head at its end.
func (d *Picture) arrow(x1, y1, x2, y2 float64, colour color.NRGBA, width float64) {
	d.line(x1, y1, x2, y2, colour, width)
	a := math.Atan2(y2-y1, x2-x1)
	size := 3.2 * width
	for _, turn := range []float64{0.5, -0.5} {
		d.line(x2, y2, x2-size*math.Cos(a+turn), y2-size*math.Sin(a+turn), colour, width)
	}
}
