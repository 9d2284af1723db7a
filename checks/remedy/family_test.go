package remedy_test

import (
	"slices"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

// bare reads points on the bench with a caliper, plate states them; pairs of point and value.
func (s *bench) bare(pairs ...string) {
	if len(s.b.Instruments) == 0 || !slices.ContainsFunc(s.b.Instruments, func(in measure.Instrument) bool { return in.ID == "caliper" }) {
		s.tool("caliper", "mm", "0.05")
	}
	for i := 0; i < len(pairs); i += 2 {
		if p, _ := measure.PointOf(pairs[i]); p.Quantity == measure.Length {
			s.read(pairs[i], pairs[i+1], measure.OffBench, "caliper")
		} else {
			s.read(pairs[i], pairs[i+1], measure.OffBench)
		}
	}
}

func (s *bench) plate(pairs ...string) {
	for i := 0; i < len(pairs); i += 2 {
		s.state(pairs[i], pairs[i+1])
	}
}

func stack(s *bench) {
	s.bare("adapter.thickness", "0", "bellhousing.depth", "150.00", "bearing.height", "70.00", "flywheel.face", "25.00", "fingers.height", "43.00")
	s.plate("slave.stroke", "20.0", "fingers.wear", "4.00", "fingers.travel", "11.0", "fingers.travel_max", "15.5")
}

func faces(s *bench) {
	s.bare("front_end.bolts", "4", "front_end.bolt_circle", "100.00", "front_end.pilot", "60.00", "front_end.pilot_kind", "0")
	s.bare("front_mate.bolts", "6", "front_mate.bolt_circle", "95.00", "front_mate.pilot", "57.00", "front_mate.pilot_kind", "1")
}

func tube(s *bench) {
	s.line("3.0", "4.5", "3.0")
	s.read("shaft.length", "1700", measure.RideKerb)
	s.bare("tube.od", "60.00", "tube.wall", "2.00")
	s.plate("engine.rpm_max", "4200", "gear.highest", "0.850")
}

func nut(s *bench) {
	s.bare("slip_male.major", "40.00", "slip_male.minor", "36.00", "slip_female.minor", "37.00", "slip_male.flank", "30")
	s.plate("engine.torque_max", "300", "gear.lowest", "4.00000", "retainer.thread", "20.000", "retainer.pitch", "1.5000", "retainer.torque", "20.0")
	s.b.Readings = append(s.b.Readings, measure.Reading{ID: "019d2a00-0000-7000-8000-00000000fff0", Point: "retainer.grade",
		Value: measure.TextValue("10.9"), Basis: measure.Stated, Ride: measure.Bench, Setup: 1})
}

// families has an invented build for every family that a knob serves, with one thing out.
var families = []struct {
	name, check, subject string
	build                func(s *bench)
	knob                 string // one of those that must do it
}{
	{"angle at the rear joint", "joint.angle", "rear", func(s *bench) { s.line("3.0", "5.0", "-1.0") }, "pinion.angle"},
	{"residual, turned at the gearbox", "joint.residual", "", func(s *bench) { s.line("0.0", "4.0", "4.0") }, "gearbox.angle"},
	{"residual, gearbox on a mount with its lever", "joint.residual", "", func(s *bench) {
		s.line("0.0", "4.0", "4.0")
		s.bare("mount_left.x", "-100", "mount_right.x", "-100", "mount_rear.x", "-900")
	}, "gearbox.mount"},
	{"yokes a quarter out of phase", "joint.residual", "", func(s *bench) {
		s.tool("finder", "deg", "0.1")
		for _, p := range []string{"gearbox.plan", "shaft.plan", "pinion.plan"} {
			s.read(p, "0", measure.RideKerb, "finder")
		}
		s.read("gearbox.slope", "1.0", measure.RideKerb, "finder")
		s.read("shaft.slope", "3.7", measure.RideKerb, "finder")
		s.read("pinion.slope", "1.0", measure.RideKerb, "finder")
		s.read("shaft.phase", "90", measure.OffBench, "finder")
	}, "shaft.phase"},
	{"bending speed", "shaft.critical_speed", "", tube, "shaft.tube"},
	{"stress of the tube", "shaft.stress", "", func(s *bench) {
		tube(s)
		s.plate("engine.torque_max", "400", "gear.lowest", "6.00", "tube.yield", "350")
		s.b.Layout.Use = "offroad"
	}, "shaft.tube"},
	{"room beside the shaft", "shaft.clearance", "", func(s *bench) {
		s.b.Layout.Axle = "fixed"
		tube(s)
		s.read("obstacle.gap", "50", measure.RideKerb)
		s.read("obstacle.station", "800", measure.RideKerb)
		s.read("obstacle.side", "1", measure.RideKerb)
	}, "obstacle.away"},
	{"faces that don't match", "flange.match", "front_end", faces, "front_end.adapter"},
	{"release bearing too far back", "clutch.release", "", stack, "clutch.bearing"},
	{"release bearing too far back, by the flywheel", "clutch.release", "", stack, "clutch.flywheel"},
	{"hub off its splines", "clutch.hub", "", func(s *bench) {
		s.bare("adapter.thickness", "20.00", "flywheel.face", "25.00", "disc_hub.front", "-8.00", "disc_hub.rear", "17.00",
			"input_shaft.spline_start", "20.00", "input_shaft.spline_end", "60.00", "flywheel.bolt_clear", "20.00")
	}, "clutch.disc"},
	{"nose short of its bearing", "clutch.spigot", "", func(s *bench) {
		s.bare("adapter.thickness", "25.00", "input_shaft.tip", "20.00", "input_shaft.nose", "22.00", "spigot.face", "5.00", "spigot.length", "15.00",
			"spigot.bore_depth", "45.00")
		s.plate("spigot.bore", "15.050", "input_shaft.tip_dia", "15.000")
	}, "clutch.spigot_bearing"},
	{"flange nut hand tight", "retainer.clamp", "", nut, "retainer.torque"},
	{"sling too flat", "lift.slings", "", func(s *bench) {
		s.bare("sling.legs", "2", "sling.angle", "25", "engine_gearbox.mass", "350")
		s.plate("sling.limit", "1000")
	}, "sling.angle"},
	{"front axle overloaded", "mass.axles", "front_axle", func(s *bench) {
		s.read("front_axle.mass", "1000", measure.RideLaden)
		s.bare("wheelbase.length", "2600", "engine_gearbox.mass", "450", "engine_gearbox.x", "-100", "old_engine_gearbox.mass", "300",
			"old_engine_gearbox.x", "-100")
		s.plate("front_axle.limit", "1130")
	}, "engine.place"},
}

// For each family: what is out becomes clear when the remedy is applied and checked again.
func TestEachFamilyHasARemedyThatCures(t *testing.T) {
	served := map[string]bool{}
	for _, f := range families {
		s := newBench(t, measure.NewLayout())
		f.build(s)
		before := ofFindings(s.b, f.check, f.subject)
		if !slices.ContainsFunc(before, func(g checks.Finding) bool { return g.Verdict == checks.Out }) {
			t.Errorf("%s: nothing is out, but %+v", f.name, before)
			continue
		}
		x := troubleOf(t, s.solve(), f.check, f.subject)
		i := slices.IndexFunc(x.Singles, func(r remedy.Remedy) bool { return r.Changes[0].Knob == f.knob })
		if i < 0 {
			t.Errorf("%s: %s does not do it; of %d singles, short %v", f.name, f.knob, len(x.Singles), x.Short)
			continue
		}
		for _, w := range x.Singles {
			changed, ok := remedy.Apply(s.b, w.Changes...)
			if !ok {
				t.Fatalf("%s: %v can't be applied", f.name, w.Changes)
			}
			for _, g := range ofFindings(changed, f.check, f.subject) {
				if g.Verdict != checks.Clear {
					t.Errorf("%s: after %v %s is %s", f.name, w.Changes, g.Key(), g.Verdict)
				}
			}
			if w.Changes[0].Amount < w.From || w.Changes[0].Amount > w.To {
				t.Errorf("%s: %v lies outside %g … %g", f.name, w.Changes, w.From, w.To)
			}
			if len(w.Costs) == 0 {
				t.Errorf("%s: %v costs nothing", f.name, w.Changes)
			}
		}
		served[strings.Split(f.check, ".")[0]] = true
	}
	for _, group := range []string{"joint", "shaft", "flange", "clutch", "retainer", "lift", "mass"} {
		if !served[group] {
			t.Errorf("no remedy of the family %s was tried", group)
		}
	}
}
