package logbook

import (
	"sync"

	"yokebook/measure"
	"yokebook/measure/store"
)

// Shelf is the folder of builds on this device.
type Shelf struct {
	src   Sources
	store *store.Store

	// taking is held while a build is opened or closed, and while records from elsewhere go into one
	// that is not open: what a pass beside the window takes in never meets a build half opened.
	taking sync.Mutex

	mu    sync.Mutex // guards what follows
	open  map[measure.ID]*Book
	place []byte // as saved last
}

// OpenShelf opens the folder of builds, which is made when it is missing. Home says which one it
// is. When src names no device, the one kept in the folder is used.
func OpenShelf(dir string, src Sources) (*Shelf, error) {
	src = src.orSystem()
	st, err := store.Open(dir, src.Now)
	if err != nil {
		return nil, err
	}
	if src.Device == "" {
		if src.Device, err = Device(dir, src.NewID); err != nil {
			return nil, err
		}
	}
	return &Shelf{src: src, store: st, open: map[measure.ID]*Book{}}, nil
}

// Device returns the id that this device puts into its records.
func (s *Shelf) Device() measure.ID { return s.src.Device }

// Dir is the folder of the builds.
func (s *Shelf) Dir() string { return s.store.Dir() }

// List returns the builds of the shelf, sorted by id. It may be called while books are open, also
// in other processes.
func (s *Shelf) List() ([]Listing, error) { return s.listWhile(func() bool { return true }) }

// New starts a build and opens it.
func (s *Shelf) New(title string, layout measure.Layout) (*Book, error) {
	b, err := newBuild(s.src, title, layout)
	if err != nil {
		return nil, err
	}
	f, err := s.store.Create(b)
	if err != nil {
		return nil, err
	}
	return s.shelve(f, b, store.Report{}), nil
}

// Open opens a build for work. One holder has a build at a time: a second is refused with a line
// that names the first.
func (s *Shelf) Open(id measure.ID) (*Book, error) {
	s.taking.Lock()
	defer s.taking.Unlock()
	f, b, report, err := s.store.OpenBuild(id)
	if err != nil {
		return nil, err
	}
	return s.shelve(f, b, report), nil
}

// Close closes the books that are still open.
func (s *Shelf) Close() error {
	s.mu.Lock()
	books := make([]*Book, 0, len(s.open))
	for _, b := range s.open {
		books = append(books, b)
	}
	s.mu.Unlock()
	var first error
	for _, b := range books {
		if err := b.Close(); err != nil && first == nil {
			first = err
		}
	}
	if _, err := s.List(); err != nil && first == nil { // leaves the index right for the next start
		first = err
	}
	return first
}

// shelve makes the Book of an opened file.
func (s *Shelf) shelve(f *store.File, b *measure.Build, found store.Report) *Book {
	k := &shelved{File: f, shelf: s, build: b}
	k.unsecured = f.Secure(b) // after a kill, what was kept last has no second copy yet
	book := newBook(s.src, k, b)
	book.found = found
	s.mu.Lock()
	defer s.mu.Unlock()
	s.open[b.ID] = book
	return book
}

// opened returns the open book of a build, nil when it is not open on this shelf.
func (s *Shelf) opened(id measure.ID) *Book {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.open[id]
}
