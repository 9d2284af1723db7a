package store

import (
	"bytes"
	"os"
	"reflect"
	"testing"

	"yokebook/measure"
)

// counting sums builds up and counts how many it was asked for.
func counting(asked *int) Summarise {
	return func(b *measure.Build) Row {
		*asked++
		return Row{Title: b.Title, Readings: len(b.Readings), Worst: "out", Counts: map[string]int{"out": 1}}
	}
}

func TestIndexIsReadFromItsFileWhileTheBuildsAreUnchanged(t *testing.T) {
	st, asked := newStore(t, sample(2)), 0
	first, err := st.Index(counting(&asked))
	if err != nil || len(first) != 1 || asked != 1 {
		t.Fatalf("first: %v, %v, asked %d; want one row, asked once", first, err, asked)
	}
	if r := first[0]; r.ID != buildID || r.Title != sample(0).Title || r.Readings != 2 {
		t.Errorf("row %+v", r)
	}
	again, err := st.Index(counting(&asked))
	if err != nil || asked != 1 || !reflect.DeepEqual(first, again) {
		t.Errorf("again: %+v, %v, asked %d; want the same from the file", again, err, asked)
	}

	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	if err := f.Keep(OfReading(reading(2))); err != nil {
		t.Fatal(err)
	}
	after, err := st.Index(counting(&asked)) // while the build is open
	if err != nil || asked != 2 || after[0].Readings != 3 {
		t.Errorf("after a reading: %+v, %v, asked %d; want 3 readings, asked once more", after, err, asked)
	}
	closeFile(t, f)
}

func TestIndexIsRebuiltWhenMissingOrDamaged(t *testing.T) {
	st, asked := newStore(t, sample(2)), 0
	want, err := st.Index(counting(&asked))
	if err != nil {
		t.Fatal(err)
	}
	file, err := os.ReadFile(st.indexPath())
	if err != nil {
		t.Fatal(err)
	}
	for name, damage := range map[string][]byte{
		"missing": nil, "empty": {}, "cut off": file[:len(file)/2], "zeros": make([]byte, len(file)),
		"another format": bytes.Replace(file, []byte(IndexFormat), []byte("yokebook-index/9"), 1),
	} {
		asked = 0
		if damage == nil {
			err = os.Remove(st.indexPath())
		} else {
			err = os.WriteFile(st.indexPath(), damage, 0o644)
		}
		if err != nil {
			t.Fatal(err)
		}
		got, err := st.Index(counting(&asked))
		if err != nil || asked != 1 || !reflect.DeepEqual(got, want) {
			t.Errorf("%s: %+v, %v, asked %d; want %+v made anew", name, got, err, asked, want)
		}
		if now, err := os.ReadFile(st.indexPath()); err != nil || !bytes.Equal(now, file) {
			t.Errorf("%s: the file was not made as it was: %v", name, err)
		}
	}
}

func TestIndexNamesABuildThatCantBeRead(t *testing.T) {
	st, asked := newStore(t, sample(2)), 0
	if err := os.WriteFile(st.path(buildID), []byte("no store\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	rows, err := st.Index(counting(&asked))
	if err != nil || len(rows) != 1 || rows[0].Damaged == "" || asked != 0 {
		t.Errorf("rows %+v, %v; want the build, named as damaged", rows, err)
	}
}
