package words

// enStore: what is told of how builds are kept on this device. Keys and arguments are those of
// package logbook.
var enStore = table{
	"store.unfinished": "the last entry was not finished when the program ended; everything before it is here (the cut-off file: {0})",
	"store.recovered": "the file was damaged: {0} records are from it ({1} of them from behind the damage), {2} are from snapshots " +
		"(damaged file: {3})",
	"store.restored":  "the file was missing: {0} records are from snapshots, the newest is {1}",
	"store.lost":      "damaged and nowhere else: {0} records, in {1}; the first is {2}; take them again, or import a file that has them",
	"store.nameless":  "damaged beyond reading: {0} places in {1}; look whether a reading is missing",
	"store.snapshot":  "snapshot {0} is damaged and not used; the build itself is not",
	"store.unknown":   "records from a newer version that this one can't read: {0}; they are kept",
	"store.unsecured": "the second copy could not be written: {0}",
}
