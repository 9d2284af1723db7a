package sheet

import (
	"slices"
	"testing"
	"time"

	"yokebook/checks"
)

// A sheet from nothing: the findings, the sheet and the document. 150 ms at the median are allowed.
func BenchmarkSheet(b *testing.B) {
	build := buildOf(b, "gearbox-slip")
	var took []time.Duration
	for b.Loop() {
		start := time.Now()
		s, err := Make(build, checks.Run(build, nil), Options{})
		if err != nil {
			b.Fatal(err)
		}
		if _, err := s.PDF(); err != nil {
			b.Fatal(err)
		}
		took = append(took, time.Since(start))
	}
	slices.Sort(took)
	b.ReportMetric(float64(took[len(took)/2].Microseconds())/1000, "ms-median")
}
