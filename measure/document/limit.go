package document

import (
	"encoding/json"
	"fmt"
	"strings"

	"yokebook/measure"
)

func encodeLimit(c measure.LimitChoice) json.RawMessage {
	var o object
	o.value("value", c.Value)
	o.value("upper", c.Upper)
	o.text("reason", c.Reason)
	o.fields(c.Unknown)
	return o.bytes()
}

// limitOf reads the choice of one limit. An object that is no choice of this version is carried
// whole with an absent Value; measure.Build.Validate refuses that except in a newer format.
func limitOf(n *node) (measure.LimitChoice, error) {
	m, err := open(n)
	if err != nil {
		return measure.LimitChoice{}, err
	}
	c := measure.LimitChoice{
		Value:  m.numberOf("value", m.required("value")),
		Upper:  m.number("upper"),
		Reason: m.text("reason"),
	}
	if m.err != nil {
		m.taken = nil
		return measure.LimitChoice{Unknown: m.rest()}, nil
	}
	c.Unknown = m.rest()
	return c, nil
}

// limitFault says what keeps the value of a field from being a choice of this version.
func limitFault(field string, n *node) error {
	if !strings.HasPrefix(field, "limits.") || n.null() {
		return nil
	}
	c, err := limitOf(n)
	if err == nil && c.Value.IsZero() {
		err = fmt.Errorf("%s: %s", field, measure.LimitForm)
	}
	return err
}
