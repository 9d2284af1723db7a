package logbook

import (
	"encoding/json"
	"testing"
	"time"

	"yokebook/measure"
)

func TestSetChangesAFieldAndOutlivesReopening(t *testing.T) {
	s, b := newShelfBook(t)
	for _, set := range []struct{ field, value string }{
		{"title", `"invented: renamed"`},
		{"layout.slip", `"gearbox"`},
		{"instruments.finder", `{"id":"finder","kind":"angle","resolution":0.1,"accuracy":0.2,"unit":"deg"}`},
		{"title", `"invented: renamed twice"`},
	} {
		if _, err := b.Set(set.field, json.RawMessage(set.value)); err != nil {
			t.Fatalf("%s: %v", set.field, err)
		}
	}
	e := slope(t, "gearbox.slope", "2")
	e.Instrument = "finder"
	keep(t, b, e)
	closeBook(t, b)
	again, err := s.Open(b.ID())
	if err != nil {
		t.Fatal(err)
	}
	got := again.Build()
	if got.Title != "invented: renamed twice" || got.Layout.Slip != "gearbox" || len(got.Instruments) != 1 {
		t.Errorf("after reopening: %q, slip %q, instruments %v", got.Title, got.Layout.Slip, got.Instruments)
	}
}

func TestSetRefusesWhatTheBuildCantHold(t *testing.T) {
	_, b := newShelfBook(t)
	before := bytesOf(t, b)
	for _, set := range []struct{ field, value string }{
		{"layout.slip", `"elbow"`}, {"layout.shafts", `3`}, {"title", `7`}, {"title", `"cut off`}, {"colour", `"red"`},
		{"instruments.finder", `{"id":"finder"}`},
	} {
		if _, err := b.Set(set.field, json.RawMessage(set.value)); err == nil {
			t.Errorf("%s %s was taken", set.field, set.value)
		}
	}
	sameBytes(t, "after refusals", bytesOf(t, b), before)
}

func TestClockRunsOnWhateverTheWallClockSays(t *testing.T) {
	now := time.UnixMilli(1_000_000_000_000)
	at := func(ms, n int64) measure.Head { return measure.Head{Clock: measure.Clock{MS: ms, N: n}} }
	wall := now.UnixMilli()
	day := (24 * time.Hour).Milliseconds()
	for _, row := range []struct {
		name  string
		heads []measure.Head
		want  measure.Clock
	}{
		{"nothing seen: the wall", nil, measure.Clock{MS: wall}},
		{"seen earlier: the wall", []measure.Head{at(wall-5, 7)}, measure.Clock{MS: wall}},
		{"seen in this millisecond: one more", []measure.Head{at(wall, 0), at(wall, 3), at(wall, 1)}, measure.Clock{MS: wall, N: 4}},
		{"our wall clock jumped back: after the latest seen", []measure.Head{at(wall+5000, 2)}, measure.Clock{MS: wall + 5000, N: 3}},
		{"a day ahead is followed", []measure.Head{at(wall+day, 0)}, measure.Clock{MS: wall + day, N: 1}},
		{"more than a day ahead is not", []measure.Head{at(wall+day+1, 0), at(wall, 0)}, measure.Clock{MS: wall, N: 1}},
	} {
		if got := nextClock(row.heads, now); got != row.want {
			t.Errorf("%s: %+v; want %+v", row.name, got, row.want)
		}
	}
}

// A head from a clock ten years ahead is replaced by name, so our later change wins over it.
func TestOurChangeWinsOverAHeadFromAWrongClock(t *testing.T) {
	_, b := newShelfBook(t)
	today := b.src.Now()
	b.src.Now = func() time.Time { return today.AddDate(10, 0, 0) }
	if _, err := b.SetTitle("invented: from 2036"); err != nil {
		t.Fatal(err)
	}
	b.src.Now = func() time.Time { return today }
	if _, err := b.SetTitle("invented: from 2026"); err != nil {
		t.Fatal(err)
	}
	if b.Build().Title != "invented: from 2026" {
		t.Errorf("title %q; want the later change", b.Build().Title)
	}
}
