package measure

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"
)

// fixedKeys are the names that files of this format use. A key is never renamed: losing one here
// would make files unreadable, so they are listed apart from the table.
var fixedKeys = strings.Fields(`
	datum.slope gearbox.slope shaft.slope pinion.slope gearbox.plan shaft.plan pinion.plan
	front_shaft.slope front_shaft.plan shaft.phase front_shaft.phase pinion.windup_drive pinion.windup_coast

	shaft.gap front_flange.z rear_flange.z front_flange.y rear_flange.y
	front_end.face_to_joint rear_end.face_to_joint gearbox.y_front gearbox.y_rear gearbox.y_span
	wheelbase.left wheelbase.right track.width

	hub.height hub_left.height hub_right.height bump.gap bump.rubber

	shaft.length slip.usable slip.exposed tube.od tube.wall tube.material shaft.mass
	front_shaft.length front_shaft.tube_od front_shaft.tube_wall
	centre_bearing.bore centre_bearing.offset centre_bearing.height centre_bearing.bolt_span

	obstacle.gap obstacle.station obstacle.side

	spring.front_half spring.rear_half spring.eye_rise spring.eye_offset spring.pad_z spring.rate
	lower_link.chassis_x lower_link.chassis_z lower_link.axle_x lower_link.axle_z
	upper_link.chassis_x upper_link.chassis_z upper_link.axle_x upper_link.axle_z
	rear_joint.x rear_joint.z

	slip_yoke.barrel slip_yoke.barrel_length tail_bush.bore tail_seal.depth

	adapter.thickness flywheel.face fingers.height fingers.travel fingers.travel_max fingers.wear
	bellhousing.depth bearing.height guide_tube.length slave.stroke input_shaft.spline_start input_shaft.spline_end
	input_shaft.tip input_shaft.nose input_shaft.tip_dia disc_hub.front disc_hub.rear
	spigot.face spigot.length spigot.bore_depth spigot.bore flywheel.bolt_clear
	disc.od disc.id flywheel.friction_od cover.friction_od

	flywheel.bolts flywheel.bolt_circle flywheel.register crank.bolts crank.bolt_circle crank.register
	cover.bolts cover.bolt_circle bellhousing.bore_runout bellhousing.face_runout flywheel.runout
	ring_gear.teeth starter.pinion_teeth

	retainer.kind retainer.thread retainer.pitch retainer.grade retainer.torque retainer.reach retainer.nut_factor

	engine_gearbox.mass engine_gearbox.x engine_gearbox.y lift_front.mass lift_front.x lift_rear.mass lift_rear.x
	old_engine_gearbox.mass old_engine_gearbox.x mount_left.x mount_left.y mount_right.x mount_right.y
	mount_rear.x mount_rear.y mount_left.rating mount_right.rating mount_rear.rating
	wheelbase.length front_axle.mass rear_axle.mass front_axle.limit rear_axle.limit
	sling.legs sling.angle sling.limit

	engine.rpm_max engine.torque_max gear.lowest gear.highest transfer.low transfer.high converter.ratio
	axle.ratio tyre.code tyre.radius road.speed_max joint.angle_limit joint.torque_rating joint.life_torque
	shaft.torque_mean tube.yield cover.clamp_force disc.friction tyre.friction

	fit.direction fit.starter fit.dowels fit.selector fit.speedo fit.handbrake
	fit.exhaust fit.loop fit.brakehose fit.breather fit.bumpstop fit.ground

	order.number order.name order.phone order.mail order.vehicle order.measured_by order.needed_by order.cross order.change
	order.quantity order.work order.stood order.springs order.body order.stroke order.tolerance order.slip_end order.boot
	order.grease order.nipples

	shaft.closed as_built.closed_length as_built.length as_built.front_length as_built.stroke as_built.phase as_built.front_phase
	as_built.tube_od as_built.tube_wall as_built.tube_material as_built.tube_yield as_built.front_tube_od as_built.front_tube_wall
	as_built.mass as_built.joint_torque as_built.joint_angle as_built.front_pilot as_built.front_bolt_circle as_built.rear_pilot
	as_built.rear_bolt_circle as_built.runout as_built.balance_grade as_built.balance_speed as_built.front_bolt_torque
	as_built.rear_bolt_torque
`)

// times writes out part.dimension for every part and dimension.
func times(parts, dimensions string) []string {
	var keys []string
	for _, p := range strings.Fields(parts) {
		for _, d := range strings.Fields(dimensions) {
			keys = append(keys, p+"."+d)
		}
	}
	return keys
}

