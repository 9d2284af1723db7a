package store

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/gofrs/flock"

	"yokebook/measure"
	"yokebook/measure/store/disk"
)

// holderBytes is the room for the holder's name in a lock file. It stands behind the first byte,
// because Windows locks that byte against readers.
const holderBytes = 240

// lock is a lock file: the operating system holds the lock and frees it when the process dies, the
// text only says who it is. The file is never removed, so nobody locks a file that is gone.
type lock struct {
	fs   disk.FS
	path string
	os   *flock.Flock
}

// heldError is ErrHeld with the holder's name.
type heldError struct{ by string }

func (e heldError) Error() string {
	return fmt.Sprintf("build %s: %s; close it there first", ErrHeld, e.by)
}
func (e heldError) Unwrap() error { return ErrHeld }

// takeLock locks a build and writes who holds it. It errs with ErrHeld and the holder's name.
func (s *Store) takeLock(id measure.ID) (*lock, error) {
	path := s.lockPath(id)
	l := &lock{fs: s.fs, path: path, os: flock.New(path, flock.SetFlag(os.O_CREATE|os.O_RDWR))}
	ok, err := l.os.TryLock()
	if err != nil {
		return nil, fmt.Errorf("store: lock %s: %w", path, err)
	}
	if !ok {
		return nil, heldError{s.holderOf(id)}
	}
	if err := l.write(self()); err != nil {
		_ = l.os.Unlock()
		return nil, fmt.Errorf("store: lock %s: %w", path, err)
	}
	return l, nil
}

// release takes the name out and frees the lock; no lock is no error.
func (l *lock) release() error {
	if l == nil {
		return nil
	}
	nameErr := l.write("")
	if err := l.os.Unlock(); err != nil {
		return fmt.Errorf("store: lock %s: %w", l.path, err)
	}
	return nameErr
}

func (l *lock) write(holder string) error {
	f, err := l.fs.Open(l.path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	text := bytes.Repeat([]byte{' '}, holderBytes)
	copy(text, holder)
	text[holderBytes-1] = '\n'
	_, err = f.WriteAt(text, 1)
	if closeErr := f.Close(); err == nil {
		err = closeErr
	}
	return err
}

// holderOf reads the name in a lock file that somebody holds.
func (s *Store) holderOf(id measure.ID) string {
	f, err := s.fs.Open(s.lockPath(id), os.O_RDONLY, 0)
	if err != nil {
		return "another program"
	}
	defer f.Close()
	text := make([]byte, holderBytes)
	n, err := f.ReadAt(text, 1)
	if err != nil && err != io.EOF {
		return "another program"
	}
	name := strings.TrimSpace(strings.ToValidUTF8(string(text[:n]), ""))
	if name == "" {
		return "another program"
	}
	return name
}

// self names this process: program, process number, machine.
func self() string {
	program := "yokebook"
	if len(os.Args) > 0 && os.Args[0] != "" {
		program = filepath.Base(os.Args[0])
	}
	host, err := os.Hostname()
	if err != nil {
		host = "this machine"
	}
	return fmt.Sprintf("%.60s, process %d on %.120s", program, os.Getpid(), host)
}
