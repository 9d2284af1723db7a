package part

import (
	"image/color"
	"math"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/mobile"
	"fyne.io/fyne/v2/test"
	"pgregory.net/rapid"

	"yokebook/app/screen/arrange"
	"yokebook/app/screen/look"
)

// A press of 300 ms or more reaches a widget as a secondary tap on a phone (the mobile driver's
// tapSecondaryDelay); a key has to count it exactly once, like a quick one.
func TestAQuickAndASlowPressCountOnce(t *testing.T) {
	test.NewTempApp(t)
	n := 0
	k := NewWordKey("key", Ordinary, "7", func() { n++ })
	w := test.NewTempWindow(t, k)
	w.Resize(fyne.NewSize(120, 120))
	test.TapCanvas(w.Canvas(), fyne.NewPos(60, 60))
	if n != 1 {
		t.Fatalf("a quick press counted %d times", n)
	}
	test.TapSecondary(k)
	if n != 2 {
		t.Fatalf("a slow press counted %d times", n-1)
	}
}

// A focused widget brings up the soft keyboard; a double-tappable one holds back each single tap.
func TestAKeyTakesNoFocusAndNoDoubleTap(t *testing.T) {
	var k any = &Key{}
	if _, bad := k.(fyne.Focusable); bad {
		t.Error("a key takes the focus")
	}
	if _, bad := k.(fyne.DoubleTappable); bad {
		t.Error("a key waits for a second tap")
	}
	if _, bad := k.(fyne.Draggable); bad {
		t.Error("a key can be dragged: a wobble would eat the tap")
	}
}

func TestAHeldKeyShowsIt(t *testing.T) {
	test.NewTempApp(t)
	test.ApplyTheme(t, look.Held(false))
	k := NewWordKey("key", Ordinary, "7", nil)
	w := test.NewTempWindow(t, k)
	w.SetPadded(false)
	w.Resize(fyne.NewSize(120, 120))
	rim := func() color.Color { return w.Canvas().Capture().At(60, 1) }
	free := rim()
	k.TouchDown(&mobile.TouchEvent{})
	held := rim()
	k.TouchCancel(&mobile.TouchEvent{})
	if held == free {
		t.Error("a held key looks like a free one")
	}
	if rim() != free {
		t.Error("a key that was let go still looks held")
	}
}

// No word is lost and no line is wider than its place, whatever the text and the place.
func TestTextBreaksBetweenWords(t *testing.T) {
	test.NewTempApp(t)
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SliceOfN(rapid.StringMatching(`[A-Za-z0-9°,.]{1,12}`), 1, 20).Draw(t, "words")
		place := fyne.NewSize(rapid.Float32Range(40, 500).Draw(t, "wide"), rapid.Float32Range(20, 300).Draw(t, "high"))
		lines, size, fits := breakToFit(strings.Join(words, " "), place, 12, 30, fyne.TextStyle{})
		if !fits {
			return
		}
		if got := strings.ReplaceAll(strings.Join(lines, " "), Tied, " "); got != strings.Join(words, " ") {
			t.Errorf("%q became %q", words, got)
		}
		if high := lineHeight(size, fyne.TextStyle{}) * float32(len(lines)); high > place.Height {
			t.Errorf("%d lines of %v are higher than %v", len(lines), size, place.Height)
		}
		for _, line := range lines {
			if w := textWidth(line, size, fyne.TextStyle{}); w > place.Width+0.5 {
				t.Errorf("%q is %v wide in %v", line, w, place.Width)
			}
		}
	})
}

// Two lines break where a phrase ends, else they are about as long: no word stands alone in the last one,
// and no line begins with a dot.
func TestLinesAreEven(t *testing.T) {
	test.NewTempApp(t)
	for words, second := range map[string]string{
		"at ride height, own weight":                             "own weight",
		"at ride height, own weight · 49 % of the doubt":         "49 % of the doubt",
		"out · 4000 rad/s² (2000 … 9000 rad/s²) · at most 400":   "at most 400",
		"What is the highest engine speed that will ever be":     "speed that will ever be",
		"Works from −45 mm to −30 mm":                            "−45\u00a0mm to −30\u00a0mm",
		"Residual of the joints together, at ride height, laden": "at ride height, laden",
	} {
		wide := textWidth(words, 15, fyne.TextStyle{})
		lines, _, fits := breakToFit(words, fyne.NewSize(wide-4, 60), 15, 15, fyne.TextStyle{})
		if !fits || len(lines) != 2 || lines[1] != second {
			t.Errorf("%q was broken into %q", words, lines)
		}
	}
}

