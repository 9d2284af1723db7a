package logbook

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"time"

	"github.com/gofrs/flock"

	"yokebook/measure/store"
)

const (
	maxFileBytes = 8 << 20          // as in package document; refused before it is read
	lockPatience = 10 * time.Second // a save of another program takes far less
	lockRetry    = 20 * time.Millisecond
)

// ErrNotPlain is returned for a path that is a folder, a device or a pipe.
var ErrNotPlain = errors.New("is not a plain file")

// lockPlain locks a file for one save. Saving replaces the file, so a lock that was waited for may
// be on the one that is gone: then it is taken again.
func lockPlain(path string) (unlock func(), err error) {
	ctx, cancel := context.WithTimeout(context.Background(), lockPatience)
	defer cancel()
	for {
		l := flock.New(path, flock.SetFlag(os.O_RDONLY))
		ok, err := l.TryLockContext(ctx, lockRetry)
		if errors.Is(err, context.DeadlineExceeded) || err == nil && !ok {
			return nil, errors.New("another program keeps it locked; try again")
		}
		if err != nil {
			return nil, err
		}
		unlock = func() { _ = l.Unlock() }
		held, err := l.Stat()
		if err == nil {
			var there os.FileInfo
			if there, err = os.Stat(path); err == nil && os.SameFile(held, there) {
				return unlock, nil
			}
		}
		unlock()
		if err != nil {
			return nil, err
		}
	}
}

// readPlain reads a plain file of bounded size.
func readPlain(path string) ([]byte, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() {
		return nil, ErrNotPlain
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, maxFileBytes+1))
	if err == nil && len(data) > maxFileBytes {
		err = fmt.Errorf("is larger than %d MiB; it is no build file", maxFileBytes>>20)
	}
	return data, err
}

// writeError is fileError for a file that was not written. It wraps store.ErrWrite, unless the path
// was taken.
func writeError(path string, err error) error {
	if !errors.Is(err, os.ErrExist) {
		err = fmt.Errorf("%w: %w", store.ErrWrite, cause(err))
	}
	return fileError(path, err)
}

// fileError says path and cause in one line, the path once.
func fileError(path string, err error) error {
	return fmt.Errorf("%s: %w", path, cause(err))
}

// cause takes the path off an error of the file system.
func cause(err error) error {
	var at *os.PathError
	var two *os.LinkError
	switch {
	case errors.As(err, &at):
		return at.Err
	case errors.As(err, &two):
		return two.Err
	}
	return err
}
