package logbook

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"time"

	"github.com/gofrs/flock"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/measure/store"
)

const (
	maxFileBytes = 8 << 20          // as in package document; refused before it is read
	lockPatience = 10 * time.Second // a save of another program takes far less
	lockRetry    = 20 * time.Millisecond
)

// ErrNotPlain is returned for a path that is a folder, a device or a pipe.
var ErrNotPlain = errors.New("is not a plain file")

// OpenFile opens a build file for work. Each kept record saves the whole file at once (see
// store.WriteFile). What another program wrote to the file meanwhile is merged in, never
// overwritten. A symbolic link is followed once, at open: the file it leads to is the one saved.
func OpenFile(path string, src Sources) (*Book, error) {
	real, err := filepath.EvalSymlinks(path)
	if err != nil {
		return nil, fileError(path, err)
	}
	data, err := readPlain(real)
	if err != nil {
		return nil, fileError(path, err)
	}
	b, seal, err := document.Read(data)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	book := newBook(src.orSystem(), &buildFile{path: real, bytes: data}, b)
	book.seal = seal
	return book, nil
}

// NewFile starts a build in a file of its own. The path must be free. Nothing is written before
// the first record is kept (or Save is called), so that a refused first reading leaves no file.
func NewFile(path, title string, layout measure.Layout, src Sources) (*Book, error) {
	src = src.orSystem()
	if _, err := os.Lstat(path); err == nil {
		return nil, fmt.Errorf("%s: is there already; choose another name", path)
	} else if !errors.Is(err, os.ErrNotExist) {
		return nil, fileError(path, err)
	}
	b, err := newBuild(src, title, layout)
	if err != nil {
		return nil, err
	}
	full, err := filepath.Abs(path)
	if err != nil {
		return nil, fileError(path, err)
	}
	return newBook(src, &buildFile{path: full}, b), nil
}

// Save writes the build as it is. Only a new build file needs it, when nothing was kept in it.
func (b *Book) Save() error {
	_, err := b.commit(b.build)
	return err
}

// buildFile is the keeper of a Book on a build file.
type buildFile struct {
	path  string // without links
	bytes []byte // as last read or written; nil: not there yet
}

func (k *buildFile) Close() error { return nil }

// keep saves the whole build. Where the file is not as it was left, both are merged first.
func (k *buildFile) keep(next *measure.Build, _ []store.Record) (*measure.Build, error) {
	if k.bytes == nil {
		data, err := document.Write(next)
		if err == nil {
			err = store.WriteNewFile(k.path, data)
		}
		if err != nil {
			return nil, writeError(k.path, err)
		}
		k.bytes = data
		return next, nil
	}
	unlock, err := lockPlain(k.path)
	if err != nil {
		return nil, fileError(k.path, err)
	}
	defer func() { unlock() }()
	now, err := readPlain(k.path)
	if err != nil {
		return nil, fileError(k.path, err)
	}
	if !bytes.Equal(now, k.bytes) {
		if next, err = mergeWith(next, now); err != nil {
			return nil, fmt.Errorf("%s: was changed by another program: %w; nothing was written", k.path, err)
		}
	}
	data, err := document.Write(next)
	if err != nil {
		return nil, fileError(k.path, err)
	}
	if runtime.GOOS == "windows" {
		unlock() // an open file can't be replaced there
		unlock = func() {}
	}
	if err := store.WriteFile(k.path, data); err != nil {
		return nil, writeError(k.path, err)
	}
	k.bytes = data
	return next, nil
}

func mergeWith(b *measure.Build, data []byte) (*measure.Build, error) {
	other, _, err := document.Read(data)
	if err != nil {
		return nil, err
	}
	merged, _, err := merge.Builds(b, other)
	return merged, err
}

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
	if at, ok := err.(*os.PathError); ok {
		return at.Err
	}
	return err
}
