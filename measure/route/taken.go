package route

import (
	"time"

	"yokebook/measure"
)

// place is a stop as a key. Readings are told apart by their tags before they are counted.
type place struct {
	point string
	state measure.State
	tag   string
}

// taken counts readings by where they count.
type taken struct {
	here       map[place]int  // in their own state
	everywhere map[string]int // bench and stated: in every state
	any        map[string]int // all of a point
}

func count(readings []measure.Reading) taken {
	t := taken{map[place]int{}, map[string]int{}, map[string]int{}}
	for _, r := range readings {
		t.any[r.Point]++
		if r.Ride == measure.Bench || r.Basis == measure.Stated {
			t.everywhere[r.Point]++
		} else {
			t.here[place{point: r.Point, state: r.State()}]++
		}
	}
	return t
}

func (t taken) at(point string, state measure.State) int {
	if state == measure.OffBench {
		return t.any[point]
	}
	return t.here[place{point: point, state: state}] + t.everywhere[point]
}

// Skips lists the skips of a build that were not taken back. Which take back which does not hang on
// their order, so that files merged in any order say the same.
func Skips(b *measure.Build) []measure.Skip {
	gone := map[measure.ID]bool{}
	for _, s := range b.Skips {
		if s.Back != "" {
			gone[s.Back] = true
		}
	}
	var out []measure.Skip
	for _, s := range b.Skips {
		if s.Back == "" && !gone[s.ID] {
			out = append(out, s)
		}
	}
	return out
}

// newestSkips keeps for each place the skip that was made last.
func newestSkips(skips []measure.Skip) map[place]measure.Skip {
	newest := map[place]measure.Skip{}
	for _, s := range skips {
		at := place{s.Point, s.State(), s.Tag}
		if old, ok := newest[at]; !ok || newer(s, old) {
			newest[at] = s
		}
	}
	return newest
}

// newer orders skips by time, then by id. Times may be written in different zones; one that can't
// be read is older than any that can.
func newer(a, b measure.Skip) bool {
	at, _ := time.Parse(time.RFC3339Nano, a.At)
	bt, _ := time.Parse(time.RFC3339Nano, b.At)
	if !at.Equal(bt) {
		return at.After(bt)
	}
	return a.ID > b.ID
}
