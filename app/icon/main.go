// Command icon draws the icon of the program: a shaft between two flanges that lie at different
// heights, with a joint at either end. It writes the layers that a phone puts together, and the
// whole picture for everything else:
//
//	go run ./app/icon app/icon
package main

import (
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"math"
	"os"
	"path/filepath"

	"golang.org/x/image/vector"
)

// side is the edge of a layer in pixels, and of the grid of 108 that Android lays icons out on (the
// middle 66 always show; developer.android.com/develop/ui/views/launch/icon_design_adaptive).
const (
	side = 432
	grid = 108
)

var (
	ground = color.NRGBA{0x1d, 0x2b, 0x36, 0xff}
	metal  = color.NRGBA{0xe9, 0xee, 0xf1, 0xff}
	joint  = color.NRGBA{0xf2, 0xa9, 0x3b, 0xff}
)

func main() {
	if len(os.Args) != 2 {
		fmt.Fprintln(os.Stderr, "icon: say which folder the pictures go to")
		os.Exit(2)
	}
	if err := write(os.Args[1]); err != nil {
		fmt.Fprintln(os.Stderr, "icon:", err)
		os.Exit(1)
	}
}

func write(dir string) error {
	white := color.NRGBA{0xff, 0xff, 0xff, 0xff}
	for name, layer := range map[string]image.Image{
		"Icon-background.png": full(ground),
		"Icon-foreground.png": line(full(color.NRGBA{}), metal, joint),
		"Icon-monochrome.png": line(full(color.NRGBA{}), white, white),
		"Icon.png":            line(full(ground), metal, joint),
	} {
		f, err := os.Create(filepath.Join(dir, name))
		if err != nil {
			return err
		}
		if err := png.Encode(f, layer); err != nil {
			return err
		}
		if err := f.Close(); err != nil {
			return err
		}
	}
	return nil
}

// full is a layer of one colour.
func full(c color.Color) *image.NRGBA {
	img := image.NewNRGBA(image.Rect(0, 0, side, side))
	draw.Draw(img, img.Bounds(), image.NewUniform(c), image.Point{}, draw.Src)
	return img
}

// point is a place on the grid, right and down.
type point struct{ x, y float64 }

// line draws the shaft line: flange, joint, shaft, joint, flange.
func line(img *image.NRGBA, of, joints color.Color) *image.NRGBA {
	front, rear := point{37, 42}, point{71, 66}
	bar(img, of, point{25, 42}, front, 7)
	bar(img, of, front, rear, 9)
	bar(img, of, rear, point{83, 66}, 7)
	bar(img, of, point{25, 34}, point{25, 50}, 5)
	bar(img, of, point{83, 58}, point{83, 74}, 5)
	for _, p := range []point{front, rear} {
		disc(img, joints, p, 8.5)
	}
	return img
}

// bar fills a straight bar of a width between two places.
func bar(img *image.NRGBA, c color.Color, a, b point, wide float64) {
	long := math.Sqrt((b.x-a.x)*(b.x-a.x) + (b.y-a.y)*(b.y-a.y))
	across := point{-(b.y - a.y) / long * wide / 2, (b.x - a.x) / long * wide / 2}
	fill(img, c, []point{
		{a.x + across.x, a.y + across.y}, {b.x + across.x, b.y + across.y},
		{b.x - across.x, b.y - across.y}, {a.x - across.x, a.y - across.y},
	})
}

// disc fills a circle, as a polygon of many corners.
func disc(img *image.NRGBA, c color.Color, at point, radius float64) {
	const corners = 120
	var outline []point
	for i := range corners {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / corners)
		outline = append(outline, point{at.x + radius*cos, at.y + radius*sin})
	}
	fill(img, c, outline)
}

func fill(img *image.NRGBA, c color.Color, outline []point) {
	r := vector.NewRasterizer(side, side)
	for i, p := range outline {
		x, y := float32(p.x*side/grid), float32(p.y*side/grid)
		if i == 0 {
			r.MoveTo(x, y)
		} else {
			r.LineTo(x, y)
		}
	}
	r.ClosePath()
	r.Draw(img, img.Bounds(), image.NewUniform(c), image.Point{})
}
