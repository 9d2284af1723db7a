package logbook

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store"
)

func TestWhatWasKeptIsTheSameBytesAfterReopening(t *testing.T) {
	s, b := newShelfBook(t)
	first := keep(t, b, slope(t, "gearbox.slope", "2.40"))
	keep(t, b, slope(t, "shaft.slope", "17"))
	if _, err := b.Strike(first.Reading, "finder was on the weld"); err != nil {
		t.Fatal(err)
	}
	if _, err := b.Skip("pinion.slope", measure.Hanging, "", "no room for the finder"); err != nil {
		t.Fatal(err)
	}
	if _, err := b.SetTitle("invented: another title"); err != nil {
		t.Fatal(err)
	}
	want := bytesOf(t, b)
	closeBook(t, b)

	again, err := s.Open(b.ID())
	if err != nil {
		t.Fatal(err)
	}
	sameBytes(t, "after reopening", bytesOf(t, again), want)
	if again.Build().Title != "invented: another title" || len(again.Notes()) > 0 {
		t.Errorf("title %q, notes %v", again.Build().Title, again.Notes())
	}
	exported, err := s.Export(b.ID())
	if err != nil {
		t.Fatal(err)
	}
	sameBytes(t, "exported", exported, want)
}

func TestReadingCarriesIdTimeAndDevice(t *testing.T) {
	_, b := newShelfBook(t)
	c := keep(t, b, slope(t, "gearbox.slope", "2.40"))
	r := b.Build().Readings[0]
	if r.ID != c.Reading || r.Device != deviceA || r.Value.Token() != "2.40" || r.Basis != measure.Measured {
		t.Errorf("reading %+v", r)
	}
	if at, err := time.Parse(time.RFC3339, r.At); err != nil || !strings.HasSuffix(r.At, "Z") || at.Year() != 2026 {
		t.Errorf("at %q, %v; want RFC 3339 in UTC", r.At, err)
	}
}

func TestChangeListsOnlyWhatChangedWorstFirst(t *testing.T) {
	_, b := newShelfBook(t)
	for _, row := range []struct {
		name        string
		entry       Entry
		shows, gone string
	}{
		{"a first reading", slope(t, "gearbox.slope", "2"), "mean/gearbox.slope clear 2; ", ""},
		{"another point leaves the first alone", slope(t, "shaft.slope", "17"), "mean/shaft.slope out 17; ", ""},
		{"the same value again changes nothing", slope(t, "gearbox.slope", "2"), "", ""},
		{"a repeat that moves the mean", slope(t, "gearbox.slope", "14"), "mean/gearbox.slope unsure 6; ", ""},
		{"what was waited for is gone", slope(t, "pinion.slope", "2"), "mean/pinion.slope clear 2; ", "waits/ waiting; "},
	} {
		c := keep(t, b, row.entry)
		if got := said(c.Findings); got != row.shows {
			t.Errorf("%s: %q; want %q", row.name, got, row.shows)
		}
		if got := said(c.Gone); got != row.gone {
			t.Errorf("%s: gone %q; want %q", row.name, got, row.gone)
		}
	}
	got := said(WorstFirst(b.Findings()))
	if want := "mean/shaft.slope out 17; mean/gearbox.slope unsure 6; mean/pinion.slope clear 2; "; got != want {
		t.Errorf("worst first: %q; want %q", got, want)
	}
}

