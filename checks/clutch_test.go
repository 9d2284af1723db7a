package checks_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks"
	"yokebook/measure"
)

// stack is a clutch whose bearing stands 7 mm from the fingers (0 + 150 − 75 − 25 − 43), with a stroke
// of 20: window 4 + 0.76 … 20 − 11, worked apart from this code.
func stack(t testing.TB) *bench {
	s := newBench(t, measure.NewLayout())
	s.bare("adapter.thickness", "0", "bellhousing.depth", "150.00", "bearing.height", "75.00", "flywheel.face", "25.00", "fingers.height", "43.00")
	s.plate("slave.stroke", "20.0", "fingers.wear", "4.00", "fingers.travel", "11.0", "fingers.travel_max", "15.5")
	return s
}

// change reads one point anew.
func (s *bench) change(point, value string) *bench {
	n := s.without(point)
	if p, _ := measure.PointOf(point); p.Basis == measure.Stated {
		n.plate(point, value)
	} else {
		n.bare(point, value)
	}
	return n
}

// The hub may meet fingers that are pressed down, and the sleeve of the release bearing. 43 − 15.5 − hub, and
// 0 + 150 − sleeve − 25 − hub, worked apart from this code (common practice, no source). Among the fingers
// it is never out: nobody read how wide their circle is.
func TestRoomBehindTheDiscHub(t *testing.T) {
	for _, row := range []struct {
		name, hub, sleeve string
		fingers, guide    checks.Verdict
		toFingers         float64
	}{
		{"room behind it", "20.00", "90.00", checks.Clear, checks.Clear, 7.5},
		{"hub among the fingers", "30.00", "90.00", checks.Unsure, checks.Clear, -2.5},
		{"hub against the sleeve", "20.00", "106.00", checks.Clear, checks.Out, 7.5},
		{"hub near the sleeve", "20.00", "104.00", checks.Clear, checks.Unsure, 7.5},
	} {
		s := stack(t)
		s.bare("disc_hub.rear", row.hub, "guide_tube.length", row.sleeve)
		f := s.says("clutch.boss|fingers|bench", row.fingers)
		if math.Abs(*f.Value-row.toFingers) > 1e-9 || row.fingers == checks.Unsure && f.Advice.Key != checks.MsgBossInFingers {
			t.Errorf("%s: %v, advice %v", row.name, *f.Value, f.Advice)
		}
		if g := s.says("clutch.boss|guide|bench", row.guide); row.guide == checks.Out && g.Advice.Key != checks.MsgBossOnGuide {
			t.Errorf("%s: advice %v", row.name, g.Advice)
		}
	}
	s := stack(t)
	s.bare("disc_hub.rear", "30.00")
	waitsFor(t, s.says("clutch.boss|guide|", checks.Waiting), "guide_tube.length")
	pull := stack(t)
	pull.b.Layout.Clutch = "pull"
	pull.bare("disc_hub.rear", "30.00")
	pull.says("clutch.boss|fingers|bench", checks.Clear)
	pull.b.Layout.Clutch = "none"
	for _, f := range pull.run() {
		if f.Check == "clutch.boss" {
			t.Error("a build without a clutch has a disc hub")
		}
	}
}

