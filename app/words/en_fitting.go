package words

// enFitting: the sheet for the one who fits the shaft that came back.
var enFitting = table{
	"sheet.name.fit":         "Fitting sheet for a propeller shaft, as built",
	"sheet.first.stop.fit":   "NOT TO BE DRIVEN YET: {0}",
	"sheet.first.out.fit":    "AS BUILT OUT OF LIMITS, read before it is fitted: {0}",
	"sheet.first.unsure.fit": "To be fitted, with doubts to settle before driving: {0}",
	"sheet.first.clear.fit":  "To be fitted: every finding of the shaft as built is clear",

	"sheet.fit":         "To fit the shaft",
	"sheet.fit.stands":  "C must stand out",
	"sheet.fit.no_slip": "How far the slip must stand out is not known: read the shaft's length as it stands, and what was built fully closed.",
	"sheet.fit.made":    "What was built, beside what was ordered or read before",
	"sheet.fit.asked":   "ordered",
	"sheet.fit.built":   "built",
	"sheet.fit.who":     "read by",
	"sheet.fit.same":    "As built no finding differs from what was ordered.",
	"sheet.fit.changed": "These findings differ:",

	"sheet.fit.before": "Before driving",
	"sheet.fit.marks":  "Match marks in line across the slip and at both flanges; yokes in the phase named below.",
	"sheet.fit.clips":  "Every cap seated, every ring in its groove, no nipple that touches.",
	"sheet.fit.slip":   "At ride height the slip stands out as named above; measure it, then bring the axle up and down and measure again.",
	"sheet.fit.bolts":  "Pilots seated without being drawn in by the bolts; bolts new, of the grade named, tightened in steps to the torque named, marked.",
	"sheet.fit.room":   "Room to everything beside the shaft at hanging wheels, ride height and on the bump stops.",
	"sheet.fit.turn":   "Vehicle safe on stands under the axle, wheels chocked that stay down, engine off, key out: turned through by hand, no tight place and no contact.",
	"sheet.fit.oil":    "Oil levels of gearbox and axle, breathers open; joints and slip greased until clean grease comes out.",
	"sheet.fit.again":  "After the first drive: bolts checked again, slip and joint angles read again.",

	"help.flag.ordered": "write the order sheet also when what was built has been read",
}
