package sync

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/sync/place"
)

// roomForPages is how many bytes of files a pass keeps from looking at them until it works on their
// build; files beyond it are read a second time.
const roomForPages = 64 << 20

// arriving is how young a file that can't be read counts as still being written.
const arriving = 10 * time.Second

// page is a file that was read.
type page struct {
	build *measure.Build
	sum   string
}

func sumOf(data []byte) string {
	s := sha256.Sum256(data)
	return hex.EncodeToString(s[:])
}

// look finds out which build a file of the place holds, from memory or by reading it; twice says that
// the place has listed the name before.
func (r *run) look(ctx context.Context, f place.File, twice bool) error {
	old, remembered := r.memory.Files[f.Name]
	if remembered && !twice {
		r.met++
	}
	if remembered && !r.All && old.known(f, r.now) {
		r.report.Skipped++
		r.note(f.Name, old)
		return nil
	}
	delete(r.memory.Files, f.Name)
	p, data, err := r.read(ctx, f.Name)
	s := seen{Size: f.Size, Stamp: f.Stamp, Settled: r.settled(f), Read: r.now, Sum: sumOf(data)}
	switch {
	case errors.Is(err, errUnreadable):
		if errors.Is(err, document.ErrFormat) {
			r.memory.Files[f.Name] = s // something else, and whole
		} else {
			r.fault(r.kindOf(f, err), f.Name, err)
		}
		return nil
	case errors.Is(err, place.ErrNone): // gone since
		return nil
	case errors.Is(err, place.ErrLarge):
		r.fault(Refused, f.Name, err)
		return nil
	case err != nil:
		return err
	}
	s.Build = p.build.ID
	r.memory.Files[f.Name] = s
	r.note(f.Name, s)
	if !remembered || old.Sum != s.Sum {
		// Noted in the memory itself: should the pass end before it comes to this build, the next one
		// must know that there is something to do.
		delete(r.memory.Builds, s.Build)
	}
	if r.room >= len(data) {
		r.room -= len(data)
		r.pages[f.Name] = p
	}
	return nil
}

// errUnreadable marks a file that was read from the place whole, or as it stands, and is no good build.
var errUnreadable = errors.New("is no whole build file")

// unreadable is the reason in a line of its own.
type unreadable struct {
	name string
	err  error
}

func (u unreadable) Error() string   { return fmt.Sprintf("%s %v", u.name, u.err) }
func (u unreadable) Unwrap() []error { return []error{u.err, errUnreadable} }

// read reads a file and the build in it. Only what the place itself does not give is no errUnreadable.
func (r *run) read(ctx context.Context, name string) (page, []byte, error) {
	data, err := r.Place.Get(ctx, name)
	if err != nil {
		return page{}, nil, err
	}
	r.report.Read++
	b, _, err := document.Read(data)
	if err != nil {
		return page{}, data, unreadable{name, err}
	}
	return page{b, sumOf(data)}, data, nil
}

// note counts a file to its build.
func (r *run) note(name string, s seen) {
	if s.Build == "" {
		return
	}
	r.noted = append(r.noted, noted{name, s.Build})
	switch {
	case r.mine(name, s.Build):
		r.ours = append(r.ours, own{s.Build, s.Sum})
	case !place.IsOurs(name):
		r.report.Copies = append(r.report.Copies, name)
	}
}

// noted is a file that holds a build.
type noted struct {
	name  string
	build measure.ID
}

// own is this device's own file of a build.
type own struct {
	build measure.ID
	sum   string
}

// sumOfOwn is the sum of this device's own file of a build as it was read last. Builds are asked for in
// their order, so what was asked for, and what comes before it, is cut off.
func (r *run) sumOfOwn(id measure.ID) (sum string, there bool) {
	for len(r.ours) > 0 && r.ours[0].build < id {
		r.ours = r.ours[1:]
	}
	if len(r.ours) > 0 && r.ours[0].build == id {
		return r.ours[0].sum, true
	}
	name := r.ownName(id) // in capitals, or not there
	return r.memory.Files[name].Sum, r.isListed(name)
}

// mine reports this device's own file of a build: the most frequent case, found without reading the name.
func (r *run) mine(name string, id measure.ID) bool {
	n := len(id)
	return len(name) == n+1+len(r.Device)+len(".json") && name[:n] == string(id) && name[n] == '.' &&
		name[n+1:n+1+len(r.Device)] == string(r.Device) && name[n+1+len(r.Device):] == ".json"
}

// filesOf lists the files of a build. They are sorted out when they are asked for first, which a pass
// without news never does.
func (r *run) filesOf(id measure.ID) []string {
	if r.files == nil {
		r.files = map[measure.ID][]string{}
		for _, n := range r.noted {
			r.files[n.build] = append(r.files[n.build], n.name)
		}
	}
	return r.files[id]
}

// settled reports a file so old that a change after this reading shows in its stamp.
func (r *run) settled(f place.File) bool {
	return !f.Modified.IsZero() && r.there.Sub(f.Modified) >= settles
}

// kindOf tells a file that is still being written from a bad one.
func (r *run) kindOf(f place.File, err error) Kind {
	age := r.there.Sub(f.Modified)
	if f.Modified.IsZero() && errors.Is(err, document.ErrCut) || age > -arriving && age < arriving {
		return Arriving
	}
	return Refused
}
