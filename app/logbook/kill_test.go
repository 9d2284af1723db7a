package logbook

import (
	"bufio"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"testing"

	"yokebook/measure"
)

// keepForEver keeps readings in the first build of a folder, as the window does, so that second copies
// are written meanwhile. It says the id of each reading once it is kept.
func keepForEver(dir string) int {
	for n := 0; ; {
		shelf, err := OpenShelf(dir, Sources{})
		if err == nil {
			n, err = keepSome(shelf, n)
		}
		if err != nil {
			fmt.Println("error", err)
			return 1
		}
	}
}

// keepSome keeps 40 readings in one go, and closes.
func keepSome(shelf *Shelf, n int) (int, error) {
	ids, err := shelf.store.IDs()
	if err != nil || len(ids) != 1 {
		return n, fmt.Errorf("%d builds, %w", len(ids), err)
	}
	book, err := shelf.Open(ids[0])
	if err != nil {
		return n, err
	}
	for range 40 {
		v, err := measure.NumberValue(fmt.Sprintf("%d.%d", n%20, n%10))
		if err != nil {
			return n, err
		}
		c, err := book.Keep(Entry{Point: "gearbox.slope", Value: v, Unit: "deg", State: measure.Hanging, Setup: 1})
		if err != nil {
			return n, err
		}
		fmt.Println(c.Reading)
		n++
	}
	return n, book.Close()
}

// A process that keeps readings while the second copy is written beside is killed at any time, again and
// again. Every reading that was acknowledged is there, and the second copy can be read or is mended.
func TestKillWhileTheSecondCopyIsWrittenLosesNothing(t *testing.T) {
	rounds, each := 6, 6
	if os.Getenv("YOKEBOOK_SOAK") != "" {
		rounds = 500
	}
	const seed = 20260306
	random := rand.New(rand.NewPCG(seed, seed))
	var dir string
	var id measure.ID
	var acknowledged []measure.ID
	all, lost := 0, 0
	for round := range rounds {
		if round%each == 0 { // a build that grows for ever makes each start slower
			dir, acknowledged = t.TempDir(), nil
			id = startBuild(t, dir)
		}
		said := keptUntilKilled(t, dir, 1+random.IntN(30))
		acknowledged, all = append(acknowledged, said...), all+len(said)
		shelf := openShelf(t, dir, newWorld())
		b, err := shelf.Open(id)
		if err != nil {
			t.Fatalf("round %d (seed %d): %v", round, seed, err)
		}
		for _, reading := range acknowledged {
			if _, _, ok := b.find(reading); !ok {
				lost++
				t.Errorf("round %d (seed %d): reading %s was acknowledged and is lost", round, seed, reading)
			}
		}
		if err := b.Close(); err != nil {
			t.Fatal(err)
		}
		v, err := shelf.Verify()
		if err != nil || len(v) != 1 || v[0].Damaged != "" || len(v[0].Report.Lost) > 0 {
			t.Fatalf("round %d (seed %d): %+v, %v", round, seed, v, err)
		}
	}
	if all < 5*rounds {
		t.Fatalf("only %d readings in %d rounds: the test proves nothing", all, rounds)
	}
	fmt.Printf("rounds of killing a logbook %d, readings acknowledged %d: losses %d\n", rounds, all, lost)
}

func startBuild(t *testing.T, dir string) measure.ID {
	t.Helper()
	b, err := openShelf(t, dir, newWorld()).New("invented: to be killed", measure.NewLayout())
	if err != nil {
		t.Fatal(err)
	}
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
	return b.ID()
}

// keptUntilKilled runs a child until it has acknowledged so many readings, kills it, and returns all
// that it acknowledged before it died.
func keptUntilKilled(t *testing.T, dir string, enough int) (acknowledged []measure.ID) {
	t.Helper()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), childHome+"="+dir, childJob+"=keep")
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	for said := bufio.NewScanner(out); said.Scan(); {
		id, err := measure.ParseID(said.Text())
		if err != nil {
			if len(said.Text()) > 36 { // not the half line of a killed process
				t.Errorf("the child said %q", said.Text())
			}
			break
		}
		if acknowledged = append(acknowledged, id); len(acknowledged) == enough {
			_ = cmd.Process.Kill()
		}
	}
	_ = cmd.Process.Kill()
	_ = cmd.Wait()
	return acknowledged
}
