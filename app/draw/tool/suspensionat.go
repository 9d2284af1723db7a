package tool

import "strings"

// suspension draws a leaf spring, the links of an axle, or its bump stop.
func (d *picture) suspension(key string) bool {
	part, dimension, _ := strings.Cut(key, ".")
	switch {
	case part == "spring":
		return d.spring(dimension)
	case part == "lower_link" || part == "upper_link" || part == "rear_joint":
		return d.links(part, dimension)
	case part == "bump":
		return d.bumpStop(dimension)
	}
	return false
}

// spring draws a leaf spring from the side, its fixed eye on the left.
func (d *picture) spring(dimension string) bool {
	const eyeX, eyeY, clampL, clampR, leafY, otherX, otherY = 22.0, 34.0, 98.0, 128.0, 74.0, 206.0, 34.0
	d.stroke(line, 4, bow(point{eyeX, eyeY + 8}, point{113, 112}, point{otherX, otherY + 8})...)
	d.circle(eyeX, eyeY, 8, fill, line, 2)
	d.circle(otherX, otherY, 8, fill, line, 2)
	d.shape(fill, line, 2, clampL, leafY-8, clampR, leafY-8, clampR, leafY+10, clampL, leafY+10)
	d.circle(113, leafY+28, 18, fill, line, 2)
	switch dimension {
	case "front_half":
		d.feet(clampL, leafY-8, clampL, 10)
		d.feet(eyeX, eyeY, eyeX, 10)
		d.gauge(eyeX, 12, clampL, 12)
	case "rear_half":
		d.feet(clampR, leafY-8, clampR, 10)
		d.feet(otherX, otherY, otherX, 10)
		d.gauge(clampR, 12, otherX, 12)
	case "eye_rise":
		d.feet(eyeX, eyeY, 74, eyeY)
		d.feet(113, leafY, 56, leafY)
		d.gauge(60, eyeY, 60, leafY)
	case "eye_offset":
		d.circle(eyeX, eyeY, 8, none, mark, 3)
		d.feet(eyeX, eyeY, 54, eyeY)
		d.feet(eyeX, eyeY+10, 54, eyeY+10)
		d.gauge(50, eyeY, 50, eyeY+10)
	case "pad_z":
		d.feet(113, leafY, 164, leafY)
		d.feet(113, leafY+28, 164, leafY+28)
		d.gauge(160, leafY, 160, leafY+28)
	case "rate":
		d.arrow(113, 2, 113, 44, mark, 4)
		d.plateAt(150, 60)
	default:
		return false
	}
	return true
}

// links draws the links of an axle from the side with the ways from the axle's centre.
func (d *picture) links(part, dimension string) bool {
	const axleX, axleY = 160.0, 66.0
	ends := map[string][2][2]float64{"lower_link": {{40, 84}, {152, 86}}, "upper_link": {{64, 26}, {152, 40}}}
	d.circle(axleX, axleY, 30, fill, line, 2)
	d.circle(axleX, axleY, 4, mark, mark, 0)
	for _, name := range []string{"lower_link", "upper_link"} {
		style, e := line, ends[name]
		if name == part {
			style = mark
		}
		d.bar(e[0][0], e[0][1], e[1][0], e[1][1], 7, fill, style, 2.2)
		d.circle(e[0][0], e[0][1], 6, fill, style, 2.2)
		d.circle(e[1][0], e[1][1], 6, fill, style, 2.2)
	}
	to := [2]float64{100, 58}
	switch {
	case part == "rear_joint":
		d.bar(100, 58, 134, 62, 14, fill, line, 2)
		d.circle(100, 58, 9, fill, mark, 3)
	case strings.HasPrefix(dimension, "chassis"):
		to = ends[part][0]
	default:
		to = ends[part][1]
	}
	switch {
	case strings.HasSuffix(dimension, "x"):
		y := 116.0
		d.feet(axleX, axleY, axleX, y)
		d.feet(to[0], to[1], to[0], y)
		d.gauge(to[0], y, axleX, y)
	case strings.HasSuffix(dimension, "z"):
		x := 208.0
		d.feet(axleX, axleY, x, axleY)
		d.feet(to[0], to[1], x, to[1])
		d.gauge(x, to[1], x, axleY)
	default:
		return false
	}
	return true
}

// bumpStop draws the stop over the axle.
func (d *picture) bumpStop(dimension string) bool {
	d.shape(fill, line, 2, 40, 8, 186, 8, 186, 22, 40, 22)
	d.shape(fill, line, 2, 92, 22, 134, 22, 126, 56, 100, 56)
	d.circle(113, 104, 20, fill, line, 2)
	switch dimension {
	case "gap":
		d.gauge(113, 56, 113, 84)
	case "rubber":
		d.feet(92, 22, 64, 22)
		d.feet(100, 56, 64, 56)
		d.gauge(66, 22, 66, 56)
	default:
		return false
	}
	return true
}

// plateAt draws a page on which a value stands.
func (d *picture) plateAt(x, y float64) {
	d.shape(fill, mark, 2.4, x, y, x+34, y, x+34, y+26, x, y+26)
	for i := 0.0; i < 3; i++ {
		d.line(x+6, y+7+6*i, x+28-5*i, y+7+6*i, mark, 2)
	}
}
