package measure

// springPoints describe one leaf spring as it stands at ride height.
var springPoints = []Point{
	{Key: "spring.front_half", Group: GroupSpring, Quantity: Length, Low: 200, High: 1200, For: leafAxle, Caution: CautionUnder,
		Question: "Along the main leaf, from the front EDGE of the axle clamp to the front eye's centre?",
		Place:    "Tape on the leaf. From the clamp's edge, not from the bolt through the pack."},
	{Key: "spring.rear_half", Group: GroupSpring, Quantity: Length, Low: 200, High: 1200, For: leafAxle, Caution: CautionUnder,
		Question: "Along the main leaf, from the rear EDGE of the axle clamp to the rear eye's centre?",
		Place:    "Tape on the leaf. From the clamp's edge, not from the bolt through the pack."},
	{Key: "spring.eye_rise", Group: GroupSpring, Quantity: Length, Sense: Above, Low: -300, High: 400, For: leafAxle, Caution: CautionUnder,
		Question: "Is the centre of the FIXED eye above or below the main leaf at the clamp, and by how much?",
		Place:    "At ride height, plumb: from the middle of the leaf's thickness at the clamp. Fixed: without shackle."},
	{Key: "spring.eye_offset", Group: GroupSpring, Quantity: Length, Sense: Above, Low: -60, High: 60, For: leafAxle, Caution: CautionUnder,
		Question: "Is the eye's centre above or below the middle of its own leaf, and by how much?",
		Place:    "Square to the leaf where the eye begins. Eye in the middle of the leaf: 0."},
	{Key: "spring.pad_z", Group: GroupSpring, Quantity: Length, Sense: Above, Low: -250, High: 250, For: leafAxle, Caution: CautionUnder,
		Question: "Is the main leaf at the clamp above or below the axle's centre, and by how much?",
		Place:    "Plumb, from the middle of the axle tube to the middle of the leaf's thickness, blocks counted."},
	{Key: "spring.rate", Group: GroupSpring, Quantity: Stiffness, Low: 3, High: 500, For: leafAxle, Basis: Stated,
		Question: "How stiff is one spring?",
		Place:    "From the spring maker, or from how far a known load lowers it."},
}

// linkPoints are the joints of one lower and one upper link, seen from the side, from the axle
// centre at ride height: plumb and level.
var linkPoints = append(
	append(rowsOf(linkRows, "lower_link", "lower link", GroupLinks, linkAxle),
		rowsOf(linkRows, "upper_link", "upper link", GroupLinks, linkAxle)...),
	Point{Key: "rear_joint.x", Group: GroupLinks, Quantity: Length, Sense: ForwardOf, Low: -800, High: 800, For: sprungAxle, Caution: CautionUnder,
		Question: "Is the axle-end joint's centre ahead of or behind the axle's centre, and how far?",
		Place:    "Level, between plumb lines from the axle centre and from the middle of the caps, at ride height."},
	Point{Key: "rear_joint.z", Group: GroupLinks, Quantity: Length, Sense: Above, Low: -400, High: 400, For: sprungAxle, Caution: CautionUnder,
		Question: "Is the axle-end joint's centre above or below the axle's centre, and how far?",
		Place:    "Heights above the same level floor, at ride height."},
)

var linkRows = []Point{
	{Key: "chassis_x", Quantity: Length, Sense: ForwardOf, Low: -2000, High: 2000, Caution: CautionUnder,
		Question: "Chassis end of the PART: ahead of or behind the axle's centre, and how far?",
		Place:    "Level, between plumb lines from the axle centre and from the middle of the link's bush, at ride height."},
	{Key: "chassis_z", Quantity: Length, Sense: Above, Low: -600, High: 900, Caution: CautionUnder,
		Question: "Chassis end of the PART: above or below the axle's centre, and how far?",
		Place:    "Heights above the same level floor, to the middle of the link's bush, at ride height."},
	{Key: "axle_x", Quantity: Length, Sense: ForwardOf, Low: -600, High: 600, Caution: CautionUnder,
		Question: "Axle end of the PART: ahead of or behind the axle's centre, and how far?",
		Place:    "Level, between plumb lines from the axle centre and from the middle of the link's bush, at ride height."},
	{Key: "axle_z", Quantity: Length, Sense: Above, Low: -400, High: 600, Caution: CautionUnder,
		Question: "Axle end of the PART: above or below the axle's centre, and how far?",
		Place:    "Heights above the same level floor, to the middle of the link's bush, at ride height."},
}
