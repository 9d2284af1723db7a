package tool

import "yokebook/app/draw"

// Laid draws how an angle finder lies, told by its marked end: "along.fore", "along.aft", and on a
// face of a part "rear.up", "rear.down", "front.up", "front.down". Any other word draws a finder of
// which nothing is known.
func Laid(how string) draw.Page {
	d := newDrawing(SideWide, SideHigh)
	switch how {
	case "along.fore":
		d.onTop()
		d.stripe(58, 36, 78, 64)
	case "along.aft":
		d.onTop()
		d.stripe(122, 36, 142, 64)
	case "rear.up", "rear.down":
		d.onFace(1)
		d.stripeAcross(how == "rear.up", 144)
	case "front.up", "front.down":
		d.onFace(-1)
		d.stripeAcross(how == "front.up", 104)
	default:
		d.onTop()
	}
	return d.Page
}

// onTop draws a part from the side with a finder lying along it.
func (d *picture) onTop() {
	d.bar(14, 76, 186, 76, 16, fill, line, 2.4)
	d.body(58, 36, 142, 64)
	d.shape(quiet, quiet, 1, 88, 43, 112, 43, 112, 57, 88, 57)
}

// onFace draws a flange that looks rearward (1) or forward (-1) with a finder standing on it, clear of
// the words in the upper left corner.
func (d *picture) onFace(toward float64) {
	end, flange, left := 40.0, 138.0, 144.0
	if toward < 0 {
		end, flange, left = 196, 138, 104
	}
	d.bar(end, 52, flange, 52, 20, fill, line, 2.4)
	d.bar(flange, 6, flange, 98, 11, fill, line, 2.4)
	d.body(left, 10, left+28, 94)
	d.shape(quiet, quiet, 1, left+7, 40, left+21, 40, left+21, 64, left+7, 64)
}

// body draws the box of a finder.
func (d *picture) body(x1, y1, x2, y2 float64) {
	d.shape(fill, mark, 3, x1, y1, x2, y1, x2, y2, x1, y2)
}

// stripe draws the mark on an end of a finder.
func (d *picture) stripe(x1, y1, x2, y2 float64) {
	d.shape(mark, mark, 3, x1, y1, x2, y1, x2, y2, x1, y2)
}

// stripeAcross draws the mark on the upper or lower end of a standing finder.
func (d *picture) stripeAcross(up bool, left float64) {
	y := 74.0
	if up {
		y = 10
	}
	d.stripe(left, y, left+28, y+20)
}

// Turned draws the way from one end to the other: a finder taken up and laid back the other way round.
func Turned() draw.Page {
	d := &picture{Page: Laid("along.aft"), scale: 1}
	d.stroke(line, 3.4, bow(point{68, 26}, point{100, -6}, point{132, 24})...)
	d.line(132, 24, 120, 20, line, 3.4)
	d.line(132, 24, 132, 11, line, 3.4)
	return d.Page
}
