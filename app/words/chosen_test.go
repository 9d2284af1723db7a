package words

import (
	"testing"

	"yokebook/measure"
)

// Factors: NIST SP 811 (2008), appendix B; a degree has 60 minutes. The rest is worked apart from
// this code.
func TestNumbersInChosenUnits(t *testing.T) {
	us := English.WithChosen(Chosen{Length: "in", Mass: "lb", Torque: "lbf·ft", Minutes: true})
	si := English.WithChosen(Chosen{Length: "mm", Mass: "kg", Torque: "N·m"})
	for _, tt := range []struct{ name, got, want string }{
		{"length, with its doubt", us.WithDoubt(76.2, "mm", 0.5), "3.000 ± 0.020 in"},
		{"length of a table", us.Number(25.4, "mm", 0), "1.0000 in"},
		{"mass", us.Number(45.359237, "kg", 0.05), "100.00 lb"},
		{"torque", us.Number(135.58, "N·m", 1), "100.0 lbf·ft"},
		{"angle", us.WithDoubt(3.479, "deg", 0.0749), "3°29′ ± 0°04′"},
		{"angle below zero", us.Number(-2.5, "deg", 0.1), "−2°30′"},
		{"angle that rounds to nothing", us.Number(-0.004, "deg", 0.1), "0°00′"},
		{"angle that rounds up to a degree", us.Number(2.9999, "deg", 0.1), "3°00′"},
		{"range of angles", us.Between(3.4, 3.55, "deg"), "3°24′ … 3°33′"},
		{"gap of a sentence", us.fill("rise {0 mm} at {1 deg}", []any{50.8, 1}), "rise 2.0000 in at 1°00′"},
		{"what has no other unit", us.Number(3000, "rev/min", 0), "3000 rev/min"},
		{"a ratio", us.Number(3.73, "", 0), "3.73"},
		{"metric, from metric", si.WithDoubt(76.2, "mm", 0.5), "76.2 ± 0.5 mm"},
		{"metric, from inches", si.Number(3, "in", 0.01), "76.20 mm"},
		{"nothing chosen", English.Number(3, "in", 0.01), "3.000 in"},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, tt.got, tt.want)
		}
	}
}

// What the tool showed is never hidden behind what it was turned into.
func TestReadingsInChosenUnitsKeepWhatWasEntered(t *testing.T) {
	reading := func(token string, unit measure.Unit, entered string) measure.Reading {
		v, err := measure.NumberValue(token)
		if err != nil {
			t.Fatal(err)
		}
		return measure.Reading{Value: v, Unit: unit, Entered: entered}
	}
	us := English.WithChosen(Chosen{Length: "in", Minutes: true})
	si := English.WithChosen(Chosen{Length: "mm"})
	for _, tt := range []struct{ name, got, want string }{
		{"mm shown in inches", us.Entered(reading("76.2", "mm", "")), "3.000 in (76.2 mm)"},
		{"inches as typed", us.Entered(reading("0.4375", "in", "7/16")), "7/16"},
		{"inches shown in mm", si.Entered(reading("3.50", "in", "")), "88.9 mm (3.50 in)"},
		{"degrees shown in minutes", us.Entered(reading("2.40", "deg", "")), "2°24′ (2.40°)"},
		{"minutes as typed", us.Entered(reading("2.5", "deg", "2°30'")), "2°30'"},
		{"degrees as typed", si.Entered(reading("2.40", "deg", "")), "2.40°"},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, tt.got, tt.want)
		}
	}
}
