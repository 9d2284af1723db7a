package logbook

import (
	"errors"
	"fmt"
	"slices"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/route"
	"yokebook/measure/store"
)

// keeper is where a Book's records go: a file of the store, or a build file.
type keeper interface {
	// keep writes the records that next has and before had not, and returns when they are on the
	// disk. It returns the build as it is there now, which may hold more than next.
	keep(next *measure.Build, add []store.Record) (*measure.Build, error)
	Close() error
}

// Book is one open build. Its methods are called from one goroutine.
type Book struct {
	src    Sources
	keeper keeper
	build  *measure.Build // never changed in place: each record makes a new one
	result *checks.Result
	stops  []route.Stop
	found  store.Report // how the build was read back when the book was opened
	seal   document.Seal
	closed bool
}

func newBook(src Sources, k keeper, b *measure.Build) *Book {
	book := &Book{src: src, keeper: k, seal: document.Whole}
	book.show(b)
	return book
}

// show makes b the build of the book and works out what follows from it.
func (b *Book) show(next *measure.Build) {
	b.build = next
	b.result = b.src.run(next, b.result)
	b.stops = route.StopsBy(next, document.Hash)
}

// ID names the build.
func (b *Book) ID() measure.ID { return b.build.ID }

// Device returns the id that this device puts into its records.
func (b *Book) Device() measure.ID { return b.src.Device }

// Build returns the build as it is now. It is a snapshot: later records make a new one. The caller
// does not change it.
func (b *Book) Build() *measure.Build { return b.build }

// Findings returns all findings in the order of the table of checks.
func (b *Book) Findings() []checks.Finding { return slices.Clone(b.result.Findings) }

// Stops returns the whole route.
func (b *Book) Stops() []route.Stop { return slices.Clone(b.stops) }

// Next returns the stop to go to from where the vehicle stands; false when every stop is done.
func (b *Book) Next() (route.Stop, bool) {
	last, ok := newest(b.build, func(measure.Reading) bool { return true })
	if !ok {
		return route.Next(b.stops, "", measure.State{})
	}
	return route.Next(b.stops, last.Point, last.State())
}

// Seal says whether the build file that the book was opened from carried a checksum.
func (b *Book) Seal() document.Seal { return b.seal }

// Bytes returns the build as a build file.
func (b *Book) Bytes() ([]byte, error) { return document.Write(b.build) }

// Close closes the book and frees what it holds. Closing twice is no error.
func (b *Book) Close() error {
	if b.closed {
		return nil
	}
	b.closed = true
	return b.keeper.Close()
}

// errClosed is returned for work on a book that was closed.
var errClosed = errors.New("is closed; open it again")

// commit keeps records, shows the build that they make and tells what changed. Nothing in memory
// changes when they could not be kept.
func (b *Book) commit(next *measure.Build, add ...store.Record) (Change, error) {
	if b.closed {
		return Change{}, fmt.Errorf("build %s %w", b.build.ID, errClosed)
	}
	kept, err := b.keeper.keep(next, add)
	if err != nil {
		return Change{}, err
	}
	before := b.result.Findings
	b.seal = document.Whole // what is kept is kept with its checksum
	b.show(kept)
	return compare(before, b.result.Findings), nil
}
