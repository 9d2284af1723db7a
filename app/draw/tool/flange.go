package tool

import (
	"math"

	"yokebook/app/draw"
)

// flange draws a flange: its face, the face cut open, a bolt, or the cross that sits in its yoke.
func (d *picture) flange(dimension string) bool {
	switch dimension {
	case "bolt_size", "bolt_pitch", "bolt_length", "bolt_grade", "bolt_torque":
		d.bolt(dimension)
	case "cap_dia", "cap_span", "cap_dia_2", "cap_span_2", "ear_gap", "clip":
		d.cross(dimension)
	case "pilot_depth", "pilot_kind", "face_thick":
		d.faceCut(dimension)
	case "pilot", "register", "bolts", "hole_dia", "bolt_circle", "bolt_chord", "bolt_chord_2", "face_od", "runout", "supply", "condition":
		d.faceOn(dimension)
	default:
		return false
	}
	return true
}

func (d *picture) faceOn(dimension string) {
	const r, bc, pilot, hole = 46.0, 34.0, 17.0, 6.5
	d.circle(midX, midY, r, fill, line, 2)
	if dimension == "bolts" {
		d.holes(bc, hole, mark, mark)
	} else {
		d.holes(bc, hole, fill, line)
	}
	d.circle(midX, midY, pilot, fill, line, 2)
	hole1, hole2, hole3 := spread(bc, 0), spread(bc, 1), spread(bc, 2)
	switch dimension {
	case "pilot", "register":
		d.circle(midX, midY, pilot, none, mark, 3)
		d.across(midX, midY, pilot, midY+r+10)
	case "hole_dia":
		d.circle(hole1.x, hole1.y, hole, none, mark, 3)
		d.feet(hole1.x-hole, hole1.y, hole1.x-hole, 6)
		d.feet(hole1.x+hole, hole1.y, hole1.x+hole, 6)
		d.gauge(hole1.x-hole, 6, hole1.x+hole, 6)
	case "bolt_circle":
		d.circle(midX, midY, bc, none, mark, 1.4)
		d.gauge(spread(bc, 0).x, spread(bc, 0).y, spread(bc, 3).x, spread(bc, 3).y)
	case "bolt_chord":
		d.gauge(hole1.x, hole1.y, hole2.x, hole2.y)
	case "bolt_chord_2":
		d.line(hole1.x, hole1.y, hole2.x, hole2.y, quiet, 2)
		d.gauge(hole2.x, hole2.y, hole3.x, hole3.y)
	case "face_od":
		d.across(midX, midY, r, midY+r+10)
	case "runout":
		d.dial(midX+r, midY, true)
		d.turningAround(midX, midY, r+8)
	case "supply":
		d.arrow(midX+r+50, midY, midX+r+8, midY, mark, 4)
	case "condition":
		d.circle(midX+30, midY-8, 20, none, mark, 4)
		d.line(midX+44, midY+8, midX+70, midY+34, mark, 5)
	}
}

// spread is the place of one of six holes, the first straight up.
func spread(bc float64, i int) point {
	a := -math.Pi/2 + float64(i)*math.Pi/3
	return point{midX + bc*math.Cos(a), midY + bc*math.Sin(a)}
}

func (d *picture) holes(bc, r float64, face, rim draw.Style) {
	for i := range 6 {
		at := spread(bc, i)
		d.circle(at.x, at.y, r, face, rim, 1.8)
	}
}

// faceCut draws a flange cut open, its face to the right with the pilot standing out.
func (d *picture) faceCut(dimension string) {
	d.shape(fill, line, 2, 20, midY-16, 84, midY-16, 84, midY-50, 104, midY-50, 104, midY-20, 118, midY-20, 118, midY+20, 104, midY+20, 104, midY+50, 84, midY+50, 84, midY+16, 20, midY+16)
	switch dimension {
	case "pilot_depth":
		d.line(104, midY-20, 118, midY-20, mark, 3)
		d.feet(104, midY-20, 104, midY-58)
		d.feet(118, midY-20, 118, midY-58)
		d.gauge(104, midY-56, 118, midY-56)
	case "face_thick":
		d.feet(84, midY+50, 84, midY+58)
		d.feet(104, midY+50, 104, midY+58)
		d.gauge(84, midY+56, 104, midY+56)
	case "pilot_kind":
		d.shape(fill, line, 2, 150, midY-50, 170, midY-50, 170, midY-16, 214, midY-16, 214, midY+16, 170, midY+16, 170, midY+50, 150, midY+50, 150, midY+20, 162, midY+20, 162, midY-20, 150, midY-20)
		d.line(118, midY-20, 118, midY+20, mark, 4)
		d.line(162, midY-20, 162, midY+20, mark, 4)
	}
}

