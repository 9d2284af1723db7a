package places

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"

	"yokebook/measure/store"
	"yokebook/measure/store/disk"
)

// mine is the mode of a file that only the user may read.
const mine fs.FileMode = 0o600

// load reads a file of ours into v, which stays as it is when the file is not there. It errs when
// the file can't be read or understood: what it holds can't be found out again.
func load(path string, v any) error {
	data, err := disk.Read(disk.OS{}, path, 1<<20)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return fmt.Errorf("places: %w", err)
	}
	if err := json.Unmarshal(data, v); err != nil {
		return fmt.Errorf("places: %s is damaged; move it away and name the place again", path)
	}
	return nil
}

// save writes a file of ours that only the user may read.
func save(path string, v any) error {
	data, err := json.MarshalIndent(v, "", " ")
	if err != nil {
		return fmt.Errorf("places: %w", err)
	}
	return write(path, append(data, '\n'))
}

func write(path string, data []byte) error {
	err := os.MkdirAll(filepath.Dir(path), 0o755)
	temp := filepath.Join(filepath.Dir(path), "."+filepath.Base(path)+".tmp")
	if err == nil {
		// One that a killed program left may have other permissions.
		if err = os.Remove(temp); errors.Is(err, fs.ErrNotExist) {
			err = nil
		}
	}
	if err == nil {
		err = disk.Stage(disk.OS{}, temp, data, mine)
	}
	if err == nil {
		err = disk.Settle(disk.OS{}, temp, path)
	}
	if err != nil {
		return fmt.Errorf("places: %w: %w", store.ErrWrite, err)
	}
	return nil
}

// tighten takes permissions off a file that others could read. Windows keeps the folder itself from
// other users.
func tighten(path string) error {
	info, err := os.Lstat(path)
	if errors.Is(err, fs.ErrNotExist) || err == nil && (info.Mode().Perm()&0o077 == 0 || runtime.GOOS == "windows") {
		return nil
	}
	if err == nil && !info.Mode().IsRegular() {
		return fmt.Errorf("places: %s is no plain file; move it away", path)
	}
	if err == nil {
		err = os.Chmod(path, mine)
	}
	if err != nil {
		return fmt.Errorf("places: others can read %s, and that can't be changed: %w", path, err)
	}
	return nil
}
