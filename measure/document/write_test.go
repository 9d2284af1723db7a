package document

import (
	"strings"
	"testing"

	"yokebook/measure"
)

func small() *measure.Build {
	return &measure.Build{ID: "019ab3f0-0000-7000-8000-000000000001", Title: "Invented: small", Layout: measure.NewLayout()}
}

func TestWriteRefusesWhatReadWouldRefuse(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*measure.Build)
		line  string
	}{
		{"text that is not UTF-8", func(b *measure.Build) { b.Note = "b\xe4d" }, "in note: a text is not UTF-8"},
		{"id that is none", func(b *measure.Build) { b.ID = "../x" }, `id: "../x" is not a lower-case UUID`},
		{"layout that is none", func(b *measure.Build) { b.Layout = measure.Layout{} }, "layout.shafts: is missing"},
		{"too large", func(b *measure.Build) {
			b.Unknown = measure.Fields{}
			for i := range 130 {
				b.Unknown["x"+strings.Repeat("y", i)] = textJSON(strings.Repeat("z", 64<<10))
			}
		}, "at most 8388608 are read"},
	} {
		b := small()
		c.spoil(b)
		if _, err := Write(b); err == nil || !strings.Contains(err.Error(), c.line) {
			t.Errorf("%s: %v, want %q", c.name, err, c.line)
		}
	}
	if _, err := Write(small()); err != nil {
		t.Errorf("the unspoilt build: %v", err)
	}
}

func TestWriteDerivesAndLeavesTheBuildAlone(t *testing.T) {
	b := small()
	b.Heads = []measure.Head{head(1, "title", `"Invented: by head"`, 1)}
	out, err := Write(b)
	if err != nil || !strings.Contains(string(out), `"title":"Invented: by head"`) {
		t.Errorf("%s, %v", out, err)
	}
	if b.Title != "Invented: small" {
		t.Errorf("the build was changed: %q", b.Title)
	}
}

// The order of records in memory is of no account, and repetitions are written once.
func TestWriteSortsAndDropsRepetitions(t *testing.T) {
	b, _, err := Read(golden(t, "full.json"))
	if err != nil {
		t.Fatal(err)
	}
	r := b.Readings
	b.Readings = []measure.Reading{r[1], r[0], r[1]}
	b.Strikes = append(b.Strikes, b.Strikes[0])
	b.Instruments[0], b.Instruments[1] = b.Instruments[1], b.Instruments[0]
	out, err := Write(b)
	if err != nil || string(out) != string(golden(t, "full.want")) {
		t.Errorf("%v\n%s", err, out)
	}
}

// A reading stays valid when another description of its instrument comes to count: a merge of two
// good files is a good file.
func TestInstrumentNamedByAnyHeadIsKnown(t *testing.T) {
	const line = `  "instruments": [{"id": "finder", "kind": "angle", "resolution": 0.1, "accuracy": 0.2, "unit": "deg"}],`
	const heads = `  "heads": [
    {"id": "019ab3f2-0000-7000-8000-000000000001", "field": "instruments.finder", "value": {"id": "finder", "kind": "angle", "unit": "deg"}, "clock": {"ms": 1, "n": 0}},
    {"id": "019ab3f2-0000-7000-8000-000000000002", "field": "instruments.finder", "value": {"id": "finder", "kind": "tape", "unit": "mm"}, "clock": {"ms": 2, "n": 0}}
  ],`
	in := strings.Replace(string(golden(t, "hand.json")), line, heads, 1)
	b, _, err := Read([]byte(in))
	if err != nil {
		t.Fatal(err)
	}
	if b.Instruments[0].Unit != "mm" {
		t.Errorf("unit %q counts, want mm", b.Instruments[0].Unit)
	}
	if _, _, err := Read([]byte(strings.ReplaceAll(in, `"kind": "angle", "unit": "deg"`, `"kind": "angle", "unit": "mm"`))); err == nil {
		t.Errorf("an instrument that no head ever named for this quantity: %v", err)
	}
}
