package checks_test

import (
	"math"
	"slices"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

func TestSweepOfALeafSprungAxle(t *testing.T) {
	s := onLeaves(t, measure.NewLayout())
	s.wholeTravel()
	s.spline(100, 30, 35)
	r := checks.Sweep(s.b)
	if r.Way != "leaf" || len(r.Missing) > 0 || !slices.Equal(r.Joints, []string{"front", "rear"}) || !has(r.Notes, checks.MsgPath) {
		t.Errorf("way %s, missing %v, joints %v, notes %v", r.Way, r.Missing, r.Joints, r.Notes)
	}
	if first, last := r.Rows[0], r.Rows[len(r.Rows)-1]; first.TravelMM != -120 || last.TravelMM != 100 {
		t.Errorf("from %g to %g, want −120 to 100", first.TravelMM, last.TravelMM)
	}
	for i, row := range r.Rows {
		if i > 0 && !(row.TravelMM > r.Rows[i-1].TravelMM && row.TravelMM-r.Rows[i-1].TravelMM <= 10+1e-9) {
			t.Errorf("a step from %g to %g", r.Rows[i-1].TravelMM, row.TravelMM)
		}
		want := ofLeaves(row.TravelMM)
		slope := math.Asin((120-row.TravelMM)/want) * 180 / math.Pi
		for _, c := range []struct {
			name string
			got  *checks.Span
			want float64
		}{{"length", row.Length, want}, {"slide", row.Slide, want - ofLeaves(0)}, {"exposed", row.Exposed, 30 + want - ofLeaves(0)},
			{"front joint", row.Angles[0], math.Abs(slope - 5)}, {"rear joint", row.Angles[1], math.Abs(slope - 5)}} {
			if c.got == nil || math.Abs(c.got.Value-c.want) > 1e-6 || c.got.Low > c.got.Value || c.got.High < c.got.Value {
				t.Errorf("at %+g: %s %+v, want %.4f", row.TravelMM, c.name, c.got, c.want)
			}
		}
		if read := math.Abs(row.TravelMM) < 1e-9; row.Predicted == read || read != (row.State == measure.RideKerb) {
			t.Errorf("at %+g: predicted %v, state %s", row.TravelMM, row.Predicted, row.State)
		}
	}
}

// No joint angle is less than 0, however small and doubtful it is.
func TestSweepBandsOfAnglesEndAtZero(t *testing.T) {
	s := onLeaves(t, measure.NewLayout())
	s.wholeTravel()
	for i := range s.b.Readings {
		s.b.Readings[i].Instrument = ""
	}
	touched := false
	for _, row := range checks.Sweep(s.b).Rows {
		for _, a := range append(row.Angles, row.Residual, row.Ripple) {
			if a.Low < 0 {
				t.Errorf("at %+g: %+v", row.TravelMM, *a)
			}
			touched = touched || a.Low == 0
		}
	}
	if !touched {
		t.Error("no band reaches down to 0: nothing was tried")
	}
}

// By sensitivities the intervals are near to those that sampling gives at the heights of findings.
func TestSweepIntervalsAreNearToSampledOnes(t *testing.T) {
	s := onLeaves(t, measure.NewLayout())
	s.wholeTravel()
	for i := range s.b.Readings {
		if s.b.Readings[i].Instrument == "exact" || s.b.Readings[i].Instrument == "rule" && s.b.Readings[i].Point != "hub.height" {
			s.b.Readings[i].Instrument = ""
		}
	}
	list, r := s.run(), checks.Sweep(s.b)
	for _, c := range []struct {
		key string
		row checks.SweepRow
	}{{"joint.angle|front|droop/none", r.Rows[0]}, {"joint.angle|front|bump/laden", r.Rows[len(r.Rows)-1]}} {
		f, got := find(t, list, c.key), c.row.Angles[0]
		if wide, want := got.High-got.Low, *f.High-*f.Low; math.Abs(got.Value-*f.Value) > 1e-9 || math.Abs(wide-want) > 0.1*want {
			t.Errorf("%s: %.3f, %.3f wide by sensitivities; %.3f, %.3f by sampling", c.key, got.Value, wide, *f.Value, want)
		}
	}
}

func TestSweepSaysWhatItWaitsFor(t *testing.T) {
	empty := checks.Sweep(newBench(t, measure.NewLayout()).b)
	if len(empty.Rows) > 0 || len(empty.Missing) == 0 || empty.Way != "" {
		t.Errorf("nothing read: %d rows, missing %v", len(empty.Rows), empty.Missing)
	}
	fixed := measure.NewLayout()
	fixed.Axle = "fixed"
	s := newBench(t, fixed)
	s.slopes(measure.RideKerb, "3", "5", "3")
	if r := checks.Sweep(s.b); len(r.Rows) != 1 || r.Rows[0].Predicted || r.Way != "fixed" || len(r.Missing) > 0 {
		t.Errorf("fixed axle: %+v", r)
	}
	s = newBench(t, measure.NewLayout())
	s.slopes(measure.Hanging, "3", "9", "2", height("600"))
	s.slopes(measure.RideKerb, "3", "5", "3", height("500"))
	r := checks.Sweep(s.b)
	if r.Way != "read" || len(r.Rows) != 11 || r.Rows[0].Angles[0] == nil || r.Rows[0].Length != nil || r.Rows[0].Predicted || !r.Rows[5].Predicted {
		t.Errorf("two states read: way %s, %d rows, %+v", r.Way, len(r.Rows), r.Rows[0])
	}
	if !slices.Contains(r.Missing, checks.Missing{Point: "bump.gap", State: measure.RideKerb}) {
		t.Errorf("missing %v, want the gap to the bump stops", r.Missing)
	}
}

func TestSweepOfASlipInTheGearboxKeepsTheShaft(t *testing.T) {
	s := onLeaves(t, inTheTail())
	s.wholeTravel()
	for _, row := range checks.Sweep(s.b).Rows {
		if math.Abs(row.Length.Value-math.Hypot(1230, 120)) > 1e-9 || row.Exposed != nil {
			t.Errorf("at %+g: shaft %+v, exposed %+v that nobody read", row.TravelMM, row.Length, row.Exposed)
		}
	}
}

// Without doubt a sweep says the same numbers, and no ends beside them.
func TestSweepOfBestValuesSaysTheSameNumbers(t *testing.T) {
	s := onLeaves(t, measure.NewLayout())
	s.wholeTravel()
	s.spline(100, 30, 35)
	for i := range s.b.Readings {
		s.b.Readings[i].Instrument = "" // read with nothing known: there is doubt
	}
	with, without := checks.Sweep(s.b), checks.SweepBest(s.b)
	if len(without.Rows) != len(with.Rows) || len(with.Rows) < 10 {
		t.Fatalf("%d rows, want the %d of a sweep with doubt", len(without.Rows), len(with.Rows))
	}
	if a := with.Rows[1].Angles[0]; a.Low == a.High {
		t.Fatal("the sweep has no doubt to be left out")
	}
	for i, w := range without.Rows {
		full := with.Rows[i]
		for j, pair := range [][2]*checks.Span{{w.Length, full.Length}, {w.Exposed, full.Exposed}, {w.Residual, full.Residual},
			{w.Ripple, full.Ripple}, {w.Angles[0], full.Angles[0]}, {w.Angles[1], full.Angles[1]}} {
			got, want := pair[0], pair[1]
			if got == nil || want == nil || math.Abs(got.Value-want.Value) > 1e-9 || got.Low != got.Value || got.High != got.Value {
				t.Errorf("row %d, number %d: %+v, with doubt %+v", i, j, got, want)
			}
		}
	}
}
