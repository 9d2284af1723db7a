package draw

import (
	"math"

	"yokebook/checks/flange"
)

// where each flange face is drawn: the vehicle's above the shaft's, front on the left.
var faces = []struct {
	part   string
	column float64
	row    float64
}{{"front_end", 0, 0}, {"front_mate", 0, 1}, {"rear_end", 1, 0}, {"rear_mate", 1, 1}}

// flanges draws the faces that were read, to one scale: pilot, bolt circle and holes.
func (s *Scene) flanges() Drawing {
	d := Drawing{View: EndsView, Box: emptyBox(), Title: s.says.Say("draw.title.ends")}
	var unread []string
	pitch := s.facePitch()
	for _, f := range faces {
		centre := Point{f.column * pitch * 1.3, -f.row * pitch}
		if !s.face(&d, f.part, centre) {
			unread = append(unread, f.part)
		}
	}
	if len(unread) > 0 {
		d.note(s.says.Say("draw.unread", s.says.List(unread, s.says.Part)))
	}
	if len(unread) < len(faces) {
		d.note(s.says.Say("draw.legend.ends"))
	}
	return d
}

// facePitch is the way from one face to the next: the largest of them with air for letters.
func (s *Scene) facePitch() float64 {
	most := 60.0
	for _, f := range faces {
		if bc, _, ok := s.boltCircle(f.part); ok {
			most = math.Max(most, bc)
		}
		if n, ok := s.bench(f.part + ".pilot"); ok {
			most = math.Max(most, n.Value)
		}
	}
	return most * 2.1
}

// boltCircle is the diameter through the holes, as read or from the chord of evenly spaced ones.
func (s *Scene) boltCircle(part string) (diameter float64, said string, ok bool) {
	if n, ok := s.bench(part + ".bolt_circle"); ok {
		return n.Value, s.number(n, "mm"), true
	}
	chord, hasChord := s.bench(part + ".bolt_chord")
	bolts, hasBolts := s.bench(part + ".bolts")
	if _, uneven := s.bench(part + ".bolt_chord_2"); !hasChord || !hasBolts || uneven {
		return 0, "", false
	}
	circle, err := flange.Circle(int(bolts.Value), chord.Value)
	if err != nil {
		return 0, "", false
	}
	return circle, s.says.Number(circle, "mm", (chord.High-chord.Low)/2*circle/chord.Value), true
}

// face draws one flange face; false where nothing of it was read.
func (s *Scene) face(d *Drawing, part string, centre Point) bool {
	pilot, hasPilot := s.bench(part + ".pilot")
	bolts, hasBolts := s.bench(part + ".bolts")
	size, hasSize := s.bench(part + ".bolt_size")
	circle, said, hasCircle := s.boltCircle(part)
	if !hasPilot && !hasCircle {
		return false
	}
	rim := pilot.Value/2 + 8
	if hasCircle {
		rim = circle/2 + math.Max(size.Value, 8)
	}
	d.circle(Outline, "rim of "+part, centre, rim)
	d.label(1, Above, Plain, centre.plus(Point{0, rim}), s.says.Say("draw.face."+part))
	if hasPilot {
		d.circle(Body, "pilot of "+part, centre, pilot.Value/2)
		key := "draw.pilot"
		if kind, ok := s.bench(part + ".pilot_kind"); ok {
			if key = "draw.pilot_female"; kind.Value == 1 {
				key = "draw.pilot_male"
			}
		}
		d.label(12, Below, Plain, centre.plus(pointing(-2.0, pilot.Value/2)), s.says.Say(key, s.number(pilot, "mm")))
	}
	if hasCircle {
		d.Shapes = append(d.Shapes, Shape{Name: "bolt circle of " + part, Style: Guide, Closed: true, Arc: &Arc{centre, circle / 2, 0, 2 * math.Pi}})
		text := s.says.Say("draw.bolt_circle", said)
		if hasBolts && hasSize {
			text = s.says.Say("draw.bolts", int(bolts.Value), s.says.Number(size.Value, "", 0), said)
		}
		d.label(10, Below, Plain, centre.plus(pointing(-1.1, circle/2)), text)
	}
	if hasBolts && hasCircle {
		s.holes(d, part, centre, int(bolts.Value), circle, size.Value)
	}
	return true
}

// holes draws evenly spaced holes, one of them straight above.
func (s *Scene) holes(d *Drawing, part string, centre Point, bolts int, circle, size float64) {
	for i := range min(bolts, 16) {
		at := centre.plus(pointing(math.Pi/2+2*math.Pi*float64(i)/float64(bolts), circle/2))
		if size > 0 {
			d.circle(Body, "hole of "+part, at, size/2)
		}
	}
	for _, way := range []Point{{1, 0}, {0, 1}} {
		r := circle/2 + 4
		d.line(Guide, "", centre.minus(way.by(r)), centre.plus(way.by(r)))
	}
}
