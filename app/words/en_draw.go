package words

// enDraw: what the drawings letter.
var enDraw = table{
	"draw.title":        "{0}: {1}",
	"draw.title.side":   "Shaft line from the side, front of the vehicle on the left",
	"draw.title.top":    "Shaft line from above, front of the vehicle on the left",
	"draw.state_height": "{0}, hub {1 mm} below the arch",
	"draw.height":       "hub {0 mm} below the arch",
	"draw.computed":     "{0}, computed and not read",

	"draw.slope":       "{0} {1}",
	"draw.plan":        "{0} {1}",
	"draw.plan_unread": "{0} {1}, not read",
	"draw.joint":       "{0} {1}",
	"draw.no_length":   "length not read",
	"draw.slip":        "slip drawn out {0}",
	"draw.worst":       "{0}: {1}, limit {2}",
	"draw.end":         "{0 state}, {1 mm}",
	"draw.residual":    "What the joints leave uneven (residual): {0}.",

	"draw.obstacle":        "{0}: gap {1}",
	"draw.obstacle_beside": "{0}: gap {1}, beside; left or right not read",

	"draw.unread": "Not read: {0}.",
	"draw.legend.side": "Slopes count up toward the front. Full lines were read, bands are their doubt, dashed lines are computed. Thin " +
		"grey outlines only show where a part is. One scale in both directions.",
	"draw.legend.top": "Plan angles count toward the left at the front; the vehicle's left is below. Full lines were read, bands are " +
		"their doubt, dashed lines are computed. Thin grey outlines only show where a part is.",
	"draw.not_to_scale": "Nobody read the shaft's length: it is drawn as {0 mm}, and only angles are true.",

	"cli.drawn": "drawn into {0}",

	"help.draw": "draw a build as a picture",
	"help.draw.long": `Draws a build into an SVG or PNG file. VIEW is side or top: the shaft line. It is to scale, with
slopes, angles and lengths lettered, the ends of the axle's travel as ghosts, and obstacles with their gap.

--at moves the axle to a HEIGHT from hub to arch, in mm, between hanging and bump; without it the vehicle stands as
it was read. What was not read is not drawn: a line under the picture names it.`,

	"help.flag.picture": "file to write, .svg or .png",
	"help.flag.view":    "what to draw",
	"help.flag.at":      "height of the hub below the arch to move the axle to, in mm",
	"help.flag.theme":   "light or dark",
}
