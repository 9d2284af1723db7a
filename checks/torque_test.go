package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/checks/joint"
	"yokebook/measure"
)

// geared is an invented line of 3° and 4° at ride height with an engine and a gearbox behind it.
func geared(t testing.TB, l measure.Layout) *bench {
	s := newBench(t, l)
	s.inPlan()
	s.slopes(measure.RideKerb, "0.0", "4.0", "1.0", with("exact"))
	s.plate("engine.rpm_max", "3000", "gear.highest", "1.000", "engine.torque_max", "400", "gear.lowest", "3.500")
	return s
}

// gripping adds what the wheels can do: 1100 kg, 0.36 m, 4.1 and 0.71 slip at 707.9 N·m.
func (s *bench) gripping() *bench {
	s.read("rear_axle.limit", "1100", measure.OffBench, basis(measure.Stated))
	s.plate("axle.ratio", "4.100", "tyre.radius", "360", "tyre.friction", "0.710")
	return s
}

func offroad() measure.Layout {
	l := measure.NewLayout()
	l.Use = "offroad"
	return l
}

// Lowest gear: 400 · (0.95 … 1) · 3.5 · 0.85, best 1160.3, low end 1130.5 N·m; slipping wheels
// 707.9 N·m (driveline installation guide J3311-1-DSSP (2008) p. 2, worked apart from this code).
func TestTorqueIsTheLesserOnTheRoadAndLowGearOffIt(t *testing.T) {
	s := geared(t, measure.NewLayout()).gripping()
	f := find(t, s.run(), "joint.torque||bench")
	if math.Abs(number(t, f.Value)-707.9) > 0.1 || !has(f.Notes, checks.MsgTorqueLesser) {
		t.Errorf("road: %.1f N·m, notes %v; want 707.9, the lesser", *f.Value, f.Notes)
	}
	f = find(t, geared(t, offroad()).gripping().run(), "joint.torque||bench")
	if math.Abs(*f.Value-400*0.975*3.5*0.85) > 1e-6 || !has(f.Notes, checks.MsgTorqueOffroad) {
		t.Errorf("offroad: %.1f N·m, notes %v; want the lowest gear alone", *f.Value, f.Notes)
	}
	if *f.Low > 1134 || *f.Low < 1130 {
		t.Errorf("low end %.1f, want near 1130.5", *f.Low)
	}
	f = find(t, geared(t, measure.NewLayout()).run(), "joint.torque||bench")
	if !has(f.Notes, checks.MsgTorqueNoGrip) {
		t.Errorf("grip not known: notes %v", f.Notes)
	}
}

func TestTransferBoxCountsAheadOfTheShaftOnly(t *testing.T) {
	for drives, times := range map[string]float64{"front": 2.5 * 0.95, "transfer": 1} {
		l := offroad()
		l.Drives = drives
		s := newBench(t, l)
		s.plate("engine.torque_max", "400", "gear.lowest", "3.500", "transfer.low", "2.500")
		if f := find(t, s.run(), "joint.torque||bench"); math.Abs(*f.Value-400*0.975*3.5*0.85*times) > 1e-6 {
			t.Errorf("drives %s: %.1f N·m", drives, *f.Value)
		}
	}
}

func TestConverterMultiplies(t *testing.T) {
	s := newBench(t, offroad())
	s.plate("engine.torque_max", "400", "gear.lowest", "3.500", "converter.ratio", "2.00")
	if f := find(t, s.run(), "joint.torque||bench"); math.Abs(*f.Value-400*0.975*3.5*0.80*2) > 1e-6 {
		t.Errorf("%.1f N·m, want twice with an automatic's 0.80", *f.Value)
	}
}

func TestTorqueAgainstTheRating(t *testing.T) {
	for rating, want := range map[string]checks.Verdict{"1500": checks.Clear, "1000": checks.Out, "1160": checks.Unsure} {
		s := geared(t, offroad())
		s.plate("joint.torque_rating", rating)
		f := s.says("joint.torque||bench", want)
		if want == checks.Out && f.Advice.Key != checks.MsgStrongerJoint || want == checks.Unsure && f.Advice.Key != checks.MsgDisputedInput {
			t.Errorf("%s N·m: advice %v", rating, f.Advice)
		}
	}
	waitsFor(t, geared(t, offroad()).says("joint.torque||bench", checks.Waiting), "joint.torque_rating")
	waitsFor(t, geared(t, offroad()).without("gear.lowest").says("joint.torque||", checks.Waiting), "gear.lowest")
}

