package arrange

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
)

// The key that a list is for is as wide as the page lets it while no other key stands beside it, and
// gives way as soon as one does; any other key keeps its place and size.
func TestTheMainKeyOfAListTakesTheRoomOfHiddenOnes(t *testing.T) {
	tests := []struct {
		name   string
		page   fyne.Size
		grows  bool
		hidden bool
		want   float32
	}{
		{"phone, alone", fyne.NewSize(411, 914), true, true, 393},
		{"phone, beside others", fyne.NewSize(411, 914), true, false, (393 - 2*19) / 3.0},
		{"phone, no main key", fyne.NewSize(411, 914), false, true, (393 - 2*19) / 3.0},
		{"desktop, alone", fyne.NewSize(1280, 800), true, true, 700},
		{"on its side, keys stand on the right", fyne.NewSize(914, 411), true, true, 150},
	}
	for _, tt := range tests {
		var keys []fyne.CanvasObject
		for range 3 {
			keys = append(keys, canvas.NewRectangle(nil))
		}
		l := &List{Title: blank(), Tall: true, Rows: blank(), Keys: keys, Grows: tt.grows}
		if tt.hidden {
			keys[1].Hide()
			keys[2].Hide()
		}
		l.Layout(nil, tt.page)
		if got := keys[0].Size().Width; got != tt.want {
			t.Errorf("%s: the first key is %g wide, want %g", tt.name, got, tt.want)
		}
		keys[1].Show()
		l.PlaceKeys(tt.page)
		if first, second := keys[0], keys[1]; tt.page.Height > tt.page.Width && first.Position().X+first.Size().Width > second.Position().X {
			t.Errorf("%s: a key shown later stands under the first", tt.name)
		}
	}
}
