package words

// enPhone: what only a phone asks.
var enPhone = table{
	"phone.leaving":      "{0} is typed and not kept",
	"phone.leaving.note": "If you leave, it stands here again when you open this build.",
	"phone.leaving.stay": "Back to it",
	"phone.leaving.go":   "Leave for the list of builds",
}
