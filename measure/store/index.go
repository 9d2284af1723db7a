package store

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"sync"
	"time"

	"yokebook/measure"
	"yokebook/measure/store/disk"
)

// IndexFormat is the format of index.json.
const IndexFormat = "yokebook-index/1"

// Row is what the list of builds shows of one build. It can be made again from the build at any time.
type Row struct {
	ID       measure.ID     `json:"id"`
	Title    string         `json:"title"`
	LastWork time.Time      `json:"last_work"`
	Readings int            `json:"readings"`
	Wanted   int            `json:"wanted"`
	Worst    string         `json:"worst"`
	Counts   map[string]int `json:"counts"`
	Aside    int            `json:"aside"`             // records known to be lost
	Report   Report         `json:"report,omitzero"`   // how the build was read back; zero where there is nothing to tell
	Damaged  string         `json:"damaged,omitempty"` // why the file can't be read
	Stamp    Stamp          `json:"stamp"`
	Stale    bool           `json:"-"` // the build's file has changed since the row was made, or there was none
}

// Stamp tells whether a build's file is still the one that a row was made from.
type Stamp struct {
	Bytes    int64 `json:"bytes"`
	Modified int64 `json:"modified"` // ns since 1970
}

// Summarise makes the row of a build: everything but ID, Aside, Damaged and Stamp.
type Summarise func(b *measure.Build) Row

type indexFile struct {
	Format string `json:"format"`
	Builds []Row  `json:"builds"`
}

// Index returns a row for each build in the store, sorted by id. Rows come from index.json where
// the build's file has not changed since; the others are made by summarise from a read-only look at
// the build. A missing or damaged index.json is made anew. It errs when the folder can't be read; an
// index that can't be written is no error, it is only slower the next time.
func (s *Store) Index(summarise Summarise) ([]Row, error) {
	return s.IndexWhile(func() bool { return true }, summarise)
}

// IndexWhile is Index that looks at a further build only while goOn says so. The rows of the others
// are Stale: as they were, or empty but for the id.
func (s *Store) IndexWhile(goOn func() bool, summarise Summarise) ([]Row, error) {
	ids, err := s.IDs()
	if err != nil {
		return nil, err
	}
	path, old := s.paths(), s.readIndex()
	rows := make([]Row, 0, len(ids))
	gone, made := len(old), false
	for _, id := range ids {
		stamp, err := s.stamp(path(id))
		if err != nil {
			continue // gone since the folder was listed
		}
		row, ok := old[id]
		if ok {
			gone--
		}
		switch {
		case ok && row.Stamp == stamp:
		case goOn():
			row, made = s.row(id, stamp, summarise), true
		default:
			row.ID, row.Stale = id, true
		}
		rows = append(rows, row)
	}
	if made || gone > 0 {
		_ = s.writeIndex(rows)
	}
	return rows, nil
}

// row reads a build and sums it up. The stamp was taken before, so that a record written meanwhile
// makes the row stale and not wrong.
func (s *Store) row(id measure.ID, stamp Stamp, summarise Summarise) Row {
	b, report, err := s.Peek(id)
	if err != nil {
		return Row{ID: id, Damaged: err.Error(), Counts: map[string]int{}, Stamp: stamp}
	}
	row := summarise(b)
	row.ID, row.Aside, row.Stamp = id, len(report.Lost)+report.Nameless, stamp
	if report.Places+report.Restored+len(report.Unknown) > 0 {
		row.Report = report // of 2,000 whole builds they would be half of the file that every start reads
	}
	return row
}

// stamp looks at a build's file. One that is missing has no stamp, and its row no cause to change.
func (s *Store) stamp(path string) (Stamp, error) {
	info, err := s.fs.Stat(path)
	if errors.Is(err, os.ErrNotExist) {
		return Stamp{}, nil
	}
	if err != nil {
		return Stamp{}, err
	}
	return Stamp{Bytes: info.Size(), Modified: info.ModTime().UnixNano()}, nil
}

// readIndex returns the rows of index.json; none when it is missing, damaged or of another format.
// They are kept until index.json changes; the caller changes none of them.
func (s *Store) readIndex() map[measure.ID]Row {
	var stamp Stamp
	if info, err := s.fs.Stat(s.indexPath()); err == nil {
		stamp = Stamp{Bytes: info.Size(), Modified: info.ModTime().UnixNano()}
	}
	s.index.Lock()
	defer s.index.Unlock()
	if s.index.rows == nil || s.index.stamp != stamp {
		s.index.rows, s.index.stamp = s.parseIndex(), stamp
	}
	return s.index.rows
}

// indexCache holds the rows of index.json as they were read last. Rows that are out of date by then
// are told by the stamps of their builds, as those of the file are.
type indexCache struct {
	sync.Mutex
	stamp Stamp
	rows  map[measure.ID]Row
}

func (s *Store) parseIndex() map[measure.ID]Row {
	rows := map[measure.ID]Row{}
	data, err := disk.Read(s.fs, s.indexPath(), maxBytes)
	if err != nil {
		return rows
	}
	var f indexFile
	if err := json.Unmarshal(data, &f); err != nil || f.Format != IndexFormat {
		return rows
	}
	for _, r := range f.Builds {
		rows[r.ID] = r
	}
	return rows
}

// writeIndex writes the rows. One that was never made is left out, so that it is made the next time.
func (s *Store) writeIndex(rows []Row) error {
	made := slices.DeleteFunc(slices.Clone(rows), func(r Row) bool { return r.Stale && r.Stamp == Stamp{} })
	data, err := json.Marshal(indexFile{Format: IndexFormat, Builds: made})
	if err != nil {
		return fmt.Errorf("store: index: %w", err)
	}
	s.index.Lock()
	defer s.index.Unlock()
	s.index.rows = nil // the clock of the file may not have moved on
	return disk.Replace(s.fs, s.indexPath(), append(data, '\n'))
}

func (s *Store) indexPath() string { return filepath.Join(s.dir, "index.json") }
