package store

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strings"

	"yokebook/measure"
)

// The errors that a caller tells apart.
var (
	// ErrHeld: another holder has the build open. The message names it.
	ErrHeld = errors.New("is open elsewhere")
	// ErrNoBuild: this store has no such build.
	ErrNoBuild = errors.New("is not in this store")
	// ErrExists: this store has the build already.
	ErrExists = errors.New("is in this store already")
	// ErrDamaged: the file of the build can't be read as a whole. It is left as it is.
	ErrDamaged = errors.New("is damaged; nothing was changed, keep the file")
	// ErrWrite: the disk did not take a record. What was kept before stands.
	ErrWrite = errors.New("was not written to the disk")
)

// Store is a folder of builds.
type Store struct {
	dir string
}

// Open returns the store in a folder, which is made when it is missing.
func Open(dir string) (*Store, error) {
	s := &Store{dir: dir}
	if err := os.MkdirAll(s.buildsDir(), 0o755); err != nil {
		return nil, fmt.Errorf("store: %w", err)
	}
	return s, nil
}

// Dir returns the folder.
func (s *Store) Dir() string { return s.dir }

// IDs lists the builds in the store, sorted. Files with other names are left alone.
func (s *Store) IDs() ([]measure.ID, error) {
	entries, err := os.ReadDir(s.buildsDir())
	if err != nil {
		return nil, fmt.Errorf("store: %w", err)
	}
	var out []measure.ID
	for _, e := range entries {
		name, isBuild := strings.CutSuffix(e.Name(), ".db")
		id, err := measure.ParseID(name)
		if isBuild && err == nil && e.Type().IsRegular() {
			out = append(out, id)
		}
	}
	sort.Slice(out, func(i, j int) bool { return out[i] < out[j] })
	return out, nil
}

func (s *Store) buildsDir() string { return filepath.Join(s.dir, "builds") }

func (s *Store) path(id measure.ID) string { return filepath.Join(s.buildsDir(), string(id)+".db") }

func (s *Store) lockPath(id measure.ID) string {
	return filepath.Join(s.buildsDir(), string(id)+".lock")
}

// has reports whether the build's file is there. The id is checked before it becomes a path.
func (s *Store) has(id measure.ID) (bool, error) {
	if _, err := measure.ParseID(string(id)); err != nil {
		return false, fmt.Errorf("store: build %w", err)
	}
	info, err := os.Lstat(s.path(id))
	switch {
	case errors.Is(err, os.ErrNotExist):
		return false, nil
	case err != nil:
		return false, fmt.Errorf("store: %w", err)
	case !info.Mode().IsRegular():
		return false, fmt.Errorf("store: %s is not a plain file; move it away", s.path(id))
	}
	return true, nil
}
