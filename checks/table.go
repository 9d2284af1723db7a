package checks

import (
	"slices"

	"yokebook/measure"
)

// Check is one row of the table of checks: what is asked, of which points, against which limit.
type Check struct {
	Key    string
	Group  string
	Points []string // readings it is made from
	Unit   string   // of its value
	Limit  string   // key in the table of limits; "" where it gives no verdict of its own

	// One of these three answers. perState: for one subject in each state of the shaft line.
	// perPart: for one subject, whatever the axle does. whole: makes its findings itself.
	perState func(e *engine, ln *line, subject string) answer
	perPart  func(e *engine, subject string) answer
	whole    func(e *engine, c *Check) []Finding
	// subjects tells joints and shafts of a layout apart; nil: one subject, "".
	subjects func(measure.Layout) []string
	// hanging shows the value, without a verdict, in states that the shaft does not run in.
	hanging bool
	// advise says which knob to turn when the limit is missed.
	advise func(ln *line, subject string) Message
}

// answer is what a check's function gives back: a number or what is missing for it.
type answer struct {
	q         *quantity
	missing   []Missing
	limit     string    // another limit key than the table's; "" keeps it
	own       *Limit    // a limit that was itself read or worked out; nil: that of the key
	against   *quantity // the own limit's value with its doubt; nil: exact
	advice    Message   // what to do when the limit is missed; silent: what the table says
	silent    bool      // the value is shown and never judged
	gentle    bool      // sources dispute the limit: missing it is unsure, not out
	notes     []Message
	absent    bool // none of the check's readings was taken in this state
	lacking   bool // the layout has no such part: no finding
	predicted bool // computed for heights that were not read
}

// Table is the table of checks, in the order in which findings are sorted; each family's rows stand
// beside its functions.
var Table = slices.Concat(buildRows, jointRows, loadRows, slipRows, shaftRows, flangeRows, engineRows, clutchRows, splineRows, retainRows, massRows, fitRows,
	derivedRows, readingRows)

// CheckOf finds a row by key.
func CheckOf(key string) (Check, bool) {
	for _, c := range Table {
		if c.Key == key {
			return c, true
		}
	}
	return Check{}, false
}
