package cli

import (
	"strings"
	"testing"
)

const twoPieceBuild = "../../testdata/builds/links-two-piece.json"

func TestTubesAreAsReviewed(t *testing.T) {
	golden(t, "tubes-links-two-piece.txt", newDesk(t).must("tubes", twoPieceBuild))
	golden(t, "tubes-links-two-piece.json", newDesk(t).must("tubes", twoPieceBuild, "--json"))
}

// Sizes that are out are left away unless they are asked for, and what rows wait for is named.
func TestTubesLeaveAwayWhatIsOut(t *testing.T) {
	some, all := newDesk(t).must("tubes", twoPieceBuild), newDesk(t).must("tubes", twoPieceBuild, "--all")
	if strings.Contains(some, " out\n") || len(all) < len(some) || !strings.Contains(some, "missing: ") {
		t.Errorf("printed %q", some)
	}
	d := newDesk(t)
	if code, _, err := d.run("tubes", d.path("none.json")); code != BadInput {
		t.Errorf("no such file: exit %d, %q", code, err)
	}
}
