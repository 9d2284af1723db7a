package measure

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// goodReading is one that Validate accepts.
func goodReading(t interface {
	Helper()
	Fatal(...any)
}) Reading {
	t.Helper()
	return Reading{ID: testID(1), Point: "gearbox.slope", Value: number(t, "2.4"), Unit: "deg", Basis: Measured,
		Ride: Droop, Load: NoLoad, Height: number(t, "612"), Setup: 1, Instrument: "finder", Way: 1, Lay: "along",
		At: "2026-03-02T10:15:00Z", Device: testID(2), Replaces: testID(3)}
}

var someInstruments = []Instrument{
	{ID: "finder", Kind: "angle", Unit: "deg"},
	{ID: "tape", Kind: "tape", Unit: "mm"},
}

// Each refusal is one change of a reading that is accepted; each twin is the nearest change that is.
func TestReadingsThatCannotBeTrueAreRefused(t *testing.T) {
	if err := goodReading(t).Validate(someInstruments); err != nil {
		t.Fatalf("the reading that all others differ from: %v", err)
	}
	point := func(key, value string, unit Unit) func(*Reading) {
		return func(r *Reading) { r.Point, r.Value, r.Unit, r.Instrument = key, number(t, value), unit, "" }
	}
	for _, tt := range []struct {
		name      string
		bad, twin func(*Reading)
		says      string
	}{
		{"no id", func(r *Reading) { r.ID = "" }, func(r *Reading) { r.ID = testID(9) }, "id: "},
		{"an unknown point", func(r *Reading) { r.Point = "gearbox.slop" }, func(r *Reading) { r.Point = "pinion.slope" }, `point: "gearbox.slop" is not a point`},
		{"a unit of another quantity", point("gearbox.slope", "2.4", "mm"), point("gearbox.slope", "2.4", "deg"), "unit: gearbox.slope: "},
		{"no value", func(r *Reading) { r.Value = Value{} }, func(r *Reading) { r.Value = number(t, "0") }, "value: gearbox.slope takes a number"},
		{"a text for a number", func(r *Reading) { r.Value = TextValue("2.4") }, func(r *Reading) { r.Value = number(t, "2.4") }, "takes a number"},
		{"a slope beyond upright", point("gearbox.slope", "90.1", "deg"), point("gearbox.slope", "-90", "deg"), "beyond ±90"},
		{"a phase beyond a turn", point("shaft.phase", "361", "deg"), point("shaft.phase", "-180", "deg"), "beyond ±360"},
		{"a negative length", point("shaft.length", "-1", "mm"), point("shaft.length", "0", "mm"), "can't be negative"},
		{"a negative wind-up", point("pinion.windup_drive", "-2", "deg"), point("pinion.windup_drive", "2", "deg"), "can't be negative"},
		{"a negative side where sides have meaning is fine, a negative count is not", point("front_end.bolts", "-4", "count"), point("front_flange.y", "-4", "mm"), "can't be negative"},
		{"half a bolt", point("front_end.bolts", "4.5", "count"), point("front_end.bolts", "4", "count"), "whole number"},
		{"a code that is none", point("front_end.clip", "5", ""), point("front_end.clip", "4", ""), "not one of its answers: 1 outer ring"},
		{"neither yes nor no", point("fit.dowels", "0.5", ""), point("fit.dowels", "0", ""), "1 yes, 0 no"},
		{"a number for a text", func(r *Reading) { r.Point, r.Unit, r.Instrument = "tyre.code", "", "" },
			func(r *Reading) {
				r.Point, r.Unit, r.Instrument, r.Value = "tyre.code", "", "", TextValue("205/55 R16")
			}, `takes a text of 1 to 60 characters such as "205/55 R16"`},
		{"an unknown basis", func(r *Reading) { r.Basis = "" }, func(r *Reading) { r.Basis = Estimated }, "basis: "},
		{"an unknown ride", func(r *Reading) { r.Ride = "air" }, func(r *Reading) { r.Ride = AtRide }, "ride: "},
		{"a bench reading with a load", func(r *Reading) { r.Ride = Bench }, func(r *Reading) { r.Ride, r.Load = Bench, "" }, "ride: a bench reading has no load"},
		{"a negative height", func(r *Reading) { r.Height = number(t, "-1") }, func(r *Reading) { r.Height = Value{} }, "height: "},
		{"a text for a height", func(r *Reading) { r.Height = TextValue("612") }, func(r *Reading) { r.Height = number(t, "0") }, "height: "},
		{"no setup under the vehicle", func(r *Reading) { r.Setup = 0 }, func(r *Reading) { r.Ride, r.Load, r.Setup = Bench, "", 0 }, "setup: "},
		{"a negative setup on the bench", func(r *Reading) { r.Ride, r.Load, r.Setup = Bench, "", -1 }, func(r *Reading) { r.Setup = 2 }, "setup: "},
		{"an unknown instrument", func(r *Reading) { r.Instrument = "level" }, func(r *Reading) { r.Instrument = "" }, `instrument: "level" is not`},
		{"an instrument of another quantity", func(r *Reading) { r.Instrument = "tape" }, func(r *Reading) { r.Instrument = "finder" }, "instrument: tape reads a length, but gearbox.slope is an angle"},
		{"a third way round", func(r *Reading) { r.Way = 3 }, func(r *Reading) { r.Way = 2 }, "way: 3"},
		{"an unknown lay", func(r *Reading) { r.Lay = "across" }, func(r *Reading) { r.Lay = "face" }, "lay: "},
		{"a time without zone", func(r *Reading) { r.At = "2026-03-02T10:15:00" }, func(r *Reading) { r.At = "2026-03-02T10:15:00.25+02:00" }, "at: "},
		{"a device that is no id", func(r *Reading) { r.Device = "tablet" }, func(r *Reading) { r.Device = "" }, "device: "},
		{"a correction of no id", func(r *Reading) { r.Replaces = "last" }, func(r *Reading) { r.Replaces = "" }, "replaces: "},
	} {
		bad, twin := goodReading(t), goodReading(t)
		tt.bad(&bad)
		tt.twin(&twin)
		refused(t, tt.name, bad.Validate(someInstruments), tt.says)
		if err := twin.Validate(someInstruments); err != nil {
			t.Errorf("%s: its near twin is refused: %v", tt.name, err)
		}
	}
}

