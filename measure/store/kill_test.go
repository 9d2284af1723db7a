package store

import (
	"math/rand/v2"
	"reflect"
	"strconv"
	"testing"

	"yokebook/measure"
)

// A process that keeps readings is killed after a random number of acknowledgements, twenty times
// over on the same build. Every reading it had acknowledged must be there, whole.
func TestKillLosesNothingAcknowledged(t *testing.T) {
	const rounds, seed = 20, 20260302
	random := rand.New(rand.NewPCG(seed, seed))
	st, first := newStore(t, sample(0)), 0
	acknowledged := map[int]bool{}
	for round := range rounds {
		c := startChild(t, "keep", st.Dir(), first)
		for range 1 + random.IntN(60) {
			acknowledgement(t, c, acknowledged)
		}
		c.kill()
		// What it said before it died counts too.
		for acknowledgement(t, c, acknowledged) {
		}
		c.wait()

		got := readAll(t, st)
		for n := range acknowledged {
			if whole, ok := got[reading(n).ID]; !ok || !reflect.DeepEqual(whole, reading(n)) {
				t.Fatalf("round %d (seed %d): reading %d was acknowledged and is lost or altered (found: %v)", round, seed, n, ok)
			}
		}
		first = max(first, len(got))
	}
	if len(acknowledged) < rounds {
		t.Fatalf("only %d readings in %d rounds: the test proves nothing", len(acknowledged), rounds)
	}
}

func acknowledgement(t *testing.T, c *child, into map[int]bool) bool {
	t.Helper()
	said, ok := c.line()
	if !ok {
		return false
	}
	n, err := strconv.Atoi(said)
	if err != nil {
		t.Fatalf("the child said %q", said)
	}
	into[n] = true
	return true
}

// readAll opens the build, which must be free and whole, and returns its readings.
func readAll(t *testing.T, st *Store) map[measure.ID]measure.Reading {
	t.Helper()
	f, b, report, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatalf("after the kill: %v", err)
	}
	defer f.Close()
	if report.State() == IsSetAside {
		t.Fatalf("after the kill: %s", report)
	}
	out := make(map[measure.ID]measure.Reading, len(b.Readings))
	for _, r := range b.Readings {
		out[r.ID] = r
	}
	return out
}
