package store

import (
	"fmt"
	"os"
	"os/signal"
	"reflect"
	"strconv"
	"strings"
	"syscall"
	"testing"

	"yokebook/measure"
)

// keepUntilFull keeps readings in a process that may make no file longer than a little more than the
// build has now, as on a full disk: a write of the library's own stops half way.
func keepUntilFull() int {
	st, err := Open(os.Getenv(childDir), clock())
	if err != nil {
		fmt.Println("error", err)
		return 1
	}
	info, err := os.Stat(st.path(buildID))
	if err != nil {
		fmt.Println("error", err)
		return 1
	}
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		fmt.Println("error", err)
		return 1
	}
	signal.Ignore(syscall.SIGXFSZ)
	room := uint64(info.Size()) + 5000
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: room, Max: room}); err != nil {
		fmt.Println("error", err)
		return 1
	}
	for n := range 100 {
		if err := f.Keep(OfReading(reading(n))); err != nil {
			fmt.Println("full", err)
			break
		}
		fmt.Println(n)
	}
	fmt.Println("again", f.Keep(OfReading(reading(0))))
	fmt.Println("closed", f.Close())
	return 0
}

func init() { moreJobs["full"] = keepUntilFull }

func TestDiskThatFillsUpHalfWayThroughARecord(t *testing.T) {
	st := newStore(t, sample(0))
	c := startChild(t, "full", st.Dir(), 0)
	var acknowledged []measure.Reading
	said := map[string]string{}
	for line, ok := c.line(); ok; line, ok = c.line() {
		if n, err := strconv.Atoi(line); err == nil {
			acknowledged = append(acknowledged, reading(n))
			continue
		}
		word, rest, _ := strings.Cut(line, " ")
		said[word] = rest
	}
	c.wait()
	if !strings.Contains(said["full"], ErrWrite.Error()) || !strings.Contains(said["again"], ErrWrite.Error()) || said["closed"] != "<nil>" {
		t.Errorf("the child said %q; want a write refused, the next one too, and the build closed", said)
	}
	if len(acknowledged) == 0 || len(acknowledged) == 100 {
		t.Fatalf("%d readings acknowledged: the test proves nothing", len(acknowledged))
	}
	got, report := readAll(t, st)
	for _, r := range acknowledged {
		if !reflect.DeepEqual(got[r.ID], r) {
			lost(t, "on a full disk", r.ID, report)
		}
	}
}
