package checks_test

import (
	"math"
	"strconv"
	"testing"

	"yokebook/checks"
	"yokebook/checks/shaft"
	"yokebook/measure"
)

func formatted(f float64) string { return strconv.FormatFloat(f, 'g', 8, 64) }

// drivenShaft is an invented truck: 76.2 × 2.1 tube, 1200 mm, 4000 rev/min, 300 N·m in a gear of 3.5.
func drivenShaft(t testing.TB, length string) *bench {
	s := newBench(t, measure.NewLayout())
	s.under("shaft.length", length)
	s.bare("tube.od", "76.20", "tube.wall", "2.10")
	s.plate("tube.material", "1", "engine.rpm_max", "4000", "gear.highest", "1.000", "engine.torque_max", "300", "gear.lowest", "3.50")
	return s
}

// The bare tube's speed at 206 GPa and 7850 kg/m³ is that of the closed form, worked apart from this
// code: 8787.3 rev/min for 76.2 × 2.1 × 1200 mm. Limit: 4000/0.70 = 5714 rev/min.
func TestCriticalSpeedIsJudgedByTheHighestSpeed(t *testing.T) {
	bare := drivenShaft(t, "1200")
	bare.plate("shaft.mass", "4.605") // the tube's own: 4.6051 kg at 7850 kg/m³
	f := bare.says("shaft.critical_speed||", checks.Clear)
	if math.Abs(*f.Value-8787.3) > 0.5 {
		t.Errorf("bending speed %.1f, want 8787.3 (closed form, worked apart from this code)", *f.Value)
	}
	if math.Abs(f.Limit.Value-4000/0.7) > 1e-6 || f.Limit.Sense != "min" || f.Limit.Unit != "rev/min" || f.Limit.Key != "shaft.critical_speed" {
		t.Errorf("limit %+v", f.Limit)
	}
	unweighed := drivenShaft(t, "1200").says("shaft.critical_speed||", checks.Clear)
	if !has(unweighed.Notes, checks.MsgEndsTaken) || len(f.RestsOn) == 0 || *unweighed.Value >= *f.Value || *unweighed.Low >= *f.Low {
		t.Errorf("not weighed: %.0f … with notes %v; want slower than the bare tube, and said why", *unweighed.Value, unweighed.Notes)
	}
	f = drivenShaft(t, "1600").says("shaft.critical_speed||", checks.Out)
	if f.Advice.Key != checks.MsgWiderTube {
		t.Errorf("advice %v", f.Advice)
	}
	f = drivenShaft(t, "1487").says("shaft.critical_speed||", checks.Unsure)
	if f.Weakest == nil || f.Weakest.Input != "shaft.end_station" || f.Weakest.Reading != nil {
		t.Errorf("weakest %+v, want where the ends of an unweighed shaft weigh", f.Weakest)
	}
	waitsFor(t, drivenShaft(t, "1200").without("tube.wall").says("shaft.critical_speed||", checks.Waiting), "tube.wall")
	f = drivenShaft(t, "1200").without("gear.highest").says("shaft.critical_speed||", checks.Waiting)
	if waitsFor(t, f, "gear.highest"); f.Value == nil {
		t.Error("the number is hidden although only its limit is missing")
	}
}

// A fraction picked for this build counts, with its reason.
func TestCriticalFractionCanBePicked(t *testing.T) {
	s := drivenShaft(t, "1600")
	s.b.Limits = map[string]measure.LimitChoice{"shaft.critical_speed": {Value: value("0.90"), Reason: "short trips, balanced as a whole"}}
	if f := s.says("shaft.critical_speed||", checks.Clear); f.Limit.Reason == "" || math.Abs(f.Limit.Value-4000/0.9) > 1e-6 {
		t.Errorf("limit %+v", f.Limit)
	}
}

// Lengths at ride height count; from hanging wheels alone nothing runs.
func TestLengthAtHangingWheelsIsNotTheOneItRunsAt(t *testing.T) {
	s := drivenShaft(t, "1200").without("shaft.length")
	s.read("shaft.length", "1200", measure.Hanging)
	waitsFor(t, s.says("shaft.critical_speed||", checks.Waiting), "shaft.length")
}

func TestWeighedShaftIsSlower(t *testing.T) {
	s := drivenShaft(t, "1200")
	bare := find(t, s.run(), "shaft.critical_speed||")
	s.bare("shaft.mass", "11.0")
	f := find(t, s.run(), "shaft.critical_speed||")
	if *f.Value >= *bare.Value || *f.High > *bare.High || has(f.Notes, checks.MsgEndsTaken) {
		t.Errorf("weighed: %.0f (…%.0f), bare %.0f, notes %v", *f.Value, *f.High, *bare.Value, f.Notes)
	}
	if f.Weakest.Input != "shaft.end_station" && f.Weakest.Input != "shaft.length" {
		t.Errorf("weakest %+v", f.Weakest)
	}
}

