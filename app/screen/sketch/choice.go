package sketch

// Choice draws one choice of a build's layout; empty for a choice that has none.
func Choice(member, choice string, c Colours) Picture {
	d := newDrawing(SideWide, SideHigh)
	switch member + "." + choice {
	case "shafts.1":
		d.run([]float64{40, 160}, c)
	case "shafts.2":
		d.run([]float64{30, 96, 170}, c)
	case "slip.shaft":
		d.run([]float64{40, 160}, c)
		d.bar(70, 50, 100, 50, 20, c.Fill, c.Mark, 3)
		d.arrow(78, 82, 58, 82, c.Mark, 3)
		d.arrow(92, 82, 112, 82, c.Mark, 3)
	case "slip.gearbox":
		d.shape(c.Fill, c.Ink, 2, 14, 30, 52, 30, 66, 38, 66, 62, 52, 70, 14, 70)
		d.run([]float64{84, 176}, c)
		d.bar(62, 50, 84, 50, 14, c.Fill, c.Mark, 3)
		d.arrow(72, 84, 52, 84, c.Mark, 3)
		d.arrow(82, 84, 102, 84, c.Mark, 3)
	case "axle.leaf":
		d.stroke(c.Mark, 4, bow(point{24, 34}, point{100, 108}, point{176, 34})...)
		d.circle(24, 34, 5, c.Fill, c.Ink, 2)
		d.circle(176, 34, 5, c.Fill, c.Ink, 2)
		d.circle(100, 58, 15, c.Fill, c.Ink, 2)
	case "axle.links":
		d.bar(30, 66, 142, 70, 7, c.Fill, c.Mark, 2.4)
		d.bar(52, 32, 142, 40, 7, c.Fill, c.Mark, 2.4)
		d.circle(148, 56, 22, c.Fill, c.Ink, 2)
	case "axle.fixed":
		d.line(30, 24, 170, 24, c.Ink, 5)
		d.line(100, 24, 100, 44, c.Mark, 4)
		d.circle(100, 62, 18, c.Fill, c.Ink, 2)
	case "front_joint.single", "rear_joint.single":
		d.run([]float64{100}, c)
	case "front_joint.double", "rear_joint.double":
		d.run([]float64{84, 116}, c)
	default:
		return Picture{}
	}
	return *d
}

// run draws joints at the given places with shafts between and stubs outside.
func (d *Picture) run(joints []float64, c Colours) {
	d.bar(joints[0]-26, 50, joints[0], 50, 7, c.Fill, c.Ink, 2)
	last := joints[len(joints)-1]
	d.bar(last, 50, last+26, 50, 7, c.Fill, c.Ink, 2)
	for i := 0; i+1 < len(joints); i++ {
		d.bar(joints[i], 50, joints[i+1], 50, 12, c.Fill, c.Ink, 2)
	}
	for _, x := range joints {
		d.circle(x, 50, 10, c.Fill, c.Mark, 3)
		d.line(x-5, 50, x+5, 50, c.Mark, 2)
		d.line(x, 45, x, 55, c.Mark, 2)
	}
}
