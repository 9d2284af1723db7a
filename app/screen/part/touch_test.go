package part

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/mobile"
	"fyne.io/fyne/v2/test"
)

// pad is two keys side by side on a glass, 20 apart, each 100 wide and high.
type pad struct {
	glass       *Glass
	left, right *Key
	presses     string
}

func newPad(t *testing.T) *pad {
	test.NewTempApp(t)
	p := &pad{glass: NewGlass()}
	p.left = NewWordKey("left", Ordinary, "L", func() { p.presses += "L" })
	p.right = NewWordKey("right", Ordinary, "R", func() { p.presses += "R" })
	for _, k := range []*Key{p.left, p.right} {
		k.Resize(fyne.NewSize(100, 100))
	}
	return p
}

// A step is what the phone's driver tells a widget; at is where the finger is on the glass.
type step struct {
	key  string // "L", "R" or "" for the glass
	what string // "down", "off" or "up"; after "up" on a key comes its tap
	at   fyne.Position
}

func (p *pad) do(steps ...step) {
	for _, s := range steps {
		var w mobile.Touchable = p.glass
		origin := fyne.NewPos(0, 0)
		key := map[string]*Key{"L": p.left, "R": p.right}[s.key]
		if key != nil {
			w = key
		}
		if s.key == "R" {
			origin = fyne.NewPos(120, 0)
		}
		e := &mobile.TouchEvent{PointEvent: fyne.PointEvent{AbsolutePosition: s.at, Position: s.at.Subtract(origin)}}
		switch s.what {
		case "down":
			w.TouchDown(e)
		case "off":
			w.TouchCancel(e)
		case "up":
			w.TouchUp(e)
			if key != nil {
				key.Tapped(&e.PointEvent)
			}
		}
	}
}

// 19 units are 3 mm: common practice, no source.
func TestWhatFingersDo(t *testing.T) {
	at := fyne.NewPos
	for _, row := range []struct {
		name  string
		steps []step
		want  string
	}{
		{"a press", []step{{"L", "down", at(50, 50)}, {"L", "up", at(52, 50)}}, "L"},
		{"rolled off by 3 mm", []step{{"L", "down", at(98, 50)}, {"L", "off", at(110, 50)}, {"", "up", at(117, 50)}}, "L"},
		{"rolled off by a corner", []step{{"L", "down", at(98, 98)}, {"L", "off", at(110, 110)}, {"", "up", at(113, 113)}}, "L"},
		{"rolled off and on again", []step{{"L", "down", at(98, 50)}, {"L", "off", at(104, 50)}, {"L", "up", at(97, 50)}}, "L"},
		{"rolled onto the next key by a hair", []step{{"R", "down", at(121, 50)}, {"R", "off", at(115, 50)}, {"", "up", at(103, 50)}}, "R"},
		{"slid from one key to the other", []step{{"L", "down", at(50, 50)}, {"L", "off", at(104, 50)}, {"R", "up", at(170, 50)}}, ""},
		{"slid away to take it back", []step{{"L", "down", at(50, 50)}, {"L", "off", at(50, 104)}, {"", "up", at(50, 300)}}, ""},
		{"a press after one taken back", []step{{"L", "down", at(50, 50)}, {"L", "off", at(50, 104)}, {"", "up", at(50, 300)},
			{"R", "down", at(170, 50)}, {"R", "up", at(170, 50)}}, "R"},
		{"taken back, then a hand beside it goes up", []step{{"L", "down", at(50, 50)}, {"L", "off", at(50, 104)}, {"", "up", at(50, 300)},
			{"", "down", at(110, 50)}, {"", "up", at(110, 50)}}, ""},
		{"came down elsewhere", []step{{"", "down", at(110, 50)}, {"L", "up", at(90, 50)}}, ""},
		{"a press after a stray one", []step{{"L", "up", at(90, 50)}, {"L", "down", at(90, 50)}, {"L", "up", at(90, 50)}}, "L"},
		{"one finger rests, one presses", []step{{"L", "down", at(50, 50)}, {"R", "down", at(170, 50)}, {"R", "up", at(170, 50)}}, "R"},
		{"both press", []step{{"L", "down", at(50, 50)}, {"R", "down", at(170, 50)}, {"R", "up", at(170, 50)}, {"L", "up", at(50, 50)}}, "RL"},
	} {
		p := newPad(t)
		if p.do(row.steps...); p.presses != row.want {
			t.Errorf("%s: %q, want %q", row.name, p.presses, row.want)
		}
	}
}

// A finger that rolled off a key and goes up on the next page presses nothing there, nor what was.
func TestANewPageForgetsFingers(t *testing.T) {
	p := newPad(t)
	p.do(step{"L", "down", fyne.NewPos(98, 50)}, step{"L", "off", fyne.NewPos(110, 50)})
	p.glass = NewGlass()
	if p.do(step{"", "up", fyne.NewPos(110, 50)}); p.presses != "" {
		t.Errorf("pressed %q", p.presses)
	}
}
