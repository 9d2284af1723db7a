// Package sketch draws the pictures of the screens as SVG text: the drive line seen from the side
// with the part to be read and the tool on it, the two answers to "which end is high", how the
// vehicle stands, and the shapes of the verdicts. The front of the vehicle is always on the left.
//
// The pictures hold no words: the screens set those beside them, in the reader's language.
package sketch

import (
	"fmt"
	"math"
	"strings"
)

// Colours are those that a picture is drawn in, each as "#rrggbb".
type Colours struct {
	Ink   string // outlines
	Quiet string // what stands behind
	Fill  string // faces of parts
	Rule  string // ground and reference lines
	Mark  string // the part to be read and the tool
}

// drawing gathers SVG elements.
type drawing struct {
	w, h int
	body strings.Builder
}

func newDrawing(w, h int) *drawing { return &drawing{w: w, h: h} }

func (d *drawing) add(format string, args ...any) {
	fmt.Fprintf(&d.body, format+"\n", args...)
}

func (d *drawing) line(x1, y1, x2, y2 float64, stroke string, width float64) {
	d.add(`<line x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f" stroke="%s" stroke-width="%.1f" stroke-linecap="round"/>`,
		x1, y1, x2, y2, stroke, width)
}

func (d *drawing) circle(x, y, r float64, fill, stroke string, width float64) {
	d.add(`<circle cx="%.1f" cy="%.1f" r="%.1f" fill="%s" stroke="%s" stroke-width="%.1f"/>`, x, y, r, fill, stroke, width)
}

// shape draws a closed outline through x, y pairs.
func (d *drawing) shape(fill, stroke string, width float64, xy ...float64) {
	var points strings.Builder
	for i := 0; i+1 < len(xy); i += 2 {
		fmt.Fprintf(&points, "%.1f,%.1f ", xy[i], xy[i+1])
	}
	d.add(`<polygon points="%s" fill="%s" stroke="%s" stroke-width="%.1f" stroke-linejoin="round"/>`,
		strings.TrimSpace(points.String()), fill, stroke, width)
}

// path draws an open curve.
func (d *drawing) path(data, stroke string, width float64) {
	d.add(`<path d="%s" fill="none" stroke="%s" stroke-width="%.1f" stroke-linecap="round" stroke-linejoin="round"/>`,
		data, stroke, width)
}

// bar draws a rectangle of length × thick whose middle line runs from x1, y1 to x2, y2.
func (d *drawing) bar(x1, y1, x2, y2, thick float64, fill, stroke string, width float64) {
	dx, dy := x2-x1, y2-y1
	n := math.Sqrt(dx*dx + dy*dy)
	if n == 0 {
		return
	}
	ox, oy := -dy/n*thick/2, dx/n*thick/2
	d.shape(fill, stroke, width, x1+ox, y1+oy, x2+ox, y2+oy, x2-ox, y2-oy, x1-ox, y1-oy)
}

// arrow draws a line with a head at its end.
func (d *drawing) arrow(x1, y1, x2, y2 float64, stroke string, width float64) {
	d.line(x1, y1, x2, y2, stroke, width)
	a := math.Atan2(y2-y1, x2-x1)
	size := 3.2 * width
	for _, turn := range []float64{0.5, -0.5} {
		d.line(x2, y2, x2-size*math.Cos(a+turn), y2-size*math.Sin(a+turn), stroke, width)
	}
}

func (d *drawing) bytes() []byte {
	return []byte(fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d">`+"\n%s</svg>\n",
		d.w, d.h, d.w, d.h, d.body.String()))
}
