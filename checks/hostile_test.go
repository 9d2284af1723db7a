package checks_test

import (
	"math"
	"testing"

	"yokebook/checks"
	"yokebook/measure"
)

// A size that no part has is possible in a file: its square is no number, its share of the doubt is.
func TestShareOfTheDoubtStaysANumber(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.read("bellhousing.bore_runout", "1e300", measure.OffBench, basis(measure.Estimated))
	f := find(t, s.run(), "clutch.runout|bore|bench")
	if f.Verdict != checks.Out || f.Weakest == nil || f.Weakest.Share != 1 || math.IsInf(*f.High, 0) {
		t.Errorf("%s, weakest %+v", f.Verdict, f.Weakest)
	}
}

// Links that can't reach a height leave nothing to take: one of what was read is wrong.
func TestReadingsThatGiveNoNumberSaySo(t *testing.T) {
	s := newBench(t, onLinks())
	s.inPlan()
	axleOnLinks(s)
	s.slopes(measure.RideKerb, "3", "4", "2", with("exact"))
	s.mm(measure.RideKerb, map[string]float64{"hub.height": 500, "shaft.length": 952, "slip.exposed": 30})
	s.mm(measure.Hanging, map[string]float64{"hub.height": 5000})
	s.mm(measure.OnBump, map[string]float64{"hub.height": 420})
	s.mm(measure.OffBench, map[string]float64{"slip.usable": 100, "slip_male.major": 35, "slip_male.length": 150, "slip_female.length": 150})
	s.read("joint.angle_limit", "25", measure.OffBench, basis(measure.Stated))
	list := s.run()
	for _, key := range []string{"slip.travel||", "slip.closing||", "joint.most_angle|front|", "joint.most_angle|rear|"} {
		f := find(t, list, key)
		if f.Verdict != checks.Waiting || len(f.Missing) > 0 || f.Advice.Key != checks.MsgNoNumber {
			t.Errorf("%s: %s, missing %v, advice %v", key, f.Verdict, f.Missing, f.Advice)
		}
	}
}

// Slopes out of a book hold in every state, but the vehicle was never read as it runs: each finding
// names what to read, and so does the one that was read hanging.
func TestStatedSlopesAskForReadings(t *testing.T) {
	s := newBench(t, measure.NewLayout())
	s.slopes(measure.OffBench, "2.0", "3.0", "2.0", basis(measure.Stated))
	for _, key := range []string{"joint.angle|front|", "joint.residual||"} {
		f := find(t, s.run(), key)
		if f.Verdict != checks.Waiting || len(f.Missing) != 3 || f.Missing[0].State != measure.RideKerb || f.Advice.Key != checks.MsgTakeMissing {
			t.Errorf("%s: %s, missing %v, %v", key, f.Verdict, f.Missing, f.Advice)
		}
	}
	s.read("shaft.slope", "9", measure.Hanging)
	if f := find(t, s.run(), "joint.angle|front|droop/none"); f.Verdict != checks.Waiting || len(f.Missing) == 0 || len(f.Advice.Args) != 1 {
		t.Errorf("hanging: %s, missing %v, %v", f.Verdict, f.Missing, f.Advice)
	}
}
