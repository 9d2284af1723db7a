package logbook

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"os/exec"
	"testing"

	"yokebook/measure"
)

// The test binary starts itself again to have a process that can be killed.
const childHome, childJob = "YOKEBOOK_LOGBOOK_CHILD", "YOKEBOOK_LOGBOOK_JOB"

func TestMain(m *testing.M) {
	if dir := os.Getenv(childHome); dir != "" && os.Getenv(childJob) == "keep" {
		os.Exit(keepForEver(dir))
	} else if dir != "" {
		os.Exit(keepThenWait(dir))
	}
	os.Exit(m.Run())
}

// keepThenWait starts a build, keeps three readings, says the id of each once it is kept, and then
// waits with the build open.
func keepThenWait(dir string) int {
	src := newWorld().sources("")
	s, err := OpenShelf(dir, src)
	if err != nil {
		fmt.Println("error", err)
		return 1
	}
	b, err := s.New("invented: to be killed", measure.NewLayout())
	if err != nil {
		fmt.Println("error", err)
		return 1
	}
	fmt.Println(b.ID())
	for _, token := range []string{"2.4", "2.5", "2.6"} {
		v, err := measure.NumberValue(token)
		if err != nil {
			fmt.Println("error", err)
			return 1
		}
		c, err := b.Keep(Entry{Point: "gearbox.slope", Value: v, Unit: "deg", State: measure.Hanging, Setup: 1})
		if err != nil {
			fmt.Println("error", err)
			return 1
		}
		fmt.Println(c.Reading)
	}
	_, _ = io.Copy(io.Discard, os.Stdin)
	return 0
}

func TestReadingsOfAKilledProcessAreThereAndListed(t *testing.T) {
	dir := t.TempDir()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), childHome+"="+dir)
	in, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	defer in.Close()
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	said := bufio.NewScanner(out)
	var ids []measure.ID
	for len(ids) < 4 && said.Scan() {
		ids = append(ids, measure.ID(said.Text()))
	}
	s := openShelf(t, dir, newWorld())
	if len(ids) == 4 {
		if _, err := s.Open(ids[0]); err == nil {
			t.Error("opened a build that another process holds")
		}
	}
	if err := cmd.Process.Kill(); err != nil {
		t.Fatal(err)
	}
	_ = cmd.Wait()
	if len(ids) != 4 {
		t.Fatalf("the child said %v", ids)
	}

	list, err := s.List()
	if err != nil || len(list) != 1 || list[0].Readings != 3 {
		t.Fatalf("list %+v, %v; want one build with 3 readings", list, err)
	}
	b, err := s.Open(ids[0])
	if err != nil {
		t.Fatal(err)
	}
	for _, id := range ids[1:] {
		if _, _, ok := b.find(id); !ok {
			t.Errorf("reading %s was kept and is lost", id)
		}
	}
}
