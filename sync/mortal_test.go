package sync

import (
	"context"

	"yokebook/measure"
	"yokebook/sync/place"
)

// mortal is a device whose program ends, or whose place goes away, after so many steps. A write is
// then half done.
type mortal struct {
	place.Place
	Builds
	left int
	late bool // the step at which it ends was done all the same
	lies int  // a write after so many loses half of the bytes and says nothing
}

func (m *mortal) step() error {
	if m.left--; m.left < 0 {
		return errDead
	}
	return nil
}

func (m *mortal) List(ctx context.Context) (place.Listing, error) {
	if err := m.step(); err != nil {
		return place.Listing{}, err
	}
	return m.Place.List(ctx)
}

func (m *mortal) Get(ctx context.Context, name string) ([]byte, error) {
	if err := m.step(); err != nil {
		return nil, err
	}
	return m.Place.Get(ctx, name)
}

func (m *mortal) Put(ctx context.Context, name string, data []byte) error {
	err := m.step()
	if err != nil && m.left == -1 {
		if !m.late {
			data = data[:len(data)/2]
		}
		_ = m.Place.Put(ctx, name, data)
	}
	if err != nil {
		return err
	}
	if m.lies--; m.lies == 0 {
		data = data[:len(data)/2]
	}
	return m.Place.Put(ctx, name, data)
}

func (m *mortal) Move(ctx context.Context, from, to string) error {
	err := m.step()
	if err == nil || m.left == -1 && m.late {
		if moveErr := m.Place.Move(ctx, from, to); err == nil {
			err = moveErr
		}
	}
	return err
}

func (m *mortal) Delete(ctx context.Context, name string) error {
	if err := m.step(); err != nil {
		return err
	}
	return m.Place.Delete(ctx, name)
}

func (m *mortal) Take(b *measure.Build) (*measure.Build, string, error) {
	err := m.step()
	if err == nil || m.left == -1 && m.late {
		taken, stamp, takeErr := m.Builds.Take(b)
		if err == nil {
			return taken, stamp, takeErr
		}
	}
	return nil, "", err
}
