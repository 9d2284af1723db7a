package draw

import (
	"bytes"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"math"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/vector"
)

// PNG writes the page as a picture file, so many pixels to a page unit.
func (p Page) PNG(t Theme, pixels float64) ([]byte, error) {
	var b bytes.Buffer
	err := png.Encode(&b, p.Image(t, pixels))
	return b.Bytes(), err
}

// Image draws the page, so many pixels to a page unit.
func (p Page) Image(t Theme, pixels float64) *image.RGBA {
	if !(pixels > 0) {
		pixels = 1
	}
	wide, high := int(math.Ceil(p.Wide*pixels)), int(math.Ceil(p.High*pixels))
	img := image.NewRGBA(image.Rect(0, 0, wide, high))
	draw.Draw(img, img.Bounds(), image.NewUniform(t.Paper), image.Point{}, draw.Src)
	p.Over(img, t, pixels)
	return img
}

// Over draws the page over what an image shows already, from its upper left corner, so many pixels to a
// page unit. What lies beyond the image is left out.
func (p Page) Over(img *image.RGBA, t Theme, pixels float64) {
	c := canvas{img, t, pixels}
	for _, m := range p.Marks {
		c.mark(m)
	}
	for _, s := range p.Signs {
		for _, m := range s.marks() {
			c.mark(m)
		}
	}
	lines := p.table(p.High)
	for _, x := range p.Texts {
		c.text(x, lines.inked(x.Box.grown(3, 3)))
	}
}

// canvas is an image with the scale that it is drawn at.
type canvas struct {
	img    *image.RGBA
	theme  Theme
	pixels float64
}

func (c canvas) mark(m Mark) {
	pts := m.flat()
	if len(pts) < 2 {
		return
	}
	ink := c.theme.Ink(m.Style)
	switch {
	case m.Solid, m.Closed && filled(m.Style):
		c.fill(ink, pts)
		return
	case m.Closed && faced(m.Style):
		c.fill(c.theme.Paper, pts)
	}
	pen := penOf(m.Style)
	if m.Width > 0 {
		pen.width = m.Width
	}
	for _, run := range dashed(pts, pen.dash) {
		c.stroke(ink, pen.width, run)
	}
}

// stroke draws along points with round ends and corners.
func (c canvas) stroke(ink color.NRGBA, width float64, pts []Point) {
	var outlines [][]Point
	for i, p := range pts {
		outlines = append(outlines, circleAt(p, width/2))
		if i > 0 && pts[i-1] != p {
			outlines = append(outlines, bar(pts[i-1], p, width))
		}
	}
	c.fill(ink, outlines...)
}

// fill fills outlines; each is turned the same way round so that overlapping ones don't cancel.
func (c canvas) fill(ink color.NRGBA, outlines ...[]Point) {
	box := emptyBox()
	for _, o := range outlines {
		if turn(o) < 0 {
			for i, j := 0, len(o)-1; i < j; i, j = i+1, j-1 {
				o[i], o[j] = o[j], o[i]
			}
		}
		box.extend(o...)
	}
	c.paint(ink, box, func(r *vector.Rasterizer, at func(Point) (float32, float32)) {
		for _, o := range outlines {
			r.MoveTo(at(o[0]))
			for _, p := range o[1:] {
				r.LineTo(at(p))
			}
			r.ClosePath()
		}
	})
}

// paint lets path draw into the part of the image that box covers.
func (c canvas) paint(ink color.NRGBA, box Box, path func(*vector.Rasterizer, func(Point) (float32, float32))) {
	if box.empty() {
		return
	}
	in := image.Rect(int(math.Floor(box.Min.X*c.pixels))-1, int(math.Floor(box.Min.Y*c.pixels))-1,
		int(math.Ceil(box.Max.X*c.pixels))+1, int(math.Ceil(box.Max.Y*c.pixels))+1).Intersect(c.img.Bounds())
	if in.Empty() {
		return
	}
	r := vector.NewRasterizer(in.Dx(), in.Dy())
	path(r, func(p Point) (float32, float32) {
		return float32(p.X*c.pixels - float64(in.Min.X)), float32(p.Y*c.pixels - float64(in.Min.Y))
	})
	r.Draw(c.img, in, image.NewUniform(ink), image.Point{})
}

