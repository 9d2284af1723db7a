package travel_test

import (
	"errors"
	"math"
	"testing"

	"yokebook/checks/travel"
)

const apart = "worked apart from this code"

// shortening is how much nearer to its fixed eye the clamp stands at a deflection from flat.
func shortening(t *testing.T, l travel.Leaf, deflection float64) float64 {
	t.Helper()
	l.EyeRiseMM = l.EyeOffsetMM // flat at ride height
	p, err := l.At(-deflection)
	if err != nil {
		t.Fatal(err)
	}
	return p.ForwardMM
}

func TestEquivalentLinkShortens(t *testing.T) {
	for _, row := range []struct {
		name                      string
		limb, deflection, factor  float64
		want, exactArc, approx    float64
		source                    string
		nearArc, nearApproximated float64
	}{
		{"600 at 100, three quarters", 600, 100, 0.75, 11.252, 11.259, 11.111, apart, 0.01, 0.15},
		{"650 at 120, three quarters", 650, 120, 0.75, 15.000, 15.012, 14.769, apart, 0.02, 0.25},
		{"480 at 90, three quarters", 480, 90, 0.75, 11.431, 11.441, 11.250, apart, 0.02, 0.20},
		{"600 at 100, one uniform leaf", 600, 100, 5.0 / 6, 10.102, 0, 10.000, apart, 0, 0.11},
		{"650 at 120, one uniform leaf", 650, 120, 5.0 / 6, 13.460, 0, 13.292, apart, 0, 0.18},
		{"480 at 90, one uniform leaf", 480, 90, 5.0 / 6, 10.256, 0, 10.125, apart, 0, 0.14},
		{"600 at 100, link to the eye itself: too little", 600, 100, 1, 8.392, 0, 0, apart, 0, 0},
		{"650 at 120, link to the eye itself: too little", 650, 120, 1, 11.173, 0, 0, apart, 0, 0},
		{"480 at 90, link to the eye itself: too little", 480, 90, 1, 8.513, 0, 0, apart, 0, 0},
	} {
		l := travel.Leaf{FrontHalfMM: row.limb, RearHalfMM: row.limb, RadiusFactor: row.factor}
		got := shortening(t, l, row.deflection)
		if math.Abs(got-row.want) > 5e-4 {
			t.Errorf("%s: %.4f mm, want %.3f (%s)", row.name, got, row.want, row.source)
		}
		if row.exactArc > 0 {
			if arc := arcShortening(row.limb, row.deflection); math.Abs(arc-row.exactArc) > 5e-4 || math.Abs(got-arc) > row.nearArc {
				t.Errorf("%s: exact arc %.4f, want %.3f; the link gives %.4f", row.name, arc, row.exactArc, got)
			}
		}
		if row.approx > 0 && math.Abs(got-row.approx) > row.nearApproximated {
			t.Errorf("%s: %.4f mm, the small-slope form says %.3f", row.name, got, row.approx)
		}
	}
}

// arcShortening bends a limb of fixed length to a circular arc: y = R(1 − cos θ), a = Rθ.
func arcShortening(limb, deflection float64) float64 {
	low, high := 0.0, 1.5
	for range 200 {
		mid := (low + high) / 2
		if limb/mid*(1-math.Cos(mid)) < deflection {
			low = mid
		} else {
			high = mid
		}
	}
	return limb - limb/low*math.Sin(low)
}

// With the eye 20 mm above its leaf bump and droop must not share one number: (2/3)·y²/a + 2·e·y/a
// gives 17.778 and 4.444 mm (worked apart from this code). The link agrees but for small slopes.
func TestEyeOffsetMakesThePathLopsided(t *testing.T) {
	l := travel.Leaf{FrontHalfMM: 600, RearHalfMM: 600, EyeOffsetMM: 20, RadiusFactor: 0.75}
	for _, row := range []struct{ deflection, want float64 }{{100, 17.778}, {-100, 4.444}} {
		if got := shortening(t, l, row.deflection); math.Abs(got-row.want) > 0.45 {
			t.Errorf("at %+g from flat: %.3f, want about %.3f", row.deflection, got, row.want)
		}
	}
	link, err := l.Link()
	if err != nil || math.Abs(link.RadiusMM-450) > 1e-9 || math.Abs(link.DropMM-10) > 1e-9 {
		t.Errorf("link %+v, %v; want radius 450 and the pivot half the offset beyond the eye", link, err)
	}
	l.EyeOffsetMM = -20
	if down, _ := l.Link(); math.Abs(down.DropMM+10) > 1e-9 {
		t.Errorf("down-turned eye: pivot %g beyond it, want -10", down.DropMM)
	}
}

