package bench

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/plotutil"
	"gonum.org/v1/plot/vg"

	"yokebook/checks"
	"yokebook/measure/document"
	"yokebook/measure/merge"
)

// curve is how a time grows with a number.
type curve struct {
	name string
	at   plotter.XYs // number, ms
}

func (c *curve) add(n int, d time.Duration) {
	c.at = append(c.at, plotter.XY{X: float64(n), Y: max(float64(d), 1000) / float64(time.Millisecond)})
}

// slope fits a straight line through the logarithms of the upper half of a curve: 1 is linear. In the
// lower half what each call costs in any case hides how it grows.
func (c *curve) slope() float64 {
	var n, sx, sy, sxx, sxy float64
	for _, p := range c.at[len(c.at)/2:] {
		x, y := math.Log(p.X), math.Log(p.Y)
		n, sx, sy, sxx, sxy = n+1, sx+x, sy+y, sxx+x*x, sxy+x*y
	}
	return (n*sxy - sx*sy) / (n*sxx - sx*sx)
}

// grows is a row for a curve: no steeper than a straight line, but for what a fit through a few
// medians of a busy machine may be off by.
func (c *curve) grows(with string) row {
	first, last := c.at[0], c.at[len(c.at)-1]
	return row{fmt.Sprintf("growth with %s: %s", with, c.name), fmt.Sprintf("n^%.2f", c.slope()),
		fmt.Sprintf("linear; %.2g ms at %g, %.3g ms at %g", first.Y, first.X, last.Y, last.X), c.slope(), 1.1}
}

// passRows measure what grows with the number of builds, and a pass of sync in which nothing changed at
// 10,000 of them, over the real shelf and a real folder.
func passRows(t *testing.T) []row {
	pass, listing, page := curve{name: "sync pass, nothing changed"}, curve{name: "bare listing of the folder"}, curve{name: "list of builds"}
	var atMost row
	for _, n := range []int{1, 10, 100, 1000, 10_000} {
		q := quietly(t, n, 15)
		pass.add(n, q.pass)
		listing.add(n, q.listing)
		page.add(n, q.page)
		atMost = times(fmt.Sprintf("sync pass, nothing changed, %d builds", n), q.pass, q.listing, "listing of the folder", 3)
	}
	draw(t, "growth-builds.svg", "builds", pass, listing, page)
	return []row{atMost, pass.grows("builds"), page.grows("builds")}
}

// readingRows measure what grows with the readings of one build.
func readingRows(t *testing.T) []row {
	read, united := curve{name: "read and verify a file"}, curve{name: "merge two files"}
	nothing, after := curve{name: "recheck from nothing"}, curve{name: "findings after one reading"}
	for _, n := range []int{10, 20, 50, 100, 200, 500, 1000, 2000} {
		b := cut(t, n)
		data := written(t, b)
		before := checks.Run(without(b, b.Readings[0]), nil)
		read.add(n, least(func() {
			if _, _, err := document.Read(data); err != nil {
				t.Fatal(err)
			}
		}))
		united.add(n, least(func() {
			if _, _, err := merge.Builds(b, b); err != nil {
				t.Fatal(err)
			}
		}))
		nothing.add(n, least(func() { checks.Run(b, nil) }))
		after.add(n, least(func() { checks.Run(b, before) }))
	}
	draw(t, "growth-readings.svg", "readings in a build", read, united, nothing, after)
	return []row{read.grows("readings"), united.grows("readings"), nothing.grows("readings"), after.grows("readings")}
}

// least runs something nine times and returns the shortest time, which other work on the machine
// disturbs least.
func least(run func()) time.Duration {
	var waits samples
	for range 9 {
		start := time.Now()
		run()
		waits = append(waits, time.Since(start))
	}
	return slices.Min(waits)
}

// draw writes curves as a plot with logarithmic axes: a straight line of one decade per decade is linear.
func draw(t *testing.T, file, with string, curves ...curve) {
	t.Helper()
	p := plot.New()
	p.Title.Text = "Time as it grows with " + with
	p.X.Label.Text, p.Y.Label.Text = with, "ms"
	p.X.Scale, p.Y.Scale = plot.LogScale{}, plot.LogScale{}
	p.X.Tick.Marker, p.Y.Tick.Marker = plot.LogTicks{Prec: -1}, plot.LogTicks{Prec: -1}
	p.Legend.Top, p.Legend.Left = true, true
	for i, c := range curves {
		line, points, err := plotter.NewLinePoints(c.at)
		if err != nil {
			t.Fatal(err)
		}
		line.Color, points.Color, points.Shape = plotutil.Color(i), plotutil.Color(i), plotutil.Shape(i)
		p.Add(line, points)
		p.Legend.Add(fmt.Sprintf("%s, n^%.2f", c.name, c.slope()), line, points)
	}
	dir := filepath.Join("..", "..", "build")
	if err := os.MkdirAll(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	if err := p.Save(20*vg.Centimeter, 14*vg.Centimeter, filepath.Join(dir, file)); err != nil {
		t.Fatal(err)
	}
}

func TestSlopeOfAPowerIsItsExponent(t *testing.T) {
	for _, exponent := range []float64{0.5, 1, 2} {
		c := curve{}
		for _, n := range []int{10, 100, 1000, 10_000} {
			c.add(n, time.Duration(math.Pow(float64(n), exponent)*float64(time.Millisecond)))
		}
		if got := c.slope(); math.Abs(got-exponent) > 0.01 {
			t.Errorf("n^%g: slope %g", exponent, got)
		}
	}
	steep := curve{name: "x", at: plotter.XYs{{X: 1, Y: 1}, {X: 10, Y: 100}, {X: 100, Y: 10_000}, {X: 1000, Y: 1_000_000}}}
	if cells := steep.grows("builds").cells(); cells[5] != "NO" {
		t.Errorf("a square law is said to hold: %v", cells)
	}
}
