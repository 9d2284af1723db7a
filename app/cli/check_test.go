package cli

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
)

// printed is what check prints of findings.
func printed(t *testing.T, seal document.Seal, findings ...checks.Finding) string {
	t.Helper()
	var out bytes.Buffer
	p := newDesk(t).program(&out, nil)
	p.printCheck(&measure.Build{Title: "Invented", ID: "019ab3f0-0000-7000-8000-0000000000b1"}, seal, findings)
	return out.String()
}

func with(v checks.Verdict, name string) checks.Finding {
	return checks.Finding{Check: name, Verdict: v}
}

func TestCheckTellsTheWorstFirst(t *testing.T) {
	full := fullFinding()
	full.Assumed = []string{"shaft.plan"}
	full.Limit.Source = "a book"
	predicted := with(checks.Clear, "joint.ripple")
	predicted.Predicted, predicted.RestsOn = true, []string{"gear.highest"}
	got := printed(t, document.Unsealed,
		predicted, with(checks.Waiting, "joint.torsional"), with(checks.Unsaid, "joint.match"), with(checks.Unsure, "joint.angle"), full,
		checks.Finding{Check: "build.chance", Chance: number(0.615)})
	want := `1 out, 1 unsure, 1 waiting, 1 clear
chance that every judged limit holds: 62 %
of the clear ones, computed and not read: 1
of the clear ones, resting on stated or estimated values: 1
build Invented (019ab3f0-0000-7000-8000-0000000000b1)
this file is not sealed: it has no sum, so changes made by hand or by accident can't be seen

out: residual of the joints together, at ride height, own weight
    3.48° ± 0.08°, limit at most 3°
    chance that the limit is met: < 1 %
    weakest: shaft slope, 61 % of the doubt (reading …000000a1)
    missing: pinion slope, at ride height, own weight
    to do: turn the front end of the pinion up (wedge, links); mind the oil to its bearings, on a front axle the caster. First frame and axle on stands: springs are loaded, a loose axle rolls
    note: side view only: shaft plan angle not read, taken as 0
    source of the limit: a book

unsure: joint angle

waiting: torsional acceleration at the axle

clear, predicted if gear highest ratio is true: speed ripple of the joints together

not judged: match of the joint angles
`
	if got != want {
		t.Errorf("printed\n%s\nwant\n%s", got, want)
	}
	if sealed := printed(t, document.Whole); strings.Contains(sealed, "sealed") {
		t.Errorf("a sealed file was called unsealed: %s", sealed)
	}
}

func TestExitCodeSaysWhetherAPersonIsNeeded(t *testing.T) {
	tests := []struct {
		name     string
		findings []checks.Finding
		plain    bool // a person is needed
		strict   bool
	}{
		{"nothing found", nil, false, false},
		{"clear", []checks.Finding{with(checks.Clear, "a")}, false, false},
		{"no verdict", []checks.Finding{with(checks.Unsaid, "a")}, false, false},
		{"waiting", []checks.Finding{with(checks.Clear, "a"), with(checks.Waiting, "b")}, false, true},
		{"unsure", []checks.Finding{with(checks.Unsure, "a")}, false, true},
		{"out", []checks.Finding{with(checks.Clear, "a"), with(checks.Out, "b")}, true, true},
	}
	for _, tt := range tests {
		if got := errors.Is(judged(tt.findings, false), errQuiet); got != tt.plain {
			t.Errorf("%s: a person is needed: %v, want %v", tt.name, got, tt.plain)
		}
		if got := errors.Is(judged(tt.findings, true), errQuiet); got != tt.strict {
			t.Errorf("%s, strict: a person is needed: %v, want %v", tt.name, got, tt.strict)
		}
	}
	if codeOf(errQuiet) != PersonNeeded {
		t.Errorf("the code for it is %d", codeOf(errQuiet))
	}
}

func TestTextOfAFileCannotBreakTheLines(t *testing.T) {
	d := newDesk(t)
	file := d.put("b.json", strings.Replace(byHand, "Written by hand", `evil\n3 out\u001b[31m`, 1))
	_, out, told := d.run("check", file)
	if strings.Contains(out, "\x1b") || strings.Contains(out, "\n3 out") || told != "" {
		t.Errorf("printed %q, told %q", out, told)
	}
}
