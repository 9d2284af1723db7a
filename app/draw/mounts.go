package draw

import "yokebook/checks"

var mountParts = []string{"mount_left", "mount_right", "mount_rear"}

// mounts draws engine and gearbox on their mounts from above, front on the left.
func (s *Scene) mounts() Drawing {
	d := Drawing{View: MountsView, Box: emptyBox(), Title: s.says.Say("draw.title.mounts")}
	var unread []string
	var corners []Point
	for _, m := range mountParts {
		at, ok := s.spot(m, &unread)
		if !ok {
			continue
		}
		corners = append(corners, at)
	}
	if len(corners) == 3 {
		d.area(Measure, "triangle of mounts", corners...)
	}
	s.massAndAxle(&d, &unread)
	for _, m := range mountParts {
		var none []string
		if at, ok := s.spot(m, &none); ok {
			s.mount(&d, m, at)
		}
	}
	d.note(s.unread(unread))
	if len(corners) > 0 {
		d.note(s.says.Say("draw.legend.mounts"))
	}
	return d
}

// spot is where a part stands, seen from above with the front on the left.
func (s *Scene) spot(part string, unread *[]string) (Point, bool) {
	x, okX := s.bench(part + ".x")
	y, okY := s.bench(part + ".y")
	for _, p := range []struct {
		ok  bool
		key string
	}{{okX, part + ".x"}, {okY, part + ".y"}} {
		if !p.ok {
			*unread = append(*unread, p.key)
		}
	}
	return Point{-x.Value, -y.Value}, okX && okY
}

// mount marks one mount with its greatest load and what it may carry.
func (s *Scene) mount(d *Drawing, part string, at Point) {
	style, text := Plain, s.says.Part(part)
	for i := range s.findings {
		f := &s.findings[i]
		if f.Check != "mount.load" || f.Subject != part || f.Value == nil {
			continue
		}
		text = s.says.Say("draw.load", text, s.saidOf(f))
		if f.Limit != nil {
			text = s.says.Say("draw.of", text, s.says.Number(f.Limit.Value, f.Limit.Unit, 0))
		}
		if f.Verdict != checks.Unsaid && f.Verdict != checks.Waiting {
			text = s.says.Say("draw.judged", text, s.verdict(*f))
		}
		if style = styleOf(f.Verdict); style != Plain {
			d.sign(RingSign, style, "worst", at, Point{1, 0})
		}
	}
	d.sign(DotSign, Body, part, at, Point{1, 0})
	side := Above
	if at.Y < 0 {
		side = Below
	}
	if part == "mount_rear" {
		side = Right
	}
	d.label(10, side, style, at, text)
}

// massAndAxle marks the centre of mass within its doubt, the lifting places and the front axle.
func (s *Scene) massAndAxle(d *Drawing, unread *[]string) {
	at, ok := s.spot("engine_gearbox", unread)
	if ok {
		x, _ := s.bench("engine_gearbox.x")
		y, _ := s.bench("engine_gearbox.y")
		d.area(Doubt, "doubt of centre of mass", Point{-x.Low, -y.Low}, Point{-x.High, -y.Low}, Point{-x.High, -y.High}, Point{-x.Low, -y.High})
		d.sign(MassSign, Read, "centre of mass", at, Point{1, 0})
		text := s.says.Say("draw.mass_unread")
		if kg, ok := s.bench("engine_gearbox.mass"); ok {
			text = s.says.Say("draw.mass", s.number(kg, "kg"))
		} else {
			*unread = append(*unread, "engine_gearbox.mass")
		}
		d.label(5, Above, Read, at, text)
	}
	if d.Box.empty() {
		return
	}
	low, high := d.Box.Min.Y-40, d.Box.Max.Y+40
	d.line(Guide, "front axle line", Point{0, low}, Point{0, high})
	d.label(30, Above, Quiet, Point{0, high}, s.says.Say("draw.front_axle"))
	d.line(Guide, "middle of the vehicle", Point{d.Box.Min.X - 60, 0}, Point{d.Box.Max.X + 60, 0})
	d.label(31, Right, Quiet, Point{d.Box.Max.X - 40, 0}, s.says.Say("draw.middle"))
}
