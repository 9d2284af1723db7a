package tool

import (
	"math"
	"strings"

	"yokebook/measure"
)

// spot is where a point is read in the picture: the part that is marked, where the tool lies on
// it, how the part slopes, and the two ends of a length.
type spot struct {
	part     string
	x, y     float64 // where the tool lies
	angle    float64 // radians, downward to the rear positive, as the picture runs
	from, to [2]float64
}

// partOf says which part of the picture a part of the table of points belongs to.
var partOf = map[string]string{
	"datum": "rail", "wheelbase": "rail", "bump": "bumpstop",
	"gearbox": "gearbox", "output_shaft": "gearbox", "tail_bush": "gearbox", "tail_seal": "gearbox", "gear": "gearbox",
	"transfer": "gearbox", "converter": "gearbox", "mount_rear": "gearbox",
	"engine": "engine", "engine_gearbox": "engine", "old_engine_gearbox": "engine", "mount_left": "engine",
	"mount_right": "engine", "crank": "engine", "lift_front": "engine", "lift_rear": "engine", "sling": "engine",
	"front_axle": "engine",
	"adapter":    "bell", "flywheel": "bell", "fingers": "bell", "bellhousing": "bell", "bearing": "bell", "slave": "bell", "guide_tube": "bell",
	"input_shaft": "bell", "disc_hub": "bell", "disc": "bell", "cover": "bell", "spigot": "bell", "ring_gear": "bell",
	"starter": "bell",
	"shaft":   "shaft", "tube": "shaft", "slip": "shaft", "slip_male": "shaft", "slip_female": "shaft", "obstacle": "shaft",
	"joint": "shaft", "order": "shaft", "as_built": "shaft", "front_shaft": "front shaft",
	"slip_yoke": "front joint", "front_end": "front joint", "front_mate": "front joint", "front_flange": "front joint",
	"rear_end": "rear joint", "rear_mate": "rear joint", "rear_flange": "rear joint", "rear_joint": "rear joint",
	"centre_bearing": "centre",
	"pinion":         "pinion", "retainer": "pinion",
	"axle": "axle", "rear_axle": "axle", "track": "axle",
	"hub": "wheel", "hub_left": "wheel", "hub_right": "wheel", "tyre": "wheel", "road": "wheel",
	"spring": "spring", "lower_link": "link", "upper_link": "link",
}

// spotOf finds the place of a point. A part that the picture does not show is not marked.
func spotOf(key string, f frame) spot {
	name, dimension, _ := strings.Cut(key, ".")
	if name == "as_built" {
		name, _ = ordered(dimension)
	}
	part := partOf[name]
	down := slopeOf(f.front, f.rear)
	mid := func(a, b [2]float64, t float64) (float64, float64) { return a[0] + t*(b[0]-a[0]), a[1] + t*(b[1]-a[1]) }
	s := spot{part: part}
	switch part {
	case "rail":
		s.x, s.y = 168, railY-7
		s.from, s.to = [2]float64{14, 20}, [2]float64{f.axleX, 20}
	case "bumpstop":
		s.x, s.y = f.axleX, railY
		s.from, s.to = [2]float64{f.axleX, railY + 9}, [2]float64{f.axleX, f.axleY - 14}
	case "gearbox":
		s.x, s.y = 91, 54
		s.from, s.to = [2]float64{72, 92}, [2]float64{118, 92}
	case "engine":
		s.x, s.y = 33, 46
		s.from, s.to = [2]float64{14, 108}, [2]float64{52, 108}
	case "bell":
		s.x, s.y = 62, 50
		s.from, s.to = [2]float64{52, 100}, [2]float64{72, 100}
	case "shaft":
		s.x, s.y = mid(f.front, f.rear, 0.52)
		s.y -= 6
		s.angle = down
		s.from, s.to = [2]float64{f.front[0], f.front[1] + 20}, [2]float64{f.rear[0], f.rear[1] + 20}
	case "front shaft":
		s.x, s.y = mid(f.front, f.centre, 0.5)
		s.y -= 6
		s.angle = down
		s.from, s.to = [2]float64{f.front[0], f.front[1] + 20}, [2]float64{f.centre[0], f.centre[1] + 20}
	case "front joint":
		s.x, s.y = f.front[0], f.front[1]-6
		s.from, s.to = [2]float64{f.front[0] - 12, f.front[1] + 16}, [2]float64{f.front[0] + 12, f.front[1] + 16}
	case "rear joint":
		s.x, s.y = f.rear[0], f.rear[1]-6
		s.from, s.to = [2]float64{f.rear[0] - 12, f.rear[1] + 16}, [2]float64{f.rear[0] + 12, f.rear[1] + 16}
	case "centre":
		s.x, s.y = f.centre[0]-6, f.centre[1]-8
		s.from, s.to = [2]float64{f.centre[0] - 6, railY}, [2]float64{f.centre[0] - 6, f.centre[1]}
	case "pinion":
		s.x, s.y = f.rear[0]+15, f.axleY-7
		s.from, s.to = [2]float64{f.rear[0] + 8, f.axleY + 20}, [2]float64{f.axleX - 12, f.axleY + 20}
	case "axle":
		s.x, s.y = f.axleX, f.axleY-14
		s.from, s.to = [2]float64{f.axleX - 14, f.axleY + 20}, [2]float64{f.axleX + 14, f.axleY + 20}
	case "wheel":
		s.x, s.y = f.axleX, f.axleY-f.wheel
		s.from, s.to = [2]float64{394, railY}, [2]float64{394, f.axleY}
	case "spring":
		s.x, s.y = 330, railY+18
		s.from, s.to = [2]float64{306, railY + 16}, [2]float64{f.axleX, railY + 16}
	case "link":
		s.x, s.y = 316, railY+26
		s.from, s.to = [2]float64{290, railY + 28}, [2]float64{f.axleX, railY + 28}
	}
	return s
}

