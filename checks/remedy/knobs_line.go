package remedy

import (
	"math"

	"yokebook/checks"
	"yokebook/measure"
)

// angled are the checks that the angles of the line decide.
var angled = []string{"joint.angle", "joint.most_angle", "joint.least_angle", "joint.residual", "joint.torsional",
	"joint.inertia_drive", "joint.inertia_coast", "joint.life"}

// phased are those that the turn of the yokes against each other decides.
var phased = []string{"joint.residual", "joint.torsional"}

// lineKnobs turn and lift what the shaft runs between.
var lineKnobs = []Knob{
	{Key: "pinion.angle", Unit: "deg", Step: 0.1, Least: -6, Most: 6, Usual: 1, Source: practice, Serves: angled,
		usable: func(v *vehicle) bool { return v.has("pinion.slope") && v.build.Layout.Drives != "transfer" },
		change: turnPinion, costs: costsOfPinion},
	{Key: "gearbox.mount", Unit: "mm", Step: 0.5, Least: -40, Most: 40, Usual: 15, Source: practice, Serves: angled,
		usable: func(v *vehicle) bool { _, ok := v.lever(); return ok && v.has("gearbox.slope") },
		change: liftMount, costs: costsOfMount},
	{Key: "gearbox.angle", Unit: "deg", Step: 0.1, Least: -6, Most: 6, Usual: 1, Source: practice, Serves: angled,
		usable: func(v *vehicle) bool { _, ok := v.lever(); return !ok && v.has("gearbox.slope") },
		change: turnGearbox, costs: costsOfGearbox},
	{Key: "gearbox.height", Unit: "mm", Step: 0.5, Least: -60, Most: 60, Usual: 30, Source: practice, Serves: angled,
		usable: func(v *vehicle) bool { gear, _ := v.shafts(); return v.has("gearbox.slope", gear+".slope") },
		change: func(v *vehicle, e *edit, mm float64) {
			v.carry(e, func(measure.State) moved { return moved{gearbox: spot{0, mm}} })
		}, costs: func(_ *vehicle, mm float64) []checks.Message {
			return []checks.Message{{Key: MsgRoomGearbox, Args: []any{mm}}}
		}},
	{Key: "shaft.phase", Unit: "deg", Step: 1, Least: -90, Most: 90, Usual: 30, Source: teeth, Serves: phased,
		usable: func(v *vehicle) bool { return v.has("shaft.phase") }, amounts: byTeeth,
		change: func(_ *vehicle, e *edit, deg float64) { e.shiftAll("shaft.phase", deg) }, costs: costsOfPhase},
	{Key: "front_shaft.phase", Unit: "deg", Step: 1, Least: -90, Most: 90, Usual: 30, Source: teeth, Serves: phased,
		usable: func(v *vehicle) bool { return v.build.Layout.Shafts == 2 && v.has("front_shaft.phase") },
		change: func(_ *vehicle, e *edit, deg float64) { e.shiftAll("front_shaft.phase", deg) }, costs: costsOfPhase},
	{Key: "engine.speed", Unit: "rev/min", Step: 50, Least: -2500, Most: 0, Usual: 250, Source: practice, alone: true,
		Serves: []string{"joint.torsional", "joint.inertia_drive", "joint.inertia_coast", "joint.life", "shaft.critical_speed", "shaft.half_critical"},
		usable: func(v *vehicle) bool { return v.has("engine.rpm_max", "gear.highest") },
		change: func(_ *vehicle, e *edit, revs float64) { e.shiftAll("engine.rpm_max", revs) },
		costs:  func(*vehicle, float64) []checks.Message { return []checks.Message{{Key: MsgSlower}} }},
}

// turnPinion turns the axle housing about its centre, front end up: pinion, the joint on it, and the
// axle's ends of its links.
func turnPinion(v *vehicle, e *edit, deg float64) {
	e.shiftAll("pinion.slope", deg)
	about := func(x, z string) spot {
		var at spot
		at.x, _ = v.bench(x)
		at.z, _ = v.bench(z)
		way := at.turned(deg).minus(at)
		if v.has(x, z) {
			e.shiftAll(x, way.x)
			e.shiftAll(z, way.z)
		}
		return way
	}
	joint := about("rear_joint.x", "rear_joint.z")
	about("lower_link.axle_x", "lower_link.axle_z")
	about("upper_link.axle_x", "upper_link.axle_z")
	if v.has("rear_joint.x", "rear_joint.z") {
		v.carry(e, func(measure.State) moved { return moved{axle: joint} })
	}
}

// turnGearbox turns engine and gearbox about the joint at the gearbox, which stays where it is.
func turnGearbox(v *vehicle, e *edit, deg float64) {
	e.shiftAll("gearbox.slope", deg)
	if v.build.Layout.Slip == "gearbox" {
		v.carry(e, func(measure.State) moved { return moved{gearboxDeg: deg} })
	}
}

// lever is how far the rear mount stands behind the engine's mounts, mm, about which it turns; not ok
// where the mounts were not placed.
func (v *vehicle) lever() (mm float64, ok bool) {
	if !v.has("mount_left.x", "mount_right.x", "mount_rear.x") {
		return 0, false
	}
	left, _ := v.bench("mount_left.x")
	right, _ := v.bench("mount_right.x")
	rear, _ := v.bench("mount_rear.x")
	mm = (left+right)/2 - rear
	return mm, mm > 50
}

// tilt is the turn of engine and gearbox, front end up, when the rear mount is raised.
func (v *vehicle) tilt(mm float64) float64 {
	lever, _ := v.lever()
	return -math.Atan(mm/lever) / degree
}

// liftMount raises the rear mount: engine and gearbox turn about the engine's mounts, and the joint at
// the gearbox rises by its own distance from them; where nobody placed it, it is taken at the mount.
func liftMount(v *vehicle, e *edit, mm float64) {
	deg := v.tilt(mm)
	e.shiftAll("gearbox.slope", deg)
	v.carry(e, func(s measure.State) moved {
		behind, ok := v.behindMounts(s)
		if !ok {
			behind, _ = v.lever()
		}
		joint := spot{-behind, 0}
		return moved{gearbox: joint.turned(deg).minus(joint), gearboxDeg: deg}
	})
}

// behindMounts is how far the joint at the gearbox stands behind the engine's mounts in a state.
func (v *vehicle) behindMounts(s measure.State) (mm float64, ok bool) {
	gear, _ := v.shafts()
	base, placed := v.bench("wheelbase.length")
	if !placed || v.build.Layout.Shafts != 1 || !v.has("rear_joint.x", gear+".length", gear+".slope") {
		return 0, false
	}
	left, _ := v.bench("mount_left.x")
	right, _ := v.bench("mount_right.x")
	joint, _ := v.bench("rear_joint.x")
	slope, _ := v.read(gear+".slope", s)
	axle := -base
	if v.build.Layout.PinionInFront() {
		axle = 0
	}
	at := axle + joint + direction(slope).by(v.toward()*v.reach(gear, s)).x
	return (left+right)/2 - at, true
}

// byTeeth are the turns that the sliding spline allows; whole degrees where it was not counted, or
// where the yokes of the shaft are not joined by one.
func byTeeth(k *Knob, v *vehicle) []float64 {
	teeth, ok := v.bench("slip_male.splines")
	if !ok || teeth < 4 || v.build.Layout.Slip != "shaft" {
		return (&Knob{Step: k.Step, Least: k.Least, Most: k.Most}).steps(v)
	}
	each := 360 / teeth
	return (&Knob{Step: each, Least: k.Least, Most: k.Most}).steps(v)
}
