package place_test

import (
	"bytes"
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"yokebook/sync/place"
)

// mount puts a small file system of its own into a folder. Only root may do that.
func mount(t *testing.T, options string) string {
	t.Helper()
	dir := t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, options); err != nil {
		t.Skipf("no file system can be mounted here: %v", err)
	}
	t.Cleanup(func() { _ = syscall.Unmount(dir, syscall.MNT_DETACH) })
	return dir
}

func TestFullFolderKeepsTheOldFile(t *testing.T) {
	dir := mount(t, "size=64k")
	f := openFolder(t, dir)
	old := bytes.Repeat([]byte("o"), 9000)
	if err := place.Replace(context.Background(), f, name, old); err != nil {
		t.Fatal(err)
	}
	err := place.Replace(context.Background(), f, name, bytes.Repeat([]byte("n"), 100_000))
	if !errors.Is(err, place.ErrFull) || strings.Contains(err.Error(), "\n") {
		t.Errorf("%v; want ErrFull in one line", err)
	}
	if got, err := f.Get(context.Background(), name); err != nil || !bytes.Equal(got, old) {
		t.Errorf("the old file is %d bytes, %v", len(got), err)
	}
	if err := place.Replace(context.Background(), f, name, old[:8000]); err != nil {
		t.Errorf("a file that fits: %v", err) // the half-written one is gone
	}
}

func TestReadOnlyFolderCanBeReadAndSaysSo(t *testing.T) {
	dir := mount(t, "size=64k")
	if err := os.WriteFile(filepath.Join(dir, name), []byte("old"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := syscall.Mount("", dir, "", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""); err != nil {
		t.Skipf("can't be made read-only: %v", err)
	}
	f := openFolder(t, dir)
	if l, err := f.List(context.Background()); err != nil || len(l.Files) != 1 {
		t.Errorf("listed %+v, %v", l, err)
	}
	if got, err := f.Get(context.Background(), name); err != nil || string(got) != "old" {
		t.Errorf("read %q, %v", got, err)
	}
	if err := place.Replace(context.Background(), f, name, []byte("new")); !errors.Is(err, place.ErrReadOnly) || strings.Contains(err.Error(), "\n") {
		t.Errorf("%v; want ErrReadOnly in one line", err)
	}
}

// A pipe in the folder must not be waited for.
func TestPipesAndFoldersAreNoFiles(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mkfifo(filepath.Join(dir, "pipe.json"), 0o644); err != nil {
		t.Skipf("no pipes here: %v", err)
	}
	if err := os.Mkdir(filepath.Join(dir, "folder.json"), 0o755); err != nil {
		t.Fatal(err)
	}
	f := openFolder(t, dir)
	if l, err := f.List(context.Background()); err != nil || len(l.Files) != 0 {
		t.Errorf("listed %+v, %v", l, err)
	}
	for _, n := range []string{"pipe.json", "folder.json"} {
		if _, err := f.Get(context.Background(), n); err == nil {
			t.Errorf("read %s", n)
		}
	}
}
