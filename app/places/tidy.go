package places

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"path/filepath"

	"yokebook/app/logbook"
	"yokebook/measure"
	"yokebook/measure/store/disk"
	buildsync "yokebook/sync"
	"yokebook/sync/place"
)

// Aside is a copy that was tidied away. Its bytes are kept on this device.
type Aside struct {
	Name string // in the place
	path string
}

// Tidy takes copies out of a place: files of builds under names that are not ours, all of whose
// records are in this device's own files there, read back. Each is first kept on this device. Copies
// that must stay are left, and the first reason is the error; what was tidied is returned with it.
func (p *Places) Tidy(ctx context.Context, device measure.ID, address string, names []string) (done []Aside, err error) {
	err = p.at(address, func(at place.Place) error {
		var first error
		for _, name := range names {
			a := Aside{Name: name}
			err := buildsync.Pass{Place: at, Device: device}.Tidy(ctx, name, func(_ string, data []byte) error {
				sum := sha256.Sum256(data)
				a.path = filepath.Join(p.dir, "aside", hex.EncodeToString(sum[:])+".json")
				return write(a.path, data)
			})
			switch {
			case err == nil:
				done = append(done, a)
			case first == nil:
				first = err
			}
			if errors.Is(err, context.Canceled) {
				break
			}
		}
		return first
	})
	return done, err
}

// PutBack brings copies that were tidied away back to their place.
func (p *Places) PutBack(ctx context.Context, device measure.ID, address string, all []Aside) error {
	return p.at(address, func(at place.Place) error {
		for _, a := range all {
			data, err := disk.Read(disk.OS{}, a.path, place.MaxFile)
			if err != nil {
				return fmt.Errorf("places: %w", err)
			}
			if err := (buildsync.Pass{Place: at, Device: device}).PutBack(ctx, a.Name, data); err != nil {
				return err
			}
		}
		return nil
	})
}

// Try asks a server for its list of files, with what is said to let us in and nothing that is kept.
// It errs when none comes: from a server that nobody vouches for with *place.UnknownServer, from one
// that wants another password with place.ErrRefused.
func (p *Places) Try(ctx context.Context, address string, access place.Access) error {
	access.Wait = p.Wait
	at, err := place.OpenWebDAV(address, access)
	if err != nil {
		return err
	}
	defer at.Close()
	_, err = at.List(ctx)
	return err
}

// TryFolder errs with one line when a path is no folder that can be listed.
func (p *Places) TryFolder(ctx context.Context, path string) error {
	at, err := p.open(path)
	if err != nil {
		return err
	}
	defer at.Close()
	_, err = at.List(ctx)
	return err
}

// at does work in a place while no pass is at work.
func (p *Places) at(address string, work func(place.Place) error) error {
	unlock, err := p.lock(true)
	if err != nil {
		return err
	}
	defer unlock()
	at, err := p.open(address)
	if err != nil {
		return err
	}
	defer at.Close()
	return work(at)
}

// Standing is how a build stands in a place as far as this device remembers.
type Standing struct {
	buildsync.Row
	Known bool // a pass left both sides alike once; else There counts nothing
}

// Standing lists the builds of a shelf. A build counts as synced when nothing was kept in it since a
// pass read all of it back from the place.
func (p *Places) Standing(shelf *logbook.Shelf, address string) ([]Standing, error) {
	name, err := nameOf(address)
	if err != nil {
		return nil, err
	}
	list, err := shelf.List()
	if err != nil {
		return nil, err
	}
	held, err := shelf.Builds(nil).Held()
	if err != nil {
		return nil, err
	}
	stamps := map[measure.ID]buildsync.Held{}
	for _, h := range held {
		stamps[h.ID] = h
	}
	memory := p.recall(name)
	out := make([]Standing, len(list))
	for i, l := range list {
		last, known, same := memory.Last(stamps[l.ID])
		last.ID, last.Title, last.Here = l.ID, l.Title, l.Readings
		last.Synced = known && same && last.Synced
		out[i] = Standing{last, known}
	}
	return out, nil
}
