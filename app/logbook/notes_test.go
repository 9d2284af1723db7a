package logbook

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store"
)

// newestSnapshot reads the newest second copy of a build.
func newestSnapshot(t *testing.T, s *Shelf, id measure.ID) *measure.Build {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(s.store.Dir(), "snapshots", string(id), "*.json"))
	if err != nil || len(names) == 0 {
		t.Fatalf("snapshots %v, %v", names, err)
	}
	data, err := os.ReadFile(names[len(names)-1])
	if err != nil {
		t.Fatal(err)
	}
	b, seal, err := document.Read(data)
	if err != nil || seal != document.Whole {
		t.Fatalf("%s: %v, seal %v", names[len(names)-1], err, seal)
	}
	return b
}

func TestSecondCopyFollowsTheKeptReadings(t *testing.T) {
	s, b := newShelfBook(t)
	has := func(when string, want int) {
		t.Helper()
		if got := len(newestSnapshot(t, s, b.ID()).Readings); got != want {
			t.Errorf("%s: the second copy has %d readings, want %d", when, got, want)
		}
	}
	has("new", 0)
	for n := 1; n < secureEvery; n++ {
		keep(t, b, slope(t, "gearbox.slope", fmt.Sprint(n)))
	}
	has("seven kept: keeping one does not wait for it", 0)
	if err := b.Secure(); err != nil {
		t.Fatal(err)
	}
	has("secured", 7)
	for n := range secureEvery {
		keep(t, b, slope(t, "shaft.slope", fmt.Sprint(n)))
	}
	b.Notes() // waits for the copy that is being written
	has("eight more kept", 15)
	keep(t, b, slope(t, "pinion.slope", "1"))
	closeBook(t, b)
	has("closed", 16)
	if notes := b.Notes(); len(notes) > 0 {
		t.Errorf("notes %v; want none", notes)
	}
}

// A second copy that can't be written stops no reading. It is told until one was written.
func TestKeepingGoesOnWithoutTheSecondCopy(t *testing.T) {
	s, b := newShelfBook(t)
	folder := filepath.Join(s.store.Dir(), "snapshots")
	if err := os.Rename(folder, folder+".away"); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(folder, nil, 0o644); err != nil { // in the way
		t.Fatal(err)
	}
	for n := range secureEvery {
		keep(t, b, slope(t, "gearbox.slope", fmt.Sprint(n)))
	}
	if notes := b.Notes(); len(notes) != 1 || notes[0].Key != NoteUnsecured {
		t.Errorf("notes %v; want that the second copy is behind", notes)
	}
	if err := b.Secure(); err == nil {
		t.Error("Secure said nothing")
	}
	if err := os.Remove(folder); err != nil {
		t.Fatal(err)
	}
	if err := b.Secure(); err != nil || len(b.Notes()) > 0 {
		t.Errorf("with room again: %v, notes %v", err, b.Notes())
	}
}

// A damaged build is listed with its notes, opened mended, and told about; the next opening is silent.
func TestDamagedBuildIsOpenedMendedAndTold(t *testing.T) {
	s, b := newShelfBook(t)
	keep(t, b, slope(t, "gearbox.slope", "2.4"))
	keep(t, b, slope(t, "shaft.slope", "2.6"))
	want := bytesOf(t, b)
	closeBook(t, b)
	path := filepath.Join(s.store.Dir(), "builds", string(b.ID())+".db")
	damaged := bytes.Replace(storeFile(t, s, b.ID()), []byte(`"value":2.4`), []byte(`"value":7.4`), 1)
	if err := os.WriteFile(path, damaged, 0o644); err != nil {
		t.Fatal(err)
	}
	list, err := s.List()
	if err != nil || len(list) != 1 || len(list[0].Notes) != 1 || list[0].Notes[0].Key != NoteRecovered || list[0].Readings != 2 {
		t.Errorf("list %+v, %v; want both readings and one note", list, err)
	}
	verified, err := s.Verify()
	if err != nil || len(verified) != 1 || verified[0].State != store.Recovered {
		t.Errorf("verify %+v, %v", verified, err)
	}
	again, err := s.Open(b.ID())
	if err != nil {
		t.Fatal(err)
	}
	sameBytes(t, "mended", bytesOf(t, again), want)
	notes := again.Notes()
	if len(notes) != 1 || notes[0].Key != NoteRecovered {
		t.Fatalf("notes %v", notes)
	}
	place := notes[0].Args[len(notes[0].Args)-1].(string)
	kept, err := os.ReadFile(filepath.Join(s.store.Dir(), filepath.FromSlash(place)))
	if err != nil || !bytes.Equal(kept, damaged) {
		t.Errorf("%s is not the damaged file: %v", place, err)
	}
	closeBook(t, again)
	if again, err = s.Open(b.ID()); err != nil || len(again.Notes()) > 0 {
		t.Errorf("opened again: %v, notes %v; want none", err, again.Notes())
	}
}
