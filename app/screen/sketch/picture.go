// Package sketch draws the pictures of the screens: the drive line seen from the side with the part
// to be read and the tool on it, the two answers to "which end is high", how the vehicle stands, and
// the shapes of the verdicts. The front of the vehicle is always on the left.
//
// A picture is a list of filled outlines in its own units and is drawn for the pixels at hand, so
// that it is sharp on every screen. It holds no words: the screens set those beside it, in the
// reader's language.
package sketch

import (
	"image"
	"image/color"
	"math"

	"golang.org/x/image/vector"
)

// Colours are those that a picture is drawn in.
type Colours struct {
	Ink   color.NRGBA // outlines
	Quiet color.NRGBA // what stands behind
	Fill  color.NRGBA // faces of parts
	Rule  color.NRGBA // ground and reference lines
	Mark  color.NRGBA // the part to be read and the tool
}

// Picture is a drawing that can be drawn at any size. The zero Picture is empty.
type Picture struct {
	Wide, High float64 // its size in its own units
	fills      []fill
}

// fill is one or more closed outlines that turn the same way, filled with one colour.
type fill struct {
	colour   color.NRGBA
	outlines [][]point
}

type point struct{ x, y float64 }

// Raster draws the picture as large as it fits into wide × high pixels, in the middle.
func (p Picture) Raster(wide, high int) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, max(wide, 1), max(high, 1)))
	if p.Wide <= 0 || p.High <= 0 {
		return img
	}
	scale := math.Min(float64(wide)/p.Wide, float64(high)/p.High)
	left, top := (float64(wide)-scale*p.Wide)/2, (float64(high)-scale*p.High)/2
	for _, f := range p.fills {
		f.draw(img, scale, left, top)
	}
	return img
}

// draw fills the outlines. Only the pixels around them are touched.
func (f fill) draw(img *image.RGBA, scale, left, top float64) {
	box := f.bounds(scale, left, top).Intersect(img.Bounds())
	if box.Empty() {
		return
	}
	r := vector.NewRasterizer(box.Dx(), box.Dy())
	at := func(p point) (float32, float32) {
		return float32(left + scale*p.x - float64(box.Min.X)), float32(top + scale*p.y - float64(box.Min.Y))
	}
	for _, o := range f.outlines {
		r.MoveTo(at(o[0]))
		for _, p := range o[1:] {
			r.LineTo(at(p))
		}
		r.ClosePath()
	}
	r.Draw(img, box, image.NewUniform(f.colour), image.Point{})
}

func (f fill) bounds(scale, left, top float64) image.Rectangle {
	low, high := point{math.Inf(1), math.Inf(1)}, point{math.Inf(-1), math.Inf(-1)}
	for _, o := range f.outlines {
		for _, p := range o {
			low = point{math.Min(low.x, p.x), math.Min(low.y, p.y)}
			high = point{math.Max(high.x, p.x), math.Max(high.y, p.y)}
		}
	}
	return image.Rect(int(math.Floor(left+scale*low.x)), int(math.Floor(top+scale*low.y)),
		int(math.Ceil(left+scale*high.x))+1, int(math.Ceil(top+scale*high.y))+1)
}
