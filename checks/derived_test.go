package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// surveyed is an invented vehicle without a shaft: flanges 1200 apart and 150 in height, yokes of 90
// and 70 mm, gearbox up 3°, pinion down 2°.
func surveyed(t testing.TB) *bench {
	s := newBench(t, measure.NewLayout())
	s.tool("exact", "0", "0", "0")
	s.under("shaft.gap", "1200", "front_flange.z", "650", "rear_flange.z", "500")
	s.bare("front_end.face_to_joint", "90.0", "rear_end.face_to_joint", "70.0")
	s.read("gearbox.slope", "3.0", measure.RideKerb, with("exact"))
	s.read("pinion.slope", "-2.0", measure.RideKerb, with("exact"))
	return s
}

// The shaft between the flanges, by vectors worked apart from this code: 1041.29 mm at 8.1564°. So
// the front joint works at 5.156° and the rear one at 10.156°.
func TestShaftThatDoesNotExistYet(t *testing.T) {
	list := surveyed(t).run()
	front, rear := find(t, list, "joint.angle|front|ride/kerb"), find(t, list, "joint.angle|rear|ride/kerb")
	if math.Abs(*front.Value-5.1564) > 1e-3 || math.Abs(*rear.Value-10.1564) > 1e-3 {
		t.Errorf("angles %.4f and %.4f, want 5.1564 and 10.1564", *front.Value, *rear.Value)
	}
	if front.Weakest == nil || len(front.Used) != 7 || width(front) < 0.1 {
		t.Errorf("rests on %v with %.3f of doubt: want the seven real readings and theirs", front.Used, width(front))
	}
	s := surveyed(t)
	s.bare("tube.od", "76.20", "tube.wall", "2.10")
	s.plate("tube.material", "1", "engine.rpm_max", "4000", "gear.highest", "1.000", "shaft.mass", "3.996") // the tube's own
	f := s.says("shaft.critical_speed||", checks.Clear)
	want := 8787.29 * 1200 * 1200 / 1041.2871 / 1041.2871
	if math.Abs(*f.Value-want) > 1 {
		t.Errorf("bending speed %.1f, want %.1f", *f.Value, want)
	}
}

func TestSurveyNamesWhatIsMissing(t *testing.T) {
	f := surveyed(t).without("rear_flange.z").says("joint.angle|front|ride/kerb", checks.Waiting)
	if waitsFor(t, f, "rear_flange.z"); len(f.Missing) != 1 {
		t.Errorf("waits for %v, not for the rest of the survey alone", f.Missing)
	}
	f = surveyed(t).without("rear_flange.z", "front_flange.z", "shaft.gap", "front_end.face_to_joint", "rear_end.face_to_joint").
		says("joint.angle|front|ride/kerb", checks.Waiting)
	waitsFor(t, f, "shaft.slope")
}

// What is read comes first; where it differs from the survey that is a finding of its own.
func TestReadAndSurveyed(t *testing.T) {
	for slope, want := range map[string]checks.Verdict{"8.1": checks.Clear, "12.0": checks.Out, "9.1": checks.Unsure} {
		s := surveyed(t)
		s.read("shaft.slope", slope, measure.RideKerb, with("exact"))
		f := s.says("derived.agreement|shaft.slope|ride/kerb", want)
		if f.Unit != "deg" || len(f.Used) != 8 || !has(f.Notes, checks.MsgReadAndDerived) {
			t.Errorf("unit %q, %d readings, notes %v", f.Unit, len(f.Used), f.Notes)
		}
		if want == checks.Out && f.Advice.Key != checks.MsgLookAtBoth {
			t.Errorf("advice %v", f.Advice)
		}
		read := number(t, value2(slope))
		if got := *find(t, s.run(), "joint.angle|front|ride/kerb").Value; math.Abs(got-(read-3)) > 1e-6 {
			t.Errorf("front joint %.4f, want that of the slope read, %.4f", got, read-3)
		}
	}
	for _, f := range surveyed(t).run() {
		if f.Check == "derived.agreement" {
			t.Errorf("%s speaks although nothing was read twice", f.Key())
		}
	}
}

func value2(token string) *float64 { f, _ := value(token).Float(); return &f }

// Plan angles from offsets and wheelbases: atan(26.2/500) = 3.0°, atan(48.9/1400) = 2.0005° (worked
// apart from this code).
func TestPlanAnglesFromStrings(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.tool("exact", "0", "0", "0")
	s.slopes(measure.RideKerb, "0.0", "0.0", "0.0", with("exact"))
	s.under("gearbox.y_front", "26.2", "gearbox.y_rear", "0.0", "gearbox.y_span", "500", "wheelbase.left", "2648.9", "wheelbase.right", "2600.0",
		"track.width", "1400", "front_flange.y", "0.0", "rear_flange.y", "0.0", "shaft.length", "1000")
	list := s.run()
	front, rear := find(t, list, "joint.angle|front|ride/kerb"), find(t, list, "joint.angle|rear|ride/kerb")
	if math.Abs(*front.Value-3) > 0.01 || math.Abs(*rear.Value-2.0005) > 0.01 {
		t.Errorf("angles %.4f and %.4f, want 3.0 and 2.0 in plan", *front.Value, *rear.Value)
	}
	if len(front.Assumed) != 0 || has(front.Notes, checks.MsgSideView) {
		t.Errorf("assumed %v, notes %v: the plan angles are known", front.Assumed, front.Notes)
	}
	s.read("pinion.plan", "-2.0", measure.RideKerb, with("exact"))
	s.says("derived.agreement|pinion.plan|", checks.Out)
}

func TestTwoWeighings(t *testing.T) {
	for mass, want := range map[string]checks.Verdict{"331": checks.Clear, "380": checks.Out, "340": checks.Unsure} {
		s := newBench(t, measure.NewLayout())
		s.b.Instruments = []measure.Instrument{{ID: "scale", Kind: "scale", Unit: "kg"}}
		for _, r := range [][2]string{{"lift_front.mass", "148"}, {"lift_rear.mass", "182"}, {"engine_gearbox.mass", mass}} {
			s.read(r[0], r[1], measure.OffBench, with("scale"))
		}
		s.bare("lift_front.x", "200", "lift_rear.x", "-700")
		s.says("derived.agreement|engine_gearbox.mass|bench", want)
	}
}

// Between two setups the vehicle was moved: heights above the floor taken in both say nothing of the
// shaft's slope. The gap alone depends on no setup.
func TestFlangeHeightsOfTwoSetupsDontGoTogether(t *testing.T) {
	s := surveyed(t)
	for i := range s.b.Readings {
		if s.b.Readings[i].Point == "rear_flange.z" {
			setup(2)(&s.b.Readings[i])
		}
	}
	f := s.says("joint.angle|front|ride/kerb", checks.Waiting)
	if len(f.Missing) != 1 || f.Missing[0] != (checks.Missing{Point: "front_flange.z", State: measure.RideKerb, Setup: 2}) {
		t.Errorf("waits for %v, want the front flange's height in setup 2", f.Missing)
	}
	s = surveyed(t)
	s.read("shaft.gap", "1200", measure.RideKerb, setup(2))
	if f := find(t, s.run(), "joint.angle|front|ride/kerb"); f.Value == nil || math.Abs(*f.Value-5.1564) > 1e-3 {
		t.Errorf("%s, missing %v: the slope is of the setup of the heights", f.Verdict, f.Missing)
	}
}
