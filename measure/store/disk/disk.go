package disk

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"runtime"
	"syscall"
)

// ErrLarge is returned by Read for a file that is larger than taken.
var ErrLarge = errors.New("is larger than any of ours")

// FS is a file system. Names are paths as package os takes them; errors are those of package os.
type FS interface {
	// Open opens a file as os.OpenFile does.
	Open(name string, flag int, perm fs.FileMode) (File, error)
	// List returns what is in a folder, sorted by name.
	List(name string) ([]fs.DirEntry, error)
	// ListUnsorted is List without the sorting, which takes long where there are many.
	ListUnsorted(name string) ([]fs.DirEntry, error)
	// Stat looks at the name itself; links are not followed.
	Stat(name string) (fs.FileInfo, error)
	// MakeDir makes a folder and those above it.
	MakeDir(name string) error
	// Rename puts a file in place of another, at once where the system can.
	Rename(from, to string) error
	// Link gives a file a second name, which must be free. Not every system can.
	Link(from, to string) error
	// Remove takes a name away.
	Remove(name string) error
	// SyncDir makes the names in a folder last.
	SyncDir(name string) error
}

// File is an open file.
type File interface {
	io.Reader
	io.Writer
	io.ReaderAt
	io.WriterAt
	Chmod(mode fs.FileMode) error
	// Sync returns when everything written to the file is on the disk.
	Sync() error
	Close() error
}

// OS is the file system of this machine.
type OS struct{}

// Open is os.OpenFile.
func (OS) Open(name string, flag int, perm fs.FileMode) (File, error) {
	f, err := os.OpenFile(name, flag, perm)
	if err != nil {
		return nil, err
	}
	return f, nil
}

// List is os.ReadDir.
func (OS) List(name string) ([]fs.DirEntry, error) { return os.ReadDir(name) }

// ListUnsorted is os.File.ReadDir.
func (OS) ListUnsorted(name string) ([]fs.DirEntry, error) {
	d, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	entries, err := d.ReadDir(-1)
	return entries, Both(err, d.Close())
}

// Stat is os.Lstat.
func (OS) Stat(name string) (fs.FileInfo, error) { return os.Lstat(name) }

// MakeDir is os.MkdirAll.
func (OS) MakeDir(name string) error { return os.MkdirAll(name, 0o755) }

// Rename is os.Rename.
func (OS) Rename(from, to string) error { return os.Rename(from, to) }

// Link is os.Link.
func (OS) Link(from, to string) error { return os.Link(from, to) }

// Remove is os.Remove.
func (OS) Remove(name string) error { return os.Remove(name) }

// SyncDir syncs a folder. That a system can't sync folders is no error.
func (OS) SyncDir(name string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	d, err := os.Open(name)
	if err != nil {
		return err
	}
	err = d.Sync()
	if errors.Is(err, errors.ErrUnsupported) || errors.Is(err, syscall.EINVAL) {
		err = nil
	}
	return Both(err, d.Close())
}

// Read reads a whole file of at most max bytes. It errs with ErrLarge before it reads more.
func Read(d FS, name string, max int64) ([]byte, error) {
	f, err := d.Open(name, os.O_RDONLY, 0)
	if err != nil {
		return nil, err
	}
	data, err := io.ReadAll(io.LimitReader(f, max+1))
	if err == nil && int64(len(data)) > max {
		err = fmt.Errorf("%s: %w", name, ErrLarge)
	}
	if err = Both(err, f.Close()); err != nil {
		return nil, err
	}
	return data, nil
}

// Both says two errors in one line; either may be nil.
func Both(a, b error) error {
	switch {
	case a == nil:
		return b
	case b == nil:
		return a
	}
	return fmt.Errorf("%w; %w", a, b)
}
