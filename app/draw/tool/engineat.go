package tool

import "math"

// engineAt draws runouts at the bellhousing, the gears of the starter, the pinion's nut and the gearbox's
// tail.
func (d *picture) engineAt(key string) bool {
	switch key {
	case "bellhousing.bore_runout", "bellhousing.face_runout":
		d.housing(key == "bellhousing.face_runout")
	case "ring_gear.teeth", "starter.pinion_teeth":
		d.gears(key == "ring_gear.teeth")
	case "retainer.kind", "retainer.thread", "retainer.pitch", "retainer.grade", "retainer.torque", "retainer.reach":
		d.retainer(key)
	case "tail_bush.bore", "tail_seal.depth":
		d.tail(key == "tail_bush.bore")
	default:
		return false
	}
	return true
}

// housing draws a bellhousing toward whom its bore looks, with a dial in the bore or on the face.
func (d *picture) housing(face bool) {
	d.circle(midX, midY, 58, fill, line, 2)
	d.circle(midX, midY, 34, fill, line, 2)
	d.circle(midX, midY, 9, fill, line, 2)
	if face {
		d.bar(midX, midY, midX+34, midY-24, 6, fill, quiet, 1.6)
		d.circle(midX+38, midY-28, 4, mark, mark, 0)
		d.circle(midX+76, midY-42, 14, fill, mark, 2.6)
		d.line(midX+62, midY-38, midX+40, midY-29, mark, 3)
	} else {
		d.bar(midX, midY, midX+16, midY, 6, fill, quiet, 1.6)
		d.circle(midX+34, midY, 4, mark, mark, 0)
		d.line(midX+14, midY, midX+34, midY, mark, 3)
		d.circle(midX+2, midY, 12, fill, mark, 2.6)
	}
	d.turningAround(midX, midY, 46)
}

// gears draws the ring gear with the starter's pinion in it.
func (d *picture) gears(ring bool) {
	styles := [2]struct{ x, y, r, n float64 }{{90, 66, 52, 36}, {170, 66, 22, 12}}
	for i, g := range styles {
		style := line
		if (i == 0) == ring {
			style = mark
		}
		d.circle(g.x, g.y, g.r, fill, style, 2.4)
		for k := range int(g.n) {
			a := 2 * math.Pi * float64(k) / g.n
			c, s := math.Cos(a), math.Sin(a)
			d.line(g.x+g.r*c, g.y+g.r*s, g.x+(g.r+6)*c, g.y+(g.r+6)*s, style, 2.4)
		}
		d.circle(g.x, g.y, 6, fill, style, 2)
	}
}

// retainer draws the nut that holds the flange on its shaft.
func (d *picture) retainer(key string) {
	d.bar(20, midY, 196, midY, 30, fill, line, 2)
	for x := 130.0; x < 194; x += 8 {
		d.line(x, midY-15, x+5, midY+15, quiet, 1.4)
	}
	d.shape(fill, line, 2, 70, midY-46, 96, midY-46, 96, midY+46, 70, midY+46)
	d.shape(fill, line, 2, 100, midY-30, 138, midY-30, 138, midY+30, 100, midY+30)
	switch key {
	case "retainer.kind":
		d.shape(none, mark, 3, 100, midY-30, 138, midY-30, 138, midY+30, 100, midY+30)
	case "retainer.thread":
		d.gauge(176, midY-15, 176, midY+15)
		d.arrow(176, midY-46, 176, midY-19, mark, 3)
		d.arrow(176, midY+46, 176, midY+19, mark, 3)
	case "retainer.pitch":
		d.feet(162, midY-15, 162, midY-34)
		d.feet(170, midY-15, 170, midY-34)
		d.arrow(142, midY-34, 161, midY-34, mark, 2.6)
		d.arrow(192, midY-34, 171, midY-34, mark, 2.6)
	case "retainer.grade":
		d.line(110, midY-22, 128, midY-22, mark, 3)
		d.line(110, midY-14, 128, midY-14, mark, 3)
		d.arrow(119, 2, 119, 28, mark, 3)
	case "retainer.torque":
		d.bar(119, midY-30, 119, 6, 10, fill, mark, 2.6)
		d.arrow(132, 10, 168, 10, mark, 4)
	case "retainer.reach":
		d.feet(100, midY+30, 100, midY+54)
		d.feet(138, midY+30, 138, midY+54)
		d.gauge(100, midY+52, 138, midY+52)
	}
}

// tail draws the tail of a gearbox cut open, with its bush or its seal.
func (d *picture) tail(bush bool) {
	d.shape(fill, line, 2, 20, 12, 186, 24, 186, 42, 20, 42)
	d.shape(fill, line, 2, 20, 112, 186, 100, 186, 82, 20, 82)
	styles := []bool{bush, !bush}
	for i, x := range []float64{104, 172} {
		style := line
		if styles[i] {
			style = mark
		}
		d.bar(x-12, 46, x+12, 46, 8, fill, style, 2.4)
		d.bar(x-12, 78, x+12, 78, 8, fill, style, 2.4)
	}
	if bush {
		d.gauge(104, 50, 104, 74)
		return
	}
	d.feet(186, 24, 186, 6)
	d.feet(160, 24, 160, 6)
	d.gauge(160, 6, 186, 6)
}
