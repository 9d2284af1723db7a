package words

import "yokebook/checks"

// enAdvice: what to do about a finding, and what else to know. The keys and their arguments are
// those of package checks.
var enAdvice = table{
	checks.MsgTakeMissing: "take the readings that are missing",
	checks.MsgLetDown: "the wheels hang here, and it does not run like that: let it down on its wheels, or set the stands under " +
		"the axle, and read {0 point} again",
	checks.MsgOffBump:     "it only passes through here: read again at ride height",
	checks.MsgReadAgain:   "read {0 input} again, {1 state}: this one decides",
	checks.MsgZeroAgain:   "the zero of {0 subject} decides: turn it end for end in the same place and read both ways",
	checks.MsgReadAssumed: "{0 point} was never read and decides: read it",
	checks.MsgTurnPinion: "turn the front end of the pinion {0 word} (wedge, links); mind the oil to its bearings, on a front axle the caster. First " +
		"frame and axle on stands: springs are loaded, a loose axle rolls",
	checks.MsgTurnGearbox: "bring the front end of the gearbox {0 word} (height of its mounts); mind the sump pick-up and the oil level in the gearbox. " +
		"Engine and gearbox are carried before a mount is loosened",
	checks.MsgSmallerAngle: "bring the two axes at the {0 subject} nearer to one line: move what carries them (gearbox mount, centre bearing, wedge at the " +
		"axle)",
	checks.MsgSmallerDrive: "smaller angles at the joints between the gearbox and this shaft (gearbox mount, centre bearing), or a slower shaft",
	checks.MsgSmallerCoast: "smaller angles at the joints between the axle and this shaft (wedge, links, centre bearing), or a slower shaft",
	checks.MsgSlowerOrEven: "let the joints cancel better (equal angles, yokes in the right phase), or run the shaft slower",
	checks.MsgOtherJoint: "the yokes can touch and break joint or shaft: don't run it there. A joint that is allowed more, less travel, or a smaller " +
		"angle where it is worst",
	checks.MsgLeastContested: "no fault: sources dispute whether a joint needs a least angle for its needles, and how much; pick one under limits, with a " +
		"reason",
	checks.MsgDatumBoth:     "read the frame mark slope in setup {0} and in setup {1}, so that the two compare",
	checks.MsgContradiction: "{0 state}: strike the reading or correct it",
	checks.MsgImplausible:   "{0 point} reads {1 base}, and such parts have {2 base} to {3 base}: look again, then correct or keep it",
	checks.MsgHeights:       "{0 point} was read at heights {1 mm} apart: read it again at one height",
	checks.MsgDisputedID: "reading {0 id} counts for nothing: two records share its id, or its corrections run in a ring; strike " +
		"the wrong one",
	checks.MsgReverse: "{0 subject} was turned end for end in setup {1}, so its zero counts double: lay it on one place both ways and " +
		"say each time which end faced forward",
	checks.MsgOutlier:       "{0 point} {1 base} stands apart from its repeats: look again, then strike it with the reason or read once more",
	checks.MsgThirdReading:  "{0 point}: the two readings differ by more than the tool explains; take a third",
	checks.MsgDisputedInput: "sources dispute the {0 input}, and its range decides: pick a value with a reason",
	checks.MsgNoNumber:      "these readings give no number: look for a wrong value among them",

	checks.MsgSideView:      "side view only: plan angles were not read",
	checks.MsgPhaseAssumed:  "yokes taken as in line: the phase was not read",
	checks.MsgHanging:       "wheels hanging: not the angles that it runs at",
	checks.MsgOnBump:        "on the bump stops: passed through, not run at",
	checks.MsgDoubleJoint:   "the double joint is taken as constant in speed, which holds only within its limit",
	checks.MsgSpeedEngine:   "highest shaft speed {0 rev/min}, from the engine",
	checks.MsgSpeedRoad:     "highest shaft speed {0 rev/min}, from the road speed times {1}: engine figures are absent",
	checks.MsgSpeedGoverned: "highest shaft speed {0 rev/min}, from a governed road speed: {1}",
	checks.MsgSetupsBridged: "slopes of setup {0} were moved to setup {1} by the two readings of the frame mark",
	checks.MsgHeightWidened: "{0 point} was read {1 mm} higher or lower: widened by {2 deg}",
	checks.MsgZeroFound: "{0 subject}, setup {1}: turned end for end, its zero stands at {2 deg}, give or take {3 deg}; its readings there " +
		"are corrected by that",
	checks.MsgWayUnsaid:      "which end of {0 subject} faced forward was not said: taken as the same each time, so that its zero cancels",
	checks.MsgBestPhase:      "runs most evenly with {0 point} {1 deg}: residual {2 deg}",
	checks.MsgMatchNoVerdict: "equal ends don't prove a small residual; look at that one",
	checks.MsgWorstState:     "the largest angle stands here: {0 state}",
	checks.MsgDecidedBy:      "held back most by: {0 finding}",
}
