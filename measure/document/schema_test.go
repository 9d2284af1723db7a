package document

import (
	"bytes"
	"encoding/json"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"yokebook/measure"
)

// compiled is our schema in an independent validator of draft 2020-12.
func compiled(t testing.TB) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(Schema()))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.DefaultDraft(jsonschema.Draft2020)
	if err := c.AddResource("build.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("build.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func validate(t testing.TB, s *jsonschema.Schema, data []byte) error {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	if err != nil {
		return err
	}
	return s.Validate(doc)
}

func TestSchemaIsOneOfDraft2020(t *testing.T) {
	meta, err := jsonschema.NewCompiler().Compile("https://json-schema.org/draft/2020-12/schema")
	if err != nil {
		t.Fatal(err)
	}
	if err := validate(t, meta, Schema()); err != nil {
		t.Error(err)
	}
	if left := bytes.Index(Schema(), []byte(`"@`)); left >= 0 {
		t.Errorf("a placeholder was left: %s", Schema()[left:left+40])
	}
	if !bytes.Equal(Schema(), Schema()) {
		t.Error("two calls give two schemas")
	}
}

func TestSchemaTakesWhatTheReaderTakes(t *testing.T) {
	s := compiled(t)
	for _, name := range []string{"hand.json", "hand.want", "full.json", "full.want"} {
		if err := validate(t, s, golden(t, name)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	for _, c := range badFiles {
		if err := validate(t, s, file(t, "twins/"+c.file+".json")); err != nil {
			t.Errorf("twin of %s: %v", c.file, err)
		}
	}
}

// What only the reader can find: what JSON itself forbids or hides, sums, and what two places of a
// file say of each other.
var beyondSchema = map[string]bool{
	"duplicate-key": true, "bad-utf8": true, "lone-surrogate": true, "deep-nesting": true, "long-number": true,
	"wrong-sum": true, "damaged-sum-name": true, "instrument-unknown": true, "instrument-of-another-quantity": true,
	"instrument-twice": true, "plain-key-against-head": true, "setup-as-fraction": true,
}

func TestSchemaRefusesWhatTheReaderRefuses(t *testing.T) {
	s := compiled(t)
	for _, c := range badFiles {
		err := validate(t, s, file(t, c.file+".json"))
		if err == nil && !beyondSchema[c.file] {
			t.Errorf("%s passes the schema", c.file)
		}
		if err != nil && beyondSchema[c.file] && c.file != "bad-utf8" && c.file != "lone-surrogate" && c.file != "duplicate-key" {
			t.Errorf("%s is said to be beyond the schema, but it is refused: %v", c.file, err)
		}
	}
}

// Reader and schema must agree on every point of the table: an example reading of each unit, one of
// a wrong unit, and for codes one that is none.
func TestSchemaAndReaderAgreeOnEveryPoint(t *testing.T) {
	s := compiled(t)
	for _, p := range measure.Points {
		for _, unit := range []measure.Unit{"", "deg", "mm", "in", "count", "kg", "N·m", "HRC", "ell"} {
			for _, value := range []string{`1`, `0`, `-1`, `1.5`, `91`, `-361`, `"1"`, `""`} {
				in := onePoint(p, unit, value)
				_, _, readErr := Read(in)
				schemaErr := validate(t, s, in)
				if (readErr == nil) != (schemaErr == nil) {
					t.Errorf("%s %s %q: reader %v, schema %v", p.Key, value, unit, readErr, schemaErr)
				}
			}
		}
	}
}

func onePoint(p measure.Point, unit measure.Unit, value string) []byte {
	key, _ := json.Marshal(p.Key)
	u, _ := json.Marshal(unit)
	return []byte(`{"format":"yokebook-build/1","id":"019ab3f0-0000-7000-8000-000000000001","title":"Invented",` +
		`"layout":{"shafts":1,"slip":"shaft","axle":"leaf","front_joint":"single","rear_joint":"single"},` +
		`"readings":[{"id":"019ab3f1-0000-7000-8000-000000000001","point":` + string(key) + `,"value":` + value +
		`,"unit":` + string(u) + `,"basis":"measured","ride":"ride","load":"kerb","setup":1}]}`)
}

// Changes to the full sample that the schema and the reader must judge alike.
func TestSchemaAndReaderAgreeOnMembers(t *testing.T) {
	s := compiled(t)
	full := string(golden(t, "full.json"))
	for _, c := range []struct{ name, from, to string }{
		{"basis", `"basis": "measured"`, `"basis": "guessed"`},
		{"ride", `"ride": "ride"`, `"ride": "lift"`},
		{"load null off the bench", `"load": "laden", "height"`, `"load": null, "height"`},
		{"height as text", `"height": 598.5`, `"height": "598.5"`},
		{"height below 0", `"height": 598.5`, `"height": -1`},
		{"setup absent off the bench", `"setup": 2, `, ``},
		{"way 3", `"way": 2`, `"way": 3`},
		{"way 0", `"way": 2`, `"way": 0`},
		{"lay", `"lay": "face"`, `"lay": "upright"`},
		{"time without zone", `11:15:00+01:00`, `11:15:00`},
		{"device that is no id", `"device": "019ab3ee-0000-7000-8000-000000000001",
     "replaces"`, `"device": "tablet", "replaces"`},
		{"strike of nothing", `"reading": "019ab3f1-0000-7000-8000-000000000009", `, ``},
		{"skip without id", `{"id": "019ab3f4-0000-7000-8000-000000000001", "point"`, `{"point"`},
		{"skip of an unknown point", `"point": "pinion.slope"`, `"point": "pinion.slop"`},
		{"skip of an obstacle", `"point": "pinion.slope"`, `"tag": "2", "point": "obstacle.gap"`},
		{"skip with a number as tag", `"point": "pinion.slope"`, `"tag": 2, "point": "obstacle.gap"`},
		{"skip that takes another back", `"point": "pinion.slope"`, `"back": "019ab3f4-0000-7000-8000-000000000009", "point": "pinion.slope"`},
		{"skip that takes back what is no id", `"point": "pinion.slope"`, `"back": "the last", "point": "pinion.slope"`},
		{"skip without load", `"ride": "bump", "load": "laden", `, `"ride": "bump", `},
		{"head without value", `"value": null, `, ``},
		{"head without clock", `, "clock": {"ms": 0, "n": 0}`, ``},
		{"clock as fraction", `"ms": 0,`, `"ms": 0.5,`},
		{"clock below 0", `"ms": 0,`, `"ms": -1,`},
		{"head that takes a limit back by a text", `"field": "limits.joint.match", "value": null`, `"field": "limits.joint.match", "value": ""`},
		{"head of a layout", `"field": "limits.joint.match", "value": null`, `"field": "layout.use", "value": "sea"`},
		{"head of a layout, cleared", `"field": "limits.joint.match", "value": null`, `"field": "layout.hull", "value": null`},
		{"instrument kind", `"kind": "tape"`, `"kind": ""`},
		{"instrument unit", `"unit": "mm", "resolution"`, `"unit": "ell", "resolution"`},
		{"instrument id", `"id": "tape"`, `"id": "Tape 1"`},
		{"accuracy below 0", `"accuracy": 0.5`, `"accuracy": -0.5`},
		{"limit as number", `{"value": 2, "reason": "quiet car"}`, `2`},
		{"upper as text", `"upper": 5`, `"upper": "5"`},
		{"layout number as text", `"shafts": 2`, `"shafts": "2"`},
		{"optional layout cleared", `"clutch": "pull"`, `"clutch": ""`},
		{"format 2", `yokebook-build/1`, `yokebook-build/1.0`},
		{"title as number", `"title": "Invented: every member"`, `"title": 5`},
		{"note null", `"colour": {`, `"color": {`},
		{"readings absent", `"readings": [`, `"reeds": [`},
	} {
		in := strings.Replace(full, c.from, c.to, 1)
		if in == full {
			t.Errorf("%s: nothing was changed", c.name)
		}
		_, _, readErr := Read([]byte(in))
		schemaErr := validate(t, s, []byte(in))
		if (readErr == nil) != (schemaErr == nil) {
			t.Errorf("%s: reader %v, schema %v", c.name, readErr, schemaErr)
		}
	}
}

// Builds that ship with the program must be what the schema says.
func TestShippedBuildsPassTheSchema(t *testing.T) {
	s := compiled(t)
	names, err := filepath.Glob("../../testdata/builds/*.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		data := file(t, "../builds/"+filepath.Base(name))
		if err := validate(t, s, data); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if _, _, err := Read(data); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}
