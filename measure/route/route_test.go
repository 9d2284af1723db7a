package route

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"yokebook/measure"
)

// id makes the n-th id of a test.
func id(n int) measure.ID { return measure.ID(fmt.Sprintf("00000000-0000-4000-8000-%012d", n)) }

// stopsOf is the route of a build whose records all have ids of their own: no hash is needed.
func stopsOf(b *measure.Build) []Stop {
	return StopsBy(b, func(measure.Reading) string { return "" })
}

func build(layout measure.Layout) *measure.Build {
	return &measure.Build{ID: id(999), Layout: layout}
}

// read adds a reading of a point in a state and returns its id.
func read(b *measure.Build, point string, s measure.State) measure.ID {
	r := measure.Reading{ID: id(len(b.Readings) + 1), Point: point, Basis: measure.Measured, Ride: s.Ride, Load: s.Load, Setup: 1}
	b.Readings = append(b.Readings, r)
	return r.ID
}

func skip(b *measure.Build, n int, point string, s measure.State, at, reason string) {
	b.Skips = append(b.Skips, measure.Skip{ID: id(n), Point: point, Ride: s.Ride, Load: s.Load, At: at, Reason: reason})
}

func stopAt(t *testing.T, stops []Stop, point string, s measure.State) Stop {
	t.Helper()
	for _, stop := range stops {
		if stop.Point.Key == point && stop.State == s {
			return stop
		}
	}
	t.Fatalf("%s in %s is not on the route", point, s)
	return Stop{}
}

func keysIn(stops []Stop, s measure.State) string {
	var keys []string
	for _, stop := range stops {
		if stop.State == s {
			keys = append(keys, stop.Point.Key)
		}
	}
	return strings.Join(keys, " ")
}

func TestRouteOfOneShaft(t *testing.T) {
	stops := stopsOf(build(measure.NewLayout()))
	slopes := "datum.slope gearbox.slope shaft.slope pinion.slope"
	for _, tt := range []struct {
		state measure.State
		want  string
	}{
		{measure.OffBench, "engine.rpm_max gear.highest joint.angle_limit shaft.phase " +
			"axle.ratio tyre.code tyre.radius road.speed_max pinion.windup_drive pinion.windup_coast"},
		{measure.Hanging, slopes},
		{measure.RideKerb, slopes + " gearbox.plan shaft.plan pinion.plan shaft.length"},
		{measure.RideLaden, slopes},
		{measure.OnBump, slopes},
	} {
		if got := keysIn(stops, tt.state); got != tt.want {
			t.Errorf("in %s the route has\n%s, want\n%s", tt.state, got, tt.want)
		}
	}
	if n := Wanted(stops); n != 20 {
		t.Errorf("%d stops are wanted of a new build, want 20", n)
	}
}

func TestRouteFollowsTheLayout(t *testing.T) {
	two := measure.NewLayout()
	two.Shafts = 2
	if got := keysIn(stopsOf(build(two)), measure.Hanging); got != "datum.slope gearbox.slope front_shaft.slope shaft.slope pinion.slope" {
		t.Errorf("two shafts, hanging: %s", got)
	}
	front := measure.NewLayout()
	front.Drives = "front"
	stopAt(t, stopsOf(build(front)), "transfer.high", measure.OffBench)
	if strings.Contains(keysIn(stopsOf(build(measure.NewLayout())), measure.OffBench), "transfer.high") {
		t.Error("a build without transfer box is asked for its ratio")
	}
}

// One crawls under once per state: the stops of a state stand together, in the order of the states,
// and what is optional never stands before what is wanted.
func TestRouteCrawlsUnderOncePerState(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		stops := stopsOf(build(drawLayout(t)))
		last := -1
		optional := false
		wanted, states := 0, map[measure.State]bool{}
		for _, s := range stops {
			at := slices.Index(measure.States, s.State)
			switch {
			case at < last:
				t.Fatalf("%s in %s stands behind a later state", s.Point.Key, s.State)
			case at > last:
				last, optional = at, false
			case optional && !s.Point.Optional:
				t.Fatalf("%s in %s is wanted, but stands behind what is optional", s.Point.Key, s.State)
			}
			optional = s.Point.Optional
			if !s.Point.Optional {
				wanted++
				states[s.State] = true
			}
		}
		if wanted < 14 || len(states) < 3 {
			t.Fatalf("%d stops wanted in %d states; a whole route has at least 14 in three", wanted, len(states))
		}
	})
}

