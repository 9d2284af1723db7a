package words

// Cautions lists the keys of all cautions.
var Cautions = []string{"caution.under", "caution.hanging", "caution.bump", "caution.lift", "caution.turning",
	"caution.clutch", "caution.weld", "caution.firstrun"}

// enCautions: what can hurt, shown before the stop where it applies. Local codes, the maker's
// instructions and licensed practice always come first.
var enCautions = table{
	"caution.under": "Nobody goes under a vehicle that rests on a jack. Firm level ground, wheels chocked, axle stands of " +
		"the right rating on both sides, then shake the vehicle before you go under. Local rules come first.",
	"caution.hanging": "Wheels hanging: the stands carry the FRAME at the maker's support places, on both sides. Let it down " +
		"slowly, chock the wheels that stay on the ground, and keep clear of the axle: it can drop and swing.",
	"caution.bump": "On the bump stops the springs are loaded hard. Bring the axle up with a rated jack or by real load, " +
		"never with a strap or a loose block; hands and head stay out of the gap.",
	"caution.lift": "Lifting: nobody under or beside the load. Slings, hooks and lifting places of known rating; two legs or more, at 45° or more " +
		"from the horizontal, never below 30°: on one leg the load turns and tips. These figures are no lifting plan; where local rules ask for a licensed person, fetch one.",
	"caution.turning": "A turning shaft catches clothes, hair and gloves. Engine off, key out, battery off, gearbox in neutral, the wheels that stay " +
		"on the ground chocked; turn the shaft by hand only, and keep out of its line.",
	"caution.clutch": "Dust of facings can hold asbestos: wipe it off damp, never blow or brush it. The cover's spring is loaded: all its bolts in " +
		"turns, a little each. Gearbox and flywheel are heavy: a rated jack, nobody beneath.",
	"caution.weld": "Welding on a shaft, yoke or hardened stud changes its strength and balance where nobody can see it. Leave it " +
		"to a licensed shaft builder, who balances the shaft afterwards; battery off, fuel and grease away.",
	"caution.firstrun": "First run: stands under the AXLE at ride height, never hanging; at idle, for when one wheel is held the other " +
		"turns twice as fast. Nobody in line with the shaft or beside a wheel, exhaust led outside. Check the match marks, the circlips, and that the slip stands within its marks. Stop at any hum that rises with road speed, not " +
		"with engine speed.",
}