func TestEveryPartOfAFindingCountsAsAChange(t *testing.T) {
	number := func(f float64) *float64 { return &f }
	base := checks.Finding{Check: "c", Value: number(1), Low: number(0), High: number(2), Verdict: checks.Clear,
		Limit: &checks.Limit{Value: 3}, Missing: []checks.Missing{{Point: "p"}}}
	for _, row := range []struct {
		name string
		edit func(*checks.Finding)
		want int
	}{
		{"nothing", func(*checks.Finding) {}, 0},
		{"equal number elsewhere in memory", func(f *checks.Finding) { f.Value = number(1) }, 0},
		{"verdict", func(f *checks.Finding) { f.Verdict = checks.Unsure }, 1},
		{"value", func(f *checks.Finding) { f.Value = number(1.1) }, 1},
		{"value gone", func(f *checks.Finding) { f.Value = nil }, 1},
		{"low", func(f *checks.Finding) { f.Low = number(0.1) }, 1},
		{"high", func(f *checks.Finding) { f.High = number(2.1) }, 1},
		{"limit", func(f *checks.Finding) { f.Limit = &checks.Limit{Value: 4} }, 1},
		{"missing", func(f *checks.Finding) { f.Missing = nil }, 1},
		{"another state is another finding", func(f *checks.Finding) { f.State = measure.Hanging }, 1},
	} {
		f := base
		row.edit(&f)
		if c := compare([]checks.Finding{base}, []checks.Finding{f}); len(c.Findings) != row.want {
			t.Errorf("%s: %d findings changed; want %d", row.name, len(c.Findings), row.want)
		}
	}
}

func TestRefusedEntryChangesNothing(t *testing.T) {
	_, b := newShelfBook(t)
	kept := keep(t, b, slope(t, "gearbox.slope", "2"))
	before := bytesOf(t, b)
	unknown := slope(t, "gearbox.slope", "2")
	unknown.Replaces = "019ab3f0-0000-7000-8000-0000000000ff"
	other := slope(t, "pinion.slope", "2")
	other.Replaces = kept.Reading
	lengths := slope(t, "gearbox.slope", "2")
	lengths.Unit = "mm"
	for name, e := range map[string]Entry{
		"beyond upright":               slope(t, "gearbox.slope", "94"),
		"unknown point":                slope(t, "elbow.slope", "2"),
		"unit of another":              lengths,
		"replaces what is not there":   unknown,
		"replaces another point":       other,
		"instrument that is not there": {Point: "gearbox.slope", Value: number(t, "2"), Unit: "deg", State: measure.Hanging, Setup: 1, Instrument: "finder"},
	} {
		if _, err := b.Keep(e); err == nil || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want one line", name, err)
		}
	}
	if _, err := b.Strike("019ab3f0-0000-7000-8000-0000000000ff", "x"); err == nil {
		t.Error("struck a reading that is not there")
	}
	if _, err := b.Skip("elbow.slope", measure.Hanging, "", "x"); err == nil {
		t.Error("skipped a point that is not there")
	}
	sameBytes(t, "after refusals", bytesOf(t, b), before)
	keep(t, b, slope(t, "gearbox.slope", "89")) // a near twin of the first is taken
}

// failing is a disk that takes nothing.
type failing struct{}

func (failing) Close() error { return nil }
func (failing) keep(*measure.Build, []store.Record) (*measure.Build, error) {
	return nil, store.ErrWrite
}

func TestReadingThatWasNotWrittenIsNotShown(t *testing.T) {
	_, b := newShelfBook(t)
	keep(t, b, slope(t, "gearbox.slope", "2"))
	before, findings := bytesOf(t, b), said(b.Findings())
	good := b.keeper
	b.keeper = failing{}
	if _, err := b.Keep(slope(t, "gearbox.slope", "14")); !errors.Is(err, store.ErrWrite) {
		t.Errorf("%v; want ErrWrite", err)
	}
	b.keeper = good
	sameBytes(t, "after a failed write", bytesOf(t, b), before)
	if got := said(b.Findings()); got != findings {
		t.Errorf("findings %q; want %q", got, findings)
	}
}

func TestASnapshotStaysAsItWas(t *testing.T) {
	_, b := newShelfBook(t)
	for range 3 { // enough that the list of readings has room to grow in place
		keep(t, b, slope(t, "gearbox.slope", "2"))
	}
	snapshot := b.Build()
	before := fmt.Sprint(snapshot.Readings)
	b.src.NewID = func() measure.ID { return "019ab3ef-0000-7000-8000-000000000000" } // sorts before the first
	keep(t, b, slope(t, "gearbox.slope", "3"))
	if after := fmt.Sprint(snapshot.Readings); after != before || b.Build() == snapshot {
		t.Errorf("a later reading changed an earlier snapshot: %s, was %s", after, before)
	}
}

