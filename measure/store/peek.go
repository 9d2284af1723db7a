package store

import (
	"errors"

	"yokebook/measure"
	"yokebook/measure/store/disk"
)

// Peek reads a build without taking its lock and without writing anything, also while another
// process has it open; it may then miss the record being written, and says nothing of that. What is
// damaged is made good in memory. It errs with ErrNoBuild or ErrDamaged.
func (s *Store) Peek(id measure.ID) (*measure.Build, Report, error) {
	x, err := s.look(id, false)
	if err != nil {
		return nil, Report{}, err
	}
	return x.build, x.report, nil
}

// look examines without the lock: a last record that is cut off may be one that is being written.
func (s *Store) look(id measure.ID, all bool) (*exam, error) {
	if err := s.need(id); err != nil {
		return nil, err
	}
	x, err := s.examine(id, all)
	if err != nil {
		return nil, err
	}
	r := &x.report
	if r.Places == 1 && r.Has(Unfinished) && r.Behind+r.Restored == 0 {
		r.Faults, r.Places, r.Snapshot = nil, 0, ""
	}
	return x, nil
}

// Verification is what Verify found of one build.
type Verification struct {
	Title string
	Now   Report   // as it is
	Past  []Report // earlier repairs whose files are still kept aside
	Held  string   // who has it open; it was then read as it stood
}

// State is the worst of now and of what earlier repairs could not bring back.
func (v Verification) State() State {
	if s := v.Now.State(); s != IsWhole {
		return s
	}
	for _, r := range v.Past {
		if r.State() == IsSetAside {
			return IsSetAside
		}
	}
	return IsWhole
}

// Verify reads everything of a build back, its snapshots and reports included, and changes nothing.
// Records that an earlier repair named as lost and that are there again are no longer lost. It errs
// with ErrNoBuild or ErrDamaged.
func (s *Store) Verify(id measure.ID) (Verification, error) {
	if err := s.need(id); err != nil {
		return Verification{}, err
	}
	var v Verification
	var held heldError
	l, err := s.takeLock(id)
	switch {
	case errors.As(err, &held):
		v.Held = held.by
	case err != nil:
		return v, err
	}
	x, err := s.verify(id, v.Held == "")
	if err = disk.Both(err, l.release()); err != nil {
		return v, err
	}
	v.Title, v.Now = x.build.Title, x.report
	if v.Past, err = s.Past(id); err != nil {
		return v, err
	}
	have := keysOfBuild(x.build)
	for i := range v.Past {
		v.Past[i].Lost = without(v.Past[i].Lost, have)
	}
	return v, nil
}

func (s *Store) verify(id measure.ID, alone bool) (*exam, error) {
	if alone {
		return s.examine(id, true)
	}
	return s.look(id, true)
}

func without(list []string, have map[string]bool) []string {
	var out []string
	for _, key := range list {
		if !have[key] {
			out = append(out, key)
		}
	}
	return out
}
