package sync

import (
	"context"
	"errors"
	"fmt"
	"time"

	"yokebook/measure/document"
	"yokebook/measure/merge"
	"yokebook/sync/place"
)

// rewrites is how often a file is written that the place gives back differently.
const rewrites = 3

// sendOut writes this device's file of a build unless it is there already.
func (r *run) sendOut(ctx context.Context, s *side) error {
	data, err := document.Write(s.here)
	if err != nil {
		r.fault(Here, string(s.id), fmt.Errorf("build %s: %w", s.id, err))
		return nil
	}
	own, sum := r.ownName(s.id), sumOf(data)
	if s.own == sum {
		s.row.Synced = s.whole
		return nil
	}
	if r.shut != nil {
		return nil
	}
	switch err := r.write(ctx, own, data); {
	case err == nil:
		r.report.Written++
		s.own = sum
		s.row.Synced = s.whole
		r.memory.Files[own] = seen{Build: s.id, Sum: sum} // its stamp is learned at the next pass
		return nil
	case errors.Is(err, place.ErrFull), errors.Is(err, place.ErrReadOnly):
		r.shut = err // said once; what is in the place can still be taken in
		r.fault(There, r.report.Place, err)
		return nil
	case errors.Is(err, place.ErrUnlike), errors.Is(err, place.ErrLarge):
		r.fault(There, own, err)
		return nil
	default:
		return err
	}
}

// write replaces a file, again when it is read back differently: some servers need a moment.
func (r *run) write(ctx context.Context, name string, data []byte) error {
	pause := time.Second
	for try := 1; ; try++ {
		err := place.Replace(ctx, r.Place, name, data)
		if !errors.Is(err, place.ErrUnlike) || try == rewrites {
			return err
		}
		if r.Wait != nil {
			if waitErr := r.Wait(ctx, pause); waitErr != nil {
				return err
			}
		}
		pause *= 2
	}
}

// conclude says how the build stands now, and remembers it when both sides are alike.
func (r *run) conclude(s *side) {
	s.row.Title = s.here.Title
	s.row.Here = inUse(s.here)
	s.row.LastDevice, s.row.LastAt = latest(s.all)
	switch {
	case s.row.Synced:
		s.row.There = s.row.Here
	case s.there != nil:
		s.row.There = inUse(s.there)
	}
	if !s.row.Synced {
		s.row.Went = merge.Counts{}
	} else {
		r.memory.Builds[s.id] = row{Stamp: s.stamp, Own: s.own, Row: s.row}
	}
	r.report.Builds = append(r.report.Builds, s.row)
}
