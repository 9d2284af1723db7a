package cli

import (
	"encoding/json"
	"strings"
	"testing"
)

const handID = "019ab3f0-0000-7000-8000-0000000000b1"

func TestImportedBuildComesOutAsItWentIn(t *testing.T) {
	d := newDesk(t)
	file := d.put("hand.json", byHand)
	if out := d.must("builds"); !strings.Contains(out, "no builds yet") {
		t.Errorf("an empty store printed %q", out)
	}
	if out := d.must("import", file, file); strings.Count(out, handID) != 2 {
		t.Errorf("printed %q", out)
	}
	d.must("export", handID, "-o", d.path("out.json"))
	d.must("merge", file, "-o", d.path("merged.json"))
	if d.file("out.json") != d.file("merged.json") {
		t.Errorf("the store gave back\n%s\nand the file itself is\n%s", d.file("out.json"), d.file("merged.json"))
	}
	if out := d.must("builds"); !strings.Contains(out, handID) || !strings.Contains(out, "Written by hand") {
		t.Errorf("printed %q", out)
	}
	var got struct {
		Format string
		Builds []struct {
			Build, Title string
			Readings     int
		}
	}
	if err := json.Unmarshal([]byte(d.must("builds", "--json")), &got); err != nil {
		t.Fatal(err)
	}
	if got.Format != "yokebook-builds/1" || len(got.Builds) != 1 || got.Builds[0].Build != handID || got.Builds[0].Readings != 1 {
		t.Errorf("printed %+v", got)
	}
}

func TestMergeIsTheSameInAnyOrderAndTellsConflicts(t *testing.T) {
	d := newDesk(t)
	a := d.put("a.json", byHand)
	b := d.put("b.json", strings.Replace(byHand, `"value": 2.4`, `"value": 2.9`, 1)) // the same id, other content
	out := d.must("merge", a, b, "-o", d.path("ab.json"))
	if !strings.HasPrefix(out, "2 files merged: 2 readings and 0 strikes in ") || !strings.Contains(out, "to look at: 1\n") ||
		!strings.Contains(out, "019ab3f1-0000-7000-8000-0000000000a1") {
		t.Errorf("printed %q", out)
	}
	d.must("merge", b, a, b, "-o", d.path("ba.json"))
	if d.file("ab.json") != d.file("ba.json") {
		t.Error("another order gave other bytes")
	}
	d.must("merge", d.path("ab.json"), a, "-o", d.path("ab.json"))
	if d.file("ab.json") != d.file("ba.json") {
		t.Error("merging into one of the files gave other bytes")
	}
}

func TestShellCompletion(t *testing.T) {
	d := newDesk(t)
	for _, shell := range []string{"bash", "zsh", "fish", "powershell"} {
		if out := d.must("completion", shell); !strings.Contains(out, "yokebook") {
			t.Errorf("%s: printed %.80q", shell, out)
		}
	}
	d.must("import", d.put("hand.json", byHand))
	for _, tt := range []struct {
		typed []string
		want  string
	}{
		{[]string{"add", "b.json", "gearbox.s"}, "gearbox.slope\n"},
		{[]string{"add", "b.json", "gearbox.slope", "2", "--ride", ""}, "bump\n"},
		{[]string{"export", ""}, handID},
		{[]string{"ch"}, "check"},
	} {
		code, out, _ := d.run(append([]string{"__complete"}, tt.typed...)...)
		if code != Done || !strings.Contains(out, tt.want) {
			t.Errorf("%q offers %q", tt.typed, out)
		}
	}
}
