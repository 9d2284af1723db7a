package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// flanged is an invented front end: four bolts on 80 mm, pilot of 60 mm on the vehicle, recess on the
// shaft. Changes come as point and value in turn.
func flanged(t testing.TB, changes ...string) *bench {
	s := newBench(t, measure.NewLayout())
	values := map[string]string{}
	order := []string{"front_end.bolts", "front_mate.bolts", "front_end.bolt_circle", "front_mate.bolt_circle",
		"front_end.pilot", "front_mate.pilot", "front_end.pilot_kind", "front_mate.pilot_kind"}
	for i, v := range []string{"4", "4", "80.00", "80.05", "60.00", "60.02", "1", "0"} {
		values[order[i]] = v
	}
	for i := 0; i < len(changes); i += 2 {
		values[changes[i]] = changes[i+1]
	}
	for _, p := range order {
		if values[p] != "" {
			s.bare(p, values[p])
		}
	}
	return s
}

func TestFlangeAgainstItsMate(t *testing.T) {
	for _, c := range []struct {
		name    string
		changes []string
		want    checks.Verdict
		note    string
	}{
		{"all the same", nil, checks.Clear, ""},
		{"pilot 0.18 off: two caliper readings can't tell", []string{"front_mate.pilot", "60.18"}, checks.Unsure, ""},
		{"pilot of another size", []string{"front_mate.pilot", "57.00"}, checks.Out, checks.MsgSizesDiffer},
		{"circle of another size", []string{"front_mate.bolt_circle", "95.00"}, checks.Out, checks.MsgSizesDiffer},
		{"three holes against four", []string{"front_mate.bolts", "3"}, checks.Out, checks.MsgCountsDiffer},
		{"male against male", []string{"front_mate.pilot_kind", "1"}, checks.Out, checks.MsgPilotsAlike},
		{"pilot not read", []string{"front_mate.pilot", ""}, checks.Waiting, ""},
		{"pilot not read, but three holes against four", []string{"front_mate.pilot", "", "front_mate.bolts", "3"}, checks.Out, checks.MsgCountsDiffer},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := find(t, flanged(t, c.changes...).run(), "flange.match|front_end|bench")
			if f.Verdict != c.want || c.note != "" && !has(f.Notes, c.note) {
				t.Errorf("%q, notes %v; want %q with %q", f.Verdict, f.Notes, c.want, c.note)
			}
			if c.want == checks.Out && (f.Advice.Key != checks.MsgAdapterFlange || *f.Value < 1) {
				t.Errorf("%v, advice %v", *f.Value, f.Advice)
			}
			if c.want == checks.Waiting {
				waitsFor(t, f, "front_mate.pilot")
			}
			if c.want == checks.Unsure && f.Advice.Key != checks.MsgPilotFiner {
				t.Errorf("advice %v, want a finer tool for the pilots", f.Advice)
			}
		})
	}
}

// Half the play of a pilot puts the shaft off its axis. Balance grade G 16 bears an offset of 16 mm/s
// over the speed (ISO 21940-11, from memory): at 3000 rev/min 0.0509 mm, so 0.10 mm of play; at 5000
// rev/min 0.0306 mm, so 0.06 mm (worked apart from this code).
func TestPilotPlayThatBalanceBears(t *testing.T) {
	for _, c := range []struct {
		name, rpm, mate string
		bears           float64
		want            checks.Verdict
	}{
		{"0.03 of play at 3000, micrometer", "3000", "60.030", 0.10186, checks.Clear},
		{"0.08 of play at 3000, micrometer", "3000", "60.080", 0.10186, checks.Clear},
		{"0.08 of play at 5000: too much", "5000", "60.080", 0.06112, checks.Out},
		{"0.18 of play at 1000: a caliper's 0.2 still rules", "1000", "60.180", 0.2, checks.Clear},
	} {
		s := flanged(t, "front_end.pilot", "", "front_mate.pilot", "")
		n := func(t string) measure.Value { v, _ := measure.NumberValue(t); return v }
		s.b.Instruments = append(s.b.Instruments, measure.Instrument{ID: "micrometer", Kind: "caliper", Unit: "mm",
			Resolution: n("0.001"), Accuracy: n("0.004"), Placing: n("0.002")})
		s.read("front_end.pilot", "60.000", measure.OffBench, with("micrometer"))
		s.read("front_mate.pilot", c.mate, measure.OffBench, with("micrometer"))
		s.plate("engine.rpm_max", c.rpm, "gear.highest", "1.000")
		f := s.says("flange.match|front_end|bench", c.want)
		for _, m := range f.Notes {
			if m.Key == checks.MsgPilotPlay && math.Abs(m.Args[0].(float64)-c.bears) > 2e-5 {
				t.Errorf("%s: bears %v, want %v", c.name, m.Args[0], c.bears)
			}
		}
		if !has(f.Notes, checks.MsgPilotPlay) || !has(f.Notes, checks.MsgPilotByHand) {
			t.Errorf("%s: notes %v", c.name, f.Notes)
		}
	}
}

