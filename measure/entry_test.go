package measure

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestEntryIsReadAsTyped(t *testing.T) {
	const (
		definition = "by definition of the form"
		inch       = "1 in = 25.4 mm exactly, NIST SP 811 (2008) B.8; halves to 128ths are exact decimals"
		minute     = "1° = 60', SI Brochure 9th ed. table 8"
	)
	for _, tt := range []struct {
		typed   string
		q       Quantity
		unit    Unit
		token   string
		in      Unit
		entered string
		source  string
	}{
		{"2.40", Angle, "deg", "2.40", "deg", "", definition},
		{"2,40", Angle, "deg", "2.40", "deg", "", definition},
		{" -17 ", Angle, "", "-17", "deg", "", definition},
		{"−0,5", Angle, "deg", "-0.5", "deg", "", definition},
		{"+2.4", Angle, "deg", "2.4", "deg", "", definition},
		{".5", Length, "mm", "0.5", "mm", "", definition},
		{"5.", Length, "mm", "5", "mm", "", definition},
		{"007", Length, "mm", "7", "mm", "", definition},
		{"2.5°", Angle, "deg", "2.5", "deg", "", definition},
		{"74,5 mm", Length, "in", "74.5", "mm", "", definition},
		{"3 in", Length, "mm", "3", "in", "", definition},
		{`3.25"`, Length, "mm", "3.25", "in", "", definition},
		{"3''", Length, "mm", "3", "in", "", definition},
		{"240 Nm", Torque, "", "240", "N·m", "", definition},
		{"180 lbf.ft", Torque, "", "180", "lbf·ft", "", definition},
		{"6500 rpm", Turning, "", "6500", "rev/min", "", definition},
		{"6500 1/min", Turning, "", "6500", "rev/min", "", definition},
		{"3.73", Ratio, "", "3.73", "", "", definition},
		{"3.73:1", Ratio, "", "3.73", "", "", definition},
		{"24", Count, "", "24", "count", "", definition},
		{"2", Answer, "", "2", "", "", definition},
		{"yes", Answer, "", "1", "", "yes", definition},
		{"no", Answer, "", "0", "", "no", definition},
		{" 205/55 R16 ", Text, "", "205/55 R16", "", "", definition},

		{"2°30'", Angle, "deg", "2.5", "deg", "2°30'", minute},
		{"2°30", Angle, "deg", "2.5", "deg", "2°30", minute},
		{"2 30'", Angle, "deg", "2.5", "deg", "2 30'", minute},
		{"2d30m", Angle, "deg", "2.5", "deg", "2d30m", minute},
		{"2 deg 30 min", Angle, "deg", "2.5", "deg", "2 deg 30 min", minute},
		{"2°30′", Angle, "deg", "2.5", "deg", "2°30′", minute},
		{"−2°06'", Angle, "deg", "-2.1", "deg", "−2°06'", minute},
		{"0°20'", Angle, "deg", "0.3333333", "deg", "0°20'", minute},
		{"45'", Angle, "deg", "0.75", "deg", "45'", minute},
		{"1°30,6'", Angle, "deg", "1.51", "deg", "1°30,6'", minute},

		{"7/16", Length, "in", "0.4375", "in", "7/16", inch},
		{"7/16", Length, "mm", "0.4375", "in", "7/16", inch},
		{`3 1/2"`, Length, "mm", "3.5", "in", `3 1/2"`, inch},
		{"3-1/2 in", Length, "mm", "3.5", "in", "3-1/2 in", inch},
		{"17/16", Length, "in", "1.0625", "in", "17/16", inch},
		{"127/128", Length, "in", "0.9921875", "in", "127/128", inch},
		{"-1/8", Length, "in", "-0.125", "in", "-1/8", inch},
	} {
		v, entered, unit, err := ParseEntry(tt.typed, tt.q, tt.unit)
		if err != nil {
			t.Errorf("%q as %s: %v", tt.typed, tt.q, err)
			continue
		}
		if v.Token() != tt.token || unit != tt.in || entered != tt.entered {
			t.Errorf("%q as %s is %q %q, entered %q; want %q %q, entered %q (%s)",
				tt.typed, tt.q, v.Token(), unit, entered, tt.token, tt.in, tt.entered, tt.source)
		}
	}
}

