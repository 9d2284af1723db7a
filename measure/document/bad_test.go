package document

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Files that are refused, with the line each gives (the caller puts the file's name before it).
// Each has a near twin in testdata/bad/twins that is accepted, so that a reader which refuses
// everything fails here.
var badFiles = []struct{ file, line string }{
	{"bad-utf8", "byte 105, in title: a text is not UTF-8; save the file again as UTF-8"},
	{"beyond-vertical", "readings[0].value: gearbox.slope 94 deg is beyond ±90; check which face the finder lay on, then enter it again"},
	{"build-id-path", `id: "../../../etc/passwd" is not a lower-case UUID of 36 characters`},
	{"byte-order-mark", "byte 0: starts with a byte order mark; save it again as UTF-8 without one"},
	{"comment", "byte 667: a comma or '}' is missing"},
	{"cut-off", "ends after 500 bytes, inside readings[0].load; copy it again from the other device"},
	{"damaged-sum-name", "sul: holds a sum, but its name is damaged; copy the file again from the other device"},
	{"decimal-comma", "byte 434, in readings[0].value: a comma stands inside a number; write a point"},
	{"deep-nesting", "byte 710: is nested deeper than 32 levels; check that it is a build file"},
	{"duplicate-key", "byte 446: readings[0].value stands there twice; keep one"},
	{"empty", "is empty; copy it again from the other device"},
	{"format-missing", "format: is missing; choose a yokebook build file"},
	{"head-value", "heads[0].value: title is a number; write a text in quotes"},
	{"id-upper-case", `id: "019AB3F0-0000-7000-8000-000000000001" is not a lower-case UUID of 36 characters`},
	{"instrument-of-another-quantity", "readings[0].instrument: finder reads a length, but gearbox.slope is an angle; name another instrument or leave it out"},
	{"instrument-twice", `instruments[1].id: "finder" stands there twice; keep one`},
	{"instrument-unknown", `readings[0].instrument: "tape" is not in the build's instruments; add it there or leave it out`},
	{"layout-missing", "layout.shafts: is missing; use 1 or 2"},
	{"layout-unknown", `layout.slip: "middle" is not known; use one of [shaft gearbox]`},
	{"limit-without-value", `limits.joint.angle: write it as {"value": number, "upper": number where there are two, "reason": "why"}`},
	{"line-break-in-text", `byte 103, in title: a line break or control character stands inside a text; close the quotes before it, or write it as \n`},
	{"load-missing", "readings[0].ride: load is missing; use none, kerb or laden"},
	{"load-on-bench", "readings[0].ride: a bench reading has no load; leave load out"},
	{"lone-surrogate", "byte 104, in title: half of a surrogate pair stands alone; write the character itself"},
	{"long-number", "byte 432, in readings[0].value: a number of 41 characters; at most 40 are read, so shorten it"},
	{"nan", "byte 432, in readings[0].value: NaN is not a number; leave the record out"},
	{"null", "is null, not a build; choose a yokebook build file"},
	{"number-in-quotes", "readings[0].value: gearbox.slope takes a number"},
	{"other-json", "is a list, not a build; choose a yokebook build file"},
	{"plain-key-against-head", `title: says "Invented: bad files", but its newest head says "Invented: other"; leave the plain key out, or add a head that replaces that one`},
	{"point-case", "readings[0].point: \"Gearbox.slope\" is not a point; `yokebook points` lists them"},
	{"reading-id-path", `readings[0].id: "..\x00/x" is not a lower-case UUID of 36 characters`},
	{"readings-no-list", "strikes: is an object; write a list in [ ]"},
	{"setup-as-fraction", "readings[0].setup: must be a whole number such as 1, without quotes, point or exponent"},
	{"setup-zero", "readings[0].setup: is 0; count from 1 or leave it out"},
	{"single-quotes", "byte 653: a key in quotes is missing; set one before the value"},
	{"strike-of-nothing", "strikes[0].reading: is missing; add it"},
	{"too-large-number", `byte 432, in readings[0].value: "1e999" is not a number this program can hold; write it as a plain number such as 2.4`},
	{"trailing", "byte 669: something follows the end; remove what stands after the last bracket"},
	{"trailing-comma", "byte 668: a comma stands before '}'; remove it"},
	{"unit-of-another-quantity", `readings[0].unit: gearbox.slope: unit "mm" is for a length, but this is an angle; use deg`},
	{"unknown-point", "readings[0].point: \"gearbox.slant\" is not a point; `yokebook points` lists them"},
	{"unknown-unit", `readings[0].unit: gearbox.slope: unit "rad" is not known; use deg`},
	{"value-missing", "readings[0].value: is missing; add it"},
	{"wrong-format", `format: "yokebook-findings/1" is not "yokebook-build/1"; choose a yokebook build file`},
	{"wrong-sum", "sum: does not match, so the file was changed after it was written; copy it again, or take sum out if you edited it by hand"},
}

const badFolder = "../../testdata/bad"

func TestBadFilesAreRefusedInOneLine(t *testing.T) {
	for _, c := range badFiles {
		t.Run(c.file, func(t *testing.T) {
			b, _, err := Read(file(t, c.file+".json"))
			if err == nil {
				t.Fatal("it was accepted")
			}
			if err.Error() != c.line || strings.ContainsAny(err.Error(), "\r\n") {
				t.Errorf("line\n%s\nwant\n%s", err, c.line)
			}
			if b != nil {
				t.Error("a build came with the error")
			}
			if _, _, err := Read(file(t, "twins/"+c.file+".json")); err != nil {
				t.Errorf("its near twin was refused: %v", err)
			}
		})
	}
}

func TestEveryBadFileIsInTheTable(t *testing.T) {
	names, err := filepath.Glob(badFolder + "/*.json")
	if err != nil || len(names) != len(badFiles) {
		t.Fatalf("%d files, %d rows, %v", len(names), len(badFiles), err)
	}
}

func file(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(badFolder, name))
	if err != nil {
		t.Fatal(err)
	}
	return data
}