// A caliper can't prove so little play: it says so and asks for a finer tool, never clear.
func TestCaliperDoesNotProveAPilotAtSpeed(t *testing.T) {
	s := flanged(t)
	s.plate("engine.rpm_max", "5000", "gear.highest", "1.000")
	if f := s.says("flange.match|front_end|bench", checks.Unsure); f.Advice.Key != checks.MsgPilotFiner {
		t.Errorf("advice %v", f.Advice)
	}
}

// The bolts of a flange that stays on must be those of its mate: M10 is no 3/8 in (9.525 mm), and M8 × 1.25
// no 5/16 in with 24 threads per inch (7.94 mm, 1.06 mm): ISO 261 and ASME B1.1 (from memory).
func TestBoltsOfBothFaces(t *testing.T) {
	for _, c := range []struct {
		name   string
		values []string // size and pitch of the vehicle's bolts, then of the shaft's
		want   checks.Verdict
	}{
		{"both M10", []string{"10.00", "1.250", "10.00", "1.250"}, checks.Clear},
		{"M10 and 3/8 in", []string{"10.00", "", "9.52", ""}, checks.Out},
		{"M8 and 5/16 in, by their pitch", []string{"8.00", "1.250", "7.94", "1.058"}, checks.Out},
		{"only one side read", []string{"10.00", "", "", ""}, checks.Clear},
	} {
		s := flanged(t)
		for i, p := range []string{"front_end.bolt_size", "front_end.bolt_pitch", "front_mate.bolt_size", "front_mate.bolt_pitch"} {
			if c.values[i] != "" {
				s.bare(p, c.values[i])
			}
		}
		f := s.says("flange.match|front_end|bench", c.want)
		if t.Logf("%s: %s", c.name, f.Verdict); has(f.Notes, checks.MsgSizesDiffer) != (c.want == checks.Out) {
			t.Errorf("%s: notes %v", c.name, f.Notes)
		}
	}
}

// A pilot higher than its recess is deep keeps the faces apart, though every size agrees.
func TestPilotHigherThanItsRecess(t *testing.T) {
	for depth, want := range map[string]checks.Verdict{"4.00": checks.Clear, "2.50": checks.Out, "3.00": checks.Unsure} {
		s := flanged(t)
		s.bare("front_end.pilot_depth", "3.00", "front_mate.pilot_depth", depth)
		if f := s.says("flange.match|front_end|bench", want); has(f.Notes, checks.MsgPilotBottoms) != (want == checks.Out) {
			t.Errorf("recess %s deep: notes %v", depth, f.Notes)
		}
	}
}

// A circle can come from chords: a square of 56.57 mm has its corners on 80.00 mm, a rectangle of
// 64 × 48 likewise (3-4-5).
func TestCircleFromChords(t *testing.T) {
	for _, chords := range [][]string{{"56.57"}, {"64.00", "48.00"}} {
		s := flanged(t, "front_mate.bolt_circle", "")
		s.bare("front_mate.bolt_chord", chords[0])
		if len(chords) == 2 {
			s.bare("front_mate.bolt_chord_2", chords[1])
		}
		s.says("flange.match|front_end|bench", checks.Clear)
	}
	s := flanged(t, "front_mate.bolt_circle", "")
	s.bare("front_mate.bolt_chord", "50.00")
	s.says("flange.match|front_end|bench", checks.Out)
}

// Where straps or U-bolts hold the caps there is no flange: the caps must be the same.
func TestCapsInStraps(t *testing.T) {
	for mate, want := range map[string]checks.Verdict{"27.00": checks.Clear, "30.16": checks.Out, "": checks.Waiting} {
		s := newBench(t, measure.NewLayout())
		s.bare("rear_end.clip", "4", "rear_end.cap_dia", "27.01", "rear_end.cap_span", "81.70", "rear_mate.cap_span", "81.75")
		if mate != "" {
			s.bare("rear_mate.cap_dia", mate)
		}
		if f := s.says("flange.match|rear_end|bench", want); want == checks.Out && f.Advice.Key != checks.MsgOtherJointSize {
			t.Errorf("advice %v", f.Advice)
		}
	}
}

