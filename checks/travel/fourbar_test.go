package travel_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"yokebook/checks/travel"
)

const deg = math.Pi / 180

// Rocker and coupler angles of four-bar linkages with a level ground link.
func TestClosureOfTwoCircles(t *testing.T) {
	for _, row := range []struct {
		name                         string
		ground, crank, coupler, rock float64
		crankDeg                     float64
		open, crossed                [2]float64 // coupler, rocker
		tol                          float64
		source                       string
	}{
		{"100 40 120 80 at 40°", 100, 40, 120, 80, 40, [2]float64{20.298, 57.325}, [2]float64{-60.978, -98.005}, 1e-3,
			"R. L. Norton, Design of Machinery, example 4-1 (20.30/57.33, −60.98/−98.01; from memory), recomputed apart from this code"},
		{"100 40 120 80, start of stroke", 100, 40, 120, 80, 0.0001, [2]float64{36.336, 62.720}, [2]float64{-36.336, -62.720}, 1e-3, apart},
		{"222 86 185 180 at 30°", 222, 86, 185, 180, 30, [2]float64{47.173, 96.944}, [2]float64{-79.674, -129.444}, 1e-3, apart},
	} {
		joint := travel.Point{X: row.crank * math.Cos(row.crankDeg*deg), Z: row.crank * math.Sin(row.crankDeg*deg)}
		pivot := travel.Point{X: row.ground}
		one, other, err := travel.Close(joint, pivot, row.coupler, row.rock)
		if err != nil {
			t.Fatalf("%s: %v", row.name, err)
		}
		for _, b := range []struct {
			at   travel.Point
			want [2]float64
		}{{one, row.open}, {other, row.crossed}} {
			coupler := math.Atan2(b.at.Z-joint.Z, b.at.X-joint.X) / deg
			rocker := math.Atan2(b.at.Z-pivot.Z, b.at.X-pivot.X) / deg
			if math.Abs(coupler-b.want[0]) > row.tol || math.Abs(rocker-b.want[1]) > row.tol {
				t.Errorf("%s: %.4f°, %.4f°; want %v (%s)", row.name, coupler, rocker, b.want, row.source)
			}
		}
	}
	if _, _, err := travel.Close(travel.Point{}, travel.Point{X: 100}, 40, 50); !errors.Is(err, travel.ErrUnreachable) {
		t.Errorf("circles that don't meet: %v", err)
	}
}

// rearward turns a place given rearward from some origin into ours, forward from the axle's centre.
func rearward(centreX, centreZ, x, z float64) travel.Point {
	return travel.Point{X: centreX - x, Z: z - centreZ}
}

func distance(a, b travel.Point) float64 { return math.Hypot(a.X-b.X, a.Z-b.Z) }

func pose(t *testing.T, p travel.Path, travelMM float64) travel.Pose {
	t.Helper()
	at, err := p.At(travelMM)
	if err != nil {
		t.Fatal(err)
	}
	return at
}

// Arm of 800 mm, level, pivot at (0, 0) rearward; pinion joint on it at (620, 30), gearbox joint at
// (−700, 100). Worked apart from this code: rotation of a rigid arm.
func TestTrailingArm(t *testing.T) {
	pivot := rearward(800, 0, 0, 0)
	arm := travel.FourBar{LowerChassis: pivot, UpperChassis: pivot,
		LowerAxle: rearward(800, 0, 800, -60), UpperAxle: rearward(800, 0, 790, 90)}
	rear, front := rearward(800, 0, 620, 30), rearward(800, 0, -700, 100)
	for _, row := range []struct{ travel, pitch, shaft float64 }{{0, 0, 1321.855}, {80, -5.7392, 1313.917}, {-80, 5.7392, 1326.491}} {
		p := pose(t, arm, row.travel)
		if math.Abs(p.PitchDeg-row.pitch) > 5e-5 {
			t.Errorf("at %+g: pitch %.5f°, want %.4f (%s)", row.travel, p.PitchDeg, row.pitch, apart)
		}
		if got := distance(p.Carry(rear), front); math.Abs(got-row.shaft) > 6e-4 {
			t.Errorf("at %+g: shaft %.4f, want %.3f (%s)", row.travel, got, row.shaft, apart)
		}
	}
}

