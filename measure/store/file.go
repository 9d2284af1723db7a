package store

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"github.com/tidwall/buntdb"

	"yokebook/measure"
	"yokebook/measure/store/disk"
)

// File is one build, open for writing. Its methods are called from one goroutine; only Secure may run
// beside Keep.
type File struct {
	id     measure.ID
	store  *Store
	db     *buntdb.DB
	disk   disk.File // a second handle on the same file, to sync and see the answer
	lock   *lock
	broken error // the first failed write; after it nothing more is taken
	stuck  bool  // the library stopped half way and holds its own lock: it can't be closed
}

// Create makes the file of a new build with everything in it and opens it. The file gets its name
// when all is synced: a build is there whole or not at all. It errs with ErrExists, ErrHeld or ErrWrite.
func (s *Store) Create(b *measure.Build) (*File, error) {
	if err := s.free(b.ID); err != nil {
		return nil, err
	}
	l, err := s.takeLock(b.ID)
	if err != nil {
		return nil, err
	}
	err = s.free(b.ID) // another process may have made it since
	if err == nil {
		err = s.make(b)
	}
	if err != nil {
		return nil, disk.Both(err, l.release())
	}
	f, _, _, err := s.openLocked(b.ID, l)
	return f, err
}

func (s *Store) make(b *measure.Build) error {
	temp, err := s.stage(b, nil)
	if err == nil {
		err = disk.Settle(s.fs, temp, s.path(b.ID))
	}
	if err != nil {
		return fmt.Errorf("build %s %w: %w", b.ID, ErrWrite, err)
	}
	return nil
}

// OpenBuild opens a build for writing and loads it. What is damaged is mended first, from the file
// itself and from snapshots, and what was damaged is kept aside; the report says what was done. It
// errs with ErrNoBuild, ErrHeld, ErrDamaged or ErrWrite (no room to keep the damaged file aside).
func (s *Store) OpenBuild(id measure.ID) (*File, *measure.Build, Report, error) {
	if err := s.need(id); err != nil {
		return nil, nil, Report{}, err
	}
	l, err := s.takeLock(id)
	if err != nil {
		return nil, nil, Report{}, err
	}
	return s.openLocked(id, l)
}

// openLocked looks, mends, compacts, opens. The lock is released when it can't, unless the library
// is still at work on the file.
func (s *Store) openLocked(id measure.ID, l *lock) (*File, *measure.Build, Report, error) {
	x, err := s.examine(id, false)
	if err == nil {
		err = s.mend(x)
	}
	if err != nil {
		return nil, nil, Report{}, disk.Both(err, l.release())
	}
	report := x.report
	if x, err = s.clean(x); err != nil {
		return nil, nil, Report{}, disk.Both(err, l.release())
	}
	f, err := s.openFile(x, l)
	if err != nil {
		return nil, nil, Report{}, err
	}
	return f, x.build, report, nil
}

// clean looks again after a repair, and compacts a file for which that is worth it. A compaction
// that fails is no error: the long file is good.
func (s *Store) clean(x *exam) (*exam, error) {
	if x.report.Places > 0 {
		again, err := s.examine(x.report.Build, false)
		if err != nil {
			return nil, err
		}
		if again.report.Places > 0 {
			return nil, fmt.Errorf("store: build %s %w: after the repair, %s", x.report.Build, ErrDamaged, again.report)
		}
		x = again
	}
	_ = s.compact(x)
	return x, nil
}

// openFile opens a file that is whole.
func (s *Store) openFile(x *exam, l *lock) (*File, error) {
	id := x.report.Build
	damaged := func(err error) error {
		return fmt.Errorf("store: %s %w: %w", filepath.Base(s.path(id)), ErrDamaged, err)
	}
	db, err := openWithin(openLimit, func() (*buntdb.DB, error) { return openDB(s.path(id)) })
	if errors.Is(err, errStuck) {
		return nil, damaged(err) // the lock stays: the library may still write
	}
	if err != nil {
		return nil, disk.Both(damaged(err), l.release())
	}
	if err := agrees(db, x.image); err != nil {
		return nil, disk.Both(damaged(err), disk.Both(db.Close(), l.release()))
	}
	second, err := s.fs.Open(s.path(id), os.O_RDWR, 0)
	if err != nil {
		return nil, disk.Both(fmt.Errorf("store: %w", err), disk.Both(db.Close(), l.release()))
	}
	return &File{id: id, store: s, db: db, disk: second, lock: l}, nil
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

// Secure writes a snapshot of the build, which must be what this file holds, unless the newest one
// is just that. It takes a few milliseconds and is not called before a person sees that a reading
// was kept. It ends before Close is called. It errs with ErrWrite; the build itself is not touched.
func (f *File) Secure(b *measure.Build) error { return f.store.secure(b) }

// Close closes the build and frees its lock.
func (f *File) Close() error {
	var err error
	if !f.stuck {
		err = f.db.Close()
	}
	err = disk.Both(disk.Both(err, f.disk.Close()), f.lock.release())
	if err != nil {
		return fmt.Errorf("store: build %s: %w", f.id, err)
	}
	return nil
}

// set writes and syncs. The library panics when it can't take back half a write; that is an error
// here, and the library's own lock then stays taken.
func (f *File) set(r Record) (err error) {
	defer func() {
		if p := recover(); p != nil {
			f.stuck = true
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
