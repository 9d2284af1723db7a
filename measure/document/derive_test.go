package document

import (
	"encoding/json"
	"strings"
	"testing"

	"yokebook/measure"
)

const (
	devA = measure.ID("019ab3ee-0000-7000-8000-00000000000a")
	devB = measure.ID("019ab3ee-0000-7000-8000-00000000000b")
)

func headID(n byte) measure.ID {
	return measure.ID("019ab3f2-0000-7000-8000-00000000000" + string('0'+n))
}

func head(n byte, field, value string, ms int64) measure.Head {
	return measure.Head{ID: headID(n), Field: field, Value: json.RawMessage(value), Clock: measure.Clock{MS: ms}}
}

func by(h measure.Head, device measure.ID) measure.Head { h.Device = device; return h }

func replacing(h measure.Head, n byte) measure.Head { h.Replaces = headID(n); return h }

func TestTitleIsThatOfTheLastHeadInForce(t *testing.T) {
	const tenYears = 10 * 365 * 24 * 3600 * 1000
	counted := head(2, "title", `"b"`, 5)
	counted.Clock.N = 1
	for _, c := range []struct {
		name  string
		heads []measure.Head
		want  string
	}{
		{"no head: the plain key stays", nil, "plain"},
		{"one head", []measure.Head{head(1, "title", `"a"`, 5)}, "a"},
		{"later milliseconds", []measure.Head{head(1, "title", `"z"`, 5), head(2, "title", `"a"`, 6)}, "a"},
		{"later count within one millisecond", []measure.Head{head(1, "title", `"z"`, 5), counted}, "b"},
		{"then the device", []measure.Head{by(head(1, "title", `"a"`, 5), devB), by(head(2, "title", `"z"`, 5), devA)}, "a"},
		{"then the value", []measure.Head{head(1, "title", `"b"`, 5), head(2, "title", `"a"`, 5)}, "b"},
		{"a replaced head is out, whatever its clock", []measure.Head{head(1, "title", `"wrong year"`, tenYears), replacing(head(2, "title", `"right"`, 5), 1)}, "right"},
		{"replaced by one that is replaced", []measure.Head{head(1, "title", `"a"`, 9), replacing(head(2, "title", `"b"`, 8), 1), replacing(head(3, "title", `"c"`, 7), 2)}, "c"},
		{"the replaced one is not here yet", []measure.Head{replacing(head(2, "title", `"b"`, 5), 7)}, "b"},
		{"a ring: all of it counts", []measure.Head{replacing(head(1, "title", `"a"`, 5), 2), replacing(head(2, "title", `"b"`, 6), 1)}, "b"},
		{"one that replaces itself counts", []measure.Head{replacing(head(1, "title", `"a"`, 9), 1), head(2, "title", `"b"`, 5)}, "a"},
		{"a head of another field replaces nothing here", []measure.Head{head(1, "title", `"a"`, 5), replacing(head(2, "note", `"n"`, 6), 1)}, "a"},
		{"an unknown field says nothing", []measure.Head{head(1, "subtitle", `"a"`, 5), head(2, "colour.body", `5`, 6)}, "plain"},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, heads := range [][]measure.Head{c.heads, backwards(c.heads)} {
				b := &measure.Build{Title: "plain", Layout: measure.NewLayout(), Heads: heads}
				if err := Derive(b); err != nil || b.Title != c.want {
					t.Errorf("title %q, %v; want %q", b.Title, err, c.want)
				}
			}
		})
	}
}

func backwards(heads []measure.Head) []measure.Head {
	var out []measure.Head
	for _, h := range heads {
		out = append([]measure.Head{h}, out...)
	}
	return out
}

