package joint

import (
	"math"
	"testing"
)

const (
	series    = "product of cos β^±1 along the chain, worked apart from this code"
	phasor    = "simulated apart from this code; angles were taken there as √(r_max − r_min)"
	phasing   = "phasing names: Meritor MM-96147 (rev. 03-21) pp. 84, 97; signs and values worked apart from this code"
	atThree   = 3000.0 // rev/min
	exactTo   = 6e-4   // values are given to 0.001°
	degreesTo = 6e-3   // … or to 0.01°
)

// upright is a chain in one upright plane: the joints' angles add up from a level gearbox.
func upright(phases []float64, angles ...float64) Chain {
	c := Chain{Axes: []Axis{AxisOf(0, 0)}, PhaseDeg: phases}
	slope := 0.0
	for _, a := range angles {
		slope += a
		c.Axes = append(c.Axes, AxisOf(slope, 0))
	}
	return c
}

func (c Chain) whole() float64 { return c.Residual(0, c.Joints()-1) }

// byRipple is the residual in the way of sources that put it as √(r_max − r_min), in degrees. It is
// above the exact angle by the part β²/12: 0.002° at 4°.
func (c Chain) byRipple() float64 { return math.Sqrt(Ripple(c.whole())/100) / degree }

func TestTwoJointsInPhase(t *testing.T) {
	for _, row := range []struct{ one, two, residual, peak, peakTol float64 }{
		{3, 2, 2.2365, 150, 1}, {6, 5, 3.3208, 332, 1}, {10, 9, 4.3770, 577, 1}, {20, 19, 6.3637, 1220, 2.5},
		{1, 0, 1.000, 30, 0.1}, {20, 15, 13.384, 0, 0},
	} {
		for _, c := range []Chain{upright(nil, row.one, row.two), upright(nil, row.one, -row.two)} {
			near(t, "residual", c.whole(), row.residual, exactTo, series)
			if row.peak > 0 {
				near(t, "peak", PeakAcceleration(c.whole(), atThree), row.peak, row.peakTol, series)
			}
			small := math.Sqrt(row.one*row.one - row.two*row.two)
			near(t, "small-angle rule", small, row.residual, 0.02*row.residual, "Elbe technical section 3.3, in words; form from memory")
		}
	}
	c := upright(nil, 12.6, 12.6)
	near(t, "equal angles cancel, W", c.whole(), 0, 1e-6, "Elbe technical section 1 and 4")
	c = upright(nil, 12.6, -12.6)
	near(t, "equal angles cancel, Z", c.whole(), 0, 1e-6, "Elbe technical section 1 and 4")
}

func TestMatchingAnglesThatDoNotCancel(t *testing.T) {
	// Slopes 2.4, 17 and 2: common practice, no source. Residual worked apart from this code:
	// arccos(cos 15.0°/cos 14.6°), and √(15.0² − 14.6²) by the small-angle rule.
	c := Chain{Axes: []Axis{AxisOf(2.4, 0), AxisOf(17, 0), AxisOf(2, 0)}}
	near(t, "front", c.Angle(0), 14.6, 1e-9, "difference of slopes")
	near(t, "rear", c.Angle(1), 15.0, 1e-9, "difference of slopes")
	near(t, "apart", c.Angle(1)-c.Angle(0), 0.4, 1e-9, "difference of slopes")
	exact := math.Acos(math.Cos(15.0*degree)/math.Cos(14.6*degree)) / degree
	near(t, "residual", c.whole(), exact, 1e-9, "closed form, worked apart from this code")
	near(t, "residual, printed", c.whole(), 3.479, 6e-4, "closed form, worked apart from this code")
	near(t, "small-angle rule", math.Sqrt(15.0*15.0-14.6*14.6), 3.44, 5e-3, "worked apart from this code")
}

func TestForksAQuarterTurnWrongAddUp(t *testing.T) {
	c := upright([]float64{90}, 20, 20)
	near(t, "500 rev/min, greatest", 500*ratioMax(c.whole()), 566.25, 0.05, "exam copies, carrieradda.com 26773 and bissoy.com 376914")
	near(t, "500 rev/min, least", 500*RatioMin(c.whole()), 441.5, 0.05, "the same")
	near(t, "in phase", 500*ratioMax(upright(nil, 20, 20).whole()), 500, 1e-9, "Elbe technical section 1")
	near(t, "90° wrong, small-angle rule", upright([]float64{90}, 3, 2).whole(), math.Sqrt(13), 0.005, "√(β₁² + β₂²), worked apart from this code")
}

func TestTwoPieceShafts(t *testing.T) {
	for _, row := range []struct {
		name      string
		phases    []float64
		angles    [3]float64
		residual  float64
		peak, tol float64
	}{
		{"both in line: + − +", []float64{0, 0}, [3]float64{1.5, 4, 3}, 2.181, 143, 0.5},
		{"front crossed: + + −", []float64{90, 0}, [3]float64{1.5, 4, 3}, 3.042, 278.4, 0.1},
		{"rear crossed: + − −", []float64{0, 90}, [3]float64{1.5, 4, 3}, 4.769, 684.5, 0.1},
		{"both crossed: + + +", []float64{90, 90}, [3]float64{1.5, 4, 3}, 5.218, 819.8, 0.1},
		{"odd joint kept small", []float64{0, 0}, [3]float64{0.5, 3, 3}, 0.500, 0, 0},
	} {
		c := upright(row.phases, row.angles[:]...)
		near(t, row.name, c.whole(), row.residual, exactTo, phasing)
		if row.peak > 0 {
			near(t, row.name+", peak", PeakAcceleration(c.whole(), atThree), row.peak, row.tol, phasing)
		}
	}
}

