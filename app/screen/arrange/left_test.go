package arrange

import (
	"testing"

	"fyne.io/fyne/v2"
	"pgregory.net/rapid"
)

// For the left hand the keys stand mirrored, so that none overlaps and each is as large as for the
// right; digits and the two sides of Keep keep their order from left to right.
func TestTheLeftHandHasTheSameKeysMirrored(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		page := pages.Draw(t, "page")
		right, keys := newTake()
		left, mirrored := newTake()
		left.Left = true
		if rapid.Bool().Draw(t, "finder") {
			right.Lay, left.Lay = blank(), blank()
		}
		if rapid.Bool().Draw(t, "two sides") {
			right.Keep, left.Keep = append(right.Keep, blank()), append(left.Keep, blank())
			keys, mirrored = append(keys, right.Keep[1]), append(mirrored, left.Keep[1])
		}
		right.Layout(everything(right), page)
		left.Layout(everything(left), page)
		apart(t, page, append(mirrored, left.Picture, left.Question, left.Display))
		for i := range keys {
			if keys[i].Size() != mirrored[i].Size() {
				t.Fatalf("key %d is %v for the right hand, %v for the left", i, keys[i].Size(), mirrored[i].Size())
			}
		}
		for d := 1; d < 9; d++ {
			a, b := left.Digits[d], left.Digits[d+1]
			if a.Position().Y == b.Position().Y && a.Position().X > b.Position().X {
				t.Fatalf("%d stands right of %d", d, d+1)
			}
		}
		if len(left.Keep) == 2 && left.Keep[0].Position().Y == left.Keep[1].Position().Y && left.Keep[0].Position().X > left.Keep[1].Position().X {
			t.Fatal("the two sides of Keep stand the other way round")
		}
		if centre(left.Keep[0], page) < 0.5 == (centre(right.Keep[0], page) < 0.5) && len(left.Keep) == 1 {
			t.Fatalf("Keep stands on the same side for both hands: %v, %v", left.Keep[0].Position(), right.Keep[0].Position())
		}
	})
}

func everything(l *Take) []fyne.CanvasObject {
	out := append(append([]fyne.CanvasObject{}, l.Stand...), l.Digits[:]...)
	if l.Lay != nil {
		out = append(out, l.Lay)
	}
	return append(append(out, l.Picture, l.Question, l.Hint, l.Display, l.Decimal, l.Erase, l.More), l.Keep...)
}

// centre is where the middle of a thing stands, as a share of the width.
func centre(o fyne.CanvasObject, page fyne.Size) float32 {
	return (o.Position().X + o.Size().Width/2) / page.Width
}
