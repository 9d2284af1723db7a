package sheet

// Paper is a size of paper, mm.
type Paper struct {
	Name       string // as the command line calls it
	Wide, High float64
}

// The papers: ISO 216 and ANSI/ASME Y14.1 size A.
var (
	A4     = Paper{"a4", 210, 297}
	Letter = Paper{"letter", 215.9, 279.4}
)

// Papers lists them, the default first.
var Papers = []Paper{A4, Letter}

// PaperOf finds a paper by its name.
func PaperOf(name string) (Paper, bool) {
	for _, p := range Papers {
		if p.Name == name {
			return p, true
		}
	}
	return Paper{}, false
}
