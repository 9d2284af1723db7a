package checks_test

import (
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// plate adds stated values, point and value in turn.
func (s *bench) plate(pairs ...string) {
	s.t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		s.read(pairs[i], pairs[i+1], measure.OffBench, basis(measure.Stated))
	}
}

// bare adds values measured off the vehicle, lengths with a caliper, point and value in turn.
func (s *bench) bare(pairs ...string) {
	s.t.Helper()
	if _, ok := measure.InstrumentOf(s.b.Instruments, "caliper"); !ok {
		s.b.Instruments = append(s.b.Instruments, measure.Instrument{ID: "caliper", Kind: "caliper", Unit: "mm"})
	}
	for i := 0; i < len(pairs); i += 2 {
		tool := ""
		if p, _ := measure.PointOf(pairs[i]); p.Quantity == measure.Length {
			tool = "caliper"
		}
		s.read(pairs[i], pairs[i+1], measure.OffBench, with(tool))
	}
}

// under adds measured values taken under the vehicle as it stands, point and value in turn.
func (s *bench) under(pairs ...string) {
	s.t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		s.read(pairs[i], pairs[i+1], measure.RideKerb)
	}
}

// without drops every reading of some points.
func (s *bench) without(points ...string) *bench {
	keep := &bench{t: s.t, b: &measure.Build{ID: buildID, Title: s.b.Title, Layout: s.b.Layout, Instruments: s.b.Instruments, Limits: s.b.Limits}, n: s.n}
	for _, r := range s.b.Readings {
		gone := false
		for _, p := range points {
			gone = gone || r.Point == p
		}
		if !gone {
			keep.b.Readings = append(keep.b.Readings, r)
		}
	}
	return keep
}

// says fails unless the finding of a key has the verdict, and gives it back.
func (s *bench) says(key string, want checks.Verdict) checks.Finding {
	s.t.Helper()
	f := find(s.t, s.run(), key)
	if f.Verdict != want {
		value := "nothing"
		if f.Value != nil {
			value = formatted(*f.Value)
		}
		s.t.Errorf("%s is %q at %s, want %q; missing %v, advice %v", key, f.Verdict, value, want, f.Missing, f.Advice)
	}
	return f
}

func waitsFor(t testing.TB, f checks.Finding, point string) {
	t.Helper()
	for _, m := range f.Missing {
		if m.Point == point {
			return
		}
	}
	t.Errorf("%s waits for %v, not for %s", f.Key(), f.Missing, point)
}