func TestMisphasedShaft(t *testing.T) {
	for _, row := range []struct{ one, two, wrong, residual, peak, peakTol float64 }{
		{3, 3, 10, 1.768, 94, 0.6},
		{3, 3, 22.5, 2.625, 207, 0.6},
		{3, 3, 45, 3.568, 383, 0.6},
		{3, 3, 90, 4.244, 541, 1.1},
		{4, 3, 10, 2.856, 245.2, 0.1},
	} {
		for _, phase := range []float64{row.wrong, -row.wrong, row.wrong + 180, row.wrong - 540} {
			c := upright([]float64{phase}, row.one, row.two)
			near(t, "residual", c.byRipple(), row.residual, exactTo, phasor)
			near(t, "peak", PeakAcceleration(c.whole(), atThree), row.peak, row.peakTol, phasor)
			fourth := math.Pow(row.one, 4) + math.Pow(row.two, 4) - 2*math.Pow(row.one*row.two, 2)*math.Cos(2*phase*degree)
			near(t, "second-harmonic rule", math.Pow(fourth, 0.25), c.whole(), 0.001*c.whole(), "worked apart from this code, good to 0.1 % up to 6°")
		}
	}
}

func TestSlipPutBackOneToothOut(t *testing.T) {
	for _, row := range []struct{ teeth, wrong, residual float64 }{
		{10, 36, 3.25}, {16, 22.5, 2.62}, {24, 15, 2.16}, {28, 12.86, 2.00}, {32, 11.25, 1.87},
	} {
		near(t, "misphase", 360/row.teeth, row.wrong, degreesTo, "one tooth of a full turn")
		near(t, "residual", upright([]float64{360 / row.teeth}, 3, 3).whole(), row.residual, degreesTo, phasor)
	}
}

func TestDoubleJoint(t *testing.T) {
	// Two crosses in a short body cancel each other: Sorem technical page on double joints.
	c := Chain{Axes: []Axis{AxisOf(0, 0), AxisOf(25, 3)}, Double: []bool{true}}
	near(t, "alone", c.whole(), 0, 1e-6, "Sorem technical page, double joints")
	near(t, "its angle", c.Angle(0), Angle(c.Axes[0], c.Axes[1]), 0, "the angle is there all the same")

	c = Chain{Axes: []Axis{AxisOf(0, 0), AxisOf(20, 2), AxisOf(19, 3)}, PhaseDeg: []float64{37}, Double: []bool{true, false}}
	near(t, "with a lone joint behind", c.whole(), c.Angle(1), 1e-9, "the lone joint is all that is left, whatever the phase")

	// In the middle it hands the turn on with its forks in line, where a single joint's stand a
	// quarter turn round: joints 0 and 2 of equal angle cancel with the next shaft 90° round.
	c = Chain{Axes: []Axis{AxisOf(0, 0), AxisOf(4, 0), AxisOf(14, 0), AxisOf(18, 0)}, PhaseDeg: []float64{0, 0}, Double: []bool{false, true, false}}
	near(t, "single, double, single", c.whole(), 0, 1e-6, "crosses simulated in space")
}

func TestJointInLineHandsThePlaneOn(t *testing.T) {
	// A middle joint of 0° (or of rounding noise) still turns the fork a quarter turn round.
	for _, noise := range []float64{0, 1e-13, 1e-10, 1e-7} {
		c := Chain{Axes: []Axis{AxisOf(0, 0), AxisOf(4, 0), AxisOf(4, noise), AxisOf(8, 0)}, PhaseDeg: []float64{0, 0}}
		near(t, "4, 0, 4 with forks in line add up", c.whole(), math.Sqrt(32), 0.01, "signs + − + with the middle at 0")
		c.PhaseDeg = []float64{90, 0}
		// The noise is a true sidestep of the axes: it turns the two planes by 2·noise/4 rad.
		left := 4 * math.Sqrt(2*noise/4)
		near(t, "4, 0, 4 with one crossed cancel", c.whole(), left, 1e-6+0.01*left, "signs + + − with the middle at 0")
		c = Chain{Axes: []Axis{AxisOf(0, 0), AxisOf(noise, 0), AxisOf(3, 0)}, PhaseDeg: []float64{71}}
		near(t, "nothing in front", c.whole(), 3, 1e-6, "the rear joint alone")
	}
}

func TestBestPhaseBeforeAJointInLine(t *testing.T) {
	// Joint 1 is in line and double, so the best phase of shaft 0 is the one of shaft 1 left over.
	c := Chain{
		Axes:     []Axis{AxisOf(0, 0), AxisOf(4, 0), AxisOf(4, 0), AxisOf(8, 0)},
		PhaseDeg: []float64{0, 30}, Double: []bool{false, true, false},
	}
	near(t, "best phase", c.BestPhase(0), -30, 1e-6, "forks of joints 0 and 2 in line, worked apart from this code")
	c.PhaseDeg[0] = c.BestPhase(0)
	near(t, "residual", c.whole(), 0, 1e-6, "Elbe technical section 1")
}
