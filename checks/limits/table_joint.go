package limits

var jointRows = []Row{
	{
		Key: "joint.angle", Value: 3, Unit: "deg", Sense: Max,
		Source:  "driveline installation guide J3311-1-DSSP (2008) pp. 16-17",
		Meaning: "working angle of one joint while the vehicle runs",
		Others: []Other{
			{Value: 3, Source: "a 4x4 maker's service text 2007; a van maker's service text 2006; a truck maker's body builder guide 2015 part II p. 95; a fire pump manual 2-4-1"},
			{Value: 5, Source: "driveline maintenance manual MM-96147 (rev. 03-21) p. 87, angle in space"},
			{Value: 6, Source: "a truck maker's body and equipment directive 2020, 6.10; SAE AE-7 3.1.1, as cited on a public page"},
			{Value: 3, Upper: 6, Source: "a trade note on driveline angles and phasing: parallel ends, shaft length in inches / 5 (15 in: 3, 30 in: 6), half of it where the ends intersect"},
		},
	},
	{
		Key: "joint.double_angle", Value: 10, Unit: "deg", Sense: Max,
		Source:  "a 4x4 maker's service text 2007, constant velocity joint in service",
		Meaning: "working angle of a double joint while the vehicle runs",
	},
	{
		Key: "joint.least_angle", Value: 0.5, Unit: "deg", Sense: Min,
		Source:  "driveline installation guide J3311-1-DSSP (2008) pp. 16-17; a 4x4 maker's service text 2007; a van maker's service text 2006; a truck maker's body builder guide 2015 part II p. 95",
		Meaning: "least working angle, so that the needles of a joint roll and don't dent their tracks",
		Others: []Other{
			{Value: 1, Source: "a truck maker's body and equipment directive 2020, 6.10; a fire pump manual 2-4-1"},
			{Value: 1, Upper: 1.5, Source: "driveline installation guide J3311-1-DSSP (2008) p. 17, front end of each shaft that has no slip"},
			{Value: 0.5, Sense: Max, Source: "a pickup maker's service text 1999: the odd joint of a two-piece shaft at 0.5 or LESS, contradicts the others"},
		},
	},
	{
		Key: "joint.residual", Value: 3, Unit: "deg", Sense: Max,
		Source:  "a propshaft maker's technical pages, sections 3.2, 3.3 (greatest less least speed ratio at most 0.0027), rounded as is common practice",
		Meaning: "angle of the one joint that would turn the axle as unevenly as all joints together",
		Others: []Other{
			{Value: 2.976, Source: "a propshaft maker's technical pages, sections 3.2, 3.3, not rounded; angle worked apart from this code"},
		},
	},
	{
		Key: "joint.match", Value: 1, Unit: "deg", Sense: Max,
		Source:  "driveline installation guide J3311-1-DSSP (2008) p. 10; a 4x4 maker's service text 2007; a van maker's service text 2006; a fire pump manual 2-4-1",
		Meaning: "difference of the two end angles; ends that match can still leave the axle turning unevenly",
		Others: []Other{
			{Value: 0.5, Source: "driveline installation guide J3311-1-DSSP (2008) pp. 16-17, shafts with a centre bearing"},
			{Value: 1.5, Source: "driveline maintenance manual MM-96147 (rev. 03-21) p. 87; SAE AE-7 3.1.1, as cited on a public page"},
			{Value: 3, Source: "US Army TM 5-3820-256-24-4, reprinting truck service manual CTS-4017 p. 23, trucks between axles"},
			{Value: 3, Upper: 5, Source: "industrial driveshaft catalogue p. 41, low speed only"},
		},
	},
	{
		Key: "joint.torsional", Value: 400, Unit: "rad/s²", Sense: Max,
		Source:  "table after SAE AE-7, as reprinted on a public page; 402 ± 2 worked out of the table apart from this code",
		Meaning: "peak acceleration that the joints together give the axle at the highest shaft speed",
		Others: []Other{
			{Value: 300, Source: "driveline application guidelines DSAG-0200 (from memory)"},
		},
	},
	{
		Key: "joint.inertia", Value: 1000, Unit: "rad/s²", Sense: Max,
		Source:  "driveline application guidelines DSAG-0200 (from memory)",
		Meaning: "peak acceleration of the shaft itself, driven from the gearbox or from the axle, at the highest shaft speed",
		Others: []Other{
			{Value: 994, Upper: 1025, Source: "power take-off guide HY25-1890-M1/US p. 5, table of angle against speed; its cells worked out apart from this code (its printed basis of 100 doesn't fit them)"},
			{Value: 965, Upper: 2435, Source: "commercial-vehicle driveshaft catalogue, influence of speed and deflection angle: 17,000 to 27,000 deg/min by size; worked out apart from this code"},
		},
	},
}
