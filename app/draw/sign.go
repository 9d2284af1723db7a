package draw

import "math"

// marks draws a sign; solid ones are outlines in the style of solid areas.
func (s Placed) marks() []Mark {
	ring := func(r float64) Mark {
		return Mark{Style: s.Style, Closed: true, Arc: &Arc{s.At, r, 0, 2 * math.Pi}}
	}
	across := s.Dir.square()
	line := func(pts ...Point) Mark { return Mark{Style: s.Style, Points: pts} }
	name := func(m Mark) Mark { m.Name = s.Name; return m }
	switch s.Kind {
	case JointSign:
		r := signSize
		return []Mark{name(ring(r)), line(s.At.plus(s.Dir.by(-r)), s.At.plus(s.Dir.by(r))), line(s.At.plus(across.by(-r)), s.At.plus(across.by(r)))}
	case DotSign:
		return []Mark{name(solid(s.Style, circleAt(s.At, 3.6)))}
	case RingSign:
		return []Mark{name(ring(2 * signSize))}
	case ArrowSign:
		tail := s.At.plus(s.Dir.by(-9))
		return []Mark{name(solid(s.Style, []Point{s.At, tail.plus(across.by(3)), tail.plus(across.by(-3))}))}
	case CutSign:
		var wave []Point
		for i := -6; i <= 6; i++ {
			t := float64(i) / 6
			wave = append(wave, s.At.plus(across.by(11*t)).plus(s.Dir.by(3*math.Sin(math.Pi*t))))
		}
		return []Mark{name(line(wave...))}
	case MassSign:
		r := signSize
		quarter := func(from float64) Mark {
			pts := []Point{s.At}
			for i := range 9 {
				q := pointing(from+float64(i)*math.Pi/16, r)
				pts = append(pts, s.At.plus(q))
			}
			return solid(s.Style, pts)
		}
		return []Mark{name(ring(r)), quarter(0), quarter(math.Pi)}
	}
	return nil
}

// solid is an area filled with the ink of its style.
func solid(style Style, outline []Point) Mark {
	return Mark{Style: style, Points: outline, Closed: true, Solid: true}
}

func circleAt(at Point, r float64) []Point {
	out := make([]Point, 24)
	for i := range out {
		out[i] = at.plus(pointing(float64(i)*math.Pi/12, r))
	}
	return out
}
