package document

import (
	"bytes"
	"encoding/json"
	"slices"
	"sort"
	"strings"

	"yokebook/measure"
)

// Arrange brings the records of a build into their one order, by id and then by hash, and drops
// exact repetitions. Where a record has no id its hash stands in. Instruments are sorted by id.
func Arrange(b *measure.Build) {
	b.Readings = arranged(b.Readings, func(r *measure.Reading) measure.ID { return r.ID }, EncodeReading, alike)
	b.Strikes = arranged(b.Strikes, func(s *measure.Strike) measure.ID { return s.ID }, EncodeStrike, nil)
	b.Skips = arranged(b.Skips, func(s *measure.Skip) measure.ID { return s.ID }, EncodeSkip, nil)
	b.Heads = arranged(b.Heads, func(h *measure.Head) measure.ID { return h.ID }, EncodeHead, nil)
	b.Instruments = append([]measure.Instrument(nil), b.Instruments...)
	sort.SliceStable(b.Instruments, func(i, j int) bool { return b.Instruments[i].ID < b.Instruments[j].ID })
	foreign := map[string][]json.RawMessage{}
	for name, raws := range b.Foreign {
		if len(raws) > 0 {
			foreign[name] = arrangedRaw(raws)
		}
	}
	if b.Foreign = foreign; len(foreign) == 0 {
		b.Foreign = nil
	}
}

// arranged returns a sorted copy without exact repetitions; nil when there are none. alike may see
// without encoding that two records are the same; it may be nil.
//
// Encoding and hashing is what costs: only records that share an id, or have none, need it.
func arranged[T any](list []T, id func(*T) measure.ID, encode func(T) json.RawMessage, alike func(a, b *T) bool) []T {
	names, ascending := make([]measure.ID, len(list)), true
	for i := range list {
		names[i] = id(&list[i])
		if names[i] == "" {
			names[i] = measure.ID(hashOf(encode(list[i]))) // stands in for an id
		}
		ascending = ascending && (i == 0 || names[i-1] < names[i])
	}
	if len(list) == 0 {
		return nil
	}
	if ascending {
		return slices.Clone(list)
	}
	order := make([]int, len(list))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return strings.Compare(string(names[a]), string(names[b])) })
	out := make([]T, 0, len(list))
	for from := 0; from < len(order); {
		to := from + 1
		for to < len(order) && names[order[to]] == names[order[from]] {
			to++
		}
		out = appendDistinct(out, list, order[from:to], encode, alike)
		from = to
	}
	return out
}

// appendDistinct appends the records at the places given, which share an id: by hash, each once.
func appendDistinct[T any](out, list []T, places []int, encode func(T) json.RawMessage, alike func(a, b *T) bool) []T {
	first := &list[places[0]]
	if alike != nil {
		places = slices.DeleteFunc(places, func(i int) bool { return &list[i] != first && alike(&list[i], first) })
	}
	if len(places) == 1 {
		return append(out, *first)
	}
	type hashed struct {
		raw  []byte
		hash string
		at   int
	}
	all := make([]hashed, len(places))
	for i, at := range places {
		raw := encode(list[at])
		all[i] = hashed{raw, hashOf(raw), at}
	}
	slices.SortStableFunc(all, func(a, b hashed) int { return strings.Compare(a.hash, b.hash) })
	for i, h := range all {
		if i == 0 || !bytes.Equal(h.raw, all[i-1].raw) {
			out = append(out, list[h.at])
		}
	}
	return out
}

func arrangedRaw(raws []json.RawMessage) []json.RawMessage {
	return arranged(raws, func(raw *json.RawMessage) measure.ID { return rawID(*raw) },
		func(raw json.RawMessage) json.RawMessage { return raw }, nil)
}

// rawID finds the id of a carried record; "" when it has none.
func rawID(raw json.RawMessage) measure.ID {
	n, err := parse(raw)
	if err != nil || n.kind != objectKind {
		return ""
	}
	if id := n.get("id"); id != nil && id.kind == textKind {
		return measure.ID(id.text)
	}
	return ""
}
