package part

import (
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/mobile"
	"fyne.io/fyne/v2/test"
)

// held is a slider that moves where it is asked to, 346 units long between the ends of its way.
func held(t *testing.T) *Slider {
	t.Helper()
	test.NewTempApp(t)
	var s *Slider
	s = NewSlider("slider", "low", "high", func(share float64) { s.Set(share) })
	w := test.NewTempWindow(t, s)
	w.SetPadded(false)
	w.Resize(fyne.NewSize(346+handle, 95))
	return s
}

func finger(x float32) *mobile.TouchEvent {
	return &mobile.TouchEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, 40)}}
}

func (s *Slider) stands(t *testing.T, x float32) {
	t.Helper()
	if got := s.X(s.At()); math.Abs(float64(got-x)) > 0.01 {
		t.Errorf("the handle stands at %.2f, the finger at %.2f", got, x)
	}
}

// A finger comes down anywhere: the handle is under it, and stays under it while it is drawn along, as
// the phone's driver tells it (its first way counted twice, the rest right but for that).
func TestTheHandleStaysUnderTheFinger(t *testing.T) {
	s := held(t)
	left := 0
	s.Left = func() { left++ }
	s.TouchDown(finger(100))
	s.stands(t, 100)
	for _, x := range []float32{120, 150, 90} {
		e := &fyne.DragEvent{Dragged: fyne.Delta{DX: 20}}
		e.Position = fyne.NewPos(x+20, 40)
		s.Dragged(e)
		s.stands(t, x)
	}
	s.DragEnd()
	if left != 1 {
		t.Errorf("told %d times that the finger left", left)
	}
	e := &fyne.DragEvent{Dragged: fyne.Delta{DX: 5}} // a mouse, without a touch before
	e.Position = fyne.NewPos(200, 40)
	s.Dragged(e)
	s.stands(t, 200)
}

// Beyond its ends the handle stays at them, and a slow press moves it as a quick one does.
func TestTheHandleStaysOnItsWay(t *testing.T) {
	s := held(t)
	for _, row := range []struct {
		x    float32
		want float64
	}{{-50, 0}, {0, 0}, {handle / 2, 0}, {handle/2 + 173, 0.5}, {5000, 1}} {
		e := &fyne.PointEvent{Position: fyne.NewPos(row.x, 10)}
		s.Set(0.3)
		s.Tapped(e)
		quick := s.At()
		s.Set(0.3)
		s.TappedSecondary(e)
		if math.Abs(quick-row.want) > 1e-6 || s.At() != quick {
			t.Errorf("pressed at %.0f: quick %.3f, slow %.3f, want %.3f", row.x, quick, s.At(), row.want)
		}
	}
}
