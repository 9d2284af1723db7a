package draw

import (
	"testing"

	"yokebook/checks"
)

// One step of the slider: the line moved, drawn and laid out, at the width of a telephone and of a
// desk. Four milliseconds leave most of a frame to whoever paints it.
func BenchmarkSlider(b *testing.B) {
	for _, c := range []struct {
		name string
		view View
		wide float64
	}{{"side 411", SideView, 411}, {"side 1280", SideView, 1280}, {"top 411", TopView, 411}, {"travel 411", TravelView, 411}} {
		b.Run(c.name, func(b *testing.B) {
			s, _ := sceneOf(b, buildOf(b, "links-two-piece"))
			bump, droop, ok := s.Heights()
			if !ok {
				b.Fatal("no travel")
			}
			s.View(c.view, nil)
			i := 0
			for b.Loop() {
				h := droop + (bump-droop)*float64(i%64)/63
				s.View(c.view, &h).Lay(Options{Wide: c.wide})
				i++
			}
		})
	}
}

// Making the scene of a build whose findings are known already.
func BenchmarkScene(b *testing.B) {
	build := buildOf(b, "links-two-piece")
	found := checks.Run(build, nil)
	for b.Loop() {
		NewScene(build, found, english)
	}
}
