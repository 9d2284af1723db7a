package tool

import (
	"math"

	"yokebook/app/draw"
	"yokebook/measure"
)

// SideWide and SideHigh are the size of the small pictures in their own units.
const (
	SideWide = 200
	SideHigh = 100
)

// Side draws one of the two answers to the question that a sense asks: the positive one, or the
// other.
func Side(s measure.Sense, positive bool) draw.Page {
	d := newDrawing(SideWide, SideHigh)
	sign := -1.0
	if positive {
		sign = 1
	}
	switch s {
	case measure.FrontHigh:
		d.tilted(sign)
	case measure.FrontLeft:
		d.fromAbove(sign)
	case measure.Clockwise:
		d.turning(positive)
	case measure.Above:
		d.line(30, 50, 170, 50, rule, 3)
		d.circle(100, 50-28*sign, 7, fill, mark, 3)
		d.arrow(100, 50-4*sign, 100, 50-17*sign, mark, 3)
	case measure.LeftOf, measure.ForwardOf:
		d.line(100, 12, 100, 88, rule, 3)
		d.circle(100-48*sign, 50, 7, fill, mark, 3)
		d.arrow(100-6*sign, 50, 100-36*sign, 50, mark, 3)
	case measure.GearboxSide, measure.Outward:
		d.face(sign)
	case measure.EngineSide:
		d.face(-sign)
	}
	return d.Page
}

// tilted draws a part from the side with the finder on it and an arrow at its high end.
func (d *picture) tilted(sign float64) {
	left, right := 62+16*sign*-1, 62+16*sign
	d.line(20, 86, 180, 86, rule, 2.5)
	d.bar(34, left, 166, right, 13, fill, line, 2)
	d.finder(100, 55, slopeOf([2]float64{34, left}, [2]float64{166, right}))
	x, y := 34.0, left
	if sign < 0 {
		x, y = 166, right
	}
	d.arrow(x, y-12, x, y-36, mark, 4)
}

// fromAbove draws a part seen from above beside the middle line of the vehicle; left is up.
func (d *picture) fromAbove(sign float64) {
	d.line(16, 50, 184, 50, rule, 2.5)
	y := 50 - 22*sign
	d.bar(36, y, 166, 50, 13, fill, line, 2)
	d.arrow(36, 50-6*sign, 36, y+9*sign, mark, 4)
}

// turning draws the sense of a turn as one sees it looking forward along the shaft.
func (d *picture) turning(clockwise bool) {
	d.circle(100, 50, 16, fill, line, 2)
	d.line(100, 36, 100, 64, line, 3)
	if clockwise {
		d.stroke(mark, 4, arc(point{100, 50}, 36, math.Pi-0.34, 2*math.Pi+0.34)...)
		d.line(134, 62, 131, 48, mark, 4)
		d.line(134, 62, 146, 54, mark, 4)
		return
	}
	d.stroke(mark, 4, arc(point{100, 50}, 36, math.Pi-0.34, 2*math.Pi+0.34)...)
	d.line(66, 62, 69, 48, mark, 4)
	d.line(66, 62, 54, 54, mark, 4)
}

// face draws a face and the side of it that something stands on; the gearbox lies to the right.
func (d *picture) face(sign float64) {
	d.shape(fill, line, 2, 92, 12, 108, 12, 108, 88, 92, 88)
	d.line(130, 24, 178, 24, rule, 3)
	d.line(130, 76, 178, 76, rule, 3)
	d.arrow(100+12*sign, 50, 100+52*sign, 50, mark, 4)
}
