package disktest

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"sort"
	"sync"

	"yokebook/measure/store/disk"
)

// Volatile is a file system whose files are real ones in a folder, and which knows what of them would
// outlive a loss of power: the bytes that a file had at its last Sync, under the names that its
// folder had at its last SyncDir. Folders themselves last once made. What other code writes to the
// files by path counts as not synced until Sync is called here.
type Volatile struct {
	disk.FS
	dir string

	mu      sync.Mutex
	live    map[string]*inode // by path: what a program sees
	lasting map[string]*inode // by path: the names that would outlive
}

// inode is the content of a file, whatever its names.
type inode struct {
	lasting []byte // as of the last Sync
}

// NewVolatile stands on an empty folder.
func NewVolatile(dir string) *Volatile {
	return &Volatile{FS: disk.OS{}, dir: dir, live: map[string]*inode{}, lasting: map[string]*inode{}}
}

// Open opens a file; one that is made here has no lasting name yet.
func (v *Volatile) Open(name string, flag int, perm fs.FileMode) (disk.File, error) {
	f, err := v.FS.Open(name, flag, perm)
	if err != nil {
		return nil, err
	}
	v.mu.Lock()
	defer v.mu.Unlock()
	n := v.live[name]
	if n == nil {
		n = &inode{}
		v.live[name] = n
	}
	return &volatileFile{f, v, n}, nil
}

// Rename renames; the new name lasts after SyncDir.
func (v *Volatile) Rename(from, to string) error {
	if err := v.FS.Rename(from, to); err != nil {
		return err
	}
	v.mu.Lock()
	defer v.mu.Unlock()
	v.alias(from, to)
	delete(v.live, from)
	return nil
}

// Link links; the new name lasts after SyncDir.
func (v *Volatile) Link(from, to string) error {
	if err := v.FS.Link(from, to); err != nil {
		return err
	}
	v.mu.Lock()
	defer v.mu.Unlock()
	v.alias(from, to)
	return nil
}

// alias gives the content under one name a second one.
func (v *Volatile) alias(from, to string) {
	if v.live[from] == nil {
		v.live[from] = &inode{}
	}
	v.live[to] = v.live[from]
}

// Remove removes; the name is gone for good after SyncDir.
func (v *Volatile) Remove(name string) error {
	if err := v.FS.Remove(name); err != nil {
		return err
	}
	v.mu.Lock()
	defer v.mu.Unlock()
	delete(v.live, name)
	return nil
}

// SyncDir makes the names in a folder last, not their contents.
func (v *Volatile) SyncDir(name string) error {
	v.mu.Lock()
	defer v.mu.Unlock()
	for path := range v.lasting {
		if filepath.Dir(path) == name {
			delete(v.lasting, path)
		}
	}
	for path, n := range v.live {
		if filepath.Dir(path) == name {
			v.lasting[path] = n
		}
	}
	return nil
}

// LosePower leaves in the folder what a loss of power would. Of what was not synced, choose decides
// (it picks a number below n): it is gone, or a part of it is there, or zeros stand in its place;
// names that were not made to last are gone or there. The file system is used no more after it.
func (v *Volatile) LosePower(choose func(n int) int) error {
	v.mu.Lock()
	defer v.mu.Unlock()
	names := v.lasting
	if choose(2) == 0 {
		names = v.live
	}
	left := map[string][]byte{}
	for _, path := range sorted(names) {
		n := names[path]
		now, err := v.content(n)
		if err != nil {
			return err
		}
		left[path] = n.left(now, choose)
	}
	err := filepath.WalkDir(v.dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		return os.Remove(path)
	})
	for path, data := range left {
		if err == nil {
			err = os.WriteFile(path, data, 0o644)
		}
	}
	return err
}

// content reads what a file holds now, under any of its names.
func (v *Volatile) content(n *inode) ([]byte, error) {
	for _, path := range sorted(v.live) {
		if v.live[path] == n {
			return os.ReadFile(path)
		}
	}
	return n.lasting, nil // it has no name any more: nobody wrote to it since
}

// left is what a loss of power leaves of a file.
func (n *inode) left(now []byte, choose func(n int) int) []byte {
	if bytes.Equal(now, n.lasting) {
		return now
	}
	if !bytes.HasPrefix(now, n.lasting) { // written anew
		if choose(2) == 0 {
			return n.lasting
		}
		return now[:choose(len(now)+1)]
	}
	cut := len(n.lasting) + choose(len(now)-len(n.lasting)+1)
	switch choose(3) {
	case 0:
		return n.lasting
	case 1:
		return now[:cut]
	}
	return append(bytes.Clone(now[:cut]), make([]byte, len(now)-cut)...)
}

func sorted(m map[string]*inode) []string {
	out := make([]string, 0, len(m))
	for path := range m {
		out = append(out, path)
	}
	sort.Strings(out)
	return out
}

type volatileFile struct {
	disk.File
	fs   *Volatile
	node *inode
}

// Sync makes the bytes last that the file holds now, whoever wrote them.
func (f *volatileFile) Sync() error {
	f.fs.mu.Lock()
	defer f.fs.mu.Unlock()
	now, err := f.fs.content(f.node)
	f.node.lasting = now
	return err
}
