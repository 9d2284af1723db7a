package joint

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// crosses turns a chain in space, knowing nothing of matrices: at each joint the pin of the driven
// fork is square to the pin of the driving fork and to the driven axis. It returns how far the last
// part has turned, for a driving pin that stands theta from any fixed direction.
//
// A double joint is built as two crosses with a short body half-way between, its forks in line.
type crosses struct {
	axes  []Axis
	phase []float64 // of axes[1:len-1]
}

func crossesOf(c Chain) crosses {
	out := crosses{axes: []Axis{c.Axes[0]}}
	for i := range c.Joints() {
		a, b := c.Axes[i], c.Axes[i+1]
		if c.double(i) {
			mid := Axis{a.X + b.X, a.Y + b.Y, a.Z + b.Z}
			size := length(mid)
			out.axes = append(out.axes, Axis{mid.X / size, mid.Y / size, mid.Z / size})
			out.phase = append(out.phase, 0)
		}
		out.axes = append(out.axes, b)
		if i+1 < c.Joints() {
			out.phase = append(out.phase, c.phase(i))
		}
	}
	return out
}

// pin is the driving pin of the first joint, theta right-handed from the direction start.
func (s crosses) pin(start Axis, theta float64) Axis { return turned(start, s.axes[0], theta) }

// last returns the driven pin of the last joint.
func (s crosses) last(pin Axis) Axis {
	for i, axis := range s.axes[1:] {
		driven := cross(axis, pin)
		size := length(driven)
		driven = Axis{driven.X / size, driven.Y / size, driven.Z / size}
		if i == len(s.axes)-2 {
			return driven
		}
		pin = turned(driven, axis, s.phase[i]*degree)
	}
	panic("a chain has two axes at least")
}

// ratio is the speed ratio at theta by a central difference.
func (s crosses) ratio(start Axis, theta float64) float64 {
	const h = 1e-4
	out := s.axes[len(s.axes)-1]
	a, b := s.last(s.pin(start, theta-h)), s.last(s.pin(start, theta+h))
	return math.Atan2(dot(cross(a, b), out), dot(a, b)) / (2 * h)
}

// extremes samples a half turn and closes in on the least and the greatest ratio.
func (s crosses) extremes(start Axis) (least, most float64) {
	const steps = 180
	least, most = math.Inf(1), math.Inf(-1)
	var atLeast, atMost float64
	for i := range steps {
		theta := math.Pi * float64(i) / steps
		r := s.ratio(start, theta)
		if r < least {
			least, atLeast = r, theta
		}
		if r > most {
			most, atMost = r, theta
		}
	}
	for step := math.Pi / steps; step > 1e-5; step /= 2 {
		for _, side := range []float64{-step, step} {
			if r := s.ratio(start, atLeast+side); r < least {
				least, atLeast = r, atLeast+side
			}
			if r := s.ratio(start, atMost+side); r > most {
				most, atMost = r, atMost+side
			}
		}
	}
	return least, most
}

// turned rotates v about a unit axis, right-handed (Rodrigues).
func turned(v, axis Axis, angle float64) Axis {
	sin, cos := math.Sincos(angle)
	x, d := cross(axis, v), dot(axis, v)*(1-cos)
	return Axis{v.X*cos + x.X*sin + axis.X*d, v.Y*cos + x.Y*sin + axis.Y*d, v.Z*cos + x.Z*sin + axis.Z*d}
}

// squareTo is some direction square to a.
func squareTo(a Axis) Axis {
	n := cross(a, Axis{0, 0, 1})
	size := length(n)
	return Axis{n.X / size, n.Y / size, n.Z / size}
}

func anyChain(t *rapid.T, least, most int, slope float64) Chain {
	n := rapid.IntRange(least, most).Draw(t, "joints")
	var c Chain
	for range n + 1 {
		c.Axes = append(c.Axes, AxisOf(
			rapid.Float64Range(-slope, slope).Draw(t, "slope"),
			rapid.Float64Range(-slope, slope).Draw(t, "plan")))
	}
	for range n - 1 {
		c.PhaseDeg = append(c.PhaseDeg, rapid.Float64Range(-200, 200).Draw(t, "phase"))
	}
	for range n {
		c.Double = append(c.Double, rapid.IntRange(0, 3).Draw(t, "double") == 0)
	}
	return c
}

func TestResidualIsThatOfCrossesInSpace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 1, 4, 20)
		least, most := crossesOf(c).extremes(squareTo(c.Axes[0]))
		residual := c.Residual(0, c.Joints()-1)
		if got := RatioMin(residual); math.Abs(got-least) > 2e-7 {
			t.Errorf("residual %.6f°: least ratio %.9f, crosses %.9f", residual, got, least)
		}
		if got := ratioMax(residual); math.Abs(got-most) > 2e-7*most*most {
			t.Errorf("residual %.6f°: greatest ratio %.9f, crosses %.9f", residual, got, most)
		}
	})
}

func TestPartOfAChainIsTheChainOfThatPart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t, 2, 5, 20)
		first := rapid.IntRange(0, c.Joints()-1).Draw(t, "first")
		last := rapid.IntRange(first, c.Joints()-1).Draw(t, "last")
		part := Chain{Axes: c.Axes[first : last+2], PhaseDeg: c.PhaseDeg[first:last], Double: c.Double[first : last+1]}
		if got, want := c.Residual(first, last), part.Residual(0, part.Joints()-1); math.Abs(got-want) > 1e-9 {
			t.Errorf("joints %d…%d: %g, alone %g", first, last, got, want)
		}
	})
}
