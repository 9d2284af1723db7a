package words

import (
	"math"
	"strings"
	"testing"
	"yokebook/checks"
	"yokebook/measure"
)

// Rows without another source are worked apart from this code by the rule that lastPlace cites:
// of a doubt's three leading digits, 100 to 354 keep two digits, 355 to 949 one, 950 to 999 become
// 1000 and keep two; the value is cut to the same place.
func TestValueIsCutToItsDoubt(t *testing.T) {
	tests := []struct {
		value, doubt float64
		unit         string
		want, with   string
	}{
		{0.827, 0.119, "", "0.83", "0.83 ± 0.12"}, // the example of the rule's own text (from memory)
		{0.827, 0.367, "", "0.8", "0.8 ± 0.4"},    // likewise
		{3.479, 0.0749, "deg", "3.48°", "3.48 ± 0.07°"},
		{14.6, 0.25, "deg", "14.60°", "14.60 ± 0.25°"},
		{5088.06, 21, "rev/min", "5088 rev/min", "5088 ± 21 rev/min"},
		{5088.06, 210, "rev/min", "5090 rev/min", "5090 ± 210 rev/min"},
		{5088.06, 960, "rev/min", "5100 rev/min", "5100 ± 1000 rev/min"},
		{5088.06, 9.6, "rev/min", "5088 rev/min", "5088 ± 10 rev/min"},
		{-0.04, 0.5, "deg", "0.0°", "0.0 ± 0.5°"},
		{-2.4, 0.1, "deg", "−2.40°", "−2.40 ± 0.10°"},
		{1234.5, 0, "mm", "1234 mm", "1234 mm"}, // no doubt known: three digits, whole part in full
		{0.70, 0, "", "0.7", "0.7"},
		{3, 0, "deg", "3°", "3°"},
		{math.NaN(), 1, "mm", "? mm", "? ± 1.0 mm"},
		{1, math.Inf(1), "mm", "1 mm", "1 mm"},
	}
	for _, tt := range tests {
		if got := English.Number(tt.value, tt.unit, tt.doubt); got != tt.want {
			t.Errorf("Number(%v %s, %v) = %q, want %q", tt.value, tt.unit, tt.doubt, got, tt.want)
		}
		if got := English.WithDoubt(tt.value, tt.unit, tt.doubt); got != tt.with {
			t.Errorf("WithDoubt(%v %s, %v) = %q, want %q", tt.value, tt.unit, tt.doubt, got, tt.with)
		}
	}
}

func TestDecimalCommaIsASetting(t *testing.T) {
	with := English.WithComma(true)
	if got := with.WithDoubt(3.479, "deg", 0.0749); got != "3,48 ± 0,07°" {
		t.Errorf("with the comma: %q", got)
	}
	if got := English.WithDoubt(3.479, "deg", 0.0749); got != "3.48 ± 0.07°" {
		t.Errorf("the setting leaked into the other: %q", got)
	}
	value, _ := measure.NumberValue("2.40")
	if got := with.Entered(measure.Reading{Value: value, Unit: "deg"}); got != "2,40°" {
		t.Errorf("a reading keeps its digits: %q", got)
	}
}

func TestPercentIsNeverRoundedToCertainty(t *testing.T) {
	for share, want := range map[float64]string{0: "0 %", 0.0004: "< 1 %", 0.615: "62 %", 0.9996: "> 99 %", 1: "100 %"} {
		if got := English.percent(share); got != want {
			t.Errorf("%v: %q, want %q", share, got, want)
		}
	}
}

// Only what has no doubt is certain: a spread of draws that all meet the limit is not.
func TestAllDrawsAlikeAreNoCertainty(t *testing.T) {
	limit := &checks.Limit{Key: "joint.angle", Value: 3, Unit: "deg", Sense: "max", Source: "a book"}
	for _, tt := range []struct {
		low, high, chance float64
		want              string
	}{
		{2.1, 2.6, 1, "> 99 %"}, {3.4, 3.6, 0, "< 1 %"}, {2.9, 3.2, 0.4, "40 %"}, {1, 1, 1, "100 %"}, {6, 6, 0, "0 %"},
	} {
		got := English.Finding(checks.Finding{Check: "joint.angle", Value: num(tt.low), Low: num(tt.low), High: num(tt.high), Chance: num(tt.chance), Limit: limit})
		if want := "chance that the limit is met: " + tt.want; got.Chance != want {
			t.Errorf("%g … %g: %q, want %q", tt.low, tt.high, got.Chance, want)
		}
	}
}

