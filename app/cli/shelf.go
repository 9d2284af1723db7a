package cli

import (
	"errors"
	"io/fs"
	"strings"

	"yokebook/app/logbook"
	"yokebook/measure/merge"
)

// onShelf opens this device's store, does the work and closes it.
func (p Program) onShelf(work func(*logbook.Shelf) error) error {
	dir, err := p.Home()
	if err != nil {
		return err
	}
	s, err := logbook.OpenShelf(dir, p.Sources)
	var folder *fs.PathError
	if errors.As(err, &folder) {
		return writeError(dir, err)
	}
	if err != nil {
		return err
	}
	if err := work(s); err != nil {
		_ = s.Close() // the error that stopped the work is the one to tell
		return err
	}
	return s.Close()
}

// authored returns the sources with the id of this device, so that records name where they were
// made. A device without a store of its own writes records without one.
func (p Program) authored() logbook.Sources {
	src := p.Sources
	if src.Device != "" {
		return src
	}
	dir, err := p.Home()
	if err != nil {
		return src
	}
	if id, err := logbook.Device(dir, src.NewID); err == nil {
		src.Device = id
	}
	return src
}

// printReport tells what a person must look at after a merge.
func (p Program) printReport(r merge.Report) {
	if len(r.Conflicts) == 0 {
		return
	}
	p.say("cli.conflicts", len(r.Conflicts))
	for _, c := range r.Conflicts {
		ids := make([]string, len(c.IDs))
		for i, id := range c.IDs {
			ids[i] = string(id)
		}
		p.say("conflict."+string(c.Kind), c.Name, strings.Join(ids, ", "))
	}
}
