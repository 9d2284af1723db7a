package checks_test

import (
	"math"
	"slices"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

func has(list []checks.Message, key string) bool {
	return slices.ContainsFunc(list, func(m checks.Message) bool { return m.Key == key })
}

func TestHangingWheelsAreNeverJudgedAsRunning(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.slopes(measure.Hanging, "3", "4", "3", with("exact"))
	for _, f := range s.run() {
		if f.Verdict == checks.Clear && f.Check != "reading.state" && f.Check != "reading.setup" {
			t.Errorf("%s is clear from hanging wheels alone", f.Key())
		}
	}
	f := find(t, s.run(), "joint.residual||droop/none")
	want := []checks.Missing{{Point: "gearbox.slope", State: measure.RideKerb},
		{Point: "shaft.slope", State: measure.RideKerb}, {Point: "pinion.slope", State: measure.RideKerb}}
	if f.Verdict != checks.Waiting || !slices.Equal(f.Missing, want) || f.Value == nil || f.Advice.Key != checks.MsgLetDown {
		t.Errorf("hanging: %s, missing %v, advice %v; want it waiting for the slopes at ride height, with its value", f.Verdict, f.Missing, f.Advice)
	}

	if f := find(t, s.run(), "build.chance||"); f.Value != nil {
		t.Errorf("hanging: the build has a chance of %v, want none yet", *f.Value)
	}

	s.slopes(measure.RideKerb, "3", "4.5", "3", with("exact"))
	list := s.run()
	if f := find(t, list, "joint.residual||ride/kerb"); f.Verdict != checks.Clear {
		t.Errorf("standing: %s, want clear", f.Verdict)
	}
	if f := find(t, list, "joint.residual||droop/none"); f.Verdict != checks.Unsaid || !has(f.Notes, checks.MsgHanging) {
		t.Errorf("hanging beside standing: verdict %q, want none and the note", f.Verdict)
	}
}

// Slopes of two setups compare only through datum.slope taken in both. The vehicle stands 1.5°
// nose up in setup 2: every slope there reads 1.5 more, and nothing about the line has changed.
func TestSetupsCompareThroughTheDatum(t *testing.T) {
	whole := newBench(t, measure.NewLayout())
	whole.inPlan()
	whole.slopes(measure.RideKerb, "3", "8", "2", with("exact"))
	want := find(t, whole.run(), "joint.residual||ride/kerb")

	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.read("gearbox.slope", "3", measure.RideKerb, with("exact"), setup(1))
	s.read("shaft.slope", "9.5", measure.RideKerb, with("exact"), setup(2))
	s.read("pinion.slope", "3.5", measure.RideKerb, with("exact"), setup(2))
	f := find(t, s.run(), "reading.setup||ride/kerb")
	missing := []checks.Missing{{Point: "datum.slope", State: measure.RideKerb, Setup: 1}, {Point: "datum.slope", State: measure.RideKerb, Setup: 2}}
	if f.Verdict != checks.Waiting || !slices.Equal(f.Missing, missing) {
		t.Errorf("without datums: %s, missing %v; want it waiting for both", f.Verdict, f.Missing)
	}
	if f := find(t, s.run(), "joint.residual||ride/kerb"); f.Verdict != checks.Waiting || f.Value != nil {
		t.Errorf("without datums the residual is %s %v, want waiting", f.Verdict, f.Value)
	}

	s.read("datum.slope", "-0.5", measure.RideKerb, with("exact"), setup(1))
	s.read("datum.slope", "1", measure.RideKerb, with("exact"), setup(2))
	list := s.run()
	got := find(t, list, "joint.residual||ride/kerb")
	if math.Abs(number(t, got.Value)-number(t, want.Value)) > 1e-9 {
		t.Errorf("tied by the datum the residual is %.6f, want %.6f as in one setup", *got.Value, *want.Value)
	}
	if f := find(t, list, "reading.setup||ride/kerb"); f.Verdict != checks.Clear || !has(f.Notes, checks.MsgSetupsBridged) {
		t.Errorf("tied by the datum reading.setup is %s, want clear with a note", f.Verdict)
	}
}

func TestContradictionsAndOddValuesAreNamed(t *testing.T) {
	odd := measure.State{Ride: measure.Droop, Load: measure.Kerb}
	for _, c := range []struct {
		name    string
		state   measure.State
		shaft   string
		heights [2]string
		verdict checks.Verdict
		advice  string
	}{
		{"hanging yet loaded", odd, "4", [2]string{"500", "500"}, checks.Out, checks.MsgContradiction},
		{"standing yet unloaded", measure.State{Ride: measure.AtRide, Load: measure.NoLoad}, "4", [2]string{"500", "500"}, checks.Out, checks.MsgContradiction},
		{"a slope no shaft has", measure.RideKerb, "85", [2]string{"500", "500"}, checks.Unsure, checks.MsgImplausible},
		{"heights 12 mm apart", measure.RideKerb, "4", [2]string{"500", "512"}, checks.Unsure, checks.MsgHeights},
		{"heights 5 mm apart", measure.RideKerb, "4", [2]string{"500", "505"}, checks.Clear, ""},
	} {
		s := newBench(t, measure.NewLayout())
		s.read("gearbox.slope", "3", c.state, height(c.heights[0]))
		s.read("shaft.slope", c.shaft, c.state, height(c.heights[1]))
		f := find(t, s.run(), "reading.state||"+c.state.String())
		if f.Verdict != c.verdict || f.Advice.Key != c.advice {
			t.Errorf("%s: %s, advice %q; want %s, %q", c.name, f.Verdict, f.Advice.Key, c.verdict, c.advice)
		}
	}
}

// 12 mm on a shaft of 1,000 mm turn it by atan(12/1000) = 0.6875°: so far off, rectangular.
func TestAnotherHeightWidens(t *testing.T) {
	width := func(mm string) float64 {
		s := newBench(t, measure.NewLayout())
		s.inPlan()
		s.read("gearbox.slope", "3", measure.RideKerb, with("exact"), height("500"))
		s.read("shaft.slope", "8", measure.RideKerb, with("exact"), height(mm))
		s.read("shaft.length", "1000", measure.OffBench, basis(measure.Stated))
		f := find(t, s.run(), "joint.angle|front|ride/kerb")
		if (mm == "512") != has(f.Notes, checks.MsgHeightWidened) {
			t.Errorf("height %s: notes %v", mm, f.Notes)
		}
		return *f.High - *f.Low
	}
	if got := width("504"); got != 0 {
		t.Errorf("4 mm apart widens by %g, want nothing", got)
	}
	if got, want := width("512"), 2*0.9*0.6875; math.Abs(got-want) > 2e-3 {
		t.Errorf("12 mm apart: interval %.4f wide, want %.4f", got, want)
	}
}

func TestWindUpIsJudgedBesideTheState(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.slopes(measure.RideKerb, "3", "5.6", "2.4", with("exact"))
	if list := s.run(); slices.ContainsFunc(list, func(f checks.Finding) bool { return f.State.Case != "" }) {
		t.Error("wound-up states without a stated wind-up")
	}
	s.read("pinion.windup_drive", "2.000", measure.OffBench, basis(measure.Stated))
	s.read("pinion.windup_coast", "1.000", measure.OffBench, basis(measure.Stated))
	list := s.run()
	for key, want := range map[string]float64{"joint.angle|rear|ride/kerb": 3.2,
		"joint.angle|rear|ride/kerb/drive": 1.2, "joint.angle|rear|ride/kerb/coast": 4.2} {
		f := find(t, list, key)
		if math.Abs(number(t, f.Value)-want) > 1e-9 {
			t.Errorf("%s = %g, want %g", key, *f.Value, want)
		}
	}
	if f := find(t, list, "joint.angle|rear|ride/kerb/coast"); !slices.Equal(f.RestsOn, []string{"pinion.windup_coast"}) {
		t.Errorf("rests on %v, want the stated wind-up", f.RestsOn)
	}
}

// What the wind-up does not move is said once, in the state itself, and does not rest on it.
func TestWindUpSpeaksOnlyWhereItMatters(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.slopes(measure.RideKerb, "3", "5.6", "2.4", with("exact"))
	s.read("pinion.windup_drive", "2.000", measure.OffBench, basis(measure.Stated))
	list := s.run()
	for _, f := range list {
		if f.Check == "joint.angle" && f.Subject == "front" && f.State.Case != "" {
			t.Errorf("%s: the pinion does not touch the front joint", f.Key())
		}
	}
	f := find(t, list, "joint.angle|front|ride/kerb")
	if len(f.RestsOn) != 0 || len(f.Used) != 4 { // two slopes, two plan angles
		t.Errorf("front joint uses %d readings and rests on %v; want its own two slopes and two plan angles", len(f.Used), f.RestsOn)
	}
}

// What nobody has begun to read is told apart from what a person is at work on.
func TestUntouchedIsWhatNobodyBeganToRead(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.read("gearbox.slope", "3", measure.RideKerb)
	for _, f := range s.run() {
		begun := f.Check[:6] == "joint." || f.Check[:6] == "readin" || f.Check == "build.chance"
		if f.Untouched && begun && f.Check != "joint.torque" && f.Check != "joint.couple" && f.Check != "joint.life" {
			t.Errorf("%s is called untouched after a slope", f.Key())
		}
		if f.Check == "clutch.release" && !f.Untouched {
			t.Errorf("%s is called begun after a slope", f.Key())
		}
	}
}
