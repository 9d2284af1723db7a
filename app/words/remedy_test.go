package words

import (
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

func TestEveryKnobAndCostHasItsWords(t *testing.T) {
	for _, l := range Languages {
		for _, k := range remedy.Knobs {
			for _, key := range []string{"knob." + k.Key, "turn." + k.Key + ".more", "turn." + k.Key + ".less"} {
				if !l.Has(key) {
					t.Errorf("%s lacks %s", l.Tag, key)
				}
			}
		}
		for _, c := range checks.Table {
			if !l.Has("checks." + c.Group) {
				t.Errorf("%s lacks checks.%s", l.Tag, c.Group)
			}
		}
	}
}

func TestRemedyInWords(t *testing.T) {
	value := func(f float64) *float64 { return &f }
	finding := func(v checks.Verdict, at float64) checks.Finding {
		return checks.Finding{Check: "joint.angle", Subject: "front", State: measure.RideKerb, Verdict: v, Value: value(at), Unit: "deg"}
	}
	got := English.Remedy(remedy.Remedy{
		Changes: []remedy.Change{{Knob: "pinion.angle", Amount: -0.7, Unit: "deg"}},
		From:    -2.7, To: -0.7, FromOpen: true,
		Worsens: []remedy.Effect{{Before: finding(checks.Clear, 2.1), After: finding(checks.Out, 4.25)}},
		Costs:   []checks.Message{{Key: remedy.MsgCaster, Args: []any{-0.7}}},
	})
	for _, tt := range []struct{ name, got, want string }{
		{"change", got.Changes[0], "turn the axle (wedge) so that the front end of the pinion goes down by 0.7°"},
		{"span", got.Span, "−2.7° or less, as far as was looked, to −0.7°"},
		{"worsens", got.Worsens[0], "joint angle, front joint, at ride height, own weight: clear becomes out, 2.1° becomes 4.25°"},
		{"costs", got.Costs[0], "front axle: the caster changes by the same −0.7°, one to one, and with it how the vehicle steers"},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, tt.got, tt.want)
		}
	}
}

// A wrong pilot is never made to fit by drilling.
func TestAdapterFlangeIsNeverDrilledToSuit(t *testing.T) {
	if said := English.Say(remedy.MsgAdapterFlange, 15.0); !strings.Contains(said, "piloted on both sides") || !strings.Contains(said, "never drilled") {
		t.Errorf("says %q", said)
	}
}
