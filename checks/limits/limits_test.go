package limits

import (
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"
)

func TestEveryRowIsWhole(t *testing.T) {
	units := []string{"", "deg", "mm", "kg", "N", "N·m", "N/mm", "MPa", "HRC", "rev/min", "km/h", "rad/s²",
		"GPa", "kg/m³", "mm/s", "m/s²", "h", "deg/m", "count"}
	bare := []string{"slip.engaged", "travel.leaf_link", "travel.bump_rubber", "travel.bump_doubt", "windup.coast_share", "travel.length_share", "reading.spread", "estimated.share", "speed.road_factor", "verdict.chance",
		"shaft.critical_speed", "shaft.half_critical", "shaft.stress", "joint.life_exponent", "torque.net_share", "torque.manual_share",
		"torque.automatic_share", "torque.transfer_share", "torque.axle_share", "torque.tyre_friction", "match.count", "fit.answer",
		"clutch.hub", "clutch.spigot", "clutch.torque", "clutch.friction", "spline.loose", "spline.share", "spline.capacity", "spline.application",
		"spline.distribution", "spline.fatigue", "spline.wear", "spline.friction", "retainer.clamp", "retainer.nut_factor", "retainer.spread",
		"retainer.proof", "retainer.reach"}
	key := regexp.MustCompile(`^[a-z]+(\.[a-z_]+)+$`)
	seen := map[string]bool{}
	for _, r := range Table {
		switch {
		case !key.MatchString(r.Key):
			t.Errorf("%q is no key", r.Key)
		case seen[r.Key]:
			t.Errorf("%s stands twice", r.Key)
		case !slices.Contains([]Sense{Max, Min, Between, Equal, Input}, r.Sense):
			t.Errorf("%s: sense %q", r.Key, r.Sense)
		case r.Source == "" || r.Meaning == "":
			t.Errorf("%s has no source or no meaning", r.Key)
		case !slices.Contains(units, r.Unit) || (r.Unit == "") != slices.Contains(bare, r.Key):
			t.Errorf("%s: unit %q; a new unit joins the list of units above, a share or factor without one the list bare", r.Key, r.Unit)
		case r.Sense == Between && r.Upper == 0, r.Upper != 0 && (r.Sense != Between && r.Sense != Input || r.Upper <= r.Value), r.Value < 0, math.IsNaN(r.Value):
			t.Errorf("%s: %g … %g", r.Key, r.Value, r.Upper)
		}
		for _, o := range r.Others {
			if o.Source == "" || o.Upper != 0 && o.Upper <= o.Value || o.Sense == r.Sense {
				t.Errorf("%s: another source %+v", r.Key, o)
			}
		}
		seen[r.Key] = true
	}
}

func TestDefaultsOfTheJoints(t *testing.T) {
	for _, row := range []struct {
		key   string
		value float64
		unit  string
		sense Sense
	}{
		{"joint.angle", 3, "deg", Max}, {"joint.double_angle", 10, "deg", Max}, {"joint.least_angle", 0.5, "deg", Min},
		{"joint.residual", 3, "deg", Max}, {"joint.match", 1, "deg", Max},
		{"joint.torsional", 400, "rad/s²", Max}, {"joint.inertia", 1000, "rad/s²", Max},
	} {
		r, ok := Of(row.key)
		if !ok || r.Value != row.value || r.Unit != row.unit || r.Sense != row.sense {
			t.Errorf("%s: %v %g %s %s", row.key, ok, r.Value, r.Unit, r.Sense)
		}
	}
	if r, ok := Of("joint.nothing"); ok || r.Key != "" {
		t.Error("a limit that doesn't exist was found")
	}
}

func TestWhereSourcesDifferTheOthersAreShown(t *testing.T) {
	for key, least := range map[string]int{"joint.angle": 4, "joint.least_angle": 3, "joint.match": 4, "joint.torsional": 1, "joint.inertia": 2, "joint.residual": 1} {
		if r, _ := Of(key); len(r.Others) < least {
			t.Errorf("%s shows %d other sources", key, len(r.Others))
		}
	}
}

// One maker wants the odd joint of a two-piece shaft straight where all others want it bent: service
// text 1999, as SOURCES.md cites it.
func TestOtherSourceMayHoldTheOpposite(t *testing.T) {
	r, _ := Of("joint.least_angle")
	opposite := 0
	for _, o := range r.Others {
		if sense := o.SenseIn(r); sense == Max {
			opposite++
			if o.Value != 0.5 || !strings.Contains(o.Source, "service text 1999") {
				t.Errorf("at most %g: %s", o.Value, o.Source)
			}
		} else if sense != Min {
			t.Errorf("%s: sense %q", o.Source, sense)
		}
	}
	if opposite != 1 {
		t.Errorf("%d sources hold a greatest angle against the least one, want 1", opposite)
	}
}

func TestToolsForKindsAndQuantities(t *testing.T) {
	finder, ok := ToolOf("angle")
	if !ok || finder != (Tool{0.1, 0.2, 0.1, "deg"}) {
		t.Errorf("angle: %v %+v", ok, finder)
	}
	tape, _ := ToolOf("tape")
	if length, ok := ToolOf("length"); !ok || length != tape || tape != (Tool{1, 0.7, 1, "mm"}) {
		t.Errorf("a length without a tool %+v is not a tape's %+v", length, tape)
	}
	if caliper, _ := ToolOf("caliper"); caliper.Placing != 0.05 {
		t.Errorf("caliper: %+v", caliper)
	}
	if _, ok := ToolOf("spring rate"); !ok {
		t.Error("no tool for a quantity of two words")
	}
	if _, ok := ToolOf("count"); ok {
		t.Error("a count has no doubt, but a tool was found")
	}
	for _, r := range Table {
		if name, ok := strings.CutSuffix(r.Key, ".resolution"); ok {
			for _, member := range []string{".accuracy", ".placing"} {
				if other, ok := Of(name + member); !ok || other.Unit != r.Unit {
					t.Errorf("%s%s: %v in %q", name, member, ok, other.Unit)
				}
			}
		}
	}
}