func TestUnequalHalvesTurnTheSeat(t *testing.T) {
	for _, row := range []struct{ front, rear, travel, want float64 }{
		{500, 700, 100, -3.274}, {700, 500, 100, 3.274}, // short half in front: nose down in bump
		{550, 650, 80, -1.282}, {550, 650, -80, 1.282}, {600, 600, 90, 0},
	} {
		l := travel.Leaf{FrontHalfMM: row.front, RearHalfMM: row.rear, RadiusFactor: 0.75}
		if got := l.SeatTurn(row.travel); math.Abs(got-row.want) > 5e-4 {
			t.Errorf("%g/%g at %+g: %.4f°, want %.3f (%s)", row.front, row.rear, row.travel, got, row.want, apart)
		}
		p, err := l.At(row.travel)
		if err != nil || math.Abs(p.PitchDeg-row.want) > 5e-4 {
			t.Errorf("%g/%g at %+g: pose %+v, %v", row.front, row.rear, row.travel, p, err)
		}
	}
}

// Two limbs bent to one common arc, laid with both eyes level: where the clamp stands then, against
// the equivalent link. Worked apart: the arc itself, by its own geometry.
func TestUnequalHalvesFollowTheCommonArc(t *testing.T) {
	for _, halves := range [][2]float64{{500, 700}, {700, 500}, {550, 650}, {600, 600}} {
		for _, deflection := range []float64{40, 70, -60} {
			l := travel.Leaf{FrontHalfMM: halves[0], RearHalfMM: halves[1], RadiusFactor: 0.75}
			want, turn := onArc(halves[0], halves[1], deflection)
			got := shortening(t, l, deflection)
			if math.Abs(got-want) > 0.02*math.Abs(want)+0.01 {
				t.Errorf("%v at %g: clamp %.3f nearer to the eye, on the arc %.3f", halves, deflection, got, want)
			}
			if got := l.SeatTurn(-deflection); math.Abs(got-turn) > 0.02 {
				t.Errorf("%v at %g: seat turned %.3f°, on the arc %.3f", halves, deflection, got, turn)
			}
		}
	}
}

// onArc finds the curvature at which the line of the eyes stands that much above the clamp.
func onArc(front, rear, above float64) (shortening, turnDeg float64) {
	low, high := -0.002, 0.002
	var fx, fz, slope float64
	for range 200 {
		c := (low + high) / 2
		if c == 0 {
			c = 1e-12
		}
		fx, fz = math.Sin(c*front)/c, (1-math.Cos(c*front))/c
		rx, rz := -math.Sin(c*rear)/c, (1-math.Cos(c*rear))/c
		slope = math.Atan2(fz-rz, fx-rx)
		if -fx*math.Sin(slope)+fz*math.Cos(slope) < above {
			low = c
		} else {
			high = c
		}
	}
	return front - (fx*math.Cos(slope) + fz*math.Sin(slope)), -slope * 180 / math.Pi
}

func TestFixedEyeBehindMirrorsThePath(t *testing.T) {
	front := travel.Leaf{FrontHalfMM: 520, RearHalfMM: 680, EyeRiseMM: 40, EyeOffsetMM: 15, PadMM: 60, RadiusFactor: 0.78}
	rear := front
	rear.FrontHalfMM, rear.RearHalfMM, rear.FixedInRear = 680, 520, true
	for s := -120.0; s <= 120; s += 10 {
		a, errA := front.At(s)
		b, errB := rear.At(s)
		if errA != nil || errB != nil || a.UpMM != s || b.UpMM != s {
			t.Fatalf("at %g: %v, %v", s, errA, errB)
		}
		if math.Abs(a.ForwardMM+b.ForwardMM) > 1e-12 || math.Abs(a.PitchDeg+b.PitchDeg) > 1e-12 {
			t.Errorf("at %g: %+v, mirrored %+v", s, a, b)
		}
	}
}

