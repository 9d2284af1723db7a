package store

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"

	"yokebook/measure"
	"yokebook/measure/merge"
	"yokebook/measure/store/disk"
)

// exam is what a look at everything that there is of one build finds. Looking changes nothing.
type exam struct {
	data   []byte // the file; nil when it is missing
	image  image
	build  *measure.Build // what is served: all that is good, from wherever
	keep   []stored       // good records that this version can't read
	report Report
	torn   []snapshot // damaged snapshots
}

// mend reports that the file must be written anew before it is opened.
func (x *exam) mend() bool {
	return !x.image.whole() || x.report.Has(Short, Missing, Other)
}

// examine reads a build's file and its snapshots. With all, every snapshot is read even when the
// file is whole. It errs with ErrDamaged when nothing that is good says what the build is.
func (s *Store) examine(id measure.ID, all bool) (*exam, error) {
	x := &exam{report: Report{Format: noteFormat, Build: id}}
	name := filepath.Base(s.path(id))
	var err error
	x.data, err = disk.Read(s.fs, s.path(id), maxBytes)
	switch {
	case errors.Is(err, os.ErrNotExist):
		x.report.found(Missing, name, 0)
	case errors.Is(err, disk.ErrLarge):
		return nil, fmt.Errorf("store: %s %w: it is larger than a build can be", name, ErrDamaged)
	case err != nil:
		return nil, fmt.Errorf("store: %w", err)
	}
	x.image = scan(x.data)
	for _, g := range x.image.gaps {
		x.report.found(g.kind, name, g.at)
	}
	if x.data != nil && x.report.Places == 0 && !x.image.whole() {
		x.report.found(Damaged, name, 0) // the record that begins every file is gone
	}
	own, other := load(x.image.records, id)
	if other != nil { // nothing of it is this build's
		x.report.found(Other, name, 0)
		x.image = image{}
		if own, err = load(nil, id); err != nil {
			return nil, err
		}
	}
	copies, err := s.copies(x, all || x.mend())
	if err != nil {
		return nil, err
	}
	if err := x.unite(own, copies); err != nil {
		if other != nil {
			err = other
		}
		return nil, fmt.Errorf("store: %s %w: %w", name, ErrDamaged, err)
	}
	return x, nil
}

// copies reads the good snapshots that are needed: the newest, or all.
func (s *Store) copies(x *exam, all bool) ([]*measure.Build, error) {
	snaps, err := s.snapshots(x.report.Build)
	if err != nil {
		return nil, fmt.Errorf("store: %w", err)
	}
	var out []*measure.Build
	for _, snap := range snaps {
		b, _, err := s.readSnapshot(x.report.Build, snap)
		if err != nil {
			x.torn = append(x.torn, snap)
			x.report.found(Snapshot, snap.name, 0)
			continue
		}
		if len(out) == 0 {
			x.report.Snapshot = snap.name
		}
		if out = append(out, b); !all {
			break
		}
	}
	return out, nil
}

// unite makes the build from the file's own records and the snapshots, and counts what came from
// where. Records are never taken away, so a union can only bring back.
func (x *exam) unite(own *loading, copies []*measure.Build) error {
	x.keep = own.unknown
	for _, r := range own.unknown {
		x.report.Unknown = append(x.report.Unknown, r.key)
	}
	wrong := own.layout()
	if wrong != nil && len(copies) > 0 {
		x.lend(own, copies[0])
		wrong = own.layout()
	}
	if wrong != nil {
		return wrong
	}
	x.build = own.build
	if enough, err := own.holds(copies); err != nil || !enough {
		if err == nil {
			err = x.bringBack(own, copies)
		}
		if err != nil {
			return err
		}
	}
	x.count(own, len(copies) > 0)
	return nil
}

// holds reports that a file has every record and the plain members of all the copies, so that there
// is nothing to bring back: the usual case, and cheaper to see than a merge.
func (l *loading) holds(copies []*measure.Build) (bool, error) {
	have := keysOfBuild(l.build)
	for _, b := range copies {
		if !l.plain || !within(b, have) {
			return false, nil
		}
		if same, err := samePlain(l.build, b); err != nil || !same {
			return false, err
		}
	}
	return true, nil
}

// lend gives a file that lost its plain members those of a snapshot.
func (x *exam) lend(own *loading, from *measure.Build) {
	b := *from
	b.Readings, b.Strikes, b.Skips, b.Heads = own.build.Readings, own.build.Strikes, own.build.Skips, own.build.Heads
	own.build = &b
}

// bringBack merges the snapshots in where they have something that the file has not.
func (x *exam) bringBack(own *loading, copies []*measure.Build) error {
	alone, _, err := merge.Builds(own.build)
	if err != nil {
		return err
	}
	all, _, err := merge.Builds(append([]*measure.Build{own.build}, copies...)...)
	if err != nil {
		return err
	}
	more, err := differ(alone, all)
	if err != nil || !more && own.plain {
		return err
	}
	x.build = all
	if !x.mend() {
		x.report.found(Short, string(x.report.Build)+".db", len(x.data))
	}
	return nil
}

// differ reports that b has records that a has not, or other plain members.
func differ(a, b *measure.Build) (bool, error) {
	if !within(b, keysOfBuild(a)) {
		return true, nil
	}
	same, err := samePlain(a, b)
	return !same, err
}

func samePlain(a, b *measure.Build) (bool, error) {
	one, err := OfPlain(a)
	if err != nil {
		return false, err
	}
	two, err := OfPlain(b)
	return one.Equal(two), err
}

// count says which records of the build came from where, and which are lost.
func (x *exam) count(own *loading, copies bool) {
	r := &x.report
	late, whole := map[string]bool{}, map[string]bool{}
	for _, rec := range x.image.records {
		if _, before := late[rec.key]; !before {
			late[rec.key] = rec.late
		}
		whole[rec.key] = whole[rec.key] || !rec.rescued
	}
	have := keysOfBuild(x.build)
	for key := range have {
		switch {
		case !own.keys[key]:
			r.Restored++
		case late[key]:
			r.Behind++
			r.InFile++
		default:
			r.InFile++
		}
	}
	for key := range own.keys {
		have[key] = true // those that this version can't read are kept too
	}
	have[string(kindPlain)], have[plainCopy] = own.plain || copies, own.plain || copies
	have[string(kindMeta)] = true // it says nothing that the file's name does not
	for _, g := range x.image.gaps {
		r.Lost = append(r.Lost, g.lost(have, whole)...)
		if g.kind == Damaged && len(g.keys)+len(g.rescued) == 0 {
			r.Nameless++
		}
	}
	// A place of which nothing can be read held what a snapshot brought back.
	r.Nameless = max(0, r.Nameless-r.Restored)
	if !copies || r.Places == 0 {
		r.Snapshot = ""
	}
}

// lost lists the keys of a damaged place whose records are good nowhere. A key may itself be damaged:
// a record that was rescued from here under a key that can't be read here accounts for one.
func (g gap) lost(have, whole map[string]bool) []string {
	if g.kind != Damaged {
		return nil
	}
	misread := 0
	for _, key := range g.rescued {
		if !slices.Contains(g.keys, key) && !whole[key] {
			misread++
		}
	}
	var out []string
	for _, key := range g.keys {
		if have[key] {
			continue
		}
		if misread > 0 {
			misread--
			continue
		}
		out = append(out, key)
	}
	return out
}
