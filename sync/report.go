package sync

import (
	"time"

	"yokebook/measure"
	"yokebook/measure/document"
	"yokebook/measure/merge"
)

// Report says what one pass did.
type Report struct {
	Place  string
	Builds []Row    // sorted by id
	Faults []Fault  // what did not work, in the order met
	Copies []string // files of builds under names that are not ours: copies, which may be tidied away
	// Read, Skipped and Written count files.
	Read, Skipped, Written int
}

// OK reports a pass in which nothing went wrong: every build is here and there, read back.
func (r Report) OK() bool { return len(r.Faults) == 0 }

// Row says how one build stands.
type Row struct {
	ID    measure.ID `json:"id"`
	Title string     `json:"title"`
	// Here and There count the readings that are in use: on this device, and in the place as it was read.
	Here  int `json:"here"`
	There int `json:"there"`
	// Came and Went are the records that this pass brought here and put there.
	Came merge.Counts `json:"-"`
	Went merge.Counts `json:"-"`
	// LastDevice and LastAt belong to the record with the latest time, as its device said it.
	LastDevice measure.ID `json:"last_device"`
	LastAt     string     `json:"last_at"`
	Conflicts  int        `json:"conflicts"` // what a person should look at
	// Synced: everything that is here was read back from the place, by this pass or an earlier one
	// since which nothing changed.
	Synced bool `json:"synced"`
}

// Kind tells faults apart.
type Kind string

// The kinds of fault. None of them stops the pass for other builds.
const (
	Arriving Kind = "arriving" // a file that is not whole yet; the next pass tries again
	Refused  Kind = "refused"  // a file that is damaged, altered or too large; left alone
	Here     Kind = "here"     // this device could not read or take a build
	There    Kind = "there"    // the place did not take this device's files
)

// Fault is one line about something that did not work.
type Fault struct {
	Kind  Kind
	About string // name of the file in the place, or id of the build
	Line  string
	Err   error
}

// inUse counts the readings of a build that count.
func inUse(b *measure.Build) int { return len(b.CurrentReadings(document.Hash)) }

// latest finds the record with the latest time. Times are what devices said; they order nothing.
func latest(b *measure.Build) (device measure.ID, at string) {
	var last time.Time
	see := func(text string, by measure.ID) {
		t, err := time.Parse(time.RFC3339Nano, text)
		if err == nil && (t.After(last) || t.Equal(last) && by > device) {
			last, at, device = t, text, by
		}
	}
	for _, r := range b.Readings {
		see(r.At, r.Device)
	}
	for _, r := range b.Strikes {
		see(r.At, r.Device)
	}
	for _, r := range b.Skips {
		see(r.At, r.Device)
	}
	for _, r := range b.Heads {
		see(r.At, r.Device)
	}
	return device, at
}
