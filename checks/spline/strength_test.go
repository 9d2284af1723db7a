package spline

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const (
	poundInch = 0.1129848290276167 // N·m
	psi       = 0.006894757293168361
	handbook  = "Machinery's Handbook, Involute Splines, eqs 1 to 5; worked apart from this code"
	bhandari  = "Bhandari, Design of Machine Elements, ch. 9, slides of the book; reproduced"
)

func plain(torque float64) Load { return Load{torque, 1, 1, 1, 1} }

func TestInvoluteStresses(t *testing.T) {
	for _, row := range []struct {
		name                        string
		t                           Teeth
		torque                      float64
		root, teeth, sliding, stays float64 // psi; 0: not given
	}{
		{"14T 12/24 solid", Teeth{14, 1.16667 * inch, 1.05417 * inch, 0, 0.13090 * inch, 0.075 * inch, 1 * inch}, 5000, 21738, 9354, 8163, 907},
		{"23T 16/32 solid", Teeth{23, 1.4375 * inch, 1.35313 * inch, 0, 0.09817 * inch, 0.05625 * inch, 1.5 * inch}, 7000, 14390, 5751, 5019, 0},
	} {
		l := plain(row.torque * poundInch)
		for _, stress := range []struct {
			name string
			want float64
			got  func() (float64, error)
		}{
			{"root", row.root, func() (float64, error) { return RootShear(row.t, l) }},
			{"teeth", row.teeth, func() (float64, error) { return ToothShear(row.t, l) }},
			{"sides, sliding", row.sliding, func() (float64, error) { return SidePressure(row.t, l, false) }},
			{"sides, in place", row.stays, func() (float64, error) { return SidePressure(row.t, l, true) }},
		} {
			got, err := stress.got()
			if err != nil {
				t.Fatal(err)
			}
			if stress.want > 0 {
				near(t, row.name+", "+stress.name, got/psi, stress.want, 1, handbook)
			}
		}
	}
}

func TestProportionsOfStraightSplines(t *testing.T) {
	for _, row := range []struct {
		name         string
		count        int
		inches       float64
		fit          string
		height, hole float64 // inches
		torque, tol  float64 // lbf·in per inch at 1000 psi
		source       string
	}{
		{"6 splines, permanent", 6, 1, "A", 0.050, 0.900, 142.5, 0.05, "SAE J499, prints 143"},
		{"6 splines, slides under load", 6, 1, "C", 0.100, 0.800, 270.0, 0.05, "SAE J499"},
		{"10 splines", 10, 1.5, "C", 0.1425, 1.215, 967.2, 0.05, "ratios of SAE J499 (from memory); worked apart from this code"},
	} {
		for _, p := range J499 {
			if p.Count != row.count || p.Fit != row.fit {
				continue
			}
			s := p.At(row.inches * inch)
			near(t, row.name+" hole", s.MinorMM/inch, row.hole, 1e-9, row.source)
			near(t, row.name+" height", p.Height*row.inches, row.height, 1e-9, row.source)
			// What the standard prints beside the sizes: pressure on all sides at their mean radius.
			torque := 1000 * float64(row.count) * p.Height * row.inches * (s.MajorMM + s.MinorMM) / 4 / inch
			near(t, row.name+" torque", torque, row.torque, row.tol, row.source)
		}
	}
}

func TestSlipForce(t *testing.T) {
	for _, row := range []struct {
		name                         string
		torque, radius, flank, mu, n float64
		tol                          float64
		source                       string
	}{
		{"8×52×60 at μ 0.06", 636.6198, 28, 0, 0.06, 1364.2, 0.05, bhandari},
		{"its flank force", 636.6198, 28, 0, 1, 22736.4, 0.05, bhandari},
		{"1500 N·m at 19 mm", 1500, 19, 0, 0.11, 8684, 0.5, apart},
		{"the same on 30° flanks", 1500, 19, 30, 0.11, 10028, 0.5, apart},
		{"the same at μ 0.08", 1500, 19, 0, 0.08, 6316, 0.5, apart},
		{"900 N·m at 16.5 mm", 900, 16.5, 0, 0.11, 6000, 1e-6, apart},
	} {
		got, err := SlipForce(row.torque, row.radius, row.flank, row.mu)
		if err != nil {
			t.Fatal(err)
		}
		near(t, row.name, got, row.n, row.tol, row.source)
	}
}

