package words

import "yokebook/checks"

// enTravel: the axle's travel and the sliding spline.
var enTravel = table{
	"check.travel.agreement": "axle's path as read and as computed",
	"check.slip.travel":      "way of the sliding spline over the travel",
	"check.slip.engaged":     "spline engaged at the longest position",
	"check.slip.closing":     "stroke left at the shortest position",
	"check.slip.seal":        "slip yoke left in its seal at the longest position",
	"check.slip.length":      "length at which the shaft should be made",

	"input.travel.leaf_link": "link that stands for half a leaf spring",

	"word.fixed":    "the axle does not move",
	"word.links":    "from its links, solved exactly",
	"word.leaf":     "from its leaf springs, half a spring taken as a link",
	"word.read":     "drawn through the states that were read",
	"word.straight": "straight up, springs or links not read: wide",

	checks.MsgSlipLonger:   "make the shaft longer by {0 mm}, or engage more spline",
	checks.MsgSlipShorter:  "make the shaft shorter by {0 mm}",
	checks.MsgSlipStroke:   "no length of the shaft makes this spline do: with what must be left at both ends it takes {0 mm} of usable spline",
	checks.MsgSlipSeal:     "a longer barrel, or a longer shaft, by {0 mm}",
	checks.MsgPathDisputed: "readings and the sizes of springs or links don't agree: look at the heights and at both",

	checks.MsgPath:         "path of the axle: {0 word}",
	checks.MsgEyeInFront:   "which spring eye is fixed was not said: taken as the front one",
	checks.MsgComputedFrom: "computed, not read: from what was read {0 state}",
	checks.MsgHeightMoved:  "{0 point} was read {1 mm} off in height and carried along the axle's path",
	checks.MsgSlipExtremes: "shortest at a hub height of {0 mm}, longest at {1 mm}",
	checks.MsgSlipNeeds:    "usable spline that it takes, with what must be left at both ends: {0 mm}",
	checks.MsgSlipExposed:  "made so, it stands drawn out by {0 mm} at ride height",
	checks.MsgWindUpWorked: "wind-up worked out, an estimate: {0 deg} under {1 N·m} on springs of {2} N·m for each radian",
}
