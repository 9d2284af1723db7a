package cli

import (
	"os"
	"strings"
	"testing"
)

const demoID = "019d2a00-0000-7000-8000-00000000d300"

// demoFile is the invented build that the program shows first.
func demoFile(t *testing.T) string {
	t.Helper()
	data, err := os.ReadFile("../../testdata/builds/demo.json")
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// An order goes out, the builder enters what was made and sends the file back: each side sees what
// the other added, and the checks run on what was made.
func TestTheBuildersFileComesBack(t *testing.T) {
	d := newDesk(t)
	ordered := d.put("ordered.json", demoFile(t))
	back := d.put("back.json", demoFile(t))
	if out := d.must("diff", ordered, back); !strings.Contains(out, "Both hold the same records.") || !strings.Contains(out, "No finding differs.") {
		t.Errorf("of one file twice: %s", out)
	}
	if code, _, says := d.run("check", ordered, "--as-built"); code != BadInput || !strings.Contains(says, "nothing of what was built") {
		t.Errorf("exit %d, %q", code, says)
	}
	d.must("add", back, "as_built.tube_od", "48", "--ride", "bench", "--by", "builder")
	d.must("add", back, "as_built.tube_wall", "2.1", "--ride", "bench", "--by", "builder")
	out := d.must("diff", ordered, back)
	for _, want := range []string{back + " alone has 2:", "as built: tube outside diameter 48 mm", "by the shaft builder", "No finding differs."} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q in %s", want, out)
		}
	}
	if strings.Contains(out, ordered+" alone") {
		t.Errorf("the order has something of its own: %s", out)
	}
	merged := d.path("merged.json")
	d.must("merge", ordered, back, "-o", merged)
	_, out, _ = d.run("check", merged, "--as-built")
	for _, want := range []string{"As built these differ from what was ordered", "critical bending speed of the shaft", "  ordered: ", "  built:   "} {
		if !strings.Contains(strings.ToLower(out), strings.ToLower(want)) {
			t.Errorf("no %q in %s", want, out)
		}
	}
}

func TestDiffTellsStrikesAndRefusesAnotherBuild(t *testing.T) {
	d := newDesk(t)
	a, b := d.put("a.json", byHand), d.put("b.json", byHand)
	d.must("strike", b, firstReading, "--reason", "on the weld")
	if out := d.must("diff", a, b); !strings.Contains(out, "struck: gearbox slope 2.4°") || !strings.Contains(out, "Findings that differ") {
		t.Errorf("printed %s", out)
	}
	if code, _, says := d.run("diff", a, d.put("demo.json", demoFile(t))); code != BadInput || !strings.Contains(says, "two builds") {
		t.Errorf("exit %d, %q", code, says)
	}
}
