package document

import (
	"bytes"
	"encoding/json"
	"maps"

	"yokebook/measure"
)

// EncodeReading writes one reading as canonical JSON.
func EncodeReading(r measure.Reading) json.RawMessage {
	var o object
	o.text("at", r.At)
	o.text("basis", string(r.Basis))
	o.text("by", r.By)
	o.id("device", r.Device)
	o.text("entered", r.Entered)
	o.value("height", r.Height)
	o.id("id", r.ID)
	o.text("instrument", r.Instrument)
	o.text("lay", r.Lay)
	o.text("load", string(r.Load))
	o.text("note", r.Note)
	o.text("point", r.Point)
	o.id("replaces", r.Replaces)
	o.text("ride", string(r.Ride))
	o.whole("setup", int64(r.Setup))
	o.text("tag", r.Tag)
	o.say("unit", string(r.Unit))
	o.value("value", r.Value)
	o.whole("way", int64(r.Way))
	o.fields(r.Unknown)
	return o.bytes()
}

// Same reports two readings with the same canonical bytes.
func Same(a, b *measure.Reading) bool {
	return alike(a, b) || bytes.Equal(EncodeReading(*a), EncodeReading(*b))
}

// alike reports readings that are the same member for member: the usual case, seen without encoding.
func alike(a, b *measure.Reading) bool {
	return a.ID == b.ID && a.Value == b.Value && a.At == b.At && a.Point == b.Point && a.Entered == b.Entered &&
		a.Unit == b.Unit && a.Basis == b.Basis && a.Ride == b.Ride && a.Load == b.Load && a.Height == b.Height &&
		a.Setup == b.Setup && a.Instrument == b.Instrument && a.Way == b.Way && a.Lay == b.Lay && a.Tag == b.Tag &&
		a.Note == b.Note && a.By == b.By && a.Device == b.Device && a.Replaces == b.Replaces &&
		maps.EqualFunc(a.Unknown, b.Unknown, func(a, b json.RawMessage) bool { return bytes.Equal(a, b) })
}

// DecodeReading reads what EncodeReading writes. It checks the form only; measure.Reading.Validate
// checks the content.
func DecodeReading(data []byte) (measure.Reading, error) { return decode(data, readingOf) }

func readingOf(n *node) (measure.Reading, error) {
	m, err := open(n)
	if err != nil {
		return measure.Reading{}, err
	}
	r := measure.Reading{
		ID:         m.needID("id"),
		Point:      m.needText("point"),
		Value:      m.value("value"),
		Entered:    m.text("entered"),
		Unit:       measure.Unit(m.unit()),
		Basis:      measure.Basis(m.needText("basis")),
		Ride:       measure.Ride(m.needText("ride")),
		Load:       measure.Load(m.text("load")),
		Height:     m.number("height"),
		Setup:      int(m.whole("setup", m.optional("setup"))),
		Instrument: m.text("instrument"),
		Way:        int(m.whole("way", m.optional("way"))),
		Lay:        m.text("lay"),
		Tag:        m.text("tag"),
		Note:       m.text("note"),
		By:         m.text("by"),
		At:         m.text("at"),
		Device:     m.id("device"),
		Replaces:   m.id("replaces"),
	}
	m.refuseZero("setup", "way")
	r.Unknown = m.rest()
	return r, m.err
}

// unit reads a unit; an absent one counts as "", the unit of ratios and answers.
func (m *members) unit() string {
	n := m.object.get("unit")
	m.take("unit")
	if n == nil || n.null() {
		return ""
	}
	return m.textOf("unit", n)
}

// refuseZero refuses a 0 where a count from 1 may be absent: it would be lost when written.
func (m *members) refuseZero(keys ...string) {
	for _, key := range keys {
		if n := m.object.get(key); n != nil && n.kind == numberKind && n.text == "0" {
			m.fault(key, "is 0; count from 1 or leave it out")
		}
	}
}

// decode reads one record from its bytes.
func decode[T any](data []byte, from func(*node) (T, error)) (T, error) {
	n, err := parse(data)
	if err != nil {
		var none T
		return none, err
	}
	return from(n)
}
