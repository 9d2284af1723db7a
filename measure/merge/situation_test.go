package merge

import (
	"bytes"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"yokebook/measure"
	"yokebook/measure/document"
)

// Each folder of testdata/merge is a situation: what both sides had (base), what each side made of
// it (a, b), and what must come of uniting them (want). The files were written and put together
// apart from this code. Here stand what each is about, the conflicts and the readings that count.
var situations = []struct {
	name, about string
	conflicts   []string
	counts      string // last digit of the ids of current readings
}{
	{"two-readings-each-side", "A and B each took the shaft and the pinion", nil, "12345"},
	{"title-changed-on-both-sides", "A and B replaced the same title; B's stamp is the later one",
		[]string{`"title" was changed in two places; the last change counts; set it again to settle it`}, ""},
	{"corrected-on-both-sides", "A and B corrected the same reading; both corrections are shown",
		[]string{"readings 019ab3f1-0000-7000-8000-000000000002, 019ab3f1-0000-7000-8000-000000000003 correct the same reading; strike all but one"}, "23"},
	{"same-id-other-content", "one id stands for two values; neither counts",
		[]string{"reading 019ab3f1-0000-7000-8000-000000000002 is there with two contents; neither counts until one is struck"}, "1"},
	{"same-id-settled-by-a-strike", "A struck one of the two by its content; the other counts", nil, "124"},
	{"strike-before-its-reading", "A struck a reading that only B holds; it applies as soon as both meet", nil, "1"},
	{"unknown-members", "members of a newer program; of two values the greater bytes stay",
		[]string{`member "colour" has two values; the greater was kept`}, "12"},
	{"by-hand-without-heads", "files by hand differ in title, tools, note and limits; only the title is in conflict",
		[]string{`"title" was changed in two places; the last change counts; set it again to settle it`}, "1"},
	{"clock-ten-years-ahead", "A's clock is ten years ahead; B's correction still counts", nil, ""},
	{"newer-format-on-one-side", "B holds a point that this version does not know; it is carried", nil, "13"},
	{"corrections-in-a-ring", "A and B replace each other; neither counts",
		[]string{"readings: 019ab3f1-0000-7000-8000-000000000002, 019ab3f1-0000-7000-8000-000000000003 replace each other in a ring; take the value again"}, "1"},
	{"one-instrument-id-two-tools", "A's finder reads angles, B's lengths; both readings stay readable",
		[]string{`"instruments.finder" was changed in two places; the last change counts; set it again to settle it`}, "16"},
	{"layout-members-on-both-sides", "A changed one member of the layout, B another", nil, ""},
	{"struck-on-both-sides", "A and B struck the same reading, each with a reason; A also skipped a stop", nil, ""},
}

func TestSituations(t *testing.T) {
	for _, s := range situations {
		t.Run(s.name, func(t *testing.T) {
			base, a, b := load(t, s.name, "base"), load(t, s.name, "a"), load(t, s.name, "b")
			want := write(t, load(t, s.name, "want"))
			for _, order := range [][]*measure.Build{{base, a, b}, {base, b, a}, {a, base, b}, {b, a, base}, {b, a, base, a, b}, {united(t, a, base), b}, {a, united(t, b, base)}} {
				got, report, err := Builds(order...)
				if err != nil {
					t.Fatal(err)
				}
				if out := write(t, got); !bytes.Equal(out, want) {
					t.Fatalf("%s:\n%s\nwant\n%s", s.about, out, want)
				}
				if lines := linesOf(report); !reflect.DeepEqual(lines, s.conflicts) {
					t.Fatalf("conflicts %q, want %q", lines, s.conflicts)
				}
				if counts := currentOf(got); counts != s.counts {
					t.Fatalf("current readings %s, want %s", counts, s.counts)
				}
			}
		})
	}
}

func TestEverySituationIsInTheTable(t *testing.T) {
	folders, err := filepath.Glob("../../testdata/merge/*")
	if err != nil || len(folders) != len(situations) {
		t.Fatalf("%d folders, %d rows, %v", len(folders), len(situations), err)
	}
}

func load(t *testing.T, situation, name string) *measure.Build {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("../../testdata/merge", situation, name+".json"))
	if err != nil {
		t.Fatal(err)
	}
	b, _, err := document.Read(data)
	if err != nil {
		t.Fatalf("%s/%s: %v", situation, name, err)
	}
	return b
}

type fataler interface {
	Helper()
	Fatalf(format string, args ...any)
}

func write(t fataler, b *measure.Build) []byte {
	t.Helper()
	data, err := document.Write(b)
	if err != nil {
		t.Fatalf("write: %v", err)
	}
	return data
}

func united(t fataler, builds ...*measure.Build) *measure.Build {
	t.Helper()
	b, _, err := Builds(builds...)
	if err != nil {
		t.Fatalf("merge: %v", err)
	}
	return b
}

func linesOf(r Report) []string {
	var lines []string
	for _, c := range r.Conflicts {
		lines = append(lines, c.String())
	}
	return lines
}

func currentOf(b *measure.Build) string {
	var s strings.Builder
	for _, r := range b.CurrentReadings(document.Hash) {
		s.WriteByte(r.ID[len(r.ID)-1])
	}
	return s.String()
}
