package tool

import (
	"bytes"
	"flag"
	"fmt"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"yokebook/app/draw"
	"yokebook/measure"
)

var album = flag.String("album", "", "write the picture of every point to this folder, to be looked at")

// shownFor is the picture of a point, with one shaft or two as the point wants.
func shownFor(p measure.Point) draw.Page {
	shafts := 1
	if !p.In(measure.NewLayout()) {
		shafts = 2
	}
	return Line(Scene{Point: p, State: measure.RideKerb, Shafts: shafts})
}

// onVehicle reports what is read on a part with a tool: not what a plate, a book or a person says.
func onVehicle(p measure.Point) bool {
	return p.Basis != measure.Stated && len(p.Codes) == 0 &&
		(p.Quantity == measure.Length || p.Quantity == measure.Angle || p.Quantity == measure.Count)
}

// asked are questions to a person, of the whole vehicle or of the order, without a place for a tool.
func asked(p measure.Point) bool {
	return strings.HasPrefix(p.Key, "fit.") || strings.HasPrefix(p.Key, "order.")
}

// Every point that is read has a picture in which something is pointed at, and it stays on its page.
func TestEveryPointHasItsPicture(t *testing.T) {
	drawn := 0
	for _, p := range measure.Points {
		page := shownFor(p)
		if len(page.Marks) < 10 {
			t.Errorf("%s: a picture of %d lines", p.Key, len(page.Marks))
		}
		if n, _ := marked(raster(page, LineWide, LineHigh)); n < 60 && !asked(p) {
			t.Errorf("%s points at nothing: %d pixels marked", p.Key, n)
		}
		for _, m := range page.Marks {
			for _, q := range m.Points {
				if q.X < 0 || q.Y < 0 || q.X > LineWide || q.Y > LineHigh {
					t.Errorf("%s: a line leaves the picture at %v", p.Key, q)
				}
			}
		}
		drawn++
		if *album != "" {
			data, err := page.PNG(draw.Light, 1)
			if err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(filepath.Join(*album, fmt.Sprintf("%03d-%s.png", drawn, p.Key)), data, 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
	if drawn != len(measure.Points) || drawn < 254 {
		t.Errorf("%d pictures of %d points", drawn, len(measure.Points))
	}
}

// Two things that are measured on one part never share a picture: it says which of them is meant.
func TestWhatIsMeasuredOnOnePartDiffers(t *testing.T) {
	pixels := map[string][]byte{}
	compared := 0
	for _, p := range measure.Points {
		if !onVehicle(p) || asked(p) {
			continue
		}
		part, _, _ := strings.Cut(p.Key, ".")
		now := raster(shownFor(p), LineWide, LineHigh).Pix
		for key, before := range pixels {
			if other, _, _ := strings.Cut(key, "."); other == part {
				compared++
				if bytes.Equal(before, now) {
					t.Errorf("%s and %s have one picture", key, p.Key)
				}
			}
		}
		pixels[p.Key] = now
	}
	if compared < 500 {
		t.Errorf("only %d pairs compared", compared)
	}
}

// What is drawn is drawn again just so.
func TestAPictureIsDrawnAlike(t *testing.T) {
	for _, p := range measure.Points[:40] {
		a, b := raster(shownFor(p), 210, 66), raster(shownFor(p), 210, 66)
		if !bytes.Equal(a.Pix, b.Pix) {
			t.Errorf("%s differs", p.Key)
		}
		if err := png.Encode(&bytes.Buffer{}, a); err != nil {
			t.Error(err)
		}
	}
}