// A share picked by a person ends the dispute: the torque is exact but for the plates' last digits.
func TestDisputedShareCanBePicked(t *testing.T) {
	s := geared(t, offroad())
	s.b.Limits = map[string]measure.LimitChoice{"torque.net_share": {Value: value("1"), Reason: "plate says net"}}
	f := find(t, s.run(), "joint.torque||bench")
	if math.Abs(*f.Value-1190) > 1e-6 || *f.High-*f.Low > 4 {
		t.Errorf("%.2f (%.2f … %.2f), want 1190", *f.Value, *f.Low, *f.High)
	}
}

// T·tan β of the 4° front joint, over the length of the shaft.
func TestCoupleOfAJoint(t *testing.T) {
	s := geared(t, offroad())
	s.under("shaft.length", "1200")
	f := find(t, s.run(), "joint.couple|front|")
	want := 1160.25 * math.Tan(4*math.Pi/180)
	if math.Abs(*f.Value-want) > 0.01 || f.Verdict != checks.Unsaid {
		t.Errorf("%.2f N·m %q, want %.2f without a verdict", *f.Value, f.Verdict, want)
	}
	for _, m := range f.Notes {
		if m.Key == checks.MsgCoupleForce && math.Abs(m.Args[0].(float64)-want/1.2) > 0.01 {
			t.Errorf("force %v, want %.2f N", m.Args[0], want/1.2)
		}
	}
	if !has(f.Notes, checks.MsgCoupleForce) {
		t.Errorf("notes %v", f.Notes)
	}
}

// The load may bend a joint more than the vehicle's own weight: the hours are those of the larger angle,
// and the finding names the state. Life falls with the angle (sizing guide of a joint supplier: hours go
// by one over angle and speed).
func TestLifeIsOfTheLargestAngleThatItRunsAt(t *testing.T) {
	hours := func(laden bool) float64 {
		s := geared(t, measure.NewLayout())
		if laden {
			s.slopes(measure.RideLaden, "0.0", "8.0", "0.0")
		}
		s.plate("shaft.torque_mean", "200.0", "joint.life_torque", "800.0")
		f := find(t, s.run(), "joint.life|front|")
		for _, m := range f.Notes {
			if m.Key == checks.MsgWorstState && (m.Args[0] == "ride/laden") != laden {
				t.Errorf("laden read: %v, worst %v", laden, m.Args)
			}
		}
		if !has(f.Notes, checks.MsgWorstState) {
			t.Errorf("notes %v", f.Notes)
		}
		return *f.Value
	}
	if own, laden := hours(false), hours(true); math.Abs(laden/own-0.5) > 0.01 {
		t.Errorf("%.0f h at 4° on own weight, %.0f h at 8° laden: want half", own, laden)
	}
}

// Life by both exponents: 3° and 4°, 3000 rev/min, a quarter of the rated torque.
func TestLifeShowsTheRangeOfBothExponents(t *testing.T) {
	s := geared(t, measure.NewLayout())
	waitsFor(t, s.says("joint.life|front|", checks.Waiting), "shaft.torque_mean")
	s.plate("shaft.torque_mean", "200.0", "joint.life_torque", "800.0")
	f := s.says("joint.life|front|", checks.Clear)
	long, short := joint.Life(joint.Duty{AngleDeg: 4, RevPerMin: 3000, MeanNm: 200, RatedNm: 800})
	if *f.Low > short+0.06*(long-short) || *f.High < long-0.06*(long-short) || *f.Value < *f.Low || *f.Value > *f.High {
		t.Errorf("%.0f (%.0f … %.0f) h, want all of %.0f … %.0f", *f.Value, *f.Low, *f.High, short, long)
	}
	for mean, want := range map[string]checks.Verdict{"320.0": checks.Out, "250.0": checks.Unsure} {
		s := geared(t, measure.NewLayout())
		s.plate("shaft.torque_mean", mean, "joint.life_torque", "800.0")
		s.says("joint.life|front|", want)
	}
	s = geared(t, measure.NewLayout()).without("pinion.slope")
	s.plate("shaft.torque_mean", "200.0", "joint.life_torque", "800.0")
	waitsFor(t, s.says("joint.life|rear|", checks.Waiting), "pinion.slope")
}
