package measure

// fitPoints are questions that only a person at the vehicle can answer: yes 1, no 0. Each answer
// wants a note of what was looked at.
var fitPoints = fitRows([]Point{
	{Key: "fit.direction", Caution: CautionTurning,
		Question: "Engine turned by hand in first gear: do the wheels turn FORWARD?",
		Place:    "Wheels off the ground on stands, ignition off. A turned axle can give five gears backward."},
	{Key: "fit.starter", Caution: CautionTurning,
		Question: "Does the starter's pinion mesh fully, rest clear and throw the right way?",
		Place:    "Tooth count and pitch alike, gap at rest, full mesh when thrown; battery off while you look."},
	{Key: "fit.dowels",
		Question: "Do dowels, not bolts, centre the bellhousing on the engine?",
		Place:    "Both dowels in place, full length, in holes that fit."},
	{Key: "fit.selector",
		Question: "Does the lever reach and hold every gear?",
		Place:    "Every gear by hand, engine off, lever clear of the tunnel."},
	{Key: "fit.speedo",
		Question: "Has the speedometer a drive that counts right?",
		Place:    "Drive or sender fitted, its count checked for tyre and axle."},
	{Key: "fit.handbrake", Caution: CautionUnder,
		Question: "Does the handbrake hold, and is its cable clear of the shaft at droop AND bump?",
		Place:    "Cable length and path at both ends of the travel. A brake drum on the flange adds to its length."},
	{Key: "fit.exhaust", Caution: CautionUnder,
		Question: "Is the exhaust clear of the shaft, brake lines and floor through the whole travel?",
		Place:    "Look along it at droop and bump; engine roll counted."},
	{Key: "fit.loop", Caution: CautionUnder,
		Question: "Is there a guard loop round the shaft near its front joint?",
		Place:    "Strong, bolted to the frame, clear of the shaft. Whether it is demanded is a local rule."},
	{Key: "fit.brakehose", For: sprungAxle, Caution: CautionHanging,
		Question: "Wheels hanging: are the brake hoses slack and clear?",
		Place:    "At full droop, full lock on a steered axle."},
	{Key: "fit.breather", Caution: CautionUnder,
		Question: "Can the axle and the gearbox breathe, with hose slack at droop?",
		Place:    "Breather open, above the water line, hose not stretched."},
	{Key: "fit.bumpstop", For: sprungAxle, Caution: CautionBump,
		Question: "Do the bump stops meet before anything else touches?",
		Place:    "Axle brought up on both stops; look at shaft, sump, exhaust and hoses."},
	{Key: "fit.ground",
		Question: "Is the engine earthed to the frame by a strap of its own?",
		Place:    "Bare metal at both ends: or the current goes through bearings and cables."},
})

func fitRows(rows []Point) []Point {
	for i := range rows {
		rows[i].Group, rows[i].Quantity, rows[i].High = GroupFit, Answer, 1
		rows[i].Codes = []Code{{1, "yes"}, {0, "no"}}
	}
	return rows
}
