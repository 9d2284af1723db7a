package remedy_test

import (
	"context"
	"errors"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"strconv"
	"testing"

	"yokebook/checks"
	"yokebook/checks/remedy"
	"yokebook/measure"
)

func next(t testing.TB, b *measure.Build) []remedy.Reading {
	t.Helper()
	list, err := remedy.Next(context.Background(), b)
	if err != nil {
		t.Fatal(err)
	}
	return list
}

// undecided are the findings that are unsure or wait, of which something was read, and that are not about
// readings or the build.
func undecided(findings []checks.Finding) []checks.Finding {
	var out []checks.Finding
	for _, f := range findings {
		c, _ := checks.CheckOf(f.Check)
		open := f.Verdict == checks.Unsure || f.Verdict == checks.Waiting
		if open && !f.Untouched && c.Group != "reading" && c.Group != "build" && c.Group != "fit" {
			out = append(out, f)
		}
	}
	return out
}

// settled counts how many of them another run of the build has decided: clear, out, or not judged any more;
// what waited for any state at all, once one of its kind is clear or out.
func settled(before []checks.Finding, b *measure.Build) int {
	only := func(check string) bool {
		return slices.ContainsFunc(before, func(f checks.Finding) bool { return f.Check == check })
	}
	after := checks.RunOnly(b, nil, only).Findings
	n := 0
	for _, f := range before {
		if slices.ContainsFunc(after, func(g checks.Finding) bool {
			sure := g.Verdict == checks.Clear || g.Verdict == checks.Out
			same := g.State == f.State && (sure || g.Verdict == checks.Unsaid)
			return g.Check == f.Check && g.Subject == f.Subject && (same || sure && f.State == measure.State{})
		}) {
			n++
		}
	}
	return n
}

// simulated is a build with open questions, and what is believed of the points that it may be asked for.
type simulated struct {
	name    string
	build   func(s *bench)
	believe map[string]belief // of the points that were never read
}

type belief struct {
	middle, half float64 // every value between is as likely
}

// Beliefs: a plan angle that was not read ±1 or ±2°, a phase ±3° (the program's table of what is assumed);
// other points in the whole of what such parts have (its table of points).
var simulations = []simulated{
	{"plan angles never read", func(s *bench) {
		s.tool("finder", "deg", "0.1")
		s.read("gearbox.slope", "3.0", measure.RideKerb, "finder")
		s.read("shaft.slope", "5.4", measure.RideKerb, "finder")
		s.read("pinion.slope", "3.1", measure.RideKerb, "finder")
		s.read("shaft.phase", "0", measure.OffBench, "finder")
		s.plate("engine.rpm_max", "3800", "gear.highest", "0.85")
	}, map[string]belief{"shaft.plan": {0, 2}, "gearbox.plan": {0, 1}, "pinion.plan": {0, 1}}},
	{"phase never read", func(s *bench) {
		s.tool("finder", "deg", "0.1")
		for _, p := range []string{"gearbox.plan", "shaft.plan", "pinion.plan"} {
			s.read(p, "0", measure.RideKerb, "finder")
		}
		s.read("gearbox.slope", "0.0", measure.RideKerb, "finder")
		s.read("shaft.slope", "9.0", measure.RideKerb, "finder")
		s.read("pinion.slope", "0.0", measure.RideKerb, "finder")
	}, map[string]belief{"shaft.phase": {0, 3}}},
	{"a coarse finder on one part", func(s *bench) {
		s.tool("fine", "deg", "0.05")
		s.tool("coarse", "deg", "1")
		for _, p := range []string{"gearbox.plan", "shaft.plan", "pinion.plan"} {
			s.read(p, "0", measure.RideKerb, "fine")
		}
		s.read("shaft.phase", "0", measure.OffBench, "fine")
		s.read("gearbox.slope", "3.0", measure.RideKerb, "fine")
		s.read("shaft.slope", "5.5", measure.RideKerb, "fine")
		s.read("pinion.slope", "2.8", measure.RideKerb, "coarse")
	}, nil},
	{"slip without its place", func(s *bench) {
		s.b.Layout.Axle = "fixed"
		s.line("3.0", "4.5", "3.0")
		s.read("shaft.length", "900", measure.RideKerb)
		s.bare("slip.usable", "90", "slip_male.major", "32", "slip_male.length", "80", "slip_female.length", "80")
		s.bare("tube.od", "60")
	}, map[string]belief{"slip.exposed": {150, 150}, "tube.wall": {5.4, 4.6}}},
}

