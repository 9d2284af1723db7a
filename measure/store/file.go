package store

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"github.com/tidwall/buntdb"

	"yokebook/measure"
)

// File is one build, open for writing. Its methods are called from one goroutine.
type File struct {
	id     measure.ID
	db     *buntdb.DB
	disk   *os.File // a second handle on the same file, to sync and see the answer
	lock   *lock    // nil for a file that has no name yet
	broken error    // the first failed write; after it nothing more is taken
}

// Create makes the file of a new build with everything in it and opens it. The file gets its name
// when all is synced: a build is there whole or not at all. It errs with ErrExists, ErrHeld or ErrWrite.
func (s *Store) Create(b *measure.Build) (*File, error) {
	if err := s.free(b.ID); err != nil {
		return nil, err
	}
	l, err := takeLock(s.lockPath(b.ID))
	if err != nil {
		return nil, err
	}
	err = s.free(b.ID) // another process may have made it since
	if err == nil {
		err = s.make(b)
	}
	if err != nil {
		return nil, both(err, l.release())
	}
	return openFile(b.ID, s.path(b.ID), l)
}

// free errs with ErrExists when the store has the build.
func (s *Store) free(id measure.ID) error {
	there, err := s.has(id)
	if err == nil && there {
		err = fmt.Errorf("build %s %w", id, ErrExists)
	}
	return err
}

// make writes the file of a new build. What an earlier try left behind was never a build.
func (s *Store) make(b *measure.Build) error {
	temp := s.path(b.ID) + ".new"
	if err := os.Remove(temp); err != nil && !errors.Is(err, os.ErrNotExist) {
		return fmt.Errorf("store: %w", err)
	}
	f, err := openFile(b.ID, temp, nil)
	if err != nil {
		return err
	}
	if err := both(f.fill(b), f.Close()); err != nil {
		return err
	}
	if err := os.Rename(temp, s.path(b.ID)); err != nil {
		return fmt.Errorf("store: %w", err)
	}
	return syncDir(s.buildsDir())
}

// OpenBuild opens a build for writing and loads it. What could not be trusted is set aside. It errs
// with ErrNoBuild, ErrHeld or ErrDamaged.
func (s *Store) OpenBuild(id measure.ID) (*File, *measure.Build, []Aside, error) {
	there, err := s.has(id)
	if err != nil {
		return nil, nil, nil, err
	}
	if !there {
		return nil, nil, nil, fmt.Errorf("build %s %w", id, ErrNoBuild)
	}
	l, err := takeLock(s.lockPath(id))
	if err != nil {
		return nil, nil, nil, err
	}
	f, err := openFile(id, s.path(id), l)
	if err != nil {
		return nil, nil, nil, err
	}
	b, aside, err := load(f.db, id)
	if err != nil {
		return nil, nil, nil, both(err, f.Close())
	}
	return f, b, aside, nil
}

// Keep writes one record and returns when it is on the disk. It errs with ErrWrite; the file then
// takes no more until it is opened again. A record that is there already is kept once.
func (f *File) Keep(r Record) error {
	if f.broken != nil {
		return fmt.Errorf("%s %w: an earlier write failed; close the build and open it again", r.Key, ErrWrite)
	}
	err := f.set(r)
	if err == nil && r.Key == string(kindPlain) {
		err = f.set(Record{Key: plainCopy, body: r.body})
	}
	if err != nil {
		f.broken = err
		return fmt.Errorf("%s %w: %w", r.Key, ErrWrite, err)
	}
	return nil
}

// Close closes the build and frees its lock.
func (f *File) Close() error {
	err := both(both(f.db.Close(), f.disk.Close()), f.lock.release())
	if err != nil {
		return fmt.Errorf("store: build %s: %w", f.id, err)
	}
	return nil
}

func (f *File) fill(b *measure.Build) error {
	if err := f.Keep(Record{Key: string(kindMeta), body: metaOf(b.ID)}); err != nil {
		return err
	}
	plain, err := OfPlain(b)
	if err != nil {
		return err
	}
	for _, r := range append([]Record{plain}, RecordsOf(b)...) {
		if err := f.Keep(r); err != nil {
			return err
		}
	}
	return nil
}

// set writes and syncs. The library panics when it can't take back half a write; that is an error here.
func (f *File) set(r Record) (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("%v", p)
		}
	}()
	err = f.db.Update(func(tx *buntdb.Tx) error {
		_, _, err := tx.Set(r.Key, r.sealed(), nil)
		return err
	})
	if err != nil {
		return err
	}
	return f.disk.Sync()
}

// openFile opens the file of a build under a lock that is released when it can't be opened. The
// file is made when it is missing.
func openFile(id measure.ID, path string, l *lock) (*File, error) {
	db, err := openDB(path)
	if err != nil {
		return nil, both(fmt.Errorf("store: %s %w: %w", filepath.Base(path), ErrDamaged, err), l.release())
	}
	disk, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return nil, both(fmt.Errorf("store: %w", err), both(db.Close(), l.release()))
	}
	return &File{id: id, db: db, disk: disk, lock: l}, nil
}

// openDB opens with every write synced and no compaction. The library panics on some damaged files;
// that is an error here.
func openDB(path string) (db *buntdb.DB, err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("%v", p)
		}
	}()
	db, err = buntdb.Open(path)
	if err != nil {
		return nil, err
	}
	err = db.SetConfig(buntdb.Config{SyncPolicy: buntdb.Always, AutoShrinkDisabled: true})
	return db, err
}

// both says two errors in one line; either may be nil.
func both(a, b error) error {
	switch {
	case a == nil:
		return b
	case b == nil:
		return a
	}
	return fmt.Errorf("%w; %w", a, b)
}
