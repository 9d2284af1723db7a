package measure

import "sort"

// Standing says what became of a reading.
type Standing int

// The standings of a reading.
const (
	Current  Standing = iota // counts
	Replaced                 // a correction stands in its place
	Struck                   // a person took it out of use
	Disputed                 // two records share its id, or it takes part in a ring of corrections
)

// Standings tells for each reading of the build, in order, whether it counts.
//
// hash gives the content hash of a reading ("sha256:<hex>" of its canonical bytes); it is only
// called for readings that share an id. A strike without Content strikes every record of its id.
func (b *Build) Standings(hash func(Reading) string) []Standing {
	out := make([]Standing, len(b.Readings))
	byID := make(map[ID][]int, len(b.Readings))
	for i, r := range b.Readings {
		byID[r.ID] = append(byID[r.ID], i)
	}
	for _, s := range b.Strikes {
		same := byID[s.Reading]
		for _, i := range same {
			if s.Content == "" || hash(b.Readings[i]) == s.Content {
				out[i] = Struck
			}
		}
	}
	for _, same := range byID {
		var open []int
		for _, i := range same {
			if out[i] != Struck {
				open = append(open, i)
			}
		}
		if len(open) > 1 {
			for _, i := range open {
				out[i] = Disputed
			}
		}
	}
	for i, r := range b.Readings {
		if r.Replaces == "" || out[i] == Disputed {
			continue
		}
		if b.inRing(r, byID) {
			out[i] = Disputed
			continue
		}
		for _, j := range byID[r.Replaces] {
			if out[j] == Current {
				out[j] = Replaced
			}
		}
	}
	return out
}

// inRing follows corrections from r back; a chain that returns to r is a ring.
func (b *Build) inRing(r Reading, byID map[ID][]int) bool {
	seen := map[ID]bool{}
	for id := r.Replaces; id != "" && !seen[id]; {
		if id == r.ID {
			return true
		}
		seen[id] = true
		next := byID[id]
		if len(next) == 0 {
			return false
		}
		id = b.Readings[next[0]].Replaces
	}
	return false
}

// CurrentReadings returns the readings that count, sorted by id.
func (b *Build) CurrentReadings(hash func(Reading) string) []Reading {
	standing := b.Standings(hash)
	var out []Reading
	for i, r := range b.Readings {
		if standing[i] == Current {
			out = append(out, r)
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].ID < out[j].ID })
	return out
}
