package words

// enStore: what is told of how builds are kept on this device. Keys and arguments are those of
// package logbook.
var enStore = table{
	"store.unfinished": "the last entry was not finished when the program ended; everything before it is here (the cut-off file: {0})",
	"store.recovered": "the file was damaged; records read from it: {0}, of them behind the damaged place: {1}; brought back from " +
		"snapshots: {2}; the damaged file is kept beside the builds as {3}",
	"store.restored":  "the file was missing; records brought back from snapshots: {0}, the newest is {1}",
	"store.lost":      "damaged and nowhere else: {0} records, in {1}; the first is {2}; take them again, or import a file that has them",
	"store.nameless":  "damaged beyond reading: {0} places in {1}; look whether a reading is missing",
	"store.snapshot":  "snapshot {0} is damaged and not used; the build itself is not",
	"store.unknown":   "records from a newer version that this one can't read: {0}; they are kept",
	"store.unsecured": "the second copy could not be written: {0}",

	"store.state.whole":     "whole",
	"store.state.recovered": "recovered",
	"store.state.set aside": "set aside",

	"cli.verified":       "builds read back: {0} whole, {1} recovered, {2} with something set aside",
	"cli.verify":         "{0}: {1}",
	"cli.verify.damaged": "    can't be read: {0}",
	"cli.verify.held":    "    is open in {0}; it was read as it stands now",
	"cli.verify.note":    "    {0}",
	"cli.verify.mend":    "    opening the build mends what can be mended; the damaged file is kept",
	"cli.verify.past":    "    {0}: {1}",

	"cli.struck": "struck {0 point} {1}, {2 state}, setup {3}, reading {4}; it stays in the file with its reason and counts no more",

	"help.strike": "take a reading out of use, with the reason",
	"help.strike.long": `Takes a reading out of use and prints the findings that changed. The reading stays in the file with its reason.
READING is its id, or the end of it as findings show it. A strike is final: to use the value again, add it again.

Where two records share an id, --content names the one to strike by the beginning of its hash; without it the two are
told and nothing is struck.`,
	"help.flag.reason":  "why the reading is struck",
	"help.flag.content": "beginning of the content hash of one of two records that share an id",
	"help.flag.verify":  "read everything back and tell what is whole, recovered or set aside",
}