func TestHalfCriticalSpeedIsToldNotForbidden(t *testing.T) {
	bare := drivenShaft(t, "1200")
	bare.plate("shaft.mass", "4.605") // the tube's own
	f := bare.says("shaft.half_critical||", checks.Clear)
	if math.Abs(*f.Value-8787.3/2) > 0.3 || math.Abs(f.Limit.Value-4000/0.92) > 1e-6 {
		t.Errorf("%.1f against %.1f, want half of 8787.3 against 4000/0.92", *f.Value, f.Limit.Value)
	}
	s := drivenShaft(t, "1300")
	s.plate("axle.ratio", "4.10", "tyre.radius", "360")
	f = s.says("shaft.half_critical||", checks.Unsure)
	if f.Advice.Key != checks.MsgDontDwell || !has(f.Notes, checks.MsgDwellRoad) {
		t.Errorf("advice %v, notes %v: want the speeds to keep out of", f.Advice, f.Notes)
	}
	s.b.Limits = map[string]measure.LimitChoice{"shaft.half_critical": {Value: value("0.08"), Reason: "motorway use"}}
	s.says("shaft.half_critical||", checks.Out)
}

// 300 N·m · (0.95…1) · 3.5 · 0.85 in the lowest gear; shear of 76.2 × 2.1 by 16·T·D/π(D⁴−d⁴).
func TestStressInTheTube(t *testing.T) {
	s := drivenShaft(t, "1200")
	f := s.says("shaft.stress||", checks.Waiting)
	waitsFor(t, f, "tube.yield")
	want, _ := shaft.Shear(shaft.Tube{LengthMM: 1200, OuterMM: 76.2, WallMM: 2.1}, 300*0.975*3.5*0.85)
	if math.Abs(number(t, f.Value)-want) > 1e-6 {
		t.Errorf("stress %.3f, want %.3f", *f.Value, want)
	}
	s.plate("tube.yield", "355")
	f = s.says("shaft.stress||", checks.Clear)
	if math.Abs(f.Limit.Value-0.3*355) > 1e-9 {
		t.Errorf("limit %v, want 0.30 of 355 MPa (ASME code for transmission shafting, as cited in machine design texts)", f.Limit)
	}
	for yield, want := range map[string]checks.Verdict{"120": checks.Out, "165": checks.Unsure} {
		s := drivenShaft(t, "1200")
		s.plate("tube.yield", yield)
		s.says("shaft.stress||", want)
	}
	f = find(t, s.run(), "shaft.twist||")
	if f.Verdict != checks.Unsaid || f.Value == nil || !has(f.Notes, checks.MsgTwistNoVerdict) {
		t.Errorf("twist %v %q %v", f.Value, f.Verdict, f.Notes)
	}
}

// Permissible unbalance 9549.3·16·11/4000 g·mm for the whole shaft, half at each end.
func TestUnbalancePerEnd(t *testing.T) {
	s := drivenShaft(t, "1200")
	waitsFor(t, s.says("shaft.balance||", checks.Waiting), "shaft.mass")
	s.bare("shaft.mass", "11.0")
	f := find(t, s.run(), "shaft.balance||bench")
	if want := 9549.2966 * 16 * 11 / 4000 / 2; math.Abs(*f.Value-want) > 1e-3*want || f.Unit != "g·mm" || f.Verdict != checks.Unsaid {
		t.Errorf("%.2f %s %q, want %.2f g·mm per end (ISO 21940-11, from memory)", *f.Value, f.Unit, f.Verdict, want)
	}
}

func TestEachOfTwoShaftsHasItsSpeed(t *testing.T) {
	s := newBench(t, twoPiece())
	s.under("shaft.length", "1294", "front_shaft.length", "600")
	s.bare("tube.od", "76.2", "tube.wall", "2.1", "front_shaft.tube_od", "76.2", "front_shaft.tube_wall", "2.1")
	s.plate("engine.rpm_max", "4500", "gear.highest", "0.850")
	rear, front := s.says("shaft.critical_speed|shaft|", checks.Unsure), s.says("shaft.critical_speed|front_shaft|", checks.Clear)
	if ratio, bare := *front.Value / *rear.Value, 1294.0*1294/600/600; ratio > bare || ratio < 0.9*bare {
		t.Errorf("speeds in the ratio %.5f, want that of the lengths squared, %.5f, less what the ends take off the short one", ratio, bare)
	}
}

// A speed that is none takes the number and its limit away, never a verdict out of it.
func TestSpeedOfNoEngine(t *testing.T) {
	s := drivenShaft(t, "1200").without("engine.rpm_max")
	s.plate("engine.rpm_max", "0")
	if f := s.says("shaft.critical_speed||", checks.Waiting); f.Limit != nil || f.Advice.Key != checks.MsgNoNumber {
		t.Errorf("limit %v, advice %v", f.Limit, f.Advice)
	}
}

// A wall read with a tape may be anything from a foil to a rod: the number stands, the reading decides.
func TestWallReadWithATape(t *testing.T) {
	s := drivenShaft(t, "1200").without("tube.wall")
	s.plate("tube.yield", "355")
	s.read("tube.wall", "2", measure.OffBench)
	if f := s.says("shaft.stress||", checks.Unsure); f.Weakest.Input != "tube.wall" {
		t.Errorf("weakest %+v, want the wall", f.Weakest)
	}
	s.says("shaft.critical_speed||", checks.Clear)
}
