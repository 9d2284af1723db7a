package measure

import (
	"strings"
	"testing"
)

// Each refusal is one change of an instrument that is accepted, beside the nearest one that is.
func TestInstrumentsThatMakeNoSenseAreRefused(t *testing.T) {
	good := func() Instrument {
		return Instrument{ID: "finder", Kind: "angle", Resolution: number(t, "0.1"), Accuracy: number(t, "0.2"),
			Zero: number(t, "0"), Unit: "deg"}
	}
	if err := good().Validate(); err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		name      string
		bad, twin func(*Instrument)
		says      string
	}{
		{"no id", func(in *Instrument) { in.ID = "" }, func(in *Instrument) { in.ID = "a" }, "id: "},
		{"an id with path characters", func(in *Instrument) { in.ID = "../finder" }, func(in *Instrument) { in.ID = "finder-2_b" }, "id: "},
		{"an id in capitals", func(in *Instrument) { in.ID = "Finder" }, func(in *Instrument) { in.ID = "finder" }, "id: "},
		{"an id too long", func(in *Instrument) { in.ID = strings.Repeat("a", 41) }, func(in *Instrument) { in.ID = strings.Repeat("a", 40) }, "id: "},
		{"an id with a line break behind it", func(in *Instrument) { in.ID = "finder\n" }, func(in *Instrument) { in.ID = "finder" }, "id: "},
		{"no kind", func(in *Instrument) { in.Kind = "" }, func(in *Instrument) { in.Kind = "plumb" }, "kind: "},
		{"an unknown unit", func(in *Instrument) { in.Unit = "ells" }, func(in *Instrument) { in.Unit = "mm" }, "unit: "},
		{"a negative resolution", func(in *Instrument) { in.Resolution = number(t, "-0.1") }, func(in *Instrument) { in.Resolution = number(t, "0") }, "resolution: "},
		{"a text for an accuracy", func(in *Instrument) { in.Accuracy = TextValue("0.2") }, func(in *Instrument) { in.Accuracy = Value{} }, "accuracy: "},
		{"a negative zero", func(in *Instrument) { in.Zero = number(t, "-1") }, func(in *Instrument) { in.Zero = number(t, "-0") }, "zero: "},
		{"a negative placing", func(in *Instrument) { in.Placing = number(t, "-0.1") }, func(in *Instrument) { in.Placing = number(t, "0") }, "placing: "},
	} {
		bad, twin := good(), good()
		tt.bad(&bad)
		tt.twin(&twin)
		refused(t, tt.name, bad.Validate(), tt.says)
		if err := twin.Validate(); err != nil {
			t.Errorf("%s: its near twin is refused: %v", tt.name, err)
		}
	}
}

func TestInstrumentsReadWhatTheirUnitSays(t *testing.T) {
	for unit, want := range map[Unit]Quantity{"deg": Angle, "mm": Length, "in": Length, "kg": Mass, "N·m": Torque} {
		if got := (Instrument{Unit: unit}).Quantity(); got != want {
			t.Errorf("%s reads a %s, want %s", unit, got, want)
		}
	}
}

func TestInstrumentsAreFoundByID(t *testing.T) {
	list := []Instrument{{ID: "a", Unit: "deg"}, {ID: "b", Unit: "mm"}}
	if in, ok := InstrumentOf(list, "b"); !ok || in.Unit != "mm" {
		t.Errorf("b is %+v, %v", in, ok)
	}
	if _, ok := InstrumentOf(list, "c"); ok {
		t.Error("c is found, though nobody has it")
	}
}
