package tool

import (
	"image"
	"image/color"
	"strings"
	"testing"

	"yokebook/app/draw"
	"yokebook/measure"
)

// plain draws what a picture points at in red and all other lines in black.
var plain = draw.Light.With(draw.Tool, color.NRGBA{R: 255, A: 255}).With(draw.Body, color.NRGBA{A: 255})

// raster draws a picture as large as it fits, on nothing.
func raster(p draw.Page, wide, high int) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, max(wide, 1), max(high, 1)))
	if p.Wide > 0 {
		p.Over(img, plain, min(float64(wide)/p.Wide, float64(high)/p.High))
	}
	return img
}

// marked is where a picture is drawn in the colour of what it points at.
func marked(img *image.RGBA) (n int, middle image.Point) {
	for y := range img.Rect.Dy() {
		for x := range img.Rect.Dx() {
			if c := img.RGBAAt(x, y); c.R > 200 && c.G < 60 && c.A > 200 {
				n++
				middle = middle.Add(image.Pt(x, y))
			}
		}
	}
	if n > 0 {
		middle = middle.Div(n)
	}
	return n, middle
}

// Every point that belongs to a part of the line has its part marked in the picture.
func TestEveryPartIsMarked(t *testing.T) {
	for _, p := range measure.Points {
		part, _, _ := strings.Cut(p.Key, ".")
		if part == "fit" {
			continue // a question about the whole vehicle
		}
		shafts := 1
		if !p.In(measure.NewLayout()) {
			shafts = 2
		}
		states := []measure.State{measure.RideKerb}
		if p.Group == measure.GroupSlopes {
			states = measure.States
		}
		for _, s := range states {
			n, _ := marked(raster(Line(Scene{Point: p, State: s, Shafts: shafts}), LineWide, LineHigh))
			if n < 60 {
				t.Errorf("%s %s: %d pixels marked; a new part is named in partOf, spot.go", p.Key, s, n)
			}
		}
	}
}

// The front of the vehicle is on the left: gearbox, shaft, pinion follow each other to the right.
func TestTheFrontIsOnTheLeft(t *testing.T) {
	last := 0
	for _, key := range []string{"engine.rpm_max", "gearbox.slope", "shaft.slope", "pinion.slope"} {
		p, ok := measure.PointOf(key)
		if !ok {
			t.Fatal(key)
		}
		_, at := marked(raster(Line(Scene{Point: p, State: measure.RideKerb, Shafts: 1}), LineWide, LineHigh))
		if at.X <= last {
			t.Errorf("%s is marked at %d, not right of %d", key, at.X, last)
		}
		last = at.X
	}
}

// The two answers to a question of side differ, and the positive one shows what the sense says.
func TestSides(t *testing.T) {
	for _, row := range []struct {
		sense measure.Sense
		ok    func(yes, no image.Point) bool
	}{
		{measure.FrontHigh, func(yes, no image.Point) bool { return yes.X < no.X }},   // the arrow stands at the high end
		{measure.FrontLeft, func(yes, no image.Point) bool { return yes.Y < no.Y }},   // seen from above, left is up
		{measure.Above, func(yes, no image.Point) bool { return yes.Y < no.Y }},       // above the line
		{measure.LeftOf, func(yes, no image.Point) bool { return yes.X < no.X }},      // looking forward
		{measure.ForwardOf, func(yes, no image.Point) bool { return yes.X < no.X }},   // the front is on the left
		{measure.GearboxSide, func(yes, no image.Point) bool { return yes.X > no.X }}, // the gearbox is on the right
		{measure.EngineSide, func(yes, no image.Point) bool { return yes.X < no.X }},
		{measure.Outward, func(yes, no image.Point) bool { return yes.X > no.X }},
		{measure.Clockwise, func(yes, no image.Point) bool { return yes.X > no.X }}, // the head is at the right end
	} {
		n, yes := marked(raster(Side(row.sense, true), 400, 200))
		m, no := marked(raster(Side(row.sense, false), 400, 200))
		if n == 0 || m == 0 || !row.ok(yes, no) {
			t.Errorf("%s: yes at %v, no at %v", row.sense, yes, no)
		}
	}
}

// High is high: in the picture of "front end high" the left end of the part stands above its right.
func TestFrontHighIsDrawnHigh(t *testing.T) {
	for _, positive := range []bool{true, false} {
		img := raster(Side(measure.FrontHigh, positive), 400, 200)
		top := func(x int) int {
			for y := range 200 {
				if c := img.RGBAAt(x, y); c.A > 200 && c.R < 60 {
					return y
				}
			}
			return 200
		}
		if left, right := top(80), top(320); (left < right) != positive {
			t.Errorf("front high %v: left end at %d, right end at %d", positive, left, right)
		}
	}
}

func TestStancesDiffer(t *testing.T) {
	for i, a := range measure.States {
		for _, b := range measure.States[:i] {
			p, q := raster(Stand(a), 200, 100), raster(Stand(b), 200, 100)
			differ := 0
			for j := range p.Pix {
				if p.Pix[j] != q.Pix[j] {
					differ++
				}
			}
			if differ < 1000 {
				t.Errorf("%s and %s look alike: %d bytes differ", a, b, differ)
			}
		}
	}
}

func TestEveryChoiceHasItsPicture(t *testing.T) {
	for _, c := range measure.LayoutChoices {
		if c.Optional {
			continue
		}
		for _, choice := range c.Choices {
			if n, _ := marked(raster(Choice(c.Member, choice), 400, 200)); n == 0 {
				t.Errorf("%s %s has no picture", c.Member, choice)
			}
		}
	}
}

// Any size of pixels is drawn, none at all as one.
func TestAnySize(t *testing.T) {
	p := Stand(measure.RideKerb)
	for _, size := range [][2]int{{0, 0}, {1, 1}, {3, 500}, {500, 3}} {
		if got := raster(p, size[0], size[1]).Bounds().Size(); got != image.Pt(max(1, size[0]), max(1, size[1])) {
			t.Errorf("%v pixels asked for, %v drawn", size, got)
		}
	}
	if got := raster(draw.Page{}, 10, 10).Bounds().Size(); got != image.Pt(10, 10) {
		t.Errorf("a page without anything on it has %v pixels", got)
	}
}

// Each way in which a finder lies has its own picture: its marked end is on the left (forward), on
// the right, high or low, and on a front face the finder stands left of the flange.
func TestTheMarkedEndIsWhereTheWordsSay(t *testing.T) {
	mark := func(how string) image.Point {
		_, middle := marked(raster(Laid(how), 400, 200))
		return middle
	}
	for _, row := range []struct {
		one, other string
		ok         func(a, b image.Point) bool
	}{
		{"along.fore", "along.aft", func(a, b image.Point) bool { return a.X < b.X-20 }},
		{"rear.up", "rear.down", func(a, b image.Point) bool { return a.Y < b.Y-20 }},
		{"front.up", "front.down", func(a, b image.Point) bool { return a.Y < b.Y-20 }},
		{"front.up", "rear.up", func(a, b image.Point) bool { return a.X < b.X-20 }},
	} {
		if a, b := mark(row.one), mark(row.other); !row.ok(a, b) {
			t.Errorf("%s is marked at %v, %s at %v", row.one, a, row.other, b)
		}
	}
}
