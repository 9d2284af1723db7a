package merge

import (
	"fmt"
	"strings"

	"yokebook/measure"
)

// Report says what a merge found. It never depends on the order of the builds, but for Sources,
// which follow it.
type Report struct {
	Conflicts []Conflict // sorted by kind, name, ids
	Sources   []Source   // one for each build given
}

// Source says what one of the builds brought.
type Source struct {
	Held Counts // records in it
	Only Counts // records that none of the other builds has
}

// Counts counts records. Heads include those that plain keys imply; Carried are records of a newer
// format that this version can't understand.
type Counts struct {
	Readings, Strikes, Skips, Heads, Carried int
}

// Total is the number of all records.
func (c Counts) Total() int { return c.Readings + c.Strikes + c.Skips + c.Heads + c.Carried }

// Kind tells conflicts apart.
type Kind string

// The kinds of conflict, in the order of the report. None of them stops a merge.
const (
	SameID      Kind = "same id"     // two records share an id and differ; of readings neither counts
	Ring        Kind = "ring"        // corrections that replace each other in a circle; none counts
	Corrections Kind = "corrections" // several corrections of one reading; all of them count
	Field       Kind = "field"       // several values of a field; the last by clock, device and value counts
	Member      Kind = "member"      // an unknown member with two values; the greater bytes were kept
)

// Conflict is something that a person should look at.
type Conflict struct {
	Kind Kind
	Name string       // list ("readings"), field ("title") or member concerned
	IDs  []measure.ID // records concerned, sorted; for Corrections and Field those that count now
}

// String says in one line what is in conflict and what a person can do.
func (c Conflict) String() string {
	ids := make([]string, len(c.IDs))
	for i, id := range c.IDs {
		ids[i] = string(id)
	}
	all := strings.Join(ids, ", ")
	switch c.Kind {
	case SameID:
		if c.Name == "readings" {
			return fmt.Sprintf("reading %s is there with two contents; neither counts until one is struck", all)
		}
		return fmt.Sprintf("%s: %s is there with two contents; both are kept", c.Name, all)
	case Ring:
		return fmt.Sprintf("%s: %s replace each other in a ring; take the value again", c.Name, all)
	case Corrections:
		return fmt.Sprintf("readings %s correct the same reading; strike all but one", all)
	case Field:
		return fmt.Sprintf("%.60q was changed in two places; the last change counts; set it again to settle it", c.Name)
	}
	return fmt.Sprintf("member %.60q has two values; the greater was kept", c.Name)
}
