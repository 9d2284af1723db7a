package store

import (
	"bytes"
	"errors"
	"fmt"
	"path/filepath"
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/store/disk"
)

// mend makes a build's file whole again, under its lock: the damaged one is kept aside with the
// report, then a new one with everything that is good takes its place at once. Damaged snapshots
// are moved aside too. A disk that does not take the copy leaves everything as it was.
func (s *Store) mend(x *exam) error {
	if x.report.Places == 0 {
		return nil
	}
	x.report.At = s.now().UTC().Format(time.RFC3339)
	if x.mend() {
		if err := s.mendFile(x); err != nil {
			return fmt.Errorf("build %s: %w: %w; nothing was changed, make room and open it again", x.report.Build, ErrWrite, err)
		}
	}
	for _, snap := range x.torn {
		if err := s.setSnapshotAside(x.report.Build, snap); err != nil {
			return fmt.Errorf("build %s: %s: %w: %w", x.report.Build, snap.name, ErrWrite, err)
		}
	}
	return nil
}

func (s *Store) mendFile(x *exam) error {
	id := x.report.Build
	temp, err := s.stage(x.build, x.keep)
	if err != nil {
		return err
	}
	if x.data != nil {
		name, err := s.copyAside(id, s.path(id), x.data)
		if err == nil {
			x.report.KeptAside = filepath.ToSlash(filepath.Join("aside", string(id), name))
			err = s.writeNote(x.report, name)
		}
		if err != nil {
			return disk.Both(err, s.fs.Remove(temp))
		}
	}
	return disk.Settle(s.fs, temp, s.path(id))
}

// stage writes the file of a build beside its place, synced and checked: what a look at it finds is
// the build. It returns the name.
func (s *Store) stage(b *measure.Build, keep []stored) (string, error) {
	data, err := dump(b, keep)
	if err != nil {
		return "", err
	}
	img := scan(data)
	if !img.whole() {
		return "", errors.New("its records can't be written so that they could be read again")
	}
	again, err := load(img.records, b.ID)
	if err == nil {
		err = again.layout()
	}
	if err == nil {
		err = sameBuild(again.build, b)
	}
	if err != nil {
		return "", err
	}
	temp := s.path(b.ID) + ".new"
	return temp, disk.Stage(s.fs, temp, data, 0o644)
}

// dump writes all records of a build as its file holds them.
func dump(b *measure.Build, keep []stored) ([]byte, error) {
	plain, err := OfPlain(b)
	if err != nil {
		return nil, err
	}
	all := []Record{{Key: string(kindMeta), body: metaOf(b.ID)}, plain, {Key: plainCopy, body: plain.body}}
	all = append(all, RecordsOf(b)...)
	for _, r := range keep {
		all = append(all, Record{Key: r.key, body: r.body})
	}
	var out []byte
	for _, r := range all {
		out = appendFrame(out, r.Key, r.sealed())
	}
	return out, nil
}

// sameBuild errs when two builds would not be written alike.
func sameBuild(a, b *measure.Build) error {
	one, err := document.Sum(a)
	if err != nil {
		return err
	}
	two, err := document.Sum(b)
	if err == nil && one != two {
		err = errors.New("it was read back differently")
	}
	return err
}

// compactFrom is the size from which a file is compacted, when more than half of it is records that
// later ones stand in for.
const compactFrom = 256 << 10

// compact writes a file anew that is mostly old versions of the plain members. It is done at opening
// only, by the same steps as mend; the file must be whole. Every record stays.
func (s *Store) compact(x *exam) error {
	live := 0
	for _, r := range x.image.latest() {
		live += len(appendFrame(nil, r.key, Record{Key: r.key, body: r.body}.sealed()))
	}
	if len(x.data) < compactFrom || 2*live > len(x.data) {
		return nil
	}
	data := make([]byte, 0, live)
	for _, r := range x.image.latest() {
		data = appendFrame(data, r.key, Record{Key: r.key, body: r.body}.sealed())
	}
	if !sameRecords(scan(data), x.image) {
		return nil // never seen; the long file is good
	}
	temp := s.path(x.report.Build) + ".new"
	if err := disk.Stage(s.fs, temp, data, 0o644); err != nil {
		return err
	}
	if err := disk.Settle(s.fs, temp, s.path(x.report.Build)); err != nil {
		return err
	}
	x.data, x.image = data, scan(data)
	return nil
}

// sameRecords reports that two files hold the same keys with the same bodies.
func sameRecords(a, b image) bool {
	one, two := a.latest(), b.latest()
	if !a.whole() || !b.whole() || len(one) != len(two) {
		return false
	}
	for i := range one {
		if one[i].key != two[i].key || !bytes.Equal(one[i].body, two[i].body) {
			return false
		}
	}
	return true
}
