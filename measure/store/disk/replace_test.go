package disk_test

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"yokebook/measure/store/disk"
	"yokebook/measure/store/disk/disktest"
)

// lying is a disk that takes every write and keeps other bytes.
type lying struct{ disktest.Quick }

func (l lying) Open(name string, flag int, perm fs.FileMode) (disk.File, error) {
	f, err := l.Quick.Open(name, flag, perm)
	return lyingFile{f}, err
}

type lyingFile struct{ disk.File }

func (f lyingFile) Write(p []byte) (int, error) {
	return f.File.Write(bytes.Replace(p, []byte("new"), []byte("n\x00w"), 1))
}

// What was written is read back before it takes the place of the old.
func TestDiskThatKeepsOtherBytesIsFoundOut(t *testing.T) {
	for name, put := range map[string]func(disk.FS, string, []byte) error{"Replace": disk.Replace, "Create": disk.Create} {
		path := filepath.Join(t.TempDir(), "a.json")
		if name == "Replace" {
			if err := os.WriteFile(path, []byte("old"), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		err := put(lying{}, path, []byte("the new bytes"))
		if err == nil || !strings.Contains(err.Error(), "read back differently") {
			t.Errorf("%s: %v; want it said that the disk gave back other bytes", name, err)
		}
		now, readErr := os.ReadFile(path)
		if name == "Replace" && string(now) != "old" || name == "Create" && !os.IsNotExist(readErr) {
			t.Errorf("%s: the path holds %q, %v", name, now, readErr)
		}
		if err := put(disktest.Quick{}, path, []byte("the new bytes")); err != nil {
			t.Errorf("%s on an honest disk: %v", name, err)
		}
	}
}

func TestReadTakesNoMoreThanItMay(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a")
	if err := os.WriteFile(path, []byte("12345"), 0o644); err != nil {
		t.Fatal(err)
	}
	if data, err := disk.Read(disk.OS{}, path, 5); err != nil || string(data) != "12345" {
		t.Errorf("%q, %v", data, err)
	}
	if _, err := disk.Read(disk.OS{}, path, 4); err == nil {
		t.Error("a file that is too large was read")
	}
}
