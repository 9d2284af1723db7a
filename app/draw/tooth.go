package draw

import (
	"math"
	"slices"
	"strings"

	"yokebook/checks"
	"yokebook/checks/spline"
	"yokebook/measure"
)

// splineParts are the parts that have splines, in the order in which they are drawn.
var splineParts = []string{"input_shaft", "disc_hub", "output_shaft", "slip_yoke", "slip_male", "slip_female"}

// overlaid is how many candidates are drawn over each other, the nearest ones.
const overlaid = 3

// teeth draws the tooth forms of the standard splines that agree with what was read, one over the
// other, for each part.
func (s *Scene) teeth() Drawing {
	d := Drawing{View: SplinesView, Box: emptyBox(), Title: s.says.Say("draw.title.splines")}
	var without []string
	x := 0.0
	for _, part := range splineParts {
		count, ok := s.bench(part + ".splines")
		if point, _ := measure.PointOf(part + ".splines"); !ok || !point.In(s.build.Layout) || count.Value < 4 {
			continue
		}
		list := checks.SplineCandidates(s.build, part)
		if len(list) == 0 {
			without = append(without, part)
			continue
		}
		x += s.toothForms(&d, part, int(count.Value), list, x)
	}
	if len(without) > 0 {
		d.note(s.says.Say("draw.no_candidate", s.says.List(without, s.says.Part)))
	}
	if !d.Box.empty() {
		d.note(s.says.Say("draw.legend.splines"))
	}
	if len(d.Notes) == 0 {
		d.note(s.says.Say("draw.no_splines"))
	}
	return d
}

// toothForms draws one part with its middle teeth straight up, and gives back how wide it is.
func (s *Scene) toothForms(d *Drawing, part string, count int, list []spline.Candidate, x float64) float64 {
	list = list[:min(len(list), overlaid)]
	most := 0.0
	for _, c := range list {
		most = math.Max(most, math.Max(c.TipMM, c.RootMM)/2)
	}
	pitch := 2 * math.Pi / float64(count)
	half := 1.6 * pitch
	wide := 2 * most * math.Sin(math.Min(half, math.Pi/2))
	centre := Point{x + wide/2, -most}
	for _, dimension := range []string{"major", "minor"} {
		n, ok := s.bench(part + "." + dimension)
		if !ok {
			continue
		}
		d.Shapes = append(d.Shapes, Shape{Name: dimension + " of " + part, Style: Body,
			Arc: &Arc{centre, n.Value / 2, math.Pi/2 - half, math.Pi/2 + half}})
		at := centre.plus(pointing(math.Pi/2-half, n.Value/2))
		d.Box.extend(at, centre.plus(pointing(math.Pi/2+half, n.Value/2)), centre.plus(pointing(math.Pi/2, n.Value/2)))
		side := Above
		if dimension == "minor" {
			side = Below
		}
		d.label(20, side, Plain, centre.plus(pointing(math.Pi/2+half*0.6, n.Value/2)), s.says.Say("draw.read_diameter", s.number(n, "mm")))
	}
	for i, c := range list {
		style := []Style{Predicted, Second, Third}[i]
		flank := toothOf(c, count)
		var outline []Point
		for k := 1.0; k >= -1; k-- {
			outline = append(outline, flank.tooth(centre, math.Pi/2+k*pitch)...)
		}
		d.line(style, c.Standard+" "+c.Designation, outline...)
		ink := style
		if ink == Predicted {
			ink = Read
		}
		d.label(10+i, Above, ink, outline[len(outline)/2], s.says.Say("draw.candidate", c.Standard, c.Designation, s.says.Number(c.PressureDeg, "deg", 0)))
	}
	d.label(1, Above, Plain, centre.plus(Point{0, most * 1.02}), s.says.Part(part))
	return wide * 1.5
}

// form is the outline of a tooth, or of the space between two internal teeth.
type form struct {
	inner, outer float64 // radii
	base         float64 // radius of the base circle; 0: straight flanks
	at           float64 // half the angle that it spans at the base circle
	width        float64 // of a tooth with straight flanks
}

// toothOf works a candidate's form out: the involute stands off the middle of the tooth by
//
//	θ(ρ) = T/d + inv α − inv α_ρ,   cos α_ρ = r_b/ρ
//
// T is the thickness along the pitch circle of diameter d, half a pitch and what the standard gives
// or, for one whose rack is moved, takes from the tips.
//
// Source: any text on gearing; the rack of DIN 5480 reaches 0.45 modules to the tips (from memory).
func toothOf(c spline.Candidate, count int) form {
	f := form{inner: math.Min(c.TipMM, c.RootMM) / 2, outer: math.Max(c.TipMM, c.RootMM) / 2, width: c.WidthMM}
	if c.ModuleMM == 0 {
		return f
	}
	d := c.ModuleMM * float64(count)
	alpha := c.PressureDeg * math.Pi / 180
	thick := math.Pi * c.ModuleMM / 2
	if strings.HasPrefix(c.Standard, "DIN 5480") {
		rack := 0.45 * c.ModuleMM
		if c.TipMM < c.RootMM {
			rack = -rack
		}
		thick += 2 * ((c.TipMM-d)/2 - rack) * math.Tan(alpha)
	} else if c.TipMM < c.RootMM {
		thick += c.ModuleMM * widerSpace(c)
	}
	f.base = d / 2 * math.Cos(alpha)
	f.at = thick/d + spline.Inv(c.PressureDeg)
	return f
}

// widerSpace is by how much more than half a pitch a standard's internal spaces measure, modules.
func widerSpace(c spline.Candidate) float64 {
	i := slices.IndexFunc(spline.Families, func(f spline.Family) bool {
		return f.Standard == c.Standard && f.Root == c.Root && f.PressureDeg == c.PressureDeg
	})
	if i < 0 {
		return 0
	}
	return spline.Families[i].WiderSpace
}

// half is half the angle that the tooth spans at a radius, radians.
func (f form) half(r float64) float64 {
	if f.base == 0 {
		return math.Asin(math.Min(f.width/2/r, 1))
	}
	if r <= f.base {
		return f.at
	}
	a := math.Acos(f.base / r)
	return f.at - (math.Tan(a) - a)
}

// tooth is the outline of a tooth around an angle, from left to right.
func (f form) tooth(centre Point, around float64) []Point {
	const steps = 12
	var up, down []Point
	for i := range steps + 1 {
		r := f.inner + (f.outer-f.inner)*float64(i)/steps
		half := math.Max(f.half(r), 0)
		up = append(up, centre.plus(pointing(around+half, r)))
		down = append(down, centre.plus(pointing(around-half, r)))
	}
	slices.Reverse(down)
	return append(up, down...)
}
