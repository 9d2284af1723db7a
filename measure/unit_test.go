package measure

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

func TestConversionsFollowPublishedFactors(t *testing.T) {
	const sp811 = "NIST SP 811 (2008), appendix B.8, exact factor in bold"
	for _, tt := range []struct {
		from   Unit
		to     Unit
		one    float64 // one of from in to
		tol    float64 // relative; 0 where both sides are the same binary number
		source string
	}{
		{"in", "mm", 25.4, 0, sp811 + ": inch 2.54 E-02 m"},
		{"lb", "kg", 0.45359237, 0, sp811 + ": pound (avoirdupois) 4.535 923 7 E-01 kg"},
		{"lbf", "N", 4.4482216152605, 0, sp811 + ": pound-force 4.448 222 N; exact as lb times g_n 9.806 65"},
		{"lbf·ft", "N·m", 1.355818, 5e-7, sp811 + ": foot pound-force 1.355 818 N·m"},
		{"lbf/in", "N/mm", 0.1751268, 5e-7, sp811 + ": pound-force per inch 1.751 268 E+02 N/m"},
		{"mph", "km/h", 1.609344, 0, sp811 + ": mile per hour 1.609 344 km/h"},
		{"kN", "N", 1000, 0, "SI Brochure 9th ed. table 7, prefix kilo"},
	} {
		got, err := Convert(1, tt.from, tt.to)
		if err != nil || math.Abs(got-tt.one) > tt.tol*tt.one {
			t.Errorf("1 %s is %v %s, %v; want %v (%s)", tt.from, got, tt.to, err, tt.one, tt.source)
		}
	}
	if got, want := 0.45359237*9.80665, 4.4482216152605; math.Abs(got-want) > 1e-15*want {
		t.Errorf("pound times g_n is %v, want the factor of lbf %v", got, want)
	}
}

func TestConversionThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.SampledFrom(Units).Draw(t, "from")
		b := rapid.SampledFrom(Units).Draw(t, "to")
		x := rapid.Float64Range(-1e6, 1e6).Draw(t, "number")
		there, err := Convert(x, a.Unit, b.Unit)
		if a.Quantity != b.Quantity {
			if err == nil {
				t.Fatalf("%g %s converts to %s", x, a.Unit, b.Unit)
			}
			return
		}
		back, err2 := Convert(there, b.Unit, a.Unit)
		if err != nil || err2 != nil || math.Abs(back-x) > 1e-12*math.Abs(x) {
			t.Fatalf("%g %s is %g %s is %g %s; %v %v", x, a.Unit, there, b.Unit, back, a.Unit, err, err2)
		}
	})
}

func TestConversionNeverGivesInfinity(t *testing.T) {
	if got, err := Convert(1e308, "kN", "N"); err == nil {
		t.Errorf("1e308 kN is %v N", got)
	}
	if got, err := Convert(1e304, "kN", "N"); err != nil || got != 1e307 {
		t.Errorf("1e304 kN is %v N, %v", got, err)
	}
}

func TestUnitsAreOneTable(t *testing.T) {
	var files []Unit
	typed := map[string]Unit{}
	bases := map[Quantity]int{}
	for _, u := range Units {
		files = append(files, u.Unit)
		if u.ToBase == 1 {
			bases[u.Quantity]++
		}
		if !(u.ToBase > 0) || math.IsInf(u.ToBase, 0) {
			t.Errorf("%s: factor %v", u.Unit, u.ToBase)
		}
		for _, word := range u.Typed {
			if other, twice := typed[word]; twice {
				t.Errorf("%q is typed for %s and for %s", word, other, u.Unit)
			}
			typed[word] = u.Unit
			if got, ok := UnitOf(word); !ok || got.Unit != u.Unit {
				t.Errorf("%q is taken for %s, want %s", word, got.Unit, u.Unit)
			}
		}
	}
	// The strings that files use never change.
	for _, want := range []Unit{"deg", "mm", "in", "count", "kg", "lb", "N", "N·m", "lbf·ft", "rev/min", "km/h", "mph"} {
		if !slices.Contains(files, want) {
			t.Errorf("unit %s of the file format is gone", want)
		}
	}
	for q, n := range bases {
		if n != 1 {
			t.Errorf("%s has %d base units", q, n)
		}
	}
}

func TestEveryPointHasAUnitToBeWrittenIn(t *testing.T) {
	for _, p := range Points {
		if !slices.Contains(quantities, p.Quantity) {
			t.Errorf("%s: quantity %q is not known", p.Key, p.Quantity)
		}
		if err := checkUnit(p.Quantity.Base(), p.Quantity); err != nil {
			t.Errorf("%s: %v", p.Key, err)
		}
	}
	for _, q := range []Quantity{Ratio, Factor, Answer, Text} {
		if !q.Bare() {
			t.Errorf("a %s is written with the unit %s", q, q.Base())
		}
	}
	for q, want := range map[Quantity]Unit{Angle: "deg", Length: "mm", Count: "count", Mass: "kg", Force: "N", Torque: "N·m",
		Turning: "rev/min", RoadSpeed: "km/h", Stiffness: "N/mm", Stress: "MPa", Hardness: "HRC"} {
		if q.Base() != want || q.Bare() {
			t.Errorf("base unit of %s is %q, want %q", q, q.Base(), want)
		}
	}
}

func TestUnitsOfAnotherQuantityAreRefused(t *testing.T) {
	for _, tt := range []struct {
		unit Unit
		q    Quantity
		says string
		twin Unit
	}{
		{"mm", Angle, "is for a length, but this is an angle; use deg", "deg"},
		{"deg", Length, "is for an angle, but this is a length; use mm", "in"},
		{"N", Mass, "is for a force, but this is a mass; use kg", "lb"},
		{"Nm", Torque, "is not known; use N·m", "N·m"},
		{"", Length, "is not known; use mm", "mm"},
		{"mm", Ratio, "a ratio is written without a unit", ""},
		{"count", Answer, "an answer is written without a unit", ""},
	} {
		refused(t, string(tt.unit)+" for "+string(tt.q), checkUnit(tt.unit, tt.q), tt.says)
		if err := checkUnit(tt.twin, tt.q); err != nil {
			t.Errorf("the near twin %q for %s: %v", tt.twin, tt.q, err)
		}
	}
}