func TestLeafRefusesWhatItCannotReach(t *testing.T) {
	l := travel.Leaf{FrontHalfMM: 300, RearHalfMM: 300, RadiusFactor: 0.75}
	if _, err := l.At(-226); !errors.Is(err, travel.ErrUnreachable) {
		t.Errorf("226 mm on a link of 225: %v", err)
	}
	if _, err := l.At(-224); err != nil {
		t.Errorf("224 mm on a link of 225: %v", err)
	}
	for _, bad := range []travel.Leaf{{RearHalfMM: 1, RadiusFactor: 0.75}, {FrontHalfMM: 1, RearHalfMM: 1}, {FrontHalfMM: 1, RearHalfMM: 1, RadiusFactor: 1.1},
		{FrontHalfMM: math.NaN(), RearHalfMM: 1, RadiusFactor: 0.75}, {FrontHalfMM: 1, RearHalfMM: 1, RadiusFactor: 0.75, PadMM: math.Inf(1)}} {
		if _, err := bad.At(0); !errors.Is(err, travel.ErrLeaf) {
			t.Errorf("%+v: %v", bad, err)
		}
	}
}

func TestWindUpOnLeafSprings(t *testing.T) {
	for _, row := range []struct {
		name                        string
		front, rear, rate           float64
		springs, torque, k, deg, of float64
	}{
		{"two of 25 N/mm, 1200 long", 600, 600, 25, 2, 3000, 18000, 9.549, 1e-3},
		{"two of 32 N/mm, 1300 long", 650, 650, 32, 2, 2500, 27040, 5.297, 1e-3},
	} {
		k, err := travel.Spring{FrontHalfMM: row.front, RearHalfMM: row.rear, RateNPerMM: row.rate}.WindUpStiffness()
		if err != nil || math.Abs(row.springs*k-row.k) > 1e-6 {
			t.Errorf("%s: %g N·m/rad, %v; want %g (%s)", row.name, row.springs*k, err, row.k, apart)
		}
		if deg, err := travel.WindUp(row.torque, row.springs*k); err != nil || math.Abs(deg-row.deg) > row.of {
			t.Errorf("%s: %.4f°, %v; want %.3f (%s)", row.name, deg, err, row.deg, apart)
		}
	}
	k, err := travel.LimbStiffness(20, 10, 1200)
	if deg, _ := travel.WindUp(1500, k); err != nil || math.Abs(deg-8.952) > 1e-3 {
		t.Errorf("limbs of 20 and 10 N/mm: %.4f°, %v; want 8.952 (%s)", deg, err, apart)
	}
	if _, err := (travel.Spring{FrontHalfMM: 600, RearHalfMM: 600}).WindUpStiffness(); !errors.Is(err, travel.ErrWindUp) {
		t.Errorf("no rate: %v", err)
	}
	if _, err := travel.WindUp(1, 0); !errors.Is(err, travel.ErrWindUp) {
		t.Errorf("no stiffness: %v", err)
	}
}

// The limbs' rates that a spring of unequal halves is split into must give back its own rate: under
// a load at the clamp each eye takes its share and sinks by it.
func TestUnequalLimbsGiveBackTheRate(t *testing.T) {
	a, b, k := 480.0, 720.0, 28.0
	stiffness, err := travel.Spring{FrontHalfMM: a, RearHalfMM: b, RateNPerMM: k}.WindUpStiffness()
	if err != nil {
		t.Fatal(err)
	}
	// c/a³ and c/b³ with b²/ca + a²/cb = L²/k (statics of the seat), worked apart from this code.
	l := a + b
	c := k * (b*b*a*a*a + a*a*b*b*b) / (l * l)
	want := l * l / (a*a*a/c + b*b*b/c) / 1000
	if math.Abs(stiffness-want) > 1e-6*want {
		t.Errorf("%g N·m/rad, want %g", stiffness, want)
	}
}
