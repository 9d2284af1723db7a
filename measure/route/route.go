// Package route lays out the stops of a build: which point is to be read in which state, in the
// order in which one crawls under the vehicle least often.
package route

import "yokebook/measure"

// Stop is one place on the route: a point to be read in a state.
type Stop struct {
	Point   measure.Point
	State   measure.State
	Taken   int           // current readings of this point in this state
	Skipped *measure.Skip // the newest skip that no later reading outranks; nil: not skipped
}

// Done reports a stop that needs no more: it was read at least once, or skipped with a reason.
func (s Stop) Done() bool { return s.Taken > 0 || s.Skipped != nil }

// Stops returns the whole route of a build, in order: bench, hanging, on its wheels, laden, on the
// bump stops; within a state in the order of the table, what is wanted before what is optional.
func Stops(b *measure.Build) []Stop { return nil }

// Next returns the first stop that is not done, from the stop after (point, state) to the end and
// then from the start; false when every stop is done.
func Next(stops []Stop, point string, state measure.State) (Stop, bool) { return Stop{}, false }