func TestWayOfTheReleaseBearing(t *testing.T) {
	f := stack(t).says("clutch.release||bench", checks.Clear)
	if math.Abs(*f.Value-7) > 1e-9 || f.Limit.Key != "clutch.release" || math.Abs(f.Limit.Value-4.76) > 1e-9 {
		t.Errorf("gap %v against %v", *f.Value, f.Limit)
	}
	for _, row := range []struct {
		name, point, value string
		want               checks.Verdict
		advice             string
		mm                 float64
		limit              string
	}{
		// Middle of the window 4.76 … 9 is 6.88.
		{"too far back", "bearing.height", "70.00", checks.Out, checks.MsgBearingForward, 12 - 6.88, "fingers.travel"},
		{"too far forward", "bearing.height", "79.00", checks.Out, checks.MsgBearingBack, 6.88 - 3, "clutch.release"},
		{"an adapter of 20 mm sets it back", "adapter.thickness", "20.0", checks.Out, checks.MsgBearingForward, 27 - 6.88, "fingers.travel"},
		{"fingers pressed too far", "fingers.travel_max", "12.0", checks.Out, checks.MsgBearingBack, 1.5, "fingers.travel_max"},
		{"a stroke that is too short", "slave.stroke", "15.0", checks.Out, checks.MsgLongerStroke, 15.76, "fingers.travel"},
		{"at the edge of its window", "bearing.height", "77.24", checks.Unsure, checks.MsgReadAgain, 0, "clutch.release"},
	} {
		f := stack(t).change(row.point, row.value).says("clutch.release||bench", row.want)
		if f.Advice.Key != row.advice || f.Limit.Key != row.limit {
			t.Errorf("%s: advice %v by %s, want %s by %s", row.name, f.Advice, f.Limit.Key, row.advice, row.limit)
			continue
		}
		if row.mm > 0 && math.Abs(f.Advice.Args[0].(float64)-row.mm) > 1e-6 {
			t.Errorf("%s: %v mm, want %g", row.name, f.Advice.Args[0], row.mm)
		}
	}
	f = stack(t).without("fingers.wear").says("clutch.release||bench", checks.Waiting)
	waitsFor(t, f, "fingers.wear")
	if f.Value == nil || math.Abs(*f.Value-7) > 1e-9 {
		t.Errorf("the gap is known without the wear, said %v", f.Value)
	}
	// Pressing the fingers at rest is wrong whatever the cover's papers say.
	stack(t).change("bearing.height", "85.00").without("fingers.wear", "slave.stroke", "fingers.travel").says("clutch.release||bench", checks.Out)
	// At the edge the cure stands among the notes.
	f = stack(t).change("bearing.height", "77.24").says("clutch.release||bench", checks.Unsure)
	if !has(f.Notes, checks.MsgBearingBack) {
		t.Errorf("unsure without the cure: %v", f.Notes)
	}
}

// Either cure of the advice, taken literally, makes the same finding clear.
func TestCuresCure(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		height := rapid.IntRange(5500, 7200).Draw(rt, "bearing height")
		number := func(f float64) measure.Value { v, _ := measure.FloatValue(f); return v }
		s := stack(t).change("bearing.height", "70.00")
		set := func(point string, by float64) {
			for i, r := range s.b.Readings {
				if r.Point == point {
					v, _ := r.Number()
					s.b.Readings[i].Value = number(v + by)
				}
			}
		}
		set("bearing.height", float64(height)/100-70)
		f := find(t, s.run(), "clutch.release||bench")
		if f.Advice.Key != checks.MsgBearingForward {
			rt.Fatalf("%g: %s, %v", float64(height)/100, f.Verdict, f.Advice)
		}
		way := rapid.SampledFrom([]string{"bearing.height", "flywheel.face"}).Draw(rt, "cure")
		set(way, f.Advice.Args[slices.Index([]string{"bearing.height", "flywheel.face"}, way)].(float64))
		if cured := find(t, s.run(), "clutch.release||bench"); cured.Verdict != checks.Clear {
			rt.Fatalf("%v by %s: %s at %v", f.Advice, way, cured.Verdict, *cured.Value)
		}
	})
}

func TestPullClutch(t *testing.T) {
	s := stack(t).change("bearing.height", "70.00") // 12 mm of way
	s.b.Layout.Clutch = "pull"
	f := s.says("clutch.release||bench", checks.Clear)
	if !has(f.Notes, checks.MsgPullType) {
		t.Errorf("notes %v", f.Notes)
	}
	f = s.change("bearing.height", "75.00").says("clutch.release||bench", checks.Out)
	if f.Advice.Key != checks.MsgBearingBack || math.Abs(f.Advice.Args[0].(float64)-6.25) > 1e-6 {
		t.Errorf("7 mm of way for fingers that take 11 to 15.5: %v", f.Advice)
	}
	s.change("slave.stroke", "9.0").says("clutch.release||bench", checks.Out)
	waitsFor(t, s.without("slave.stroke").says("clutch.release||bench", checks.Waiting), "slave.stroke")
}

// hub stands from 20 to 45, the splines from 15 to 60.
func hub(t testing.TB) *bench {
	s := newBench(t, measure.NewLayout())
	s.bare("adapter.thickness", "10.00", "flywheel.face", "25.00", "disc_hub.front", "-5.00", "disc_hub.rear", "20.00",
		"input_shaft.spline_start", "5.00", "input_shaft.spline_end", "50.00", "flywheel.bolt_clear", "9.00")
	return s
}

