package limits

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

const sourcesFile = "../../testdata/reference/SOURCES.md"

// honest are the phrases that stand where there is no paper to name.
var honest = []string{
	practice, judged, "apart from this code", "by definition:", "a person at the vehicle looked and answered",
	"texts on strength (from memory)", "texts on machine design (from memory)", "usual tools (from memory)",
}

// statuses say how a paper came here; SOURCES.md explains them.
var statuses = []string{"read", "read in part", "read second-hand", "from memory"}

// paper is one short name of SOURCES.md.
type paper struct{ name, citation, status string }

var (
	pages  = regexp.MustCompile(`\bpp?\. [\d-]+`)
	cell   = regexp.MustCompile(`(?m)^\| (.+) \| (.+) \| (.+) \|$`)
	letter = regexp.MustCompile(`[\pL\pN]`)
)

// papersOf reads the table of SOURCES.md. Dashes of ranges become plain ones.
func papersOf(text string) (papers []paper) {
	for _, m := range cell.FindAllStringSubmatch(strings.ReplaceAll(text, "–", "-"), -1) {
		for _, name := range strings.Split(m[1], "; ") {
			papers = append(papers, paper{name, m[2], m[3]})
		}
	}
	return papers[1:] // the first are the names of the columns
}

// unvouched says what is wrong with a source: which member names neither a paper nor that there is
// none, which keeps back that its paper was not looked up, which names a page that isn't cited.
func unvouched(source string, papers []paper) (faults []string) {
	for _, member := range strings.Split(source, "; ") {
		vouched := slices.ContainsFunc(honest, func(phrase string) bool { return strings.Contains(member, phrase) })
		for _, p := range papers {
			if !names(member, p.name) {
				continue
			}
			vouched = true
			if p.status == "from memory" && !strings.Contains(member, "from memory") {
				faults = append(faults, member+": "+p.name+" was not looked up; say (from memory)")
			}
			for _, page := range pages.FindAllString(member, -1) {
				if !names(p.citation, page) {
					faults = append(faults, member+": the citation of "+p.name+" has no "+page)
				}
			}
		}
		if !vouched {
			faults = append(faults, member+": no short name of SOURCES.md, and no phrase that there is no paper")
		}
	}
	return faults
}

// names reports a whole name in a text: J3311-1 is none in J3311-12.
func names(text, name string) bool {
	before, after, found := strings.Cut(text, name)
	return found && !letter.MatchString(last(before)) && (after == "" || !letter.MatchString(after[:1]))
}

func last(text string) string {
	return text[max(0, len(text)-1):]
}

func readPapers(t *testing.T) []paper {
	t.Helper()
	text, err := os.ReadFile(sourcesFile)
	if err != nil {
		t.Fatal(err)
	}
	return papersOf(string(text))
}

func TestEverySourceIsAPaperOfSourcesOrSaysThatThereIsNone(t *testing.T) {
	papers := readPapers(t)
	for _, r := range Table {
		for _, source := range append([]string{r.Source}, othersOf(r)...) {
			for _, fault := range unvouched(source, papers) {
				t.Errorf("%s: %s", r.Key, fault)
			}
		}
	}
}

func othersOf(r Row) (sources []string) {
	for _, o := range r.Others {
		sources = append(sources, o.Source)
	}
	return sources
}

func TestSourcesNameEachPaperOnceWithHowItCameHere(t *testing.T) {
	papers := readPapers(t)
	if len(papers) < 60 {
		t.Errorf("only %d papers were read; the table of SOURCES.md has another form", len(papers))
	}
	seen := map[string]bool{}
	for _, p := range papers {
		if seen[p.name] {
			t.Errorf("%s stands twice", p.name)
		}
		if !slices.Contains(statuses, p.status) {
			t.Errorf("%s: status %q; the text above the table explains %q", p.name, p.status, statuses)
		}
		seen[p.name] = true
	}
}

func TestSourceWithoutAPaperIsFound(t *testing.T) {
	papers := papersOf("| short name | full citation | status |\n|---|---|---|\n" +
		"| a guide | A Maker, Guide, p. 10, pp. 16–17 | read |\n| ISO 1; ISO 2 | ISO 1, ISO 2 | from memory |\n")
	for _, row := range []struct {
		source string
		faults int
	}{
		{"a guide p. 10", 0}, {"a guide pp. 16-17: shafts", 0}, {"a half: a guide, worked on", 0},
		{"a guide; ISO 2 (from memory)", 0}, {judged + ": half of what lies between", 0}, {"worked apart from this code", 0},
		{"a trade guide on clutches", 1}, {"a guides p. 10", 1}, {"ISO 22 (from memory)", 1},
		{"a guide p. 10; half of what lies between", 1}, {"a guide p. 1", 1}, {"a guide pp. 16-18", 1},
		{"ISO 1", 1}, {"ISO 1 and ISO 2", 2}, {"the same page, oiled", 1}, {"advice among owners", 1}, {"", 1},
	} {
		if faults := unvouched(row.source, papers); len(faults) != row.faults {
			t.Errorf("%q: %d faults are found, there are %d: %q", row.source, len(faults), row.faults, faults)
		}
	}
}
