package words

import "yokebook/checks"

// enClutch: splines, the clutch, and what holds a flange. No sentence says that splines fit: what was
// measured can't prove it.
var enClutch = table{
	"check.spline.input":    "splines of input shaft and disc hub",
	"check.spline.output":   "splines of output shaft and slip yoke",
	"check.spline.slip":     "splines of the slip",
	"check.spline.capacity": "strength of the splines",
	"check.spline.identity": "standards that the spline may be of",
	"check.clutch.release":  "gap and travel of the release bearing",
	"check.clutch.hub":      "disc hub on its splines",
	"check.clutch.boss":     "room behind the disc hub",
	"check.clutch.spigot":   "input shaft in its spigot bearing",
	"check.clutch.fit":      "facing on its friction faces",
	"check.clutch.torque":   "torque that the clutch holds",
	"check.retainer.clamp":  "clamp of the thread that holds the flange",

	"subject.fingers": "to the fingers",
	"subject.guide":   "to the release bearing's sleeve",

	"input.spline.application":  "factor for shocks on the spline",
	"input.spline.distribution": "factor for teeth that share unevenly",
	"input.spline.wear":         "factor for turns at full torque",
	"input.spline.friction":     "friction of the sliding spline",
	"input.retainer.spread":     "spread of the nut factor",

	"word.flat_root":       "flat root",
	"word.fillet_root":     "fillet root",
	"word.any_root":        "root by its cutter",
	"word.straight_flanks": "straight flanks",

	checks.MsgOtherSpline: "{0} teeth against {1}: take a part with the same count; nothing else makes these go together. Count both " +
		"again from a mark first",
	checks.MsgSplineTight: "{0 point} is larger than {1 point}: it does not go in; never force or file it",
	checks.MsgSplineLoose: "{0 point} is smaller than {1 point} by more than one size of spline is: a smaller spline slides in and " +
		"strips its teeth",
	checks.MsgSplineShort: "{0 mm} more of the teeth must carry, or they are weaker than the shaft",
	checks.MsgStrongerSpline: "a longer, larger or harder spline, or less torque; don't harden or weld a finished part without " +
		"a qualified procedure",
	checks.MsgBearingForward: "the release bearing sits too far back: a spacer of {0 mm} behind it, or the friction face {1 mm} nearer to " +
		"the gearbox by flywheel or crank spacer, centres it; the second moves disc and spigot too",
	checks.MsgBearingBack: "the release bearing sits too far forward: set it back by {0 mm}, or bring the friction face {1 mm} nearer to " +
		"the engine; the second moves disc and spigot too",
	checks.MsgLongerStroke: "no place of the release bearing suits: it takes a stroke of {0 mm} or more, and fingers that stand it",
	checks.MsgHubOff:       "{0 mm} of the hub is off the splines: a disc with its hub further over, or another adapter or shaft",
	checks.MsgBossOnBolts:  "the hub meets the flywheel bolts: lower heads, or a disc with a shorter boss on that side",
	checks.MsgBossOnGuide: "the hub meets the release bearing's sleeve before the gearbox is home: never draw it in by its bolts; a disc with a shorter boss on " +
		"that side, or a thicker adapter",
	checks.MsgBossInFingers: "the hub stands among the fingers: it must pass through the circle of their tips with room all round, fingers pressed down; measure " +
		"both, else a disc with a shorter boss",
	checks.MsgNoseShort: "the nose falls short: a spigot bearing {0 mm} nearer to the gearbox, or a longer one",
	checks.MsgNoseLong: "the input shaft stands {0 mm} too far in: it would bear on the crank; have the tip ground shorter, cool, where its " +
		"maker allows that, or set the gearbox back",
	checks.MsgOtherSpigot: "a spigot bearing with a bore for this nose; measure both with a micrometer",
	checks.MsgSmallerDisc: "the facing runs beyond {0 point}: a smaller disc, or the parts that belong to it",
	checks.MsgStrongerClutch: "more clamp force (release bearing, slave and the crank's thrust bearing must bear it), a facing with more friction, or a " +
		"larger disc",
	checks.MsgMoreClamp: "more torque as long as the thread stays below its proof load, a larger thread, or less thrust: greased or coated splines, " +
		"or a larger slip",
	checks.MsgLessTorque:     "the thread would be stretched beyond its proof load: less torque, a higher grade or a larger thread; what was tightened like that is replaced",
	checks.MsgLongerReach:    "{0 mm} more thread must be held: a longer nut, stud or bolt",
	checks.MsgNotRecoverable: "a stud welded to a hardened shaft: not recoverable by calculation; replace the shaft",
	checks.MsgLowEndFails: "torque alone does not prove it: at the low end it clamps {0 N} and {1 N} is asked for; measure the bolt's stretch " +
		"where both its ends can be reached, or raise the clamp",

	checks.MsgTryByHand:       "counts equal, diameters agree; try by hand, lash not measured",
	checks.MsgOddCount:        "odd count: flat jaws don't span two tips; {0 point} reads low, so rock it to the largest reading or use a ring",
	checks.MsgSplineCandidate: "may be {0}, {1 word}, flanks {2 deg}: tips read {3 mm} off, roots {4 mm}",
	checks.MsgSplineByTips:    "may be {0}, {1 word}, flanks {2 deg}: tips read {3 mm} off",
	checks.MsgSplineByRoots:   "may be {0}, {1 word}, flanks {2 deg}: roots read {3 mm} off",
	checks.MsgSplineStraight:  "straight flanks: compare the tooth width too, {1 mm} for {0}",
	checks.MsgSplineUnknown:   "no size of the tabled standards is near; a maker's own spline, or a wrong count",
	checks.MsgSplineAlike:     "several may be it, and no reading of this program tells them apart: try a part that is known",
	checks.MsgSplineSettle:    "{0 point} would tell some of these apart",
	checks.MsgPinsDontSit:     "{0 point}: such pins touch none of these where they should; what was read over them was left out",
	checks.MsgStressShares:    "stress {0 MPa} in the shaft, {1 MPa} in the teeth; {2 MPa} on the flanks",
	checks.MsgHardnessUnread:  "{0 point} was not read: taken from soft to case hardened",
	checks.MsgSlipForce:       "the sliding spline can push or pull with {0 N} along the shaft under full torque",
	checks.MsgGap:             "gap between release bearing and fingers: {0 mm}",
	checks.MsgStrokeLeft:      "fingers moved at the end of the stroke, new disc: {0 mm}",
	checks.MsgPushTaken:       "push or pull was not said: taken as push",
	checks.MsgConstantContact: "for a bearing with a gap; one that always rests on the fingers has none and must be pressed in by what its maker says",
	checks.MsgPullType:        "pull type: the fingers of a worn disc stand nearer to the engine; leave the bearing that way too",
	checks.MsgWornDisc:        "reckoned for a worn disc too: hub {0 mm} nearer to the engine",
	checks.MsgNewFacing:       "a new facing, by even pressure, holds {0 N·m}; judged by the bedded-in one",
	checks.MsgFrictionUnread:  "friction not stated: taken from {0} to {1}",
	checks.MsgNutFactor:       "nut factor {0}: what a torque clamps is known to ± {1 percent}",
	checks.MsgRetainerCare: "don't weld to bolts, studs or shaft ends, nor near them: heat, and current through bearings, do harm nobody sees; new " +
		"nut and its lock; faces clean and dry, thread clean, and dry or oiled as the nut factor has it; local rules and licensed welders go first",
	checks.MsgGradeUnknown: "grade {0} is none of 8.8, 10.9 and 12.9: its strength is not known here; fit a marked one",
}
