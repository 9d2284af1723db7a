package merge

import (
	"encoding/json"
	"fmt"

	"pgregory.net/rapid"

	"yokebook/measure"
	"yokebook/measure/document"
)

const buildID = measure.ID("019ab3f0-0000-7000-8000-000000000001")

func id(kind, n int) measure.ID {
	return measure.ID(fmt.Sprintf("019ab3f%d-0000-7000-8000-%012d", kind, n))
}

// maybeID is one of a few ids, or none.
func maybeID(t *rapid.T, kind int, label string) measure.ID {
	n := rapid.IntRange(-1, 4).Draw(t, label)
	if n < 0 {
		return ""
	}
	return id(kind, n)
}

// randomBuild is a valid build out of so few ids, fields and values that two of them often share,
// contradict or replace each other's records.
func randomBuild(t *rapid.T) *measure.Build {
	b := &measure.Build{ID: buildID, Layout: measure.NewLayout()}
	if rapid.IntRange(0, 4).Draw(t, "newer") == 0 {
		b.Newer = rapid.IntRange(2, 3).Draw(t, "format")
		b.Foreign = map[string][]json.RawMessage{"readings": {json.RawMessage(`{"id":"` + string(id(1, 0)) + `","point":"gearbox.yaw"}`)}}
	}
	randomPlain(t, b)
	for range rapid.IntRange(0, 4).Draw(t, "heads") {
		b.Heads = append(b.Heads, randomHead(t))
	}
	for range rapid.IntRange(0, 4).Draw(t, "readings") {
		b.Readings = append(b.Readings, randomReading(t))
	}
	for range rapid.IntRange(0, 2).Draw(t, "strikes") {
		b.Strikes = append(b.Strikes, measure.Strike{ID: maybeID(t, 3, "strike"), Reading: id(1, rapid.IntRange(0, 4).Draw(t, "struck")),
			Reason: rapid.SampledFrom([]string{"", "weld", "typed wrong"}).Draw(t, "reason")})
	}
	for range rapid.IntRange(0, 1).Draw(t, "skips") {
		b.Skips = append(b.Skips, measure.Skip{ID: id(4, rapid.IntRange(0, 2).Draw(t, "skip")), Point: "pinion.slope",
			Ride: measure.Bump, Load: measure.Laden, Tag: rapid.SampledFrom([]string{"", "2"}).Draw(t, "tag"),
			Back: rapid.SampledFrom([]measure.ID{"", id(4, 0)}).Draw(t, "back"), Reason: rapid.SampledFrom([]string{"", "dark"}).Draw(t, "why")})
	}
	if err := document.Derive(b); err != nil {
		t.Fatalf("the generator made a bad build: %v", err)
	}
	known := b.KnownInstruments()
	for i := range b.Readings {
		if b.Readings[i].Validate(known) != nil {
			b.Readings[i].Instrument = ""
		}
	}
	return b
}

func randomPlain(t *rapid.T, b *measure.Build) {
	word := rapid.SampledFrom([]string{"", "a", "b"})
	b.Title, b.Note = word.Draw(t, "title"), word.Draw(t, "note")
	b.Layout.Slip = rapid.SampledFrom([]string{"shaft", "gearbox"}).Draw(t, "slip")
	b.Layout.Use = rapid.SampledFrom([]string{"", "road", "offroad"}).Draw(t, "use")
	if rapid.Bool().Draw(t, "wheels") {
		b.Layout.Unknown = measure.Fields{"wheels": json.RawMessage(rapid.SampledFrom([]string{"4", "null"}).Draw(t, "count"))}
	}
	if rapid.Bool().Draw(t, "tool") {
		b.Instruments = []measure.Instrument{{ID: "finder", Kind: "angle", Unit: rapid.SampledFrom([]measure.Unit{"deg", "mm"}).Draw(t, "unit")}}
	}
	if rapid.Bool().Draw(t, "limit") {
		b.Limits = map[string]measure.LimitChoice{"joint.angle": {Value: number(t), Unknown: measure.Fields{"upper": json.RawMessage("null")}}}
	}
	if rapid.Bool().Draw(t, "unknown") {
		b.Unknown = measure.Fields{"colour": json.RawMessage(rapid.SampledFrom([]string{`"blue"`, `1.10`, `{}`}).Draw(t, "colour"))}
	}
}

func number(t *rapid.T) measure.Value {
	v, err := measure.NumberValue(rapid.SampledFrom([]string{"2", "2.0", "3"}).Draw(t, "number"))
	if err != nil {
		t.Fatalf("%v", err)
	}
	return v
}

func randomReading(t *rapid.T) measure.Reading {
	return measure.Reading{ID: id(1, rapid.IntRange(0, 4).Draw(t, "reading")), Point: "gearbox.slope", Value: number(t), Unit: "deg",
		Basis: measure.Measured, Ride: measure.AtRide, Load: measure.Kerb, Setup: 1, Replaces: maybeID(t, 1, "corrects"),
		Instrument: rapid.SampledFrom([]string{"", "finder"}).Draw(t, "with")}
}

func randomHead(t *rapid.T) measure.Head {
	say := rapid.SampledFrom([]struct{ field, value string }{
		{"title", `"a"`}, {"title", `"b"`}, {"title", `""`}, {"note", `"a"`},
		{"layout.slip", `"gearbox"`}, {"layout.use", `null`}, {"layout.wheels", `4`},
		{"layout", `{"slip":"shaft","use":"road"}`}, {"layout", `{}`},
		{"instruments.finder", `{"id":"finder","kind":"angle","unit":"deg"}`},
		{"instruments", `[{"id":"finder","kind":"tape","unit":"mm"},{"id":"tape","kind":"tape","unit":"mm"}]`}, {"instruments", `[]`},
		{"limits.joint.angle", `{"value":2}`}, {"limits.joint.angle", `null`}, {"limits", `{"joint.angle":{"value":3}}`},
		{"colour.body", `1`},
	}).Draw(t, "says")
	if rapid.IntRange(0, 4).Draw(t, "implied") == 0 {
		return document.Implied(buildID, say.field, json.RawMessage(say.value))
	}
	return measure.Head{ID: id(2, rapid.IntRange(0, 4).Draw(t, "head")), Field: say.field, Value: json.RawMessage(say.value),
		Clock: measure.Clock{MS: int64(rapid.IntRange(0, 2).Draw(t, "ms"))}, Replaces: maybeID(t, 2, "replaces")}
}
