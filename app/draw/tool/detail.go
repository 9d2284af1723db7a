package tool

import (
	"math"
	"strings"

	"yokebook/measure"
)

// A detail is drawn in a field of its own, this wide and high, around its middle.
const (
	fieldWide = 226.0
	fieldHigh = 124.0
	midX      = fieldWide / 2
	midY      = fieldHigh / 2
)

// detailers draw what a dimension of a part is, by the kind of part. Each reports false for a dimension
// that it does not know.
var detailers = map[string]func(d *picture, dimension string) bool{
	"front_end": (*picture).flange, "rear_end": (*picture).flange, "front_mate": (*picture).flange, "rear_mate": (*picture).flange,
	"crank": (*picture).flange, "flywheel": (*picture).flange, "cover": (*picture).flange,
	"input_shaft": (*picture).outer, "output_shaft": (*picture).outer, "slip_male": (*picture).outer,
	"disc_hub": (*picture).inner, "slip_yoke": (*picture).inner, "slip_female": (*picture).inner,
}

// detail draws what is measured at a point; false where the drive line with its tool says all.
func (d *picture) detail(p measure.Point) bool {
	part, dimension, _ := strings.Cut(p.Key, ".")
	if part == "as_built" {
		part, dimension = ordered(dimension)
	}
	if d.stackAt(part + "." + dimension) {
		return true
	}
	if draw, ok := detailers[part]; ok && draw(d, dimension) {
		return true
	}
	for _, draw := range []func(*picture, string) bool{(*picture).shaftAt, (*picture).suspension, (*picture).survey, (*picture).weights, (*picture).engineAt} {
		if draw(d, part+"."+dimension) {
			return true
		}
	}
	return false
}

// ordered is the point that one of the shaft as it was built stands for in the pictures.
func ordered(dimension string) (part, as string) {
	switch dimension {
	case "closed_length":
		return "shaft", "closed"
	case "length", "phase", "mass":
		return "shaft", dimension
	case "front_length", "front_phase":
		return "front_shaft", strings.TrimPrefix(dimension, "front_")
	case "stroke":
		return "slip", "usable"
	case "tube_od", "tube_wall", "tube_material":
		return "tube", strings.TrimPrefix(dimension, "tube_")
	case "front_tube_od", "front_tube_wall":
		return "front_shaft", strings.TrimPrefix(dimension, "front_")
	case "front_pilot", "front_bolt_circle", "front_bolt_torque":
		return "front_mate", strings.TrimPrefix(dimension, "front_")
	case "rear_pilot", "rear_bolt_circle", "rear_bolt_torque":
		return "rear_mate", strings.TrimPrefix(dimension, "rear_")
	}
	return "as_built", dimension
}

// gauge draws a measured length with feet at its ends.
func (d *picture) gauge(x1, y1, x2, y2 float64) {
	d.tape([2]float64{x1, y1}, [2]float64{x2, y2})
}

// feet draws thin lines from what is measured to its gauge.
func (d *picture) feet(x1, y1, x2, y2 float64) { d.line(x1, y1, x2, y2, mark, 1) }

// across is a gauge over a diameter that stands beside a round thing, with its feet.
func (d *picture) across(x, y, r, at float64) {
	d.feet(x-r, y, x-r, at)
	d.feet(x+r, y, x+r, at)
	d.gauge(x-r, at, x+r, at)
}

// turning draws an arrow around a place: what is turned while the tool stands still.
func (d *picture) turningAround(x, y, r float64) {
	d.stroke(quiet, 2, arc(point{x, y}, r, -2.4, -0.8)...)
	tip := point{x + r*math.Cos(-0.8), y + r*math.Sin(-0.8)}
	d.line(tip.x, tip.y, tip.x-9, tip.y-2, quiet, 2)
	d.line(tip.x, tip.y, tip.x-1, tip.y-9, quiet, 2)
}

// dial draws a dial gauge whose foot touches a place from above or, turned, from the right.
func (d *picture) dial(x, y float64, side bool) {
	if side {
		d.line(x, y, x+18, y, mark, 3)
		d.circle(x+32, y, 14, fill, mark, 2.6)
		d.line(x+32, y, x+38, y-8, mark, 2)
		return
	}
	d.line(x, y, x, y-14, mark, 3)
	d.circle(x, y-27, 13, fill, mark, 2.6)
	d.line(x, y-27, x+6, y-34, mark, 2)
}

// scales draws a spring balance over a thing.
func (d *picture) scales(x, y float64) {
	d.line(x, y, x, y-14, mark, 2.4)
	d.circle(x, y-26, 12, fill, mark, 2.6)
	d.line(x, y-26, x+6, y-32, mark, 2)
	d.line(x, y-38, x, y-44, mark, 2.4)
}
