package store

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"yokebook/measure"
	"yokebook/measure/store/disk"
)

// The errors that a caller tells apart.
var (
	// ErrHeld: another holder has the build open. The message names it.
	ErrHeld = errors.New("is open elsewhere")
	// ErrNoBuild: this store has no such build.
	ErrNoBuild = errors.New("is not in this store")
	// ErrExists: this store has the build already.
	ErrExists = errors.New("is in this store already")
	// ErrDamaged: nothing that is left of the build, file or snapshots, says what it is. All is left as it is.
	ErrDamaged = errors.New("is damaged; nothing was changed, keep the file")
	// ErrWrite: the disk did not take a record. What was kept before stands.
	ErrWrite = errors.New("was not written to the disk")
)

// Store is a folder of builds.
type Store struct {
	dir string
	fs  disk.FS
	now func() time.Time

	index indexCache
}

// Open returns the store in a folder, which is made when it is missing. The clock dates snapshots
// and reports; nothing is decided by it but which old snapshots are thinned out.
func Open(dir string, now func() time.Time) (*Store, error) { return OpenOn(disk.OS{}, dir, now) }

// OpenOn is Open on another file system.
func OpenOn(d disk.FS, dir string, now func() time.Time) (*Store, error) {
	s := &Store{dir: dir, fs: d, now: now}
	if err := s.fs.MakeDir(s.buildsDir()); err != nil {
		return nil, fmt.Errorf("store: %w", err)
	}
	return s, nil
}

// Dir returns the folder.
func (s *Store) Dir() string { return s.dir }

// IDs lists the builds in the store, sorted: those with a file, and those that lost it and have
// snapshots. Files with other names are left alone.
func (s *Store) IDs() ([]measure.ID, error) {
	files, err := orNone(s.fs.ListUnsorted(s.buildsDir()))
	if err != nil {
		return nil, fmt.Errorf("store: %w", err)
	}
	folders, err := orNone(s.fs.ListUnsorted(filepath.Join(s.dir, "snapshots")))
	if err != nil {
		return nil, fmt.Errorf("store: %w", err)
	}
	out := make([]measure.ID, 0, len(files)/2+1) // beside each build lies its lock
	for _, e := range files {
		name, isBuild := strings.CutSuffix(e.Name(), ".db")
		if !isBuild {
			continue
		}
		if id, err := measure.ParseID(name); err == nil && e.Type().IsRegular() {
			out = append(out, id)
		}
	}
	slices.Sort(out)
	whole := out
	for _, e := range folders {
		id := measure.ID(e.Name())
		if _, found := slices.BinarySearch(whole, id); found {
			continue
		}
		if there, err := s.has(id); err == nil && there { // else it is no build, or what stands in its place no file; opening it says so
			out = append(out, id)
		}
	}
	if len(out) > len(whole) {
		slices.Sort(out)
	}
	return out, nil
}

func (s *Store) buildsDir() string { return filepath.Join(s.dir, "builds") }

func (s *Store) path(id measure.ID) string { return filepath.Join(s.buildsDir(), string(id)+".db") }

// paths is path for many builds: the folder's own path is made once.
func (s *Store) paths() func(id measure.ID) string {
	before := s.buildsDir() + string(filepath.Separator)
	return func(id measure.ID) string { return before + string(id) + ".db" }
}

func (s *Store) lockPath(id measure.ID) string {
	return filepath.Join(s.buildsDir(), string(id)+".lock")
}

// has reports whether the build is there: its file, or else a snapshot of it. The id is checked
// before it becomes a path.
func (s *Store) has(id measure.ID) (bool, error) {
	if _, err := measure.ParseID(string(id)); err != nil {
		return false, fmt.Errorf("store: build %w", err)
	}
	info, err := s.fs.Stat(s.path(id))
	if errors.Is(err, os.ErrNotExist) {
		snaps, err := s.snapshots(id)
		if err != nil {
			return false, fmt.Errorf("store: %w", err)
		}
		return len(snaps) > 0, nil
	}
	if err != nil {
		return false, fmt.Errorf("store: %w", err)
	}
	if !info.Mode().IsRegular() {
		return false, fmt.Errorf("store: %s is not a plain file; move it away", s.path(id))
	}
	return true, nil
}

// need errs with ErrNoBuild when the build is not there.
func (s *Store) need(id measure.ID) error {
	there, err := s.has(id)
	if err == nil && !there {
		err = fmt.Errorf("build %s %w", id, ErrNoBuild)
	}
	return err
}

// free errs with ErrExists when the build is there.
func (s *Store) free(id measure.ID) error {
	there, err := s.has(id)
	if err == nil && there {
		err = fmt.Errorf("build %s %w", id, ErrExists)
	}
	return err
}