func drawLayout(t *rapid.T) measure.Layout {
	return measure.Layout{
		Shafts: rapid.SampledFrom([]int{1, 2}).Draw(t, "shafts"), FrontJoint: "single", RearJoint: "double",
		Slip:   rapid.SampledFrom([]string{"shaft", "gearbox"}).Draw(t, "slip"),
		Axle:   rapid.SampledFrom([]string{"leaf", "links", "fixed"}).Draw(t, "axle"),
		Drives: rapid.SampledFrom([]string{"", "rear", "front", "transfer"}).Draw(t, "drives"),
		Clutch: rapid.SampledFrom([]string{"", "push", "pull", "none"}).Draw(t, "clutch"),
	}
}

func TestReadingsCountWhereTheyHold(t *testing.T) {
	for _, tt := range []struct {
		name          string
		point         string
		read          measure.State
		basis         measure.Basis
		counts, apart []measure.State
	}{
		{name: "a slope counts in its own state", point: "shaft.slope", read: measure.RideKerb, basis: measure.Measured,
			counts: []measure.State{measure.RideKerb}, apart: []measure.State{measure.Hanging, measure.RideLaden, measure.OnBump}},
		{name: "a guess counts in its own state", point: "shaft.slope", read: measure.Hanging, basis: measure.Estimated,
			counts: []measure.State{measure.Hanging}, apart: []measure.State{measure.RideKerb}},
		{name: "a stated slope holds in every state", point: "gearbox.slope", read: measure.RideKerb, basis: measure.Stated,
			counts: []measure.State{measure.Hanging, measure.RideKerb, measure.RideLaden, measure.OnBump}},
		{name: "a bench reading holds in every state", point: "shaft.length", read: measure.OffBench, basis: measure.Measured,
			counts: []measure.State{measure.RideKerb}},
		{name: "a phase read under the vehicle settles the bench stop", point: "shaft.phase", read: measure.Hanging, basis: measure.Measured,
			counts: []measure.State{measure.OffBench}},
		{name: "a state off the route counts nowhere", point: "shaft.slope", read: measure.State{Ride: measure.Droop, Load: measure.Kerb}, basis: measure.Measured,
			apart: []measure.State{measure.Hanging, measure.RideKerb}},
	} {
		b := build(measure.NewLayout())
		read(b, tt.point, tt.read)
		b.Readings[0].Basis = tt.basis
		stops := stopsOf(b)
		for _, s := range tt.counts {
			if stop := stopAt(t, stops, tt.point, s); stop.Taken != 1 || !stop.Done() {
				t.Errorf("%s: %d taken in %s", tt.name, stop.Taken, s)
			}
		}
		for _, s := range tt.apart {
			if stop := stopAt(t, stops, tt.point, s); stop.Taken != 0 || stop.Done() {
				t.Errorf("%s: %d taken in %s, where it does not hold", tt.name, stop.Taken, s)
			}
		}
	}
}

func TestOnlyWhatCountsIsTaken(t *testing.T) {
	b := build(measure.NewLayout())
	first := read(b, "shaft.slope", measure.RideKerb)
	read(b, "shaft.slope", measure.RideKerb)
	taken := func() int { return stopAt(t, stopsOf(b), "shaft.slope", measure.RideKerb).Taken }
	if taken() != 2 {
		t.Fatalf("a repeat is not counted: %d", taken())
	}
	read(b, "shaft.slope", measure.RideKerb)
	b.Readings[2].Replaces = first
	if taken() != 2 {
		t.Errorf("a correction counts beside what it corrects: %d", taken())
	}
	b.Strikes = append(b.Strikes, measure.Strike{ID: id(50), Reading: b.Readings[1].ID})
	if taken() != 1 {
		t.Errorf("a struck reading counts: %d", taken())
	}
}

