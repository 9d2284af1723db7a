package words

import "yokebook/checks"

// enTravel: the axle's travel and the sliding spline.
var enTravel = table{
	"check.travel.agreement": "axle's path as read and as computed",
	"check.slip.travel":      "stroke of the sliding spline over the travel",
	"check.slip.engaged":     "spline engaged at the longest position",
	"check.slip.closing":     "stroke left at the shortest position",
	"check.slip.seal":        "slip yoke left in its seal at the longest position",
	"check.slip.length":      "length at which the shaft should be made",

	"help.sweep": "move the axle over its travel: length, angles, stroke",
	"help.sweep.long": `Moves the axle from hanging wheels to the bump stops, no more than 10 mm a step, and prints for each height the
shaft's length, the joint angles, residual and ripple of all joints together, and how far the sliding
spline is drawn out. Heights that were read name their state; all others are computed from them, in
the way that the first line names. Values are ± their 95 % bound.`,
	"cli.sweep.note":            "{0}",
	"cli.sweep.missing":         "missing: {0}",
	"cli.sweep.predicted":       "predicted",
	"cli.sweep.from_ride":       "ride {0}",
	"cli.column.sweep.height":   "HEIGHT",
	"cli.column.sweep.travel":   "TRAVEL",
	"cli.column.sweep.known":    "READ IN",
	"cli.column.sweep.length":   "LENGTH",
	"cli.column.sweep.out":      "DRAWN OUT",
	"cli.column.sweep.residual": "RESIDUAL",
	"cli.column.sweep.ripple":   "RIPPLE",

	"input.travel.radius":    "bow of the path between two heights",
	"input.travel.leaf_link": "link that stands for half a leaf spring",

	"word.fixed":    "the axle does not move",
	"word.links":    "from its links, solved exactly",
	"word.leaf":     "from its leaf springs, half a spring taken as a link",
	"word.read":     "drawn through the states that were read",
	"word.straight": "straight up, springs or links not read: wide",

	checks.MsgSlipLonger:   "make the shaft longer by {0 mm}, or engage more spline; then look again at the stroke left at the shortest position",
	checks.MsgSlipShorter:  "make the shaft shorter by {0 mm}, or it bottoms and pushes on gearbox and pinion bearings; then look again at the spline engaged",
	checks.MsgSlipStroke:   "no length of the shaft makes this spline do: with what must be left at both ends it takes {0 mm} of usable spline",
	checks.MsgSlipSeal:     "a longer barrel, or a longer shaft, by {0 mm}; then look again at the stroke left at the shortest position",
	checks.MsgPathDisputed: "readings and the sizes of springs or links don't agree: look at the heights and at both",

	checks.MsgSlipFalls: "DANGER: the slip can come apart and the shaft fall or flail. Don't drive, and don't let the wheels hang " +
		"with this shaft in: support the axle, tie the shaft up, nobody beneath it",

	checks.MsgPath:         "path of the axle: {0 word}",
	checks.MsgEyeInFront:   "which spring eye is fixed was not said: taken as the front one",
	checks.MsgComputedFrom: "computed, not read: from what was read {0 state}",
	checks.MsgHeightMoved:  "{0 point} was read {1 mm} off in height and carried along the axle's path",
	checks.MsgSlipExtremes: "shortest at a hub height of {0 mm}, longest at {1 mm}",
	checks.MsgSlipNeeds:    "usable spline that it takes, with what must be left at both ends: {0 mm}",
	checks.MsgSlipExposed:  "from joint centre to joint centre, fully closed; made so, it stands drawn out by {0 mm} at ride height",
	checks.MsgSlipTail:     "from joint centre to joint centre",
	checks.MsgStateFiner: "{0 point} was stated and decides, give or take half its last digit: state it with more digits (a direct " +
		"drive as 1.000), or measure it",
	checks.MsgStateAssumed: "{0 point} was not stated and decides: have it stated by the maker, or from a test with the same springs",
	checks.MsgSlipWound:    "not counted: torque winds the axle up and moves it by {0 mm} in drive, {1 mm} on the overrun (out positive), at ride height",
	checks.MsgWindUpWorked: "wind-up worked out, an estimate: {0 deg} under {1 N·m} at the axle",
}
