package store

import (
	"math/rand/v2"
	"os"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"yokebook/measure"
)

// A process that keeps readings, writes snapshots, opens and closes is killed after a random number
// of acknowledgements, again and again on the same build. Before each start something is left at the
// end of the file, as a kill or a loss of power leaves it, so that opening has to mend: that is killed
// too. Every reading that was acknowledged must be there, whole.
func TestKillLosesNothingAcknowledged(t *testing.T) {
	const seed = 20260302
	random := rand.New(rand.NewPCG(seed, seed))
	var st *Store
	var acknowledged map[int]bool
	first, all, rounds := 0, 0, rounds(20, 1000)
	for round := range rounds {
		if round%20 == 0 { // a build holds no more than a file may
			st, first, acknowledged = newStore(t, sample(0)), 0, map[int]bool{}
		}
		leave(t, st, random)
		c := startChild(t, "keep", st.Dir(), first)
		for range random.IntN(12) {
			acknowledgement(t, c, acknowledged)
		}
		c.kill()
		// What it said before it died counts too.
		for acknowledgement(t, c, acknowledged) {
		}
		c.wait()
		count(&tally.kills, 1)

		got, report := readAll(t, st)
		for n := range acknowledged {
			if whole, ok := got[reading(n).ID]; !ok || !reflect.DeepEqual(whole, reading(n)) {
				lost(t, "round "+strconv.Itoa(round)+" (seed "+strconv.Itoa(seed)+")", reading(n).ID, report)
			}
		}
		for id, r := range got {
			if n, err := strconv.ParseInt(string(id[24:]), 16, 64); err != nil || !reflect.DeepEqual(r, reading(int(n))) {
				silently(t, "round "+strconv.Itoa(round), string(id))
			}
		}
		if t.Failed() {
			t.FailNow()
		}
		all += len(got) - first
		first = max(first, len(got))
	}
	if all < rounds {
		t.Fatalf("only %d readings in %d rounds: the test proves nothing", all, rounds)
	}
}

// leave puts something at the end of the build's file that is no record.
func leave(t *testing.T, st *Store, random *rand.Rand) {
	t.Helper()
	half := appendFrame(nil, "reading/x", strings.Repeat("y", 100))
	left := [][]byte{nil, half[:random.IntN(len(half))], make([]byte, 1+random.IntN(5000)), []byte("*3\r\n$3\r\nset\r\n$10")}[random.IntN(4)]
	f, err := os.OpenFile(st.path(buildID), os.O_WRONLY|os.O_APPEND, 0)
	if err == nil {
		_, err = f.Write(left)
	}
	if err == nil {
		err = f.Close()
	}
	if err != nil {
		t.Fatal(err)
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

// readAll opens the build, which must be free, and returns its readings.
func readAll(t *testing.T, st *Store) (map[measure.ID]measure.Reading, Report) {
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
	return out, report
}

// Two processes keep readings in one build at the same time: one of them is refused, and what the
// other was told is kept, is kept.
func TestTwoProcessesOnOneStoreLoseNothing(t *testing.T) {
	for round := range rounds(3, 30) {
		st := newStore(t, sample(0))
		both := []*child{startChild(t, "keep", st.Dir(), 0), startChild(t, "keep", st.Dir(), 1<<20)}
		acknowledged, refused := map[int]bool{}, 0
		for _, c := range both {
			for range 30 {
				said, ok := c.next()
				if !ok || strings.HasPrefix(said, "error") {
					refused++
					break
				}
				if n, err := strconv.Atoi(said); err == nil {
					acknowledged[n] = true
				}
			}
		}
		for _, c := range both {
			c.kill()
			for said, ok := c.next(); ok; said, ok = c.next() {
				if n, err := strconv.Atoi(said); err == nil {
					acknowledged[n] = true
				}
			}
			c.wait()
		}
		got, report := readAll(t, st)
		for n := range acknowledged {
			if r, ok := got[reading(n).ID]; !ok || !reflect.DeepEqual(r, reading(n)) {
				lost(t, "two processes, round "+strconv.Itoa(round), reading(n).ID, report)
				break
			}
		}
		if refused == 0 || len(acknowledged) == 0 {
			t.Errorf("round %d: refused %d, acknowledged %d; want one refused and the other at work", round, refused, len(acknowledged))
		}
	}
}
