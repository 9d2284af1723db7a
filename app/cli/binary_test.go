package cli

import (
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// The built program, without a window: what a shell sees of it.
func TestBuiltProgramEndsWithTheRightCode(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the program")
	}
	d := newDesk(t)
	program := d.path("yokebook")
	build := exec.Command("go", "build", "-tags", "headless", "-o", program, filepath.Join("..", "..", "app"))
	build.Env = append(os.Environ(), "CGO_ENABLED=0")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	file := d.put("hand.json", byHand)
	for _, tt := range []struct {
		name string
		args []string
		code int
	}{
		{"no verb and no window", nil, BadInput},
		{"help", []string{"--help"}, Done},
		{"check", []string{"check", file}, Done},
		{"add a negative value", []string{"add", file, "gearbox.slope", "-2.4", "--ride", "ride", "--load", "kerb"}, Done},
		{"an implausible value", []string{"add", file, "gearbox.slope", "-44", "--ride", "ride", "--load", "kerb"}, PersonNeeded},
		{"no such file", []string{"check", d.path("none.json")}, BadInput},
		{"no such folder to write to", []string{"merge", file, "-o", d.path("no/m.json")}, NotWritten},
	} {
		cmd := exec.Command(program, tt.args...)
		cmd.Env = []string{"YOKEBOOK_HOME=" + d.path("home")}
		var told strings.Builder
		cmd.Stderr = &told
		err := cmd.Run()
		var ended *exec.ExitError
		if err != nil && !errors.As(err, &ended) {
			t.Fatal(err)
		}
		if code := cmd.ProcessState.ExitCode(); code != tt.code {
			t.Errorf("%s: exit %d, want %d: %s", tt.name, code, tt.code, told.String())
		}
		if tt.code != Done {
			oneLineOf(t, tt.name, told.String())
		} else if told.Len() > 0 {
			t.Errorf("%s: told %q", tt.name, told.String())
		}
	}
}
