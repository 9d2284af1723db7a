package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// weighedSwap is an invented pickup: wheelbase 2700 mm, an old unit of 180 kg 100 mm behind the front
// axle line, a new one of 265 kg at the same place, laden axles of 900 and 1100 kg.
func weighedSwap(t testing.TB, front, rear string) *bench {
	s := newBench(t, measure.NewLayout())
	s.b.Instruments = []measure.Instrument{{ID: "scale", Kind: "scale", Unit: "kg"}}
	s.read("front_axle.mass", "900", measure.RideLaden, with("scale"))
	s.read("rear_axle.mass", "1100", measure.RideLaden, with("scale"))
	for _, r := range [][2]string{{"old_engine_gearbox.mass", "180"}, {"engine_gearbox.mass", "265"}} {
		s.read(r[0], r[1], measure.OffBench, with("scale"))
	}
	s.bare("old_engine_gearbox.x", "-150", "engine_gearbox.x", "-150")
	s.plate("wheelbase.length", "2700", "front_axle.limit", front, "rear_axle.limit", rear)
	return s
}

// 85 kg more, 150 mm behind the front axle: +80.278 front, +4.722 rear (rule: a truck maker's body
// mounting directives 2020, 9.1; worked apart from this code).
func TestAxleLoadsAfterTheSwap(t *testing.T) {
	s := weighedSwap(t, "1100", "1100")
	f := s.says("mass.axles|front_axle|", checks.Clear)
	if math.Abs(*f.Value-980.278) > 1e-3 {
		t.Errorf("front %.3f kg, want 980.278", *f.Value)
	}
	if f = find(t, s.run(), "mass.axles|rear_axle|"); math.Abs(*f.Value-1104.722) > 1e-3 || f.Verdict != checks.Out || f.Advice.Key != checks.MsgAxleOverloaded {
		t.Errorf("rear %.3f kg %q %v, want 1104.722, out", *f.Value, f.Verdict, f.Advice)
	}
	weighedSwap(t, "1100", "1105").says("mass.axles|rear_axle|", checks.Unsure)
	waitsFor(t, s.without("wheelbase.length").says("mass.axles|front_axle|", checks.Waiting), "wheelbase.length")
	waitsFor(t, s.without("front_axle.limit").says("mass.axles|front_axle|", checks.Waiting), "front_axle.limit")
}

// Weighed without load an axle is never clear, only out.
func TestOwnWeightAloneIsNeverClear(t *testing.T) {
	s := weighedSwap(t, "1100", "1100").without("front_axle.mass", "rear_axle.mass")
	s.under("front_axle.mass", "900", "rear_axle.mass", "1110")
	f := s.says("mass.axles|front_axle|", checks.Waiting)
	if waitsFor(t, f, "front_axle.mass"); f.Value == nil || !has(f.Notes, checks.MsgOwnWeightOnly) {
		t.Errorf("value %v, notes %v", f.Value, f.Notes)
	}
	s.says("mass.axles|rear_axle|", checks.Out)
}

// Two scales 900 mm apart with 148 and 182 kg: 330 kg, 496.36 mm from the lighter end (statics,
// worked apart from this code).
func TestTwoScalesStandInForMassAndPlace(t *testing.T) {
	s := weighedSwap(t, "1500", "1500").without("engine_gearbox.mass", "engine_gearbox.x")
	s.read("lift_front.mass", "148", measure.OffBench, with("scale"))
	s.read("lift_rear.mass", "182", measure.OffBench, with("scale"))
	s.bare("lift_front.x", "200", "lift_rear.x", "-700")
	f := s.says("mass.axles|front_axle|", checks.Clear)
	want := 900 + 330*(1-296.3636/2700) - 180*(1-150.0/2700)
	if math.Abs(*f.Value-want) > 0.01 {
		t.Errorf("front %.3f kg, want %.3f", *f.Value, want)
	}
	if len(f.Used) != 9 {
		t.Errorf("rests on %d readings, want the nine that were taken", len(f.Used))
	}
}

// mounted is an invented unit of 280 kg on mounts at (0, ±250) and (−800, 0).
func mounted(t testing.TB, x, y, rating string) *bench {
	s := newBench(t, measure.NewLayout())
	s.b.Instruments = []measure.Instrument{{ID: "scale", Kind: "scale", Unit: "kg"}}
	s.read("engine_gearbox.mass", "280", measure.OffBench, with("scale"))
	s.bare("engine_gearbox.x", x, "engine_gearbox.y", y, "mount_left.x", "0", "mount_left.y", "250", "mount_right.x", "0", "mount_right.y", "-250",
		"mount_rear.x", "-800", "mount_rear.y", "0")
	s.plate("mount_left.rating", rating, "mount_right.rating", rating, "mount_rear.rating", "150", "engine.torque_max", "300", "gear.lowest", "3.500")
	return s
}