// Each refusal stands beside a near twin that is taken.
func TestEntryRefusesNonsense(t *testing.T) {
	for _, tt := range []struct {
		q         Quantity
		bad, says string
		twin      string
	}{
		{Angle, "", "nothing was typed", "0"},
		{Angle, "abc", "can't be read; type degrees", "2"},
		{Angle, "-", "can't be read", "-1"},
		{Angle, ".", "can't be read", ".1"},
		{Angle, "2 5", "one decimal mark", "2 5'"},
		{Angle, "2°60'", "60 minutes", "2°59'"},
		{Angle, "2.5°30'", "type degrees such as", "2°30'"},
		{Angle, "2.4 mm", `unit "mm" is for a length, but this is an angle; use deg`, "2.4 deg"},
		{Length, "1,234.5", "marks for thousands", "1234.5"},
		{Length, "1 234", "no gaps", "1234"},
		{Length, "1.2.3", "one decimal mark", "1.23"},
		{Length, "74 furlongs", `unit "furlongs" is not known; use mm`, "74 mm"},
		{Length, "7/16 mm", "only an inch", "7/16 in"},
		{Length, "7/15", "use halves", "7/16"},
		{Length, "7/0", "use halves", "7/8"},
		{Length, "3 9/8", "below 1", "3 7/8"},
		{Length, "2°30'", "type a length", "2.5"},
		{Mass, "7/16", "type a number such as 12.5 kg", "7.5"},
		{Mass, "120 lbf", "is for a force, but this is a mass", "120 lb"},
		{Ratio, "3.73 mm", "without a unit", "3.73"},
		{Ratio, "3.73:2", "type a number", "3.73:1"},
		{Count, "yes", "can't be read", "1"},
		{Length, "NaN", "can't be read", "1"},
		{Length, "Inf", "can't be read", "1"},
		{Length, "1e999", "not a number this program can hold", "1e9"},
		{Length, "12\x00", "none that a keyboard has", "12"},
		{Length, "1\xff", "none that a keyboard has", "1"},
		{Length, strings.Repeat("1", 61), "60 characters", strings.Repeat("1", 40)},
		{Text, "  ", "nothing was typed", "x"},
	} {
		_, _, _, err := ParseEntry(tt.bad, tt.q, "")
		switch {
		case err == nil:
			t.Errorf("%q as %s is taken", tt.bad, tt.q)
		case !strings.Contains(err.Error(), tt.says):
			t.Errorf("%q as %s: %q does not say %q", tt.bad, tt.q, err, tt.says)
		case strings.ContainsAny(err.Error(), "\n\r\x00"):
			t.Errorf("%q as %s: %q is not one plain line", tt.bad, tt.q, err)
		}
		if _, _, _, err := ParseEntry(tt.twin, tt.q, ""); err != nil {
			t.Errorf("the near twin %q of %q as %s is refused: %v", tt.twin, tt.bad, tt.q, err)
		}
	}
	if _, _, _, err := ParseEntry("x", Angle, ""); !errors.Is(err, ErrEntry) {
		t.Errorf("callers can't tell %v for what it is", err)
	}
	if _, _, _, err := ParseEntry("2", Angle, "mm"); err == nil {
		t.Error("a number in a unit of another quantity is taken")
	}
}

func TestStepIsTheLastPlaceTyped(t *testing.T) {
	const exact = "last place typed; 1 in = 25.4 mm exactly (NIST SP 811 B.8), 1° = 60'"
	for _, tt := range []struct {
		point, value, entered string
		unit                  Unit
		want                  float64
		source                string
	}{
		{"shaft.slope", "2.4", "", "deg", 0.1, exact},
		{"shaft.slope", "2.40", "", "deg", 0.01, exact},
		{"shaft.slope", "17", "", "deg", 1, exact},
		{"shaft.slope", "2.5", "2°30'", "deg", 1.0 / 60, exact},
		{"shaft.slope", "-2.5", "2°30'", "deg", 1.0 / 60, exact},
		{"shaft.slope", "1.51", "1°30.6'", "deg", 1.0 / 600, exact},
		{"shaft.slope", "2.33", "2°20'", "deg", 1.0 / 60, exact},
		{"shaft.length", "0.4375", "7/16", "in", 25.4 / 16, exact},
		{"shaft.length", "3.5", `3 1/2"`, "in", 12.7, exact},
		{"shaft.length", "3.5", `3 8/16"`, "in", 25.4 / 16, exact},
		{"shaft.length", "74.5", "", "mm", 0.1, exact},
		{"shaft.length", "3.25", "", "in", 0.254, exact},
		{"tyre.code", "205/55 R16", "", "", 0, "a text has no step"},
		{"no.such", "1", "", "", 0, "an unknown point has no step"},
		{"shaft.length", "3", "", "deg", 0, "a unit of another quantity has no step"},
		{"shaft.slope", "7.3", "2°30'", "deg", 0.1, "what was typed says another value: not believed"},
		{"shaft.slope", "2", "2°20'", "deg", 1, "value cut short of what was typed: the coarser step counts"},
		{"shaft.slope", "2.5", "two and a half", "deg", 0.1, "what was typed can't be read"},
		{"shaft.length", "11.1125", "7/16", "mm", 0.0001, "what was typed is in another unit than the value"},
	} {
		v, err := NumberValue(tt.value)
		if err != nil {
			v = TextValue(tt.value)
		}
		r := Reading{Point: tt.point, Value: v, Entered: tt.entered, Unit: tt.unit}
		if got := r.Step(); math.Abs(got-tt.want) > 1e-12 {
			t.Errorf("%s %s %q (entered %q): step %v, want %v (%s)", tt.point, tt.value, tt.unit, tt.entered, got, tt.want, tt.source)
		}
	}
}

