package slip_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks/slip"
	"yokebook/checks/travel"
)

const apart = "worked apart from this code"

// A leaf of 600 mm halves, flat at ride height, joint 270 ahead of the clamp and 40 above it,
// gearbox joint 1500 ahead and 160 above; given rearward in the source, forward here.
var (
	leaf  = travel.Leaf{FrontHalfMM: 600, RearHalfMM: 600, RadiusFactor: 0.75}
	joint = travel.Point{X: 270, Z: 40}
	front = slip.Place{X: 1500, Z: 160}
)

func shaft(travelMM float64) (float64, error) {
	p, err := leaf.At(travelMM)
	if err != nil {
		return 0, err
	}
	j := p.Carry(joint)
	return slip.Distance(slip.Place{X: j.X, Z: j.Z}, front), nil
}

func TestShaftOverTheTravelOfALeafSpring(t *testing.T) {
	for _, row := range []struct{ travel, want float64 }{{-120, 1237.206}, {-100, 1238.445}, {-80, 1239.079}, {-60, 1239.126},
		{-40, 1238.596}, {-20, 1237.500}, {0, 1235.840}, {50, 1229.208}, {100, 1218.912}} {
		if got, err := shaft(row.travel); err != nil || math.Abs(got-row.want) > 6e-4 {
			t.Errorf("at %+g: %.4f mm, %v; want %.3f (%s)", row.travel, got, err, row.want, apart)
		}
	}
}

// Longest near 60 mm of droop, NOT with the wheels hanging: two readings, hanging and standing,
// would miss it.
func TestExtremesInsideTheTravelAreFound(t *testing.T) {
	least, most, err := slip.Extremes(-120, 100, shaft)
	if err != nil {
		t.Fatal(err)
	}
	if least.TravelMM != 100 || math.Abs(least.Value-1218.912) > 6e-4 {
		t.Errorf("shortest %+v, want 1218.912 at +100 (%s)", least, apart)
	}
	if most.TravelMM > -60 || most.TravelMM < -75 || most.Value < 1239.126 || most.Value > 1239.2 {
		t.Errorf("longest %+v, want a little over 1239.126 near -60 (%s)", most, apart)
	}
	for d := -3.0; d <= 3; d += 0.5 {
		if near, _ := shaft(most.TravelMM + d); near > most.Value {
			t.Errorf("%.6f at %g is longer than the longest", near, most.TravelMM+d)
		}
	}
}

func TestEngagementAndRoomOverTheTravel(t *testing.T) {
	leastE, leastC := math.Inf(1), math.Inf(1)
	for _, s := range []float64{-120, -100, -80, -60, -40, -20, 0, 50, 100} {
		l, _ := shaft(s)
		leastE = math.Min(leastE, 100-slip.Exposed(30, 1235.840, l))
		leastC = math.Min(leastC, slip.Exposed(30, 1235.840, l))
	}
	if math.Abs(leastE-66.714) > 1e-3 || math.Abs(leastC-13.072) > 1e-3 {
		t.Errorf("least engaged %.4f, least room %.4f; want 66.714 and 13.072 (%s)", leastE, leastC, apart)
	}
}

func TestBestLengthSharesWhatIsSpare(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		shortest := mm("shortest", 400, 1500)
		u := slip.Use{ShortestMM: shortest, LongestMM: shortest + mm("range", 0, 60), UsableMM: mm("usable", 20, 150),
			ReserveMM: mm("reserve", 0, 25), EngagedMM: mm("engaged", 10, 60)}
		closed := u.BestClosed()
		atShortest := slip.Exposed(0, closed, u.ShortestMM) - u.ReserveMM
		atLongest := u.UsableMM - slip.Exposed(0, closed, u.LongestMM) - u.EngagedMM
		if math.Abs(atShortest-atLongest) > 1e-9 || math.Abs(atShortest-u.Spare()/2) > 1e-9 {
			t.Fatalf("spare %g before it bottoms, %g before it lets go, want half of %g each", atShortest, atLongest, u.Spare())
		}
	})
}

// The joint of a yoke in the gearbox's tail stays on the output axis, and the shaft keeps its length.
func TestYokeRunsAlongTheOutputAxis(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		deg := func(name string) float64 { return rapid.Float64Range(-12, 12).Draw(t, name) * math.Pi / 180 }
		slope, plan := deg("slope"), deg("plan")
		out := slip.Place{X: -math.Cos(slope) * math.Cos(plan), Y: -math.Cos(slope) * math.Sin(plan), Z: -math.Sin(slope)}
		tail := slip.Tail{Joint: slip.Place{X: 1200, Y: 20, Z: 150}, Out: out, LengthMM: rapid.Float64Range(900, 1400).Draw(t, "length")}
		axle := slip.Place{X: rapid.Float64Range(-20, 20).Draw(t, "forward"), Z: rapid.Float64Range(-120, 120).Draw(t, "up")}
		drawn, err := tail.DrawnOut(axle)
		if err != nil {
			t.Fatal(err)
		}
		at := tail.Joint.Plus(out.By(drawn))
		if got := slip.Distance(at, axle); math.Abs(got-tail.LengthMM) > 1e-9 {
			t.Fatalf("shaft of %g became %g", tail.LengthMM, got)
		}
		if at.X <= axle.X {
			t.Fatalf("the yoke came out behind the axle: %+v", at)
		}
	})
	if _, err := (slip.Tail{Joint: slip.Place{X: 500, Z: 300}, Out: slip.Place{X: -1}, LengthMM: 200}).DrawnOut(slip.Place{}); !errors.Is(err, slip.ErrReach) {
		t.Errorf("300 mm aside on a shaft of 200: %v", err)
	}
	// 3-4-5: 300 mm below the axis a shaft of 500 needs its joint 400 before it (worked apart).
	drawn, err := slip.Tail{Joint: slip.Place{X: 500, Z: 300}, Out: slip.Place{X: -1}, LengthMM: 500}.DrawnOut(slip.Place{})
	if err != nil || math.Abs(drawn-100) > 1e-9 {
		t.Errorf("drawn out %g, %v; want 100", drawn, err)
	}
}

func TestHeightsLieCloseTogether(t *testing.T) {
	for _, row := range [][2]float64{{-120, 100}, {-5, 0}, {0, 0}, {-33, 7}} {
		list := slip.Heights(row[0], row[1])
		if list[0] != row[0] || list[len(list)-1] != row[1] {
			t.Errorf("%v: from %g to %g", row, list[0], list[len(list)-1])
		}
		for i := 1; i < len(list); i++ {
			if d := list[i] - list[i-1]; !(d > 0 && d <= slip.Step+1e-9) {
				t.Errorf("%v: a step of %g", row, d)
			}
		}
	}
	if _, _, err := slip.Extremes(1, 0, shaft); !errors.Is(err, slip.ErrTravel) {
		t.Errorf("upside down: %v", err)
	}
	if _, _, err := slip.Extremes(-2000, 0, shaft); !errors.Is(err, travel.ErrUnreachable) {
		t.Errorf("beyond the spring: %v", err)
	}
}
