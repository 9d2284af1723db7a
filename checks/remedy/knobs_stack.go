package remedy

import "yokebook/checks"

var stacked = []string{"clutch.release", "clutch.hub", "clutch.spigot"}

// stackKnobs are the thicknesses between engine and gearbox.
var stackKnobs = []Knob{
	thickness("clutch.bearing", "bearing.height", -25, 25, 4, []string{"clutch.release"}, func(mm float64) string { return MsgBearing }),
	thickness("clutch.flywheel", "flywheel.face", -10, 25, 6, []string{"clutch.release", "clutch.hub"}, func(mm float64) string {
		if mm < 0 {
			return MsgFlywheelThin
		}
		return MsgFlywheel
	}),
	thickness("clutch.adapter", "adapter.thickness", -30, 60, 10, stacked, func(float64) string { return MsgAdapterPlate }),
	{Key: "clutch.disc", Unit: "mm", Step: 0.5, Least: -25, Most: 25, Usual: 8, Source: practice, Serves: []string{"clutch.hub"},
		usable: func(v *vehicle) bool { return v.has("disc_hub.front", "disc_hub.rear") },
		change: func(_ *vehicle, e *edit, mm float64) {
			e.shiftAll("disc_hub.front", mm)
			e.shiftAll("disc_hub.rear", mm)
		},
		costs: func(*vehicle, float64) []checks.Message { return []checks.Message{{Key: MsgOtherDisc}} }},
	thickness("clutch.spigot_bearing", "spigot.face", -40, 40, 8, []string{"clutch.spigot"}, func(float64) string { return MsgSpigotMoved }),
}

// thickness is a knob that moves one reading of the stack.
func thickness(key, point string, least, most, usual float64, serves []string, cost func(mm float64) string) Knob {
	return Knob{Key: key, Unit: "mm", Step: 0.5, Least: least, Most: most, Usual: usual, Source: practice, Serves: serves,
		usable: func(v *vehicle) bool { return v.has(point) },
		change: func(_ *vehicle, e *edit, mm float64) { e.shiftAll(point, mm) },
		costs: func(_ *vehicle, mm float64) []checks.Message {
			return []checks.Message{{Key: cost(mm), Args: []any{mm}}}
		}}
}
