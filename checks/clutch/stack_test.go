package clutch

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const byHand = "two depths from one face, worked apart from this code"

func TestGapOfTheReleaseBearing(t *testing.T) {
	for _, row := range []struct {
		name string
		s    Stack
		want float64
	}{
		{"no adapter", Stack{0, 25, 45, 150, 75}, 5},
		{"an adapter moves the gearbox away", Stack{20, 25, 45, 150, 75}, 25},
		{"flywheel face inside the block's face", Stack{0, -10, 45, 110, 72}, 3},
		{"bearing pushes the fingers already", Stack{0, 30, 50, 150, 75}, -5},
	} {
		near(t, row.name, row.s.GapMM(), row.want, 1e-9, byHand)
	}
}

func TestWindowOfAPushClutch(t *testing.T) {
	for _, row := range []struct {
		name        string
		p           Push
		least, most float64
		none        bool
	}{
		{"wear and reserve decide", Push{22, 4, 2, 12, 20}, 6, 10, false},
		{"the most that the fingers stand decides", Push{22, 1, 1, 12, 15}, 7, 10, false},
		{"a short stroke", Push{14, 4, 2, 12, 20}, 0, 0, true},
		{"just enough", Push{18, 4, 2, 12, 20}, 6, 6, false},
	} {
		least, most, err := row.p.Window()
		if (err != nil) != row.none {
			t.Errorf("%s: %v", row.name, err)
		}
		near(t, row.name+", least", least, row.least, 1e-9, byHand)
		near(t, row.name+", most", most, row.most, 1e-9, byHand)
	}
	near(t, "bearing 5 mm too far back", CentreMM(13, 6, 10), 5, 1e-9, byHand)
	if _, _, err := (Push{math.NaN(), 4, 2, 12, 20}).Window(); err == nil {
		t.Error("a stroke that is none has a window")
	}
}

// Either cure puts the gap into the middle of its window: a spacer behind the bearing, or the
// friction face nearer to the gearbox.
func TestBothCuresCentreTheGap(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		mm := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(rt, name) }
		s := Stack{mm("adapter", 0, 60), mm("flywheel", -60, 80), mm("fingers", 20, 70), mm("depth", 80, 250), mm("bearing", 20, 160)}
		p := Push{mm("stroke", 18, 40), mm("wear", 0, 4), mm("reserve", 0, 2), mm("travel", 6, 12), mm("most", 25, 40)}
		least, most, err := p.Window()
		if err != nil {
			rt.Fatal(err)
		}
		shift := CentreMM(s.GapMM(), least, most)
		spacer, flywheel := s, s
		spacer.BearingMM += shift
		flywheel.FlywheelMM += shift
		for _, cured := range []Stack{spacer, flywheel} {
			if math.Abs(cured.GapMM()-(least+most)/2) > 1e-9 {
				rt.Fatalf("%+v moved by %g has a gap of %g, want the middle of %g … %g", s, shift, cured.GapMM(), least, most)
			}
		}
	})
}

func TestOverlap(t *testing.T) {
	shaft := Span{20, 60}
	for _, row := range []struct {
		name string
		hub  Span
		want float64
	}{
		{"whole hub", Span{25, 50}, 25}, {"hub beyond the tip end", Span{10, 35}, 15},
		{"hub beyond the gearbox end", Span{45, 70}, 15}, {"never met", Span{70, 90}, -10},
	} {
		near(t, row.name, shaft.OverlapMM(row.hub), row.want, 1e-9, byHand)
		near(t, row.name+", asked the other way", row.hub.OverlapMM(shaft), row.want, 1e-9, byHand)
	}
	near(t, "worn disc moves to the engine", shaft.OverlapMM(Span{21, 46}.Moved(-2)), 24, 1e-9, byHand)
}

func TestNoseInTheSpigotBearing(t *testing.T) {
	// Bearing from 5 to 25 mm inside the block's face, bottom at 45; the tip stands 28 mm out of the
	// bellhousing, 10 mm of adapter: it reaches 18 mm in and runs on 13 mm of the bearing.
	n := Nose{AdapterMM: 10, TipMM: 28, NoseMM: 20, FaceMM: 5, BearingMM: 20, BottomMM: 45}
	near(t, "engaged", n.EngagedMM(), 13, 1e-9, byHand)
	near(t, "to the bottom", n.BottomGapMM(), 27, 1e-9, byHand)
	near(t, "step to the bearing", n.StepGapMM(), 7, 1e-9, byHand)
	n.TipMM = 58
	near(t, "3 mm into the bottom", n.BottomGapMM(), -3, 1e-9, byHand)
	n.TipMM = 10
	near(t, "falls short", n.EngagedMM(), -5, 1e-9, byHand)
	n.TipMM, n.NoseMM = 38, 15
	near(t, "a short nose: its step runs into the bearing", n.StepGapMM(), -8, 1e-9, byHand)
}
