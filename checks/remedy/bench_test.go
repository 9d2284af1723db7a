package remedy_test

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
	"yokebook/measure/document"
)

// bench builds a measure.Build reading by reading, as a person would.
type bench struct {
	t testing.TB
	b *measure.Build
	n int
}

func newBench(t testing.TB, l measure.Layout) *bench {
	return &bench{t: t, b: &measure.Build{ID: "019d2a00-0000-7000-8000-00000000b007", Title: "invented", Layout: l}}
}

// tool adds an instrument that is good to the accuracy given, in its unit, and shows ever so much.
func (s *bench) tool(id string, unit measure.Unit, accuracy string) {
	n := func(t string) measure.Value { v, _ := measure.NumberValue(t); return v }
	s.b.Instruments = append(s.b.Instruments, measure.Instrument{ID: id, Kind: "other", Unit: unit,
		Resolution: n("0"), Accuracy: n(accuracy), Zero: n("0"), Placing: n("0")})
}

// read adds a measured reading; value is the token as typed.
func (s *bench) read(point, value string, st measure.State, instrument ...string) measure.ID {
	return s.add(point, value, st, measure.Measured, instrument...)
}

// state adds a stated value.
func (s *bench) state(point, value string) measure.ID {
	return s.add(point, value, measure.OffBench, measure.Stated)
}

func (s *bench) add(point, value string, st measure.State, basis measure.Basis, instrument ...string) measure.ID {
	s.t.Helper()
	p, ok := measure.PointOf(point)
	if !ok {
		s.t.Fatalf("no point %q", point)
	}
	s.n++
	v, err := measure.NumberValue(value)
	if p.Quantity == measure.Text {
		v, err = measure.TextValue(value), nil
	}
	if err != nil {
		s.t.Fatal(err)
	}
	r := measure.Reading{ID: measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", s.n)), Point: point, Value: v,
		Unit: p.Quantity.Base(), Basis: basis, Ride: st.Ride, Load: st.Load, Setup: 1}
	if len(instrument) > 0 {
		r.Instrument = instrument[0]
	}
	if err := r.Validate(s.b.Instruments); err != nil {
		s.t.Fatal(err)
	}
	s.b.Readings = append(s.b.Readings, r)
	return r.ID
}

// finder reads the three slopes of a one-piece line with a good finder, and plans and phase of 0.
func (s *bench) line(gearbox, shaft, pinion string) {
	s.tool("finder", "deg", "0.1")
	s.read("gearbox.slope", gearbox, measure.RideKerb, "finder")
	s.read("shaft.slope", shaft, measure.RideKerb, "finder")
	s.read("pinion.slope", pinion, measure.RideKerb, "finder")
	for _, p := range []string{"gearbox.plan", "shaft.plan", "pinion.plan"} {
		s.read(p, "0", measure.RideKerb, "finder")
	}
	s.read("shaft.phase", "0", measure.OffBench, "finder")
}

func (s *bench) solve() *remedy.Report { return solve(s.t, s.b) }

func solve(t testing.TB, b *measure.Build) *remedy.Report {
	t.Helper()
	r, err := remedy.Solve(context.Background(), b, nil)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// invented reads one of the invented builds.
func invented(t testing.TB, name string) *measure.Build {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "testdata", "builds", name))
	if err != nil {
		t.Fatal(err)
	}
	b, _, err := document.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// troubleOf is the trouble of a check and subject.
func troubleOf(t testing.TB, r *remedy.Report, check, subject string) remedy.Trouble {
	t.Helper()
	for _, x := range r.Troubles {
		if x.Check == check && x.Subject == subject {
			return x
		}
	}
	t.Fatalf("no trouble %s %s", check, subject)
	return remedy.Trouble{}
}

// ofFindings are the findings of a check and subject that are judged.
func ofFindings(b *measure.Build, check, subject string) []checks.Finding {
	var out []checks.Finding
	for _, f := range checks.Run(b, nil).Findings {
		if f.Check == check && f.Subject == subject && f.Verdict != checks.Unsaid {
			out = append(out, f)
		}
	}
	return out
}