// Static 112.7 kg left, 90.3 right, 77 rear; 1050 N·m over 0.5 m add 2100 N (statics, worked apart
// from this code).
func TestLoadsOnTheMounts(t *testing.T) {
	s := mounted(t, "-220", "20", "400")
	for mount, want := range map[string]float64{"mount_left": 112.7 + 2100/9.80665, "mount_right": 90.3 + 2100/9.80665, "mount_rear": 77} {
		f := s.says("mount.load|"+mount+"|bench", checks.Clear)
		if math.Abs(*f.Value-want) > 1e-6 || !has(f.Notes, checks.MsgStaticAndTorque) {
			t.Errorf("%s carries %.3f kg, want %.3f; notes %v", mount, *f.Value, want, f.Notes)
		}
		if has(f.Notes, checks.MsgMountPulled) != (mount != "mount_rear") {
			t.Errorf("%s: notes %v", mount, f.Notes)
		}
	}
	f := mounted(t, "-220", "20", "300").says("mount.load|mount_left|bench", checks.Out)
	if f.Advice.Key != checks.MsgStrongerMount {
		t.Errorf("advice %v", f.Advice)
	}
	mounted(t, "-220", "20", "327").says("mount.load|mount_left|bench", checks.Unsure)
	waitsFor(t, s.without("mount_rear.y").says("mount.load|mount_left|", checks.Waiting), "mount_rear.y")
	waitsFor(t, s.without("mount_left.rating").says("mount.load|mount_left|bench", checks.Waiting), "mount_left.rating")
	waitsFor(t, s.without("gear.lowest").says("mount.load|mount_left|bench", checks.Waiting), "gear.lowest")
}

// Ahead of both front mounts the unit tips whatever the mounts are rated for, and even before torque
// and ratings are known.
func TestCentreOutsideTheMountsIsOut(t *testing.T) {
	s := mounted(t, "60", "0", "2000")
	for _, mount := range []string{"mount_left", "mount_right", "mount_rear"} {
		if f := s.says("mount.load|"+mount+"|bench", checks.Out); f.Advice.Key != checks.MsgOutsideMounts {
			t.Errorf("advice %v", f.Advice)
		}
	}
	s.without("gear.lowest", "mount_left.rating").says("mount.load|mount_left|bench", checks.Out)
}

// 350 kg on two legs at 50° pull 228.4 kg each; below 30° nobody lifts whatever the sling may carry
// (rigging tables; OSHA 1910.184 and ASME B30.9, from memory). Of three or more legs two alone must carry it
// all (a building trade insurer's instruction card on slings, UBT 30481).
func TestSlings(t *testing.T) {
	for _, c := range []struct {
		legs, angle, limit string
		pull               float64
		want               checks.Verdict
		advice             string
	}{
		{"2", "50.0", "500", 228.446, checks.Clear, ""},
		{"4", "50.0", "500", 228.446, checks.Clear, ""},
		{"3", "50.0", "500", 228.446, checks.Clear, ""},
		{"2", "50.0", "200", 228.446, checks.Out, checks.MsgStrongerSling},
		{"2", "50.0", "229", 228.446, checks.Unsure, ""},
		{"2", "25.0", "2000", 414.08, checks.Out, checks.MsgTooFlat},
		{"2", "30.0", "2000", 350, checks.Unsure, ""},
	} {
		s := newBench(t, measure.NewLayout())
		s.b.Instruments = []measure.Instrument{{ID: "scale", Kind: "scale", Unit: "kg"}}
		s.tool("finder", "0.1", "0.1", "0.1")
		s.read("engine_gearbox.mass", "350", measure.OffBench, with("scale"))
		s.read("sling.angle", c.angle, measure.OffBench, with("finder"))
		s.bare("sling.legs", c.legs)
		s.plate("sling.limit", c.limit)
		f := s.says("lift.slings||bench", c.want)
		if math.Abs(*f.Value-c.pull) > 0.01 || c.advice != "" && f.Advice.Key != c.advice || !has(f.Notes, checks.MsgNoLiftPlan) {
			t.Errorf("%+v: %.3f kg, advice %v, notes %v", c, *f.Value, f.Advice, f.Notes)
		}
		if has(f.Notes, checks.MsgStiffLegs) != (c.legs != "2") {
			t.Errorf("%s legs: notes %v", c.legs, f.Notes)
		}
	}
	waitsFor(t, newBench(t, measure.NewLayout()).says("lift.slings||", checks.Waiting), "sling.limit")
}
