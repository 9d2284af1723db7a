package sync

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"strings"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/sync/place"
)

// side is a build on its way through a pass.
type side struct {
	id    measure.ID
	here  *measure.Build // as this device has it; nil: not yet
	stamp string
	there *measure.Build // all files of the place united; nil: none could be read
	own   string         // sum of this device's file as it was read; "" when it was not there
	whole bool           // nothing of what the place has is missing here
	all   *measure.Build // both sides united
	row   Row
}

// build brings one build up to date on both sides, or says from memory how it stands. It errs when
// the place is gone; everything else is noted as a fault.
func (r *run) build(ctx context.Context, id measure.ID) error {
	if m, ok := r.memory.Builds[id]; ok && r.unchanged(id, m) {
		r.report.Builds = append(r.report.Builds, m.Row)
		return nil
	}
	delete(r.memory.Builds, id)
	s := &side{id: id, row: Row{ID: id}}
	if err := r.gather(ctx, s); err != nil {
		return err
	}
	var err error
	if s.here, s.stamp, err = r.Builds.Read(id); err != nil && !errors.Is(err, ErrNotHeld) {
		r.fault(Here, string(id), err)
		return nil
	}
	r.takeIn(s)
	if s.here == nil {
		return nil
	}
	err = r.sendOut(ctx, s)
	r.conclude(s)
	return err
}

// unchanged reports a build of which nothing changed on either side since the pass that is remembered.
func (r *run) unchanged(id measure.ID, m row) bool {
	if r.All || m.Stamp == "" || r.held[id] != m.Stamp {
		return false
	}
	sum, there := r.sumOfOwn(id)
	return there && sum == m.Own
}

// ownName is the name of this device's file of a build as the place lists it: a place that does not
// tell letters apart by case may show it in capitals.
func (r *run) ownName(id measure.ID) string {
	own := place.FileName(id, r.Device)
	if r.isListed(own) {
		return own
	}
	for _, name := range r.filesOf(id) {
		if strings.EqualFold(name, own) {
			return name
		}
	}
	return own
}

// gather unites all files of the build in the place.
func (r *run) gather(ctx context.Context, s *side) error {
	own := r.ownName(s.id)
	var builds []*measure.Build
	for _, name := range r.filesOf(s.id) {
		p, ok := r.pages[name]
		if !ok {
			var err error
			p, _, err = r.read(ctx, name)
			if errors.Is(err, errUnreadable) || errors.Is(err, place.ErrNone) || errors.Is(err, place.ErrLarge) ||
				err == nil && p.build.ID != s.id { // changed since it was looked at: the next pass will see it
				delete(r.memory.Files, name)
				continue
			}
			if err != nil {
				return err
			}
		}
		delete(r.pages, name)
		builds = append(builds, p.build)
		if name == own {
			s.own = p.sum
		}
	}
	if len(builds) == 0 {
		return nil
	}
	there, _, err := merge.Builds(builds...)
	if err != nil {
		r.fault(Refused, string(s.id), err)
		return nil
	}
	s.there = there
	return nil
}

// takeIn takes what the place has and this device has not.
func (r *run) takeIn(s *side) {
	s.whole, s.all = true, s.here
	more, err := r.union(s)
	if err != nil {
		s.whole = false
		r.fault(Refused, string(s.id), fmt.Errorf("build %s: its files can't be united, so none was taken: %w", s.id, err))
		return
	}
	if !more {
		return
	}
	taken, stamp, err := r.Builds.Take(s.all)
	if err != nil {
		s.whole, s.row.Came = false, merge.Counts{}
		r.fault(Here, string(s.id), err)
		return
	}
	s.here, s.stamp = taken, stamp
}

// union unites both sides, counts what is only on one, and tells whether the place has more than this
// device. It errs when the result is no build that could be written: then a file is hostile.
func (r *run) union(s *side) (more bool, err error) {
	sides := make([]*measure.Build, 0, 2)
	for _, b := range []*measure.Build{s.here, s.there} {
		if b != nil {
			sides = append(sides, b)
		}
	}
	if len(sides) == 0 {
		return false, nil
	}
	all, report, err := merge.Builds(sides...)
	if err != nil {
		return false, err
	}
	if s.here == nil {
		s.row.Came = report.Sources[0].Held
	} else {
		s.row.Went = report.Sources[0].Only
	}
	if len(sides) == 2 {
		s.row.Came = report.Sources[1].Only
	}
	data, err := document.Write(all)
	if err != nil {
		return false, err
	}
	s.all, s.row.Conflicts = all, len(report.Conflicts)
	if s.here == nil || s.there == nil {
		return s.here == nil, nil
	}
	before, err := document.Write(s.here)
	return err == nil && !bytes.Equal(data, before), err
}
