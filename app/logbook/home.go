package logbook

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"yokebook/measure"
	"yokebook/measure/store"
)

// Home returns the folder of this device's builds: $YOKEBOOK_HOME, else "yokebook" in the user's
// configuration folder. On a phone the app passes its own storage folder to OpenShelf instead.
func Home() (string, error) {
	if dir := os.Getenv("YOKEBOOK_HOME"); dir != "" {
		return filepath.Abs(dir)
	}
	dir, err := os.UserConfigDir()
	if err != nil {
		return "", fmt.Errorf("no folder for the builds: %w; set YOKEBOOK_HOME", err)
	}
	return filepath.Join(dir, "yokebook"), nil
}

const deviceFormat = "yokebook-device/1"

type deviceFile struct {
	Format string     `json:"format"`
	ID     measure.ID `json:"id"`
}

// Device returns the id of this device, kept in device.json of the folder and made with newID on
// the first start. A damaged device.json is moved to device.json.damaged and a new one made: an id
// that is new can't be mistaken for another device's.
func Device(dir string, newID func() measure.ID) (measure.ID, error) {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return "", fmt.Errorf("device: %w", err)
	}
	path := filepath.Join(dir, "device.json")
	for try := 0; ; try++ {
		data, err := os.ReadFile(path)
		if err == nil {
			if id, ok := deviceID(data); ok {
				return id, nil
			}
			err = os.Rename(path, path+".damaged")
		}
		if err != nil && !errors.Is(err, os.ErrNotExist) {
			return "", fmt.Errorf("device: %w", err)
		}
		id := newID()
		data, err = json.Marshal(deviceFile{Format: deviceFormat, ID: id})
		if err != nil {
			return "", fmt.Errorf("device: %w", err)
		}
		err = store.WriteNewFile(path, append(data, '\n'))
		if err == nil {
			return id, nil
		}
		// Another process may have made the file in this very moment: its id is ours too.
		if !errors.Is(err, os.ErrExist) || try > 0 {
			return "", fmt.Errorf("device: %w", err)
		}
	}
}

func deviceID(data []byte) (measure.ID, bool) {
	var f deviceFile
	if err := json.Unmarshal(data, &f); err != nil || f.Format != deviceFormat {
		return "", false
	}
	id, err := measure.ParseID(string(f.ID))
	return id, err == nil
}
