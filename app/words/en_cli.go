package words

// enCLI: what the verbs print.
var enCLI = table{
	"cli.counts":           "{0} out, {1} unsure, {2} waiting, {3} clear",
	"cli.headline":         "chance that every judged limit holds: {0 percent}",
	"cli.headline_waiting": "chance that every judged limit holds: {0}",
	"cli.headline_note":    "  {0}",
	"cli.predicted":        "of the clear ones, computed and not read: {0}",
	"cli.resting":          "of the clear ones, resting on stated or estimated values: {0}",
	"cli.build":            "build {0} ({1})",
	"cli.unsealed":         "this file is not sealed: it has no sum, so changes made by hand or by accident can't be seen",

	"cli.finding":             "{0}: {1}",
	"cli.untouched":           "waiting, and nothing of it read yet:",
	"cli.untouched.line":      "    {0}",
	"cli.finding.value_limit": "    {0}, limit {1}",
	"cli.finding.value":       "    {0}",
	"cli.finding.chance":      "    {0}",
	"cli.finding.why":         "    {0}",
	"cli.finding.missing":     "    missing: {0}",
	"cli.finding.advice":      "    to do: {0}",
	"cli.finding.note":        "    note: {0}",
	"cli.finding.source":      "    source of the limit: {0}",

	"cli.kept":      "kept {0 point} {1}, {2 state}, setup {3}, as reading {4}",
	"cli.ask":       "{0}; nothing was kept; with --yes it is kept as it stands",
	"cli.changed":   "findings that changed: {0}",
	"cli.unchanged": "no finding changed",
	"cli.gone":      "no longer there: {0}",
	"cli.next":      "next: {0 point}, {1 state}",

	"cli.merged":    "{0} files merged: {1} readings and {2} strikes in {3}",
	"cli.source":    "{0}: {1} records, {2} of them in no other file",
	"cli.conflicts": "to look at: {0}",

	"conflict.same id":     "    two records under the id {1} in {0}; a reading counts for nothing until one of them is struck",
	"conflict.ring":        "    corrections in a ring in {0}: {1}; none of them counts, take the value again",
	"conflict.corrections": "    several corrections of one reading, all of them count: {1}; strike all but one",
	"conflict.field":       "    {0} was changed in two places; the last change counts, set it again to settle it",
	"conflict.member":      "    {0}, which this version does not know, has two values; the greater was kept",

	"cli.exported":  "build {0} written to {1}",
	"cli.imported":  "{0}: build {1} is in this device's store",
	"cli.no_builds": "no builds yet in this device's store",
	"cli.damaged":   "can't be read: {0}",
	"cli.aside":     "{0}; damaged records set aside: {1}",

	"start.headless": "yokebook: this program was built without a window; use a verb, such as `yokebook check FILE`, or see " +
		"`yokebook --help`",
	"start.no_display": "yokebook: there is no display to open the window on; use a verb, such as `yokebook check FILE`, or see " +
		"`yokebook --help`",
	"start.failed": "yokebook: {0}",

	"cli.arguments":   "arguments given: {0}, but wanted is `yokebook {1}`",
	"cli.optional":    "({0})",
	"cli.unit.text":   "text",
	"cli.unit.answer": "answer",

	"cli.column.points.point":  "POINT",
	"cli.column.points.unit":   "UNIT",
	"cli.column.points.states": "WANTED IN (OPTIONAL)",
	"cli.column.points.place":  "WHERE TO PUT THE TOOL",

	"cli.sense.max":     "at most",
	"cli.sense.min":     "at least",
	"cli.sense.between": "between",
	"cli.sense.equal":   "equal to",
	"cli.sense.input":   "taken as",
	"cli.other_limit":   "  others hold",

	"cli.column.limits.limit":  "LIMIT",
	"cli.column.limits.sense":  "SENSE",
	"cli.column.limits.value":  "VALUE",
	"cli.column.limits.unit":   "UNIT",
	"cli.column.limits.source": "SOURCE",

	"cli.column.builds.build":    "BUILD",
	"cli.column.builds.title":    "TITLE",
	"cli.column.builds.readings": "READINGS",
	"cli.column.builds.wanted":   "STILL WANTED",
	"cli.column.builds.worst":    "WORST",
	"cli.column.builds.work":     "LAST WORK",
}
