package cli

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"yokebook/measure"
	"yokebook/measure/document"
)

// readings reads the build file of the desk strictly and returns its readings.
func (d *desk) readings(name string) []measure.Reading {
	d.t.Helper()
	b, seal, err := document.Read([]byte(d.file(name)))
	if err != nil {
		d.t.Fatal(err)
	}
	if seal != document.Whole {
		d.t.Error("the file that add wrote is not sealed")
	}
	return b.Readings
}

func TestAddTakesWhatAPersonTypes(t *testing.T) {
	onWheels := []string{"--ride", "ride", "--load", "kerb"}
	for _, tt := range []struct {
		name  string
		args  []string // point, value, flags
		value string   // token in the file
		unit  measure.Unit
		typed string // kept beside it
		state measure.State
		basis measure.Basis
	}{
		{"a slope", append([]string{"gearbox.slope", "2.40"}, onWheels...), "2.40", "deg", "", measure.RideKerb, "measured"},
		{"rear end high", append([]string{"gearbox.slope", "-2.4"}, onWheels...), "-2.4", "deg", "", measure.RideKerb, "measured"},
		{"a minus as printed", append([]string{"gearbox.slope", "−2.4"}, onWheels...), "-2.4", "deg", "", measure.RideKerb, "measured"},
		{"flags first", append(append([]string{}, onWheels...), "gearbox.slope", "-2.4"), "-2.4", "deg", "", measure.RideKerb, "measured"},
		{"after two dashes", append(append([]string{}, onWheels...), "--", "gearbox.slope", "-2.4"), "-2.4", "deg", "", measure.RideKerb, "measured"},
		{"decimal comma", append([]string{"gearbox.slope", "-2,4"}, onWheels...), "-2.4", "deg", "", measure.RideKerb, "measured"},
		{"no leading digit", append([]string{"gearbox.slope", "-.5"}, onWheels...), "-0.5", "deg", "", measure.RideKerb, "measured"},
		{"degrees and minutes", append([]string{"gearbox.slope", "-2°30'"}, onWheels...), "-2.5", "deg", "-2°30'", measure.RideKerb, "measured"},
		{"inches in fractions", append([]string{"shaft.length", `31 1/2"`, "--unit", "in"}, onWheels...), "31.5", "in", `31 1/2"`, measure.RideKerb, "measured"},
		{"a unit as typed elsewhere", append([]string{"shaft.length", "31.5", "--unit", "inch"}, onWheels...), "31.5", "in", "", measure.RideKerb, "measured"},
		{"on the bench", []string{"shaft.length", "800", "--ride", "bench"}, "800", "mm", "", measure.OffBench, "measured"},
		{"stated by its nature", []string{"engine.rpm_max", "5000"}, "5000", "rev/min", "", measure.OffBench, "stated"},
		{"stated by flag", []string{"shaft.length", "800", "--basis", "stated"}, "800", "mm", "", measure.OffBench, "stated"},
		{"a text", []string{"tyre.code", "205/55 R16"}, "205/55 R16", "", "", measure.OffBench, "stated"},
		{"asked about and kept", append([]string{"gearbox.slope", "44", "--yes"}, onWheels...), "44", "deg", "", measure.RideKerb, "measured"},
	} {
		d := newDesk(t)
		args := append([]string{"add", "--new", "Invented", d.path("b.json")}, tt.args...)
		if tt.args[0] == "--ride" {
			args = append([]string{"add", "--new", "Invented"}, tt.args[:4]...)
			args = append(append(args, d.path("b.json")), tt.args[4:]...)
		}
		code, _, err := d.run(args...)
		if code != Done || err != "" {
			t.Errorf("%s: exit %d: %s", tt.name, code, err)
			continue
		}
		got := d.readings("b.json")
		if len(got) != 1 {
			t.Errorf("%s: %d readings", tt.name, len(got))
			continue
		}
		r := got[0]
		if r.Value.Token() != tt.value || r.Unit != tt.unit || r.Entered != tt.typed || r.State() != tt.state || r.Basis != tt.basis {
			t.Errorf("%s: kept %q %q typed %q, %s, %s", tt.name, r.Value.Token(), r.Unit, r.Entered, r.State(), r.Basis)
		}
		if r.At != "2026-03-02T10:16:00Z" && r.At == "" || r.Device == "" {
			t.Errorf("%s: no author or time: %+v", tt.name, r)
		}
	}
}