func TestDisputedReadingsCountOnceSettledByContent(t *testing.T) {
	b := build(measure.NewLayout())
	read(b, "shaft.slope", measure.RideKerb)
	twin := b.Readings[0]
	twin.Note = "other"
	b.Readings = append(b.Readings, twin)
	hash := func(r measure.Reading) string { return "sha256:" + r.Note }
	taken := func(stops []Stop) int { return stopAt(t, stops, "shaft.slope", measure.RideKerb).Taken }
	if n := taken(stopsOf(b)) + taken(StopsBy(b, hash)); n != 0 {
		t.Errorf("two records of one id count %d times before one is struck", n)
	}
	b.Strikes = []measure.Strike{{ID: id(50), Reading: twin.ID, Content: "sha256:other"}}
	if n := taken(StopsBy(b, hash)); n != 1 {
		t.Errorf("with one of them struck the other counts %d times", n)
	}
	if n := taken(stopsOf(b)); n != 0 {
		t.Errorf("without their hashes they count %d times, and nobody knows which one", n)
	}
}

func TestSkipsKeepTheirReasonUntilSomethingIsRead(t *testing.T) {
	b := build(measure.NewLayout())
	at := measure.RideLaden
	skip(b, 70, "shaft.slope", at, "2026-03-02T10:00:00Z", "no load here")
	skip(b, 71, "shaft.slope", at, "2026-03-02T12:30:00+02:00", "still none") // 10:30 in UTC
	skip(b, 72, "shaft.slope", at, "2026-03-02T10:20:00Z", "between the two")
	skip(b, 73, "shaft.slope", at, "yesterday", "time unreadable")
	skip(b, 74, "pinion.slope", at, "2026-03-02T10:00:00Z", "first")
	skip(b, 75, "pinion.slope", at, "2026-03-02T10:00:00Z", "same time, later id")
	stops := stopsOf(b)
	if s := stopAt(t, stops, "shaft.slope", at); !s.Done() || s.Skipped.Reason != "still none" {
		t.Errorf("newest skip is %+v", s.Skipped)
	}
	if s := stopAt(t, stops, "pinion.slope", at); s.Skipped.Reason != "same time, later id" {
		t.Errorf("of one time the later id counts, got %+v", s.Skipped)
	}
	if s := stopAt(t, stops, "shaft.slope", measure.RideKerb); s.Done() {
		t.Error("a skip reaches into another state")
	}
	kept := read(b, "shaft.slope", at)
	if s := stopAt(t, stopsOf(b), "shaft.slope", at); s.Skipped != nil || s.Taken != 1 {
		t.Errorf("a reading outranks any skip, got %+v", s.Skipped)
	}
	b.Strikes = append(b.Strikes, measure.Strike{ID: id(50), Reading: kept})
	if s := stopAt(t, stopsOf(b), "shaft.slope", at); s.Skipped == nil {
		t.Error("with the reading struck the skip stands again")
	}
}

// A skip that was taken back leaves nothing out, whatever the order of the records; one that nobody saw
// who took another back stands.
func TestASkipIsTakenBack(t *testing.T) {
	b := build(measure.NewLayout())
	at := measure.RideLaden
	skip(b, 70, "shaft.slope", at, "2026-03-02T10:00:00Z", "no load here")
	back := measure.Skip{ID: id(71), Point: "shaft.slope", Ride: at.Ride, Load: at.Load, Back: id(70), At: "2026-03-02T09:00:00Z"}
	for _, order := range [][]measure.Skip{{b.Skips[0], back}, {back, b.Skips[0]}} {
		b.Skips = order
		if s := stopAt(t, stopsOf(b), "shaft.slope", at); s.Done() || len(Skips(b)) != 0 {
			t.Errorf("taken back, but %+v", s.Skipped)
		}
	}
	skip(b, 72, "shaft.slope", at, "2026-03-02T08:00:00Z", "elsewhere")
	if s := stopAt(t, stopsOf(b), "shaft.slope", at); !s.Done() || s.Skipped.Reason != "elsewhere" {
		t.Errorf("what nobody took back is %+v", s.Skipped)
	}
}

