package words

// enHelp: the help of the command line.
var enHelp = table{
	"help.root": "readings under a vehicle, and what they mean",
	"help.root.long": `Readings from under a vehicle that gets a foreign engine and gearbox, and what they mean: each finding with
its value and doubt, the limit and its source, what decides it and what to do. Without a verb the window opens.

It is a notebook that computes, no approval: local rules, the makers' instructions and licensed practice come first.
Nobody goes under a vehicle that rests on a jack; stands on both sides, wheels chocked.

Exit codes: 0 done, 1 a person is needed, 2 bad input or usage, 3 could not write.`,

	"help.check": "judge a build file: every finding, worst first",
	"help.check.long": `Judges a build file and prints how many findings are out, unsure, waiting and clear, then every finding, worst first:
value and doubt, limit, the weakest reading, what to do.

Exit code 1 says that something is out; with --strict, that anything is not clear.`,

	"help.add": "add a reading to a build file",
	"help.add.long": `Adds a reading to a build file and prints the findings that changed. POINT is one of those that "yokebook points"
lists. VALUE is a number as read: -2.4, 2,4, 2°30', 3 1/2", or a text for a tyre code or bolt grade. A slope is
positive when the part's FRONT end is the higher one.

A reading on the vehicle needs --ride and --load; a stated value needs neither. Without --setup the newest setup of
that state is used, or a new one when the vehicle has not stood like that before.

A value that no such part has, or a state that contradicts itself, is asked about (exit code 1) and kept with --yes.`,

	"help.merge": "merge files of one build",
	"help.merge.long": `Merges any files of one build into one: nothing of any is lost, and the order does not matter. Records that
contradict each other are told, both are kept, and neither counts until a person strikes one.`,

	"help.points": "list what can be read",
	"help.points.long": `Lists every point: its key for "yokebook add", its unit, the states that it is wanted in (in brackets: if you want
to), and where to put the tool.`,

	"help.limits": "list the limits that findings are judged by",
	"help.limits.long": `Lists every limit with its value, unit, sense and source. Where sources differ, the others are listed below it; a
build can pick one with a reason.`,

	"help.schema":      "print the JSON Schema of build files",
	"help.schema.long": "Prints the JSON Schema (draft 2020-12) of build files.",

	"help.builds":      "list the builds in this device's store",
	"help.builds.long": "Lists the builds in this device's store, which is the folder $YOKEBOOK_HOME or the user's own.",

	"help.export":      "write a build of this device's store to a file",
	"help.export.long": "Writes a build of this device's store to a build file. ID is as \"yokebook builds\" lists it.",

	"help.import": "take build files into this device's store",
	"help.import.long": `Takes build files into this device's store. A build that is there already is merged with it, so that nothing is
lost; taking a file in twice changes nothing.`,

	"help.completion": "print what completes verbs, points and files in a shell",
	"help.completion.long": `Prints a script that lets the shell complete verbs, flags, points and files. SHELL is bash, zsh, fish or powershell.
For bash: source <(yokebook completion bash)`,

	"help.help":      "tell how a verb is used",
	"help.help.long": "Tells how a verb is used; \"yokebook VERB --help\" does the same.",

	"help.flag.json":       "print JSON, always in English",
	"help.flag.strict":     "exit with 1 unless every finding is clear",
	"help.flag.output":     "file to write",
	"help.flag.unit":       "unit of VALUE, such as deg, mm, in, kg, lb (otherwise the point's own)",
	"help.flag.ride":       "how the wheels stood: droop, ride, bump or bench",
	"help.flag.load":       "weight on the wheels: none, kerb or laden",
	"help.flag.height":     "hub centre to arch edge at the same time, in mm",
	"help.flag.setup":      "number of the setup, raised whenever the vehicle is moved, jacked or let down",
	"help.flag.instrument": "id of the instrument in the build",
	"help.flag.basis":      "where the value comes from: measured, stated or estimated",
	"help.flag.replaces":   "id of the reading that this one corrects",
	"help.flag.tag":        "tells several readings of one point apart, such as two obstacles",
	"help.flag.by":         "who read it, where that says more than the device: builder for the one who made the shaft",
	"help.flag.note":       "what else was seen",
	"help.flag.way":        "which end of the finder faced forward: 1 or 2",
	"help.flag.lay":        "how the finder lay: along the part or on its face",
	"help.flag.yes":        "keep a value that is asked about",
	"help.flag.new":        "start the file, with this title",
}
