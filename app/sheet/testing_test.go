package sheet

import (
	"flag"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"yokebook/app/words"
	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

var rewrite = flag.Bool("rewrite", false, "write the golden pictures anew that differ")

var demos = []string{"demo", "gearbox-slip", "links-two-piece", "steep"}

func buildOf(t testing.TB, name string) *measure.Build {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "testdata", "builds", name+".json"))
	if err != nil {
		t.Fatal(err)
	}
	b, _, err := document.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func sheetOf(t testing.TB, b *measure.Build, o Options) (*Sheet, []checks.Finding) {
	t.Helper()
	found := checks.Run(b, nil)
	s, err := Make(b, found, o)
	if err != nil {
		t.Fatal(err)
	}
	return s, found.Findings
}

// with is a build with one more reading on the bench.
func with(t testing.TB, b *measure.Build, point, token string, unit measure.Unit, basis measure.Basis) *measure.Build {
	t.Helper()
	v, err := measure.NumberValue(token)
	if err != nil {
		v = measure.TextValue(token)
	}
	more := *b
	more.Readings = append(append([]measure.Reading{}, b.Readings...), measure.Reading{
		ID: measure.ID("019d2aff-0000-7000-8000-" + strings.Repeat("0", 9) + string(rune('a'+len(b.Readings)%6)) + "00"), Point: point, Value: v, Unit: unit,
		Basis: basis, Ride: measure.Bench, Setup: 1})
	if err := more.Validate(); err != nil {
		t.Fatal(err)
	}
	return &more
}

// poppler runs one of poppler's programs, which know nothing of ours, on a document.
func poppler(t *testing.T, pdf []byte, program string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(program); err != nil {
		t.Skipf("%s is not here; .ci/need test installs it", program)
	}
	path := filepath.Join(t.TempDir(), "sheet.pdf")
	if err := os.WriteFile(path, pdf, 0o644); err != nil {
		t.Fatal(err)
	}
	for i, a := range args {
		if a == "IN" {
			args[i] = path
		}
	}
	out, err := exec.Command(program, args...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s: %v: %s", program, err, out)
	}
	return string(out)
}

// allOptions are both papers in every choice of units, and both in German.
func allOptions() []Options {
	var out []Options
	for _, p := range Papers {
		for _, u := range words.AllUnits {
			out = append(out, Options{Paper: p, Units: u})
		}
		out = append(out, Options{Paper: p, Units: words.Metric, Language: words.German})
	}
	return out
}
