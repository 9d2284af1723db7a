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
	stamp, err := s.stamp(id)
	if err != nil {
		return Stamp{}, fmt.Errorf("store: %w", err)
	}
	return stamp, nil
}
