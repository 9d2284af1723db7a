package bench

import (
	"image"
	"os"
	"testing"
	"time"

	drawing "yokebook/app/draw"
	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure/document"
)

// sliderRows measure one step of the slider of the drawings on a two-piece line: the line moved, drawn
// and laid out at the width of a telephone, and what painting it takes, 2.6 pixels to a unit.
func sliderRows(t *testing.T) []row {
	const most = 4 * time.Millisecond
	data, err := os.ReadFile("../../testdata/builds/links-two-piece.json")
	if err != nil {
		t.Fatal(err)
	}
	build, _, err := document.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	scene := drawing.NewScene(build, checks.Run(build, nil), words.English)
	bump, droop, ok := scene.Heights()
	if !ok {
		t.Fatal("no travel")
	}
	var rows []row
	for _, v := range []drawing.View{drawing.SideView, drawing.TopView, drawing.TravelView} {
		scene.View(v, nil) // what is made once for a build
		var model, paint samples
		for i := range rounds {
			h := droop + (bump-droop)*float64(i%64)/63
			start := time.Now()
			page := scene.View(v, &h).Lay(drawing.Options{Wide: 393, Far: 360, Bare: true})
			scene.Figures(&h)
			model = append(model, time.Since(start))
			img := image.NewRGBA(image.Rect(0, 0, int(2.6*page.Wide), int(2.6*page.High)))
			start = time.Now()
			page.Over(img, drawing.Light, 2.6)
			paint = append(paint, time.Since(start))
		}
		rows = append(rows, within("slider step, "+string(v)+": model and layout, p50", model.at(0.5), most, ""),
			within("slider step, "+string(v)+": model and layout, p99", model.at(0.99), most, ""),
			times("slider step, "+string(v)+": painting, p50", paint.at(0.5), frame, "one frame", 0))
	}
	return rows
}
