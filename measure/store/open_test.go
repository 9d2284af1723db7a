package store

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/tidwall/buntdb"
)

// Our framing is the library's, byte for byte.
func TestFileIsWrittenAsTheLibraryWritesIt(t *testing.T) {
	b := sample(4)
	path := filepath.Join(t.TempDir(), "library.db")
	db, err := openDB(path)
	if err != nil {
		t.Fatal(err)
	}
	ours, err := dump(b, nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range scan(ours).records {
		err := db.Update(func(tx *buntdb.Tx) error {
			_, _, err := tx.Set(r.key, Record{Key: r.key, body: r.body}.sealed(), nil)
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := db.Close(); err != nil {
		t.Fatal(err)
	}
	if theirs := readFile(t, path); !bytes.Equal(ours, theirs) {
		t.Errorf("ours:\n%q\nthe library's:\n%q", ours, theirs)
	}
}

// The library opens what the scan would have refused: it hangs or panics, or does not agree. None of
// that gets further than an error.
func TestLibraryIsKeptWithinBounds(t *testing.T) {
	release := make(chan struct{})
	defer close(release)
	_, err := openWithin(time.Millisecond, func() (*buntdb.DB, error) { <-release; return nil, nil })
	if !errors.Is(err, errStuck) {
		t.Errorf("an open without end: %v; want errStuck", err)
	}
	path := filepath.Join(t.TempDir(), "panics.db")
	if err := os.WriteFile(path, []byte("*3\r\n$3\r\nset\r\n$9223372036854775807\r\nk\r\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := openWithin(openLimit, func() (*buntdb.DB, error) { return openDB(path) }); err == nil || errors.Is(err, errStuck) {
		t.Errorf("an open that panics: %v; want the panic as an error", err)
	}
	st := newStore(t, sample(2))
	db, err := openDB(st.path(buildID))
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	img := scan(readFile(t, st.path(buildID)))
	if err := agrees(db, img); err != nil {
		t.Errorf("a whole file: %v", err)
	}
	img.records[3].body = []byte(`{"other":1}`)
	if agrees(db, img) == nil {
		t.Error("another record was not noticed")
	}
	img.records = img.records[:3]
	if agrees(db, img) == nil {
		t.Error("records too many were not noticed")
	}
}

// After a panic in the library its own lock is still taken. Closing must not wait for it.
func TestBuildWhoseLibraryStoppedHalfWayCanBeClosed(t *testing.T) {
	st := newStore(t, sample(1))
	f, _, _, err := st.OpenBuild(buildID)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := f.db.Begin(true); err != nil { // takes the library's lock and keeps it
		t.Fatal(err)
	}
	f.stuck = true
	closeFile(t, f)
	if f, _, _, err = st.OpenBuild(buildID); err != nil {
		t.Fatalf("after closing: %v", err)
	}
	closeFile(t, f)
}
