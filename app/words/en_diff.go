package words

// enDiff: what differs between two files of a build, and between a shaft as ordered and as built.
var enDiff = table{
	"help.diff": "tell what one file of a build has that another lacks",
	"help.diff.long": `Tells in words what each of two files of one build has that the other lacks: readings, strikes, stops left out and
changed details; and which findings differ between them.`,
	"cli.diff.only":       "{0} alone has {1}:",
	"cli.diff.line":       "  {0}",
	"cli.diff.reading":    "{0} {1}, {2}, {3} ({4})",
	"cli.diff.by":         "{0}, by {1}",
	"cli.diff.corrects":   "{0}; corrects {1}",
	"cli.diff.strike":     "struck: {0} {1}, “{2}” ({3})",
	"cli.diff.skip":       "left out: {0}, {1}, “{2}”",
	"cli.diff.head":       "{0} set to {1}",
	"cli.diff.same":       "Both hold the same records.",
	"cli.diff.no_finding": "No finding differs.",
	"cli.diff.findings":   "Findings that differ: {0}",
	"cli.diff.finding":    "{0}",
	"cli.diff.was":        "  first:  {0}",
	"cli.diff.is":         "  second: {0}",
	"cli.diff.none":       "not there",

	"help.flag.as_built":   "judge the shaft as it was built, and tell what differs from what was ordered",
	"cli.built.no_finding": "As built nothing differs from what was ordered.",
	"cli.built.findings":   "As built these differ from what was ordered: {0}",
	"cli.built.finding":    "{0}",
	"cli.built.was":        "  ordered: {0}",
	"cli.built.is":         "  built:   {0}",

	"group.as built": "as built",

	"by.builder": "the shaft builder",

	"part.as_built":               "as built:",
	"dimension.closed":            "length, fully closed",
	"dimension.closed_length":     "length, fully closed",
	"dimension.front_length":      "length of the front shaft",
	"dimension.front_phase":       "yoke phase of the front shaft",
	"dimension.tube_material":     "tube material",
	"dimension.tube_yield":        "yield stress of the tube",
	"dimension.front_tube_od":     "outside diameter of the front shaft's tube",
	"dimension.front_tube_wall":   "wall of the front shaft's tube",
	"dimension.joint_torque":      "rated torque of the joints",
	"dimension.joint_angle":       "greatest angle of the joints",
	"dimension.front_pilot":       "pilot of the front flange",
	"dimension.front_bolt_circle": "bolt circle of the front flange",
	"dimension.rear_pilot":        "pilot of the rear flange",
	"dimension.rear_bolt_circle":  "bolt circle of the rear flange",
	"dimension.balance_grade":     "balance grade",
	"dimension.balance_speed":     "speed of the balance grade",
	"dimension.front_bolt_torque": "tightening torque of the front flange's bolts",
	"dimension.rear_bolt_torque":  "tightening torque of the rear flange's bolts",
}