func TestFindingInWords(t *testing.T) {
	id := measure.ID("019ab3f1-0000-7000-8000-0000000000a1")
	f := checks.Finding{
		Check: "joint.angle", Subject: "front", State: measure.RideKerb, Unit: "deg",
		Value: num(3.479), Low: num(3.40), High: num(3.555), Chance: num(0),
		Limit:   &checks.Limit{Key: "joint.angle", Value: 3, Unit: "deg", Sense: "max", Source: "a book"},
		Verdict: checks.Out, Weakest: &checks.Weakest{Input: "shaft.slope", Reading: &id, Share: 0.61},
		Missing: []checks.Missing{{Point: "pinion.slope", State: measure.RideKerb}, {Point: "tube.od"},
			{Point: "datum.slope", State: measure.RideKerb, Setup: 2}},
		Advice:  checks.Message{Key: checks.MsgTurnPinion, Args: []any{"up"}},
		Assumed: []string{"shaft.plan", "pinion.plan", "shaft.phase"},
		Notes:   []checks.Message{{Key: checks.MsgSideView}, {Key: checks.MsgSpeedEngine, Args: []any{4823.5}}},
	}
	got := English.Finding(f)
	for _, tt := range []struct{ name, got, want string }{
		{"title", got.Title, "joint angle, front joint, at ride height, own weight"},
		{"verdict", got.Verdict, "out"},
		{"value", got.Value, "3.48°"},
		{"interval", got.Interval, "± 0.08°"},
		{"limit", got.Limit, "at most 3°"},
		{"chance", got.Chance, "chance that the limit is met: < 1 %"},
		{"why", got.Why, "weakest: shaft slope, 61 % of the doubt (reading …000000a1)"},
		{"missing", got.Missing[0], "pinion slope, at ride height, own weight"},
		{"missing anywhere", got.Missing[1], "tube outside diameter"},
		{"missing in a setup", got.Missing[2], "frame mark slope, at ride height, own weight, in setup 2"},
		{"side view, once", got.Notes[0], "side view only: shaft plan angle and pinion plan angle not read, taken as 0"},
		{"phase", got.Notes[1], "shaft yoke phase not read, taken as 0"},
		{"speed", got.Notes[2], "highest shaft speed 4824 rev/min, from the engine"},
		{"source", got.Source, "a book"},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: got %q, want %q", tt.name, tt.got, tt.want)
		}
	}
	if len(got.Notes) != 3 {
		t.Errorf("the side view was said twice: %q", got.Notes)
	}
}

func TestVerdictSaysWhatItRestsOn(t *testing.T) {
	tests := []struct {
		name string
		f    checks.Finding
		want string
	}{
		{"clear", checks.Finding{Verdict: checks.Clear}, "clear"},
		{"clear on a computed state", checks.Finding{Verdict: checks.Clear, Predicted: true}, "clear, predicted"},
		{"clear on one stated value", checks.Finding{Verdict: checks.Clear, RestsOn: []string{"gear.highest"}},
			"clear if gear highest ratio is true"},
		{"clear on two", checks.Finding{Verdict: checks.Clear, RestsOn: []string{"gear.highest", "engine.rpm_max"}},
			"clear if gear highest ratio and engine highest speed are true"},
		{"out is out whatever it rests on", checks.Finding{Verdict: checks.Out, RestsOn: []string{"gear.highest"}}, "out"},
		{"no verdict", checks.Finding{}, "not judged"},
	}
	for _, tt := range tests {
		if got := English.VerdictOf(tt.f); got != tt.want {
			t.Errorf("%s: got %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestLopsidedIntervalIsSaidAsRange(t *testing.T) {
	f := checks.Finding{Value: num(3.48), Low: num(2.9), High: num(7.5), Unit: "deg"}
	if got := English.Finding(f); got.Value != "3.5°" || got.Interval != "(2.9 … 7.5°)" {
		t.Errorf("value and range are not cut alike: %q %q", got.Value, got.Interval)
	}
	f = checks.Finding{Value: num(0.5), Low: num(0.1), High: num(1.4), Unit: "deg"}
	if got := English.Finding(checks.Finding{Check: "joint.match", Value: num(0.43), Unit: "deg"}).Value; got != "ends within 0.43°" {
		t.Errorf("a match, which is never judged, is said as %q", got)
	}
	if got := English.Finding(f).Interval; got != "(0.1 … 1.4°)" {
		t.Errorf("got %q", got)
	}
}

func num(f float64) *float64 { return &f }

// An interval that is nearly even is said as ±, but never so that a limit seems to lie within a doubt
// that does not reach it.
func TestDoubtNeverReachesALimitThatTheIntervalDoesNot(t *testing.T) {
	number := func(f float64) *float64 { return &f }
	for _, c := range []struct {
		low, high float64
		limit     *checks.Limit
		want      string
	}{
		{3.1, 7.6, &checks.Limit{Value: 3, Sense: "max"}, "(3.1 … 7.6°)"},
		{3.1, 7.6, &checks.Limit{Value: 2.7, Sense: "max"}, "± 2.4°"},
		{3.1, 7.6, nil, "± 2.4°"},
		{2.9, 7.6, &checks.Limit{Value: 3, Sense: "max"}, "± 2.4°"},
		{2.8, 7.3, &checks.Limit{Value: 7.5, Sense: "max"}, "(2.8 … 7.3°)"},
		{2.8, 7.3, &checks.Limit{Value: 1, Upper: number(7.5), Sense: "between"}, "(2.8 … 7.3°)"},
	} {
		f := checks.Finding{Check: "joint.angle", Unit: "deg", Value: number(5.2), Low: number(c.low), High: number(c.high), Limit: c.limit}
		if got := strings.ReplaceAll(English.Finding(f).Interval, "\u00a0", " "); got != c.want {
			t.Errorf("%g … %g against %+v: %q, want %q", c.low, c.high, c.limit, got, c.want)
		}
	}
}
