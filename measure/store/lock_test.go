package store

import (
	"errors"
	"fmt"
	"strings"
	"testing"
)

func TestSecondProcessIsToldWhoHoldsTheBuild(t *testing.T) {
	st := newStore(t, sample(1))
	c := startChild(t, "hold", st.Dir(), 0)
	if said, ok := c.line(); !ok || said != "open" {
		t.Fatalf("the child said %q", said)
	}
	_, _, _, err := st.OpenBuild(buildID)
	if !errors.Is(err, ErrHeld) {
		t.Fatalf("second open: %v; want ErrHeld", err)
	}
	line := err.Error()
	if !strings.Contains(line, fmt.Sprint("process ", c.cmd.Process.Pid, " on ")) || strings.Contains(line, "\n") {
		t.Errorf("%q does not name process %d in one line", line, c.cmd.Process.Pid)
	}
	if b, _, err := st.Peek(buildID); err != nil || len(b.Readings) != 1 {
		t.Errorf("peek while another process holds it: %v", err)
	}

	c.kill()
	c.wait()
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatalf("after the holder was killed: %v", err)
	}
	closeFile(t, f)
}

func TestSecondOpenInOneProcessIsRefused(t *testing.T) {
	st := newStore(t, sample(1))
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	if _, _, _, err := st.OpenBuild(buildID); !errors.Is(err, ErrHeld) {
		t.Errorf("second open: %v; want ErrHeld", err)
	}
	closeFile(t, f)
	if name := st.holderOf(buildID); name != "another program" {
		t.Errorf("a free build still names %q", name)
	}
	if f, _, _, err = st.OpenBuild(buildID); err != nil {
		t.Fatalf("after closing: %v", err)
	}
	closeFile(t, f)
}
