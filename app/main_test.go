package main

import (
	"errors"
	"os"
	"os/exec"
	"strings"
	"testing"
)

// asProgram in the environment makes this test binary behave as the program itself, window and all.
const asProgram = "YOKEBOOK_TEST_AS_PROGRAM"

func TestMain(m *testing.M) {
	if os.Getenv(asProgram) != "" {
		main()
	}
	os.Exit(m.Run())
}

// Whatever the locale and whether or not there is a window built in: a start that can't go on tells
// it in exactly one line.
func TestStartWithoutDisplayOrFileIsToldInOneLine(t *testing.T) {
	for _, tt := range []struct {
		name string
		args []string
		says string
	}{
		{"no verb and no display", nil, "yokebook check"},
		{"a file that is not there", []string{"check", "none.json"}, "none.json"},
		{"a verb that is none", []string{"chekc"}, "chekc"},
	} {
		for _, locale := range []string{"", "LANG=C", "LANG=C.UTF-8", "LC_ALL=C.UTF-8", "LC_ALL=POSIX", "LC_MESSAGES=POSIX.UTF-8",
			"LANG=en_GB.UTF-8"} {
			cmd := exec.Command(os.Args[0], tt.args...)
			cmd.Env = []string{asProgram + "=1", "YOKEBOOK_HOME=" + t.TempDir(), locale}
			var told strings.Builder
			cmd.Stderr = &told
			var ended *exec.ExitError
			if err := cmd.Run(); !errors.As(err, &ended) || ended.ExitCode() != 2 {
				t.Errorf("%s, %s: ended with %v", tt.name, locale, err)
			}
			if strings.Count(told.String(), "\n") != 1 || !strings.Contains(told.String(), tt.says) {
				t.Errorf("%s, %s: told %q", tt.name, locale, told.String())
			}
		}
	}
}
