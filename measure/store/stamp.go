package store

import (
	"fmt"

	"yokebook/measure"
)

// StampOf tells whether a build's file is still the one that it was. One that is missing has the zero
// stamp. It errs when the file can't be looked at.
func (s *Store) StampOf(id measure.ID) (Stamp, error) {
	if _, err := measure.ParseID(string(id)); err != nil {
		return Stamp{}, fmt.Errorf("store: build %w", err)
	}
	stamp, err := s.stamp(s.path(id))
	if err != nil {
		return Stamp{}, fmt.Errorf("store: %w", err)
	}
	return stamp, nil
}

// Stamped is a build and what StampOf says of it.
type Stamped struct {
	ID    measure.ID
	Stamp Stamp // zero also when the file can't be looked at
}

// Stamps lists the builds as IDs does, after one look at each file.
func (s *Store) Stamps() ([]Stamped, error) {
	ids, err := s.IDs()
	if err != nil {
		return nil, err
	}
	path, out := s.paths(), make([]Stamped, len(ids))
	for i, id := range ids {
		out[i].ID = id
		if stamp, err := s.stamp(path(id)); err == nil {
			out[i].Stamp = stamp
		}
	}
	return out, nil
}