// Where a yoke slides into the gearbox that end has no flange.
func TestNoFlangeOnASlipYoke(t *testing.T) {
	for drives, gone := range map[string]string{"rear": "front_end", "front": "rear_end"} {
		l := measure.NewLayout()
		l.Slip, l.Drives = "gearbox", drives
		for _, f := range newBench(t, l).run() {
			if f.Check == "flange.match" && f.Subject == gone {
				t.Errorf("drives %s: %s speaks", drives, gone)
			}
		}
	}
}

func TestFlywheelOnTheCrank(t *testing.T) {
	for _, c := range []struct {
		bolts, circle, register string
		want                    checks.Verdict
	}{
		{"8", "92.02", "70.00", checks.Clear}, {"6", "92.02", "70.00", checks.Out}, {"8", "98.00", "70.00", checks.Out},
		{"8", "92.02", "70.20", checks.Unsure}, {"8", "92.02", "", checks.Waiting},
	} {
		s := newBench(t, measure.NewLayout())
		s.bare("crank.bolts", "8", "crank.bolt_circle", "92.00", "crank.register", "70.00", "flywheel.bolts", c.bolts, "flywheel.bolt_circle", c.circle)
		if c.register != "" {
			s.bare("flywheel.register", c.register)
		}
		if f := find(t, s.run(), "clutch.flywheel||bench"); f.Verdict != c.want {
			t.Errorf("%+v: %q", c, f.Verdict)
		}
	}
}

// The needle's whole way is twice the offset: 0.30 mm of it are dowels 0.15 mm off. Limit 0.127 mm
// (0.005 in), common practice; a truck engine maker's manual allows 0.20.
func TestRunoutOfTheBellhousing(t *testing.T) {
	for way, want := range map[string]checks.Verdict{"0.05": checks.Clear, "0.30": checks.Out, "0.13": checks.Unsure, "": checks.Waiting} {
		s := newBench(t, measure.NewLayout())
		s.b.Instruments = []measure.Instrument{{ID: "dial", Kind: "indicator", Unit: "mm"}}
		state := ""
		if way != "" {
			s.read("bellhousing.bore_runout", way, measure.OffBench, with("dial"))
			s.read("flywheel.runout", way, measure.OffBench, with("dial"))
			state = "bench"
		}
		f := s.says("clutch.runout|bore|"+state, want)
		s.says("clutch.runout|flywheel|"+state, want)
		s.says("clutch.runout|face|", checks.Waiting)
		if want == checks.Out && (f.Advice.Key != checks.MsgMoveDowels || f.Advice.Args[0] != 0.15) {
			t.Errorf("advice %v, want dowels moved by 0.15", f.Advice)
		}
		if want != checks.Waiting && f.Limit.Key != "clutch.runout" {
			t.Errorf("limit %v", f.Limit)
		}
	}
	s := newBench(t, measure.NewLayout())
	s.b.Instruments = []measure.Instrument{{ID: "dial", Kind: "indicator", Unit: "mm"}}
	s.b.Limits = map[string]measure.LimitChoice{"clutch.runout": {Value: value("0.40"), Reason: "slow farm use"}}
	s.read("bellhousing.bore_runout", "0.30", measure.OffBench, with("dial"))
	s.says("clutch.runout|bore|bench", checks.Clear)
}

// A person answers; nothing else makes a fit clear, and one no outweighs every yes.
func TestFitIsAnsweredByAPerson(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	waitsFor(t, s.says("fit.loop||", checks.Waiting), "fit.loop")
	s.under("fit.loop", "1")
	s.says("fit.loop||", checks.Clear)
	no := s.read("fit.loop", "0", measure.Hanging)
	if f := s.says("fit.loop||", checks.Out); f.Advice.Key != checks.MsgPutRight || len(f.Used) != 2 {
		t.Errorf("advice %v, used %v", f.Advice, f.Used)
	}
	s.b.Strikes = []measure.Strike{{ID: "019d2a80-0001-7000-8000-000000000001", Reading: no, Reason: "loop fitted since"}}
	s.says("fit.loop||", checks.Clear)
	l := measure.NewLayout()
	l.Axle = "fixed"
	for _, f := range newBench(t, l).run() {
		if f.Check == "fit.bumpstop" || f.Check == "fit.brakehose" {
			t.Errorf("%s is asked of an axle that doesn't move", f.Check)
		}
	}
}

// Two answers that differ are no answer: a pilot that was called both kinds never meets its opposite.
func TestDisputedAnswerIsAskedAgain(t *testing.T) {
	s := flanged(t)
	s.bare("front_end.pilot_kind", "0")
	waitsFor(t, s.says("flange.match|front_end|bench", checks.Waiting), "front_end.pilot_kind")
	s = flanged(t)
	s.bare("front_mate.bolts", "6")
	waitsFor(t, s.says("flange.match|front_end|bench", checks.Waiting), "front_mate.bolts")
}
