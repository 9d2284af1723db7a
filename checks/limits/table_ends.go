package limits

// matchRows: how near two sizes must be to be the same, and what a person's answer must be.
var matchRows = []Row{
	{Key: "match.pilot", Value: 0.2, Unit: "mm", Sense: Max, Source: judged,
		Meaning: "difference of two pilot diameters that two caliper readings can't tell from none; where the highest shaft speed is known no more than twice the balance grade (limit shaft.balance) over it, since half the play puts the shaft off its axis",
		Others: []Other{
			{Value: 0.10, Source: "balance grade G 16 of ISO 21940-11 (from memory) at 3000 rev/min; play worked apart from this code"},
			{Value: 0.06, Source: "balance grade G 16 of ISO 21940-11 (from memory) at 5000 rev/min; play worked apart from this code"},
		}},
	{Key: "match.bolt", Value: 0.25, Unit: "mm", Sense: Max, Source: judged + ": half of what lies between M10 and 3/8 in",
		Meaning: "difference of two nominal bolt diameters that still is one size"},
	{Key: "match.pitch", Value: 0.1, Unit: "mm", Sense: Max, Source: judged + ": half of what lies between M8 × 1.25 and 5/16 in with 24 threads per inch (1.06 mm), alike in diameter",
		Meaning: "difference of two thread pitches that still is one pitch"},
	{Key: "match.circle", Value: 1, Unit: "mm", Sense: Max, Source: judged,
		Meaning: "difference of two bolt circles that usual bolt holes take up"},
	{Key: "match.cap", Value: 0.2, Unit: "mm", Sense: Max, Source: judged,
		Meaning: "difference of a joint's cap and its seat that two caliper readings can't tell from none"},
	{Key: "match.span", Value: 0.5, Unit: "mm", Sense: Max, Source: judged,
		Meaning: "difference of two spans over a joint's caps that clips of the usual thicknesses take up"},
	{Key: "match.count", Value: 0, Sense: Max, Source: "by definition: two parts that don't match can't be bolted together",
		Meaning: "things about two faces that differ"},
	{Key: "fit.answer", Value: 1, Sense: Equal, Source: "a person at the vehicle looked and answered",
		Meaning: "yes"},
}

// runoutRows: how far a needle may move in one turn, twice the offset.
var runoutRows = []Row{
	{Key: "clutch.runout", Value: 0.127, Unit: "mm", Sense: Max, Source: practice + ": 0.005 in for car gearboxes",
		Meaning: "whole way of the needle in the bellhousing's bore or on its face",
		Others: []Other{
			{Value: 0.20, Source: "a truck engine maker's manual, p. 0-69 and 0-71, housings SAE 1 to 3 (0.008 in)"},
		}},
	{Key: "clutch.flywheel_runout", Value: 0.127, Unit: "mm", Sense: Max, Source: practice + ": 0.005 in",
		Meaning: "whole way of the needle on the flywheel's friction face"},
}
