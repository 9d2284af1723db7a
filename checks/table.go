package checks

import "yokebook/measure"

// Check is one row of the table of checks: what is asked, of which points, against which limit.
type Check struct {
	Key    string
	Group  string
	Points []string // readings it is made from
	Limit  string   // key in the table of limits; "" where it gives no verdict of its own

	// perState answers for one subject in one state of the shaft line; nil for a check that speaks
	// for the whole build through whole.
	perState func(e *engine, ln *line, subject string) answer
	// subjects tells joints and shafts of a layout apart; nil: one subject, "".
	subjects func(measure.Layout) []string
	// hanging shows the value, without a verdict, in states that the shaft does not run in.
	hanging bool
	// advise says which knob to turn when the limit is missed.
	advise func(ln *line, subject string) Message
	whole  func(e *engine, c *Check) []Finding
}

// answer is what a check's function gives back: a number or what is missing for it.
type answer struct {
	q       *quantity
	missing []Missing
	limit   string // another limit key than the table's; "" keeps it
	silent  bool   // the value is shown and never judged
	gentle  bool   // sources dispute the limit: missing it is unsure, not out
	notes   []Message
	absent  bool // none of the check's readings was taken in this state
}

var slopes = []string{"datum.slope", "gearbox.slope", "front_shaft.slope", "shaft.slope", "pinion.slope"}
var plans = []string{"gearbox.plan", "front_shaft.plan", "shaft.plan", "pinion.plan"}
var phases = []string{"shaft.phase", "front_shaft.phase"}
var windUp = []string{"pinion.windup_drive", "pinion.windup_coast"}
var speeds = []string{"engine.rpm_max", "gear.highest", "transfer.high", "road.speed_max", "axle.ratio", "tyre.radius", "tyre.code"}

// Table is the table of checks, in the order in which findings are sorted.
var Table = []Check{
	{Key: "build.chance", Group: "build", whole: (*engine).buildChance},
	{Key: "joint.angle", Group: "joint", Points: join(slopes, plans, windUp), Limit: "joint.angle",
		perState: jointAngle, subjects: jointNames, hanging: true, advise: adviseAngle},
	{Key: "joint.most_angle", Group: "joint", Points: join(slopes, plans, windUp, []string{"joint.angle_limit"}),
		whole: (*engine).mostAngle, subjects: jointNames},
	{Key: "joint.least_angle", Group: "joint", Points: join(slopes, plans, windUp), Limit: "joint.least_angle",
		perState: leastAngle, subjects: jointNames},
	{Key: "joint.match", Group: "joint", Points: join(slopes, plans, windUp), Limit: "joint.match",
		perState: match, hanging: true},
	{Key: "joint.residual", Group: "joint", Points: join(slopes, plans, phases, windUp), Limit: "joint.residual",
		perState: residual, hanging: true, advise: adviseResidual},
	{Key: "joint.ripple", Group: "joint", Points: join(slopes, plans, phases, windUp),
		perState: ripple, hanging: true},
	{Key: "joint.torsional", Group: "joint", Points: join(slopes, plans, phases, windUp, speeds), Limit: "joint.torsional",
		perState: torsional, advise: func(*line, string) Message { return Message{Key: MsgSlowerOrEven} }},
	{Key: "joint.inertia_drive", Group: "joint", Points: join(slopes, plans, phases, windUp, speeds), Limit: "joint.inertia",
		perState: inertiaDrive, subjects: shaftNames, advise: func(*line, string) Message { return Message{Key: MsgSmallerDrive} }},
	{Key: "joint.inertia_coast", Group: "joint", Points: join(slopes, plans, phases, windUp, speeds), Limit: "joint.inertia",
		perState: inertiaCoast, subjects: shaftNames, advise: func(*line, string) Message { return Message{Key: MsgSmallerCoast} }},
	{Key: "reading.setup", Group: "reading", Points: slopes, whole: (*engine).readingSetup},
	{Key: "reading.state", Group: "reading", whole: (*engine).readingState},
}

// CheckOf finds a row by key.
func CheckOf(key string) (Check, bool) {
	for _, c := range Table {
		if c.Key == key {
			return c, true
		}
	}
	return Check{}, false
}

func join(lists ...[]string) []string {
	var all []string
	for _, l := range lists {
		all = append(all, l...)
	}
	return all
}

// shaftNames tells the shafts of a two-piece line apart; one shaft needs no name.
func shaftNames(l measure.Layout) []string {
	if l.Shafts == 2 {
		return []string{"front_shaft", "shaft"}
	}
	return []string{""}
}
