package cli

import (
	"encoding/json"
	"strings"
	"testing"
)

func TestRemedyIsAsReviewed(t *testing.T) {
	golden(t, "remedy-steep.txt", newDesk(t).must("remedy", steep))
	said := newDesk(t).must("remedy", steep, "--json")
	golden(t, "remedy-steep.json", said)
	namesItsNumbers(t, said)
}

// namesItsNumbers reads what --json printed.
func namesItsNumbers(t *testing.T, said string) {
	t.Helper()
	var got struct {
		Format string
		Chance *float64
		Next   []struct {
			Kind, Point, State, Say string
			Decides, Share          float64
		}
		Troubles []struct {
			Group   string
			Check   *string
			Singles []struct {
				Changes  []struct{ Knob, Unit, Say string }
				From, To *float64
				Costs    []string
			}
			Pair *struct {
				Changes  []struct{ Knob string }
				From, To *float64
			}
		}
	}
	if err := json.Unmarshal([]byte(said), &got); err != nil {
		t.Fatal(err)
	}
	if got.Format != remedyFormat || got.Chance == nil || len(got.Troubles) < 5 || got.Troubles[0].Check != nil {
		t.Errorf("format %s, %d troubles", got.Format, len(got.Troubles))
	}
	if len(got.Next) < 5 || got.Next[0].Say == "" || got.Next[0].Decides < got.Next[1].Decides || got.Next[0].Share <= 0 {
		t.Errorf("next %+v", got.Next[:min(2, len(got.Next))])
	}
	singles, pairs := 0, 0
	for _, x := range got.Troubles {
		for _, r := range x.Singles {
			singles++
			if len(r.Changes) != 1 || r.From == nil || r.To == nil || r.Changes[0].Say == "" || r.Costs == nil {
				t.Errorf("%s: %+v", x.Group, r)
			}
		}
		if x.Pair != nil {
			pairs++
			if len(x.Pair.Changes) != 2 || x.Pair.From != nil {
				t.Errorf("%s: pair %+v", x.Group, x.Pair)
			}
		}
	}
	if singles < 5 || pairs < 2 {
		t.Errorf("%d singles, %d pairs", singles, pairs)
	}
}

func TestRemedyOfNothingWrongSaysSo(t *testing.T) {
	d := newDesk(t)
	if out := d.must("remedy", d.put("b.json", byHand)); !strings.Contains(out, "nothing is out or unsure") {
		t.Errorf("printed %q", out)
	}
	if code, _, _ := d.run("remedy", d.path("none.json")); code != BadInput {
		t.Errorf("no such file: exit %d", code)
	}
}