func TestDeriveSetsEachField(t *testing.T) {
	layout := measure.NewLayout()
	layout.FixedEye, layout.Unknown = "rear", measure.Fields{"wheels": json.RawMessage("4")}
	b := &measure.Build{Layout: layout,
		Instruments: []measure.Instrument{{ID: "tape", Kind: "tape", Unit: "mm"}},
		Limits:      map[string]measure.LimitChoice{"joint.match": {Reason: "stays"}, "joint.angle": {Reason: "goes"}},
		Heads: []measure.Head{
			head(1, "layout.shafts", `2`, 1),
			head(2, "layout", `{"slip":"gearbox","fixed_eye":null}`, 2),
			head(3, "layout.slip", `"shaft"`, 3),
			head(4, "layout.colour", `{"b":1}`, 4),
			head(5, "instruments.finder", `{"id":"finder","kind":"angle","unit":"deg"}`, 5),
			head(6, "limits.joint.angle", `null`, 6),
			head(7, "limits", `{"joint.residual":{"value":2.0,"reason":"quiet"}}`, 7),
			head(8, "note", `"n"`, 8),
		}}
	if err := Derive(b); err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, c := range Plain(b) {
		got = append(got, c.Field+"="+string(c.Value))
	}
	want := `instruments.finder={"id":"finder","kind":"angle","unit":"deg"}
instruments.tape={"id":"tape","kind":"tape","unit":"mm"}
layout.axle="leaf"
layout.colour={"b":1}
layout.front_joint="single"
layout.rear_joint="single"
layout.shafts=2
layout.slip="shaft"
layout.wheels=4
limits.joint.match={"reason":"stays"}
limits.joint.residual={"reason":"quiet","value":2.0}
note="n"`
	if have := strings.Join(got, "\n"); have != want {
		t.Errorf("got\n%s\nwant\n%s", have, want)
	}
	if string(layout.Unknown["wheels"]) != "4" || len(layout.Unknown) != 1 {
		t.Error("the map of the layout given was changed")
	}
}

func TestHeadsWithWrongValuesAreRefused(t *testing.T) {
	for _, c := range []struct{ field, value, line, twin string }{
		{"title", `5`, "heads[0].value: title is a number; write a text in quotes", `""`},
		{"note", `null`, "heads[0].value: note is null; write a text in quotes", `"n"`},
		{"layout.shafts", `3`, "heads[0].value: shafts: 3 is not known; use 1 or 2", `2`},
		{"layout.axle", `null`, "heads[0].value: axle: null is not known; use one of [leaf links fixed]", `"links"`},
		{"layout", `[]`, "heads[0].value: is a list; write an object in { }", `{}`},
		{"instruments", `{}`, "heads[0].value: is an object; write a list in [ ]", `[]`},
		{"instruments.tape", `{"id":"rule","kind":"tape","unit":"mm"}`, `heads[0].value: id: "rule" is not the "tape" of the field; make them alike`, `{"id":"tape","kind":"tape","unit":"mm"}`},
		{"instruments.tape", `null`, "heads[0].value: is null; write an object in { }", `{"id":"tape","kind":"tape","unit":"in"}`},
		{"limits.joint.angle", `3`, "heads[0].value: is a number; write an object in { }", `null`},
		{"limits.joint.angle", `{"value":"3"}`, `heads[0].value: limits.joint.angle: write it as {"value": number, "upper": number where there are two, "reason": "why"}`, `{"value":3}`},
	} {
		b := &measure.Build{Title: "kept", Heads: []measure.Head{head(1, c.field, c.value, 1)}}
		if err := Derive(b); err == nil || err.Error() != c.line {
			t.Errorf("%s %s: %v\nwant %s", c.field, c.value, err, c.line)
		}
		if b.Title != "kept" {
			t.Errorf("%s: something was changed", c.field)
		}
		b.Heads[0].Value = json.RawMessage(c.twin)
		if err := Derive(b); err != nil {
			t.Errorf("%s %s was refused: %v", c.field, c.twin, err)
		}
		b.Newer, b.Heads[0].Value = 2, json.RawMessage(c.value)
		if err := Derive(b); err != nil {
			t.Errorf("%s %s of a newer format was refused: %v", c.field, c.value, err)
		}
	}
}

// The name was worked out apart from this code: uuid.uuid5(build id, 'title"a"') of another
// language's standard library.
func TestImpliedHeadIsNamedByItsContent(t *testing.T) {
	h := Implied("019ab3f0-0000-7000-8000-000000000001", "title", json.RawMessage(`"a"`))
	if want := measure.ID("6a53473d-2445-5cda-9df5-621c4fa27442"); h.ID != want || h.Clock != (measure.Clock{}) {
		t.Errorf("got %v, want id %s and clock 0", h, want)
	}
}

func TestInForce(t *testing.T) {
	b := &measure.Build{ID: "019ab3f0-0000-7000-8000-000000000001", Note: "n",
		Heads: []measure.Head{head(1, "title", `"a"`, 1), replacing(head(2, "title", `"b"`, 2), 1), head(3, "title", `"c"`, 9)}}
	if got := InForce(b, "title"); len(got) != 2 || got[0].ID != headID(2) || got[1].ID != headID(3) {
		t.Errorf("title: %v", got)
	}
	if got := InForce(b, "note"); len(got) != 1 || got[0].ID != Implied(b.ID, "note", json.RawMessage(`"n"`)).ID {
		t.Errorf("note: %v", got)
	}
	if got := InForce(b, "layout.use"); got != nil {
		t.Errorf("a field of which nothing speaks: %v", got)
	}
}
