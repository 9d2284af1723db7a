package logbook

import (
	"errors"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/measure/store"
)

// Import takes a build file into the shelf. A build that is there already is merged with it, so
// that nothing is lost; importing a file again changes nothing. While the build is open in this
// program the import goes through its Book and is called from that Book's goroutine.
func (s *Shelf) Import(data []byte) (measure.ID, merge.Report, error) {
	b, _, err := document.Read(data)
	if err != nil {
		return "", merge.Report{}, err
	}
	if book := s.opened(b.ID); book != nil {
		_, report, err := book.Merge(b)
		return b.ID, report, err
	}
	book, err := s.Open(b.ID)
	if errors.Is(err, store.ErrNoBuild) {
		s.taking.Lock()
		defer s.taking.Unlock()
		return s.importNew(b)
	}
	if err != nil {
		return "", merge.Report{}, err
	}
	_, report, err := book.Merge(b)
	if closeErr := book.Close(); err == nil {
		err = closeErr
	}
	return b.ID, report, err
}

// importNew takes a build in that the shelf does not have.
func (s *Shelf) importNew(b *measure.Build) (measure.ID, merge.Report, error) {
	merged, report, err := merge.Builds(b)
	if err != nil {
		return "", report, err
	}
	f, err := s.store.Create(merged)
	if err != nil {
		return "", report, err
	}
	err = f.Secure(merged)
	if closeErr := f.Close(); err == nil {
		err = closeErr
	}
	return b.ID, report, err
}

// Export returns a build as a build file, also while it is open.
func (s *Shelf) Export(id measure.ID) ([]byte, error) {
	b, _, err := s.store.Peek(id)
	if err != nil {
		return nil, err
	}
	return document.Write(b)
}

// Merge takes the records of another file of the same build in, so that nothing of either is lost.
// It errs when other is another build; then nothing has changed.
func (b *Book) Merge(other *measure.Build) (Change, merge.Report, error) {
	merged, report, err := merge.Builds(b.build, other)
	if err != nil {
		return Change{}, report, err
	}
	add, err := newRecords(b.build, merged)
	if err != nil {
		return Change{}, report, err
	}
	if len(add) == 0 {
		return Change{}, report, nil
	}
	c, err := b.commit(merged, add...)
	if err != nil {
		return Change{}, report, err
	}
	c.Next, c.More = b.Next()
	return c, report, nil
}

// newRecords lists the records that after has and before has not. The plain members come last: they
// are the view of the others.
func newRecords(before, after *measure.Build) ([]store.Record, error) {
	known := map[string]bool{}
	for _, r := range store.RecordsOf(before) {
		known[r.Key] = true
	}
	var add []store.Record
	for _, r := range store.RecordsOf(after) {
		if !known[r.Key] {
			add = append(add, r)
		}
	}
	was, err := store.OfPlain(before)
	if err != nil {
		return nil, err
	}
	is, err := store.OfPlain(after)
	if err != nil {
		return nil, err
	}
	if !was.Equal(is) {
		add = append(add, is)
	}
	return add, nil
}
