package place

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"runtime"
	"sort"
	"strconv"
	"syscall"
)

// Folder is a place on this machine: a stick, a share, the folder of a file-sync program. Links in
// it are not followed and nothing outside of it is reached.
type Folder struct {
	path string
	root *os.Root
}

// OpenFolder opens a folder that must be there: one that is missing may be a stick that is not
// plugged in, and must not be made up.
func OpenFolder(path string) (*Folder, error) {
	root, err := os.OpenRoot(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, fmt.Errorf("%s: there is no such folder; plug it in or make it", path)
	}
	if err != nil {
		return nil, fmt.Errorf("%s: can't be opened as a folder: %w", path, bare(err))
	}
	return &Folder{path: path, root: root}, nil
}

// Name is the path.
func (f *Folder) Name() string { return f.path }

// Close lets the folder go.
func (f *Folder) Close() error { return f.root.Close() }

// List lists the files that may be builds.
func (f *Folder) List(ctx context.Context) (Listing, error) {
	var out Listing
	err := f.list(ctx, ".", "", &out)
	sort.Slice(out.Files, func(i, j int) bool { return out.Files[i].Name < out.Files[j].Name })
	return out, err
}

// list adds what one folder holds; before is what stands before its names.
func (f *Folder) list(ctx context.Context, dir, before string, out *Listing) error {
	entries, err := f.entries(dir)
	if before != "" && (errors.Is(err, fs.ErrPermission) || errors.Is(err, fs.ErrNotExist)) {
		return nil // somebody else's
	}
	if err != nil {
		return f.fault(dir, err)
	}
	for _, e := range entries {
		if err := ctx.Err(); err != nil {
			return f.fault(dir, err)
		}
		name := before + e.Name()
		switch {
		case e.IsDir() && before == "" && !hidden(e.Name()) && Valid(name):
			if err := f.list(ctx, name, name+"/", out); err != nil {
				return err
			}
		case e.Type().IsRegular():
			info, err := e.Info()
			if err != nil || !Wanted(name, info.Size()) {
				continue // gone since
			}
			if len(out.Files) >= MaxFiles {
				return fmt.Errorf("%s: %w", f.path, ErrMany)
			}
			out.Files = append(out.Files, File{Name: name, Size: info.Size(), Modified: info.ModTime(),
				Stamp: strconv.FormatInt(info.ModTime().UnixNano(), 10)})
		}
	}
	return nil
}

func (f *Folder) entries(dir string) ([]fs.DirEntry, error) {
	d, err := f.root.Open(dir)
	if err != nil {
		return nil, err
	}
	defer d.Close()
	return d.ReadDir(-1)
}

// Get reads a file.
func (f *Folder) Get(ctx context.Context, name string) ([]byte, error) {
	if err := f.ready(ctx, name); err != nil {
		return nil, err
	}
	info, err := f.root.Lstat(name)
	if err != nil {
		return nil, f.fault(name, err)
	}
	if !info.Mode().IsRegular() {
		return nil, fmt.Errorf("%s: %s is no plain file", f.path, name)
	}
	file, err := f.root.Open(name)
	if err != nil {
		return nil, f.fault(name, err)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, MaxFile+1))
	if err != nil {
		return nil, f.fault(name, err)
	}
	if len(data) > MaxFile {
		return nil, fmt.Errorf("%s: %s %w", f.path, name, ErrLarge)
	}
	return data, nil
}

// Put writes a file and returns when its bytes are on the disk.
func (f *Folder) Put(ctx context.Context, name string, data []byte) error {
	if err := f.ready(ctx, name); err != nil {
		return err
	}
	// What has the name goes first: a link there must not be written through.
	if err := f.root.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return f.writeFault(name, err)
	}
	file, err := f.root.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return f.writeFault(name, err)
	}
	_, err = file.Write(data)
	if err == nil {
		err = file.Sync()
	}
	if closeErr := file.Close(); err == nil {
		err = closeErr
	}
	if err != nil {
		return f.writeFault(name, err)
	}
	return nil
}

// Move renames a file and makes its name last.
func (f *Folder) Move(ctx context.Context, from, to string) error {
	if err := f.ready(ctx, from); err != nil {
		return err
	}
	if err := f.ready(ctx, to); err != nil {
		return err
	}
	if err := f.root.Rename(from, to); err != nil {
		return f.writeFault(to, err)
	}
	f.syncNames()
	return nil
}

// syncNames makes the names in the folder last. Not every file system can, and what it would save is
// still on this device, so nothing hangs on it.
func (f *Folder) syncNames() {
	d, err := f.root.Open(".")
	if err != nil {
		return
	}
	defer d.Close()
	_ = d.Sync()
}

// Delete removes a file.
func (f *Folder) Delete(ctx context.Context, name string) error {
	if err := f.ready(ctx, name); err != nil {
		return err
	}
	if err := f.root.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return f.writeFault(name, err)
	}
	return nil
}

// ready errs when the work was called off or the name is none of a place.
func (f *Folder) ready(ctx context.Context, name string) error {
	if err := ctx.Err(); err != nil {
		return f.fault(name, err)
	}
	if !Valid(name) {
		return fmt.Errorf("%s: %.60q is no name of a file in a place", f.path, name)
	}
	return nil
}

// fault says in one line what went wrong with a file, and which kind of fault it is.
func (f *Folder) fault(name string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("%s: %s %w", f.path, name, ErrNone)
	case noRoom(err):
		return fmt.Errorf("%s: %w", f.path, ErrFull)
	}
	return fmt.Errorf("%s: %s: %w", f.path, name, bare(err))
}

// writeFault is fault for what changes the folder.
func (f *Folder) writeFault(name string, err error) error {
	if errors.Is(err, syscall.EROFS) || errors.Is(err, fs.ErrPermission) {
		return fmt.Errorf("%s: %w", f.path, ErrReadOnly)
	}
	return f.fault(name, err)
}

// noRoom reports a full disk or an exhausted quota; 112 and 39 are what Windows says.
func noRoom(err error) bool {
	return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT) ||
		runtime.GOOS == "windows" && (errors.Is(err, syscall.Errno(112)) || errors.Is(err, syscall.Errno(39)))
}

// bare takes path and verb off an error of the file system.
func bare(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	var link *os.LinkError
	if errors.As(err, &link) {
		return link.Err
	}
	return err
}