// A contradiction and an implausible value are asked about, never refused.
func TestOddReadingsAreAccepted(t *testing.T) {
	r := goodReading(t)
	r.Load = Laden
	if err := r.Validate(someInstruments); err != nil || !r.State().Contradiction() {
		t.Errorf("hanging and laden: %v", err)
	}
	r = goodReading(t)
	r.Value = number(t, "44")
	p, _ := PointOf(r.Point)
	if err := r.Validate(someInstruments); err != nil || p.Plausible(44) {
		t.Errorf("a gearbox at 44 deg: refused %v, plausible %v", err, p.Plausible(44))
	}
}

func TestRangesAreAskedAboutAtTheirEdges(t *testing.T) {
	for _, tt := range []struct {
		key    string
		number float64
		want   bool
	}{
		{"gearbox.slope", 30, true}, {"gearbox.slope", 30.1, false}, {"gearbox.slope", -30.1, false},
		{"slip.exposed", 0, true}, {"adapter.thickness", 0, true}, {"shaft.length", 15, false},
		{"engine.rpm_max", 4.5, false}, // 4,500 typed with a mark for thousands
		{"tyre.code", 0, true},
	} {
		p, _ := PointOf(tt.key)
		if got := p.Plausible(tt.number); got != tt.want {
			t.Errorf("%s %g plausible: %v", tt.key, tt.number, got)
		}
	}
}

func TestNumbersAreInTheBaseUnit(t *testing.T) {
	for _, tt := range []struct {
		key, token string
		unit       Unit
		want       float64
		ok         bool
	}{
		{"shaft.length", "10", "in", 254, true},
		{"shaft.length", "254.0", "mm", 254, true},
		{"engine.torque_max", "100", "lbf·ft", 135.58179483314004, true}, // NIST SP 811 B.8
		{"axle.ratio", "3.73", "", 3.73, true},
		{"shaft.length", "10", "deg", 0, false},
		{"no.such", "10", "mm", 0, false},
	} {
		r := Reading{Point: tt.key, Value: number(t, tt.token), Unit: tt.unit}
		if got, ok := r.Number(); got != tt.want || ok != tt.ok {
			t.Errorf("%s %s %s is %v, %v; want %v, %v", tt.key, tt.token, tt.unit, got, ok, tt.want, tt.ok)
		}
	}
	if _, ok := (Reading{Point: "tyre.code", Value: TextValue("10")}).Number(); ok {
		t.Error("a text passes for a number")
	}
}

// A finder on the face of a flange shows the rest to a right angle of what it shows along the
// shaft; the side that is high stays. (Plane geometry.)
func TestLayOnTheFace(t *testing.T) {
	for _, tt := range []struct {
		lay         string
		shown, want float64
	}{
		{"", 2.5, 2.5}, {"along", -2.5, -2.5},
		{"face", 87.5, 2.5}, {"face", -87.5, -2.5}, {"face", 90, 0}, {"face", 0, 90},
	} {
		if got := (Reading{Lay: tt.lay}).Along(tt.shown); got != tt.want {
			t.Errorf("%q shows %g: along the part %g, want %g", tt.lay, tt.shown, got, tt.want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		slope := rapid.Float64Range(-89, 89).Draw(t, "slope")
		face := Reading{Lay: "face"}
		if got := face.Along(face.Along(slope)); math.Abs(got-slope) > 1e-12 {
			t.Fatalf("slope %g comes back from the face as %g", slope, got)
		}
	})
}

func TestLongForeignTextIsCutInMessages(t *testing.T) {
	r := goodReading(t)
	r.Point = strings.Repeat("x\n", 5000)
	if err := r.Validate(nil); err == nil || len(err.Error()) > 400 || strings.Contains(err.Error(), "\n") {
		t.Errorf("a point of 10000 characters: %.80v…", err)
	}
}
