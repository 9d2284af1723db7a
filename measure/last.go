package measure

import "time"

// LastRecord is the latest time that any record of the build carries, UTC; the zero time where none
// carries one.
func (b *Build) LastRecord() time.Time {
	var last time.Time
	see := func(text string) {
		if at, err := time.Parse(time.RFC3339Nano, text); err == nil && at.After(last) {
			last = at.UTC()
		}
	}
	for _, r := range b.Readings {
		see(r.At)
	}
	for _, r := range b.Strikes {
		see(r.At)
	}
	for _, r := range b.Skips {
		see(r.At)
	}
	for _, r := range b.Heads {
		see(r.At)
	}
	return last
}