func TestParallelEqualLinksKeepTheHousingLevel(t *testing.T) {
	links := travel.FourBar{LowerChassis: rearward(600, 500, 0, 400), LowerAxle: rearward(600, 500, 600, 400),
		UpperChassis: rearward(600, 500, 50, 600), UpperAxle: rearward(600, 500, 650, 600)}
	rear, front := rearward(600, 500, 400, 500), rearward(600, 500, -500, 560)
	for _, row := range []struct{ travel, shaft float64 }{{-100, 905.850}, {0, 901.998}, {100, 892.505}} {
		p := pose(t, links, row.travel)
		if math.Abs(p.PitchDeg) > 1e-9 {
			t.Errorf("at %+g: pitch %g°", row.travel, p.PitchDeg)
		}
		if got := distance(p.Carry(rear), front); math.Abs(got-row.shaft) > 5e-4 {
			t.Errorf("at %+g: shaft %.4f, want %.3f (%s)", row.travel, got, row.shaft, apart)
		}
	}
}

var fourLink = travel.FourBar{LowerChassis: rearward(700, 480, 0, 400), LowerAxle: rearward(700, 480, 700, 380),
	UpperChassis: rearward(700, 480, 150, 620), UpperAxle: rearward(700, 480, 650, 600)}

// A four-link axle over its travel. Worked apart from this code by two circles; nose down counts
// positive there and x rearward, so pitch and slope turn their sign here.
func TestFourLinkOverItsTravel(t *testing.T) {
	rear, front := rearward(700, 480, 450, 500), rearward(700, 480, -500, 560)
	for _, row := range []struct{ travel, noseDown, lowerX, lowerZ, jointX, jointZ, shaft, slope float64 }{
		{-100, 1.1451, 689.931, 280.020, 437.583, 395.000, 951.991, -9.9810},
		{-80, 0.7678, 693.110, 300.009, 441.525, 416.648, 952.375, -8.6571},
		{-50, 0.3499, 696.778, 330.002, 446.050, 448.473, 952.601, -6.7234},
		{0, 0, 700, 380, 450, 500, 951.893, -3.6139},
		{50, 0.0367, 699.643, 430.000, 449.566, 549.840, 949.620, -0.6130},
		{80, 0.2335, 697.710, 460.001, 447.224, 578.981, 947.414, 1.1480},
		{100, 0.4366, 695.701, 480.003, 444.794, 598.094, 945.561, 2.3089},
	} {
		p := pose(t, fourLink, row.travel)
		joint, lower := p.Carry(rear), p.Carry(fourLink.LowerAxle)
		slope := math.Atan2(front.Z-joint.Z, front.X-joint.X) / deg
		for _, c := range []struct {
			what      string
			got, want float64
			tol       float64
		}{
			{"pitch", p.PitchDeg, -row.noseDown, 6e-5}, {"slope", slope, -row.slope, 6e-5},
			{"lower joint forward", lower.X, 700 - row.lowerX, 6e-4}, {"lower joint up", lower.Z, row.lowerZ - 480, 6e-4},
			{"joint forward", joint.X, 700 - row.jointX, 6e-4}, {"joint up", joint.Z, row.jointZ - 480, 6e-4},
			{"shaft", distance(joint, front), row.shaft, 6e-4},
		} {
			if math.Abs(c.got-c.want) > c.tol {
				t.Errorf("at %+g: %s %.5f, want %.4f (%s)", row.travel, c.what, c.got, c.want, apart)
			}
		}
	}
}

// linkages draws linkages such as vehicles have.
func linkages(t *rapid.T) travel.FourBar {
	mm := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
	return travel.FourBar{
		LowerChassis: travel.Point{X: mm("lower length", 350, 900), Z: mm("lower chassis", -150, 100)},
		LowerAxle:    travel.Point{X: mm("lower set", -40, 40), Z: mm("lower axle", -150, -40)},
		UpperChassis: travel.Point{X: mm("upper length", 250, 700), Z: mm("upper chassis", 80, 250)},
		UpperAxle:    travel.Point{X: mm("upper set", -60, 60), Z: mm("upper axle", 90, 220)},
	}
}

func TestLinksKeepTheirLengths(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := linkages(t)
		s := rapid.Float64Range(-120, 120).Draw(t, "travel")
		p, err := f.At(s)
		if err != nil {
			if !errors.Is(err, travel.ErrUnreachable) {
				t.Fatal(err)
			}
			return
		}
		for _, link := range [][2]travel.Point{{f.LowerChassis, f.LowerAxle}, {f.UpperChassis, f.UpperAxle}} {
			if was, is := distance(link[0], link[1]), distance(link[0], p.Carry(link[1])); math.Abs(was-is) > 1e-9 {
				t.Fatalf("at %g: a link of %.12f became %.12f", s, was, is)
			}
		}
		if got := p.Carry(travel.Point{}); got.Z != s {
			t.Fatalf("the centre stands at %.12f, asked for %.12f", got.Z, s)
		}
	})
}

