package cli

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"strings"

	"yokebook/measure/store"
)

// Exit codes.
const (
	Done         = 0
	PersonNeeded = 1 // something is out, or a value wants a second look
	BadInput     = 2 // a file, an argument or a flag
	NotWritten   = 3 // the disk or the output did not take it
)

// errQuiet ends a verb with PersonNeeded after everything has been printed already.
var errQuiet = errors.New("a person is needed")

// askError ends a verb with PersonNeeded and one line that asks.
type askError string

// Error is the line that asks.
func (e askError) Error() string { return string(e) }

// errWrite ends a verb with NotWritten.
var errWrite = errors.New("could not write")

func codeOf(err error) int {
	var ask askError
	switch {
	case errors.Is(err, errQuiet), errors.As(err, &ask):
		return PersonNeeded
	case errors.Is(err, errWrite), errors.Is(err, store.ErrWrite):
		return NotWritten
	}
	return BadInput
}

// oneLine makes the one line that an error is told in.
func oneLine(verb string, err error) string {
	text := strings.Join(strings.FieldsFunc(err.Error(), func(r rune) bool { return r < ' ' || r == '\u007f' }), " ")
	return verb + ": " + strings.TrimSpace(text)
}

// readError says in the program's own words why a file could not be read.
func readError(path string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("%s: there is no such file; look at its name and folder", path)
	case errors.Is(err, fs.ErrPermission):
		return fmt.Errorf("%s: not allowed to read it; look at its permissions", path)
	}
	return fmt.Errorf("%s: can't be read: %w", path, bare(err))
}

// writeError says why a file could not be written.
func writeError(path string, err error) error {
	return fmt.Errorf("%w %s: %w; nothing was changed", errWrite, path, bare(err))
}

// bare takes the path off an error of the file system: the line names it already.
func bare(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}

// writer remembers the first error of the output, so that it is told once at the end.
type writer struct {
	to  io.Writer
	err error
}

func (w *writer) Write(b []byte) (int, error) {
	if w.err == nil {
		if _, err := w.to.Write(b); err != nil {
			w.err = fmt.Errorf("%w the output: %w", errWrite, bare(err))
		}
	}
	return len(b), w.err
}
