package measure

// Splines are asked for in pairs; what a diameter means depends on which side has the teeth.
var splinePoints = func() []Point {
	var all []Point
	for _, s := range []struct {
		part, name string
		male       bool
		layouts    func(Layout) bool
	}{
		{"input_shaft", "the gearbox input shaft", true, hasClutch},
		{"disc_hub", "the clutch disc hub", false, hasClutch},
		{"output_shaft", "the gearbox output shaft", true, nil},
		{"slip_yoke", "the slip yoke", false, slipInGearbox},
		{"slip_male", "the male half of the slip", true, slipInShaft},
		{"slip_female", "the female half of the slip", false, slipInShaft},
	} {
		rows := femaleSplineRows
		if s.male {
			rows = maleSplineRows
		}
		all = append(all, rowsOf(rows, s.part, s.name, GroupSplines, s.layouts)...)
		all = append(all, rowsOf(splineRows, s.part, s.name, GroupSplines, s.layouts)...)
	}
	return append(all, slipYokePoints...)
}()

var maleSplineRows = []Point{
	{Key: "splines", Quantity: Count, Low: 4, High: 70,
		Question: "How many teeth has PART? Count twice from a mark.",
		Place:    "A miscount by one is the commonest error: mark a tooth and go round again."},
	{Key: "major", Quantity: Length, Low: 10, High: 100,
		Question: "Diameter over the tooth tips of PART?",
		Place:    "Caliper over opposite tips. Odd count: rock it to the largest reading, or use a ring."},
	{Key: "minor", Quantity: Length, Low: 8, High: 95,
		Question: "Diameter at the tooth roots of PART?",
		Place:    "Blade ends of the caliper down in opposite gaps."},
	{Key: "over_pins", Quantity: Length, Low: 10, High: 120,
		Question: "Over two equal pins laid in opposite gaps of PART?",
		Place:    "Pins that touch the flanks and stand proud of the tips; odd count: the two gaps nearest opposite."},
}

var femaleSplineRows = []Point{
	{Key: "splines", Quantity: Count, Low: 4, High: 70,
		Question: "How many teeth has PART? Count twice from a mark.",
		Place:    "A miscount by one is the commonest error: mark a tooth and go round again."},
	{Key: "major", Quantity: Length, Low: 10, High: 100,
		Question: "Diameter at the tooth roots of PART, the larger one?",
		Place:    "Inside points of the caliper down in opposite gaps."},
	{Key: "minor", Quantity: Length, Low: 8, High: 95,
		Question: "Diameter between the tooth tips of PART, the smaller one?",
		Place:    "Inside points of the caliper on opposite tips. Odd count: the largest plug that enters."},
	{Key: "over_pins", Quantity: Length, Low: 5, High: 100,
		Question: "Between two equal pins laid in opposite gaps of PART?",
		Place:    "Pins that touch the flanks, not the roots; odd count: the two gaps nearest opposite."},
}

var splineRows = []Point{
	{Key: "pin_dia", Quantity: Length, Low: 0.5, High: 12,
		Question: "Diameter of those pins on PART?",
		Place:    "Caliper on the pins; drill shanks will do."},
	{Key: "length", Quantity: Length, Low: 5, High: 400,
		Question: "How long is the full, usable part of the teeth of PART?",
		Place:    "Full-depth teeth only: neither the lead-in nor the run-out."},
	{Key: "flank", Quantity: Angle, Low: 0, High: 45,
		Question: "At which angle do the tooth flanks of PART lean? Straight, parallel flanks: 0.",
		Place:    "Against a thread gauge: usual ones are 0, 30, 37.5 and 45."},
	{Key: "hardness", Quantity: Hardness, Low: 15, High: 70, Caution: CautionWeld,
		Question: "How hard is PART?",
		Place:    "Hardness tester or test files on a face that carries no load."},
}

// slipYokePoints belong to a yoke that slides on the gearbox output and runs in its bush and seal.
var slipYokePoints = []Point{
	{Key: "slip_yoke.barrel", Group: GroupSplines, Quantity: Length, Low: 20, High: 90, For: slipInGearbox,
		Question: "Outside diameter of the slip yoke's barrel?",
		Place:    "Caliper on the bright part that runs in the bush and the seal."},
	{Key: "slip_yoke.barrel_length", Group: GroupSplines, Quantity: Length, Low: 30, High: 300, For: slipInGearbox,
		Question: "How long is the bright, round part of the slip yoke's barrel?",
		Place:    "From its open end to where the forging begins."},
	{Key: "tail_bush.bore", Group: GroupSplines, Quantity: Length, Low: 20, High: 90, For: slipInGearbox, Caution: CautionUnder,
		Question: "Bore of the bush in the gearbox tail housing?",
		Place:    "Inside ends of the caliper, yoke taken out, at two places a quarter turn apart."},
	{Key: "tail_seal.depth", Group: GroupSplines, Quantity: Length, Low: 0, High: 100, For: slipInGearbox, Caution: CautionUnder,
		Question: "How far inside the end of the tail housing does the lip of the seal stand?",
		Place:    "Depth end of the caliper, from the housing's rear face to the lip."},
}
