package tool

import "yokebook/app/draw"

// Choice draws one choice of a build's layout; empty for a choice that has none.
func Choice(member, choice string) draw.Page {
	d := newDrawing(SideWide, SideHigh)
	switch member + "." + choice {
	case "shafts.1":
		d.run([]float64{40, 160})
	case "shafts.2":
		d.run([]float64{30, 96, 170})
	case "slip.shaft":
		d.run([]float64{40, 160})
		d.bar(70, 50, 100, 50, 20, fill, mark, 3)
		d.arrow(78, 82, 58, 82, mark, 3)
		d.arrow(92, 82, 112, 82, mark, 3)
	case "slip.gearbox":
		d.shape(fill, line, 2, 14, 30, 52, 30, 66, 38, 66, 62, 52, 70, 14, 70)
		d.run([]float64{84, 176})
		d.bar(62, 50, 84, 50, 14, fill, mark, 3)
		d.arrow(72, 84, 52, 84, mark, 3)
		d.arrow(82, 84, 102, 84, mark, 3)
	case "axle.leaf":
		d.stroke(mark, 4, bow(point{24, 34}, point{100, 108}, point{176, 34})...)
		d.circle(24, 34, 5, fill, line, 2)
		d.circle(176, 34, 5, fill, line, 2)
		d.circle(100, 58, 15, fill, line, 2)
	case "axle.links":
		d.bar(30, 66, 142, 70, 7, fill, mark, 2.4)
		d.bar(52, 32, 142, 40, 7, fill, mark, 2.4)
		d.circle(148, 56, 22, fill, line, 2)
	case "axle.fixed":
		d.line(30, 24, 170, 24, line, 5)
		d.line(100, 24, 100, 44, mark, 4)
		d.circle(100, 62, 18, fill, line, 2)
	case "front_joint.single", "rear_joint.single":
		d.run([]float64{100})
	case "front_joint.double", "rear_joint.double":
		d.run([]float64{84, 116})
	default:
		return draw.Page{}
	}
	return d.Page
}

// run draws joints at the given places with shafts between and stubs outside.
func (d *picture) run(joints []float64) {
	d.bar(joints[0]-26, 50, joints[0], 50, 7, fill, line, 2)
	last := joints[len(joints)-1]
	d.bar(last, 50, last+26, 50, 7, fill, line, 2)
	for i := 0; i+1 < len(joints); i++ {
		d.bar(joints[i], 50, joints[i+1], 50, 12, fill, line, 2)
	}
	for _, x := range joints {
		d.circle(x, 50, 10, fill, mark, 3)
		d.line(x-5, 50, x+5, 50, mark, 2)
		d.line(x, 45, x, 55, mark, 2)
	}
}