func TestEqualShearLength(t *testing.T) {
	for _, row := range []struct {
		name                       string
		root, pitch, half, quarter float64
	}{
		{"23T 16/32, inches", 1.35313, 1.4375, 0.599, 1.199},
		{"14T 12/24, inches", 1.05417, 1.16667, 0.430, 0.861},
	} {
		half, err := EqualShearLength(row.root, row.pitch, 0.5)
		if err != nil {
			t.Fatal(err)
		}
		quarter, _ := EqualShearLength(row.root, row.pitch, 0.25)
		near(t, row.name+", half the teeth", half, row.half, 6e-4, apart)
		near(t, row.name+", a quarter", quarter, row.quarter, 6e-4, apart)
	}
}

func TestAllowedStressesGrowWithHardness(t *testing.T) {
	for i, a := range AllowedStresses[1:] {
		b := AllowedStresses[i]
		if a.FromHRC <= b.FromHRC || a.ShearMPa < b.ShearMPa || a.SideMPa <= b.SideMPa {
			t.Errorf("%s is not stronger than %s", a.Steel, b.Steel)
		}
	}
	for _, row := range []struct {
		hrc, psiShear, psiSide float64
	}{{10, 20000, 1500}, {25, 30000, 2000}, {35, 40000, 3000}, {45, 40000, 3000}, {50, 40000, 4000}, {60, 50000, 5000}} {
		a := AllowedAt(row.hrc)
		near(t, "shear", a.ShearMPa/psi, row.psiShear, 0.003*row.psiShear, "Dudley 1957")
		near(t, "side", a.SideMPa/psi, row.psiSide, 0.005*row.psiSide, "Dudley 1957")
	}
}

// More torque strains more, more length less; and the same spline in inches is strained the same.
func TestStressesGoTheRightWay(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := rapid.Float64Range(15, 80).Draw(rt, "pitch")
		teeth := Teeth{rapid.IntRange(6, 50).Draw(rt, "count"), d, d * 0.9, 0, rapid.Float64Range(1, 5).Draw(rt, "thickness"),
			rapid.Float64Range(0.5, 4).Draw(rt, "height"), rapid.Float64Range(5, 120).Draw(rt, "length")}
		load := Load{rapid.Float64Range(10, 9000).Draw(rt, "torque"), 2.2, 1.2, 0.8, 2}
		more, longer := load, teeth
		more.TorqueNm *= 1.1
		longer.LengthMM *= 1.1
		for _, of := range []func(Teeth, Load) (float64, error){RootShear, ToothShear,
			func(t Teeth, l Load) (float64, error) { return SidePressure(t, l, false) },
			func(t Teeth, l Load) (float64, error) { return SidePressure(t, l, true) }} {
			now, err := of(teeth, load)
			up, _ := of(teeth, more)
			long, _ := of(longer, load)
			if err != nil || !(now > 0) || up <= now || long > now {
				rt.Fatalf("%+v %+v: %g; more torque %g; longer %g (%v)", teeth, load, now, up, long, err)
			}
		}
	})
}

func TestStrengthOfNothingIsRefused(t *testing.T) {
	good := Teeth{14, 30, 26, 0, 3, 2, 25}
	if _, err := RootShear(good, plain(100)); err != nil {
		t.Fatalf("control: %v", err)
	}
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		thin, short, flat := good, good, good
		thin.RootMM, short.LengthMM, flat.HeightMM = bad, bad, bad
		for i, err := range []error{
			second(RootShear(thin, plain(100))), second(RootShear(good, plain(bad))), second(ToothShear(short, plain(100))),
			second(SidePressure(flat, plain(100), true)), second(SlipForce(100, bad, 0, 0.1)), second(SlipForce(100, 20, 0, bad)),
			second(EqualShearLength(bad, 30, 0.5)),
		} {
			if err == nil {
				t.Errorf("%g in case %d was taken", bad, i)
			}
		}
	}
	hollow := good
	hollow.BoreMM = 26
	if _, err := RootShear(hollow, plain(100)); err == nil {
		t.Error("a shaft that is all bore carries torque")
	}
}

func second(_ float64, err error) error { return err }
