package route

import (
	"time"

	"yokebook/measure"
)

// place is a stop as a key.
type place struct {
	point string
	state measure.State
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
			t.here[place{r.Point, r.State()}]++
		}
	}
	return t
}

func (t taken) at(point string, state measure.State) int {
	if state == measure.OffBench {
		return t.any[point]
	}
	return t.here[place{point, state}] + t.everywhere[point]
}

// newestSkips keeps for each place the skip that was made last.
func newestSkips(skips []measure.Skip) map[place]measure.Skip {
	newest := map[place]measure.Skip{}
	for _, s := range skips {
		at := place{s.Point, s.State()}
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