// bolt draws a bolt with its nut.
func (d *picture) bolt(dimension string) {
	d.shape(fill, line, 2, 40, midY-22, 60, midY-22, 60, midY+22, 40, midY+22)
	d.shape(fill, line, 2, 60, midY-12, 180, midY-12, 186, midY-6, 186, midY+6, 180, midY+12, 60, midY+12)
	for x := 120.0; x < 180; x += 8 {
		d.line(x, midY-12, x+5, midY+12, quiet, 1.4)
	}
	switch dimension {
	case "bolt_size":
		d.feet(90, midY-12, 90, midY+12)
		d.gauge(100, midY-12, 100, midY+12)
		d.arrow(100, midY-42, 100, midY-16, mark, 3)
		d.arrow(100, midY+42, 100, midY+16, mark, 3)
	case "bolt_pitch":
		d.feet(144, midY-12, 144, midY-30)
		d.feet(152, midY-12, 152, midY-30)
		d.arrow(122, midY-26, 143, midY-26, mark, 2.6)
		d.arrow(174, midY-26, 153, midY-26, mark, 2.6)
	case "bolt_length":
		d.feet(60, midY+12, 60, midY+36)
		d.feet(186, midY+6, 186, midY+36)
		d.gauge(60, midY+34, 186, midY+34)
	case "bolt_grade":
		d.arrow(6, midY, 36, midY, mark, 4)
		d.line(45, midY-12, 55, midY-12, mark, 2.4)
		d.line(45, midY-4, 55, midY-4, mark, 2.4)
	case "bolt_torque":
		d.bar(50, midY-4, 50, 8, 10, fill, mark, 2.6)
		d.arrow(66, 14, 100, 14, mark, 4)
	}
}

// cross draws a joint's cross between the ears of a yoke.
func (d *picture) cross(dimension string) {
	d.bar(midX-46, midY, midX+46, midY, 16, fill, line, 2)
	d.bar(midX, midY-46, midX, midY+46, 16, fill, line, 2)
	d.circle(midX, midY, 13, fill, line, 2)
	cap := func(x, y float64, style draw.Style) {
		if y == midY {
			d.bar(x-7, y, x+7, y, 26, fill, style, 2.4)
			return
		}
		d.bar(x, y-7, x, y+7, 26, fill, style, 2.4)
	}
	first, second := line, line
	switch dimension {
	case "cap_dia", "cap_span", "clip":
		first = mark
	case "cap_dia_2", "cap_span_2":
		second = mark
	}
	cap(midX-46, midY, first)
	cap(midX+46, midY, first)
	cap(midX, midY-46, second)
	cap(midX, midY+46, second)
	switch dimension {
	case "cap_dia":
		d.gauge(midX+68, midY-13, midX+68, midY+13)
	case "cap_dia_2":
		d.feet(midX-13, midY-40, midX-13, 2)
		d.gauge(midX-13, 2, midX+13, 2)
	case "cap_span":
		d.feet(midX-53, midY, midX-53, midY+32)
		d.feet(midX+53, midY, midX+53, midY+32)
		d.gauge(midX-53, midY+30, midX+53, midY+30)
	case "cap_span_2":
		d.feet(midX, midY-53, midX+34, midY-53)
		d.feet(midX, midY+53, midX+34, midY+53)
		d.gauge(midX+34, midY-53, midX+34, midY+53)
	case "ear_gap":
		for _, side := range []float64{-1, 1} {
			d.shape(fill, line, 2, midX+side*62, midY-20, midX+side*62, midY+20, midX+side*34, midY+20, midX+side*34, midY-20)
		}
		d.gauge(midX-34, midY-30, midX+34, midY-30)
		d.feet(midX-34, midY-30, midX-34, midY-20)
		d.feet(midX+34, midY-30, midX+34, midY-20)
	case "clip":
		d.arrow(midX+92, midY, midX+60, midY, mark, 4)
		d.arrow(midX-20, midY-34, midX-33, midY-16, mark, 4)
	}
}
