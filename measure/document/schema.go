package document

import (
	"bytes"
	_ "embed" // schema.json
	"encoding/json"
	"fmt"
	"strings"

	"yokebook/measure"
)

//go:embed schema.json
var schemaFrame []byte

// Schema returns the JSON Schema (draft 2020-12) of build files in our own format. Points, units and
// the choices of a layout are filled in from the tables of package measure, so that the schema
// never says anything else than the reader does.
func Schema() []byte {
	fill := map[string]json.RawMessage{
		"@format":         textJSON(measure.FormatName),
		"@points":         pointKeys(),
		"@units":          unitNames(),
		"@values":         valueRules(),
		"@layout":         layoutRules(),
		"@layoutHeads":    layoutHeadRules(),
		"@layoutRequired": layoutRequired(),
	}
	n, err := parse(schemaFrame)
	if err != nil {
		return nil
	}
	filled(n, fill)
	var out bytes.Buffer
	if err := json.Indent(&out, n.canonical(), "", "  "); err != nil {
		return nil
	}
	out.WriteByte('\n')
	return out.Bytes()
}

// filled puts generated parts in the place of the texts that name them.
func filled(n *node, fill map[string]json.RawMessage) {
	for _, m := range n.members {
		filled(m.value, fill)
	}
	for _, item := range n.items {
		filled(item, fill)
	}
	if raw, ok := fill[n.text]; ok && n.kind == textKind {
		if part, err := parse(raw); err == nil {
			*n = *part
		}
	}
}

func textJSON(text string) json.RawMessage { return appendText(nil, text) }

func pointKeys() json.RawMessage {
	var keys []json.RawMessage
	for _, p := range measure.Points {
		keys = append(keys, textJSON(p.Key))
	}
	return list(keys)
}

func unitNames() json.RawMessage {
	var names []json.RawMessage
	for _, u := range measure.Units {
		names = append(names, textJSON(string(u.Unit)))
	}
	return list(names)
}

// valueRules says, for all points that are alike in it, what unit and value may be.
func valueRules() json.RawMessage {
	points := map[string][]json.RawMessage{}
	var order []string
	for _, p := range measure.Points {
		rule := string(valueRule(p))
		if points[rule] == nil {
			order = append(order, rule)
		}
		points[rule] = append(points[rule], textJSON(p.Key))
	}
	var rules []json.RawMessage
	for _, rule := range order {
		rules = append(rules, json.RawMessage(fmt.Sprintf(
			`{"if":{"properties":{"point":{"enum":%s}}},"then":%s}`, list(points[rule]), rule)))
	}
	return list(rules)
}

// valueRule is what measure.Point.Possible and the table of units say of one point.
func valueRule(p measure.Point) json.RawMessage {
	unit := `"properties":{"unit":{"enum":["",null]}`
	if !p.Quantity.Bare() {
		var names []json.RawMessage
		for _, u := range measure.Units {
			if u.Quantity == p.Quantity {
				names = append(names, textJSON(string(u.Unit)))
			}
		}
		unit = fmt.Sprintf(`"required":["unit"],"properties":{"unit":{"enum":%s}`, list(names))
	}
	return json.RawMessage(fmt.Sprintf(`{%s,"value":%s}}`, unit, valueForm(p)))
}

func valueForm(p measure.Point) string {
	if p.Quantity == measure.Text {
		return `{"type":"string","minLength":1,"maxLength":60}`
	}
	form := []string{`"type":"number"`}
	switch {
	case p.Quantity == measure.Angle && p.Sense == measure.Clockwise:
		form = append(form, `"minimum":-360`, `"maximum":360`)
	case p.Quantity == measure.Angle && p.Sense == measure.Unsigned:
		form = append(form, `"minimum":0`, `"maximum":90`)
	case p.Quantity == measure.Angle:
		form = append(form, `"minimum":-90`, `"maximum":90`)
	case p.Sense == measure.Unsigned:
		form = append(form, `"minimum":0`)
	}
	if p.Quantity == measure.Count {
		form = append(form, `"multipleOf":1`)
	}
	if len(p.Codes) > 0 {
		var codes []string
		for _, c := range p.Codes {
			codes = append(codes, fmt.Sprint(c.Value))
		}
		form = append(form, `"enum":[`+strings.Join(codes, ",")+`]`)
	}
	return "{" + strings.Join(form, ",") + "}"
}

// layoutForm says what one member of the layout may hold.
func layoutForm(choices []string, optional bool) json.RawMessage {
	var words []json.RawMessage
	for _, c := range choices {
		words = append(words, textJSON(c))
	}
	if optional {
		words = append(words, json.RawMessage("null"), textJSON(""))
	}
	return json.RawMessage(fmt.Sprintf(`{"enum":%s}`, list(words)))
}

const shaftsForm = `{"enum":[1,2]}`

func layoutRules() json.RawMessage {
	var o object
	o.raw("shafts", []byte(shaftsForm))
	for _, c := range measure.LayoutChoices {
		o.raw(c.Member, layoutForm(c.Choices, c.Optional))
	}
	return o.bytes()
}

func layoutHeadRules() json.RawMessage {
	rule := func(name string, form json.RawMessage) json.RawMessage {
		return json.RawMessage(fmt.Sprintf(
			`{"if":{"properties":{"field":{"const":%s}}},"then":{"properties":{"value":%s}}}`, textJSON("layout."+name), form))
	}
	rules := []json.RawMessage{rule("shafts", json.RawMessage(shaftsForm))}
	for _, c := range measure.LayoutChoices {
		rules = append(rules, rule(c.Member, layoutForm(c.Choices, c.Optional)))
	}
	return list(rules)
}

func layoutRequired() json.RawMessage {
	names := []json.RawMessage{textJSON("shafts")}
	for _, c := range measure.LayoutChoices {
		if !c.Optional {
			names = append(names, textJSON(c.Member))
		}
	}
	return list(names)
}
