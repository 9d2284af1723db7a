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
	ring := b.rings(out)
	for i, r := range b.Readings {
		switch {
		case r.Replaces == "" || out[i] == Disputed:
		case ring[r.ID]:
			if out[i] != Struck {
				out[i] = Disputed
			}
		default:
			for _, j := range byID[r.Replaces] {
				if out[j] == Current {
					out[j] = Replaced
				}
			}
		}
	}
	return out
}

// rings returns the ids whose corrections lead back to themselves: what is left when ids that
// nothing replaces are taken away again and again. Disputed readings replace nothing.
func (b *Build) rings(standing []Standing) map[ID]bool {
	replaces := map[ID][]ID{}
	replacedBy := map[ID]int{}
	for i, r := range b.Readings {
		if r.Replaces != "" && standing[i] != Disputed {
			replaces[r.ID] = append(replaces[r.ID], r.Replaces)
			replacedBy[r.Replaces]++
		}
	}
	var free []ID
	for id := range replaces {
		if replacedBy[id] == 0 {
			free = append(free, id)
		}
	}
	for len(free) > 0 {
		id := free[len(free)-1]
		free = free[:len(free)-1]
		for _, older := range replaces[id] {
			replacedBy[older]--
			if replacedBy[older] == 0 {
				free = append(free, older)
			}
		}
		delete(replaces, id)
	}
	ring := make(map[ID]bool, len(replaces))
	for id := range replaces {
		ring[id] = true
	}
	return ring
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