func TestReadingOutranksASkip(t *testing.T) {
	_, b := newShelfBook(t)
	skipped := func() bool {
		for _, s := range b.Stops() {
			if s.Point.Key == "gearbox.slope" && s.State == measure.Hanging {
				return s.Skipped != nil
			}
		}
		t.Fatal("gearbox.slope hanging is not on the route")
		return false
	}
	c, err := b.Skip("gearbox.slope", measure.Hanging, "", "no room")
	if err != nil {
		t.Fatal(err)
	}
	if !skipped() || !c.More || c.Next.Point.Key == "gearbox.slope" {
		t.Errorf("after the skip: skipped %v, next %s", skipped(), c.Next.Point.Key)
	}
	keep(t, b, slope(t, "gearbox.slope", "2"))
	if skipped() {
		t.Error("a reading was taken and the stop still counts as skipped")
	}
	if len(b.Build().Skips) != 1 {
		t.Error("the skip was removed; it must stay in the record")
	}
}

func TestStrikeBringsTheStopBack(t *testing.T) {
	_, b := newShelfBook(t)
	c := keep(t, b, slope(t, "gearbox.slope", "2"))
	if c.Next.Point.Key == "gearbox.slope" && c.Next.State == measure.Hanging {
		t.Error("the next stop is the one just taken")
	}
	struck, err := b.Strike(c.Reading, "finder was on the weld")
	if err != nil {
		t.Fatal(err)
	}
	if struck.Next.Point.Key != "gearbox.slope" || struck.Next.State != measure.Hanging || said(struck.Gone) != "mean/gearbox.slope clear 2; " {
		t.Errorf("next %s %s, gone %q; want the same stop again", struck.Next.Point.Key, struck.Next.State, said(struck.Gone))
	}
	if _, err := b.Strike(c.Reading, "again"); err == nil {
		t.Error("struck twice")
	}
	if len(b.Build().Readings) != 1 {
		t.Error("the struck reading is gone; it must stay in the record")
	}
}

func TestUndoTakesBackTheLastReadingAndThenTheOneBefore(t *testing.T) {
	_, b := newShelfBook(t)
	keep(t, b, slope(t, "gearbox.slope", "2"))
	keep(t, b, slope(t, "shaft.slope", "17"))
	for _, want := range []string{"mean/gearbox.slope clear 2; waits/ waiting; ", "waits/ waiting; "} {
		if _, err := b.UndoLast("taken back"); err != nil {
			t.Fatal(err)
		}
		if got := said(b.Findings()); got != want {
			t.Errorf("findings %q; want %q", got, want)
		}
	}
	if _, err := b.UndoLast("taken back"); err == nil {
		t.Error("took back a reading where none is left")
	}
}

func TestUndoOfACorrectionBringsTheCorrectedValueBack(t *testing.T) {
	_, b := newShelfBook(t)
	wrong := keep(t, b, slope(t, "gearbox.slope", "2"))
	right := slope(t, "gearbox.slope", "3")
	right.Replaces = wrong.Reading
	keep(t, b, right)
	c, err := b.UndoLast("taken back")
	if err != nil {
		t.Fatal(err)
	}
	if got := said(c.Findings); got != "mean/gearbox.slope clear 2; " {
		t.Errorf("changed %q; want the value before the correction", got)
	}
}