func allFixedKeys() []string {
	return slices.Concat(fixedKeys,
		times("front_end rear_end front_mate rear_mate",
			"pilot pilot_depth pilot_kind bolts bolt_size bolt_circle bolt_chord bolt_chord_2 cap_dia cap_span clip runout"),
		times("front_end rear_end front_mate rear_mate",
			"cap_dia_2 cap_span_2 ear_gap face_od face_thick hole_dia bolt_pitch bolt_length bolt_grade bolt_torque"),
		times("front_mate rear_mate slip tube centre_bearing", "supply condition"),
		times("input_shaft disc_hub output_shaft slip_yoke slip_male slip_female",
			"splines major minor length over_pins pin_dia flank hardness"))
}

func TestEveryFixedKeyIsAPointAndEveryPointAFixedKey(t *testing.T) {
	want := allFixedKeys()
	for _, key := range want {
		if _, ok := PointOf(key); !ok {
			t.Errorf("%s is missing from the table of points; files may hold it, so it can't go", key)
		}
	}
	for _, p := range Points {
		if !slices.Contains(want, p.Key) {
			t.Errorf("%s is not among the fixed keys; add it to fixedKeys in measure/points_test.go: from then on files may hold it, and it keeps its name", p.Key)
		}
	}
	slices.Sort(want)
	if len(want) != len(slices.Compact(want)) {
		t.Error("a key stands twice among the fixed keys")
	}
}

func TestEveryPointIsWhole(t *testing.T) {
	keyForm := regexp.MustCompile(`^[a-z][a-z_]*\.[a-z][a-z0-9_]*$`)
	cautions := []string{"", CautionUnder, CautionHanging, CautionBump, CautionLift, CautionTurning, CautionClutch, CautionWeld}
	seen := map[string]bool{}
	for _, p := range Points {
		fault := func(format string, args ...any) { t.Errorf("%s: %s", p.Key, fmt.Sprintf(format, args...)) }
		if seen[p.Key] {
			fault("stands in the table twice")
		}
		seen[p.Key] = true
		if !keyForm.MatchString(p.Key) {
			fault("is not of the form part.dimension")
		}
		if p.Group == "" {
			fault("belongs to no group")
		}
		// A phone shows about four lines of 28 characters above the keypad.
		if n := utf8.RuneCountInString(p.Question); n == 0 || n > 110 {
			fault("question of %d characters; 1 to 110 fit", n)
		}
		if !strings.Contains(p.Question, "?") {
			fault("question %q asks nothing", p.Question)
		}
		if n := utf8.RuneCountInString(p.Place); n == 0 || n > 110 {
			fault("place of %d characters; 1 to 110 fit", n)
		}
		if !strings.HasSuffix(p.Place, ".") {
			fault("place %q is not a sentence", p.Place)
		}
		if strings.Contains(p.Question+p.Place, "PART") {
			fault("still says PART")
		}
		if !slices.Contains(cautions, p.Caution) {
			fault("caution %q is not known", p.Caution)
		}
		if p.Optional && p.Wanted == nil {
			fault("is optional, but wanted nowhere")
		}
		for _, s := range p.Wanted {
			if !slices.Contains(States, s) {
				fault("is wanted in %s, which the route does not visit", s)
			}
		}
	}
}

func TestEveryPointHasARangeThatItCanHold(t *testing.T) {
	for _, p := range Points {
		if p.Quantity == Text {
			if p.Example() == "" {
				t.Errorf("%s: a text needs an example", p.Key)
			}
			continue
		}
		if p.Low >= p.High {
			t.Errorf("%s: range %g … %g is not in order", p.Key, p.Low, p.High)
		}
		if p.Sense == Unsigned && p.Low < 0 {
			t.Errorf("%s: takes no negative value, but its range begins at %g", p.Key, p.Low)
		}
		if p.Sense != Unsigned && p.Low >= 0 {
			t.Errorf("%s: has a side, but its range %g … %g has none", p.Key, p.Low, p.High)
		}
		for _, edge := range []float64{p.Low, p.High} {
			v, err := FloatValue(edge)
			if err != nil {
				t.Fatal(err)
			}
			r := Reading{Point: p.Key, Value: v, Unit: p.Quantity.Base()}
			if err := p.Possible(r); err != nil {
				t.Errorf("%s: the edge of its own range is refused: %v", p.Key, err)
			}
		}
		for _, c := range p.Codes {
			if !p.Plausible(float64(c.Value)) || c.Means == "" {
				t.Errorf("%s: answer %d %q lies outside its range or means nothing", p.Key, c.Value, c.Means)
			}
		}
		if (p.Quantity == Answer) != (len(p.Codes) > 0) {
			t.Errorf("%s: answers have codes, sizes have none", p.Key)
		}
	}
}

