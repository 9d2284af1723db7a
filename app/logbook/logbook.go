// Package logbook is the one object that screens and verbs use: it opens builds, keeps readings,
// strikes and skips, and says what that changed. Clock and ids go in here and nowhere else.
//
// A Shelf is the folder of builds on this device. A Book is one open build, from the shelf or from
// a build file. The methods of one Book are called from one goroutine; those of a Shelf from any,
// also while its Books are open (but Import into an open build is that Book's work, see there).
package logbook

import (
	"time"

	"github.com/google/uuid"

	"yokebook/checks"
	"yokebook/measure"
	"yokebook/measure/route"
)

// Sources are the world's inputs, injected so that tests repeat.
type Sources struct {
	Now   func() time.Time
	NewID func() measure.ID
	// Device names this device in records; the shelf keeps one in its folder when empty.
	Device measure.ID

	run func(*measure.Build, *checks.Result) *checks.Result // nil: checks.Run
}

// System returns the sources of the real world: the clock, and UUIDs of version 7.
func System() Sources { return Sources{Now: time.Now, NewID: newID} }

// newID makes a UUID of version 7. The only way to fail is a system without randomness; a random
// one of version 4 would fail alike, so there is nothing better to do than to stop.
func newID() measure.ID { return measure.ID(uuid.Must(uuid.NewV7()).String()) }

// orSystem fills what was left out.
func (s Sources) orSystem() Sources {
	if s.Now == nil {
		s.Now = time.Now
	}
	if s.NewID == nil {
		s.NewID = newID
	}
	if s.run == nil {
		s.run = checks.Run
	}
	return s
}

// at is the time as records carry it.
func (s Sources) at() string { return s.Now().UTC().Format(time.RFC3339) }

// Listing is one row of the list of builds: a cache that can be rebuilt from the builds.
type Listing struct {
	ID       measure.ID
	Title    string
	LastWork time.Time
	Readings int                    // current ones
	Wanted   int                    // stops of the route that are not done; optional ones don't count
	Worst    checks.Verdict         // worst verdict of its findings
	Counts   map[checks.Verdict]int // findings per verdict
	Aside    int                    // records that are damaged and good nowhere
	Notes    []Note                 // what is wrong with its file; opening the build mends what can be mended
	Damaged  string                 // why the build can't be read at all; empty when it can
	Open     bool                   // open in this program now
	Pending  bool                   // the build has changed since it was looked at, or never was: the rest is of before
}

// Entry is one reading as a person enters it. The logbook adds id, time and device, and fills in
// what is left out: Basis from the point, State and Setup from where the vehicle stands.
type Entry struct {
	Point      string
	Value      measure.Value
	Entered    string
	Unit       measure.Unit
	Basis      measure.Basis
	State      measure.State
	Height     measure.Value
	Setup      int
	Instrument string
	Way        int
	Lay        string
	Tag        string
	Note       string
	By         string // who, where that says more than the device: "builder"
	Replaces   measure.ID
}

// Change says what one kept record did.
type Change struct {
	Reading  measure.ID       // the reading kept or struck; empty for a skip or a head
	Findings []checks.Finding // those that are new or differ from before, worst first
	Gone     []checks.Finding // those that are no longer there
	Next     route.Stop       // where to go now
	More     bool             // false: every stop of the route is done
}
