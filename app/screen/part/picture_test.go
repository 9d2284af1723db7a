package part

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"yokebook/app/draw"
)

// What a label says stands beside or above what is drawn, wherever the place has room for both.
func TestALabelStandsOffWhatIsDrawn(t *testing.T) {
	test.NewTempApp(t)
	p := NewPicture(func() draw.Page { return draw.Page{Wide: 400, High: 100} }, "← FRONT")
	r := p.CreateRenderer().(*pictureRenderer)
	label := r.label.MinSize()
	for _, tt := range []struct {
		name  string
		place fyne.Size
	}{
		{"room above", fyne.NewSize(200, 50+label.Height)},
		{"room beside alone", fyne.NewSize(200+label.Width+labelGap, 50)},
		{"room on both", fyne.NewSize(300, 100)},
		{"room for neither unless smaller", fyne.NewSize(200, 50)},
	} {
		r.Layout(tt.place)
		at, size := r.image.Position(), r.image.Size()
		if at.X < label.Width && at.Y < label.Height {
			t.Errorf("%s: drawn at %v under the label of %v", tt.name, at, label)
		}
		if at.X+size.Width > tt.place.Width+0.01 || at.Y+size.Height > tt.place.Height+0.01 {
			t.Errorf("%s: drawn past the place", tt.name)
		}
	}
}
