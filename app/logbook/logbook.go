// Package logbook is the one object that screens and verbs use: it opens builds, keeps readings,
// strikes and skips, and says what that changed. Clock and ids go in here and nowhere else.
package logbook

import (
	"time"

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
}

// Listing is one row of the list of builds: a cache that can be rebuilt from the builds.
type Listing struct {
	ID       measure.ID
	Title    string
	LastWork time.Time
	Readings int            // current ones
	Wanted   int            // stops of the route that are not done
	Worst    checks.Verdict // worst verdict of its findings
	Counts   map[checks.Verdict]int
}

// Entry is one reading as a person enters it. The logbook adds id, time and device.
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
	Replaces   measure.ID
}

// Change says what one kept record did.
type Change struct {
	Reading  measure.ID       // the reading kept or struck
	Findings []checks.Finding // those that are new or differ from before, worst first
	Gone     []checks.Finding // those that are no longer there
	Next     route.Stop       // where to go now
	More     bool             // false: every stop of the route is done
}
