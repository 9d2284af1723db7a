package joint

import (
	"math"
	"testing"
)

const (
	inSpace = "crosses simulated apart from this code, angles as √(r_max − r_min); rule: Elbe technical section 4"
	spicer  = "Spicer J3311-1-DSSP (2008) p. 10"
)

// tubes is a one-piece shaft whose three parts are given in the way of the worked examples: the
// rear end higher by so much, and the line heading so far right toward the rear. In our frame the
// slope then has the other sign and the plan angle the same.
func tubes(lines ...[2]float64) Chain {
	var c Chain
	for _, l := range lines {
		c.Axes = append(c.Axes, AxisOf(-l[0], l[1]))
	}
	return c
}

func TestAngleInSpace(t *testing.T) {
	level := AxisOf(0, 0)
	near(t, "side 2.5, top 2.15", Angle(level, AxisOf(2.5, 2.15)), 3.3, 0.05, spicer+": √10.873 printed as 3.3")
	near(t, "the same, exact", Angle(level, AxisOf(2.5, 2.15)), 3.2969, 6e-5, "dot product, worked apart from this code")
	for _, row := range []struct{ both, want float64 }{{5, 7.067}, {10, 14.106}, {15, 21.091}, {20, 27.991}} {
		near(t, "both the same", Angle(level, AxisOf(row.both, row.both)), row.want, exactTo, "dot product, worked apart from this code")
	}
	c := tubes([2]float64{-3, 0}, [2]float64{-8, 4})
	near(t, "5 in side view, 4 in plan", c.Angle(0), 6.3908, 6e-5, "dot product, worked apart from this code")
	near(t, "shop rule", math.Sqrt(25+16), c.Angle(0), 0.02, spicer+": √(S² + T²)")
}

func TestTinyAngle(t *testing.T) {
	for _, want := range []float64{1e-3, 1e-6, 1e-9, 1e-12} {
		near(t, "tiny angle", Angle(AxisOf(0, 10), AxisOf(want, 10)), want, 1e-6*want+1e-14, "difference of slopes")
	}
	near(t, "none", Angle(AxisOf(7, 3), AxisOf(7, 3)), 0, 0, "the same axis")
}

func TestSignedPieces(t *testing.T) {
	// 2°00′, 2°51′, 1°54′, pieces front to rear: joints −51′ and +57′.
	const source = "Lexus LS400 1997 factory text"
	pieces := []float64{2, 2 + 51.0/60, 1 + 54.0/60}
	near(t, "centre", pieces[0]-pieces[1], -51.0/60, 1e-9, source)
	near(t, "rear", pieces[1]-pieces[2], 57.0/60, 1e-9, source)
	c := Chain{Axes: []Axis{AxisOf(pieces[0], 0), AxisOf(pieces[1], 0), AxisOf(pieces[2], 0)}}
	near(t, "centre in space", c.Angle(0), 0.850, 1e-9, source)
	near(t, "rear in space", c.Angle(1), 0.950, 1e-9, source)
}

func TestShaftsNotInOnePlane(t *testing.T) {
	for _, row := range []struct {
		name                   string
		c                      Chain
		front, rear            float64
		twist                  float64 // ours, half turns taken out
		inLine, inLineTol      float64
		clocked, clockedTol    float64
		inLinePeak, peakTol    float64
		clockedPeak, clockedPT float64
	}{
		{"parallel, offset", tubes([2]float64{-3, 0}, [2]float64{-7, 3}, [2]float64{-3, 0}),
			4.9928, 4.9928, 0, 0, 1e-6, 0, 1e-6, 0, 1e-6, 0, 1e-6},
		{"Z in side view, W in plan", tubes([2]float64{-3, 0}, [2]float64{-7, 3}, [2]float64{-3, 6}),
			4.9928, 4.9928, 73.82, 6.92, degreesTo, 0, 1e-6, 1441, 1, 0, 1e-6},
		{"W in side view, Z in plan", tubes([2]float64{-3, 0}, [2]float64{-7, 3}, [2]float64{-11, 0}),
			4.9928, 4.9775, 73.21, 6.90, degreesTo, 0.39, degreesTo, 1433, 1.5, 4.6, 0.06},
		{"3° and 3° in side view", tubes([2]float64{-3, 0}, [2]float64{-6, 2}, [2]float64{-3, 3}),
			3.602, 3.161, 52.12, 4.270, exactTo, 1.728, exactTo, 548, 0.6, 90, 0.6},
	} {
		near(t, row.name+": front", row.c.Angle(0), row.front, exactTo, "dot product, worked apart from this code")
		near(t, row.name+": rear", row.c.Angle(1), row.rear, exactTo, "dot product, worked apart from this code")
		near(t, row.name+": twist", row.c.Twist(0), row.twist, degreesTo, inSpace)
		near(t, row.name+": forks in line", row.c.byRipple(), row.inLine, row.inLineTol, inSpace)
		near(t, row.name+": its peak", PeakAcceleration(row.c.whole(), atThree), row.inLinePeak, row.peakTol, inSpace)
		best := row.c
		best.PhaseDeg = []float64{row.c.Twist(0)}
		near(t, row.name+": clocked", best.byRipple(), row.clocked, row.clockedTol, inSpace)
		near(t, row.name+": its peak", PeakAcceleration(best.whole(), atThree), row.clockedPeak, row.clockedPT, inSpace)
	}
}

func TestClockedTheWrongWay(t *testing.T) {
	c := tubes([2]float64{-3, 0}, [2]float64{-7, 3}, [2]float64{-3, 6})
	c.PhaseDeg = []float64{-c.Twist(0)}
	near(t, "residual", c.byRipple(), 5.17, degreesTo, inSpace)
	near(t, "peak", PeakAcceleration(c.whole(), atThree), 804, 1, inSpace)
}
