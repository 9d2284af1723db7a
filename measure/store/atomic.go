package store

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// WriteFile puts data in place of a file so that at every instant the path holds either the old
// bytes or the new ones: a temporary file in the same folder, synced, read back and compared, then
// renamed, then the folder synced. On an error the old file is as it was.
func WriteFile(path string, data []byte) error {
	temp, err := writeTemp(path, data)
	if err != nil {
		return err
	}
	if err := os.Rename(temp, path); err != nil {
		return both(err, os.Remove(temp))
	}
	return syncDir(filepath.Dir(path))
}

// WriteNewFile is WriteFile for a path that must be free: it errs with os.ErrExist when it is not.
func WriteNewFile(path string, data []byte) error {
	temp, err := writeTemp(path, data)
	if err != nil {
		return err
	}
	err = os.Link(temp, path)
	switch {
	case err == nil:
		err = os.Remove(temp)
	case errors.Is(err, os.ErrExist):
		return both(err, os.Remove(temp))
	default: // a file system without links
		if _, statErr := os.Lstat(path); statErr == nil {
			return both(fmt.Errorf("%s: %w", path, os.ErrExist), os.Remove(temp))
		}
		err = os.Rename(temp, path)
	}
	if err != nil {
		return err
	}
	return syncDir(filepath.Dir(path))
}

// writeTemp writes a synced and verified temporary file beside path.
func writeTemp(path string, data []byte) (temp string, err error) {
	f, err := os.CreateTemp(filepath.Dir(path), "."+filepath.Base(path)+".*.tmp")
	if err != nil {
		return "", err
	}
	_, err = f.Write(data)
	if err == nil {
		err = f.Sync()
	}
	if closeErr := f.Close(); err == nil {
		err = closeErr
	}
	if err == nil {
		err = sameOnDisk(f.Name(), data)
	}
	if err == nil {
		err = os.Chmod(f.Name(), modeOf(path))
	}
	if err != nil {
		return "", both(err, os.Remove(f.Name()))
	}
	return f.Name(), nil
}

func sameOnDisk(path string, want []byte) error {
	got, err := os.ReadFile(path)
	if err == nil && !bytes.Equal(got, want) {
		err = fmt.Errorf("%s was read back differently; check the disk", path)
	}
	return err
}

// modeOf returns the permissions of the file that will be replaced.
func modeOf(path string) os.FileMode {
	if info, err := os.Stat(path); err == nil {
		return info.Mode().Perm()
	}
	return 0o644
}

// syncDir makes a new name last. Some systems can't sync a folder; that they refuse is no error.
func syncDir(dir string) error {
	d, err := os.Open(dir)
	if err != nil {
		return err
	}
	_ = d.Sync()
	return d.Close()
}
