package sync

import (
	"bytes"
	"context"
	"fmt"
	"maps"
	"slices"
	"time"

	"yokebook/measure/document"
)

// heal ends all partitions, lets everything arrive, and checks that two rounds make all alike.
func (f *fire) heal() error {
	for _, a := range f.actors {
		a.offline = false
	}
	for range 2 {
		for _, a := range f.actors {
			if err := f.pass(a, false); err != nil {
				return err
			}
		}
		f.deliverAll()
	}
	if err := f.alike(); err != nil {
		return err
	}
	return f.quiet()
}

// deliverAll brings the newest version of each device's own files to all.
func (f *fire) deliverAll() {
	if f.shared {
		return
	}
	for _, from := range f.actors {
		for _, name := range slices.Sorted(maps.Keys(from.versions)) {
			for _, to := range f.actors {
				if to != from {
					v := from.versions[name]
					to.folder.drop(name, v[len(v)-1])
				}
			}
		}
	}
}

// alike checks that all devices hold the same bytes and every acknowledged reading.
func (f *fire) alike() error {
	for _, a := range f.actors[1:] {
		if len(a.builds) != len(f.actors[0].builds) {
			return fmt.Errorf("device %s has %d builds and device %s %d", a.id, len(a.builds), f.actors[0].id, len(f.actors[0].builds))
		}
		for id, b := range a.builds {
			x, err := document.Write(b)
			if err != nil {
				return err
			}
			y, err := document.Write(f.actors[0].builds[id])
			if err != nil {
				return err
			}
			if !bytes.Equal(x, y) {
				return fmt.Errorf("build %s differs between devices %s and %s", id, a.id, f.actors[0].id)
			}
		}
	}
	for h, build := range f.kept {
		b := f.actors[0].builds[build]
		if b == nil || !hashes(b)[h] {
			return fmt.Errorf("an acknowledged reading of build %s is lost", build)
		}
	}
	return nil
}

// quiet checks that nothing more is written, and that a pass without news reads nothing but litter.
func (f *fire) quiet() error {
	for _, wait := range []time.Duration{0, time.Hour, time.Second} {
		f.now = f.now.Add(wait)
		for _, a := range f.actors {
			p := Pass{Place: a.folder, Builds: a.drawer, Device: a.id, Now: func() time.Time { return f.now.Add(a.skew) }}
			r, err := p.Run(context.Background(), a.memory)
			switch {
			case err != nil:
				return err
			case r.Written > 0:
				return fmt.Errorf("device %s still writes %d files when all are alike", a.id, r.Written)
			case wait == time.Second && a.folder.tells && r.Read != len(r.Faults):
				return fmt.Errorf("device %s reads %d files again when nothing changed", a.id, r.Read-len(r.Faults))
			}
			for _, row := range r.Builds {
				if !row.Synced || row.Here != row.There {
					return fmt.Errorf("device %s: all are alike, and build %s is said to have %d here, %d there", a.id, row.ID, row.Here, row.There)
				}
			}
			if err := f.claims(a, r); err != nil {
				return err
			}
		}
	}
	return nil
}