// What was typed and what was kept never differ by more than the digits kept: half of 1e-7.
func TestDegreesAndMinutesKeepTheAngle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		deg := rapid.IntRange(0, 90).Draw(t, "degrees")
		minutes := rapid.IntRange(0, 59).Draw(t, "minutes")
		form := rapid.SampledFrom([]string{"D°M'", "D M'", "DdMm", "D°M"}).Draw(t, "form")
		text := strings.NewReplacer("D", itoa(deg), "M", itoa(minutes)).Replace(form)
		v, entered, unit, err := ParseEntry(text, Angle, "deg")
		if err != nil || entered != text || unit != "deg" {
			t.Fatalf("%q: entered %q, unit %q, %v", text, entered, unit, err)
		}
		got, _ := v.Float()
		if math.Abs(got-(float64(deg)+float64(minutes)/60)) > 0.51e-7 {
			t.Fatalf("%q is %v", text, got)
		}
	})
}

func TestFractionsAreExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		den := rapid.SampledFrom([]int{2, 4, 8, 16, 32, 64, 128}).Draw(t, "parts of an inch")
		whole := rapid.IntRange(0, 200).Draw(t, "whole inches")
		num := rapid.IntRange(0, den-1).Draw(t, "numerator")
		v, _, unit, err := ParseEntry(itoa(whole)+" "+itoa(num)+"/"+itoa(den), Length, "in")
		if err != nil || unit != "in" {
			t.Fatal(unit, err)
		}
		// Halves to 128ths are exact in binary too, so the comparison needs no tolerance.
		if got, _ := v.Float(); got != float64(whole)+float64(num)/float64(den) {
			t.Fatalf("%d %d/%d is %v", whole, num, den, got)
		}
	})
}

// Any text is either taken whole or refused in one line; what is taken can be typed again.
func FuzzParseEntry(f *testing.F) {
	for _, seed := range []string{"2.4", "2,40", "-17", "2°30'", "2 30'", "2d30m", "45'", "3 1/2\"", "7/16", "3-1/2 in",
		"74,5 mm", "1,234.5", "3.73:1", "yes", "205/55 R16", "1e3", "-0", "00", "\u22122", "9''", "1/min"} {
		for q := range quantities {
			f.Add(seed, uint8(q))
		}
	}
	f.Fuzz(func(t *testing.T, text string, which uint8) {
		q := quantities[int(which)%len(quantities)]
		v, entered, unit, err := ParseEntry(text, q, "")
		if err != nil {
			if s := err.Error(); s == "" || strings.ContainsAny(s, "\n\r\x00") || len(s) > 400 {
				t.Fatalf("%q: %q is not one plain line", text, s)
			}
			return
		}
		if err := checkUnit(unit, q); err != nil {
			t.Fatalf("%q: %v", text, err)
		}
		if q == Text {
			return
		}
		number, ok := v.Float()
		if !ok || math.IsNaN(number) || math.IsInf(number, 0) {
			t.Fatalf("%q gives %q, no finite number", text, v.Token())
		}
		if _, err := NumberValue(v.Token()); err != nil {
			t.Fatalf("%q gives %q: %v", text, v.Token(), err)
		}
		again := v.Token()
		if entered != "" {
			again = entered
		}
		w, _, unit2, err := ParseEntry(again, q, unit)
		if err != nil || w != v || unit2 != unit {
			t.Fatalf("%q gives %q %q; typed again as %q it gives %q %q, %v", text, v.Token(), unit, again, w.Token(), unit2, err)
		}
	})
}

var quantities = []Quantity{Angle, Length, Count, Mass, Force, Torque, Turning, RoadSpeed, Stiffness, Stress, Hardness,
	Ratio, Factor, Answer, Text}