// turn is twice the area of an outline, negative when it runs the other way round.
func turn(o []Point) float64 {
	sum := 0.0
	for i, p := range o {
		q := o[(i+1)%len(o)]
		sum += p.X*q.Y - q.X*p.Y
	}
	return sum
}

// dashed cuts a line into its dashes; without dashes it is one.
func dashed(pts []Point, dash []float64) [][]Point {
	if len(dash) < 2 {
		return [][]Point{pts}
	}
	var runs [][]Point
	run := []Point{pts[0]}
	left, on := dash[0], true
	for i := 1; i < len(pts); i++ {
		a, b := pts[i-1], pts[i]
		for a.minus(b).length() > left {
			a = a.plus(a.toward(b).by(left))
			if on {
				runs = append(runs, append(run, a))
			}
			run, on = []Point{a}, !on
			left = dash[0]
			if !on {
				left = dash[1]
			}
		}
		left -= a.minus(b).length()
		run = append(run, b)
	}
	if on && len(run) > 1 {
		runs = append(runs, run)
	}
	return runs
}

// rim is where the paper around letters is laid, page units.
var rim = []Point{{-1.4, 0}, {1.4, 0}, {0, -1.4}, {0, 1.4}, {-1, -1}, {1, 1}, {-1, 1}, {1, -1}}

// text writes lines, over the drawing's own lines with a rim of paper, so that they stay clear of them.
// The letters are drawn once and laid down several times.
func (c canvas) text(t Text, over bool) {
	for i, line := range t.Lines {
		mask, at := c.letters(line, t.Size, Point{t.Box.Min.X, t.baseline(i)})
		lay := func(by image.Point, ink color.NRGBA) {
			draw.DrawMask(c.img, mask.Bounds().Add(at).Add(by), image.NewUniform(ink), image.Point{}, mask, image.Point{}, draw.Over)
		}
		for _, o := range rim {
			if !over {
				break
			}
			lay(image.Pt(int(math.Round(o.X*c.pixels)), int(math.Round(o.Y*c.pixels))), c.theme.Paper)
		}
		lay(image.Point{}, c.theme.TextInk(t.Style))
	}
}

// letters draws a line of text whose baseline begins at a place, and says where its picture lies.
func (c canvas) letters(line string, size float64, from Point) (*image.Alpha, image.Point) {
	long := textWidth(line, size)
	face.Lock()
	defer face.Unlock()
	at := image.Pt(int(math.Floor((from.X-0.1*size)*c.pixels)), int(math.Floor((from.Y-1.1*size)*c.pixels)))
	r := vector.NewRasterizer(int(math.Ceil((long+0.3*size)*c.pixels)), int(math.Ceil(1.5*size*c.pixels)))
	x := from.X
	for _, letter := range line {
		segments, _ := glyph(letter)
		trace(r, segments, func(p Point) (float32, float32) {
			return float32((x+p.X*size/perEm/64)*c.pixels - float64(at.X)), float32((from.Y+p.Y*size/perEm/64)*c.pixels - float64(at.Y))
		})
		x += advance(letter) * size
	}
	mask := image.NewAlpha(r.Bounds())
	r.DrawOp = draw.Src
	r.Draw(mask, mask.Bounds(), image.Opaque, image.Point{})
	return mask, at
}

// trace adds the outline of a glyph.
func trace(r *vector.Rasterizer, segments sfnt.Segments, put func(Point) (float32, float32)) {
	for _, s := range segments {
		var xy [6]float32
		for i := range 3 {
			xy[2*i], xy[2*i+1] = put(Point{float64(s.Args[i].X), float64(s.Args[i].Y)})
		}
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			r.MoveTo(xy[0], xy[1])
		case sfnt.SegmentOpLineTo:
			r.LineTo(xy[0], xy[1])
		case sfnt.SegmentOpQuadTo:
			r.QuadTo(xy[0], xy[1], xy[2], xy[3])
		case sfnt.SegmentOpCubeTo:
			r.CubeTo(xy[0], xy[1], xy[2], xy[3], xy[4], xy[5])
		}
	}
}
