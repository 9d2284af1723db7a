package screen

import (
	"path/filepath"
	"testing"

	"yokebook/app/words"
	"yokebook/sync/place"
)

// What a place says is put into the language by its phrases: one that is reworded there without the
// tables of words would be shown in English on a German page.
func TestWhatAPlaceSaysIsToldInTheLanguage(t *testing.T) {
	missing := filepath.Join(t.TempDir(), "gone")
	_, noFolder := place.OpenFolder(missing)
	_, plain := place.Address("http://host/folder/")
	tests := []struct {
		name string
		err  error
	}{
		{"no folder", noFolder}, {"open to everybody", plain}, {"full", place.ErrFull}, {"read only", place.ErrReadOnly},
		{"large", place.ErrLarge}, {"many", place.ErrMany}, {"unlike", place.ErrUnlike}, {"refused", place.ErrRefused},
	}
	for _, tt := range tests {
		if tt.err == nil {
			t.Fatalf("%s: no error", tt.name)
		}
		if line := tt.err.Error(); words.German.Fault(line) == line || words.English.Fault(line) != line {
			t.Errorf("%s: %q is told as %q and %q", tt.name, line, words.German.Fault(line), words.English.Fault(line))
		}
	}
	if got, want := words.German.Fault(noFolder.Error()), missing+": diesen Ordner gibt es nicht; einstecken oder anlegen"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}
