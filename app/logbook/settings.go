package logbook

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"yokebook/measure/store"
)

func (s *Shelf) settingsPath() string { return filepath.Join(s.store.Dir(), "settings.json") }

// Settings returns the bytes of the device's settings as they were saved last; none where there are
// none yet. What they mean is the window's business.
func (s *Shelf) Settings() ([]byte, error) {
	data, err := os.ReadFile(s.settingsPath())
	if errors.Is(err, os.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("settings: %w", err)
	}
	return data, nil
}

// SaveSettings saves the device's settings, so that a program that is killed leaves either the earlier
// ones or these. Where damaged is true what is there is moved to settings.json.damaged first.
func (s *Shelf) SaveSettings(data []byte, damaged bool) error {
	path := s.settingsPath()
	if old, err := os.ReadFile(path); err == nil && bytes.Equal(old, data) {
		return nil
	}
	if damaged {
		if err := os.Rename(path, path+".damaged"); err != nil && !errors.Is(err, os.ErrNotExist) {
			return fmt.Errorf("settings: %w", err)
		}
	}
	if err := store.WriteFile(path, data); err != nil {
		return fmt.Errorf("settings: %w", err)
	}
	return nil
}
