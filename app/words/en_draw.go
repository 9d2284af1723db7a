package words

// enDraw: what the drawings letter.
var enDraw = table{
	"draw.title":        "{0}: {1}",
	"draw.title.side":   "Shaft line from the side, front of the vehicle on the left",
	"draw.title.top":    "Shaft line from above, front of the vehicle on the left",
	"draw.state_height": "{0}, hub {1 mm} below the arch",
	"draw.height":       "hub {0 mm} below the arch",
	"draw.computed":     "{0}, computed and not read",

	"draw.slope":           "{0} {1}",
	"draw.plan":            "{0} {1}",
	"draw.plan_unread":     "{0} {1}, not read",
	"draw.joint":           "{0} {1}",
	"draw.no_length":       "length not read",
	"draw.slip":            "slip drawn out {0}",
	"draw.worst":           "{0}: {1}, limit {2}",
	"draw.end":             "{0 state}, hub at {1 mm}",
	"draw.figure.residual": "residual {0}",
	"draw.figure.at":       "{0 mm} below the arch",
	"draw.residual":        "Residual of the joints together: {0}.",

	"draw.obstacle":        "{0}: gap {1}",
	"draw.room":            "{0}; least room over the travel {1}: {2}, limit {3}",
	"draw.obstacle_beside": "{0}: gap {1}, beside; left or right not read",

	"draw.unread": "Not read: {0}.",
	"draw.legend.side": "Slopes count up toward the front. Full lines were read, bands are their doubt, dashed lines are computed. Thin " +
		"grey outlines only show where a part is. One scale in both directions.",
	"draw.legend.top": "Plan angles count toward the left at the front; the vehicle's left is below. Full lines were read, bands are " +
		"their doubt, dashed lines are computed or assumed. Thin grey outlines only show where a part is.",
	"draw.not_to_scale": "Nobody read the shaft's length: it is drawn as {0 mm}, and only angles are true.",

	"draw.title.travel":   "Over the axle's travel, wheels hanging on the left",
	"draw.panel.angles":   "joint angles, °",
	"draw.panel.residual": "residual, °",
	"draw.panel.length":   "shaft length, mm",
	"draw.panel.slide":    "slip against ride height, mm",
	"draw.limit":          "limit {0}",
	"draw.no_travel":      "The axle's travel is not known.",
	"draw.legend.travel": "Below: height of the hub under the arch, mm. Dots with bars were read, dashed lines are computed, bands are their " +
		"doubt.",

	"draw.title.stack":  "Clutch cut open, engine on the left",
	"draw.no_clutch":    "This build has no clutch.",
	"draw.block_face":   "block face",
	"draw.gearbox_face": "gearbox face",
	"draw.point":        "{0} {1}",
	"draw.gap":          "gap {0}",
	"draw.judged":       "{0}: {1}",
	"draw.if_stated":    "{0} if what was stated is true",
	"draw.engaged":      "engaged {0}",
	"draw.legend.stack": "To scale along the shaft. Thick lines were read; thin grey outlines only show where a part is.",

	"draw.title.mounts": "Engine and gearbox on their mounts from above, front of the vehicle on the left",
	"draw.load":         "{0} {1}",
	"draw.of":           "{0} of {1}",
	"draw.mass":         "centre of mass, {0}",
	"draw.mass_unread":  "centre of mass, mass not read",
	"draw.front_axle":   "front axle line",
	"draw.middle":       "middle of the vehicle",
	"draw.legend.mounts": "To scale; the vehicle's left is below. Loads are the greatest, standing still or at full torque in the lowest " +
		"gear. The centre of mass lies within the band.",

	"draw.title.ends":      "Flange faces to scale, above on the vehicle, below on the shaft",
	"draw.face.front_end":  "front, vehicle",
	"draw.face.front_mate": "front, shaft",
	"draw.face.rear_end":   "rear, vehicle",
	"draw.face.rear_mate":  "rear, shaft",

	"draw.pilot":        "pilot ⌀ {0}",
	"draw.pilot_male":   "pilot ⌀ {0}, male",
	"draw.pilot_female": "pilot ⌀ {0}, female",
	"draw.bolt_circle":  "bolt circle ⌀ {0}",
	"draw.bolts":        "{0} × ⌀ {1} on ⌀ {2}",
	"draw.legend.ends":  "Thick circles were read; the thin grey rim only shows where the flange is. Holes are drawn evenly spaced.",

	"draw.title.splines": "Tooth forms that agree with what was read, laid over each other",
	"draw.candidate":     "{0} {1}, flanks {2}",
	"draw.read_diameter": "read ⌀ {0}",
	"draw.no_candidate":  "No standard spline agrees with what was read, or too little was: {0}.",
	"draw.no_splines":    "No splines were counted.",
	"draw.legend.splines": "Thick arcs are the diameters read, dashed lines the forms of the standards. T: teeth. That sizes agree says " +
		"nothing of lash: try by hand.",

	"cli.drawn": "drawn into {0}",

	"help.draw": "draw a build as a picture",
	"help.draw.long": `Draws a build into an SVG or PNG file. VIEW is one of

  side, top  the shaft line to scale, with slopes, angles and lengths, the ends of the travel, obstacles and gaps
  travel     joint angles, residual and length over the height of the axle
  stack      the clutch cut open, with gap, stroke and engagement
  mounts     engine and gearbox on their mounts from above, with loads and centre of mass
  ends       the flange faces with pilot and bolt circle
  splines    the tooth forms of standard splines that agree with what was read

--at moves the axle to a HEIGHT from hub to arch, in mm, between hanging and bump; without it the vehicle stands as
it was read. What was not read is not drawn: a line under the picture names it.`,

	"help.flag.picture": "file to write, .svg or .png",
	"help.flag.view":    "what to draw",
	"help.flag.at":      "height of the hub below the arch to move the axle to, in mm",
	"help.flag.theme":   "light or dark",
}
