package tool

import (
	"math"
)

// Radii of the splines in a picture.
const (
	tipR  = 46.0
	rootR = 35.0
	count = 12
)

// outer draws a splined shaft.
func (d *picture) outer(dimension string) bool { return d.teeth(dimension, false) }

// inner draws a splined hub.
func (d *picture) inner(dimension string) bool { return d.teeth(dimension, true) }

// teeth draws splines from their end with what is measured on them.
func (d *picture) teeth(dimension string, inside bool) bool {
	switch dimension {
	case "length":
		d.splinesAlong(inside)
		return true
	case "barrel", "barrel_length":
		d.barrel(dimension)
		return true
	case "splines", "major", "minor", "over_pins", "pin_dia", "flank", "hardness":
	default:
		return false
	}
	if inside {
		d.circle(midX, midY, 58, fill, line, 2)
	}
	d.stroke(line, 2, d.toothed(inside)...)
	gap := func(turn float64) point { // the middle of a space between two teeth, where a pin lies
		r := (tipR + rootR) / 2
		return point{midX + r*math.Cos(turn), midY + r*math.Sin(turn)}
	}
	half := math.Pi / count
	switch dimension {
	case "splines":
		for i := range count {
			a := 2 * math.Pi * float64(i) / count
			d.circle(midX+40*math.Cos(a), midY+40*math.Sin(a), 3.4, mark, mark, 0)
		}
	case "major":
		d.across(midX, midY, tipR, midY+58)
	case "minor":
		d.across(midX, midY, rootR, midY+58)
	case "over_pins", "pin_dia":
		left, right := gap(math.Pi-half), gap(-half)
		d.circle(left.x, left.y, 6, fill, mark, 2.6)
		d.circle(right.x, right.y, 6, fill, mark, 2.6)
		if dimension == "pin_dia" {
			d.arrow(right.x+34, right.y, right.x+8, right.y, mark, 2.6)
			d.arrow(right.x-30, right.y, right.x-8, right.y, mark, 2.6)
			break
		}
		edge := 6.0
		if inside {
			edge = -6
		}
		d.feet(left.x-edge, left.y, left.x-edge, midY+58)
		d.feet(right.x+edge, right.y, right.x+edge, midY+58)
		d.gauge(left.x-edge, midY+56, right.x+edge, midY+56)
	case "flank":
		d.line(midX, midY, midX+56, midY, mark, 1.6)
		d.line(midX+30, midY-14, midX+58, midY-4, mark, 3)
		d.line(midX+30, midY+14, midX+58, midY+4, mark, 3)
	case "hardness":
		d.circle(midX, 12, 4, mark, mark, 0)
		d.arrow(midX, -2, midX, 9, mark, 3)
		d.circle(midX, 16, 12, none, mark, 2.4)
	}
	return true
}

// toothed is the outline of the teeth.
func (d *picture) toothed(inside bool) []point {
	var out []point
	step := 2 * math.Pi / count
	for i := range count + 1 {
		a := step * float64(i)
		for _, q := range [][2]float64{{-0.3, rootR}, {-0.17, tipR}, {0.17, tipR}, {0.3, rootR}} {
			r := q[1]
			if inside { // teeth point inward where spaces were
				r = tipR + rootR - q[1]
			}
			out = append(out, point{midX + r*math.Cos(a+q[0]*step), midY + r*math.Sin(a+q[0]*step)})
		}
	}
	return out[:len(out)-3]
}

// splinesAlong draws splines from the side with their length.
func (d *picture) splinesAlong(inside bool) {
	if inside {
		d.shape(fill, line, 2, 50, midY-40, 176, midY-40, 176, midY+40, 50, midY+40)
	} else {
		d.bar(10, midY, 216, midY, 30, fill, line, 2)
	}
	d.bar(70, midY, 156, midY, 38, fill, line, 2)
	for y := -12.0; y <= 12; y += 8 {
		d.line(70, midY+y, 156, midY+y, quiet, 1.6)
	}
	d.feet(70, midY+19, 70, midY+54)
	d.feet(156, midY+19, 156, midY+54)
	d.gauge(70, midY+52, 156, midY+52)
}

// barrel draws a slip yoke from the side.
func (d *picture) barrel(dimension string) {
	d.shape(fill, line, 2, 30, midY-18, 140, midY-18, 160, midY-36, 200, midY-36, 200, midY-24, 168, midY-14, 168, midY+14, 200, midY+24, 200, midY+36, 160, midY+36, 140, midY+18, 30, midY+18)
	if dimension == "barrel" {
		d.gauge(84, midY-18, 84, midY+18)
		d.arrow(84, midY-48, 84, midY-22, mark, 3)
		d.arrow(84, midY+48, 84, midY+22, mark, 3)
		return
	}
	d.feet(30, midY+18, 30, midY+48)
	d.feet(140, midY+18, 140, midY+48)
	d.gauge(30, midY+46, 140, midY+46)
}
