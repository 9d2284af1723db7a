package store

import (
	"errors"
	"os"
	"path/filepath"
	"testing"
)

func TestWriteFileReplacesTheWholeFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.json")
	if err := WriteNewFile(path, []byte("a long first version")); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(path, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := WriteFile(path, []byte("second")); err != nil {
		t.Fatal(err)
	}
	wantFile(t, path, "second")
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("permissions %v, %v; want those it had", info.Mode(), err)
	}
	wantAlone(t, path)
}

func TestWriteNewFileRefusesAPathThatIsTaken(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.json")
	if err := os.WriteFile(path, []byte("theirs"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := WriteNewFile(path, []byte("ours")); !errors.Is(err, os.ErrExist) {
		t.Errorf("%v; want os.ErrExist", err)
	}
	wantFile(t, path, "theirs")
	wantAlone(t, path)
}

func TestWriteFileThatFailsLeavesTheOldOne(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.json")
	if err := os.MkdirAll(filepath.Join(path, "in the way"), 0o755); err != nil { // a rename onto it must fail
		t.Fatal(err)
	}
	if err := WriteFile(path, []byte("new")); err == nil {
		t.Error("a folder was replaced by a file")
	}
	if _, err := os.Stat(filepath.Join(path, "in the way")); err != nil {
		t.Error(err)
	}
	wantAlone(t, path)
}

func wantFile(t *testing.T, path, want string) {
	t.Helper()
	if got, err := os.ReadFile(path); err != nil || string(got) != want {
		t.Errorf("%s holds %q, %v; want %q", path, got, err, want)
	}
}

// wantAlone checks that no temporary file was left beside path.
func wantAlone(t *testing.T, path string) {
	t.Helper()
	entries, err := os.ReadDir(filepath.Dir(path))
	if err != nil || len(entries) != 1 {
		t.Errorf("beside %s: %v, %v; want nothing", path, entries, err)
	}
}
