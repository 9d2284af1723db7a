package words

// enNames: units, tools, parts and dimensions.
var enNames = table{
	"point": "{0} {1}",
	"list":  "{0} and {1}",

	"unit.deg":     "°",
	"unit.count":   "",
	"unit.percent": "%",

	"tool.angle":     "angle finder",
	"tool.tape":      "tape measure",
	"tool.caliper":   "caliper",
	"tool.indicator": "dial indicator",
	"tool.scale":     "scale",
	"tool.torque":    "torque wrench",

	"group.slopes": "slopes",
	"group.stated": "stated values",

	"part.datum": "frame mark",

	"dimension.plan":  "angle seen from above",
	"dimension.phase": "yoke phase",
}