// taken draws a true value of what a reading asks for, lets the reading show it as its tool would, and adds
// it; nil for kinds that are simulated elsewhere.
func (m simulated) taken(rng *rand.Rand, b *measure.Build, r remedy.Reading) *measure.Build {
	flat := func(half float64) float64 { return float64((2*rng.Float64() - 1) * half) }
	out := *b
	out.Readings, out.Instruments = slices.Clone(b.Readings), slices.Clone(b.Instruments)
	value := func(f float64) measure.Value {
		v, _ := measure.NumberValue(strconv.FormatFloat(f, 'f', 6, 64))
		return v
	}
	p, _ := measure.PointOf(r.Point)
	switch r.Kind {
	case remedy.ReadNew:
		at, known := m.believe[r.Point]
		if !known {
			at = belief{(p.Low + p.High) / 2, (p.High - p.Low) / 2}
		}
		if p.Quantity == measure.Text || p.Quantity == measure.Count || len(p.Codes) > 0 {
			return nil
		}
		one := measure.Reading{ID: "019d2a00-0000-7000-8000-0000000aaaaa", Point: r.Point, Unit: p.Quantity.Base(), Basis: measure.Measured,
			Ride: r.State.Ride, Load: r.State.Load, Setup: 1, Instrument: r.Instrument}
		if p.Basis == measure.Stated {
			one.Basis = measure.Stated
		}
		tool := checks.ToolOf(b, one)
		one.Value = value(at.middle + flat(at.half) + flat(tool.Accuracy) + flat(tool.Zero) + tool.Placing*rng.NormFloat64())
		out.Readings = append(out.Readings, one)
	case remedy.ReadBetter:
		for i, was := range out.Readings {
			if was.Point != r.Point || was.State() != r.State {
				continue
			}
			tool := checks.ToolOf(b, was)
			x, _ := was.Number()
			truth := x - flat(tool.Accuracy) - flat(tool.Zero) - flat(tool.Resolution/2) - tool.Placing*rng.NormFloat64()
			in := measure.Instrument{ID: "twice", Kind: "other", Unit: p.Quantity.Base(), Resolution: value(tool.Resolution / 2),
				Accuracy: value(tool.Accuracy / 2), Zero: value(0), Placing: value(tool.Placing)}
			out.Instruments = append(out.Instruments, in)
			out.Readings[i].Instrument = in.ID
			out.Readings[i].Value = value(truth + flat(tool.Accuracy/2) + flat(tool.Resolution/4) + tool.Placing*rng.NormFloat64())
		}
	default:
		return nil
	}
	return &out
}

// The true value is drawn, the reading taken and added, and what a full run has decided is counted, 200 times
// with each of the first readings of the ranking: the first one decides most, and about as many as was foretold.
func TestTheFirstToReadDecidesMost(t *testing.T) {
	const cases = 200
	for n, m := range simulations {
		s := newBench(t, measure.NewLayout())
		m.build(s)
		open := undecided(checks.Run(s.b, nil).Findings)
		list := next(t, s.b)
		if len(list) < 2 {
			t.Fatalf("%s: only %d readings are ranked", m.name, len(list))
		}
		first, compared := 0.0, 0
		for i, r := range list[:min(len(list), 6)] {
			rng := rand.New(rand.NewPCG(uint64(n), uint64(i)))
			sum, squares, drawn := 0.0, 0.0, 0
			for range cases {
				b := m.taken(rng, s.b, r)
				if b == nil {
					break
				}
				k := float64(settled(open, b))
				sum, squares, drawn = sum+k, squares+k*k, drawn+1
			}
			if drawn == 0 {
				continue
			}
			mean := sum / cases
			deviation := math.Sqrt(max(0, squares/cases-mean*mean) / cases)
			const coarse = 0.2 // fifteen outcomes stand for all, and those behind the leaders are judged by few draws
			if math.Abs(mean-r.Decides) > coarse+3*deviation {
				t.Errorf("%s: %s %s decides %.2f ± %.2f of %d, foretold %.2f", m.name, r.Kind, r.Point, mean, deviation, len(open), r.Decides)
			}
			if compared == 0 {
				first = mean
			} else if mean > first+2*deviation {
				t.Errorf("%s: %s %s decides %.2f, the first of the ranking %.2f", m.name, r.Kind, r.Point, mean, first)
			}
			compared++
		}
		if first == 0 || compared < 2 {
			t.Errorf("%s: the first decides %.2f, %d were compared: the test proves nothing", m.name, first, compared)
		}
	}
}

func TestNextIsPureAndEndsWithItsContext(t *testing.T) {
	b := invented(t, "demo.json")
	if !reflect.DeepEqual(next(t, b), next(t, b)) || !reflect.DeepEqual(b, invented(t, "demo.json")) {
		t.Error("another answer the second time, or the build was changed")
	}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if list, err := remedy.Next(ctx, b); !errors.Is(err, context.Canceled) || list != nil {
		t.Errorf("got %v, %v", list, err)
	}
}
