package joint

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// same compares residuals: near 0 a rounding of 1e-16 in an axis shows as its square root.
func same(t *rapid.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got*got-want*want) > 1e-9 {
		t.Errorf("%s: %.9g°, before %.9g°", what, got, want)
	}
}

func TestTurningTheWholeVehicleChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 1, 4, 40)
		pitch := rapid.Float64Range(-180, 180).Draw(t, "pitch")
		yaw := rapid.Float64Range(-180, 180).Draw(t, "yaw")
		roll := rapid.Float64Range(-180, 180).Draw(t, "roll")
		moved := c
		moved.Axes = nil
		for _, a := range c.Axes {
			moved.Axes = append(moved.Axes, a.Pitched(pitch).yawed(yaw).rolled(roll))
		}
		for i := range c.Joints() {
			same(t, "angle", moved.Angle(i), c.Angle(i))
		}
		same(t, "residual", moved.whole(), c.whole())
	})
}

func TestMirroredVehicle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 1, 4, 40)
		mirror := Chain{Double: c.Double}
		for _, a := range c.Axes {
			mirror.Axes = append(mirror.Axes, Axis{a.X, -a.Y, a.Z})
		}
		for _, p := range c.PhaseDeg {
			mirror.PhaseDeg = append(mirror.PhaseDeg, -p)
		}
		for i := range c.Joints() {
			same(t, "angle", mirror.Angle(i), c.Angle(i))
		}
		same(t, "residual", mirror.whole(), c.whole())
	})
}

func TestDrivenFromTheOtherEnd(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 1, 4, 40)
		var swapped Chain
		for i := len(c.Axes) - 1; i >= 0; i-- {
			// Turned end for end about the z axis, (−x, −y, z), and its forward direction then the
			// other way along the part. Seen along it the rear fork leads by the same angle.
			a := c.Axes[i]
			swapped.Axes = append(swapped.Axes, Axis{a.X, a.Y, -a.Z})
		}
		for i := len(c.PhaseDeg) - 1; i >= 0; i-- {
			swapped.PhaseDeg = append(swapped.PhaseDeg, c.PhaseDeg[i])
		}
		for i := len(c.Double) - 1; i >= 0; i-- {
			swapped.Double = append(swapped.Double, c.Double[i])
		}
		same(t, "residual", swapped.whole(), c.whole())
	})
}

func TestHalfTurnsOfPhaseChangeNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 2, 4, 40)
		other := c
		other.PhaseDeg = append([]float64(nil), c.PhaseDeg...)
		i := rapid.IntRange(0, len(other.PhaseDeg)-1).Draw(t, "shaft")
		other.PhaseDeg[i] += 180 * float64(rapid.IntRange(-3, 3).Draw(t, "turns"))
		same(t, "residual", other.whole(), c.whole())
	})
}

func TestBestPhaseIsBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 2, 4, 30)
		i := rapid.IntRange(0, c.Joints()-2).Draw(t, "shaft")
		best := c
		best.PhaseDeg = append([]float64(nil), c.PhaseDeg...)
		best.PhaseDeg[i] = c.BestPhase(i)
		if p := best.PhaseDeg[i]; p <= -90 || p > 90 {
			t.Errorf("phase %g", p)
		}
		least := best.whole()
		for off := 0.5; off < 180; off += 0.5 {
			other := best
			other.PhaseDeg = append([]float64(nil), best.PhaseDeg...)
			other.PhaseDeg[i] += off
			if got := other.whole(); got < least-1e-6 {
				t.Fatalf("phase %g leaves %g°, %g leaves %g°", best.PhaseDeg[i], least, other.PhaseDeg[i], got)
			}
		}
	})
}

func TestBestPhaseOfOneShaftIsTheTwist(t *testing.T) {
	// Elbe technical section 4: the forks are offset by the angle between the two planes. What is
	// left then is cos β = cos β₁/cos β₂.
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 2, 2, 30)
		c.Double = nil
		one, two := c.Angle(0), c.Angle(1)
		if one < 0.1 || two < 0.1 {
			t.Skip("too nearly in line to have planes")
		}
		if off := math.Abs(halfTurn(c.BestPhase(0) - c.Twist(0))); off > 1e-6 && off < 180-1e-6 {
			t.Errorf("best phase %g°, twist %g°", c.BestPhase(0), c.Twist(0))
		}
		c.PhaseDeg = []float64{c.Twist(0)}
		least := min(RatioMin(one)/RatioMin(two), RatioMin(two)/RatioMin(one))
		same(t, "residual", c.whole(), math.Acos(least)/degree)
	})
}

