package merge

import (
	"slices"
	"sort"
	"strings"

	"yokebook/measure"
	"yokebook/measure/document"
)

// conflicts lists everything that a person should look at, in one order.
func conflicts(b *measure.Build, voices map[string][]document.Claim, clashes map[string]bool) []Conflict {
	standing := b.Standings(document.Hash)
	all := sameIDs(b, standing)
	all = append(all, readingRings(b)...)
	all = append(all, corrections(b, standing)...)
	all = append(all, fields(voices)...)
	for key := range clashes {
		all = append(all, Conflict{Kind: Member, Name: key})
	}
	order := []Kind{SameID, Ring, Corrections, Field, Member}
	sort.Slice(all, func(i, j int) bool {
		a, b := all[i], all[j]
		if a.Kind != b.Kind {
			return slices.Index(order, a.Kind) < slices.Index(order, b.Kind)
		}
		if a.Name != b.Name {
			return a.Name < b.Name
		}
		return slices.Compare(a.IDs, b.IDs) < 0
	})
	return all
}

// sameIDs finds ids that stand for two contents. Readings of which a person struck all but one are settled.
func sameIDs(b *measure.Build, standing []measure.Standing) []Conflict {
	var open, strikes, skips, heads []measure.ID
	for i, r := range b.Readings {
		if standing[i] != measure.Struck {
			open = append(open, r.ID)
		}
	}
	for _, s := range b.Strikes {
		strikes = append(strikes, s.ID)
	}
	for _, s := range b.Skips {
		skips = append(skips, s.ID)
	}
	for _, h := range b.Heads {
		heads = append(heads, h.ID)
	}
	out := twice("readings", open)
	out = append(out, twice("strikes", strikes)...)
	out = append(out, twice("skips", skips)...)
	return append(out, twice("heads", heads)...)
}

// twice finds the ids that a list holds more than once; exact repetitions were dropped before.
func twice(name string, ids []measure.ID) []Conflict {
	count := map[measure.ID]int{}
	var out []Conflict
	for _, id := range ids {
		if count[id]++; count[id] == 2 && id != "" {
			out = append(out, Conflict{Kind: SameID, Name: name, IDs: []measure.ID{id}})
		}
	}
	return out
}

// readingRings finds circles of corrections.
func readingRings(b *measure.Build) []Conflict {
	replaces := map[measure.ID]measure.ID{}
	for _, r := range b.Readings {
		if _, ok := replaces[r.ID]; !ok {
			replaces[r.ID] = r.Replaces
		}
	}
	walk := map[measure.ID]int{} // number of the walk that came by first
	var out []Conflict
	for i, r := range b.Readings {
		id := r.ID
		for ; id != "" && walk[id] == 0; id = replaces[id] {
			walk[id] = i + 1
		}
		if id == "" || walk[id] != i+1 {
			continue
		}
		ring := []measure.ID{id}
		for next := replaces[id]; next != id; next = replaces[next] {
			ring = append(ring, next)
		}
		slices.Sort(ring)
		out = append(out, Conflict{Kind: Ring, Name: "readings", IDs: ring})
	}
	return out
}

// corrections finds readings that count and correct the same older one.
func corrections(b *measure.Build, standing []measure.Standing) []Conflict {
	first := map[measure.ID]measure.ID{}
	for _, r := range b.Readings {
		if _, ok := first[r.ID]; !ok {
			first[r.ID] = r.Replaces
		}
	}
	byRoot := map[measure.ID][]measure.ID{}
	for i, r := range b.Readings {
		if standing[i] == measure.Current && r.Replaces != "" {
			root := rootOf(r.Replaces, first)
			byRoot[root] = append(byRoot[root], r.ID)
		}
	}
	var out []Conflict
	for _, ids := range byRoot {
		if len(ids) > 1 {
			slices.Sort(ids)
			out = append(out, Conflict{Kind: Corrections, Name: "readings", IDs: ids})
		}
	}
	return out
}

// rootOf follows corrections back to the oldest id that is known; a ring ends where it began.
func rootOf(id measure.ID, replaces map[measure.ID]measure.ID) measure.ID {
	seen := map[measure.ID]bool{}
	for replaces[id] != "" && !seen[id] {
		seen[id] = true
		id = replaces[id]
	}
	return id
}

// fields finds fields of which several heads count with different values, and rings of heads.
func fields(voices map[string][]document.Claim) []Conflict {
	var out []Conflict
	for field, claims := range voices {
		live := document.Live(claims)
		ids := make([]measure.ID, len(live))
		values := map[string]bool{}
		for i, c := range live {
			ids[i] = c.Head.ID
			values[string(c.Value)] = true
		}
		slices.Sort(ids)
		switch {
		case inRing(live):
			out = append(out, Conflict{Kind: Ring, Name: field, IDs: ids})
		case len(values) > 1:
			out = append(out, Conflict{Kind: Field, Name: strings.ToValidUTF8(field, "?"), IDs: slices.Compact(ids)})
		}
	}
	return out
}

// inRing reports live claims that replace each other: they count only because all are replaced.
func inRing(live []document.Claim) bool {
	has := map[measure.ID]bool{}
	for _, c := range live {
		has[c.Head.ID] = true
	}
	for _, c := range live {
		if c.Head.Replaces != c.Head.ID && has[c.Head.Replaces] {
			return true
		}
	}
	return false
}