func TestAddKeepsEveryFlag(t *testing.T) {
	d := newDesk(t)
	file := d.put("b.json", byHand)
	d.must("add", file, "gearbox.slope", "-2.5", "--ride", "droop", "--load", "none", "--height", "612,5", "--setup", "3",
		"--instrument", "finder", "--basis", "estimated", "--way", "2", "--lay", "face", "--tag", "left", "--note", "-5 mm of rust",
		"--replaces", "019ab3f1-0000-7000-8000-0000000000a1", "--yes")
	r := d.readings("b.json")[0]
	if r.ID == "019ab3f1-0000-7000-8000-0000000000a1" {
		r = d.readings("b.json")[1]
	}
	if r.Height.Token() != "612.5" || r.Setup != 3 || r.Instrument != "finder" || r.Basis != "estimated" || r.Way != 2 ||
		r.Lay != "face" || r.Tag != "left" || r.Note != "-5 mm of rust" || r.Replaces != "019ab3f1-0000-7000-8000-0000000000a1" {
		t.Errorf("kept %+v", r)
	}
}

func TestAddFindsTheSetup(t *testing.T) {
	d := newDesk(t)
	file := d.put("b.json", byHand) // hanging in setup 1
	setups := func() (out []int) {
		for _, r := range d.readings("b.json") {
			if r.Point == "pinion.slope" {
				out = append(out, r.Setup)
			}
		}
		return out
	}
	add := func(ride, load string, more ...string) {
		d.must(append([]string{"add", file, "pinion.slope", "3", "--ride", ride, "--load", load}, more...)...)
	}
	add("droop", "none")                 // as it stands
	add("ride", "kerb")                  // let down: a new setup
	add("ride", "kerb")                  // as it stands
	add("ride", "kerb", "--setup", "7")  // said
	add("ride", "kerb")                  // the newest of that state
	add("droop", "none", "--setup", "1") // back in the notes of the first
	want := []int{1, 2, 2, 7, 7, 1}
	got := setups()
	if len(got) != len(want) {
		t.Fatalf("setups %v, want %v", got, want)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Fatalf("setups %v, want %v", got, want)
		}
	}
}

func TestAddSaysWhatWasKeptAndWhatChanged(t *testing.T) {
	d := newDesk(t)
	out := d.must("add", d.path("b.json"), "gearbox.slope", "-2.4", "--ride", "ride", "--load", "kerb", "--new", "Invented")
	if !strings.HasPrefix(out, "kept gearbox slope −2.4°, at ride height, own weight, setup 1, as reading 019ab3f1-") {
		t.Errorf("printed %q", out)
	}
	var got struct {
		Format, Build, Reading string
		Findings               []map[string]any
	}
	out = d.must("add", d.path("b.json"), "shaft.slope", "1", "--ride", "ride", "--load", "kerb", "--json")
	if err := json.Unmarshal([]byte(out), &got); err != nil {
		t.Fatal(err)
	}
	if got.Format != findingsFormat || len(got.Build) != 36 || len(got.Reading) != 36 || got.Findings == nil {
		t.Errorf("printed %s", out)
	}
}

// Whatever stands where the value should: the verb ends with a code of its own and at most one line,
// and the reading that was there before is still there.
func FuzzAddValue(f *testing.F) {
	for _, seed := range []string{"2.4", "-2.4", "−2,4", "2°30'", "3 1/2\"", "--json", "-h", "--", "", " ", "-", "1e999", "NaN", "0x10",
		"-1.-2", "2\n3", "\x00", "½", strings.Repeat("9", 400)} {
		f.Add(seed)
	}
	dir := f.TempDir()
	file := filepath.Join(dir, "b.json")
	f.Fuzz(func(t *testing.T, value string) {
		if err := os.WriteFile(file, []byte(byHand), 0o644); err != nil {
			t.Fatal(err)
		}
		d := &desk{t: t, dir: dir}
		code, _, told := d.run("add", file, "gearbox.slope", value, "--ride", "droop", "--load", "none")
		if code != Done {
			oneLineOf(t, value, told)
		}
		if code != Done && code != PersonNeeded && code != BadInput {
			t.Errorf("%q: exit %d", value, code)
		}
		b, _, err := document.Read([]byte(d.file("b.json")))
		if err != nil || len(b.Readings) == 0 || b.Readings[len(b.Readings)-1].Value.Token() == "" {
			t.Fatalf("%q: the file afterwards: %v", value, err)
		}
		first := measure.ID("019ab3f1-0000-7000-8000-0000000000a1")
		if readingOf(b, first).Value.Token() != "2.4" {
			t.Errorf("%q: the earlier reading is gone", value)
		}
	})
}
