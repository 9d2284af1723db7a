package measure

import "slices"

// supplyRows are asked of each part that the shaft builder either makes or is handed; PART stands for
// its name.
var supplyRows = []Point{
	{Key: "supply", Quantity: Answer, Low: 1, High: 3,
		Codes:    []Code{{1, "new, from the builder"}, {2, "handed over new"}, {3, "handed over used"}},
		Question: "Who brings PART: the shaft builder, or you?",
		Place:    "Agree on it before anything is cut; label what you hand over."},
	{Key: "condition", Quantity: Answer, Low: 1, High: 3,
		Codes:    []Code{{1, "no wear seen or felt"}, {2, "worn, to be judged by the builder"}, {3, "damaged"}},
		Question: "In which condition is PART, if it is handed over?",
		Place:    "Clean, in good light: bores and tracks of the caps, splines, faces, cracks."},
}

// orderPoints are what a shaft builder asks beyond sizes: who orders, how many, which parts, and what
// will still change on the vehicle. No check rests on them.
var orderPoints = slices.Concat(
	orderText([]Point{
		{Key: "order.number", Sample: "job 14",
			Question: "Number or name of this job, as you will ask for it?",
			Place:    "Yours, not the builder's; it stands on labels and papers."},
		{Key: "order.name", Sample: "workshop, first name",
			Question: "Who orders: name?",
			Place:    "The person that the builder asks back."},
		{Key: "order.phone", Sample: "the number to ring",
			Question: "Which telephone number reaches that person?",
			Place:    "With the hours at which it is answered."},
		{Key: "order.mail", Sample: "an address for messages",
			Question: "Which address takes messages and the file that comes back?",
			Place:    "Letter by letter."},
		{Key: "order.vehicle", Sample: "farm truck, long wheelbase",
			Question: "Which vehicle is it for?",
			Place:    "Kind, year and wheelbase, as its papers say."},
		{Key: "order.measured_by", Sample: "first name",
			Question: "Who took the readings?",
			Place:    "The person under the vehicle."},
		{Key: "order.needed_by", Sample: "12 June",
			Question: "By when is the shaft needed?",
			Place:    "A day, or leave it out."},
		{Key: "order.cross", Sample: "as the sample handed over",
			Question: "Which cross is wanted, where it is known?",
			Place:    "Its number or size class; else the cap sizes of both ends tell."},
		{Key: "order.change", Sample: "tank still empty",
			Question: "What will still change on the vehicle before it runs?",
			Place:    "Body, load, tank, tyres, mounts that settle: all that moves the axle or the gearbox."},
	}),
	orderRows([]Point{
		{Key: "order.quantity", Quantity: Count, Low: 1, High: 20,
			Question: "How many shafts of this kind are ordered?",
			Place:    "One, or one more to keep."},
		{Key: "order.work", Quantity: Answer, Low: 1, High: 3,
			Codes:    []Code{{1, "a new shaft"}, {2, "length of the shaft handed over changed"}, {3, "the shaft handed over overhauled"}},
			Question: "What is the builder to do?",
			Place:    "A tube that was welded before may not take a second weld: the builder decides."},
		{Key: "order.stood", Quantity: Answer, Low: 1, High: 4,
			Codes:    []Code{{1, "its wheels"}, {2, "stands under the axle"}, {3, "a lift under the wheels"}, {4, "stands under the frame"}},
			Question: "On what did the vehicle stand when ride height was read?",
			Place:    "Under the frame is hanging, not ride height."},
		{Key: "order.springs", Quantity: Answer, Low: 1, High: 2,
			Codes:    []Code{{1, "settled"}, {2, "new, will settle"}},
			Question: "Have the springs settled?",
			Place:    "New springs and bushes come down with the first loads; the shaft grows shorter or longer with it."},
		{Key: "order.body", Quantity: Answer, Low: 1, High: 2,
			Codes:    []Code{{1, "complete"}, {2, "parts still off"}},
			Question: "Were body and fittings complete when ride height was read?",
			Place:    "Seats, tank, battery, bed, winch: all that weighs."},
		{Key: "order.stroke", Quantity: Length, Low: 10, High: 400,
			Question: "Which usable stroke of the sliding spline is asked for?",
			Place:    "At least what the travel and both reserves take, as the sheet says."},
		{Key: "order.tolerance", Quantity: Length, Low: 0.1, High: 20,
			Question: "How far may the length fully closed differ from the order, plus or minus?",
			Place:    "Less than what is spare of the stroke at each end."},
		{Key: "order.slip_end", Quantity: Answer, Low: 1, High: 2, For: slipInShaft,
			Codes:    []Code{{1, "gearbox end"}, {2, "axle end"}},
			Question: "At which end is the sliding spline to be?",
			Place:    "Commonly toward the gearbox, away from dirt and stones; the builder may know better."},
		{Key: "order.boot", Quantity: Answer, Low: 1, High: 3,
			Codes:    []Code{{1, "boot over the spline"}, {2, "seal and cap"}, {3, "neither"}},
			Question: "How is the sliding spline to be kept clean?",
			Place:    "A boot needs room beside the tube at full stroke."},
		{Key: "order.grease", Quantity: Answer, Low: 1, High: 2,
			Codes:    []Code{{1, "with grease nipples"}, {2, "sealed for life"}},
			Question: "Crosses with nipples, or sealed?",
			Place:    "Nipples want a gun's way to them on the vehicle."},
		{Key: "order.nipples", Quantity: Answer, Low: 1, High: 2,
			Codes:    []Code{{1, "in line, one side of the shaft"}, {2, "as they come"}},
			Question: "All grease nipples in one line along the shaft?",
			Place:    "So that one turn of the shaft brings all within reach of the gun."},
	}),
	orderRows(rowsOf(supplyRows, "front_mate", "the shaft's front flange or yoke", GroupOrder, nil)),
	orderRows(rowsOf(supplyRows, "rear_mate", "the shaft's rear flange or yoke", GroupOrder, nil)),
	orderRows(rowsOf(supplyRows, "slip", "the sliding spline", GroupOrder, nil)),
	orderRows(rowsOf(supplyRows, "tube", "the tube", GroupOrder, nil)),
	orderRows(rowsOf(supplyRows, "centre_bearing", "the centre bearing", GroupOrder, twoPiece)),
)

// orderText are rows that a person answers in words.
func orderText(rows []Point) []Point {
	for i := range rows {
		rows[i].Quantity = Text
	}
	return orderRows(rows)
}

// orderRows are said, not measured.
func orderRows(rows []Point) []Point {
	for i := range rows {
		rows[i].Group, rows[i].Basis = GroupOrder, Stated
	}
	return rows
}
