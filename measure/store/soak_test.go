package store

import (
	"fmt"
	"os"
	"sync"
	"testing"

	"yokebook/measure"
)

// soaking makes the tests of damage long; without it they are short. See the target soak.
var soaking = os.Getenv("YOKEBOOK_SOAK") != ""

// rounds picks how often a test repeats.
func rounds(short, long int) int {
	if soaking {
		return long
	}
	return short
}

// tally counts what the tests of damage did.
var tally struct {
	sync.Mutex
	kills, flips, cuts, faults, powerLosses int
	losses                                  int // acknowledged readings that are not there
	silent                                  int // damage that was not noticed, or served as good
}

func count(what *int, n int) {
	tally.Lock()
	defer tally.Unlock()
	*what += n
}

func printTally() {
	fmt.Printf("rounds of killing %d, bits flipped %d, cuts %d, calls failed %d, losses of power %d: losses %d, silent acceptances %d\n",
		tally.kills, tally.flips, tally.cuts, tally.faults, tally.powerLosses, tally.losses, tally.silent)
}

// lost tells of a reading that was acknowledged and is not there.
func lost(t *testing.T, when string, id measure.ID, report Report) {
	t.Helper()
	count(&tally.losses, 1)
	t.Errorf("%s: reading %s was acknowledged and is lost; %s", when, id, report)
}

// silently tells of damage that was served as good, or not noticed.
func silently(t *testing.T, when, what string) {
	t.Helper()
	count(&tally.silent, 1)
	t.Errorf("%s: silently accepted: %s", when, what)
}
