package document

import (
	"bytes"
	"encoding/json"
	"sort"

	"yokebook/measure"
)

// Arrange brings the records of a build into their one order, by id and then by hash, and drops
// exact repetitions. Where a record has no id its hash stands in. Instruments are sorted by id.
func Arrange(b *measure.Build) {
	b.Readings = arranged(b.Readings, EncodeReading, func(r measure.Reading) measure.ID { return r.ID })
	b.Strikes = arranged(b.Strikes, EncodeStrike, func(s measure.Strike) measure.ID { return s.ID })
	b.Skips = arranged(b.Skips, EncodeSkip, func(s measure.Skip) measure.ID { return s.ID })
	b.Heads = arranged(b.Heads, EncodeHead, func(h measure.Head) measure.ID { return h.ID })
	b.Instruments = append([]measure.Instrument(nil), b.Instruments...)
	sort.SliceStable(b.Instruments, func(i, j int) bool { return b.Instruments[i].ID < b.Instruments[j].ID })
	foreign := map[string][]json.RawMessage{}
	for name, raws := range b.Foreign {
		if len(raws) > 0 {
			foreign[name] = arranged(raws, func(raw json.RawMessage) json.RawMessage { return raw }, rawID)
		}
	}
	if b.Foreign = foreign; len(foreign) == 0 {
		b.Foreign = nil
	}
}

// arranged returns a sorted copy without exact repetitions; nil when there are none.
func arranged[T any](list []T, encode func(T) json.RawMessage, id func(T) measure.ID) []T {
	type keyed struct {
		id   measure.ID
		raw  []byte
		hash string
		item T
	}
	all := make([]keyed, len(list))
	for i, x := range list {
		raw := encode(x)
		all[i] = keyed{id(x), raw, hashOf(raw), x}
		if all[i].id == "" {
			all[i].id = measure.ID(all[i].hash) // stands in for an id
		}
	}
	sort.SliceStable(all, func(i, j int) bool {
		if all[i].id != all[j].id {
			return all[i].id < all[j].id
		}
		return all[i].hash < all[j].hash
	})
	var out []T
	for i, k := range all {
		if i > 0 && bytes.Equal(k.raw, all[i-1].raw) {
			continue
		}
		out = append(out, k.item)
	}
	return out
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
