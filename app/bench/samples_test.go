package bench

import (
	"slices"
	"testing"
	"time"
)

// frame is how long one picture of a display stands at 60 pictures per second.
const frame = time.Second / 60

// samples are the waits of one run.
type samples []time.Duration

// at returns the smallest sample that the share p of all samples does not exceed.
func (s samples) at(p float64) time.Duration {
	sorted := slices.Sorted(slices.Values(s))
	i := int(p*float64(len(sorted))+0.999999) - 1
	return sorted[min(max(i, 0), len(sorted)-1)]
}

// report gives the samples to the benchmark instead of its own mean.
func (s samples) report(b *testing.B) {
	b.Helper()
	b.ReportMetric(0, "ns/op")
	for _, q := range []struct {
		name string
		p    float64
	}{{"p50", 0.50}, {"p99", 0.99}} {
		wait := s.at(q.p)
		b.ReportMetric(float64(wait)/float64(time.Millisecond), q.name+"-ms")
		b.ReportMetric(float64(wait)/float64(frame), q.name+"-frames")
	}
}

func TestSamplesAt(t *testing.T) {
	hundred := make(samples, 100)
	for i := range hundred {
		hundred[i] = time.Duration(100 - i) // 100 … 1, unsorted on purpose
	}
	for _, row := range []struct {
		name string
		s    samples
		p    float64
		want time.Duration
	}{
		{"median of 1 … 100, nearest rank", hundred, 0.50, 50},
		{"99th of 1 … 100, nearest rank", hundred, 0.99, 99},
		{"median of one", samples{7}, 0.50, 7},
		{"99th of three is the largest", samples{3, 1, 2}, 0.99, 3},
	} {
		if got := row.s.at(row.p); got != row.want {
			t.Errorf("%s: got %d, want %d", row.name, got, row.want)
		}
	}
}
