package tool

import "math"

// shaftAt draws a shaft off the vehicle, or its tube from the end, or what holds it in the middle.
func (d *picture) shaftAt(key string) bool {
	const left, right, slipFrom, slipTo = 20.0, 206.0, 60.0, 96.0
	below := func(a, b float64) {
		d.feet(a, midY+16, a, midY+46)
		d.feet(b, midY+16, b, midY+46)
		d.gauge(a, midY+44, b, midY+44)
	}
	switch key {
	case "shaft.length", "front_shaft.length":
		d.shaftOff(left, right, 14)
		below(left, right)
	case "shaft.closed":
		d.shaftOff(left+16, right, 0)
		d.feet(left+16, midY, left+16, midY+46)
		below(left+16, right)
		d.arrow(left-14, midY-26, left+12, midY-26, mark, 3)
	case "slip.exposed":
		d.shaftOff(left, right, 14)
		d.feet(slipFrom-4, midY, slipFrom-4, midY+46)
		below(slipFrom-4, slipFrom+10)
	case "slip.usable":
		d.shaftOff(left, right, 30)
		d.arrow(left+24, midY-30, left-6, midY-30, mark, 3)
		below(slipFrom-20, slipTo)
	case "shaft.mass":
		d.shaftOff(left, right, 14)
		d.scales(midX, midY-14)
	case "tube.od", "front_shaft.tube_od":
		d.ring(48, 40)
		d.across(midX, midY, 48, midY+60)
	case "tube.wall", "front_shaft.tube_wall":
		d.ring(48, 34)
		d.gauge(midX+34, midY, midX+48, midY)
		d.arrow(midX+78, midY, midX+52, midY, mark, 3)
	case "tube.material":
		d.ring(48, 40)
		d.arrow(midX+88, midY-28, midX+44, midY-18, mark, 4)
	case "shaft.phase", "front_shaft.phase":
		d.phase()
	case "centre_bearing.bore", "centre_bearing.bolt_span", "centre_bearing.height", "centre_bearing.offset":
		d.centreBearing(key)
	case "obstacle.gap", "obstacle.station", "obstacle.side":
		d.obstacle(key)
	default:
		return false
	}
	return true
}

// shaftOff draws a shaft with its slip drawn out by so much.
func (d *picture) shaftOff(left, right, out float64) {
	d.bar(left+10, midY, 100, midY, 14, fill, line, 2)
	d.bar(70-out, midY, 100, midY, 9, fill, quiet, 1.6)
	d.bar(70, midY, right-14, midY, 26, fill, line, 2)
	d.bar(left+14, midY, 60-out*0.3, midY, 20, fill, line, 2)
	for _, x := range []float64{left, right} {
		d.circle(x, midY, 13, fill, line, 2)
		d.line(x-7, midY, x+7, midY, line, 2)
		d.line(x, midY-7, x, midY+7, line, 2)
	}
}

// ring draws a tube from its end.
func (d *picture) ring(outer, inner float64) {
	d.circle(midX, midY, outer, fill, line, 2)
	d.circle(midX, midY, inner, fill, line, 2)
}

// phase draws the yokes at both ends of a shaft, the rear one turned.
func (d *picture) phase() {
	for i, x := range []float64{56, 170} {
		turn := math.Pi / 2
		if i == 1 {
			turn = math.Pi/2 - 0.5
		}
		d.circle(x, midY, 34, fill, line, 2)
		c, s := 46*math.Cos(turn), 46*math.Sin(turn)
		d.bar(x-c, midY-s, x+c, midY+s, 13, fill, line, 2)
		if i == 1 {
			d.line(x, midY-52, x, midY+52, quiet, 1.4)
			d.stroke(mark, 3, arc(point{x, midY}, 54, -math.Pi/2, -math.Pi/2+0.5)...)
			d.bar(x+c-16, midY-s+10, x+c+16, midY-s-6, 10, fill, mark, 2.4)
			continue
		}
		d.finder(x, midY-46, 0)
	}
}

func (d *picture) centreBearing(key string) {
	d.bar(20, midY+6, 206, midY+6, 20, fill, line, 2)
	d.shape(fill, line, 2, 60, 8, 166, 8, 166, 20, 60, 20)
	d.circle(midX, midY+6, 34, fill, line, 2)
	d.circle(midX, midY+6, 20, fill, line, 2)
	d.line(midX-34, midY-4, midX-34, 20, line, 2)
	d.line(midX+34, midY-4, midX+34, 20, line, 2)
	switch key {
	case "centre_bearing.bore":
		d.circle(midX, midY+6, 20, none, mark, 3)
		d.across(midX, midY+6, 20, 118)
	case "centre_bearing.bolt_span":
		d.circle(76, 14, 5, mark, mark, 0)
		d.circle(150, 14, 5, mark, mark, 0)
		d.gauge(76, 1, 150, 1)
	case "centre_bearing.height":
		d.feet(60, 8, 34, 8)
		d.feet(midX, midY+6, 34, midY+6)
		d.gauge(36, 8, 36, midY+6)
	case "centre_bearing.offset":
		d.circle(200, midY+6, 12, fill, line, 2)
		d.feet(midX, midY+6, midX, 116)
		d.feet(200, midY+6, 200, 116)
		d.gauge(midX, 114, 200, 114)
	}
}

func (d *picture) obstacle(key string) {
	d.circle(20, 84, 9, fill, line, 2)
	d.circle(206, 84, 9, fill, line, 2)
	d.bar(34, 84, 192, 84, 20, fill, line, 2)
	d.line(20, 84, 206, 84, mark, 1.4)
	d.shape(fill, line, 2, 112, 22, 168, 22, 168, 34, 112, 34)
	switch key {
	case "obstacle.gap":
		d.gauge(140, 34, 140, 84)
	case "obstacle.station":
		d.feet(20, 84, 20, 114)
		d.feet(140, 34, 140, 114)
		d.gauge(20, 112, 140, 112)
	case "obstacle.side":
		d.arrow(140, 54, 140, 38, mark, 4)
		d.arrow(140, 98, 140, 116, mark, 4)
		d.circle(140, 84, 4, mark, mark, 0)
	}
}
