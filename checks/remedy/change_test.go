package remedy_test

import (
	"math"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// value is the only reading of a point in a state.
func value(t testing.TB, b *measure.Build, point string, s measure.State) float64 {
	t.Helper()
	for _, r := range b.Readings {
		if r.Point == point && r.State() == s {
			x, _ := r.Number()
			return r.Along(x)
		}
	}
	t.Fatalf("no %s in %s", point, s)
	return 0
}

func applied(t testing.TB, b *measure.Build, knob string, amount float64) *measure.Build {
	t.Helper()
	changed, ok := remedy.Apply(b, remedy.Change{Knob: knob, Amount: amount})
	if !ok {
		t.Fatalf("%s by %g can't be applied", knob, amount)
	}
	return changed
}

// A build with nothing changed judges as it did, replaced and struck readings left out.
func TestNothingTurnedNothingChanged(t *testing.T) {
	for _, name := range []string{"demo.json", "steep.json"} {
		b := invented(t, name)
		same, ok := remedy.Apply(b)
		if !ok || !reflect.DeepEqual(checks.Run(same, nil).Findings, checks.Run(b, nil).Findings) {
			t.Errorf("%s judges otherwise without any change", name)
		}
		if !reflect.DeepEqual(b, invented(t, name)) {
			t.Errorf("%s was changed", name)
		}
	}
}

// located is a line at ride height with everything that moves when its ends do, exact tools.
func located(t testing.TB, slip string) *bench {
	l := measure.NewLayout()
	l.Slip = slip
	s := newBench(t, l)
	s.line("2.0", "8.0", "3.0")
	s.tool("rule", "mm", "0")
	for _, p := range [][2]string{{"shaft.length", "1000"}, {"slip.exposed", "50"}, {"rear_joint.x", "250"}, {"rear_joint.z", "40"}, {"obstacle.gap", "80"},
		{"obstacle.station", "500"}, {"obstacle.side", "1"}} {
		if q, _ := measure.PointOf(p[0]); q.Quantity == measure.Length {
			s.read(p[0], p[1], measure.RideKerb, "rule")
		} else {
			s.read(p[0], p[1], measure.RideKerb)
		}
	}
	s.read("mount_left.x", "0", measure.OffBench, "rule")
	s.read("mount_right.x", "0", measure.OffBench, "rule")
	s.read("mount_rear.x", "-800", measure.OffBench, "rule")
	return s
}

// The numbers are worked apart from this code, with the joints as points of the side view: F at 0, 0 and
// R = F − 1000·(cos 8°, sin 8°).
func TestWhatIsReadAfterAChange(t *testing.T) {
	ride := measure.RideKerb
	for _, tt := range []struct {
		name, slip, knob string
		amount           float64
		point            string
		want             float64
		source           string
	}{
		{"pinion up turns the pinion", "shaft", "pinion.angle", 2, "pinion.slope", 5, "3 + 2"},
		{"and lifts its joint, so that the shaft lies flatter", "shaft", "pinion.angle", 2, "shaft.slope", 7.4942, "atan2(139.173 − 8.7005, 990.268 + 1.5484): R goes up 250·sin 2° + 40·(cos 2° − 1) and back 40·sin 2° + 250·(1 − cos 2°)"},
		{"and the joint further up", "shaft", "pinion.angle", 2, "rear_joint.z", 48.7005, "250·sin 2° + 40·cos 2°"},
		{"and comes nearer to what stands above it", "shaft", "pinion.angle", 2, "obstacle.gap", 75.6498, "80 − half of 8.7005"},
		{"mount up tips the gearbox nose down", "shaft", "gearbox.mount", 14, "gearbox.slope", 0.99745, "2 − atan(14/800)"},
		{"and lifts its joint by as much", "shaft", "gearbox.mount", 14, "shaft.slope", 8.7915, "atan2(139.173 + 13.998, 990.268 + 0.1225): F 800 behind the engine's mounts turns by 1.00255°"},
		{"all of it up leaves the gearbox", "shaft", "gearbox.height", 20, "gearbox.slope", 2, "unturned"},
		{"but not the shaft", "shaft", "gearbox.height", 20, "shaft.slope", 9.1315, "atan2(139.173 + 20, 990.268)"},
		{"which is drawn out", "shaft", "gearbox.height", 20, "slip.exposed", 52.9787, "length of (990.268, 159.173) − 1000"},
		{"a longer shaft is drawn out less", "shaft", "shaft.longer", 12, "slip.exposed", 38, "50 − 12"},
		{"and as long between its joints as before", "shaft", "shaft.longer", 12, "shaft.length", 1000, "the joints stay"},
		{"with the slip in the gearbox it is longer", "gearbox", "shaft.longer", 12, "shaft.length", 1012, "1000 + 12"},
		{"and pushes the yoke in", "gearbox", "shaft.longer", 12, "slip.exposed", 37.9346, "t of |R − F − t·(−cos 2°, −sin 2°)| = 1012"},
		{"lifting then draws out along the output axis", "gearbox", "gearbox.height", 20, "slip.exposed", 53.0023, "t of |(990.268, 159.173) − t·(cos 2°, sin 2°)| = 1000"},
	} {
		s := located(t, tt.slip)
		got := value(t, applied(t, s.b, tt.knob, tt.amount), tt.point, ride)
		if math.Abs(got-tt.want) > 0.0005 {
			t.Errorf("%s: %s is %.4f, want %.4f (%s)", tt.name, tt.point, got, tt.want, tt.source)
		}
	}
}

// Each simple knob moves what its words say, the way its words say: more is thicker, nearer to the gearbox,
// clockwise, stronger.
func TestSimpleKnobsMoveTheirReadings(t *testing.T) {
	for _, row := range []struct {
		knob, point string
		amount, by  float64
	}{
		{"clutch.bearing", "bearing.height", 3, 3}, // counts from the gearbox's face toward the fingers
		{"clutch.flywheel", "flywheel.face", 3, 3}, // u counts toward the gearbox
		{"clutch.adapter", "adapter.thickness", 3, 3},
		{"clutch.disc", "disc_hub.front", -2, -2}, // gearbox side positive
		{"clutch.disc", "disc_hub.rear", -2, -2},
		{"clutch.spigot_bearing", "spigot.face", 3, 3}, // engine side positive
		{"obstacle.away", "obstacle.gap", 3, 3},
		{"slip.spline", "slip.usable", 3, 3},
		{"slip.spline", "slip_male.length", 3, 3},
		{"slip.spline", "slip_female.length", 3, 3},
		{"shaft.phase", "shaft.phase", -5, -5}, // clockwise from behind positive
		{"engine.speed", "engine.rpm_max", -100, -100},
		{"retainer.torque", "retainer.torque", 10, 10},
		{"sling.angle", "sling.angle", 5, 5},
		{"engine.place", "engine_gearbox.x", -10, -10}, // forward positive
		{"mount_left.rating", "mount_left.rating", 10, 10},
		{"mount_right.rating", "mount_right.rating", 10, 10},
		{"mount_rear.rating", "mount_rear.rating", 10, 10},
	} {
		s := newBench(t, measure.NewLayout())
		s.bare("bearing.height", "70", "flywheel.face", "25", "adapter.thickness", "10", "disc_hub.front", "-5", "disc_hub.rear", "20", "spigot.face", "5",
			"obstacle.gap", "60", "slip.usable", "60", "slip_male.length", "70", "slip_female.length", "70", "shaft.phase", "0", "retainer.torque", "100",
			"sling.angle", "40", "engine_gearbox.x", "-200", "mount_left.rating", "100", "mount_right.rating", "100", "mount_rear.rating", "100")
		s.plate("engine.rpm_max", "4000", "gear.highest", "1")
		was := value(t, s.b, row.point, measure.OffBench)
		if is := value(t, applied(t, s.b, row.knob, row.amount), row.point, measure.OffBench); is != was+row.by {
			t.Errorf("%s by %g: %s was %g, is %g", row.knob, row.amount, row.point, was, is)
		}
	}
}

// Turning a knob and turning it back changes nothing but the last digits.
func TestTurnedBackIsAsBefore(t *testing.T) {
	knobs := []string{"pinion.angle", "gearbox.mount", "gearbox.height", "shaft.longer", "shaft.phase"}
	rapid.Check(t, func(rt *rapid.T) {
		s := located(t, rapid.SampledFrom([]string{"shaft", "gearbox"}).Draw(rt, "slip"))
		k, _ := remedy.KnobOf(rapid.SampledFrom(knobs).Draw(rt, "knob"))
		amount := float64(rapid.IntRange(-20, 20).Draw(rt, "steps")) * k.Step
		there, ok := remedy.Apply(s.b, remedy.Change{Knob: k.Key, Amount: amount})
		if !ok {
			rt.Fatalf("%s by %g can't be applied", k.Key, amount)
		}
		back, _ := remedy.Apply(there, remedy.Change{Knob: k.Key, Amount: -amount})
		for i, r := range s.b.Readings {
			was, _ := r.Number()
			is, _ := back.Readings[i].Number()
			if math.Abs(was-is) > 0.2 { // turned about another place on the way back: second order
				rt.Fatalf("%s by %g and back: %s was %g, is %g", k.Key, amount, r.Point, was, is)
			}
		}
	})
}

// A stated value keeps the doubt that its last digit leaves, whatever digits the new one needs.
func TestStatedValuesKeepTheirDoubt(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.line("3.0", "4.0", "3.0")
	s.state("bearing.height", "70")
	changed := applied(t, s.b, "clutch.bearing", 2.5)
	for _, r := range changed.Readings {
		if r.Point == "bearing.height" {
			if x, _ := r.Number(); x != 72.5 {
				t.Errorf("70 and 2.5 are %g", x)
			}
			if tool := checks.ToolOf(changed, r); tool != (checks.Tool{Accuracy: 0.5}) {
				t.Errorf("a whole number of mm has become %+v", tool)
			}
		}
	}
}

// What can't be true of any vehicle is not offered.
func TestImpossibleChangesAreRefused(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.bare("adapter.thickness", "5.00")
	if _, ok := remedy.Apply(s.b, remedy.Change{Knob: "clutch.adapter", Amount: -6}); ok {
		t.Error("a plate of −1 mm was made")
	}
	if _, ok := remedy.Apply(s.b, remedy.Change{Knob: "clutch.adapter", Amount: -5}); !ok {
		t.Error("a plate was not left out")
	}
	if _, ok := remedy.Apply(s.b, remedy.Change{Knob: "pinion.angle", Amount: 1}); ok {
		t.Error("a pinion that nobody read was turned")
	}
	if _, ok := remedy.Apply(s.b, remedy.Change{Knob: "no.such", Amount: 1}); ok {
		t.Error("an unknown knob was turned")
	}
}

// On a front axle the pinion stands at the front end of the shaft: its nose rises when its front end drops,
// and the caster goes with the housing.
func TestFrontAxleTellsTheCaster(t *testing.T) {
	l := measure.NewLayout()
	l.Drives = "front"
	s := newBench(t, l)
	s.line("3.0", "-4.0", "2.0")
	x := troubleOf(t, s.solve(), "joint.residual", "")
	for _, w := range x.Singles {
		if w.Changes[0].Knob != "pinion.angle" {
			continue
		}
		deg, keys := w.Changes[0].Amount, map[string]any{}
		for _, c := range w.Costs {
			if len(c.Args) > 0 {
				keys[c.Key] = c.Args[0]
			}
		}
		nose := remedy.MsgPinionOil
		if deg > 0 {
			nose = remedy.MsgPinionDown
		}
		if keys[remedy.MsgCaster] != deg || keys[nose] != math.Abs(deg) {
			t.Errorf("turned by %g it costs %v", deg, w.Costs)
		}
		return
	}
	t.Error("the pinion is no way out")
}
