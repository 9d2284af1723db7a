package cli

import (
	"encoding/json"
	"math"
	"slices"
	"strings"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// The member names are those of the description of findings that other programs read; ours that
// are not in it come last.
var (
	findingMembers = []string{"check", "subject", "state", "value", "unit", "low", "high", "limit", "verdict", "chance", "used",
		"weakest", "missing", "advice", "predicted", "rests_on", "assumed", "notes"}
	limitMembers   = []string{"key", "value", "upper", "unit", "sense", "source", "reason"}
	weakestMembers = []string{"input", "reading", "share"}
	missingMembers = []string{"point", "state", "setup"}
)

// fullFinding has something in every member.
func fullFinding() checks.Finding {
	id := measure.ID("019ab3f1-0000-7000-8000-0000000000a1")
	return checks.Finding{
		Check: "joint.residual", State: measure.RideKerb, Value: number(3.4790000000000001), Unit: "deg",
		Low: number(3.4), High: number(3.55), Chance: number(0),
		Limit:   &checks.Limit{Key: "joint.residual", Value: 3, Unit: "deg", Sense: "max", Source: "a <book> & a page"},
		Verdict: checks.Out, Used: []measure.ID{id}, Weakest: &checks.Weakest{Input: "shaft.slope", Reading: &id, Share: 0.61},
		Missing: []checks.Missing{{Point: "pinion.slope", State: measure.RideKerb}},
		Advice:  checks.Message{Key: checks.MsgTurnPinion, Args: []any{"up"}},
	}
}

func number(f float64) *float64 { return &f }

func TestFindingAsJSON(t *testing.T) {
	got, err := compact(findingToJSON(fullFinding()))
	if err != nil {
		t.Fatal(err)
	}
	want := `{"check":"joint.residual","subject":"","state":"ride/kerb","value":3.479,"unit":"deg","low":3.4,"high":3.55,` +
		`"limit":{"key":"joint.residual","value":3,"upper":null,"unit":"deg","sense":"max","source":"a <book> & a page","reason":""},` +
		`"verdict":"out","chance":0,"used":["019ab3f1-0000-7000-8000-0000000000a1"],` +
		`"weakest":{"input":"shaft.slope","reading":"019ab3f1-0000-7000-8000-0000000000a1","share":0.61},` +
		`"missing":[{"point":"pinion.slope","state":"ride/kerb","setup":null}],` +
		`"advice":"turn the front end of the pinion up (wedge, links); mind the oil to its bearings, on a front axle the caster. First frame and axle on stands: springs are loaded, a loose axle rolls",` +
		`"predicted":false,"rests_on":[],"assumed":[],"notes":[]}`
	if got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

func TestEveryMemberIsThereAndNullWhereItDoesNotApply(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for name, f := range map[string]checks.Finding{
		"nothing in it": {}, "full": fullFinding(),
		"no numbers": {Value: &nan, Low: &inf, High: &nan, Chance: &nan, Limit: &checks.Limit{Value: nan}, Weakest: &checks.Weakest{Share: nan}},
	} {
		text, err := compact(findingToJSON(f))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for _, bad := range []string{"NaN", "Inf", `"verdict":""`, `"used":null`, `"missing":null`, `"notes":null`} {
			if strings.Contains(text, bad) {
				t.Errorf("%s: %s in %s", name, bad, text)
			}
		}
		var members map[string]json.RawMessage
		if err := json.Unmarshal([]byte(text), &members); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		sameMembers(t, name, members, findingMembers)
		inside(t, name+" limit", members["limit"], limitMembers)
		inside(t, name+" weakest", members["weakest"], weakestMembers)
		var missing []json.RawMessage
		if err := json.Unmarshal(members["missing"], &missing); err != nil {
			t.Fatal(err)
		}
		for _, m := range missing {
			inside(t, name+" missing", m, missingMembers)
		}
	}
}

func inside(t *testing.T, name string, text json.RawMessage, want []string) {
	t.Helper()
	var members map[string]json.RawMessage
	if err := json.Unmarshal(text, &members); err != nil {
		t.Fatal(err)
	}
	if members != nil {
		sameMembers(t, name, members, want)
	}
}

func sameMembers(t *testing.T, name string, got map[string]json.RawMessage, want []string) {
	t.Helper()
	for key := range got {
		if !slices.Contains(want, key) {
			t.Errorf("%s: member %s was not asked for", name, key)
		}
	}
	for _, key := range want {
		if _, ok := got[key]; !ok {
			t.Errorf("%s: member %s is not there", name, key)
		}
	}
}

func TestJSONOfAFileWrittenByHand(t *testing.T) {
	d := newDesk(t)
	file := d.put("hand.json", byHand)
	_, first, told := d.run("check", "--json", file)
	if told != "" {
		t.Fatal(told)
	}
	var got struct {
		Format, Build string
		Findings      []map[string]json.RawMessage
	}
	if err := json.Unmarshal([]byte(first), &got); err != nil {
		t.Fatal(err)
	}
	if got.Format != "yokebook-findings/1" || got.Build != "019ab3f0-0000-7000-8000-0000000000b1" || got.Findings == nil {
		t.Errorf("printed %s", first)
	}
	for _, f := range got.Findings {
		sameMembers(t, "a finding of the file", f, findingMembers)
	}
	if _, again, _ := d.run("check", file, "--json"); again != first {
		t.Error("the same file gave other bytes the second time")
	}
}

func TestJSONStaysEnglish(t *testing.T) {
	d := newDesk(t)
	p := d.program(nil, nil)
	var out, comma strings.Builder
	p.Out = &out
	if err := p.printFindingsJSON(nil, []checks.Finding{fullFinding()}); err != nil {
		t.Fatal(err)
	}
	p.Out, p.Language = &comma, p.Language.WithComma(true)
	if err := p.printFindingsJSON(nil, []checks.Finding{fullFinding()}); err != nil {
		t.Fatal(err)
	}
	if out.String() != comma.String() || !json.Valid([]byte(out.String())) {
		t.Errorf("%s\n%s", out.String(), comma.String())
	}
}
