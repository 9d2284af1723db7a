package store

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"yokebook/measure"
	"yokebook/measure/store/disk"
)

// What was damaged is kept in aside/<build id>/: each file under a number and the name that it had,
// and beside it, under the same number, the report of what was recovered. Nothing here is ever
// removed by this program, and nothing is read from but the reports.
const (
	noteSuffix = "-report.json"
	noteFormat = "yokebook-aside/1"
)

func (s *Store) asideDir(id measure.ID) string { return filepath.Join(s.dir, "aside", string(id)) }

// asideNames lists what is set aside of a build, sorted, and the number for the next.
func (s *Store) asideNames(id measure.ID) (names []string, next int, err error) {
	entries, err := s.list(s.asideDir(id))
	if err != nil {
		return nil, 0, err
	}
	for _, e := range entries {
		number, _, _ := strings.Cut(e.Name(), "-")
		if n, err := strconv.Atoi(number); err == nil && n >= next {
			next = n
		}
		names = append(names, e.Name())
	}
	return names, next + 1, nil
}

// copyAside keeps the bytes of a file that is about to be replaced, under a name in aside, and
// returns the name. A second name is enough where the system has links; else it is a copy. What an
// earlier try has kept already is not kept twice.
func (s *Store) copyAside(id measure.ID, path string, data []byte) (string, error) {
	names, next, err := s.asideNames(id)
	if err != nil {
		return "", err
	}
	base, dir := filepath.Base(path), s.asideDir(id)
	for i := len(names) - 1; i >= 0; i-- {
		if strings.HasSuffix(names[i], base) {
			if have, err := disk.Read(s.fs, filepath.Join(dir, names[i]), maxBytes); err == nil && bytes.Equal(have, data) {
				return names[i], nil
			}
			break
		}
	}
	if err := s.makeDir(dir); err != nil {
		return "", err
	}
	name := fmt.Sprintf("%06d-%s", next, base)
	to := filepath.Join(dir, name)
	if err := s.fs.Link(path, to); err == nil {
		err := s.fs.SyncDir(dir)
		return name, err
	}
	return name, disk.Create(s.fs, to, data)
}

// setSnapshotAside moves a snapshot out of the way.
func (s *Store) setSnapshotAside(id measure.ID, snap snapshot) error {
	_, next, err := s.asideNames(id)
	if err != nil {
		return err
	}
	if err := s.makeDir(s.asideDir(id)); err != nil {
		return err
	}
	to := filepath.Join(s.asideDir(id), fmt.Sprintf("%06d-%s", next, snap.name))
	if err := s.fs.Rename(filepath.Join(s.snapshotDir(id), snap.name), to); err != nil {
		return err
	}
	return disk.Both(s.fs.SyncDir(s.asideDir(id)), s.fs.SyncDir(s.snapshotDir(id)))
}

// writeNote puts the report beside what was set aside under name.
func (s *Store) writeNote(r Report, name string) error {
	data, err := json.MarshalIndent(r, "", " ")
	if err != nil {
		return err
	}
	number, _, _ := strings.Cut(name, "-")
	return disk.Replace(s.fs, filepath.Join(s.asideDir(r.Build), number+noteSuffix), append(data, '\n'))
}

// Past returns the reports of earlier repairs of a build, oldest first. A report that is damaged or
// was taken away is left out; it only tells, and nothing rests on it.
func (s *Store) Past(id measure.ID) ([]Report, error) {
	names, _, err := s.asideNames(id)
	if err != nil {
		return nil, fmt.Errorf("store: %w", err)
	}
	var out []Report
	for _, name := range names {
		if !strings.HasSuffix(name, noteSuffix) {
			continue
		}
		data, err := disk.Read(s.fs, filepath.Join(s.asideDir(id), name), maxValue)
		if err != nil {
			continue
		}
		var r Report
		if json.Unmarshal(data, &r) == nil && r.Format == noteFormat && r.Build == id {
			out = append(out, r)
		}
	}
	return out, nil
}

// list is List for a folder that may be missing.
func (s *Store) list(dir string) ([]os.DirEntry, error) { return orNone(s.fs.List(dir)) }

// orNone takes a missing folder for an empty one.
func orNone(entries []os.DirEntry, err error) ([]os.DirEntry, error) {
	if os.IsNotExist(err) {
		return nil, nil
	}
	return entries, err
}

// makeDir makes a folder of a build and makes its name last.
func (s *Store) makeDir(dir string) error {
	if _, err := s.fs.Stat(dir); err == nil {
		return nil
	}
	if err := s.fs.MakeDir(dir); err != nil {
		return err
	}
	return disk.Both(s.fs.SyncDir(filepath.Dir(dir)), s.fs.SyncDir(s.dir))
}
