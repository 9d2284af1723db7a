package sheet

import "yokebook/app/draw"

// Sizes of the drawing that names the lengths, in its own mm: it has no scale, and says so.
const (
	datumFace  = 90.0  // flange face to joint centre
	datumShaft = 900.0 // joint centre to joint centre
	datumTube  = 26.0  // half the tube
)

// datum names what the lengths of the table are counted between: A from joint centre to joint centre, B
// from face to face, C how far the sliding spline is drawn out; F the front shaft of two.
func (m *maker) datum() draw.Drawing {
	d := draw.Drawing{Title: m.says.Say("sheet.datum.title"), Notes: []string{m.says.Say("sheet.datum.note")},
		Box: draw.Box{Min: draw.Point{X: -datumFace - 20, Y: -52}, Max: draw.Point{X: datumShaft + datumFace + 20, Y: 56}}}
	tail := m.build.Layout.Slip == "gearbox"
	first := 0.0
	if m.build.Layout.Shafts == 2 {
		first = -500
		d.Box.Min.X = first - datumFace - 20
	}
	flange := func(x, toward float64) {
		line(&d, draw.Outline, draw.Point{X: x, Y: -40}, draw.Point{X: x, Y: 40})
		line(&d, draw.Outline, draw.Point{X: x, Y: 0}, draw.Point{X: x + toward*(datumFace-12), Y: 0})
	}
	if tail {
		area(&d, first-datumFace-10, first-20, 14)
	} else {
		flange(first-datumFace, 1)
	}
	flange(datumShaft+datumFace, -1)
	if first < 0 {
		area(&d, first+50, -120, datumTube)
		line(&d, draw.Outline, draw.Point{X: -90, Y: -datumTube - 16}, draw.Point{X: -90, Y: datumTube + 16})
		joint(&d, first)
		dimension(&d, first, 0, 50, m.says.Say("sheet.datum.front"))
	}
	from := 60.0
	if !tail {
		area(&d, 40, 200, datumTube/2)
		from = 140
		dimension(&d, 105, from, 30, m.says.Say("sheet.datum.slip"))
	} else {
		dimension(&d, first-60, first-20, 30, m.says.Say("sheet.datum.slip"))
	}
	area(&d, from, datumShaft-60, datumTube)
	joint(&d, 0)
	joint(&d, datumShaft)
	dimension(&d, 0, datumShaft, 50, m.says.Say("sheet.datum.centres"))
	if first == 0 && !tail {
		dimension(&d, -datumFace, datumShaft+datumFace, -46, m.says.Say("sheet.datum.faces"))
	} else {
		dimension(&d, 0, datumShaft+datumFace, -46, m.says.Say("sheet.datum.half"))
	}
	return d
}

func line(d *draw.Drawing, style draw.Style, points ...draw.Point) {
	d.Shapes = append(d.Shapes, draw.Shape{Style: style, Points: points})
}

func area(d *draw.Drawing, from, to, half float64) {
	d.Shapes = append(d.Shapes, draw.Shape{Style: draw.Outline, Closed: true, Points: []draw.Point{
		{X: from, Y: -half}, {X: to, Y: -half}, {X: to, Y: half}, {X: from, Y: half}}})
}

func joint(d *draw.Drawing, x float64) {
	d.Signs = append(d.Signs, draw.Sign{Kind: draw.JointSign, Style: draw.Body, At: draw.Point{X: x}, Dir: draw.Point{X: 1}})
}

// dimension draws a length with its letter, so high above the shaft's middle.
func dimension(d *draw.Drawing, from, to, y float64, text string) {
	a, b := draw.Point{X: from, Y: y}, draw.Point{X: to, Y: y}
	for _, p := range []draw.Point{a, b} {
		line(d, draw.Measure, draw.Point{X: p.X}, p)
	}
	line(d, draw.Measure, a, b)
	d.Signs = append(d.Signs, draw.Sign{Kind: draw.ArrowSign, Style: draw.Measure, At: a, Dir: draw.Point{X: -1}},
		draw.Sign{Kind: draw.ArrowSign, Style: draw.Measure, At: b, Dir: draw.Point{X: 1}})
	side := draw.Above
	if y < 0 {
		side = draw.Below
	}
	d.Labels = append(d.Labels, draw.Label{Text: text, At: draw.Point{X: (from + to) / 2, Y: y}, Side: side, Style: draw.Plain})
}