func TestFirstOrderRule(t *testing.T) {
	// β² = |Σ βᵢ²·exp(2jψᵢ)|, ψᵢ from the plane of joint i to its driving fork, all at one turn of
	// the line: worked apart from this code, good to 0.1 % of the largest angle up to about 6°.
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 2, 4, 2)
		c.Double = nil
		var sumX, sumY, largest, fork float64
		for i := range c.Joints() {
			if i > 0 {
				fork += 90 + c.phase(i-1) - c.Twist(i-1)
			}
			if c.Angle(i) < 1e-3 {
				t.Skip("too nearly in line to have a plane")
			}
			square := math.Pow(c.Angle(i), 2)
			sumX += square * math.Cos(2*fork*degree)
			sumY += square * math.Sin(2*fork*degree)
			largest = max(largest, square)
		}
		small := math.Sqrt(sumX*sumX + sumY*sumY)
		if got := c.whole(); math.Abs(got*got-small) > 0.01*largest {
			t.Errorf("residual² %g, first order %g", got*got, small)
		}
	})
}

func TestSlopeAndPlanComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, p := rapid.Float64Range(-89, 89).Draw(t, "slope"), rapid.Float64Range(-179, 179).Draw(t, "plan")
		gotS, gotP := AxisOf(s, p).SlopePlan()
		if math.Abs(gotS-s) > 1e-10 || math.Abs(gotP-p) > 1e-10 {
			t.Errorf("(%g, %g) came back as (%g, %g)", s, p, gotS, gotP)
		}
		d := rapid.Float64Range(-30, 30).Draw(t, "turn")
		if got, _ := AxisOf(s, 0).Pitched(d).SlopePlan(); math.Abs(s+d) < 90 && math.Abs(got-s-d) > 1e-9 {
			t.Errorf("slope %g pitched by %g is %g", s, d, got)
		}
		if gotS, gotP := AxisOf(s, p).yawed(d).SlopePlan(); math.Abs(halfTurn(gotP-p-d)) > 1e-9 || math.Abs(gotS-s) > 1e-9 {
			t.Errorf("plan %g yawed by %g is %g", p, d, gotP)
		}
	})
}

func TestChainsAreNeverLost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		any := rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{0, 90, -90, 180, 45, 1e-9, 1e300}))
		var c Chain
		for range rapid.IntRange(0, 5).Draw(t, "axes") {
			c.Axes = append(c.Axes, AxisOf(any.Draw(t, "slope"), any.Draw(t, "plan")))
		}
		c.PhaseDeg = rapid.SliceOfN(any, 0, 3).Draw(t, "phase")
		c.Double = rapid.SliceOfN(rapid.Bool(), 0, 3).Draw(t, "double")
		first, last := rapid.IntRange(-2, 6).Draw(t, "first"), rapid.IntRange(-2, 6).Draw(t, "last")
		for _, got := range append(c.Angles(nil), c.Residual(first, last), c.Twist(first), c.BestPhase(last)) {
			if math.IsNaN(got) || math.IsInf(got, 0) {
				t.Fatalf("%v: got %g", c, got)
			}
		}
		if r := c.Residual(first, last); r < 0 || r > 90.0000001 {
			t.Errorf("residual %g", r)
		}
	})
}

func TestResidualTakesNoMemory(t *testing.T) {
	c := upright([]float64{3, 95}, 1.5, 4, 3)
	into := make([]float64, 0, 3)
	if got := testing.AllocsPerRun(100, func() { c.Residual(0, 2); into = c.Angles(into) }); got != 0 {
		t.Errorf("%g allocations", got)
	}
}

func BenchmarkResidual(b *testing.B) {
	c := Chain{Axes: []Axis{AxisOf(2.4, 0), AxisOf(17, 1), AxisOf(2, 0.5)}, PhaseDeg: []float64{3}}
	for b.Loop() {
		c.Residual(0, 1)
	}
}

func BenchmarkAxisOf(b *testing.B) {
	for b.Loop() {
		AxisOf(2.4, 1)
	}
}

// yawed returns the axis after its body turned about the vehicle's z axis, so that it gains deg of
// plan angle (its front end goes left).
func (a Axis) yawed(deg float64) Axis {
	sin, cos := math.Sincos(deg * degree)
	return Axis{float64(a.X*cos) - float64(a.Y*sin), float64(a.X*sin) + float64(a.Y*cos), a.Z}
}

// rolled returns the axis after its body turned about the vehicle's x axis by the right-hand rule
// (the left side rises).
func (a Axis) rolled(deg float64) Axis {
	sin, cos := math.Sincos(deg * degree)
	return Axis{a.X, float64(a.Y*cos) - float64(a.Z*sin), float64(a.Y*sin) + float64(a.Z*cos)}
}