// tool lays the tool of the point's quantity on the spot.
func (d *picture) tool(p measure.Point, s spot) {
	if s.part == "" {
		return
	}
	switch {
	case p.Basis == measure.Stated:
		d.plate(s)
	case p.Quantity == measure.Angle:
		d.finder(s.x, s.y, s.angle)
	case p.Quantity == measure.Length:
		d.tape(s.from, s.to)
	default:
		d.pointer(s)
	}
}

// finder draws an angle finder standing on a part.
func (d *picture) finder(x, y, angle float64) {
	ux, uy := math.Cos(angle), math.Sin(angle)
	at := func(along, up float64) (float64, float64) { return x + along*ux + up*uy, y + along*uy - up*ux }
	corner := func(xy ...float64) []float64 {
		var out []float64
		for i := 0; i+1 < len(xy); i += 2 {
			px, py := at(xy[i], xy[i+1])
			out = append(out, px, py)
		}
		return out
	}
	d.shape(mark, mark, 1, corner(-17, 1, 17, 1, 17, 5, -17, 5)...)
	d.shape(fill, mark, 2.4, corner(-14, 5, 14, 5, 14, 21, -14, 21)...)
	d.shape(mark, mark, 1, corner(-9, 10, 9, 10, 9, 17, -9, 17)...)
}

// tape draws a length between two places.
func (d *picture) tape(a, b [2]float64) {
	d.line(a[0], a[1], b[0], b[1], mark, 2.6)
	angle := slopeOf(a, b) + math.Pi/2
	for _, p := range [][2]float64{a, b} {
		d.line(p[0]-7*math.Cos(angle), p[1]-7*math.Sin(angle), p[0]+7*math.Cos(angle), p[1]+7*math.Sin(angle), mark, 2.6)
	}
}

// plate draws a small page of text beside the part: a value that is written somewhere.
func (d *picture) plate(s spot) {
	x, y := s.x-15, math.Max(s.y-34, 3)
	if s.x < 80 { // clear of the words in the corner
		x += 60
	}
	d.shape(fill, mark, 2.4, x, y, x+30, y, x+30, y+24, x, y+24)
	for i := 0.0; i < 3; i++ {
		d.line(x+6, y+6+6*i, x+24-6*math.Mod(i, 2), y+6+6*i, mark, 2)
	}
}

// pointer draws an arrow onto the part.
func (d *picture) pointer(s spot) { d.arrow(s.x, s.y-30, s.x, s.y-3, mark, 3) }
