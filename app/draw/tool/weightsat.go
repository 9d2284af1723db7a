package tool

import "strings"

// weights draws engine and gearbox from above with mounts and lifting places, or an axle on a balance.
// The front axle line is on the left, the vehicle's left below.
func (d *picture) weights(key string) bool {
	part, dimension, _ := strings.Cut(key, ".")
	spots := map[string]point{"mount_left": {84, 92}, "mount_right": {84, 32}, "mount_rear": {186, 62},
		"engine_gearbox": {110, 66}, "old_engine_gearbox": {118, 58}, "lift_front": {66, 62}, "lift_rear": {168, 62}}
	at, ok := spots[part]
	switch {
	case part == "sling":
		return d.sling(dimension)
	case (part == "front_axle" || part == "rear_axle") && dimension == "mass":
		d.axleOnScales(part == "front_axle")
		return true
	case !ok:
		return false
	}
	const axleX, middleY = 34.0, 62.0
	d.line(axleX, 8, axleX, 116, rule, 3)
	d.bar(axleX-14, 16, axleX+14, 16, 10, fill, quiet, 1.6)
	d.bar(axleX-14, 108, axleX+14, 108, 10, fill, quiet, 1.6)
	d.line(8, middleY, 220, middleY, rule, 1.4)
	d.shape(fill, line, 2, 56, 36, 120, 36, 134, 48, 190, 52, 190, 72, 134, 76, 120, 88, 56, 88)
	for _, m := range []string{"mount_left", "mount_right", "mount_rear"} {
		style := line
		if m == part {
			style = mark
		}
		d.shape(fill, style, 2.4, spots[m].x-8, spots[m].y-7, spots[m].x+8, spots[m].y-7, spots[m].x+8, spots[m].y+7, spots[m].x-8, spots[m].y+7)
	}
	d.circle(at.x, at.y, 5, mark, mark, 0)
	switch dimension {
	case "x":
		y := 120.0
		if at.y < middleY-10 {
			y = 2
		}
		d.feet(at.x, at.y, at.x, y)
		d.gauge(axleX, y, at.x, y)
	case "y":
		d.feet(at.x, at.y, 206, at.y)
		d.gauge(204, middleY, 204, at.y)
		if part == "mount_rear" || part == "engine_gearbox" {
			d.arrow(at.x, at.y+4, at.x, at.y+34, mark, 3)
			d.arrow(at.x, at.y-4, at.x, at.y-34, mark, 3)
		}
	case "rating":
		d.plateAt(at.x+14, at.y-14)
	case "mass":
		d.scales(at.x, at.y-6)
	default:
		return false
	}
	return true
}

// sling draws an engine on a sling.
func (d *picture) sling(dimension string) bool {
	d.shape(fill, line, 2, 60, 76, 166, 76, 166, 116, 60, 116)
	for i, x := range []float64{66, 160} {
		style := line
		if dimension == "legs" || i == 0 && dimension == "angle" {
			style = mark
		}
		d.line(x, 76, 113, 22, style, 3)
	}
	d.circle(113, 14, 8, fill, line, 2)
	switch dimension {
	case "legs":
	case "angle":
		d.line(66, 76, 120, 76, mark, 1.6)
		d.stroke(mark, 3, arc(point{66, 76}, 28, -0.85, 0)...)
	case "limit":
		d.plateAt(126, 30)
	default:
		return false
	}
	return true
}

// axleOnScales draws the wheels of one axle on a weighbridge.
func (d *picture) axleOnScales(front bool) {
	d.shape(fill, line, 2, 30, 74, 30, 54, 70, 48, 84, 24, 130, 24, 136, 52, 200, 54, 200, 74)
	for i, x := range []float64{62, 168} {
		d.circle(x, 84, 18, fill, line, 2)
		if (i == 0) == front {
			d.shape(fill, mark, 2.6, x-30, 102, x+30, 102, x+30, 116, x-30, 116)
			d.arrow(x, 56, x, 80, mark, 4)
			continue
		}
		d.line(x-30, 103, x+30, 103, rule, 2.5)
	}
}
