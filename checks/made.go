package checks

import (
	"slices"

	"yokebook/measure"
	"yokebook/measure/document"
)

// AsBuilt returns the build as its shaft was made: what was read of the shaft that came back stands
// in the place of what had been ordered or read before, under the same id, so that findings name the
// real readings. False, and b itself, where nothing of what was built was read. b is not changed.
//
// A length that counts fully closed says by itself how far the slip is drawn out in every state in
// which the distance between the joint centres was read; what was read of the old one holds no longer.
func AsBuilt(b *measure.Build) (*measure.Build, bool) {
	standings := b.Standings(document.Hash)
	gone := map[string]bool{}
	for i, r := range b.Readings {
		p, _ := measure.PointOf(r.Point)
		if standings[i] != measure.Current || p.Makes == "" || !p.In(b.Layout) {
			continue
		}
		gone[p.Makes] = true
		for _, key := range p.Voids {
			gone[key] = true
		}
	}
	if len(gone) == 0 {
		return b, false
	}
	made := *b
	made.Readings = nil
	for _, r := range b.Readings {
		p, _ := measure.PointOf(r.Point)
		switch {
		case gone[r.Point]:
			continue
		case gone[p.Makes] && p.In(b.Layout):
			r.Point = p.Makes
		}
		made.Readings = append(made.Readings, r)
	}
	return &made, true
}

// Difference is a finding of two builds that speaks otherwise in one than in the other. Either may
// be nil where only the other has it.
type Difference struct{ Was, Is *Finding }

// Differences lists the findings that differ in verdict, value, interval or limit, or in what they wait
// for, in the order of the table of checks.
func Differences(was, is []Finding) []Difference {
	old := make(map[string]*Finding, len(was))
	for i := range was {
		old[was[i].Key()] = &was[i]
	}
	var out []Difference
	for i := range is {
		before := old[is[i].Key()]
		if before == nil || differs(*before, is[i]) {
			out = append(out, Difference{before, &is[i]})
		}
		delete(old, is[i].Key())
	}
	for i := range was {
		if old[was[i].Key()] != nil {
			out = append(out, Difference{&was[i], nil})
		}
	}
	return out
}

func differs(a, b Finding) bool {
	return a.Verdict != b.Verdict || !sameNumber(a.Value, b.Value) || !sameNumber(a.Low, b.Low) || !sameNumber(a.High, b.High) ||
		!sameLimit(a.Limit, b.Limit) || !slices.Equal(a.Missing, b.Missing)
}

func sameNumber(a, b *float64) bool {
	if a == nil || b == nil {
		return a == b
	}
	return *a == *b
}

func sameLimit(a, b *Limit) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Value == b.Value && sameNumber(a.Upper, b.Upper)
}
