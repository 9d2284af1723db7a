package part

import (
	"flag"
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"yokebook/app/screen/look"
	"yokebook/checks"
)

var rewrite = flag.Bool("rewrite", false, "rewrite the pictures of what is drawn that differ")

// What is drawn and not written looks as it was looked at: bars of every sense, the marks of the
// verdicts, a strip with one value apart, and the kinds of keys, in light and dark. Two pictures may
// differ by 8 of 255 anywhere and by more on one pixel in two hundred.
//
//	make golden WHAT=parts
func TestDrawnPartsLookAsTheyDid(t *testing.T) {
	for _, dark := range []bool{false, true} {
		name := map[bool]string{false: "light", true: "dark"}[dark]
		t.Run(name, func(t *testing.T) {
			test.NewTempApp(t)
			test.ApplyTheme(t, look.Held(dark))
			w := test.NewTempWindow(t, drawnParts())
			w.SetPadded(false)
			w.Resize(fyne.NewSize(420, 470))
			got := w.Canvas().Capture()
			path := filepath.Join("testdata", "drawn-"+name+".png")
			why := "is not there"
			if _, err := os.Stat(path); err == nil {
				why = differs(readPNG(t, path), got)
			}
			switch {
			case why == "": // what a person looked at stays
			case *rewrite:
				writePNG(t, path, got)
			default:
				t.Errorf("%s: %s; if it should, `make golden WHAT=parts`, and look at it", path, why)
			}
		})
	}
}

// drawnParts is one sheet with all of them.
func drawnParts() fyne.CanvasObject {
	sheet := container.NewWithoutLayout()
	at := func(o fyne.CanvasObject, x, y, w, h float32) {
		put(o, x, y, w, h)
		sheet.Add(o)
	}
	nan := math.NaN()
	for i, s := range []Scale{
		{Value: 3.5, Low: 3.1, High: 4, Limit: 3, Upper: nan, Sense: "max", Ink: VerdictInk(checks.Out)},
		{Value: 2.8, Low: 2.2, High: 3.4, Limit: 3, Upper: nan, Sense: "max", Ink: VerdictInk(checks.Unsure)},
		{Value: 40, Low: 38, High: 42, Limit: 20, Upper: nan, Sense: "min", Ink: VerdictInk(checks.Clear)},
		{Value: 5, Low: 4, High: 6, Limit: 2, Upper: 7, Sense: "between", Ink: VerdictInk(checks.Clear)},
		{Value: -2, Low: -2.5, High: -1.5, Limit: 0, Upper: nan, Sense: "equal", Ink: VerdictInk(checks.Out)},
	} {
		at(NewBar(s), 10, 10+float32(i)*26, 400, 20)
	}
	for i, v := range []checks.Verdict{checks.Clear, checks.Out, checks.Unsure, checks.Waiting, checks.Unsaid} {
		at(NewMark(v), 10+float32(i)*60, 150, 40, 40)
	}
	at(NewStrip("3", []Chip{{Words: "2.4"}, {Words: "2.5"}, {Words: "9.0", Apart: true}}), 10, 205, 400, 44)
	for i, kind := range []Kind{Ordinary, Main, Standing, Row, Risky, Siding} {
		at(NewWordKey("k", kind, fmt.Sprint(int(kind)), nil), 10+float32(i%3)*135, 265+float32(i/3)*100, 120, 85)
	}
	return sheet
}

// differs says how far two pictures are apart; "" where a person would not see it.
func differs(want, got image.Image) string {
	if want.Bounds() != got.Bounds() {
		return fmt.Sprintf("is %v, was %v", got.Bounds(), want.Bounds())
	}
	off, b := 0, got.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			r1, g1, b1, _ := want.At(x, y).RGBA()
			r2, g2, b2, _ := got.At(x, y).RGBA()
			if far(r1, r2) || far(g1, g2) || far(b1, b2) {
				off++
			}
		}
	}
	if off > b.Dx()*b.Dy()/200 {
		return fmt.Sprintf("%d pixels of %d differ", off, b.Dx()*b.Dy())
	}
	return ""
}

func far(a, b uint32) bool { return max(a>>8, b>>8)-min(a>>8, b>>8) > 8 }

func writePNG(t *testing.T, path string, img image.Image) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	f, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if err := png.Encode(f, img); err != nil {
		t.Fatal(err)
	}
}

func readPNG(t *testing.T, path string) image.Image {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return img
}
