// Package route lays out the stops of a build: which point is to be read in which state, in the
// order in which one crawls under the vehicle least often.
package route

import "yokebook/measure"

// Stop is one place on the route: a point to be read in a state.
type Stop struct {
	Point   measure.Point
	State   measure.State
	Tag     string        // tells obstacles apart; "" elsewhere
	Taken   int           // current readings that count here; repeats are welcome
	Skipped *measure.Skip // the newest skip, while nothing was read here; nil: not skipped
}

// Done reports a stop that needs no more: it was read at least once, or skipped with a reason.
func (s Stop) Done() bool { return s.Taken > 0 || s.Skipped != nil }

// StopsBy returns the whole route of a build, in order: bench, hanging, on its wheels, laden, on the
// bump stops; within a state in the order of the table, what is wanted before what is optional. hash
// gives the content hash of a reading ("sha256:<hex>"): without it, records that share an id count for
// nothing and a strike that names a content strikes nothing.
//
// A reading counts at the stop of its own state. One from the bench or stated by plate or book
// holds in every state and counts at all of them, and a bench stop is content with a reading of
// any state: what is asked there does not change as the vehicle moves.
func StopsBy(b *measure.Build, hash func(measure.Reading) string) []Stop {
	t := count(b.CurrentReadings(hash))
	skips := newestSkips(Skips(b))
	var stops []Stop
	for _, state := range measure.States {
		for _, optional := range []bool{false, true} {
			for _, p := range measure.Points {
				if p.Optional != optional || !wanted(p, state) || !p.In(b.Layout) {
					continue
				}
				s := Stop{Point: p, State: state, Taken: t.at(p.Key, state)}
				if skip, ok := skips[place{p.Key, state, ""}]; ok && s.Taken == 0 {
					s.Skipped = &skip
				}
				stops = append(stops, s)
			}
		}
	}
	return stops
}

// Next returns the first stop that is not done, from the stop after (point, state) to the end and
// then from the start, so that the stop itself comes last; false when every stop is done. A stop
// that is not on the route stands before its start.
func Next(stops []Stop, point string, state measure.State) (Stop, bool) {
	from := 0
	for i, s := range stops {
		if s.Point.Key == point && s.State == state {
			from = i + 1
		}
	}
	for i := range stops {
		if s := stops[(from+i)%len(stops)]; !s.Done() {
			return s, true
		}
	}
	return Stop{}, false
}

// Wanted counts the stops that are still to be taken, leaving out the optional ones.
func Wanted(stops []Stop) int {
	n := 0
	for _, s := range stops {
		if !s.Done() && !s.Point.Optional {
			n++
		}
	}
	return n
}

func wanted(p measure.Point, state measure.State) bool {
	for _, s := range p.Wanted {
		if s == state {
			return true
		}
	}
	return false
}
