package cli

import (
	"strings"
	"testing"

	"yokebook/measure/document"
)

const firstReading = "019ab3f1-0000-7000-8000-0000000000a1"

func TestStrikeTakesAReadingOutOfUse(t *testing.T) {
	for _, named := range []string{firstReading, "00a1", "…0000a1", "...00a1"} {
		d := newDesk(t)
		file := d.put("b.json", byHand)
		out := d.must("strike", file, named, "--reason", " finder was on the weld ")
		if !strings.Contains(out, "struck gearbox slope 2.4°") || !strings.Contains(out, firstReading) {
			t.Errorf("%s: printed %q", named, out)
		}
		b, _, err := document.Read([]byte(d.file("b.json")))
		if err != nil || len(b.Readings) != 1 || len(b.Strikes) != 1 || len(b.CurrentReadings(document.Hash)) != 0 {
			t.Fatalf("%s: %+v, %v; want the reading kept and struck", named, b, err)
		}
		if s := b.Strikes[0]; s.Reason != "finder was on the weld" || s.Content != "" || s.Device == "" || s.At == "" {
			t.Errorf("%s: strike %+v", named, s)
		}
		code, _, says := d.run("strike", file, named, "--reason", "again")
		if code != BadInput || !strings.Contains(says, "struck already") {
			t.Errorf("%s, again: exit %d, %q", named, code, says)
		}
	}
}

func TestStrikePrintsTheFindingsThatChanged(t *testing.T) {
	d := newDesk(t)
	file := d.put("b.json", byHand)
	onWheels := []string{"--ride", "ride", "--load", "kerb"}
	d.must(append([]string{"add", file, "gearbox.slope", "2"}, onWheels...)...)
	out := d.must(append([]string{"add", file, "shaft.slope", "17", "--json"}, onWheels...)...)
	if !strings.Contains(out, `"verdict":"out"`) {
		t.Fatalf("17° at the shaft is not out: %s", out)
	}
	struck := d.readings("b.json")[1].ID
	for _, r := range d.readings("b.json") {
		if r.Point == "shaft.slope" {
			struck = r.ID
		}
	}
	out = d.must("strike", file, string(struck), "--reason", "read on the wrong part", "--json")
	if !strings.Contains(out, `"reading":"`+string(struck)+`"`) || !strings.Contains(out, `"check":"joint.angle"`) || strings.Contains(out, `"verdict":"out"`) {
		t.Errorf("printed %s", out)
	}
}

// Two devices kept other values under one id. Neither counts until one is struck by its content.
func TestStrikeOfOneOfTwoRecordsOfAnID(t *testing.T) {
	d := newDesk(t)
	a := d.put("a.json", byHand)
	b := d.put("b.json", strings.Replace(byHand, `"value": 2.4`, `"value": 2.9`, 1))
	d.must("merge", a, b, "-o", d.path("ab.json"))
	before := d.file("ab.json")
	code, out, says := d.run("strike", d.path("ab.json"), "00a1", "--reason", "typing error")
	oneLineOf(t, "two records", says)
	if code != BadInput || out != "" || !strings.Contains(says, "2.4 deg (--content ") || !strings.Contains(says, "2.9 deg (--content ") {
		t.Fatalf("exit %d, %q; want both records named", code, says)
	}
	if d.file("ab.json") != before {
		t.Error("a refused strike changed the file")
	}
	wrong := d.readings("ab.json")[0]
	if wrong.Value.Token() != "2.9" {
		wrong = d.readings("ab.json")[1]
	}
	hash := document.Hash(wrong)
	for _, bad := range []string{"zz", "sha256:", hash + "0"} {
		if code, _, _ := d.run("strike", d.path("ab.json"), "00a1", "--reason", "typing error", "--content", bad); code != BadInput {
			t.Errorf("--content %s: exit %d", bad, code)
		}
	}
	d.must("strike", d.path("ab.json"), "00a1", "--reason", "typing error", "--content", strings.TrimPrefix(hash, "sha256:")[:8])
	build, _, err := document.Read([]byte(d.file("ab.json")))
	if err != nil {
		t.Fatal(err)
	}
	if left := build.CurrentReadings(document.Hash); len(left) != 1 || left[0].Value.Token() != "2.4" || build.Strikes[0].Content != hash {
		t.Errorf("current %+v, strikes %+v; want 2.4 to count", left, build.Strikes)
	}
}

func TestStrikeRefusesWhatItCannotDo(t *testing.T) {
	d := newDesk(t)
	file := d.put("b.json", byHand)
	d.must("add", file, "shaft.length", "800", "--ride", "bench")
	second := string(d.readings("b.json")[0].ID) // …000000000001
	before := d.file("b.json")
	for _, tt := range []struct {
		name string
		args []string
		says string
	}{
		{"no reason", []string{file, "00a1"}, "--reason"},
		{"a blank reason", []string{file, "00a1", "--reason", " "}, "--reason"},
		{"no such reading", []string{file, "00ff", "--reason", "x"}, "00ff"},
		{"nothing as reading", []string{file, "…", "--reason", "x"}, "no reading"},
		{"an end of two ids", []string{file, "1", "--reason", "x"}, "2 readings"},
		{"no file", []string{d.path("none.json"), "00a1", "--reason", "x"}, "none.json"},
		{"one argument", []string{file, "--reason", "x"}, "strike FILE READING"},
	} {
		code, out, says := d.run(append([]string{"strike"}, tt.args...)...)
		oneLineOf(t, tt.name, says)
		if code != BadInput || out != "" || !strings.Contains(says, tt.says) {
			t.Errorf("%s: exit %d, printed %q, said %q; want %q", tt.name, code, out, says, tt.says)
		}
	}
	if d.file("b.json") != before || !strings.HasSuffix(second, "1") {
		t.Error("a refused strike changed the file")
	}
}
