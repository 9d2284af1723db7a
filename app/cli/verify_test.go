package cli

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"yokebook/app/logbook"
	"yokebook/app/words"
	"yokebook/measure/store"
)

type verified struct {
	Format string
	Builds []verifiedJSON
}

func (d *desk) verify(want int) (verified, string) {
	d.t.Helper()
	code, text, says := d.run("builds", "--verify")
	if code != want || says != "" {
		d.t.Errorf("exit %d, error %q, printed\n%s\nwant exit %d", code, says, text, want)
	}
	code, out, _ := d.run("builds", "--verify", "--json")
	var v verified
	if err := json.Unmarshal([]byte(out), &v); err != nil || code != want || v.Format != "yokebook-verify/1" {
		d.t.Fatalf("--json: exit %d, %v, %s", code, err, out)
	}
	return v, text
}

func (d *desk) buildFile() string { return filepath.Join(d.path("home"), "builds", handID+".db") }

func (d *desk) change(path string, change func(string) string) {
	d.t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		d.t.Fatal(err)
	}
	after := change(string(data))
	if after == string(data) {
		d.t.Fatalf("%s: nothing was changed", path)
	}
	if err := os.WriteFile(path, []byte(after), 0o644); err != nil {
		d.t.Fatal(err)
	}
}

func TestVerifySaysWhatIsWholeRecoveredOrSetAside(t *testing.T) {
	alter := func(s string) string { return strings.Replace(s, `"value":2.4`, `"value":2.9`, 1) }
	d := newDesk(t)
	d.must("import", d.put("hand.json", byHand))
	v, text := d.verify(Done)
	if v.Builds[0].State != "whole" || !strings.HasPrefix(text, "builds read back: 1 whole, 0 recovered, 0 with something set aside\n") {
		t.Errorf("an untouched store: %+v, %s", v, text)
	}

	// One value is altered: the snapshot has it.
	d.change(d.buildFile(), alter)
	before, err := os.ReadFile(d.buildFile())
	if err != nil {
		t.Fatal(err)
	}
	v, text = d.verify(PersonNeeded)
	if b := v.Builds[0]; b.State != "recovered" || b.Restored != 1 || len(b.Lost) > 0 || !strings.Contains(text, "brought back from snapshots: 1;") {
		t.Errorf("an altered value: %+v, %s", b, text)
	}
	if now, err := os.ReadFile(d.buildFile()); err != nil || string(now) != string(before) {
		t.Error("verify changed the file")
	}
	d.must("export", handID, "-o", d.path("out.json"))
	if !strings.Contains(d.file("out.json"), `"value":2.4`) {
		t.Error("the export has not what the snapshot has")
	}

	// The snapshot is damaged too: the reading is lost, and said to be.
	snaps, err := filepath.Glob(filepath.Join(d.path("home"), "snapshots", handID, "*.json"))
	if err != nil || len(snaps) != 1 {
		t.Fatalf("snapshots %v, %v", snaps, err)
	}
	d.change(snaps[0], alter)
	v, text = d.verify(PersonNeeded)
	if b := v.Builds[0]; b.State != "set aside" || len(b.Lost) != 1 || !strings.Contains(b.Lost[0], firstReading) || !strings.Contains(text, "is damaged and not used") {
		t.Errorf("altered twice: %+v, %s", b, text)
	}

	// Importing the file again mends the build, keeps what was damaged, and takes the reading back in.
	d.must("import", d.path("hand.json"))
	v, text = d.verify(Done)
	if b := v.Builds[0]; b.State != "whole" || len(b.Past) == 0 || !strings.Contains(text, "the file was damaged") {
		t.Errorf("mended: %+v, %s", b, text)
	}
	kept, err := filepath.Glob(filepath.Join(d.path("home"), "aside", handID, "*"))
	if err != nil || len(kept) != 3 {
		t.Errorf("set aside: %v, %v; want the file, the snapshot, the report", kept, err)
	}

	// Nothing that can be read.
	if err := os.RemoveAll(filepath.Join(d.path("home"), "snapshots")); err != nil {
		t.Fatal(err)
	}
	d.change(d.buildFile(), func(string) string { return "not a store" })
	v, text = d.verify(PersonNeeded)
	if b := v.Builds[0]; b.State != "set aside" || b.Damaged == nil || !strings.Contains(text, "can't be read: ") {
		t.Errorf("not a store: %+v, %s", b, text)
	}
}

func TestEveryNoteAndStateHasASentence(t *testing.T) {
	for _, l := range words.Languages {
		for _, key := range logbook.NoteKeys {
			if !l.Has(key) {
				t.Errorf("%s: no sentence for %s", l.Tag, key)
			}
		}
		for _, s := range []store.State{store.IsWhole, store.Recovered, store.IsSetAside} {
			if !l.Has("store.state." + string(s)) {
				t.Errorf("%s: no word for %s", l.Tag, s)
			}
		}
	}
}