func TestEverySignIsAskedForAsASide(t *testing.T) {
	asks := map[Sense]string{
		FrontHigh: "Which end is high?", FrontLeft: "to which side", Clockwise: "which way", Above: "above",
		LeftOf: "which side", ForwardOf: "ahead of", GearboxSide: "On which side", EngineSide: "On which side", Outward: "stand out",
	}
	for _, p := range Points {
		if p.Sense == Unsigned {
			continue
		}
		ask, ok := asks[p.Sense]
		if !ok {
			t.Errorf("%s: sense %q is not known", p.Key, p.Sense)
		}
		if !strings.Contains(strings.ToLower(p.Question), strings.ToLower(ask)) {
			t.Errorf("%s: %q does not ask %q", p.Key, p.Question, ask)
		}
		if strings.Contains(p.Question, "+") || strings.Contains(p.Question, "minus") || strings.Contains(p.Question, "sign") {
			t.Errorf("%s: %q asks for a sign", p.Key, p.Question)
		}
	}
}

func TestEveryPointBelongsToSomeLayout(t *testing.T) {
	for _, p := range Points {
		found := false
		for _, l := range someLayouts() {
			found = found || p.In(l)
		}
		if !found {
			t.Errorf("%s belongs to no layout", p.Key)
		}
	}
}

// someLayouts writes out every layout of the required members, drives and clutch.
func someLayouts() []Layout {
	var all []Layout
	for _, shafts := range []int{1, 2} {
		for _, slip := range []string{"shaft", "gearbox"} {
			for _, axle := range []string{"leaf", "links", "fixed"} {
				for _, drives := range []string{"", "rear", "front", "transfer"} {
					for _, clutch := range []string{"", "push", "pull", "none"} {
						all = append(all, Layout{Shafts: shafts, Slip: slip, Axle: axle, FrontJoint: "single",
							RearJoint: "single", Drives: drives, Clutch: clutch})
					}
				}
			}
		}
	}
	return all
}

func TestLayoutsHaveTheirParts(t *testing.T) {
	one := NewLayout()
	for _, tt := range []struct {
		name   string
		key    string
		change func(*Layout)
	}{
		{"a second shaft", "front_shaft.slope", func(l *Layout) { l.Shafts = 2 }},
		{"a centre bearing", "centre_bearing.bore", func(l *Layout) { l.Shafts = 2 }},
		{"a slip yoke", "slip_yoke.barrel", func(l *Layout) { l.Slip = "gearbox" }},
		{"a tail bush", "tail_bush.bore", func(l *Layout) { l.Slip = "gearbox" }},
		{"links", "lower_link.axle_x", func(l *Layout) { l.Axle = "links" }},
		{"a transfer box", "transfer.high", func(l *Layout) { l.Drives = "transfer" }},
		{"a transfer box before the front axle", "transfer.high", func(l *Layout) { l.Drives = "front" }},
	} {
		p, _ := PointOf(tt.key)
		with := one
		tt.change(&with)
		if p.In(one) || !p.In(with) {
			t.Errorf("%s: %s should appear with it and only with it", tt.name, tt.key)
		}
	}
	none := one
	none.Clutch = "none"
	if p, _ := PointOf("fingers.travel"); !p.In(one) || p.In(none) {
		t.Error("an unsaid clutch is asked for, no clutch is not")
	}
}

// What is read lying under the vehicle, at an open clutch, or with loaded springs says so first.
func TestWhatCanHurtCarriesItsCaution(t *testing.T) {
	for _, row := range []struct{ point, caution, source string }{
		{"front_end.pilot", CautionUnder, "common practice, no source: the vehicle's flange is read lying under it"},
		{"rear_end.cap_dia", CautionUnder, "common practice, no source: the vehicle's flange is read lying under it"},
		{"rear_mate.cap_dia", "", "common practice, no source: the shaft's flange is read on the bench"},
		{"front_end.runout", CautionTurning, "common practice, no source: what turns is the greater danger"},
		{"disc.od", CautionClutch, "common practice, no source: dust of old facings may hold asbestos"},
		{"fingers.height", CautionClutch, "common practice, no source: the cover's spring is loaded"},
		{"fit.bumpstop", CautionBump, "common practice, no source: the axle is pressed onto its stops"},
		{"fit.brakehose", CautionHanging, "common practice, no source: the wheels hang"},
	} {
		if p, ok := PointOf(row.point); !ok || p.Caution != row.caution {
			t.Errorf("%s: caution %q, want %q (%s)", row.point, p.Caution, row.caution, row.source)
		}
	}
}
