package disk

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// Replace puts data in place of a file so that at every instant the path holds either the old bytes
// or the new ones: a temporary file in the same folder, synced, read back and compared, then renamed,
// then the folder synced. On an error the old file is as it was, or the new one is there whole.
func Replace(d FS, path string, data []byte) error {
	temp, err := stageFree(d, path, data)
	if err != nil {
		return err
	}
	return Settle(d, temp, path)
}

// Settle gives a staged file its name, in place of what had it, and makes that last.
func Settle(d FS, temp, path string) error {
	if err := d.Rename(temp, path); err != nil {
		return Both(err, d.Remove(temp))
	}
	return d.SyncDir(filepath.Dir(path))
}

// Create is Replace for a path that must be free: it errs with fs.ErrExist when it is not.
func Create(d FS, path string, data []byte) error {
	temp, err := stageFree(d, path, data)
	if err != nil {
		return err
	}
	err = d.Link(temp, path)
	switch {
	case err == nil:
		err = d.Remove(temp)
	case errors.Is(err, fs.ErrExist):
		return Both(err, d.Remove(temp))
	default: // a file system without links
		if _, statErr := d.Stat(path); statErr == nil {
			return Both(fmt.Errorf("%s: %w", path, fs.ErrExist), d.Remove(temp))
		}
		if err = d.Rename(temp, path); err != nil {
			err = Both(err, d.Remove(temp))
		}
	}
	if err != nil {
		return err
	}
	return d.SyncDir(filepath.Dir(path))
}

// Stage writes a file that is synced, read back and compared. It takes the place of what had the
// name; the name is one that nobody reads from.
func Stage(d FS, temp string, data []byte, perm fs.FileMode) error {
	f, err := d.Open(temp, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, perm)
	if err != nil {
		return err
	}
	return fill(d, f, temp, data, perm)
}

// maxTemp bounds the search for a free temporary name: each is what one killed program left.
const maxTemp = 1000

// stageFree is Stage under a free name beside path.
func stageFree(d FS, path string, data []byte) (temp string, err error) {
	perm := modeOf(d, path)
	for n := range maxTemp {
		temp = filepath.Join(filepath.Dir(path), fmt.Sprintf(".%s.%d-%d.tmp", filepath.Base(path), os.Getpid(), n))
		f, err := d.Open(temp, os.O_WRONLY|os.O_CREATE|os.O_EXCL, perm)
		if errors.Is(err, fs.ErrExist) {
			continue
		}
		if err != nil {
			return "", err
		}
		return temp, fill(d, f, temp, data, perm)
	}
	return "", fmt.Errorf("%s: too many temporary files lie beside it; remove them", path)
}

// fill writes, syncs, closes and checks a new file, and removes it when that fails.
func fill(d FS, f File, name string, data []byte, perm fs.FileMode) error {
	_, err := f.Write(data)
	if err == nil {
		err = f.Chmod(perm)
	}
	if err == nil {
		err = f.Sync()
	}
	if closeErr := f.Close(); err == nil {
		err = closeErr
	}
	if err == nil {
		err = same(d, name, data)
	}
	if err != nil {
		return Both(err, d.Remove(name))
	}
	return nil
}

func same(d FS, name string, want []byte) error {
	got, err := Read(d, name, int64(len(want)))
	if errors.Is(err, ErrLarge) || err == nil && !bytes.Equal(got, want) {
		return fmt.Errorf("%s was read back differently; check the disk", name)
	}
	return err
}

// modeOf returns the permissions of the file that will be replaced.
func modeOf(d FS, path string) fs.FileMode {
	if info, err := d.Stat(path); err == nil && info.Mode().IsRegular() {
		return info.Mode().Perm()
	}
	return 0o644
}
