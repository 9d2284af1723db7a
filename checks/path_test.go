package checks_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks"
	"yokebook/measure"
)

// Two shafts: the front one stays with the body, the rear one swings from the centre joint. The rear
// two joints are then those of a one-piece line with the centre joint in the gearbox's place.
func TestRearShaftOfTwoSwings(t *testing.T) {
	one, two := newBench(t, onLinks()), newBench(t, func() measure.Layout { l := onLinks(); l.Shafts = 2; return l }())
	for _, s := range []*bench{one, two} {
		s.inPlan()
		axleOnLinks(s)
		s.mm(measure.RideKerb, map[string]float64{"hub.height": 500})
		s.mm(measure.Hanging, map[string]float64{"hub.height": 600, "shaft.length": 951.991})
		s.read("datum.slope", "0", measure.Hanging, with("exact"))
		s.read("datum.slope", "0", measure.RideKerb, with("exact"))
		s.slopes(measure.Hanging, "3", "9.9810", digits(2-1.1451), with("exact"))
	}
	two.read("front_shaft.slope", "3", measure.Hanging, with("exact"))
	two.read("front_shaft.plan", "0", measure.RideKerb, with("exact"))
	a, b := one.run(), two.run()
	for was, is := range map[string]string{"front": "centre", "rear": "rear"} {
		want, got := find(t, a, "joint.angle|"+was+"|ride/kerb"), find(t, b, "joint.angle|"+is+"|ride/kerb")
		if !got.Predicted || math.Abs(*want.Value-*got.Value) > 1e-9 {
			t.Errorf("%s joint of two shafts %.4f, of one %.4f", is, *got.Value, *want.Value)
		}
	}
	if f := find(t, b, "joint.angle|front|ride/kerb"); math.Abs(*f.Value) > 1e-9 {
		t.Errorf("front joint of two shafts %.4f, want 0: neither of its axes moves", *f.Value)
	}
}

// Whatever is read of an axle's path: never a panic, never a number that is none, never a verdict
// without an interval, and the same findings twice.
func TestAnyPathGivesNumbersOrWaits(t *testing.T) {
	keys := append([]string{"slip.exposed", "slip.usable", "slip_male.major", "spring.rate", "engine.torque_max", "gear.lowest", "axle.ratio", "datum.slope",
		"hub.height", "bump.gap", "bump.rubber", "shaft.length", "rear_joint.x", "rear_joint.z", "output_shaft.major"},
		"spring.front_half", "spring.rear_half", "spring.eye_rise", "spring.eye_offset", "spring.pad_z")
	for _, link := range []string{"lower_link.", "upper_link."} {
		for _, p := range []string{"chassis_x", "chassis_z", "axle_x", "axle_z"} {
			keys = append(keys, link+p)
		}
	}
	states := []measure.State{measure.Hanging, measure.RideKerb, measure.RideLaden, measure.OnBump}
	rapid.Check(t, func(t *rapid.T) {
		l := measure.NewLayout()
		pick := func(what string, from ...string) string { return rapid.SampledFrom(from).Draw(t, what) }
		l.Axle, l.Slip = pick("axle", "leaf", "links", "fixed"), pick("slip", "shaft", "gearbox")
		l.Drives, l.FixedEye, l.Shafts = pick("drives", "rear", "front"), pick("eye", "", "front", "rear"), rapid.IntRange(1, 2).Draw(t, "shafts")
		b := &measure.Build{ID: buildID, Title: "invented", Layout: l}
		add := func(key string, st measure.State) {
			p, _ := measure.PointOf(key)
			if !p.In(l) || rapid.IntRange(0, 4).Draw(t, key) == 0 {
				return
			}
			v, _ := measure.NumberValue(fmt.Sprintf("%.1f", rapid.Float64Range(p.Low, p.High).Draw(t, key+" value")))
			b.Readings = append(b.Readings, measure.Reading{ID: measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", len(b.Readings)+1)), Point: key,
				Value: v, Unit: p.Quantity.Base(), Basis: measure.Measured, Ride: st.Ride, Load: st.Load, Setup: 1})
		}
		for _, st := range states {
			for _, key := range []string{"gearbox.slope", "front_shaft.slope", "shaft.slope", "pinion.slope", "hub.height", "shaft.length", "slip.exposed"} {
				add(key, st)
			}
		}
		for _, key := range keys {
			add(key, rapid.SampledFrom(states).Draw(t, "state"))
		}
		for _, f := range checks.Run(b, nil).Findings {
			for _, n := range []*float64{f.Value, f.Low, f.High, f.Chance} {
				if n != nil && (math.IsNaN(*n) || math.IsInf(*n, 0)) {
					t.Fatalf("%s holds %v", f.Key(), *n)
				}
			}
			judged := f.Verdict == checks.Clear || f.Verdict == checks.Out || f.Verdict == checks.Unsure
			if judged && (f.Value == nil || f.Low == nil || f.High == nil) {
				t.Fatalf("%s is %s without an interval", f.Key(), f.Verdict)
			}
		}
		for _, row := range checks.Sweep(b).Rows {
			for _, s := range append(row.Angles, row.Length, row.Slide, row.Exposed, row.Residual, row.Ripple) {
				if s != nil && !(s.Low <= s.Value && s.Value <= s.High) {
					t.Fatalf("at %g: %+v", row.HeightMM, *s)
				}
			}
		}
	})
}
