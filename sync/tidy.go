package sync

import (
	"bytes"
	"context"
	"errors"
	"fmt"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/sync/place"
)

// The errors of tidying that a caller tells apart. The file is where it was.
var (
	ErrNoCopy  = errors.New("is the file of a device, not a copy of one; it was left alone")
	ErrNotHad  = errors.New("holds records that this device's file there does not have yet; sync, then tidy")
	ErrTouched = errors.New("was changed meanwhile; it was left alone")
)

// Tidy takes one copy, a file under a name that is not ours, out of the place. It does so only when
// every record in it is in this device's own file there, read back now, and after keep has put the
// bytes away: what keep keeps brings the file back.
func (p Pass) Tidy(ctx context.Context, name string, keep func(name string, data []byte) error) error {
	if place.IsOurs(name) {
		return fmt.Errorf("%s: %s %w", p.Place.Name(), name, ErrNoCopy)
	}
	data, err := p.Place.Get(ctx, name)
	if err != nil {
		return err
	}
	b, _, err := document.Read(data)
	if err != nil {
		return fmt.Errorf("%s: %w", p.Place.Name(), unreadable{name, err})
	}
	own := place.FileName(b.ID, p.Device)
	there, err := p.Place.Get(ctx, own)
	if err != nil {
		return err
	}
	had, _, err := document.Read(there)
	if err != nil {
		return fmt.Errorf("%s: %w", p.Place.Name(), unreadable{own, err})
	}
	alone, err := unitedBytes(had)
	if err != nil {
		return fmt.Errorf("%s: %s: %w", p.Place.Name(), own, err)
	}
	united, err := unitedBytes(had, b)
	if err != nil {
		return fmt.Errorf("%s: %s: %w", p.Place.Name(), name, err)
	}
	if !bytes.Equal(united, alone) {
		return fmt.Errorf("%s: %s %w", p.Place.Name(), name, ErrNotHad)
	}
	if err := keep(name, data); err != nil {
		return err
	}
	again, err := p.Place.Get(ctx, name)
	if err != nil {
		return err
	}
	if !bytes.Equal(again, data) {
		return fmt.Errorf("%s: %s %w", p.Place.Name(), name, ErrTouched)
	}
	return p.Place.Delete(ctx, name)
}

// unitedBytes is the file of a union.
func unitedBytes(builds ...*measure.Build) ([]byte, error) {
	all, _, err := merge.Builds(builds...)
	if err != nil {
		return nil, err
	}
	return document.Write(all)
}

// PutBack writes a file that Tidy took away to its place again. It errs with ErrTouched when another
// has taken its name.
func (p Pass) PutBack(ctx context.Context, name string, data []byte) error {
	switch _, err := p.Place.Get(ctx, name); {
	case err == nil:
		return fmt.Errorf("%s: %s %w", p.Place.Name(), name, ErrTouched)
	case !errors.Is(err, place.ErrNone):
		return err
	}
	return place.Replace(ctx, p.Place, name, data)
}
