package tool

// survey draws what is measured before a shaft exists and between the wheels: heights over a level
// floor from the side, ways to a string from above.
func (d *picture) survey(key string) bool {
	switch key {
	case "shaft.gap", "front_flange.z", "rear_flange.z", "front_end.face_to_joint", "rear_end.face_to_joint":
		d.flangesFromTheSide(key)
	case "front_flange.y", "rear_flange.y", "gearbox.y_front", "gearbox.y_rear", "gearbox.y_span", "gearbox.plan", "front_shaft.plan", "shaft.plan", "pinion.plan":
		d.fromAboveString(key)
	case "wheelbase.left", "wheelbase.right", "wheelbase.length", "track.width":
		d.wheelsFromAbove(key)
	case "hub.height", "hub_left.height", "hub_right.height":
		d.wheelsFromBehind(key)
	case "pinion.windup_drive", "pinion.windup_coast":
		d.windUp(key == "pinion.windup_drive")
	default:
		return false
	}
	return true
}

func (d *picture) flangesFromTheSide(key string) {
	const frontX, frontY, rearX, rearY, floor = 66.0, 40.0, 160.0, 66.0, 114.0
	d.line(6, floor, 220, floor, rule, 2.5)
	d.bar(8, frontY, frontX-6, frontY, 30, fill, line, 2)
	d.bar(frontX-3, frontY-20, frontX-3, frontY+20, 6, fill, line, 2)
	d.bar(rearX+6, rearY, 218, rearY, 26, fill, line, 2)
	d.bar(rearX+3, rearY-18, rearX+3, rearY+18, 6, fill, line, 2)
	switch key {
	case "shaft.gap":
		d.gauge(frontX, frontY, rearX, rearY)
	case "front_flange.z":
		d.gauge(frontX, frontY, frontX, floor)
	case "rear_flange.z":
		d.gauge(rearX, rearY, rearX, floor)
	case "front_end.face_to_joint":
		d.circle(frontX+30, frontY, 9, fill, line, 2)
		d.line(frontX, frontY, frontX+30, frontY, line, 3)
		d.feet(frontX, frontY, frontX, 8)
		d.feet(frontX+30, frontY, frontX+30, 8)
		d.gauge(frontX, 10, frontX+30, 10)
	case "rear_end.face_to_joint":
		d.circle(rearX-30, rearY, 9, fill, line, 2)
		d.line(rearX, rearY, rearX-30, rearY, line, 3)
		d.feet(rearX, rearY, rearX, 30)
		d.feet(rearX-30, rearY, rearX-30, 30)
		d.gauge(rearX-30, 32, rearX, 32)
	}
}

// fromAboveString draws gearbox, shaft and pinion from above beside a string along the vehicle's middle.
func (d *picture) fromAboveString(key string) {
	const middle = 100.0
	d.line(4, middle, 222, middle, rule, 2.5)
	d.bar(12, 58, 70, 52, 26, fill, line, 2)
	d.bar(74, 51, 154, 40, 10, fill, line, 2)
	d.bar(158, 40, 214, 36, 20, fill, line, 2)
	down := func(x, y float64) { d.gauge(x, y, x, middle) }
	along := func(x1, y1, x2, y2 float64) {
		d.line(x1, y1, x2, y2, mark, 4)
		d.feet(x1, y2, x2, y2)
		d.stroke(mark, 2.4, point{x1 + 8, y1}, point{x1 + 8, y2})
	}
	switch key {
	case "front_flange.y":
		down(72, 52)
	case "rear_flange.y":
		down(156, 40)
	case "gearbox.y_front":
		down(16, 58)
	case "gearbox.y_rear":
		down(66, 53)
	case "gearbox.y_span":
		d.feet(16, 58, 16, 20)
		d.feet(66, 53, 66, 20)
		d.gauge(16, 22, 66, 22)
	case "gearbox.plan":
		along(12, 58, 70, 52)
	case "shaft.plan":
		along(74, 51, 154, 40)
	case "front_shaft.plan":
		d.circle(114, 45, 9, fill, line, 2)
		along(74, 51, 112, 46)
	case "pinion.plan":
		along(158, 40, 214, 36)
	}
}

func (d *picture) wheelsFromAbove(key string) {
	d.shape(fill, quiet, 1.6, 30, 34, 200, 34, 200, 90, 30, 90)
	for _, x := range []float64{60, 168} {
		d.line(x, 22, x, 102, line, 2)
		d.bar(x-18, 20, x+18, 20, 14, fill, line, 2)
		d.bar(x-18, 104, x+18, 104, 14, fill, line, 2)
	}
	switch key {
	case "wheelbase.left": // seen from above with the front on the left, left is below
		d.gauge(60, 118, 168, 118)
	case "wheelbase.right":
		d.gauge(60, 6, 168, 6)
	case "wheelbase.length":
		d.gauge(60, midY, 168, midY)
	case "track.width":
		d.feet(168, 20, 206, 20)
		d.feet(168, 104, 206, 104)
		d.gauge(206, 20, 206, 104)
	}
}

// wheelsFromBehind draws the axle between its wheels under the arches, the left wheel on the left.
func (d *picture) wheelsFromBehind(key string) {
	d.line(4, 118, 222, 118, rule, 2.5)
	d.stroke(line, 2.4, point{16, 60}, point{16, 22}, point{210, 22}, point{210, 60})
	d.bar(54, 86, 172, 86, 8, fill, line, 2)
	d.circle(113, 86, 14, fill, line, 2)
	for _, x := range []float64{42, 184} {
		d.bar(x, 54, x, 118, 24, fill, line, 2)
		d.circle(x, 86, 4, line, line, 0)
	}
	mid := func(x float64) { d.gauge(x, 22, x, 86) }
	switch key {
	case "hub_left.height":
		mid(42)
	case "hub_right.height":
		mid(184)
	default:
		mid(42)
		mid(184)
	}
}

// windUp draws how the axle turns under torque: its nose up when it drives, down when it holds back.
func (d *picture) windUp(drive bool) {
	d.line(10, 116, 216, 116, rule, 2.5)
	d.circle(150, 74, 40, fill, quiet, 2)
	d.circle(150, 74, 18, fill, line, 2)
	d.bar(70, 74, 134, 74, 14, fill, line, 2)
	if drive {
		d.arrow(76, 58, 76, 26, mark, 4)
		return
	}
	d.arrow(76, 88, 76, 112, mark, 4)
}
