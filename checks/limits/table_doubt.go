package limits

import "slices"

// doubtRows: what is taken for a reading whose instrument doesn't say, by instrument kind, and by
// quantity where no instrument is named.
var doubtRows = slices.Concat(
	tool("angle", "deg", 0.1, 0.2, 0.1, "a digital angle finder",
		"usual tools (from memory), digital angle finders, step 0.05 to 0.1, accuracy 0.1 to 0.2; laying it on: "+judged),
	tool("length", "mm", 1, 0.7, 1, "a length read without naming the tool: a tape",
		"steel tape class II, ±(0.3 + 0.2·L) mm, 0.7 at 2 m (from memory); laying it on: "+judged),
	tool("tape", "mm", 1, 0.7, 1, "a steel tape up to 2 m",
		"steel tape class II, ±(0.3 + 0.2·L) mm, 0.7 at 2 m (from memory); laying it on: "+judged),
	tool("caliper", "mm", 0.01, 0.03, 0.05, "a digital caliper",
		"order of ISO 13385-1, 0.02 to 0.03 (from memory); laying it on: "+judged),
	tool("indicator", "mm", 0.01, 0.02, 0.02, "a dial indicator",
		"usual tools (from memory), dial indicators, step 0.01; the rest: "+judged),
	tool("mass", "kg", 1, 2, 1, "a mass read without naming the scale", judged),
	tool("scale", "kg", 0.5, 1, 0.5, "a platform or hanging scale", judged),
	tool("force", "N", 5, 10, 5, "a pull scale", judged),
	tool("torque", "N·m", 1, 4, 2, "a click torque wrench at about 100 N·m",
		"order of ISO 6789, ±4 % of the reading (from memory); laying it on: "+judged),
	tool("turning_speed", "rev/min", 10, 20, 0, "a tachometer", judged),
	tool("road_speed", "km/h", 1, 2, 0, "a satellite speed reading", judged),
	tool("spring_rate", "N/mm", 0.1, 1, 0.5, "a spring rate from a scale and a tape", judged),
	tool("stress", "MPa", 1, 10, 0, "a strength read from a test", judged),
	tool("hardness", "HRC", 1, 2, 1, "a portable hardness tester",
		"usual tools (from memory), portable testers, ±2 HRC; laying it on: "+judged),
)

func tool(name, unit string, resolution, accuracy, placing float64, what, source string) []Row {
	row := func(member, meaning string, value float64) Row {
		return Row{Key: "doubt." + name + "." + member, Value: value, Unit: unit, Sense: Input, Source: source, Meaning: meaning + what}
	}
	return []Row{
		row("resolution", "one display step of ", resolution),
		row("accuracy", "± limit of one reading of ", accuracy),
		row("placing", "standard deviation of laying on again ", placing),
	}
}
