package store

import (
	"fmt"
	"path/filepath"

	"yokebook/measure"
)

// How many snapshots stay: the newest ones, and the newest of each of the latest days and weeks on
// which there were any.
const (
	keepLast   = 5
	keepDaily  = 7
	keepWeekly = 4
)

// surplus returns the snapshots that no generation needs. Snapshots come newest first, by number: a
// clock that was wrong for a while makes days of its own and pushes nothing newer out.
func surplus(newestFirst []snapshot) []snapshot {
	days, weeks := map[string]bool{}, map[string]bool{}
	var out []snapshot
	for i, snap := range newestFirst {
		day := snap.at.UTC().Format("2006-01-02")
		year, number := snap.at.UTC().ISOWeek()
		week := fmt.Sprint(year, "-", number)
		stays := i < keepLast
		if !days[day] && len(days) < keepDaily {
			days[day], stays = true, true
		}
		if !weeks[week] && len(weeks) < keepWeekly {
			weeks[week], stays = true, true
		}
		if !stays {
			out = append(out, snap)
		}
	}
	return out
}

// thin removes surplus snapshots of a build that has just been written. Nothing is thrown away: one
// that is damaged, or holds a record that the build has not, is set aside instead.
func (s *Store) thin(b *measure.Build, newestFirst []snapshot) error {
	var have map[string]bool
	for _, snap := range surplus(newestFirst) {
		if have == nil {
			have = keysOfBuild(b)
		}
		old, _, err := s.readSnapshot(b.ID, snap)
		if err != nil || !within(old, have) {
			if err := s.setSnapshotAside(b.ID, snap); err != nil {
				return err
			}
			continue
		}
		if err := s.fs.Remove(filepath.Join(s.snapshotDir(b.ID), snap.name)); err != nil {
			return err
		}
	}
	return nil
}

func keysOfBuild(b *measure.Build) map[string]bool {
	out := map[string]bool{}
	for _, r := range RecordsOf(b) {
		out[r.Key] = true
	}
	return out
}

// within reports that every record of a build is among the keys.
func within(b *measure.Build, keys map[string]bool) bool {
	for _, r := range RecordsOf(b) {
		if !keys[r.Key] {
			return false
		}
	}
	return true
}
