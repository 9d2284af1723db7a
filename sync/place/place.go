package place

import (
	"context"
	"errors"
	"time"
)

// The errors that a caller tells apart.
var (
	// ErrNone: no file or folder has the name.
	ErrNone = errors.New("is not there")
	// ErrLarge: a file is larger than any build file may be.
	ErrLarge = errors.New("is larger than 8 MiB, so it is no build file")
	// ErrMany: the place lists more than a reader takes.
	ErrMany = errors.New("holds more than 100,000 files; choose a folder that holds builds only")
	// ErrFull: the place has no room. What was there is as it was.
	ErrFull = errors.New("is full; make room there, nothing was changed")
	// ErrReadOnly: the place takes no files from this device.
	ErrReadOnly = errors.New("can't be written to; nothing was changed there")
	// ErrUnlike: what was written was read back differently.
	ErrUnlike = errors.New("was read back differently than it was written")
	// ErrRefused: the server wants another user name or password.
	ErrRefused = errors.New("refused the user name or password")
)

// The limits of what is taken from a place.
const (
	MaxFile  = 8 << 20 // bytes of one file
	MaxFiles = 100_000 // files in one listing
)

// Place keeps files. Its methods may be called from one goroutine at a time; each returns soon after
// its context ends. Errors are one line that begins with the name of the place.
type Place interface {
	// Name is how a person knows the place. It never holds a password.
	Name() string
	// List returns the files that may be builds, in the place and one folder deep, sorted by name.
	List(ctx context.Context) (Listing, error)
	// Get reads a file of a listing. It errs with ErrNone or ErrLarge.
	Get(ctx context.Context, name string) ([]byte, error)
	// Put writes a file. When it errs, the file may hold anything: only temporary names are put.
	Put(ctx context.Context, name string, data []byte) error
	// Move gives a file another name, in place of what had it, at once where the place can.
	Move(ctx context.Context, from, to string) error
	// Delete removes a file. That it is not there is no error.
	Delete(ctx context.Context, name string) error
}

// Listing is what a place holds.
type Listing struct {
	Files []File
	// Now is the time by the clock that dates the files; zero when that is this machine's.
	Now time.Time
}

// File is one file of a listing.
type File struct {
	Name     string    // with a slash when it lies in a folder
	Size     int64     // bytes
	Stamp    string    // changes with the content as far as the place can tell; never proves that it did not
	Modified time.Time // zero when the place doesn't say
}
