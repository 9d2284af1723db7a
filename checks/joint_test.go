package checks_test

import (
	"math"
	"slices"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

func twoPiece() measure.Layout {
	l := measure.NewLayout()
	l.Shafts = 2
	return l
}

// exactly reads slopes with a tool that is good to nothing, plan angles and phases of 0.
func exactly(t testing.TB, l measure.Layout, slopes map[string]string) *bench {
	s := newBench(t, l)
	s.inPlan()
	if l.Shafts == 2 {
		s.read("front_shaft.plan", "0", measure.RideKerb, with("exact"))
		s.read("front_shaft.phase", "0", measure.OffBench, with("exact"))
	}
	for _, p := range []string{"gearbox.slope", "front_shaft.slope", "shaft.slope", "pinion.slope"} {
		if v, ok := slopes[p]; ok {
			s.read(p, v, measure.RideKerb, with("exact"))
		}
	}
	return s
}

// Three joints of one plane, yokes of both shafts in line: the first and the last add against the
// middle one (+ − +), so 1.5, 4 and 3 leave 2.181 and 0.5, 3, 3 leave 0.500: exact product rule
// cos β_R = cos β₁·cos β₃/cos β₂ or its inverse, worked apart from this code.
func TestTwoPieceLine(t *testing.T) {
	for _, c := range []struct {
		slopes   [4]string
		angles   [3]float64
		residual float64
	}{
		{[4]string{"0", "1.5", "5.5", "2.5"}, [3]float64{1.5, 4, 3}, 2.181},
		{[4]string{"0", "0.5", "3.5", "0.5"}, [3]float64{0.5, 3, 3}, 0.500},
	} {
		s := exactly(t, twoPiece(), map[string]string{"gearbox.slope": c.slopes[0], "front_shaft.slope": c.slopes[1],
			"shaft.slope": c.slopes[2], "pinion.slope": c.slopes[3]})
		list := s.run()
		for i, subject := range []string{"front", "centre", "rear"} {
			if got := *find(t, list, "joint.angle|"+subject+"|ride/kerb").Value; math.Abs(got-c.angles[i]) > 1e-6 {
				t.Errorf("%s joint %.4f, want %.4f", subject, got, c.angles[i])
			}
		}
		if got := *find(t, list, "joint.residual||ride/kerb").Value; math.Abs(got-c.residual) > 5e-4 {
			t.Errorf("residual %.4f, want %.4f", got, c.residual)
		}
		if got, want := *find(t, list, "joint.match||ride/kerb").Value, math.Abs(c.angles[1]-c.angles[2]); math.Abs(got-want) > 1e-6 {
			t.Errorf("match %.4f, want %.4f: that of the two joints nearest the axle", got, want)
		}
	}
}

// The tube runs unevenly however well the ends cancel: α ≈ ω²β² at constant input speed. 10° at
// 3000 rev/min is 3023 rad/s² (exact peak of the textbook acceleration, worked apart from this
// code), 5° is 752.5. On a front axle drive comes from the rear end.
func TestInertiaFromEitherEnd(t *testing.T) {
	for _, c := range []struct{ drives, drive, coast string }{{"rear", "10", "5"}, {"front", "5", "10"}} {
		l := measure.NewLayout()
		l.Drives = c.drives
		first, last := "gearbox.slope", "pinion.slope"
		if c.drives == "front" {
			first, last = last, first
		}
		s := exactly(t, l, map[string]string{first: "0", "shaft.slope": "10", last: "5"})
		s.read("engine.rpm_max", "3000", measure.OffBench, with(""), basis(measure.Stated))
		s.read("gear.highest", "1.00000", measure.OffBench, basis(measure.Stated))
		want := map[string]float64{"10": 3023, "5": 752.5}
		list := s.run()
		for key, angle := range map[string]string{"joint.inertia_drive||ride/kerb": c.drive, "joint.inertia_coast||ride/kerb": c.coast} {
			if got := *find(t, list, key).Value; math.Abs(got-want[angle]) > 0.5 {
				t.Errorf("drives %s: %s = %.1f, want %.1f", c.drives, key, got, want[angle])
			}
		}
	}
}

// Highest shaft speed = engine speed / (highest gear · transfer); road figures serve where the
// engine's are absent. 100 km/h on a rolled radius of 306.74 mm with 3.73 is 3225.6 rev/min
// (205/55 R16 at 3.05 × its outside diameter, ETRTO, from memory; worked apart from this code).
func TestHighestShaftSpeed(t *testing.T) {
	for _, c := range []struct {
		name string
		read map[string]string
		want float64
		note string
	}{
		{"overdrive is faster than the engine", map[string]string{"engine.rpm_max": "4000", "gear.highest": "0.8"}, 5000, checks.MsgSpeedEngine},
		{"transfer box", map[string]string{"engine.rpm_max": "4000", "gear.highest": "1.0", "transfer.high": "1.25"}, 3200, checks.MsgSpeedEngine},
		{"from the road, with a tenth more", map[string]string{"road.speed_max": "100", "axle.ratio": "3.73", "tyre.radius": "306.74"}, 3225.6 * 1.1, checks.MsgSpeedRoad},
		{"engine figures come first", map[string]string{"engine.rpm_max": "4000", "gear.highest": "1.0", "road.speed_max": "100",
			"axle.ratio": "3.73", "tyre.radius": "306.74"}, 4000, checks.MsgSpeedEngine},
	} {
		s := exactly(t, measure.NewLayout(), map[string]string{"gearbox.slope": "0", "shaft.slope": "3", "pinion.slope": "0"})
		for _, p := range []string{"engine.rpm_max", "gear.highest", "transfer.high", "road.speed_max", "axle.ratio", "tyre.radius"} {
			if v, ok := c.read[p]; ok {
				s.read(p, v, measure.OffBench, basis(measure.Stated))
			}
		}
		f := find(t, s.run(), "joint.torsional||ride/kerb")
		i := slices.IndexFunc(f.Notes, func(m checks.Message) bool { return m.Key == c.note })
		if i < 0 {
			t.Errorf("%s: notes %v, want %s", c.name, f.Notes, c.note)
			continue
		}
		if got := f.Notes[i].Args[0].(float64); math.Abs(got-c.want) > 0.1 {
			t.Errorf("%s: %.1f rev/min, want %.1f", c.name, got, c.want)
		}
	}
}

func TestGovernedRoadSpeedNeedsItsReason(t *testing.T) {
	s := exactly(t, measure.NewLayout(), map[string]string{"gearbox.slope": "0", "shaft.slope": "3", "pinion.slope": "0"})
	for p, v := range map[string]string{"engine.rpm_max": "4000", "gear.highest": "1.0", "axle.ratio": "3.73", "tyre.radius": "306.74"} {
		s.read(p, v, measure.OffBench, basis(measure.Stated))
	}
	governed := func(r *measure.Reading) { r.Tag, r.Note = "governed", "limiter sealed at 80" }
	s.read("road.speed_max", "80", measure.OffBench, basis(measure.Stated), governed)
	before := find(t, s.run(), "joint.torsional||ride/kerb")
	if !has(before.Notes, checks.MsgSpeedGoverned) {
		t.Errorf("notes %v, want the governed speed", before.Notes)
	}
	s.read("road.speed_max", "160", measure.OffBench, basis(measure.Stated))
	if f := find(t, s.run(), "joint.torsional||ride/kerb"); *f.Value != *before.Value {
		t.Errorf("a speed that nothing governs beside it moves %v to %v", *before.Value, *f.Value)
	}
}

func TestLeastAngleIsDisputedUntilAPersonPicks(t *testing.T) {
	s := exactly(t, measure.NewLayout(), map[string]string{"gearbox.slope": "3", "shaft.slope": "3.1", "pinion.slope": "1"})
	f := find(t, s.run(), "joint.least_angle|front|ride/kerb")
	if f.Verdict != checks.Unsure || f.Advice.Key != checks.MsgLeastContested {
		t.Errorf("0.1° by default: %s, %q; want unsure, sources dispute it", f.Verdict, f.Advice.Key)
	}
	s.b.Limits = map[string]measure.LimitChoice{"joint.least_angle": {Value: value("0.5"), Reason: "needles marked once already"}}
	f = find(t, s.run(), "joint.least_angle|front|ride/kerb")
	if f.Verdict != checks.Out || f.Limit.Reason == "" {
		t.Errorf("picked by a person: %s, reason %q; want out", f.Verdict, f.Limit.Reason)
	}
}

func TestMostAngleWaitsForTheWholeTravel(t *testing.T) {
	s := exactly(t, measure.NewLayout(), map[string]string{"gearbox.slope": "3", "shaft.slope": "6", "pinion.slope": "3"})
	s.read("joint.angle_limit", "20.0", measure.OffBench, basis(measure.Stated))
	f := find(t, s.run(), "joint.most_angle|front|")
	if f.Verdict != checks.Waiting || len(f.Missing) != 4 {
		t.Errorf("at ride height alone: %s, missing %v; want waiting for hanging and bump", f.Verdict, f.Missing)
	}
	s.slopes(measure.Hanging, "3", "12", "1", with("exact"))
	s.slopes(measure.OnBump, "3", "1", "4", with("exact"))
	f = find(t, s.run(), "joint.most_angle|front|")
	if f.Verdict != checks.Clear || *f.Value != 9 && math.Abs(*f.Value-9) > 1e-9 || !slices.Equal(f.RestsOn, []string{"joint.angle_limit"}) {
		t.Errorf("%s at %v resting on %v; want clear at 9 if the stated limit is true", f.Verdict, *f.Value, f.RestsOn)
	}
	s.slopes(measure.Hanging, "3", "26", "1", with("exact"), setup(2))
	if f = find(t, s.run(), "joint.most_angle|front|"); f.Verdict != checks.Out {
		t.Errorf("23° against 20°: %s, want out", f.Verdict)
	}
}

func TestDoubleJointIsJudgedByItsOwnLimit(t *testing.T) {
	l := measure.NewLayout()
	l.FrontJoint = "double"
	s := exactly(t, l, map[string]string{"gearbox.slope": "0", "shaft.slope": "8", "pinion.slope": "7"})
	list := s.run()
	if f := find(t, list, "joint.angle|front|ride/kerb"); f.Limit.Key != "joint.double_angle" || f.Verdict != checks.Clear {
		t.Errorf("8° at a double joint: %s by %s", f.Verdict, f.Limit.Key)
	}
	if f := find(t, list, "joint.residual||ride/kerb"); math.Abs(*f.Value-1) > 1e-9 || !has(f.Notes, checks.MsgDoubleJoint) {
		t.Errorf("residual %.4f, want 1: that of the single joint alone", *f.Value)
	}
	for _, f := range list {
		if f.Check == "joint.least_angle" && f.Subject == "front" {
			t.Error("a least angle for a double joint")
		}
	}
}

// Turning the pinion the way that the advice says makes the residual smaller.
func TestAdviceTurnsTheRightWay(t *testing.T) {
	for _, c := range []struct{ pinion, way string }{{"-2", "up"}} {
		s := exactly(t, measure.NewLayout(), map[string]string{"gearbox.slope": "3", "shaft.slope": "6", "pinion.slope": c.pinion})
		f := find(t, s.run(), "joint.residual||ride/kerb")
		if f.Verdict != checks.Out || f.Advice.Key != checks.MsgTurnPinion || f.Advice.Args[0] != c.way {
			t.Errorf("pinion at %s: %s, advice %v; want front end %s", c.pinion, f.Verdict, f.Advice, c.way)
		}
	}
}

func TestBuildChanceUsesTheSameDraws(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.inPlan()
	s.tool("hand", "0", "0", "0.25")
	s.read("gearbox.slope", "0", measure.RideKerb, with("exact"))
	s.read("shaft.slope", "3", measure.RideKerb, with("hand"))
	list := s.run()
	one := find(t, list, "joint.angle|front|ride/kerb")
	if f := find(t, list, "build.chance||"); *f.Value != *one.Chance || !has(f.Notes, checks.MsgDecidedBy) {
		t.Errorf("build %v, its only judged finding %v", *f.Value, *one.Chance)
	}
	// The pinion stands in line with the gearbox: both joints fail on the same draws.
	s.read("pinion.slope", "0", measure.RideKerb, with("exact"))
	if f := find(t, s.run(), "build.chance||"); math.Abs(*f.Value-*one.Chance) > 2e-3 {
		t.Errorf("two joints that fail together: build %v, want %v", *f.Value, *one.Chance)
	}
	if f := find(t, newBench(t, measure.NewLayout()).run(), "build.chance||"); f.Value != nil || f.Verdict != checks.Unsaid {
		t.Errorf("nothing judged: %v", f.Value)
	}
}

func TestEveryCheckSpeaksOrWaits(t *testing.T) {
	list := newBench(t, measure.NewLayout()).run()
	for _, c := range checks.Table {
		switch c.Key {
		case "reading.spread", "reading.zero": // nothing was repeated, no tool named
			continue
		case "travel.agreement", "derived.agreement", "slip.seal", "spline.output": // only one way is known, the slip is in the shaft
			continue
		}
		found := false
		for _, f := range list {
			found = found || f.Check == c.Key
			if f.Verdict == checks.Waiting && len(f.Missing) == 0 {
				t.Errorf("%s waits for nothing", f.Key())
			}
		}
		if !found {
			t.Errorf("%s says nothing of an empty build", c.Key)
		}
	}
}
