package logbook

import (
	"os"
	"path/filepath"
	"testing"
)

func TestSettingsComeBackAndADamagedFileIsPutAside(t *testing.T) {
	dir := t.TempDir()
	s := openShelf(t, dir, newWorld())
	if data, err := s.Settings(); data != nil || err != nil {
		t.Fatalf("a new shelf has settings: %q, %v", data, err)
	}
	for _, text := range []string{"one", "two", "two"} {
		if err := s.SaveSettings([]byte(text), false); err != nil {
			t.Fatal(err)
		}
		if data, err := openShelf(t, dir, newWorld()).Settings(); string(data) != text || err != nil {
			t.Fatalf("saved %q, got %q, %v", text, data, err)
		}
	}
	if err := s.SaveSettings([]byte("three"), true); err != nil {
		t.Fatal(err)
	}
	aside, err := os.ReadFile(filepath.Join(dir, "settings.json.damaged"))
	if data, _ := s.Settings(); string(data) != "three" || string(aside) != "two" || err != nil {
		t.Errorf("settings %q, put aside %q, %v", data, aside, err)
	}
}

func TestSettingsThatCanNotBeSavedSaySo(t *testing.T) {
	dir := t.TempDir()
	s := openShelf(t, dir, newWorld())
	if err := os.MkdirAll(filepath.Join(dir, "settings.json", "in the way"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := s.SaveSettings([]byte("one"), false); err == nil {
		t.Error("a folder in the way was not noticed")
	}
	if _, err := s.Settings(); err == nil {
		t.Error("a folder in the way was read")
	}
}
