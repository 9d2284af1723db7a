package cli

import (
	"encoding/json"
	"path/filepath"
	"strings"
	"testing"
)

// steep is an invented build: leaf springs, a steep shaft, 25 mm of spline.
var steep = filepath.Join("..", "..", "testdata", "builds", "steep.json")

func TestSweepIsAsReviewed(t *testing.T) {
	golden(t, "sweep-steep.txt", newDesk(t).must("sweep", steep))
	golden(t, "sweep-steep.json", newDesk(t).must("sweep", steep, "--json"))
}

func TestSweepNamesItsNumbers(t *testing.T) {
	var swept struct {
		Format string
		Path   *string
		Rows   []struct {
			Height, Travel float64
			State          string
			Predicted      bool
			Length         *struct{ Value, Low, High float64 }
			Angles         []struct {
				Joint string
				Angle *struct{ Value float64 }
			}
		}
	}
	if err := json.Unmarshal([]byte(newDesk(t).must("sweep", steep, "--json")), &swept); err != nil {
		t.Fatal(err)
	}
	if swept.Format != sweepFormat || swept.Path == nil || *swept.Path != "leaf" || len(swept.Rows) < 20 {
		t.Errorf("format %s, path %v, %d rows", swept.Format, swept.Path, len(swept.Rows))
	}
	for _, r := range swept.Rows {
		if r.Length == nil || !(r.Length.Low < r.Length.Value && r.Length.Value < r.Length.High) || len(r.Angles) != 2 || r.Angles[1].Joint != "rear" || r.Angles[1].Angle == nil {
			t.Errorf("at %g: %+v", r.Travel, r)
		}
		if (r.Travel == 0) == r.Predicted || (r.State == "ride/kerb") == r.Predicted {
			t.Errorf("at %g: state %q, predicted %v", r.Travel, r.State, r.Predicted)
		}
	}
}

// A build without heights has no travel: the verb says what it waits for and is done.
func TestSweepOfTooLittleSaysWhatIsMissing(t *testing.T) {
	d := newDesk(t)
	out := d.must("sweep", d.put("b.json", byHand))
	if !strings.Contains(out, "missing: bump stop gap, at ride height") || !strings.Contains(out, "missing: spring front half") || strings.Contains(out, "HEIGHT") {
		t.Errorf("printed %q", out)
	}
	if code, _, err := d.run("sweep", d.path("none.json")); code != BadInput {
		t.Errorf("no such file: exit %d, %q", code, err)
	}
}
