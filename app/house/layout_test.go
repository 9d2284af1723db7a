package house

import (
	"os"
	"os/exec"
	"strings"
	"testing"
)

// topLevel are the names that may stand at the top, and those that tools leave there.
var (
	topLevel = setOf("app measure checks sync testdata README.md DEVELOPERS.md go.mod go.sum Makefile .ci .gitignore .gitattributes LICENSE")
	leftover = setOf(".git build")
)

func TestTopLevelIsFixed(t *testing.T) {
	entries, err := os.ReadDir(root)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !topLevel[e.Name()] && !leftover[e.Name()] {
			t.Errorf("%s does not belong at the top level; put it into one of the folders", e.Name())
		}
	}
}

func TestEveryPackageSaysWhatItIsFor(t *testing.T) {
	explained := map[string]bool{}
	for _, s := range tree(t) {
		if !s.isTest() {
			explained[s.dir()] = explained[s.dir()] || s.file.Doc.Text() != ""
		}
	}
	for dir, ok := range explained {
		if !ok {
			t.Errorf("%s: no file has a package comment", dir)
		}
	}
}

// TestPureFoldersReachNoWindow follows the imports of others' packages too, which a look at our own
// files can't.
func TestPureFoldersReachNoWindow(t *testing.T) {
	for _, what := range []struct {
		name     string
		packages []string
	}{
		{"readings, checks and sync", []string{"yokebook/measure/...", "yokebook/checks/...", "yokebook/sync/..."}},
		{"the command line alone", []string{"-tags", "headless", "./app"}},
	} {
		deps := goList(t, append([]string{"-deps"}, what.packages...)...)
		if len(deps) < 20 {
			t.Errorf("%s: only %d packages listed", what.name, len(deps))
		}
		for _, p := range deps {
			if strings.HasPrefix(p, "fyne.io/") {
				t.Errorf("%s: reaches %s", what.name, p)
				break
			}
		}
	}
	if !contains(goList(t, "-deps", "./app"), "fyne.io/fyne/v2") {
		t.Error("the whole program does not reach Fyne: this test has gone blind")
	}
}

func goList(t *testing.T, args ...string) []string {
	t.Helper()
	cmd := exec.Command("go", append([]string{"list", "-e"}, args...)...)
	cmd.Dir = root
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("go list %v: %v", args, err)
	}
	return strings.Fields(string(out))
}

func contains(all []string, one string) bool {
	for _, a := range all {
		if a == one {
			return true
		}
	}
	return false
}
