package document

import (
	"encoding/json"

	"yokebook/measure"
)

// EncodeHead writes one head as canonical JSON.
func EncodeHead(h measure.Head) json.RawMessage {
	var o object
	o.id("id", h.ID)
	o.text("field", h.Field)
	o.raw("value", h.Value)
	if carried, ok := h.Unknown["clock"]; ok {
		o.raw("clock", carried)
	} else {
		o.raw("clock", encodeClock(h.Clock))
	}
	o.text("at", h.At)
	o.id("device", h.Device)
	o.id("replaces", h.Replaces)
	o.fields(h.Unknown)
	return o.bytes()
}

// DecodeHead reads what EncodeHead writes.
func DecodeHead(data []byte) (measure.Head, error) { return decode(data, headOf) }

func headOf(n *node) (measure.Head, error) {
	m, err := open(n)
	if err != nil {
		return measure.Head{}, err
	}
	h := measure.Head{
		ID:       m.needID("id"),
		Field:    m.needText("field"),
		At:       m.text("at"),
		Device:   m.id("device"),
		Replaces: m.id("replaces"),
	}
	if v := n.get("value"); v == nil {
		m.fault("value", "is missing; add it")
	} else {
		h.Value = v.canonical()
		m.take("value")
	}
	clock := m.required("clock")
	h.Clock = m.clock(clock)
	h.Unknown = m.rest()
	if clock != nil && len(clock.members) > 2 {
		if h.Unknown == nil {
			h.Unknown = measure.Fields{}
		}
		h.Unknown["clock"] = clock.canonical() // holds more than we know: carried whole
	}
	return h, m.err
}

func encodeClock(c measure.Clock) json.RawMessage {
	var o object
	o.count("ms", c.MS)
	o.count("n", c.N)
	return o.bytes()
}

func (m *members) clock(n *node) measure.Clock {
	if n == nil {
		return measure.Clock{}
	}
	in, err := open(n)
	if err != nil {
		m.fault("clock", "%s", err)
		return measure.Clock{}
	}
	c := measure.Clock{MS: in.whole("ms", in.required("ms")), N: in.whole("n", in.required("n"))}
	if in.err != nil {
		m.inside("clock", in.err)
	}
	return c
}
