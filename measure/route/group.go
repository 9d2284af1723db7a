package route

import (
	"slices"

	"yokebook/measure"
)

// GroupOf is the group that one can walk and that a point belongs to beyond the shaft line; false
// for a point that the route stops at by itself.
func GroupOf(p measure.Point) (measure.Group, bool) { return p.Group, len(p.Wanted) == 0 }

// Groups lists the groups that a build can be measured in beyond its shaft line, in the order of the
// table. A build is asked for none of them by itself.
func Groups(b *measure.Build) []measure.Group {
	var out []measure.Group
	for _, p := range measure.Points {
		if g, ok := GroupOf(p); ok && p.In(b.Layout) && !slices.Contains(out, g) {
			out = append(out, g)
		}
	}
	return out
}

// GroupStops returns the stops of a group: first what is read off the vehicle, then state by state.
// What moves with the vehicle is read in the states that its findings ask for. What does not move,
// but is reached from below only, is read as the vehicle stands. In the group of obstacles tag says
// which of them; elsewhere it is empty.
//
// hash gives the content hash of a reading, as in StopsBy.
func GroupStops(b *measure.Build, hash func(measure.Reading) string, g measure.Group, stands measure.State, tag string) []Stop {
	var readings []measure.Reading
	for _, r := range b.CurrentReadings(hash) {
		if g != measure.GroupClearance || r.Tag == tag {
			readings = append(readings, r)
		}
	}
	t := count(readings)
	skips := newestSkips(Skips(b))
	var stops []Stop
	for _, state := range measure.States {
		for _, p := range measure.Points {
			if of, ok := GroupOf(p); !ok || of != g || !p.In(b.Layout) || !slices.Contains(groupStates(p, stands), state) {
				continue
			}
			s := Stop{Point: p, State: state, Tag: tag, Taken: t.at(p.Key, state)}
			if !p.Moves {
				s.Taken = t.any[p.Key]
			}
			if skip, ok := skips[place{p.Key, state, tag}]; ok && s.Taken == 0 {
				s.Skipped = &skip
			}
			stops = append(stops, s)
		}
	}
	return stops
}

// groupStates are the states in which a point of a group is read.
func groupStates(p measure.Point, stands measure.State) []measure.State {
	switch {
	case p.Key == "fit.brakehose": // its question says how the vehicle stands
		return []measure.State{measure.Hanging}
	case p.Key == "fit.bumpstop":
		return []measure.State{measure.OnBump}
	case p.Moves && (p.Group == measure.GroupHeights || p.Group == measure.GroupShaft):
		return []measure.State{measure.Hanging, measure.RideKerb, measure.RideLaden, measure.OnBump}
	case p.Moves, p.Caution == measure.CautionUnder && stands.Ride == measure.Bench:
		return []measure.State{measure.RideKerb}
	case p.Caution == measure.CautionUnder:
		return []measure.State{stands}
	}
	return []measure.State{measure.OffBench}
}

// Obstacles lists the tags of the obstacles that a build has readings of, in the order of their
// first reading, and then of those of which only stops were left out.
func Obstacles(b *measure.Build, hash func(measure.Reading) string) []string {
	var out []string
	for _, r := range b.CurrentReadings(hash) {
		if p, ok := measure.PointOf(r.Point); ok && p.Group == measure.GroupClearance && !slices.Contains(out, r.Tag) {
			out = append(out, r.Tag)
		}
	}
	for _, s := range Skips(b) {
		if p, ok := measure.PointOf(s.Point); ok && p.Group == measure.GroupClearance && s.Tag != "" && !slices.Contains(out, s.Tag) {
			out = append(out, s.Tag)
		}
	}
	return out
}
