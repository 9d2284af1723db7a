package merge

import (
	"cmp"
	"encoding/json"
	"slices"
	"strings"

	"yokebook/measure"
	"yokebook/measure/document"
)

// sources counts what each build holds and what only it holds. heads are those of each build, the
// implied ones among them.
func sources(builds []*measure.Build, heads [][]measure.Head) []Source {
	out := make([]Source, len(builds))
	tally(out, func(i int) []measure.Reading { return builds[i].Readings }, counted[measure.Reading]{
		id: func(r *measure.Reading) measure.ID { return r.ID }, same: document.Same, encode: document.EncodeReading,
		of: func(c *Counts) *int { return &c.Readings }})
	tally(out, func(i int) []measure.Strike { return builds[i].Strikes }, counted[measure.Strike]{
		id: func(s *measure.Strike) measure.ID { return s.ID }, encode: document.EncodeStrike,
		of: func(c *Counts) *int { return &c.Strikes }})
	tally(out, func(i int) []measure.Skip { return builds[i].Skips }, counted[measure.Skip]{
		id: func(s *measure.Skip) measure.ID { return s.ID }, encode: document.EncodeSkip,
		of: func(c *Counts) *int { return &c.Skips }})
	tally(out, func(i int) []measure.Head { return heads[i] }, counted[measure.Head]{
		id: func(h *measure.Head) measure.ID { return h.ID }, encode: document.EncodeHead,
		of: func(c *Counts) *int { return &c.Heads }})
	for _, name := range carriedLists(builds) {
		tally(out, func(i int) []json.RawMessage { return builds[i].Foreign[name] }, counted[json.RawMessage]{
			id:     func(raw *json.RawMessage) measure.ID { return measure.ID(*raw) },
			encode: func(raw json.RawMessage) json.RawMessage { return raw },
			of:     func(c *Counts) *int { return &c.Carried }})
	}
	return out
}

func carriedLists(builds []*measure.Build) []string {
	var names []string
	for _, b := range builds {
		for name := range b.Foreign {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// counted says how the records of one list are told apart and where they are counted. same may see
// without encoding that two are one; it may be nil.
type counted[T any] struct {
	id     func(*T) measure.ID
	same   func(a, b *T) bool
	encode func(T) json.RawMessage
	of     func(*Counts) *int
}

// held is a record and the build that it stands in.
type held[T any] struct {
	id     measure.ID
	record *T
	source int
}

// tally counts one list of all builds. Only records that share an id are compared.
func tally[T any](out []Source, list func(source int) []T, c counted[T]) {
	var all []held[T]
	for i := range out {
		records := list(i)
		all = slices.Grow(all, len(records))
		for j := range records {
			all = append(all, held[T]{c.id(&records[j]), &records[j], i})
		}
	}
	slices.SortStableFunc(all, func(a, b held[T]) int {
		return cmp.Or(strings.Compare(string(a.id), string(b.id)), cmp.Compare(a.source, b.source))
	})
	for len(all) > 0 {
		n := 1
		for n < len(all) && all[n].id == all[0].id {
			n++
		}
		c.group(out, all[:n])
		all = all[n:]
	}
}

// group counts the records of one id, sorted by build: in the usual case one record, once in a build.
func (c counted[T]) group(out []Source, all []held[T]) {
	alike := c.same != nil
	for i := 1; i < len(all) && alike; i++ {
		alike = all[i].source != all[i-1].source && c.same(all[0].record, all[i].record)
	}
	if alike || len(all) == 1 {
		c.count(out, all)
		return
	}
	byContent := map[string][]held[T]{}
	for _, h := range all {
		key := string(c.encode(*h.record))
		if have := byContent[key]; len(have) == 0 || have[len(have)-1].source != h.source {
			byContent[key] = append(have, h)
		}
	}
	for _, same := range byContent {
		c.count(out, same)
	}
}

// count counts one record that stands in the builds given, once in each.
func (c counted[T]) count(out []Source, in []held[T]) {
	for _, h := range in {
		*c.of(&out[h.source].Held)++
		if len(in) == 1 {
			*c.of(&out[h.source].Only)++
		}
	}
}