func TestTextThatDoesNotFitSaysSo(t *testing.T) {
	test.NewTempApp(t)
	text := NewText("far too many words for so small a place as this one is", 14, 20, Plain)
	w := test.NewTempWindow(t, text)
	w.Resize(fyne.NewSize(60, 30))
	text.Resize(fyne.NewSize(50, 20))
	if text.Fits() {
		t.Error("says that it fits")
	}
	text.Resize(fyne.NewSize(500, 100))
	if !text.Fits() {
		t.Error("says that it does not fit")
	}
}

// Struck text has a line through each of its lines.
func TestStruckTextIsStruckThrough(t *testing.T) {
	test.NewTempApp(t)
	for _, struck := range []bool{false, true} {
		text := NewText("two words", 12, 20, Plain)
		text.Struck = struck
		w := test.NewTempWindow(t, text)
		w.Resize(fyne.NewSize(60, 100))
		text.Resize(fyne.NewSize(55, 80)) // two lines
		texts, lines := 0, 0
		for _, o := range test.WidgetRenderer(text).Objects() {
			switch o.(type) {
			case *canvas.Text:
				texts++
			case *canvas.Line:
				lines++
			}
		}
		if texts != 2 || struck && lines != 2 || !struck && lines != 0 {
			t.Errorf("struck %v: %d lines of text, %d through them", struck, texts, lines)
		}
	}
}

func TestRowsTurnLikePages(t *testing.T) {
	test.NewTempApp(t)
	made := map[int]int{}
	sizes := func() arrange.Sizes { return arrange.For(fyne.NewSize(411, 914)) }
	rows := NewRows(20, sizes, func(i int) fyne.CanvasObject {
		made[i]++
		return NewWordKey("row", Row, "x", nil)
	})
	w := test.NewTempWindow(t, rows)
	w.SetPadded(false)
	w.Resize(fyne.NewSize(393, 700))
	if rows.First() != 0 || rows.Shown() != 6 {
		t.Fatalf("shows %d from %d", rows.Shown(), rows.First())
	}
	rows.Turn(1)
	rows.Turn(1)
	rows.Turn(1)
	if rows.First() != 18 || rows.Shown() != 2 {
		t.Errorf("shows %d from %d", rows.Shown(), rows.First())
	}
	rows.Turn(1)
	if rows.First() != 18 {
		t.Errorf("turned past the end to %d", rows.First())
	}
	for range 5 {
		rows.Turn(-1)
	}
	if rows.First() != 0 {
		t.Errorf("turned past the start to %d", rows.First())
	}
	if len(made) != 20 {
		t.Errorf("made %d rows", len(made))
	}
}

// The bar shows the whole interval and the limit, and 0 where that is near.
func TestTheBarShowsValueAndLimit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.Float64Range(-1e4, 1e4).Draw(t, "low")
		s := Scale{Low: low, High: low + rapid.Float64Range(0, 1e4).Draw(t, "width"),
			Limit: rapid.Float64Range(-1e4, 1e4).Draw(t, "limit"), Upper: math.NaN()}
		from, to := s.Span()
		if !(from < to) || from > s.Low || to < s.High || from > s.Limit || to < s.Limit {
			t.Errorf("%+v is shown from %v to %v", s, from, to)
		}
	})
}

// What is said of a row gets more than its half where only that keeps all of it.
func TestARowGivesWhatItSaysTheRoomItNeeds(t *testing.T) {
	test.NewTempApp(t)
	title := NewText("Pinion slope: 88.1°, FRONT end high", Held, 20, Plain).Bold()
	detail := NewText("2026-03-02 10:01 · at ride height, own weight · setup 2 · angle finder with the red strap · on a face", Held, 17, Plain)
	face := NewRowFace(NewMark(""), title, detail)
	w := test.NewTempWindow(t, face)
	w.Resize(fyne.NewSize(400, 200))
	face.Resize(fyne.NewSize(330, 110))
	if !title.Fits() || !detail.Fits() {
		t.Errorf("in two halves three lines are cut: title fits %v, detail fits %v", title.Fits(), detail.Fits())
	}
}
