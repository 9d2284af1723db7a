package document

import (
	"bytes"
	"encoding/json"
	"fmt"
	"sort"
	"strings"

	"yokebook/measure"
)

// Claim is what one head says of one field: "title", "note", "layout.<member>",
// "instruments.<id>" or "limits.<key>". A head of a whole ("layout", "instruments", "limits")
// makes one claim for each member that it names and none for the others.
type Claim struct {
	Field string
	Value json.RawMessage // canonical
	Head  measure.Head
}

// Claims lists what a head says, sorted by field. A field that this version does not know makes no
// claim. It errs when a value does not suit its field.
func Claims(h measure.Head) ([]Claim, error) {
	n, err := parse(h.Value)
	if err != nil {
		return nil, fmt.Errorf("value: %w", err)
	}
	parts, err := partsOf(h.Field, n)
	if err != nil {
		return nil, fmt.Errorf("value: %w", err)
	}
	var out []Claim
	for _, p := range parts {
		var scratch measure.Build
		if err := apply(&scratch, p.key, p.value); err != nil {
			return nil, fmt.Errorf("value: %w", err)
		}
		out = append(out, Claim{Field: p.key, Value: p.value.canonical(), Head: h})
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Field < out[j].Field })
	return out, nil
}

// partsOf splits a whole into its members; a single field is its own only part.
func partsOf(field string, n *node) ([]member, error) {
	group, _, single := strings.Cut(field, ".")
	switch {
	case field == "title" || field == "note", single && (group == "layout" || group == "instruments" || group == "limits"):
		return []member{{field, n}}, nil
	case field == "layout" || field == "limits":
		if n.kind != objectKind {
			return nil, fmt.Errorf("is %s; write an object in { }", n.what())
		}
		var parts []member
		for _, m := range n.members {
			parts = append(parts, member{field + "." + m.key, m.value})
		}
		return parts, nil
	case field == "instruments":
		return instrumentParts(n)
	}
	return nil, nil
}

func instrumentParts(n *node) ([]member, error) {
	if n.kind != arrayKind {
		return nil, fmt.Errorf("is %s; write a list in [ ]", n.what())
	}
	var parts []member
	seen := map[string]bool{}
	for i, item := range n.items {
		in, err := instrumentOf(item)
		if err != nil {
			return nil, fmt.Errorf("[%d].%w", i, err)
		}
		if seen[in.ID] {
			return nil, fmt.Errorf("[%d].id: %q stands there twice; keep one", i, in.ID)
		}
		seen[in.ID] = true
		parts = append(parts, member{"instruments." + in.ID, item})
	}
	return parts, nil
}

// apply sets one field of a build to a value; it errs when the value does not suit the field.
// Maps and slices of b are replaced, never changed.
func apply(b *measure.Build, field string, n *node) error {
	group, name, _ := strings.Cut(field, ".")
	switch group {
	case "title", "note":
		if n.kind != textKind {
			return fmt.Errorf("%s is %s; write a text in quotes", group, n.what())
		}
		if group == "title" {
			b.Title = n.text
		} else {
			b.Note = n.text
		}
	case "layout":
		return setLayout(&b.Layout, name, n)
	case "instruments":
		in, err := instrumentOf(n)
		if err != nil {
			return err
		}
		if in.ID != name {
			return fmt.Errorf("id: %q is not the %q of the field; make them alike", in.ID, name)
		}
		b.Instruments = withInstrument(b.Instruments, in)
	case "limits":
		return setLimit(b, name, n)
	}
	return nil
}

func withInstrument(list []measure.Instrument, in measure.Instrument) []measure.Instrument {
	out := []measure.Instrument{in}
	for _, x := range list {
		if x.ID != in.ID {
			out = append(out, x)
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].ID < out[j].ID })
	return out
}

// setLimit makes a choice or, with null, takes it back.
func setLimit(b *measure.Build, key string, n *node) error {
	limits := map[string]measure.LimitChoice{}
	for k, c := range b.Limits {
		if k != key {
			limits[k] = c
		}
	}
	if !n.null() {
		c, err := limitOf(n)
		if err != nil {
			return err
		}
		limits[key] = c
	}
	if b.Limits = limits; len(limits) == 0 {
		b.Limits = nil
	}
	return nil
}

// Live returns the claims of one field that count, the last one most: those that no other of them
// replaces, in the order of clock, device, value. In a ring of replacements all count.
func Live(claims []Claim) []Claim {
	replaced := map[measure.ID]bool{}
	for _, c := range claims {
		if c.Head.Replaces != c.Head.ID {
			replaced[c.Head.Replaces] = true
		}
	}
	var live []Claim
	for _, c := range claims {
		if !replaced[c.Head.ID] {
			live = append(live, c)
		}
	}
	if len(live) == 0 {
		live = append(live, claims...)
	}
	sort.SliceStable(live, func(i, j int) bool { return before(live[i], live[j]) })
	return live
}

func before(a, b Claim) bool {
	switch {
	case a.Head.Clock != b.Head.Clock:
		return a.Head.Clock.Less(b.Head.Clock)
	case a.Head.Device != b.Head.Device:
		return a.Head.Device < b.Head.Device
	}
	return bytes.Compare(a.Value, b.Value) < 0
}

// Plain lists the plain keys that a build holds as field and canonical value, sorted by field.
func Plain(b *measure.Build) []Claim {
	var out []Claim
	add := func(field string, value json.RawMessage) { out = append(out, Claim{Field: field, Value: value}) }
	if b.Title != "" {
		add("title", appendText(nil, b.Title))
	}
	if b.Note != "" {
		add("note", appendText(nil, b.Note))
	}
	if n, err := parse(encodeLayout(b.Layout)); err == nil {
		for _, m := range n.members {
			add("layout."+m.key, m.value.canonical())
		}
	}
	for _, in := range b.Instruments {
		add("instruments."+in.ID, encodeInstrument(in))
	}
	for key, c := range b.Limits {
		add("limits."+key, encodeLimit(c))
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Field < out[j].Field })
	return out
}

// Implied is the head that stands for a plain key of which no head speaks: it has clock 0 and the
// version 5 UUID of the field followed by its canonical value, so that every device gives it alike.
func Implied(build measure.ID, field string, value json.RawMessage) measure.Head {
	return measure.Head{ID: measure.NameID(build, field+string(value)), Field: field, Value: value}
}

// Voices gathers what a build says of each field: the claims of its heads and, for a plain key of
// which none of them speaks, the claim of its implied head. A head whose value does not suit its
// field says nothing.
func Voices(b *measure.Build) map[string][]Claim {
	byField := map[string][]Claim{}
	for _, h := range b.Heads {
		claims, err := Claims(h)
		if err != nil {
			continue
		}
		for _, c := range claims {
			byField[c.Field] = append(byField[c.Field], c)
		}
	}
	for _, c := range Plain(b) {
		if len(byField[c.Field]) == 0 {
			c.Head = Implied(b.ID, c.Field, c.Value)
			byField[c.Field] = []Claim{c}
		}
	}
	return byField
}

// InForce lists the heads of one field that count, the one that decides last. A new head should
// replace that one; while others are left, the field stays in conflict.
func InForce(b *measure.Build, field string) []measure.Head {
	var heads []measure.Head
	for _, c := range Live(Voices(b)[field]) {
		heads = append(heads, c.Head)
	}
	return heads
}
