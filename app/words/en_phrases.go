package words

// enPhrases: what places say they could not do, in their own words, and the phrases of sources that
// name no paper, in those of the table of limits. Both are looked for in longer lines.
var enPhrases = table{
	"fault.no_folder":        "there is no such folder; plug it in or make it",
	"fault.not_opened":       "can't be opened as a folder",
	"fault.full":             "is full; make room there, nothing was changed",
	"fault.read_only":        "can't be written to; nothing was changed there",
	"fault.refused":          "refused the user name or password",
	"fault.unlike":           "was read back differently than it was written",
	"fault.large":            "is larger than 8 MiB, so it is no build file",
	"fault.many":             "holds more than 100,000 files; choose a folder that holds builds only",
	"fault.unreached":        "the server can't be reached",
	"fault.slow":             "the server does not answer in time; try again later",
	"fault.no_server_folder": "the server has no such folder; make it there, or look at the address",
	"fault.no_reading":       "the server does not let this user read here",
	"fault.http":             "http:// is open to everybody on the way; use https://",
	"fault.address":          "the address can't be understood; write it as https://host/folder/",

	"source.practice":   "common practice, no source",
	"source.judged":     "our judgement, no source",
	"source.apart":      "worked apart from this code",
	"source.person":     "a person at the vehicle looked and answered",
	"source.strength":   "texts on strength (from memory)",
	"source.design":     "texts on machine design (from memory)",
	"source.tools":      "usual tools (from memory)",
	"source.memory":     "(from memory)",
	"source.definition": "by definition:",
	"source.rounded":    "rounded as is common practice",
}
