package checks_test

import (
	"math"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks"
	"yokebook/measure"
)

// orderable is an invented truck with all that a tube is chosen by.
func orderable(t testing.TB) *bench {
	s := travelled(t, measure.NewLayout())
	s.read("shaft.length", "1200", measure.RideKerb, setup(2))
	s.obstacle("tank", "150", "800", "1")
	s.plate("tube.material", "1", "engine.rpm_max", "4000", "gear.highest", "1.000", "engine.torque_max", "300", "gear.lowest", "3.50", "tube.yield", "355")
	return s
}

func TestTubesAreListedSmallestClearFirst(t *testing.T) {
	s := orderable(t)
	table := checks.Tubes(s.b)[0]
	if len(table.Missing) != 0 || len(table.RestsOn) == 0 || table.Rows[0].Verdict != checks.Clear {
		t.Fatalf("missing %v, rests on %v, first row %q", table.Missing, table.RestsOn, table.Rows[0].Verdict)
	}
	first := table.Rows[0]
	ended := false
	for _, r := range table.Rows {
		if ended = ended || r.Verdict != checks.Clear; ended && r.Verdict == checks.Clear {
			t.Errorf("%g × %g is clear and stands behind others", r.OuterMM, r.WallMM)
		}
		if r.Verdict == checks.Clear && r.OuterMM < first.OuterMM {
			t.Errorf("%g is clear and smaller than the first, %g", r.OuterMM, first.OuterMM)
		}
		for name, n := range map[string]checks.TubeNumber{"speed": r.Critical, "stress": r.Stress, "clearance": r.Clearance} {
			if r.Verdict == checks.Clear && n.Verdict != checks.Clear || n.Value == nil || *n.Low > *n.Value || *n.High < *n.Value {
				t.Errorf("%g × %g: %s is %q (%v)", r.OuterMM, r.WallMM, name, n.Verdict, n.Value)
			}
		}
		if r.Twist.Verdict != checks.Unsaid || r.Twist.Value == nil {
			t.Errorf("twist of %g × %g is judged", r.OuterMM, r.WallMM)
		}
	}
	if !ended {
		t.Error("every size is clear: nothing was asked of them")
	}
}

// A row says the same of a size as the findings say of a shaft made from it.
func TestRowOfTheFittedTubeIsItsFinding(t *testing.T) {
	s := orderable(t).without("tube.od")
	s.plate("tube.od", "80.0000000", "tube.wall", "2.0000000")
	list := s.run()
	for _, r := range checks.Tubes(s.b)[0].Rows {
		if r.OuterMM != 80 || r.WallMM != 2 {
			continue
		}
		for key, n := range map[string]checks.TubeNumber{"shaft.critical_speed||": r.Critical, "shaft.stress||": r.Stress,
			"shaft.twist||": r.Twist, "shaft.clearance|tank|": r.Clearance} {
			f := find(t, list, key)
			if math.Abs(*f.Value-*n.Value) > 1e-6*math.Abs(*f.Value) || n.Limit != nil && n.Verdict != f.Verdict {
				t.Errorf("%s: %g %q in the table, %g %q as a finding", key, *n.Value, n.Verdict, *f.Value, f.Verdict)
			}
		}
		return
	}
	t.Error("80 × 2 is not in the series")
}

func TestTubesWaitForWhatTheyAreChosenBy(t *testing.T) {
	for _, point := range []string{"shaft.length", "tube.yield", "gear.lowest", "gear.highest", "obstacle.gap"} {
		s := orderable(t).without(point)
		table := checks.Tubes(s.b)[0]
		found := false
		for _, m := range table.Missing {
			found = found || m.Point == point
		}
		if !found || table.Rows[0].Verdict != checks.Waiting || table.Rows[0].Chance != nil {
			t.Errorf("without %s: missing %v, first row %q", point, table.Missing, table.Rows[0].Verdict)
		}
	}
	s := newBench(t, twoPiece())
	if tables := checks.Tubes(s.b); len(tables) != 2 || tables[0].Subject != "front_shaft" {
		t.Errorf("two shafts have %d tables", len(tables))
	}
}

// Any readings at all, sensible or not, of any layout: every finding is whole, the run before does
// not matter, and no table of tubes holds a number that is none.
func TestAnyReadingsGiveWholeFindings(t *testing.T) { rapid.Check(t, wholeFindings(t)) }

// FuzzFindings looks for a build on which that fails: `go test -fuzz FuzzFindings ./checks`.
func FuzzFindings(f *testing.F) {
	f.Fuzz(func(t *testing.T, data []byte) { rapid.MakeFuzz(wholeFindings(t))(t, data) })
}

func wholeFindings(t testing.TB) func(*rapid.T) {
	return func(rt *rapid.T) {
		s := anyBuild(rt, t)
		result := checks.Run(s.b, nil)
		for _, f := range result.Findings {
			checkWhole(rt, f)
			for _, m := range append(f.Notes, f.Advice) {
				for _, a := range m.Args {
					if n, ok := a.(float64); ok && (math.IsNaN(n) || math.IsInf(n, 0)) {
						rt.Fatalf("%s says %s with a number that is none", f.Key(), m.Key)
					}
				}
			}
		}
		for i, f := range checks.Run(s.b, result).Findings {
			if !reflect.DeepEqual(f, result.Findings[i]) {
				rt.Fatalf("a run after a run says %+v, the first said %+v", f, result.Findings[i])
			}
		}
	}
}

func anyBuild(rt *rapid.T, t testing.TB) *bench {
	l := measure.NewLayout()
	for _, c := range measure.LayoutChoices {
		*l.Member(c.Member) = rapid.SampledFrom(c.Choices).Draw(rt, c.Member)
	}
	l.Shafts = rapid.IntRange(1, 2).Draw(rt, "shafts")
	s := newBench(t, l)
	states := []measure.State{measure.Hanging, measure.RideKerb, measure.RideLaden, measure.OnBump, measure.OffBench}
	for _, p := range measure.Points {
		if p.Quantity == measure.Text || !p.In(l) || rapid.IntRange(0, 2).Draw(rt, "read "+p.Key) > 0 {
			continue
		}
		share := rapid.SampledFrom([]float64{0, 0.02, 0.3, 0.5, 0.7, 1}).Draw(rt, "share of "+p.Key)
		v, _ := measure.FloatValue(math.Round(p.Low + share*(p.High-p.Low)))
		st := rapid.SampledFrom(states).Draw(rt, "state of "+p.Key)
		s.read(p.Key, v.Token(), st, basis(rapid.SampledFrom([]measure.Basis{measure.Measured, measure.Stated, measure.Estimated}).Draw(rt, "basis")),
			height("500"), tag(rapid.SampledFrom([]string{"", "tank"}).Draw(rt, "tag")))
	}
	return s
}
