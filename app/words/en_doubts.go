package words

// enDoubts: what is asked back before an entry is kept. Keys and arguments are those of package
// logbook.
var enDoubts = table{
	"doubt.implausible": "{0 point} {1 base} lies outside {2 base} to {3 base}, where such parts lie: look again",
	"doubt.contradiction": "wheels {0 ride} with {1 load} can't go together: hanging wheels carry nothing, standing wheels carry " +
		"something",
	"doubt.same_setup": "setup {0} was used {1 state}, and now it stands {2 state}: a vehicle that was moved, jacked or let down " +
		"has a new setup number",
}
