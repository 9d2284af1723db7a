package serve

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io"
	"io/fs"
	"os"
	"strings"
	gosync "sync"
	"time"

	"golang.org/x/net/webdav"
)

// files is the folder as the WebDAV library sees it: to be read only, and closed to the outside.
type files struct {
	root  *os.Root
	etags *etags
}

// inside turns a path of the library into one below the root.
func inside(name string) string {
	if name = strings.Trim(name, "/"); name == "" {
		return "."
	}
	return name
}

// Mkdir refuses.
func (f files) Mkdir(context.Context, string, os.FileMode) error { return fs.ErrPermission }

// RemoveAll refuses.
func (f files) RemoveAll(context.Context, string) error { return fs.ErrPermission }

// Rename refuses.
func (f files) Rename(context.Context, string, string) error { return fs.ErrPermission }

// OpenFile opens for reading. What is neither a folder nor a plain file counts as not there.
func (f files) OpenFile(_ context.Context, name string, flag int, _ os.FileMode) (webdav.File, error) {
	if flag&(os.O_WRONLY|os.O_RDWR|os.O_CREATE|os.O_TRUNC|os.O_APPEND) != 0 {
		return nil, fs.ErrPermission
	}
	name = inside(name)
	info, err := f.root.Lstat(name)
	if err != nil {
		return nil, err
	}
	if !info.IsDir() && !info.Mode().IsRegular() {
		return nil, fs.ErrNotExist
	}
	file, err := f.root.Open(name)
	if err != nil {
		return nil, err
	}
	return opened{file, f, name}, nil
}

// Stat looks at a name without following links.
func (f files) Stat(_ context.Context, name string) (os.FileInfo, error) {
	name = inside(name)
	info, err := f.root.Lstat(name)
	if err != nil {
		return nil, err
	}
	if !info.IsDir() && !info.Mode().IsRegular() {
		return nil, fs.ErrNotExist
	}
	return tagged{info, f, name}, nil
}

// opened is an open file or folder.
type opened struct {
	*os.File
	files files
	name  string
}

// Write refuses.
func (o opened) Write([]byte) (int, error) { return 0, fs.ErrPermission }

// Stat says the tag too.
func (o opened) Stat() (os.FileInfo, error) {
	info, err := o.File.Stat()
	if err != nil {
		return nil, err
	}
	return tagged{info, o.files, o.name}, nil
}

// Readdir leaves links and the like out.
func (o opened) Readdir(count int) ([]os.FileInfo, error) {
	infos, err := o.File.Readdir(count)
	var out []os.FileInfo
	for _, info := range infos {
		if info.IsDir() || info.Mode().IsRegular() {
			out = append(out, tagged{info, o.files, strings.TrimPrefix(o.name+"/"+info.Name(), "./")})
		}
	}
	return out, err
}

// tagged is a file whose ETag is its content.
type tagged struct {
	os.FileInfo
	files files
	name  string
}

// ETag is the SHA-256 of the content.
func (t tagged) ETag(context.Context) (string, error) {
	if t.IsDir() {
		return "", webdav.ErrNotImplemented
	}
	return t.files.etags.of(t.files.root, t.name)
}

// etags remembers the tags of files that have not changed since.
type etags struct {
	mu   gosync.Mutex
	now  func() time.Time
	tags map[string]etag
}

type etag struct {
	size     int64
	modified time.Time
	tag      string
}

// tagSettles is how young a file may still be given other bytes with the same time.
const tagSettles = 5 * time.Second

// maxTags bounds the memory of tags; beyond it they are worked out again.
const maxTags = 200_000

// of returns the tag of a file; "" and no error when there is none.
func (e *etags) of(root *os.Root, name string) (string, error) {
	f, err := root.Open(name)
	if errors.Is(err, fs.ErrNotExist) {
		return "", nil
	}
	if err != nil {
		return "", err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return "", err
	}
	e.mu.Lock()
	known, ok := e.tags[name]
	e.mu.Unlock()
	old := e.now().Sub(info.ModTime()) > tagSettles
	if ok && old && known.size == info.Size() && known.modified.Equal(info.ModTime()) {
		return known.tag, nil
	}
	h := sha256.New()
	if _, err := io.Copy(h, f); err != nil {
		return "", err
	}
	tag := `"` + hex.EncodeToString(h.Sum(nil)) + `"`
	e.mu.Lock()
	defer e.mu.Unlock()
	if len(e.tags) >= maxTags {
		e.tags = map[string]etag{}
	}
	e.tags[name] = etag{info.Size(), info.ModTime(), tag}
	return tag, nil
}

// drop forgets the tag of a file that is being changed.
func (e *etags) drop(name string) {
	e.mu.Lock()
	defer e.mu.Unlock()
	delete(e.tags, name)
}
