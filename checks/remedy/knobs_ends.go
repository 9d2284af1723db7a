package remedy

import (
	"yokebook/checks"
	"yokebook/measure"
)

// endKnobs bolt an adapter flange, piloted on both sides, between an end of the vehicle and its mate.
var endKnobs = []Knob{adapterFlange("front"), adapterFlange("rear")}

// otherKnobs change one thing that is not of the line.
var otherKnobs = []Knob{
	{Key: "obstacle.away", Unit: "mm", Step: 0.5, Least: 0, Most: 80, Usual: 20, Source: practice, Serves: []string{"shaft.clearance"},
		usable: func(v *vehicle) bool { return v.has("obstacle.gap") },
		change: func(_ *vehicle, e *edit, mm float64) { e.shiftAll("obstacle.gap", mm) },
		costs:  func(*vehicle, float64) []checks.Message { return []checks.Message{{Key: MsgObstacle}} }},
	{Key: "retainer.torque", Unit: "N·m", Step: 5, Least: -200, Most: 200, Usual: 40, Source: practice, Serves: []string{"retainer.clamp"},
		usable: func(v *vehicle) bool { return v.has("retainer.torque") },
		change: func(_ *vehicle, e *edit, nm float64) { e.shiftAll("retainer.torque", nm) },
		costs:  func(*vehicle, float64) []checks.Message { return []checks.Message{{Key: MsgRetorque}} }},
	{Key: "sling.angle", Unit: "deg", Step: 5, Least: 0, Most: 60, Usual: 20, Source: practice, Serves: []string{"lift.slings"},
		usable: func(v *vehicle) bool { return v.has("sling.angle") },
		change: func(_ *vehicle, e *edit, deg float64) { e.shiftAll("sling.angle", deg) },
		costs:  func(*vehicle, float64) []checks.Message { return []checks.Message{{Key: MsgSteeperSling}} }},
}

// placeKnobs move engine and gearbox along the vehicle, or fit other mounts.
var placeKnobs = []Knob{
	{Key: "engine.place", Unit: "mm", Step: 5, Least: -300, Most: 300, Usual: 40, Source: practice, Serves: []string{"mass.axles"},
		usable: func(v *vehicle) bool { return v.has("engine_gearbox.x") || v.has("lift_front.x", "lift_rear.x") },
		change: func(v *vehicle, e *edit, mm float64) {
			for _, p := range []string{"engine_gearbox.x", "lift_front.x", "lift_rear.x", "mount_left.x", "mount_right.x", "mount_rear.x"} {
				e.shiftAll(p, mm)
			}
			v.carry(e, func(measure.State) moved { return moved{gearbox: spot{mm, 0}} })
		},
		costs: func(_ *vehicle, mm float64) []checks.Message {
			return []checks.Message{{Key: MsgPlaceMoved, Args: []any{mm}}}
		}},
	mountRating("mount_left"), mountRating("mount_right"), mountRating("mount_rear"),
}

func mountRating(mount string) Knob {
	return Knob{Key: mount + ".rating", Unit: "kg", Step: 5, Most: 400, Usual: 60, Source: practice, Serves: []string{"mount.load"},
		usable: func(v *vehicle) bool { return v.has(mount + ".rating") },
		change: func(_ *vehicle, e *edit, kg float64) { e.shiftAll(mount+".rating", kg) },
		costs:  func(*vehicle, float64) []checks.Message { return []checks.Message{{Key: MsgStiffer}} }}
}

// leastAdapter is how thick an adapter flange is at least, mm, so that its screws and two pilots find room.
const leastAdapter = 12 // common practice, no source

func adapterFlange(end string) Knob {
	name := end + "_end"
	return Knob{Key: end + "_end.adapter", Unit: "mm", Step: 0.5, Most: 50, Usual: 15, Source: practice, Serves: []string{"flange.match"},
		amounts: onlyFrom(leastAdapter),
		usable: func(v *vehicle) bool {
			clip, strapped := v.bench(name + ".clip")
			return v.has(name+".bolts") && !(strapped && clip >= 3)
		},
		change: func(v *vehicle, e *edit, mm float64) {
			for _, d := range []string{".bolts", ".bolt_circle", ".bolt_chord", ".bolt_chord_2", ".pilot"} {
				if to, ok := v.bench(end + "_mate" + d); ok {
					e.setAll(name+d, to)
				}
			}
			if kind, ok := v.bench(end + "_mate.pilot_kind"); ok {
				e.setAll(name+".pilot_kind", 1-kind)
			}
			v.carry(e, func(s measure.State) moved { return v.shortened(end, s, mm) })
		},
		costs: func(_ *vehicle, mm float64) []checks.Message {
			return []checks.Message{{Key: MsgAdapterFlange, Args: []any{mm}}, {Key: MsgAdapterShort, Args: []any{mm}}}
		}}
}

// shortened moves the joint at one end along that end's axis toward the other.
func (v *vehicle) shortened(end string, s measure.State, mm float64) moved {
	box, _ := v.read("gearbox.slope", s)
	pinion, _ := v.read("pinion.slope", s)
	atGearbox := (end == "front") == (v.toward() > 0)
	if atGearbox {
		return moved{gearbox: direction(box).by(-v.toward() * mm)}
	}
	return moved{axle: direction(pinion).by(v.toward() * mm)}
}
