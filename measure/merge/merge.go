package merge

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"

	"yokebook/measure"
	"yokebook/measure/document"
)

// Errors of Builds.
var (
	ErrNothing = errors.New("there is nothing to merge; name at least one build")
	ErrOther   = errors.New("these are two different builds; merge files of one build only")
)

// Builds unites files of one build. It errs when there is none, or when they are of two builds.
// The builds given are not changed. Conflicts are no errors; the report names them.
func Builds(builds ...*measure.Build) (*measure.Build, Report, error) {
	if len(builds) == 0 {
		return nil, Report{}, ErrNothing
	}
	sum := &measure.Build{ID: builds[0].ID}
	clashes := map[string]bool{}
	heads := make([][]measure.Head, len(builds))
	for i, b := range builds {
		if b.ID != sum.ID {
			return nil, Report{}, fmt.Errorf("%s and %s: %w", sum.ID, b.ID, ErrOther)
		}
		heads[i] = allHeads(b)
		sum.Heads = append(sum.Heads, heads[i]...)
		add(sum, b, clashes)
	}
	document.Arrange(sum)
	if err := document.Derive(sum); err != nil {
		return nil, Report{}, err
	}
	voices := document.Voices(sum)
	report := Report{Sources: sources(builds, heads), Conflicts: conflicts(sum, voices, clashes)}
	sum.Heads = spoken(sum, voices)
	return sum, report, nil
}

// add puts all records of b into sum, but for its heads.
func add(sum, b *measure.Build, clashes map[string]bool) {
	sum.Newer = max(sum.Newer, b.Newer)
	sum.Readings = append(sum.Readings, b.Readings...)
	sum.Strikes = append(sum.Strikes, b.Strikes...)
	sum.Skips = append(sum.Skips, b.Skips...)
	for name, raws := range b.Foreign {
		if sum.Foreign == nil {
			sum.Foreign = map[string][]json.RawMessage{}
		}
		sum.Foreign[name] = append(sum.Foreign[name], raws...)
	}
	for key, raw := range b.Unknown {
		if sum.Unknown == nil {
			sum.Unknown = measure.Fields{}
		}
		have, ok := sum.Unknown[key]
		if ok && !bytes.Equal(have, raw) {
			clashes[key] = true
		}
		if !ok || bytes.Compare(raw, have) > 0 {
			sum.Unknown[key] = raw
		}
	}
}

// allHeads lists the heads of a build and those that its plain keys imply.
func allHeads(b *measure.Build) []measure.Head {
	heads := append([]measure.Head(nil), b.Heads...)
	spoken := map[string]bool{}
	for _, h := range b.Heads {
		claims, err := document.Claims(h)
		if err != nil {
			continue // of a newer format: carried, says nothing here
		}
		for _, c := range claims {
			spoken[c.Field] = true
		}
	}
	for _, c := range document.Plain(b) {
		if !spoken[c.Field] {
			heads = append(heads, document.Implied(b.ID, c.Field, c.Value))
		}
	}
	return heads
}

// spoken lists the heads that must be written: all but an implied one that is alone in its field
// and comes back from the plain key.
func spoken(b *measure.Build, voices map[string][]document.Claim) []measure.Head {
	plain := map[string]json.RawMessage{}
	for _, c := range document.Plain(b) {
		plain[c.Field] = c.Value
	}
	var out []measure.Head
	for _, h := range b.Heads {
		value, ok := plain[h.Field]
		alone := ok && len(voices[h.Field]) == 1
		if alone && document.HashHead(h) == document.HashHead(document.Implied(b.ID, h.Field, value)) {
			continue
		}
		out = append(out, h)
	}
	return out
}
