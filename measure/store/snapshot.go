package store

import (
	"bytes"
	"fmt"
	"path/filepath"
	"sort"
	"strconv"
	"strings"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store/disk"
)

// A snapshot is a build file with its checksum, named by a number that counts up and by the time:
// snapshots/<build id>/000012-20260302T101500Z.json. The number orders them; the time only thins out.
type snapshot struct {
	name   string
	number int
	at     time.Time
}

const stampForm = "20060102T150405Z"

func (s *Store) snapshotDir(id measure.ID) string {
	return filepath.Join(s.dir, "snapshots", string(id))
}

// snapshots lists the snapshots of a build, newest first; none when there is no folder.
func (s *Store) snapshots(id measure.ID) ([]snapshot, error) {
	entries, err := s.list(s.snapshotDir(id))
	if err != nil {
		return nil, err
	}
	var out []snapshot
	for _, e := range entries {
		if snap, ok := snapshotOf(e.Name()); ok && e.Type().IsRegular() {
			out = append(out, snap)
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].number > out[j].number })
	return out, nil
}

func snapshotOf(name string) (snapshot, bool) {
	stem, isJSON := strings.CutSuffix(name, ".json")
	number, stamp, two := strings.Cut(stem, "-")
	n, err := strconv.Atoi(number)
	if !isJSON || !two || err != nil || n < 1 {
		return snapshot{}, false
	}
	at, err := time.Parse(stampForm, stamp)
	if err != nil {
		return snapshot{}, false
	}
	return snapshot{name, n, at}, true
}

// readSnapshot reads one snapshot and checks all of it. It errs when it is not as it was written.
func (s *Store) readSnapshot(id measure.ID, snap snapshot) (*measure.Build, []byte, error) {
	data, err := disk.Read(s.fs, filepath.Join(s.snapshotDir(id), snap.name), maxValue)
	if err != nil {
		return nil, nil, err
	}
	b, seal, err := document.Read(data)
	switch {
	case err != nil:
		return nil, nil, fmt.Errorf("%s: %w", snap.name, err)
	case seal != document.Whole:
		return nil, nil, fmt.Errorf("%s: has no sum", snap.name)
	case b.ID != id:
		return nil, nil, fmt.Errorf("%s: is of build %s", snap.name, b.ID)
	}
	return b, data, nil
}

// secure writes a snapshot of a build unless the newest one is just that, and thins out old ones. It
// returns the snapshots that were found damaged; they are left for the next repair.
func (s *Store) secure(b *measure.Build) error {
	data, err := document.Write(b)
	if err != nil {
		return fmt.Errorf("build %s: no snapshot: %w", b.ID, err)
	}
	snaps, err := s.snapshots(b.ID)
	if err != nil {
		return s.unsecured(b.ID, err)
	}
	number := 1
	if len(snaps) > 0 {
		number = snaps[0].number + 1
		if _, have, err := s.readSnapshot(b.ID, snaps[0]); err == nil && bytes.Equal(have, data) {
			return nil
		}
	}
	snap := snapshot{number: number, at: s.now().UTC()}
	snap.name = fmt.Sprintf("%06d-%s.json", number, snap.at.Format(stampForm))
	if err := s.writeSnapshot(b.ID, snap.name, data); err != nil {
		return s.unsecured(b.ID, err)
	}
	if err := s.thin(b, append([]snapshot{snap}, snaps...)); err != nil {
		return s.unsecured(b.ID, err)
	}
	return nil
}

func (s *Store) unsecured(id measure.ID, err error) error {
	return fmt.Errorf("build %s: the second copy %w: %w; the build itself is kept", id, ErrWrite, err)
}

func (s *Store) writeSnapshot(id measure.ID, name string, data []byte) error {
	dir := s.snapshotDir(id)
	if err := s.makeDir(dir); err != nil {
		return err
	}
	temp := filepath.Join(dir, "next.tmp")
	if err := disk.Stage(s.fs, temp, data, 0o644); err != nil {
		return err
	}
	return disk.Settle(s.fs, temp, filepath.Join(dir, name))
}
