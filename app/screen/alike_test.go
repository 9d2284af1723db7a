package screen

import (
	"image"
)

// alike compares two pictures of a page that were drawn in two ways: the mean brightness of every
// small square is nearly that of the same square in the other, moved by at most one pixel.
func alike(a, b image.Image) bool {
	const side, most = 14, 26
	sa, sb := sumsOf(a), sumsOf(b)
	for y := 1; y+side+1 < min(len(sa), len(sb)); y += side {
		for x := 1; x+side+1 < min(len(sa[0]), len(sb[0])); x += side {
			if !sa.near(sb, x, y, side, most) {
				return false
			}
		}
	}
	return true
}

// sums holds, for each place, the sum of brightness above it and to its left.
type sums [][]int

func sumsOf(img image.Image) sums {
	r := img.Bounds()
	out := make(sums, r.Dy()+1)
	out[0] = make([]int, r.Dx()+1)
	for y := range r.Dy() {
		out[y+1] = make([]int, r.Dx()+1)
		row := 0
		for x := range r.Dx() {
			red, green, blue, _ := img.At(r.Min.X+x, r.Min.Y+y).RGBA()
			row += int(red>>8+green>>8+blue>>8) / 3
			out[y+1][x+1] = out[y][x+1] + row
		}
	}
	return out
}

func (s sums) mean(x, y, side int) int {
	return (s[y+side][x+side] - s[y][x+side] - s[y+side][x] + s[y][x]) / (side * side)
}

func (s sums) near(o sums, x, y, side, most int) bool {
	for _, dy := range []int{0, -1, 1} {
		for _, dx := range []int{0, -1, 1} {
			if d := s.mean(x, y, side) - o.mean(x+dx, y+dy, side); d <= most && d >= -most {
				return true
			}
		}
	}
	return false
}
