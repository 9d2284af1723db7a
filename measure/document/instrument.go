package document

import (
	"encoding/json"

	"yokebook/measure"
)

func encodeInstrument(in measure.Instrument) json.RawMessage {
	var o object
	o.text("id", in.ID)
	o.text("kind", in.Kind)
	o.text("name", in.Name)
	o.value("resolution", in.Resolution)
	o.value("accuracy", in.Accuracy)
	o.value("zero", in.Zero)
	o.value("placing", in.Placing)
	o.text("unit", string(in.Unit))
	o.fields(in.Unknown)
	return o.bytes()
}

// instrumentOf reads and validates an instrument.
func instrumentOf(n *node) (measure.Instrument, error) {
	m, err := open(n)
	if err != nil {
		return measure.Instrument{}, err
	}
	in := measure.Instrument{
		ID:         m.needText("id"),
		Kind:       m.needText("kind"),
		Name:       m.text("name"),
		Resolution: m.number("resolution"),
		Accuracy:   m.number("accuracy"),
		Zero:       m.number("zero"),
		Placing:    m.number("placing"),
		Unit:       measure.Unit(m.needText("unit")),
	}
	in.Unknown = m.rest()
	if m.err != nil {
		return in, m.err
	}
	return in, in.Validate()
}
