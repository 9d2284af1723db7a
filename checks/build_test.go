package checks_test

import (
	"fmt"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// bench builds a measure.Build reading by reading, as a person would.
type bench struct {
	t testing.TB
	b *measure.Build
	n int
}

const buildID = "019d2a00-0000-7000-8000-00000000b001"

func newBench(t testing.TB, l measure.Layout) *bench {
	return &bench{t: t, b: &measure.Build{ID: buildID, Title: "invented", Layout: l}}
}

// option changes a reading before it is kept.
type option func(*measure.Reading)

func setup(n int) option            { return func(r *measure.Reading) { r.Setup = n } }
func with(instrument string) option { return func(r *measure.Reading) { r.Instrument = instrument } }
func basis(b measure.Basis) option  { return func(r *measure.Reading) { r.Basis = b } }
func height(mm string) option {
	return func(r *measure.Reading) { r.Height, _ = measure.NumberValue(mm) }
}

// read adds a reading; value is the token as typed.
func (s *bench) read(point, value string, st measure.State, opts ...option) measure.ID {
	s.t.Helper()
	p, ok := measure.PointOf(point)
	if !ok {
		s.t.Fatalf("no point %q", point)
	}
	s.n++
	v, err := measure.NumberValue(value)
	if err != nil {
		s.t.Fatal(err)
	}
	r := measure.Reading{ID: measure.ID(fmt.Sprintf("019d2a00-0000-7000-8000-%012x", s.n)), Point: point, Value: v,
		Unit: p.Quantity.Base(), Basis: measure.Measured, Ride: st.Ride, Load: st.Load, Setup: 1}
	for _, o := range opts {
		o(&r)
	}
	if err := r.Validate(s.b.Instruments); err != nil {
		s.t.Fatal(err)
	}
	s.b.Readings = append(s.b.Readings, r)
	return r.ID
}

// slopes adds gearbox, shaft and pinion of a one-piece line.
func (s *bench) slopes(st measure.State, gearbox, shaft, pinion string, opts ...option) {
	s.read("gearbox.slope", gearbox, st, opts...)
	s.read("shaft.slope", shaft, st, opts...)
	s.read("pinion.slope", pinion, st, opts...)
}

// inPlan adds plan angles of 0 and yokes in line, read exactly.
func (s *bench) inPlan() {
	s.tool("exact", "0", "0", "0")
	for _, p := range []string{"gearbox.plan", "shaft.plan", "pinion.plan"} {
		s.read(p, "0", measure.RideKerb, with("exact"))
	}
	s.read("shaft.phase", "0", measure.OffBench, with("exact"))
}

// tool adds a finder that is good to the numbers given, in degrees.
func (s *bench) tool(id, resolution, accuracy, placing string) {
	n := func(t string) measure.Value { v, _ := measure.NumberValue(t); return v }
	s.b.Instruments = append(s.b.Instruments, measure.Instrument{ID: id, Kind: "angle", Unit: "deg",
		Resolution: n(resolution), Accuracy: n(accuracy), Placing: n(placing)})
}

func (s *bench) run() []checks.Finding { return checks.Run(s.b, nil).Findings }

// find returns the one finding of a key such as "joint.angle|rear|ride/kerb".
func find(t testing.TB, list []checks.Finding, key string) checks.Finding {
	t.Helper()
	var keys string
	for _, f := range list {
		if f.Key() == key {
			return f
		}
		keys += "\n  " + f.Key()
	}
	t.Fatalf("no finding %s among%s", key, keys)
	return checks.Finding{}
}

func number(t testing.TB, p *float64) float64 {
	t.Helper()
	if p == nil {
		t.Fatal("no number")
	}
	return *p
}
