package store

import (
	"errors"
	"fmt"
	"time"

	"github.com/tidwall/buntdb"
)

// openLimit is how long the library may take to open a file. Ours take milliseconds; some crafted
// lengths would keep it busy for ever. The scan refuses those before; this is the second wall.
const openLimit = 20 * time.Second

// errStuck is returned when an open did not end. It may still be at work on the file.
var errStuck = errors.New("could not be opened in time")

// openWithin runs an open with a time limit. A panic in it is an error.
func openWithin(limit time.Duration, open func() (*buntdb.DB, error)) (*buntdb.DB, error) {
	type answer struct {
		db  *buntdb.DB
		err error
	}
	done := make(chan answer, 1)
	go func() {
		var a answer
		defer func() {
			if p := recover(); p != nil {
				a = answer{nil, fmt.Errorf("%v", p)}
			}
			done <- a
		}()
		a.db, a.err = open()
	}()
	timer := time.NewTimer(limit)
	defer timer.Stop()
	select {
	case a := <-done:
		return a.db, a.err
	case <-timer.C:
		return nil, errStuck
	}
}

// openDB opens a file with every write synced and no compaction of the library's own.
func openDB(path string) (*buntdb.DB, error) {
	db, err := buntdb.Open(path)
	if err != nil {
		return nil, err
	}
	if err := db.SetConfig(buntdb.Config{SyncPolicy: buntdb.Always, AutoShrinkDisabled: true}); err != nil {
		return nil, err
	}
	return db, nil
}

// agrees errs when the library found other records than our own look at the file.
func agrees(db *buntdb.DB, img image) error {
	latest := img.latest()
	return db.View(func(tx *buntdb.Tx) error {
		n, err := tx.Len()
		if err != nil {
			return err
		}
		if n != len(latest) {
			return fmt.Errorf("it was read as %d records and then as %d", len(latest), n)
		}
		for _, r := range latest {
			value, err := tx.Get(r.key)
			if err != nil || value != (Record{Key: r.key, body: r.body}).sealed() {
				return fmt.Errorf("%.120s was read in two ways", r.key)
			}
		}
		return nil
	})
}
