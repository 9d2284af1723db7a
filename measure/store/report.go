package store

import (
	"fmt"
	"strings"

	"yokebook/measure"
)

// Kind says what is wrong at a place.
type Kind string

// The kinds of fault.
const (
	Unfinished Kind = "unfinished" // the last record is cut off, as when the program ends while it writes
	Zeros      Kind = "zeros"      // zeros where nothing was written, as after a loss of power
	Damaged    Kind = "damaged"    // bytes that no checksum vouches for
	Short      Kind = "short"      // every record is good, but a snapshot has more
	Missing    Kind = "missing"    // there is no file, but there are snapshots
	Other      Kind = "other"      // the file belongs to another build, or to another program
	Snapshot   Kind = "snapshot"   // a snapshot is damaged; it was not used
)

// Fault is one place that is not as it was written.
type Fault struct {
	Kind Kind   `json:"kind"`
	File string `json:"file"` // name of the file, without its folder
	At   int    `json:"at"`   // byte where it begins
}

// maxFaults bounds what a report lists; Places counts all.
const maxFaults = 20

// Report says how a build was read back: what is wrong, and which records came from where. A build
// that is whole has a report without faults.
type Report struct {
	Format    string     `json:"format"`
	Build     measure.ID `json:"build"`
	At        string     `json:"at"`         // when the file was set aside; empty for a mere look
	Faults    []Fault    `json:"faults"`     // the first of them
	Places    int        `json:"places"`     // how many there are
	InFile    int        `json:"in_file"`    // records from the build's own file
	Behind    int        `json:"behind"`     // of these, records found at or behind a damaged place
	Restored  int        `json:"restored"`   // records that only snapshots had
	Snapshot  string     `json:"snapshot"`   // the newest snapshot that was used
	Lost      []string   `json:"lost"`       // keys of damaged records that are good nowhere
	Nameless  int        `json:"nameless"`   // damaged places of which nothing can be told
	Unknown   []string   `json:"unknown"`    // keys of good records that this version can't read; they are kept
	KeptAside string     `json:"kept_aside"` // where the damaged file is kept, below the store's folder
}

// State sums a report up.
type State string

// The states of a build, from best to worst.
const (
	IsWhole    State = "whole"     // everything is as it was written
	Recovered  State = "recovered" // something was damaged, and no record is known to be lost
	IsSetAside State = "set aside" // a damaged record, or a whole file, could not be brought back
)

// State returns the state that the build was found in.
func (r Report) State() State {
	switch {
	case len(r.Lost) > 0 || r.Nameless > 0:
		return IsSetAside
	case r.Places > 0:
		return Recovered
	}
	return IsWhole
}

// Has reports a fault of one kind.
func (r Report) Has(kinds ...Kind) bool {
	for _, f := range r.Faults {
		for _, k := range kinds {
			if f.Kind == k {
				return true
			}
		}
	}
	return false
}

// String says it in one line, for errors and tests; app/words says it to people.
func (r Report) String() string {
	if r.Places == 0 {
		return string(IsWhole)
	}
	var said []string
	for _, f := range r.Faults {
		said = append(said, fmt.Sprintf("%s at %s:%d", f.Kind, f.File, f.At))
	}
	return fmt.Sprintf("%s: %s; %d records from the file (%d behind a damaged place), %d from snapshots, lost %d, nameless %d",
		r.State(), strings.Join(said, ", "), r.InFile, r.Behind, r.Restored, len(r.Lost), r.Nameless)
}

// found adds a fault.
func (r *Report) found(k Kind, file string, at int) {
	r.Places++
	if len(r.Faults) < maxFaults {
		r.Faults = append(r.Faults, Fault{k, file, at})
	}
}
