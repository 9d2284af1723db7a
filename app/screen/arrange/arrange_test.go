package arrange

import (
	"testing"

	"fyne.io/fyne/v2"
	"pgregory.net/rapid"
)

// box is an object to be placed, and nothing else.
type box struct {
	at   fyne.Position
	size fyne.Size
}

func (b *box) MinSize() fyne.Size      { return fyne.Size{} }
func (b *box) Move(p fyne.Position)    { b.at = p }
func (b *box) Position() fyne.Position { return b.at }
func (b *box) Resize(s fyne.Size)      { b.size = s }
func (b *box) Size() fyne.Size         { return b.size }
func (b *box) Hide()                   {}
func (b *box) Visible() bool           { return true }
func (b *box) Show()                   {}
func (b *box) Refresh()                {}
func blank() fyne.CanvasObject         { return &box{} }

func blanks(n int) []fyne.CanvasObject {
	out := make([]fyne.CanvasObject, n)
	for i := range out {
		out[i] = blank()
	}
	return out
}

func newTake() (*Take, []fyne.CanvasObject) {
	l := &Take{Stand: blanks(3), Picture: blank(), Question: blank(), Hint: blank(), Display: blank(),
		Decimal: blank(), Erase: blank(), More: blank(), Keep: blanks(1)}
	copy(l.Digits[:], blanks(10))
	keys := append(append([]fyne.CanvasObject{}, l.Stand...), l.Digits[:]...)
	return l, append(keys, l.Decimal, l.Erase, l.More, l.Keep[0])
}

// pages are sizes of pages from a small phone to a large desktop, upright and flat.
var pages = rapid.Custom(func(t *rapid.T) fyne.Size {
	a, b := rapid.Float32Range(360, 1400).Draw(t, "a"), rapid.Float32Range(360, 1400).Draw(t, "b")
	if rapid.Bool().Draw(t, "upright") {
		return fyne.NewSize(min(a, b), max(a, b, 640))
	}
	return fyne.NewSize(max(a, b, 640), min(a, b))
})

// Whatever the page, no two things on it cover each other and nothing lies beyond its edge.
func TestTakeNeverOverlaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		page := pages.Draw(t, "page")
		l, keys := newTake()
		switch rapid.SampledFrom([]string{"", "finder", "one field"}).Draw(t, "kind") {
		case "finder":
			l.Lay = blank()
			keys = append(keys, l.Lay)
		case "one field":
			keys = append(keys[3:], l.Stand[0])
			l.Stand = l.Stand[:1]
		}
		if rapid.Bool().Draw(t, "two sides") {
			l.Keep = append(l.Keep, blank())
			keys = append(keys, l.Keep[1])
		}
		l.Layout(nil, page)
		apart(t, page, append(keys, l.Picture, l.Question, l.Display))
	})
}

func TestAskNeverOverlaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		page := pages.Draw(t, "page")
		l := &Ask{Title: blank(), Answers: blanks(rapid.IntRange(1, 6).Draw(t, "answers")), Foot: blank()}
		if rapid.Bool().Draw(t, "note") {
			l.Note = blank()
		}
		l.Layout(nil, page)
		apart(t, page, append(append([]fyne.CanvasObject{}, l.Answers...), l.Foot, l.Title))
	})
}

func TestResultNeverOverlaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		page := pages.Draw(t, "page")
		l := &Result{Kept: blank(), Strike: blank(), Head: blank(), Rows: blank(), Again: blank(), All: blank(), Next: blank()}
		objects := []fyne.CanvasObject{l.Kept, l.Strike, l.Head, l.Rows, l.Again, l.All, l.Next}
		if rapid.Bool().Draw(t, "repeats") {
			l.Strip = blank()
			objects = append(objects, l.Strip)
		}
		l.Layout(nil, page)
		apart(t, page, objects)
	})
}

func TestFindingNeverOverlaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		page := pages.Draw(t, "page")
		l := &Finding{Title: blank(), Mark: blank(), Verdict: blank(), Value: blank(), Body: blank(), Back: blank(),
			Acts: blanks(rapid.IntRange(0, 2).Draw(t, "acts"))}
		l.Layout(nil, page)
		apart(t, page, append([]fyne.CanvasObject{l.Title, l.Mark, l.Verdict, l.Value, l.Body, l.Back}, l.Acts...))
	})
}

func apart(t *rapid.T, page fyne.Size, objects []fyne.CanvasObject) {
	t.Helper()
	const hair = 0.02
	for i, o := range objects {
		p, s := o.Position(), o.Size()
		if p.X < -hair || p.Y < -hair || p.X+s.Width > page.Width+hair || p.Y+s.Height > page.Height+hair {
			t.Errorf("on %v number %d lies beyond the edge: %v %v", page, i, p, s)
		}
		for j, q := range objects[:i] {
			across := min(p.X+s.Width, q.Position().X+q.Size().Width) - max(p.X, q.Position().X)
			down := min(p.Y+s.Height, q.Position().Y+q.Size().Height) - max(p.Y, q.Position().Y)
			if across > hair && down > hair {
				t.Errorf("on %v numbers %d and %d cover each other", page, i, j)
			}
		}
	}
}

// Keys on the sizes that phones have: 15 mm where the shorter side has 400 units of 1/160 inch or
// more, 12 mm below (75.6 units; sizes of phones: common practice, no source).
func TestKeysOnCommonPhones(t *testing.T) {
	for _, row := range []struct {
		page fyne.Size
		key  float32
	}{
		{fyne.NewSize(411, 914), 95}, {fyne.NewSize(411, 890), 95}, {fyne.NewSize(914, 411), 95},
		{fyne.NewSize(412, 915), 95}, {fyne.NewSize(430, 932), 95},
		{fyne.NewSize(360, 640), 75.9}, {fyne.NewSize(360, 780), 76}, {fyne.NewSize(393, 851), 76}, {fyne.NewSize(390, 844), 76},
	} {
		l, keys := newTake()
		l.Lay = blank()
		keys = append(keys, l.Lay)
		l.Layout(nil, row.page)
		for i, k := range keys {
			if s := k.Size(); s.Width < row.key || s.Height < row.key {
				t.Errorf("on %v key %d is %v, want %v", row.page, i, s, row.key)
			}
		}
	}
}

// A phone on its side has two rows of six.
func TestTwoRowsOfSix(t *testing.T) {
	l, _ := newTake()
	l.Layout(nil, fyne.NewSize(914, 411))
	rows := map[float32]int{}
	for _, k := range append(append([]fyne.CanvasObject{}, l.Digits[:]...), l.Decimal, l.Erase) {
		rows[k.Position().Y]++
	}
	if len(rows) != 2 {
		t.Fatalf("rows of keys: %v", rows)
	}
	for y, n := range rows {
		if n != 6 {
			t.Errorf("%d keys in the row at %v", n, y)
		}
	}
}

// Rows between headings grow into what the first page leaves over, and take no page more for it.
func TestHeadedRowsFillTheirPage(t *testing.T) {
	s := For(fyne.NewSize(411, 914))
	head := func(i int) bool { return i == 0 }
	cells := Cells(fyne.NewSize(393, 676), s, 9, 120, head)
	if c := cells[4]; c.Page != 0 || c.Size.Height < 130 || c.At.Y+c.Size.Height > 676 {
		t.Errorf("four rows under a heading leave room for taller ones: the fourth is %v at %v", c.Size, c.At)
	}
	if last := cells[8]; last.Page != 1 || last.Size.Height != cells[4].Size.Height {
		t.Errorf("the last row is %v on page %d", last.Size, last.Page)
	}
}
