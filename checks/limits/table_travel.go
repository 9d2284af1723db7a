package limits

// slipRows: what a sliding spline is judged by.
var slipRows = []Row{
	{
		Key: "slip.engaged", Value: 1, Unit: "", Sense: Min,
		Source:  practice + ": one outside diameter of the spline",
		Meaning: "spline that stays engaged at the longest position, as a multiple of the outside diameter of its male half",
		Others: []Other{
			{Value: 1.5, Source: practice + ": many shops"},
			{Value: 0.75, Upper: 1.25, Source: "Machinery's Handbook, splines, useful engaged length by the pitch diameter (from memory)"},
		},
	},
	{
		Key: "slip.closing", Value: 10, Unit: "mm", Sense: Min,
		Source:  practice + ": some stroke left at full bump",
		Meaning: "stroke left before the sliding spline bottoms at the shortest position",
		Others: []Other{
			{Value: 19, Upper: 25, Source: practice + ": workshops, at ride height"},
		},
	},
	{
		Key: "slip.seal", Value: 20, Unit: "mm", Sense: Min,
		Source:  judged,
		Meaning: "bright barrel of the slip yoke that stays inside beyond the lip of the seal at the longest position",
	},
	{
		Key: "travel.agreement", Value: 5, Unit: "mm", Sense: Max,
		Source:  judged,
		Meaning: "difference between the shaft's length as read and as computed from springs or links",
	},
	{
		Key: "travel.agreement_angle", Value: 1, Unit: "deg", Sense: Max,
		Source:  judged,
		Meaning: "difference between the pinion's slope against the gearbox as read and as computed from springs or links",
	},
}

// travelRows: what is taken for the axle's path where sources dispute it or nobody read it.
var travelRows = []Row{
	{Key: "travel.leaf_link", Value: 0.75, Upper: 0.833, Unit: "", Sense: Input,
		Source:  "three quarters: SAE HS-788 (from memory), limbs of uniform strength; five sixths, one uniform leaf: worked apart from this code",
		Meaning: "length of the link that stands for a half of a leaf spring, as a share of that half"},
	{Key: "travel.bump_rubber", Value: 0.667, Unit: "", Sense: Input, Source: judged,
		Meaning: "share of a bump rubber's height by which it is pressed together at full bump"},
	{Key: "travel.bump_doubt", Value: 0.1, Unit: "", Sense: Input, Source: judged,
		Meaning: "the rubber's share at full bump counts as ± this share of itself"},
	{Key: "travel.radius", Value: 500, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "least radius of an axle's path: what lies between or beyond heights that were read may bow like an arc of it, to either side"},
	{Key: "travel.pitch", Value: 30, Unit: "deg/m", Sense: Input, Source: judged,
		Meaning: "an axle whose springs or links were not read turns by 0 ± this over its travel, every value in it as likely"},
	{Key: "assumed.rear_joint.x", Value: 300, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "an axle-end joint that was not placed counts as 0 ± this ahead of the axle's centre"},
	{Key: "assumed.rear_joint.z", Value: 100, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "an axle-end joint that was not placed counts as 0 ± this above the axle's centre"},
	{Key: "assumed.spring.eye_offset", Value: 25, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "a spring eye that was not looked at counts as 0 ± this above its own leaf"},
	{Key: "assumed.spring.pad_z", Value: 100, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "a spring seat that was not placed counts as 0 ± this above the axle's centre"},
	{Key: "assumed.datum.slope", Value: 2, Unit: "deg", Sense: Input, Source: judged,
		Meaning: "between two states without a frame mark read in both the body counts as turned by 0 ± this"},
	{Key: "assumed.shaft.length_spread", Value: 500, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "a shaft whose length was not read counts as the assumed length ± this"},
	{Key: "assumed.shaft.length_elsewhere", Value: 40, Unit: "mm", Sense: Input, Source: judged,
		Meaning: "a shaft's length read in another state counts as ± this in a state where it was not read"},
	{Key: "travel.length_share", Value: 0.35, Unit: "", Sense: Input, Source: judged,
		Meaning: "a shaft's length, or how far it was drawn out, read at another height than its state's counts as ± this share of the difference"},
	{Key: "windup.coast_share", Value: 0.3, Unit: "", Sense: Input, Source: judged,
		Meaning: "torque on the overrun as a share of the torque in drive"},
	{Key: "windup.springs", Value: 2, Unit: "count", Sense: Input, Source: "by definition: an axle on leaf springs has one on each side",
		Meaning: "springs that hold the axle against winding up"},
}