func TestStandingFollowsTheVehicleAndNotTheBench(t *testing.T) {
	_, b := newShelfBook(t)
	if _, setup, _ := b.Standing(); setup != 1 || b.NextSetup() != 1 {
		t.Errorf("before the first reading: setup %d, next %d; want 1, 1", setup, b.NextSetup())
	}
	hanging := slope(t, "gearbox.slope", "2")
	hanging.Height = number(t, "612")
	keep(t, b, hanging)
	keep(t, b, Entry{Point: "tube.od", Value: number(t, "70"), Unit: "mm", State: measure.OffBench, Setup: 1})
	state, setup, height := b.Standing()
	if state != measure.Hanging || setup != 1 || height.Token() != "612" {
		t.Errorf("standing %s, setup %d, height %s; want droop/none, 1, 612", state, setup, height.Token())
	}

	// An entry without state and setup takes those of the vehicle; one in another state was moved.
	bare := Entry{Point: "pinion.slope", Value: number(t, "2"), Unit: "deg"}
	keep(t, b, bare)
	bare.State = measure.RideKerb
	keep(t, b, bare)
	if state, setup, _ = b.Standing(); state != measure.RideKerb || setup != 2 {
		t.Errorf("standing %s, setup %d; want ride/kerb, 2", state, setup)
	}
	stated := keep(t, b, Entry{Point: "engine.rpm_max", Value: number(t, "4000"), Unit: "rev/min", Basis: measure.Stated})
	if r, _, _ := b.find(stated.Reading); r.State() != measure.OffBench {
		t.Errorf("a stated value was kept in %s; want bench", r.State())
	}
}

func TestDoubtsAreAskedBackAndNotRefused(t *testing.T) {
	_, b := newShelfBook(t)
	keep(t, b, slope(t, "gearbox.slope", "2"))
	onFace := slope(t, "gearbox.slope", "88")
	onFace.Lay = "face"
	loaded := slope(t, "gearbox.slope", "2")
	loaded.State = measure.State{Ride: measure.Droop, Load: measure.Kerb}
	loaded.Setup = 2
	moved := slope(t, "gearbox.slope", "2")
	moved.State = measure.RideKerb
	bench := Entry{Point: "tube.od", Value: number(t, "70"), Unit: "mm", State: measure.OffBench, Setup: 1}
	for _, row := range []struct {
		name  string
		entry Entry
		want  string
	}{
		{"an ordinary slope", slope(t, "gearbox.slope", "2"), ""},
		{"too steep for a gearbox", slope(t, "gearbox.slope", "88"), DoubtImplausible},
		{"the same shown on the face is 2 along the part", onFace, ""},
		{"hanging wheels under load", loaded, DoubtContradiction},
		{"another state in the same setup", moved, DoubtSameSetup},
		{"a part on the bench does not move the vehicle", bench, ""},
		{"an impossible one is Keep's to refuse", slope(t, "gearbox.slope", "94"), ""},
	} {
		var keys []string
		for _, d := range b.Doubts(row.entry) {
			keys = append(keys, d.Key)
		}
		if got := strings.Join(keys, " "); got != row.want {
			t.Errorf("%s: %q; want %q", row.name, got, row.want)
		}
	}
	keep(t, b, slope(t, "gearbox.slope", "88")) // asked about, and kept all the same
}

func TestClosedBookTakesNoMore(t *testing.T) {
	_, b := newShelfBook(t)
	closeBook(t, b)
	closeBook(t, b)
	if _, err := b.Keep(slope(t, "gearbox.slope", "2")); err == nil {
		t.Error("a closed book took a reading")
	}
}

func TestUndoOfACorrectionThatIsNotTheLastReading(t *testing.T) {
	_, b := newShelfBook(t)
	wrong := keep(t, b, slope(t, "gearbox.slope", "2"))
	right := slope(t, "gearbox.slope", "3")
	right.Replaces = wrong.Reading
	corrected := keep(t, b, right)
	later := keep(t, b, slope(t, "shaft.slope", "17"))
	if _, err := b.Undo(corrected.Reading, "taken back"); err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, r := range b.Build().CurrentReadings(document.Hash) {
		got = append(got, r.Point+" "+r.Value.Token())
	}
	if want := []string{"shaft.slope 17", "gearbox.slope 2"}; !slices.Equal(got, want) {
		t.Errorf("counts %v; want %v", got, want)
	}
	if last, ok := b.Last(); !ok || last.ID == later.Reading {
		t.Errorf("the last is %v", last.ID)
	}
}
