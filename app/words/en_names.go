package words

// enNames: units, tools, groups, and how two words join.
var enNames = table{
	"point": "{0} {1}",
	"list":  "{0} and {1}",

	"unit.deg":   "°",
	"unit.count": "",

	"tool.angle":     "angle finder",
	"tool.tape":      "tape measure",
	"tool.caliper":   "caliper",
	"tool.indicator": "dial indicator",
	"tool.scale":     "scale",
	"tool.torque":    "torque wrench",

	"group.slopes": "slopes",
	"group.stated": "stated values",

	"word.up":   "up",
	"word.down": "down",
}
