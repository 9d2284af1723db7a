package measure

// linePoints are what the joints are judged by: slopes, plan angles, yoke phase and wind-up.
//
// Wind-up is a magnitude. Under drive the torque on the wheels turns them forward, so its reaction
// turns the axle housing backward: the housing's front end rises, whether the axle stands at the
// rear or at the front of the vehicle and whichever way its pinion points. On the overrun it drops.
// (Free body of the axle housing.)
var linePoints = []Point{
	{Key: "shaft.phase", Group: GroupSlopes, Quantity: Angle, Sense: Clockwise, Low: -180, High: 180, Wanted: onBench, Caution: CautionTurning,
		Question: "Seen from behind, which way and how far is the rear yoke turned against the front yoke? In line: 0.",
		Place:    "Stand the front yoke level with the finder, then lay the finder on the rear yoke the same way."},
	{Key: "front_shaft.phase", Group: GroupSlopes, Quantity: Angle, Sense: Clockwise, Low: -180, High: 180, Wanted: onBench, For: twoPiece, Caution: CautionTurning,
		Question: "FRONT shaft from behind: which way and how far is its rear yoke turned against the front? In line: 0.",
		Place:    "Stand the front yoke level with the finder, then lay the finder on the rear yoke the same way."},
	{Key: "pinion.windup_drive", Group: GroupSlopes, Quantity: Angle, Low: 0, High: 15, Wanted: onBench, Optional: true, Basis: Stated,
		Question: "By how much does the front end of the pinion rise under full drive torque?",
		Place:    "Stated or worked out, not read lying under the vehicle: nobody lies there under torque."},
	{Key: "pinion.windup_coast", Group: GroupSlopes, Quantity: Angle, Low: 0, High: 10, Wanted: onBench, Optional: true, Basis: Stated,
		Question: "By how much does the front end of the pinion drop on the overrun?",
		Place:    "Stated or worked out, not read lying under the vehicle: nobody lies there under torque."},

	{Key: "datum.slope", Moves: true, Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -10, High: 10, Wanted: standing, Caution: CautionUnder,
		Question: "Lay the finder on the place of the frame that you marked. Which end is high?",
		Place:    "A flat, marked place on the frame rail that you can find again: it ties setups together."},
	{Key: "gearbox.slope", Moves: true, Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -30, High: 30, Wanted: standing, Caution: CautionUnder,
		Question: "Lay the finder along the gearbox output. Which end is high?",
		Place:    "Along the output shaft, or on a machined face square to it (say so); not on the casting or the sump."},
	{Key: "front_shaft.slope", Moves: true, Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -35, High: 35, Wanted: standing, For: twoPiece, Caution: CautionUnder,
		Question: "Lay the finder along the tube of the FRONT shaft. Which end is high?",
		Place:    "On the bare tube ahead of the centre bearing, clear of weld seams, balance weights and dirt."},
	{Key: "shaft.slope", Moves: true, Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -35, High: 35, Wanted: standing, Caution: CautionUnder,
		Question: "Lay the finder along the shaft tube. Which end is high?",
		Place:    "On the bare tube, clear of weld seams, balance weights and dirt. Two-piece: the rear shaft."},
	{Key: "pinion.slope", Moves: true, Group: GroupSlopes, Quantity: Angle, Sense: FrontHigh, Low: -30, High: 30, Wanted: standing, Caution: CautionUnder,
		Question: "Lay the finder along the pinion. Which end is high?",
		Place:    "Along the pinion, or on the machined face of its flange (say so). At a transfer box: along its input."},

	{Key: "gearbox.plan", Group: GroupSlopes, Quantity: Angle, Sense: FrontLeft, Low: -15, High: 15, Wanted: atKerb, Optional: true, Caution: CautionUnder,
		Question: "Seen from above, to which side does the front of the gearbox output line point, and how far?",
		Place:    "Against a string along the vehicle's middle: offset at two places, divided by the distance between."},
	{Key: "front_shaft.plan", Group: GroupSlopes, Quantity: Angle, Sense: FrontLeft, Low: -20, High: 20, Wanted: atKerb, Optional: true, For: twoPiece, Caution: CautionUnder,
		Question: "Seen from above, to which side does the front end of the FRONT shaft lie, and how far?",
		Place:    "Plumb both joint centres to the floor and measure against a string along the vehicle's middle."},
	{Key: "shaft.plan", Group: GroupSlopes, Quantity: Angle, Sense: FrontLeft, Low: -25, High: 25, Wanted: atKerb, Optional: true, Caution: CautionUnder,
		Question: "Seen from above, to which side does the front end of the shaft lie, and how far?",
		Place:    "Plumb both joint centres to the floor and measure against a string along the vehicle's middle."},
	{Key: "pinion.plan", Group: GroupSlopes, Quantity: Angle, Sense: FrontLeft, Low: -15, High: 15, Wanted: atKerb, Optional: true, Caution: CautionUnder,
		Question: "Seen from above, to which side does the front of the pinion line point, and how far?",
		Place:    "Straightedge across the flange face against a string along the vehicle's middle."},
}
