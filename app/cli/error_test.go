package cli

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestErrorIsOneLineAndItsExitCode(t *testing.T) {
	d := newDesk(t)
	file := d.put("hand.json", byHand)
	other := d.put("other.json", strings.Replace(byHand, "0000000000b1", "0000000000b2", 1))
	cut := d.put("cut.json", byHand[:400])
	d.must("import", file)
	ride := []string{"--ride", "ride", "--load", "kerb"}
	add := func(args ...string) []string { return append([]string{"add"}, args...) }
	for _, tt := range []struct {
		name string
		args []string
		code int
		says string
	}{
		{"unknown verb", []string{"chekc", file}, BadInput, "chekc"},
		{"unknown verb asked about", []string{"help", "chekc"}, BadInput, "chekc"},
		{"unknown flag", []string{"check", file, "--jsn"}, BadInput, "yokebook check --help"},
		{"unknown flag before any verb", []string{"--jsn"}, BadInput, "--jsn"},
		{"check without a file", []string{"check"}, BadInput, "check FILE"},
		{"check of two files", []string{"check", file, file}, BadInput, "check FILE"},
		{"no such file", []string{"check", d.path("none.json")}, BadInput, "none.json: there is no such file"},
		{"a folder for a file", []string{"check", d.dir}, BadInput, d.dir},
		{"a file without end", []string{"check", "/dev/zero"}, BadInput, "zero"},
		{"a file that is cut off", []string{"check", cut}, BadInput, "cut.json"},
		{"points with an argument", []string{"points", "x"}, BadInput, "yokebook points"},
		{"completion of an unknown shell", []string{"completion", "nosuch"}, BadInput, "bash"},

		{"add with two arguments", add(file, "gearbox.slope"), BadInput, "add FILE POINT VALUE"},
		{"add to no file", add(append([]string{d.path("none.json"), "gearbox.slope", "2"}, ride...)...), BadInput, "--new"},
		{"add to a file that is cut off", add(append([]string{cut, "gearbox.slope", "2"}, ride...)...), BadInput, "cut.json"},
		{"new over a file that is there", add(append([]string{file, "gearbox.slope", "2", "--new", "x"}, ride...)...), BadInput, "hand.json"},
		{"new without a title", add(append([]string{d.path("n.json"), "gearbox.slope", "2", "--new", " "}, ride...)...), BadInput, "title"},
		{"unknown point", add(append([]string{file, "gearbox.slop", "2"}, ride...)...), BadInput, "yokebook points"},
		{"no number", add(append([]string{file, "gearbox.slope", "steep"}, ride...)...), BadInput, "steep"},
		{"NaN", add(append([]string{file, "gearbox.slope", "NaN"}, ride...)...), BadInput, "NaN"},
		{"impossible slope", add(append([]string{file, "gearbox.slope", "94"}, ride...)...), BadInput, "±90"},
		{"impossible slope with --yes", add(append([]string{file, "gearbox.slope", "94", "--yes"}, ride...)...), BadInput, "±90"},
		{"negative length", add(append([]string{file, "shaft.length", "-3"}, ride...)...), BadInput, "negative"},
		{"unit of another quantity", add(append([]string{file, "gearbox.slope", "2", "--unit", "mm"}, ride...)...), BadInput, "angle"},
		{"unknown unit", add(append([]string{file, "gearbox.slope", "2", "--unit", "ell"}, ride...)...), BadInput, "ell"},
		{"state missing", add(file, "gearbox.slope", "2"), BadInput, "--ride"},
		{"load missing", add(file, "gearbox.slope", "2", "--ride", "ride"), BadInput, "load is missing"},
		{"ride missing", add(file, "gearbox.slope", "2", "--load", "kerb"), BadInput, "ride"},
		{"unknown ride", add(file, "gearbox.slope", "2", "--ride", "flying", "--load", "kerb"), BadInput, "flying"},
		{"load on the bench", add(file, "shaft.length", "800", "--ride", "bench", "--load", "kerb"), BadInput, "bench"},
		{"unknown basis", add(append([]string{file, "gearbox.slope", "2", "--basis", "felt"}, ride...)...), BadInput, "felt"},
		{"setup 0", add(append([]string{file, "gearbox.slope", "2", "--setup", "0"}, ride...)...), BadInput, "setup"},
		{"setup no number", add(append([]string{file, "gearbox.slope", "2", "--setup", "two"}, ride...)...), BadInput, "two"},
		{"unknown instrument", add(append([]string{file, "gearbox.slope", "2", "--instrument", "rod"}, ride...)...), BadInput, "rod"},
		{"height no length", add(append([]string{file, "gearbox.slope", "2", "--height", "high"}, ride...)...), BadInput, "height"},
		{"negative height", add(append([]string{file, "gearbox.slope", "2", "--height", "-4"}, ride...)...), BadInput, "height"},
		{"replaces nothing", add(append([]string{file, "gearbox.slope", "2", "--replaces", "019ab3f1-0000-7000-8000-0000000000ff"}, ride...)...),
			BadInput, "replaces"},
		{"replaces no id", add(append([]string{file, "gearbox.slope", "2", "--replaces", "../x"}, ride...)...), BadInput, "replaces"},
		{"lay unknown", add(append([]string{file, "gearbox.slope", "2", "--lay", "flat"}, ride...)...), BadInput, "flat"},
		{"way unknown", add(append([]string{file, "gearbox.slope", "2", "--way", "3"}, ride...)...), BadInput, "way"},
		{"implausible value", add(append([]string{file, "gearbox.slope", "44"}, ride...)...), PersonNeeded, "--yes"},
		{"state that contradicts itself", add(file, "gearbox.slope", "2", "--ride", "droop", "--load", "kerb"), PersonNeeded, "--yes"},

		{"merge without a place to write", []string{"merge", file}, BadInput, "-o OUT"},
		{"merge of nothing", []string{"merge", "-o", d.path("m.json")}, BadInput, "merge FILE"},
		{"merge of two builds", []string{"merge", file, other, "-o", d.path("m.json")}, BadInput, "b"},
		{"merge with a file that is cut off", []string{"merge", file, cut, "-o", d.path("m.json")}, BadInput, "cut.json"},
		{"merge into no folder", []string{"merge", file, "-o", d.path("no/m.json")}, NotWritten, "could not write"},

		{"new in no folder", add(append([]string{d.path("no/b.json"), "gearbox.slope", "2", "--new", "x"}, ride...)...), NotWritten, "b.json"},
		{"export into no folder", []string{"export", handID, "-o", d.path("no/e.json")}, NotWritten, "could not write"},
		{"export of no build", []string{"export", "019ab3f0-0000-7000-8000-0000000000ff", "-o", d.path("e.json")}, BadInput, "ff"},
		{"export of no id", []string{"export", "../x", "-o", d.path("e.json")}, BadInput, "UUID"},
		{"export without a place to write", []string{"export", "019ab3f0-0000-7000-8000-0000000000ff"}, BadInput, "-o FILE"},
		{"import of nothing", []string{"import"}, BadInput, "import FILE"},
		{"import of no file", []string{"import", d.path("none.json")}, BadInput, "none.json"},
		{"import of a file that is cut off", []string{"import", cut}, BadInput, "cut.json"},
	} {
		code, out, err := d.run(tt.args...)
		if code != tt.code {
			t.Errorf("%s: exit %d, want %d (%s)", tt.name, code, tt.code, strings.TrimSpace(err))
		}
		oneLineOf(t, tt.name, err)
		if !strings.Contains(err, tt.says) {
			t.Errorf("%s: %q does not say %q", tt.name, err, tt.says)
		}
		if out != "" {
			t.Errorf("%s: printed %q", tt.name, out)
		}
	}
	if d.file("hand.json") != byHand {
		t.Error("a refused verb changed the file")
	}
	for _, name := range []string{"m.json", "e.json", "n.json"} {
		if _, err := os.Stat(d.path(name)); !errors.Is(err, os.ErrNotExist) {
			t.Errorf("a refused verb left %s behind: %v", name, err)
		}
	}
}

