// Package words holds every sentence that a person sees: on the screen, on the order sheet and on
// the command line. Nothing else in the program makes sentences, and nothing here knows a screen.
//
// A Language is a set of tables, one file per area (en_checks.go, en_states.go …), merged in one
// place (en.go). Each table maps a key to a sentence with numbered gaps:
//
//	"note.speed": "Speed from the road: {0 rev/min} at {1 km/h}."
//
// A gap {0} takes the argument as it is; {0 point}, {0 state}, {0 check} … put in the word for a
// key; {0 mm}, {0 deg}, {0 percent} … write a number with its unit (see gap.go). Another language
// may use the gaps in any order. A second language is one more variable like English with its own
// tables; Differences says which keys or gaps either of the two lacks.
package words