func TestHubOnItsSplines(t *testing.T) {
	f := hub(t).says("clutch.hub||bench", checks.Clear)
	if math.Abs(*f.Value-25) > 1e-9 || !has(f.Notes, checks.MsgWornDisc) {
		t.Errorf("engaged %v, notes %v", *f.Value, f.Notes)
	}
	// The splines begin at 22: 2 mm of the hub are off, 3 with the disc worn.
	f = hub(t).change("input_shaft.spline_start", "12.00").says("clutch.hub||bench", checks.Out)
	if math.Abs(*f.Value-22) > 1e-9 || math.Abs(f.Advice.Args[0].(float64)-3) > 1e-9 {
		t.Errorf("engaged %v, advice %v; want 22, 3 off", *f.Value, f.Advice)
	}
	hub(t).change("input_shaft.spline_start", "9.00").says("clutch.hub||bench", checks.Unsure) // worn, it is just covered
	// Boss 5 mm below the face, bolts 5 below it too.
	f = hub(t).change("flywheel.bolt_clear", "5.00").says("clutch.hub||bench", checks.Out)
	if f.Limit.Key != "clutch.boss" || f.Advice.Key != checks.MsgBossOnBolts {
		t.Errorf("bolts in the way: by %v, %v", f.Limit, f.Advice)
	}
	waitsFor(t, hub(t).without("disc_hub.rear").says("clutch.hub||bench", checks.Waiting), "disc_hub.rear")
}

// nose runs from 0 to 25 into the block, the bearing from 5 to 25; bottom at 45.
func nose(t testing.TB) *bench {
	s := newBench(t, measure.NewLayout())
	s.b.Instruments = []measure.Instrument{{ID: "micrometer", Kind: "caliper", Unit: "mm"}}
	for _, v := range []*measure.Value{&s.b.Instruments[0].Resolution, &s.b.Instruments[0].Accuracy, &s.b.Instruments[0].Placing} {
		*v, _ = measure.NumberValue("0.004")
	}
	s.bare("adapter.thickness", "0", "input_shaft.tip", "22.00", "input_shaft.nose", "25.00", "spigot.face", "2.00", "spigot.length", "22.00",
		"spigot.bore_depth", "45.00")
	s.read("spigot.bore", "15.060", measure.OffBench, with("micrometer"))
	s.read("input_shaft.tip_dia", "15.000", measure.OffBench, with("micrometer"))
	return s
}

func TestNoseInItsBearing(t *testing.T) {
	f := nose(t).says("clutch.spigot||bench", checks.Clear)
	if math.Abs(*f.Value-20) > 1e-9 || math.Abs(f.Limit.Value-22*2.0/3) > 1e-9 {
		t.Errorf("engaged %v against %v", *f.Value, f.Limit)
	}
	for _, row := range []struct {
		name, point, value, advice, limit string
		mm                                float64
		want                              checks.Verdict
	}{
		{"an adapter pulls it out", "adapter.thickness", "12.00", checks.MsgNoseShort, "clutch.spigot", 44.0/3 - 8, checks.Out},
		{"it would bear on the crank", "spigot.bore_depth", "23.00", checks.MsgNoseLong, "clutch.spigot_end", 1, checks.Out},
		{"its step runs into the bearing", "input_shaft.nose", "19.00", checks.MsgNoseLong, "clutch.spigot_step", 1.5, checks.Out},
		{"another bore", "spigot.bore", "16.500", checks.MsgOtherSpigot, "clutch.spigot_play", 0, checks.Out},
		{"a caliper can't tell the play", "spigot.bore", "15.06", checks.MsgReadAgain, "clutch.spigot_play", 0, checks.Unsure},
	} {
		f := nose(t).change(row.point, row.value).says("clutch.spigot||bench", row.want)
		if f.Advice.Key != row.advice || f.Limit.Key != row.limit {
			t.Errorf("%s: %v by %s, want %s by %s", row.name, f.Advice, f.Limit.Key, row.advice, row.limit)
			continue
		}
		if row.mm > 0 && math.Abs(f.Advice.Args[0].(float64)-row.mm) > 1e-6 {
			t.Errorf("%s: %v mm, want %g", row.name, f.Advice.Args[0], row.mm)
		}
	}
	waitsFor(t, nose(t).without("spigot.bore_depth").says("clutch.spigot||bench", checks.Waiting), "spigot.bore_depth")
}

