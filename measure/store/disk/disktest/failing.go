package disktest

import (
	"errors"
	"io/fs"
	"sync"

	"yokebook/measure/store/disk"
)

// ErrDisk is what a failing call returns.
var ErrDisk = errors.New("the test's disk failed")

// Mode says what happens after the call that fails.
type Mode int

// The modes.
const (
	Once Mode = iota // nothing else fails
	Full             // all that needs room fails too
	Dead             // everything fails, as if the program had ended there
)

// Failing is a file system of which the call with number At fails, counted from 1. A write that fails
// has written half of its bytes.
type Failing struct {
	disk.FS
	At   int
	Then Mode

	mu    sync.Mutex
	calls int
	what  string // the call that failed
}

// Calls returns how many calls were made.
func (f *Failing) Calls() int {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.calls
}

// What names the first call that failed; empty when none did.
func (f *Failing) What() string {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.what
}

// fails counts a call and reports whether it is to fail.
func (f *Failing) fails(what string, needsRoom bool) bool {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.calls++
	after := f.calls > f.At && (f.Then == Dead || f.Then == Full && needsRoom)
	if f.At == 0 || f.calls != f.At && !after {
		return false
	}
	if f.what == "" {
		f.what = what
	}
	return true
}

// Open fails or opens a file whose calls fail.
func (f *Failing) Open(name string, flag int, perm fs.FileMode) (disk.File, error) {
	if f.fails("open "+name, false) {
		return nil, ErrDisk
	}
	file, err := f.FS.Open(name, flag, perm)
	if err != nil {
		return nil, err
	}
	return &failingFile{file, f, name}, nil
}

// List fails or lists.
func (f *Failing) List(name string) ([]fs.DirEntry, error) {
	if f.fails("list "+name, false) {
		return nil, ErrDisk
	}
	return f.FS.List(name)
}

// ListUnsorted fails or lists.
func (f *Failing) ListUnsorted(name string) ([]fs.DirEntry, error) {
	if f.fails("list "+name, false) {
		return nil, ErrDisk
	}
	return f.FS.ListUnsorted(name)
}

// Stat fails or looks.
func (f *Failing) Stat(name string) (fs.FileInfo, error) {
	if f.fails("stat "+name, false) {
		return nil, ErrDisk
	}
	return f.FS.Stat(name)
}

// MakeDir fails or makes a folder.
func (f *Failing) MakeDir(name string) error {
	if f.fails("make folder "+name, true) {
		return ErrDisk
	}
	return f.FS.MakeDir(name)
}

// Rename fails or renames.
func (f *Failing) Rename(from, to string) error {
	if f.fails("rename to "+to, false) {
		return ErrDisk
	}
	return f.FS.Rename(from, to)
}

// Link fails or links.
func (f *Failing) Link(from, to string) error {
	if f.fails("link to "+to, false) {
		return ErrDisk
	}
	return f.FS.Link(from, to)
}

// Remove fails or removes.
func (f *Failing) Remove(name string) error {
	if f.fails("remove "+name, false) {
		return ErrDisk
	}
	return f.FS.Remove(name)
}

// SyncDir fails or syncs a folder.
func (f *Failing) SyncDir(name string) error {
	if f.fails("sync folder "+name, false) {
		return ErrDisk
	}
	return f.FS.SyncDir(name)
}

type failingFile struct {
	disk.File
	fs   *Failing
	name string
}

func (f *failingFile) Read(p []byte) (int, error) {
	if f.fs.fails("read "+f.name, false) {
		return 0, ErrDisk
	}
	return f.File.Read(p)
}

func (f *failingFile) Write(p []byte) (int, error) {
	if f.fs.fails("write "+f.name, true) {
		n, _ := f.File.Write(p[:len(p)/2])
		return n, ErrDisk
	}
	return f.File.Write(p)
}

func (f *failingFile) WriteAt(p []byte, at int64) (int, error) {
	if f.fs.fails("write "+f.name, true) {
		n, _ := f.File.WriteAt(p[:len(p)/2], at)
		return n, ErrDisk
	}
	return f.File.WriteAt(p, at)
}

func (f *failingFile) Sync() error {
	if f.fs.fails("sync "+f.name, true) {
		return ErrDisk
	}
	return f.File.Sync()
}

// Close closes in any case, as a system does.
func (f *failingFile) Close() error {
	err := f.File.Close()
	if f.fs.fails("close "+f.name, false) {
		return ErrDisk
	}
	return err
}