// A vehicle seen from its other side: x turns round, pitch with it.
func TestMirroredLinksGiveMirroredPoses(t *testing.T) {
	turn := func(p travel.Point) travel.Point { return travel.Point{X: -p.X, Z: p.Z} }
	rapid.Check(t, func(t *rapid.T) {
		f := linkages(t)
		g := travel.FourBar{LowerChassis: turn(f.LowerChassis), LowerAxle: turn(f.LowerAxle), UpperChassis: turn(f.UpperChassis), UpperAxle: turn(f.UpperAxle)}
		s := rapid.Float64Range(-100, 100).Draw(t, "travel")
		a, errA := f.At(s)
		b, errB := g.At(s)
		if (errA == nil) != (errB == nil) {
			t.Fatalf("%v, mirrored %v", errA, errB)
		}
		if math.Abs(a.ForwardMM+b.ForwardMM) > 1e-8 || math.Abs(a.PitchDeg+b.PitchDeg) > 1e-8 {
			t.Fatalf("%+v, mirrored %+v", a, b)
		}
	})
}

// Finer steps end in the same pose: no branch is jumped on the way.
func TestPosesFollowOneAnother(t *testing.T) {
	last := pose(t, fourLink, -150)
	for s := -150.0; s <= 150; s += 1 {
		p := pose(t, fourLink, s)
		if math.Abs(p.PitchDeg-last.PitchDeg) > 0.2 || math.Abs(p.ForwardMM-last.ForwardMM) > 1 {
			t.Errorf("at %g a leap from %+v to %+v", s, last, p)
		}
		last = p
	}
}

func TestLinksRefuseWhatTheyCannotReach(t *testing.T) {
	short := travel.FourBar{LowerChassis: travel.Point{X: 100, Z: -50}, LowerAxle: travel.Point{Z: -50},
		UpperChassis: travel.Point{X: 100, Z: 50}, UpperAxle: travel.Point{Z: 50}}
	if _, err := short.At(99); err != nil {
		t.Errorf("99 mm on links of 100: %v", err)
	}
	for _, s := range []float64{101, -300, math.NaN(), math.Inf(1), 1e9} {
		if p, err := short.At(s); !errors.Is(err, travel.ErrUnreachable) {
			t.Errorf("%g mm on links of 100: %+v, %v", s, p, err)
		}
	}
	if _, err := (travel.FourBar{}).At(0); !errors.Is(err, travel.ErrLinks) {
		t.Errorf("no links: %v", err)
	}
}

func TestDrawnThroughReadings(t *testing.T) {
	square := func(x float64) float64 { return 3 + x/10 - x*x/500 }
	for _, row := range []struct {
		name string
		x    []float64
		at   float64
		want float64
	}{
		{"two heights, straight", []float64{-100, 50}, -25, (square(-100) + square(50)) / 2},
		{"three heights, their parabola", []float64{-100, 0, 80}, 30, square(30)},
		{"falling order", []float64{80, 0, -100}, -60, square(-60)},
		{"four heights, a parabola in each gap", []float64{-100, -20, 0, 80}, -50, square(-50)},
		{"at a height that was read", []float64{-100, 0, 80}, 0, 3},
		{"at the end", []float64{-100, 0, 80}, 80, square(80)},
	} {
		var y []float64
		for _, x := range row.x {
			y = append(y, square(x))
		}
		if got, err := travel.Between(row.at, row.x, y); err != nil || math.Abs(got-row.want) > 1e-9 {
			t.Errorf("%s: %g, %v; want %g (%s)", row.name, got, err, row.want, apart)
		}
	}
	for _, x := range [][]float64{nil, {0}, {0, 0}, {-100, 50}} {
		if got, err := travel.Between(51, x, make([]float64, len(x))); !errors.Is(err, travel.ErrBetween) {
			t.Errorf("beyond %v: %g, %v", x, got, err)
		}
	}
}

func TestAxlesThatDoNotMoveOrOnlyRise(t *testing.T) {
	if p := pose(t, travel.Fixed{}, 80); p != (travel.Pose{}) {
		t.Errorf("a fixed axle moved: %+v", p)
	}
	p := pose(t, travel.Straight{BowPerMM: 0.001, PitchDegPerMM: -0.02}, 100)
	if p.UpMM != 100 || math.Abs(p.ForwardMM-10) > 1e-12 || math.Abs(p.PitchDeg+2) > 1e-12 {
		t.Errorf("straight up with a bow and a turn: %+v", p)
	}
}
