package document

import (
	"encoding/json"

	"yokebook/measure"
)

// EncodeStrike writes one strike as canonical JSON.
func EncodeStrike(s measure.Strike) json.RawMessage {
	var o object
	o.id("id", s.ID)
	o.id("reading", s.Reading)
	o.text("content", s.Content)
	o.text("reason", s.Reason)
	o.text("at", s.At)
	o.id("device", s.Device)
	o.fields(s.Unknown)
	return o.bytes()
}

// DecodeStrike reads what EncodeStrike writes.
func DecodeStrike(data []byte) (measure.Strike, error) { return decode(data, strikeOf) }

func strikeOf(n *node) (measure.Strike, error) {
	m, err := open(n)
	if err != nil {
		return measure.Strike{}, err
	}
	s := measure.Strike{
		ID:      m.id("id"),
		Reading: m.needID("reading"),
		Content: m.text("content"),
		Reason:  m.text("reason"),
		At:      m.text("at"),
		Device:  m.id("device"),
	}
	s.Unknown = m.rest()
	return s, m.err
}

// EncodeSkip writes one skipped stop as canonical JSON.
func EncodeSkip(s measure.Skip) json.RawMessage {
	var o object
	o.id("id", s.ID)
	o.text("point", s.Point)
	o.text("ride", string(s.Ride))
	o.text("load", string(s.Load))
	o.text("tag", s.Tag)
	o.id("back", s.Back)
	o.text("reason", s.Reason)
	o.text("at", s.At)
	o.id("device", s.Device)
	o.fields(s.Unknown)
	return o.bytes()
}

// DecodeSkip reads what EncodeSkip writes.
func DecodeSkip(data []byte) (measure.Skip, error) { return decode(data, skipOf) }

func skipOf(n *node) (measure.Skip, error) {
	m, err := open(n)
	if err != nil {
		return measure.Skip{}, err
	}
	s := measure.Skip{
		ID:     m.needID("id"),
		Point:  m.needText("point"),
		Ride:   measure.Ride(m.needText("ride")),
		Load:   measure.Load(m.text("load")),
		Tag:    m.text("tag"),
		Back:   m.id("back"),
		Reason: m.text("reason"),
		At:     m.text("at"),
		Device: m.id("device"),
	}
	s.Unknown = m.rest()
	return s, m.err
}
