package measure

import (
	"encoding/json"
	"testing"
)

// goodBuild is one with a record of every kind that Validate accepts.
func goodBuild(t *testing.T) *Build {
	return &Build{ID: testID(10), Title: "invented", Layout: NewLayout(), Instruments: someInstruments,
		Readings: []Reading{goodReading(t)},
		Strikes:  []Strike{{ID: testID(20), Reading: testID(1)}},
		Skips:    []Skip{{ID: testID(30), Point: "shaft.slope", Ride: AtRide, Load: Laden, Reason: "no load here"}},
		Heads:    []Head{{ID: testID(40), Field: "title", Value: json.RawMessage(`"invented"`)}},
	}
}

// Each refusal names the list, the place in it and the member; beside it stands the nearest build
// that is accepted.
func TestBuildsNameWhereTheyAreWrong(t *testing.T) {
	if err := goodBuild(t).Validate(); err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		bad, twin func(*Build)
		says      string
	}{
		{func(b *Build) { b.ID = "../x" }, func(b *Build) { b.ID = testID(11) }, "id: "},
		{func(b *Build) { b.Layout.Axle = "swing" }, func(b *Build) { b.Layout.Axle = "links" }, "layout.axle: "},
		{func(b *Build) { b.Instruments = append(b.Instruments, Instrument{ID: "x"}) },
			func(b *Build) { b.Instruments = append(b.Instruments, Instrument{ID: "x", Kind: "tape", Unit: "mm"}) }, "instruments[2].kind: "},
		{func(b *Build) { b.Readings[0].Setup = 0 }, func(b *Build) { b.Readings[0].Setup = 7 }, "readings[0].setup: "},
		{func(b *Build) { b.Instruments = nil }, func(b *Build) { b.Instruments, b.Readings = nil, nil }, "readings[0].instrument: "},
		{func(b *Build) { b.Strikes[0].ID = "x" }, func(b *Build) { b.Strikes[0].ID = "" }, "strikes[0].id: "},
		{func(b *Build) { b.Strikes[0].Reading = "" }, func(b *Build) { b.Strikes[0].Reading = testID(77) }, "strikes[0].reading: "},
		{func(b *Build) { b.Skips[0].ID = "" }, func(b *Build) { b.Skips[0].ID = testID(31) }, "skips[0].id: "},
		{func(b *Build) { b.Skips[0].Point = "x" }, func(b *Build) { b.Skips[0].Point = "fit.loop" }, "skips[0].point: "},
		{func(b *Build) { b.Skips[0].Load = "" }, func(b *Build) { b.Skips[0].Ride, b.Skips[0].Load = Bench, "" }, "skips[0].ride: "},
		{func(b *Build) { b.Heads[0].ID = "" }, func(b *Build) { b.Heads[0].ID = testID(41) }, "heads[0].id: "},
		{func(b *Build) { b.Heads[0].Field = "" }, func(b *Build) { b.Heads[0].Field = "note" }, "heads[0].field: "},
		{func(b *Build) { b.Heads[0].Clock.MS = -1 }, func(b *Build) { b.Heads[0].Clock.MS = 1 }, "heads[0].clock: "},
		{func(b *Build) { b.Heads[0].Value = nil }, func(b *Build) { b.Heads[0].Value = json.RawMessage("null") }, "heads[0].value: "},
	} {
		bad, twin := goodBuild(t), goodBuild(t)
		tt.bad(bad)
		tt.twin(twin)
		refused(t, tt.says, bad.Validate(), tt.says)
		if err := twin.Validate(); err != nil {
			t.Errorf("%s: its near twin is refused: %v", tt.says, err)
		}
	}
}

func TestClocksCountMillisecondsFirst(t *testing.T) {
	order := []Clock{{0, 0}, {0, 1}, {1, 0}, {1, 5}, {2, 0}}
	for i, a := range order {
		for j, b := range order {
			if a.Less(b) != (i < j) {
				t.Errorf("%v before %v: %v", a, b, a.Less(b))
			}
		}
	}
}
