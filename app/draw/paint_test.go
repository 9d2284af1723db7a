package draw

import (
	"image"
	"testing"
)

// Painting a page on a telephone's glass, 2.6 pixels to a unit. It stands beside the 4 ms of a step.
func BenchmarkPaint(b *testing.B) {
	s, _ := sceneOf(b, buildOf(b, "links-two-piece"))
	bump, _, _ := s.Heights()
	for _, v := range []View{SideView, TravelView} {
		page := s.View(v, &bump).Lay(Options{Wide: 393})
		b.Run(string(v), func(b *testing.B) {
			img := image.NewRGBA(image.Rect(0, 0, int(2.6*page.Wide), int(2.6*page.High)))
			for b.Loop() {
				page.Over(img, Light, 2.6)
			}
		})
	}
}
