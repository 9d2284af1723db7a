package logbook

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"runtime"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/measure/store"
)

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
		if err != nil {
			return nil, fileError(k.path, err)
		}
		if err := store.WriteNewFile(k.path, data); err != nil {
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
