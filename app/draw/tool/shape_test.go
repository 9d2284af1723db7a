package tool

import (
	"image"
	"image/color"
	"testing"

	"yokebook/app/draw"
)

// Without any colour the shapes of two verdicts differ in a fifth of what the fuller of them covers,
// at the size of a row and of an opened finding.
func TestShapesOfVerdictsDifferWithoutColour(t *testing.T) {
	verdicts := []string{"clear", "out", "unsure", "waiting", ""}
	for _, size := range []int{34, 40} {
		for i, a := range verdicts {
			for _, b := range verdicts[:i] {
				if d := shapesDiffer(Shape(a), Shape(b), false, size); d < 0.2 {
					t.Errorf("at %d units %q and %q differ in %.0f %%, want 20 %%", size, a, b, 100*d)
				}
			}
		}
		if d := shapesDiffer(Shape("out"), Shape("out"), true, size); d < 0.2 {
			t.Errorf("a shape and its negative differ in %.0f %%", 100*d)
		}
		if d := shapesDiffer(Shape("out"), Shape("out"), false, size); d != 0 {
			t.Errorf("a shape differs from itself in %.0f %%", 100*d)
		}
	}
}

// shapesDiffer is the share of ink that only one of two drawings has, of what the fuller one has.
func shapesDiffer(a, b draw.Page, negative bool, size int) float64 {
	da, db := inkOf(a, false, size), inkOf(b, negative, size)
	only, full := 0.0, 0.0
	var sumA, sumB float64
	for i := range da {
		d := da[i] - db[i]
		only += max(d, -d)
		sumA += da[i]
		sumB += db[i]
	}
	full = max(sumA, sumB)
	return only / full
}

// inkOf is how black each pixel is, on white paper.
func inkOf(p draw.Page, negative bool, size int) []float64 {
	black, white := color.NRGBA{A: 255}, color.NRGBA{R: 255, G: 255, B: 255, A: 255}
	if negative {
		black, white = white, black
	}
	theme := draw.Light.With(draw.Tool, black)
	theme.Paper = white
	img := image.NewRGBA(image.Rect(0, 0, size, size))
	p.Over(img, theme, float64(size)/p.Wide)
	out := make([]float64, 0, size*size)
	for y := range size {
		for x := range size {
			c := img.RGBAAt(x, y)
			out = append(out, float64(c.A)/255-(float64(c.R)+float64(c.G)+float64(c.B))/3/255)
		}
	}
	return out
}
