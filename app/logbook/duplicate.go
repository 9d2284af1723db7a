package logbook

import (
	"fmt"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store"
)

// Duplicate starts a build from another one of the shelf and opens it: with its layout, and with the
// stated values that count there, kept anew. What was measured or estimated under the other vehicle
// stays there, and so do its title, instruments, limits and skips.
func (s *Shelf) Duplicate(from measure.ID, title string) (*Book, error) {
	other, err := s.look(from)
	if err != nil {
		return nil, err
	}
	b, err := newBuild(s.src, title, other.Layout)
	if err != nil {
		return nil, err
	}
	for _, r := range other.CurrentReadings(document.Hash) {
		if r.Basis != measure.Stated {
			continue
		}
		b.Readings = insert(b.Readings, measure.Reading{ID: s.src.NewID(), Point: r.Point, Value: r.Value, Entered: r.Entered, Unit: r.Unit,
			Basis: r.Basis, Ride: measure.Bench, Setup: 1, Tag: r.Tag, Note: r.Note, At: s.src.at(), Device: s.src.Device},
			func(r measure.Reading) measure.ID { return r.ID })
	}
	if err := b.Validate(); err != nil {
		return nil, fmt.Errorf("duplicate: %w", err)
	}
	f, err := s.store.Create(b)
	if err != nil {
		return nil, err
	}
	return s.shelve(f, b, store.Report{}), nil
}

// look returns a build of the shelf, also while it is open.
func (s *Shelf) look(id measure.ID) (*measure.Build, error) {
	if book := s.opened(id); book != nil {
		return book.Build(), nil
	}
	b, _, err := s.store.Peek(id)
	return b, err
}
