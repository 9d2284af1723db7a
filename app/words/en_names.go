package words

// enNames: units, tools, groups, and how two words join.
var enNames = table{
	"point": "{0} {1}",
	"list":  "{0} and {1}",

	"unit.deg":     "°",
	"unit.count":   "",
	"unit.rev/min": "rev/min",

	"tool.angle":     "angle finder",
	"tool.tape":      "tape measure",
	"tool.caliper":   "caliper",
	"tool.indicator": "dial indicator",
	"tool.scale":     "scale",
	"tool.torque":    "torque wrench",

	"group.slopes":                "slopes and plan angles",
	"group.stated":                "stated values",
	"group.before a shaft exists": "before a shaft exists",
	"group.heights":               "heights",
	"group.shaft":                 "shaft",
	"group.clearance":             "clearance",
	"group.ends":                  "ends of the shaft",
	"group.leaf spring":           "leaf spring",
	"group.links":                 "links",
	"group.splines":               "splines",
	"group.clutch stack":          "clutch stack",
	"group.engine side":           "engine side",
	"group.retention":             "retention",
	"group.mass and mounts":       "mass and mounts",
	"group.fit":                   "fit, answered by a person",
	"group.order":                 "order: what the shaft builder asks",

	"word.up":   "up",
	"word.down": "down",
}
