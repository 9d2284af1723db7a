package logbook

import (
	"errors"
	"strconv"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/measure/store"
	buildsync "yokebook/sync"
)

// Builds is the shelf as package sync sees it. through runs work on the goroutine that the shelf's
// open books belong to and returns when it is done; nil when no other goroutine uses them.
func (s *Shelf) Builds(through func(work func())) buildsync.Builds {
	if through == nil {
		through = func(work func()) { work() }
	}
	return builds{s, through}
}

type builds struct {
	shelf   *Shelf
	through func(work func())
}

// Held lists the builds of the shelf.
func (b builds) Held() ([]buildsync.Held, error) {
	all, err := b.shelf.store.Stamps()
	if err != nil {
		return nil, err
	}
	out := make([]buildsync.Held, len(all))
	for i, x := range all {
		out[i] = buildsync.Held{ID: x.ID, Stamp: stampText(x.Stamp)}
	}
	return out, nil
}

// stamp is that of the build's file; "" when it can't be told.
func (b builds) stamp(id measure.ID) string {
	st, err := b.shelf.store.StampOf(id)
	if err != nil {
		return ""
	}
	return stampText(st)
}

// stampText is a stamp as a pass remembers it; "" for none.
func stampText(s store.Stamp) string {
	if s == (store.Stamp{}) {
		return ""
	}
	var room [40]byte
	text := append(strconv.AppendInt(room[:0], s.Bytes, 10), '.')
	return string(strconv.AppendInt(text, s.Modified, 10))
}

// Read reads a build, also while it is open. The stamp is taken first, so that a record kept
// meanwhile makes it stale and not wrong.
func (b builds) Read(id measure.ID) (*measure.Build, string, error) {
	stamp := b.stamp(id)
	build, _, err := b.shelf.store.Peek(id)
	if errors.Is(err, store.ErrNoBuild) {
		return nil, "", buildsync.ErrNotHeld
	}
	return build, stamp, err
}

// Take merges a build into the shelf. One that is open in another program is refused with
// store.ErrHeld, which names the program; one that is opened or closed here meanwhile is waited for.
func (b builds) Take(other *measure.Build) (build *measure.Build, stamp string, err error) {
	for {
		book := b.shelf.opened(other.ID)
		if book == nil {
			build, stamp, err = b.takeClosed(other)
		} else {
			b.through(func() {
				if _, _, err = book.Merge(other); err == nil {
					err = book.Secure()
				}
				build, stamp = book.Build(), b.stamp(other.ID)
			})
		}
		if !errors.Is(err, errOpened) && !errors.Is(err, errClosed) {
			return build, stamp, err
		}
	}
}

// errOpened: the build was opened here since it was looked for.
var errOpened = errors.New("the build is open")

// takeClosed is Take for a build that is not open here.
func (b builds) takeClosed(other *measure.Build) (build *measure.Build, stamp string, err error) {
	b.shelf.taking.Lock()
	defer b.shelf.taking.Unlock()
	if b.shelf.opened(other.ID) != nil {
		return nil, "", errOpened
	}
	f, have, _, err := b.shelf.store.OpenBuild(other.ID)
	if errors.Is(err, store.ErrNoBuild) {
		if _, _, err = b.shelf.importNew(other); err != nil {
			return nil, "", err
		}
		return b.Read(other.ID)
	}
	if err != nil {
		return nil, "", err
	}
	build, err = mergeInto(f, have, other)
	stamp = b.stamp(other.ID)
	if closeErr := f.Close(); err == nil {
		err = closeErr
	}
	return build, stamp, err
}

// mergeInto keeps the records that other has and have, the content of f, has not.
func mergeInto(f *store.File, have, other *measure.Build) (*measure.Build, error) {
	merged, _, err := merge.Builds(have, other)
	if err != nil {
		return nil, err
	}
	if _, err := document.Write(merged); err != nil {
		return nil, err // more than a build file holds
	}
	add, err := newRecords(have, merged)
	if err != nil {
		return nil, err
	}
	for _, r := range add {
		if err := f.Keep(r); err != nil {
			return nil, err
		}
	}
	if len(add) == 0 {
		return merged, nil
	}
	return merged, f.Secure(merged)
}
