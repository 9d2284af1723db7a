package store

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
)

// The test binary starts itself again to have a second process. The environment says what it does.
const (
	childJob   = "YOKEBOOK_STORE_CHILD"
	childDir   = "YOKEBOOK_STORE_DIR"
	childFirst = "YOKEBOOK_STORE_FIRST"
)

func TestMain(m *testing.M) {
	switch os.Getenv(childJob) {
	case "":
		code := m.Run()
		if soaking {
			printTally()
		}
		os.Exit(code)
	case "keep":
		os.Exit(keepForEver())
	case "hold":
		os.Exit(holdUntilTold())
	default:
		os.Exit(moreJobs[os.Getenv(childJob)]())
	}
}

// moreJobs are those of one system only.
var moreJobs = map[string]func() int{}

// keepForEver keeps readings and prints the number of each one AFTER Keep has returned. Every few
// readings it writes a snapshot or closes the build and opens it again.
func keepForEver() int {
	var n int
	_, err := fmt.Sscan(os.Getenv(childFirst), &n)
	for err == nil {
		n, err = keepSome(n)
	}
	fmt.Println("error", err)
	return 1
}

func keepSome(n int) (int, error) {
	st, err := Open(os.Getenv(childDir), clock())
	if err != nil {
		return n, err
	}
	f, b, _, err := st.OpenBuild(buildID)
	if err != nil {
		return n, err
	}
	for end := n + 12; n < end; n++ {
		r := reading(n)
		if err := f.Keep(OfReading(r)); err != nil {
			return n, err
		}
		fmt.Println(n)
		b.Readings = append(b.Readings, r)
		if n%5 == 0 {
			document.Arrange(b)
			if err := f.Secure(b); err != nil {
				return n, err
			}
		}
	}
	return n, f.Close()
}

// holdUntilTold opens the build, says so and holds it until its input ends.
func holdUntilTold() int {
	st, err := Open(os.Getenv(childDir), clock())
	if err != nil {
		fmt.Println("error", err)
		return 1
	}
	if _, _, _, err := st.OpenBuild(buildID); err != nil {
		fmt.Println("error", err)
		return 1
	}
	fmt.Println("open")
	_, _ = io.Copy(io.Discard, os.Stdin)
	return 0
}

// child is a second process on the same store.
type child struct {
	t   *testing.T
	cmd *exec.Cmd
	out *bufio.Scanner
	in  io.Closer
}

func startChild(t *testing.T, job, dir string, first int) *child {
	t.Helper()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), childJob+"="+job, childDir+"="+dir, fmt.Sprint(childFirst, "=", first))
	cmd.Stderr = os.Stderr
	in, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	c := &child{t: t, cmd: cmd, out: bufio.NewScanner(out), in: in}
	t.Cleanup(c.kill)
	return c
}

// line reads one whole line that the child said; false when it says no more.
func (c *child) line() (string, bool) {
	c.t.Helper()
	if !c.out.Scan() {
		return "", false
	}
	if said := c.out.Text(); strings.HasPrefix(said, "error") {
		c.t.Fatalf("the child said: %s", said)
	}
	return c.out.Text(), true
}

// next reads one line, whatever it says.
func (c *child) next() (string, bool) { ok := c.out.Scan(); return c.out.Text(), ok }

// kill ends the child at once; it can neither finish nor clean up.
func (c *child) kill() { _ = c.cmd.Process.Kill() }

// wait waits until the child is gone. What it said must have been read.
func (c *child) wait() { _ = c.cmd.Wait() }

// clock is a clock that moves on a minute each time it is read.
func clock() func() time.Time {
	now := time.Date(2026, 3, 2, 10, 0, 0, 0, time.UTC)
	return func() time.Time { now = now.Add(time.Minute); return now }
}

const buildID measure.ID = "019ab3f0-0000-7000-8000-000000000000"

// sample is a small build with its plain members, a head and n readings.
func sample(n int) *measure.Build {
	b := &measure.Build{ID: buildID, Title: "invented: store sample", Layout: measure.NewLayout()}
	for i := range n {
		b.Readings = append(b.Readings, reading(i))
	}
	return b
}

// reading makes reading number n. Everything in it follows from n, so that a test can tell whether
// it is whole. Some are long, so that a kill finds half of one.
func reading(n int) measure.Reading {
	value, err := measure.NumberValue(fmt.Sprintf("%d.%d", n%30, n%10))
	if err != nil {
		panic(err)
	}
	return measure.Reading{
		ID:    measure.ID(fmt.Sprintf("019ab3f1-0000-7000-8000-%012x", n)),
		Point: "gearbox.slope", Value: value, Unit: "deg", Basis: measure.Measured,
		Ride: measure.Droop, Load: measure.NoLoad, Setup: 1,
		Note: strings.Repeat(fmt.Sprint(n, " "), 1+n*n%97*(n%7/5*20+1)),
	}
}
