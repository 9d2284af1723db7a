package tool

import (
	"math"

	"yokebook/app/draw"
)

// What is drawn in which style.
const (
	line  = draw.Body    // outlines
	quiet = draw.Ghost   // what stands behind
	fill  = draw.Ground  // faces of parts
	rule  = draw.Outline // ground and reference lines
	mark  = draw.Tool    // the part to be read and the tool
	none  = draw.Style("")
)

// picture is a page that is being drawn. What is drawn next is scaled and then moved by at.
type picture struct {
	draw.Page
	at    point
	scale float64
}

// newDrawing starts a picture.
func newDrawing(wide, high float64) *picture {
	return &picture{Page: draw.Page{Wide: wide, High: high}, scale: 1}
}

// point is a place in a picture, y down.
type point struct{ x, y float64 }

// plane fills an outline.
func (d *picture) plane(style draw.Style, outline ...point) {
	if style != none {
		d.Marks = append(d.Marks, draw.Mark{Style: style, Points: d.places(outline), Closed: true, Solid: true})
	}
}

// stroke draws along points with round ends and corners.
func (d *picture) stroke(style draw.Style, width float64, along ...point) {
	if style != none && width > 0 {
		d.Marks = append(d.Marks, draw.Mark{Style: style, Points: d.places(along), Width: width})
	}
}

func (d *picture) places(list []point) []draw.Point {
	out := make([]draw.Point, len(list))
	for i, p := range list {
		out[i] = draw.Point{X: d.at.x + d.scale*p.x, Y: d.at.y + d.scale*p.y}
	}
	return out
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

// arc is part of a circle, from one angle to another, clockwise on the page from where x grows.
func arc(at point, r, from, to float64) []point {
	const steps = 48
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

func (d *picture) line(x1, y1, x2, y2 float64, style draw.Style, width float64) {
	d.stroke(style, width, point{x1, y1}, point{x2, y2})
}

func (d *picture) circle(x, y, r float64, face, rim draw.Style, width float64) {
	ring := arc(point{x, y}, r, 0, 2*math.Pi)
	d.plane(face, ring...)
	d.stroke(rim, width, ring...)
}

// shape draws a closed outline through x, y pairs.
func (d *picture) shape(face, rim draw.Style, width float64, xy ...float64) {
	var outline []point
	for i := 0; i+1 < len(xy); i += 2 {
		outline = append(outline, point{xy[i], xy[i+1]})
	}
	d.plane(face, outline...)
	d.stroke(rim, width, append(outline, outline[0])...)
}

// bar draws a rectangle of length × thick whose middle line runs from x1, y1 to x2, y2.
func (d *picture) bar(x1, y1, x2, y2, thick float64, face, rim draw.Style, width float64) {
	if r := ribbon(point{x1, y1}, point{x2, y2}, thick); r != nil {
		d.plane(face, r...)
		d.stroke(rim, width, append(r, r[0])...)
	}
}

// arrow draws a line with a head at its end.
func (d *picture) arrow(x1, y1, x2, y2 float64, style draw.Style, width float64) {
	d.line(x1, y1, x2, y2, style, width)
	a := math.Atan2(y2-y1, x2-x1)
	size := 3.2 * width
	for _, turn := range []float64{0.5, -0.5} {
		d.line(x2, y2, x2-size*math.Cos(a+turn), y2-size*math.Sin(a+turn), style, width)
	}
}