// Every file that must be refused is refused by each verb that reads files, with one line.
func TestBadFilesAreRefusedInOneLine(t *testing.T) {
	bad, err := filepath.Glob(filepath.Join("..", "..", "testdata", "bad", "*.json"))
	if err != nil || len(bad) == 0 {
		t.Fatalf("no bad files to refuse: %v", err)
	}
	for _, path := range bad {
		d := newDesk(t)
		for _, args := range [][]string{
			{"check", path}, {"check", "--json", path},
			{"merge", path, "-o", d.path("m.json")}, {"import", path},
		} {
			code, out, err := d.run(args...)
			if code != BadInput || out != "" {
				t.Errorf("%q: exit %d, printed %q", args, code, out)
			}
			oneLineOf(t, strings.Join(args, " "), err)
			if !strings.Contains(err, filepath.Base(path)) {
				t.Errorf("%q: %q does not name the file", args, err)
			}
		}
	}
}

func TestStoreThatCannotBeMadeIsNotWritten(t *testing.T) {
	d := newDesk(t)
	d.put("home", "a file where the folder should be")
	file := d.put("hand.json", byHand)
	for _, args := range [][]string{{"builds"}, {"import", file}} {
		code, _, err := d.run(args...)
		if code != NotWritten {
			t.Errorf("%q: exit %d, want %d", args, code, NotWritten)
		}
		oneLineOf(t, strings.Join(args, " "), err)
	}
	d.must("add", file, "gearbox.slope", "-2.4", "--ride", "ride", "--load", "kerb") // needs no store
}

type fullDisk struct{}

func (fullDisk) Write([]byte) (int, error) { return 0, errors.New("no space left") }

func TestOutputThatIsNotTakenIsNotWritten(t *testing.T) {
	d := newDesk(t)
	file := d.put("hand.json", byHand)
	for _, args := range [][]string{{"check", file}, {"check", "--json", file}, {"points"}, {"schema"}, {"--help"}} {
		var told strings.Builder
		p := d.program(nil, nil)
		p.Out, p.Err = fullDisk{}, &told
		if code := p.Run(args); code != NotWritten {
			t.Errorf("%q: exit %d, want %d", args, code, NotWritten)
		}
		oneLineOf(t, strings.Join(args, " "), told.String())
	}
}
