package survey

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const apart = "worked apart from this code"

func TestShaftBetweenTwoFlanges(t *testing.T) {
	for _, row := range []struct {
		name string
		m    Flanges
		want Shaft
		from string
	}{
		{"level and straight: the yokes come off the gap", Flanges{GapMM: 1200, FrontMM: 90, RearMM: 70}, Shaft{1040, 0, 0}, "by hand"},
		{"3-4-5 in the side view, no yokes", Flanges{GapMM: 1000, RiseMM: 600}, Shaft{1000, 36.8699, 0}, "angle of the 3-4-5 triangle"},
		{"3-4-5 in plan, no yokes", Flanges{GapMM: 1000, AsideMM: 600}, Shaft{1000, 0, 36.8699}, "angle of the 3-4-5 triangle"},
		{"both flanges lean with the shaft: slope stays", Flanges{GapMM: 1000, RiseMM: 1000 * math.Sin(10*math.Pi/180), FrontMM: 80, RearMM: 60, FrontSlope: 10, RearSlope: 10},
			Shaft{860, 10, 0}, "all on one line"},
		{"level gearbox and pinion, flanges 150 apart in height", Flanges{GapMM: 1200, RiseMM: 150, FrontMM: 90, RearMM: 70},
			Shaft{1041.447, 8.2811, 0}, "√(1190.588−160)² + 150², atan 150/1030.588, " + apart},
		{"gearbox up 3, pinion down 2, 40 left", Flanges{GapMM: 1200, RiseMM: 150, AsideMM: 40, FrontMM: 90, RearMM: 70, FrontSlope: 3, RearSlope: -2},
			Shaft{1041.3903, 8.15555, 2.22378}, apart},
	} {
		got, err := Between(row.m)
		if err != nil || math.Abs(got.LengthMM-row.want.LengthMM) > 0.01 || math.Abs(got.SlopeDeg-row.want.SlopeDeg) > 1e-3 || math.Abs(got.PlanDeg-row.want.PlanDeg) > 1e-3 {
			t.Errorf("%s: got %+v (%v), want %+v (%s)", row.name, got, err, row.want, row.from)
		}
	}
}

// Put the joints of any shaft onto flanges and find the shaft again.
func TestAnyShaftIsFoundAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		angle := func(name string) float64 { return rapid.Float64Range(-12, 12).Draw(t, name) }
		s := Shaft{rapid.Float64Range(400, 2000).Draw(t, "length"), angle("slope"), angle("plan")}
		m := Flanges{FrontMM: rapid.Float64Range(0, 150).Draw(t, "front"), RearMM: rapid.Float64Range(0, 150).Draw(t, "rear"),
			FrontSlope: angle("gearbox"), FrontPlan: angle("gearbox plan"), RearSlope: angle("pinion"), RearPlan: angle("pinion plan")}
		w, u, v := ahead(s.SlopeDeg, s.PlanDeg), ahead(m.FrontSlope, m.FrontPlan), ahead(m.RearSlope, m.RearPlan)
		var d [3]float64
		for i := range d {
			d[i] = s.LengthMM*w[i] + m.FrontMM*u[i] + m.RearMM*v[i]
		}
		m.GapMM, m.AsideMM, m.RiseMM = math.Sqrt(d[0]*d[0]+d[1]*d[1]+d[2]*d[2]), d[1], d[2]
		got, err := Between(m)
		if err != nil || math.Abs(got.LengthMM-s.LengthMM) > 1e-6 || math.Abs(got.SlopeDeg-s.SlopeDeg) > 1e-6 || math.Abs(got.PlanDeg-s.PlanDeg) > 1e-6 {
			t.Errorf("%+v came back as %+v (%v)", s, got, err)
		}
		// Mirrored left for right, only the plan angle turns round.
		m.AsideMM, m.FrontPlan, m.RearPlan = -m.AsideMM, -m.FrontPlan, -m.RearPlan
		other, _ := Between(m)
		if math.Abs(other.PlanDeg+got.PlanDeg) > 1e-9 || math.Abs(other.SlopeDeg-got.SlopeDeg) > 1e-9 {
			t.Errorf("mirrored: %+v, %+v", got, other)
		}
	})
}

func TestPlanAnglesFromOffsets(t *testing.T) {
	for _, row := range []struct {
		name       string
		got        func() (float64, error)
		want, from any
	}{
		{"3 in 60 along the string", func() (float64, error) { return PlanOfLine(3, 0, 60) }, 2.862, "driveline maintenance manual MM-96147 p. 87 formula 1 (read), " + apart},
		{"12 in 60 along the string", func() (float64, error) { return PlanOfLine(12, 0, 60) }, 11.310, "same formula, " + apart},
		{"3 in 60 along the shaft", func() (float64, error) { return PlanOfShaft(3, 0, 60) }, 2.866, "arcsin form, " + apart},
		{"12 in 60 along the shaft", func() (float64, error) { return PlanOfShaft(12, 0, 60) }, 11.537, "arcsin form, " + apart},
		{"rear end further left", func() (float64, error) { return PlanOfLine(-10, 15, 500) }, -2.8624, "atan 25/500, by hand"},
		{"rear axle, left wheelbase 10 longer, track 1400", func() (float64, error) { return PlanOfAxle(Wheels{2610, 2600, 1400, false}) }, 0.40925, "atan 10/1400, by hand"},
		{"front axle, the same", func() (float64, error) { return PlanOfAxle(Wheels{2610, 2600, 1400, true}) }, -0.40925, "atan 10/1400, by hand"},
	} {
		if got, err := row.got(); err != nil || math.Abs(got-row.want.(float64)) > 1e-3 {
			t.Errorf("%s: got %.4f (%v), want %v (%s)", row.name, got, err, row.want, row.from)
		}
	}
}

// The sign of the axle's plan angle, from wheels that were really turned about the vehicle's middle.
func TestAxleTurnedLeftPointsLeft(t *testing.T) {
	for _, front := range []bool{false, true} {
		turn := 2 * math.Pi / 180 // anticlockwise from above: noses go left
		half, base := 700.0, 2600.0
		side := func(y float64) float64 { // along the vehicle, how far this wheel moves forward
			return -y * math.Sin(turn)
		}
		left, right := base-side(half), base-side(-half) // rear axle: forward shortens
		if front {
			left, right = base+side(half), base+side(-half)
		}
		got, _ := PlanOfAxle(Wheels{left, right, 2 * half * math.Cos(turn), front})
		if math.Abs(got-2) > 1e-9 {
			t.Errorf("front %v: axle turned 2° left reads %.4f", front, got)
		}
	}
}

func TestWhatCannotStand(t *testing.T) {
	for _, bad := range []Flanges{{}, {GapMM: 100, RiseMM: 100}, {GapMM: 150, FrontMM: 100, RearMM: 90}, {GapMM: math.NaN()}, {GapMM: math.Inf(1)}} {
		if got, err := Between(bad); err == nil {
			t.Errorf("%+v gave %+v", bad, got)
		}
	}
	for _, err := range []error{
		second(PlanOfLine(1, 0, 0)), second(PlanOfLine(1, 0, math.NaN())), second(PlanOfShaft(10, 0, 10)), second(PlanOfShaft(10, 0, 0)),
		second(PlanOfAxle(Wheels{0, 1, 1, false})), second(PlanOfAxle(Wheels{1, 1, math.Inf(1), false})),
	} {
		if err == nil {
			t.Error("an angle of nothing")
		}
	}
}

func second(_ float64, err error) error { return err }