// The stop of one obstacle is left out for that one alone, and for none without its tag.
func TestAStopOfOneObstacleIsLeftOut(t *testing.T) {
	b := build(measure.NewLayout())
	none := func(measure.Reading) string { return "" }
	gap := func(tag string) Stop {
		return stopAt(t, GroupStops(b, none, measure.GroupClearance, measure.RideKerb, tag), "obstacle.gap", measure.RideKerb)
	}
	skip(b, 70, "obstacle.gap", measure.RideKerb, "2026-03-02T10:00:00Z", "tank in the way")
	b.Skips[0].Tag = "2"
	if gap("1").Done() || gap("").Done() || !gap("2").Done() || gap("2").Skipped.Reason != "tank in the way" {
		t.Errorf("left out: %v %v %v", gap("1").Skipped, gap("").Skipped, gap("2").Skipped)
	}
	if got := Obstacles(b, none); len(got) != 1 || got[0] != "2" {
		t.Errorf("an obstacle of which all was left out is forgotten: %v", got)
	}
	skip(b, 71, "obstacle.gap", measure.RideKerb, "2026-03-02T11:00:00Z", "of no obstacle")
	if gap("1").Done() {
		t.Error("a skip without a tag, as older files have it, holds for an obstacle")
	}
	b.Skips = append(b.Skips, measure.Skip{ID: id(73), Point: "obstacle.gap", Ride: measure.AtRide, Load: measure.Kerb, Tag: "2", Back: id(70)})
	if gap("2").Done() || len(Obstacles(b, none)) != 0 {
		t.Error("taken back, but left out")
	}
}

func TestNextGoesOnAndThenRound(t *testing.T) {
	b := build(measure.NewLayout())
	stops := stopsOf(b)
	first, ok := Next(stops, "", measure.State{})
	if !ok || first.Point.Key != "engine.rpm_max" {
		t.Errorf("a new build starts at %s", first.Point.Key)
	}
	next, _ := Next(stops, "datum.slope", measure.RideKerb)
	if next.Point.Key != "gearbox.slope" || next.State != measure.RideKerb {
		t.Errorf("after datum.slope in ride/kerb comes %s in %s", next.Point.Key, next.State)
	}
	last := stops[len(stops)-1]
	if next, _ = Next(stops, last.Point.Key, last.State); next.Point.Key != "engine.rpm_max" {
		t.Errorf("after the last stop comes %s, want the first one open", next.Point.Key)
	}
	for _, s := range stops[:len(stops)-1] {
		read(b, s.Point.Key, s.State)
	}
	next, ok = Next(stopsOf(b), last.Point.Key, last.State)
	if !ok || next.Point.Key != last.Point.Key || next.State != last.State {
		t.Errorf("the only stop that is open is not found from itself: %s, %v", next.Point.Key, ok)
	}
	read(b, last.Point.Key, last.State)
	if s, ok := Next(stopsOf(b), "", measure.State{}); ok {
		t.Errorf("everything is read, and yet comes %s", s.Point.Key)
	}
	if _, ok := Next(nil, "", measure.State{}); ok {
		t.Error("an empty route has a next stop")
	}
}

// Whoever follows Next and reads or skips what it names is through in as many steps as the route
// has stops, and never hears of a stop twice.
func TestNextLeadsThroughTheWholeRoute(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := build(drawLayout(t))
		all := len(stopsOf(b))
		at := Stop{}
		seen := map[string]bool{}
		for n := 0; ; n++ {
			next, ok := Next(stopsOf(b), at.Point.Key, at.State)
			if !ok {
				if n != all {
					t.Fatalf("through after %d of %d stops", n, all)
				}
				break
			}
			key := next.Point.Key + next.State.String()
			if seen[key] || n > all {
				t.Fatalf("%s in %s comes twice", next.Point.Key, next.State)
			}
			seen[key], at = true, next
			if rapid.Bool().Draw(t, "skip") {
				skip(b, 100+n, next.Point.Key, next.State, "", "can't reach")
			} else {
				read(b, next.Point.Key, next.State)
			}
		}
		if n := Wanted(stopsOf(b)); n != 0 {
			t.Fatalf("%d stops are wanted at the end", n)
		}
	})
}

func TestWantedCountsWhatIsLeft(t *testing.T) {
	b := build(measure.NewLayout())
	read(b, "datum.slope", measure.RideKerb)
	read(b, "shaft.plan", measure.RideKerb) // optional
	read(b, "shaft.slope", measure.Hanging)
	skip(b, 60, "pinion.slope", measure.RideKerb, "", "sits behind the tank")
	if n := Wanted(stopsOf(b)); n != 17 {
		t.Errorf("%d wanted, want 17 of 20", n)
	}
}