func TestFacingOnItsFaces(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.bare("disc.od", "240.0", "flywheel.friction_od", "245.0", "cover.friction_od", "242.0")
	s.says("clutch.fit||bench", checks.Clear)
	f := s.change("cover.friction_od", "228.0").says("clutch.fit||bench", checks.Out)
	if f.Advice.Key != checks.MsgSmallerDisc || f.Advice.Args[0] != "cover.friction_od" {
		t.Errorf("advice %v", f.Advice)
	}
	s.change("flywheel.friction_od", "240.02").says("clutch.fit||bench", checks.Unsure)
	waitsFor(t, s.without("disc.od").says("clutch.fit||", checks.Waiting), "disc.od")
}

// 8500 N on 240 by 155 at 0.30, two faces: 503.6 N·m worn in, 511.4 new (worked apart from this code).
func TestTorqueOfTheClutch(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.bare("disc.od", "240.0", "disc.id", "155.0")
	s.plate("cover.clamp_force", "8500", "disc.friction", "0.300", "engine.torque_max", "350")
	f := s.says("clutch.torque||bench", checks.Clear)
	if math.Abs(*f.Value-503.6) > 0.05 || math.Abs(f.Limit.Value-420) > 1e-9 {
		t.Errorf("holds %v against %v", *f.Value, f.Limit)
	}
	i := slices.IndexFunc(f.Notes, func(m checks.Message) bool { return m.Key == checks.MsgNewFacing })
	if i < 0 || math.Abs(f.Notes[i].Args[0].(float64)-511.4) > 0.05 {
		t.Errorf("notes %v; want 511.4 of a new facing", f.Notes)
	}
	s.change("engine.torque_max", "480").says("clutch.torque||bench", checks.Out)
	f = s.without("disc.friction").change("engine.torque_max", "420").says("clutch.torque||bench", checks.Unsure)
	if f.Weakest == nil || f.Weakest.Input != "disc.friction" {
		t.Errorf("weakest %v; want the friction that nobody stated", f.Weakest)
	}
	if said := noteOf(f, checks.MsgFrictionUnread); said == nil || said[0] != 0.25 || said[1] != 0.35 {
		t.Errorf("friction taken from %v, want the range of the table", said)
	}
	waitsFor(t, s.without("disc.id").says("clutch.torque||", checks.Waiting), "disc.id")
}

func TestNoClutchNoClutchChecks(t *testing.T) {
	l := measure.NewLayout()
	l.Clutch = "none"
	for _, f := range newBench(t, l).run() {
		if slices.Contains([]string{"clutch.release", "clutch.hub", "clutch.spigot", "clutch.fit", "clutch.torque", "spline.input"}, f.Check) {
			t.Errorf("%s without a clutch", f.Key())
		}
	}
}

// Whatever sizes are read of splines, clutch and thread, every number is one and has its interval.
func TestAnySizesGiveNumbersOrNone(t *testing.T) {
	var keys []string
	for _, c := range checks.Table {
		if c.Group == "clutch" || c.Group == "spline" || c.Group == "retainer" {
			keys = append(keys, c.Points...)
		}
	}
	slices.Sort(keys)
	keys = slices.Compact(keys)
	rapid.Check(t, func(rt *rapid.T) {
		l := measure.NewLayout()
		l.Clutch = rapid.SampledFrom([]string{"", "push", "pull", "none"}).Draw(rt, "clutch")
		l.Slip = rapid.SampledFrom([]string{"shaft", "gearbox"}).Draw(rt, "slip")
		s := newBench(t, l)
		for _, key := range keys {
			p, _ := measure.PointOf(key)
			if p.Quantity == measure.Text || rapid.IntRange(0, 9).Draw(rt, "leave out "+key) == 0 {
				continue
			}
			share := rapid.SampledFrom([]float64{0, 0.1, 0.5, 0.9, 1}).Draw(rt, "share of "+key)
			size := p.Low + share*(p.High-p.Low)
			if rapid.IntRange(0, 29).Draw(rt, "wild "+key) == 0 && p.Quantity == measure.Length {
				size = rapid.SampledFrom([]float64{0, 1e-300, 1e-9, 1e9, 1e300}).Draw(rt, "size")
			}
			if p.Quantity == measure.Count || p.Quantity == measure.Answer {
				size = math.Round(size)
			}
			v, err := measure.FloatValue(size)
			if err != nil {
				rt.Fatal(err)
			}
			s.read(key, v.Token(), measure.OffBench, basis(rapid.SampledFrom([]measure.Basis{measure.Measured, measure.Stated}).Draw(rt, "basis")))
		}
		for _, f := range s.run() {
			checkWhole(rt, f)
		}
	})
}
