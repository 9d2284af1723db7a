package words

// enChecks: what the checks are called, and how a finding is said.
var enChecks = table{
	"verdict.clear":     "clear",
	"verdict.out":       "out",
	"verdict.unsure":    "unsure",
	"verdict.waiting":   "waiting",
	"verdict.unsaid":    "not judged",
	"verdict.predicted": "{0}, predicted",
	"verdict.if_one":    "{0} if {1 point} is true",
	"verdict.if_all":    "{0} if {1} are true",

	"check": "{0}, {1}",

	"finding.around":         "({0})",
	"value.joint.match":      "ends within {0}",
	"finding.title":          "{0}, {1 state}",
	"finding.chance":         "chance that the limit is met: {0 percent}",
	"finding.weakest":        "weakest: {0 input}, {1 percent} of the doubt (reading {2 id})",
	"finding.weakest_shared": "weakest: {0 input}, {1 percent} of the doubt",
	"finding.missing":        "{0 point}, {1 state}",
	"finding.missing_setup":  "{0 point}, {1 state}, in setup {2}",
	"finding.side_view":      "side view only: {0} not read, taken as 0",
	"finding.assumed":        "{0} not read, taken as 0",

	"input.zero": "zero of {0 subject}",

	"limit.max":     "at most {0}",
	"limit.min":     "at least {0}",
	"limit.equal":   "equal to {0}",
	"limit.between": "from {0} to {1}",
	"limit.chosen":  "chosen for this build: {1} (otherwise {0})",

	"subject.front":  "front joint",
	"subject.centre": "centre joint",
	"subject.rear":   "rear joint",
	"subject.finder": "finder",

	"check.joint.angle":         "joint angle",
	"check.joint.most_angle":    "most joint angle over the travel",
	"check.joint.least_angle":   "least joint angle",
	"check.joint.match":         "match of the joint angles",
	"check.joint.residual":      "residual of the joints together",
	"check.joint.ripple":        "speed ripple of the joints together",
	"check.joint.torsional":     "torsional acceleration at the axle",
	"check.joint.inertia_drive": "acceleration of the shaft, driving",
	"check.joint.inertia_coast": "acceleration of the shaft, coasting",
	"check.reading.setup":       "setups that can be compared",
	"check.reading.spread":      "spread of repeated readings",
	"check.reading.zero":        "zero of the instruments",
	"check.reading.state":       "states and plausible values",
	"check.build.chance":        "chance that every judged limit holds",
}
