package measure

import (
	"encoding/json"
	"fmt"
	"regexp"
	"strings"
)

// Instrument is a tool as its owner knows it. Numbers are in Unit. Absent numbers (zero Value)
// take the default of the quantity from the table of limits.
type Instrument struct {
	ID         string // [a-z0-9_-]{1,40}
	Kind       string // "angle", "tape", "caliper", "indicator", "scale", "torque"; others are kept
	Name       string // what the owner calls it; may be absent
	Resolution Value  // one display step
	Accuracy   Value  // ± this, rectangular, for each reading
	Zero       Value  // ± this, rectangular, shared by all readings of one setup; absent: Accuracy
	Placing    Value  // standard deviation of laying it on again; 0 where that is already counted
	Unit       Unit
	Unknown    Fields
}

var instrumentID = regexp.MustCompile(`^[a-z0-9_-]{1,40}$`)

// Validate says which member is wrong.
func (in Instrument) Validate() error {
	if !instrumentID.MatchString(in.ID) {
		return fmt.Errorf("id: %.50q must be 1 to 40 of a-z 0-9 _ -", in.ID)
	}
	if in.Kind == "" {
		return fmt.Errorf("kind: is missing; use angle, tape, caliper, indicator, scale or torque")
	}
	if _, ok := unitByFile(in.Unit); !ok {
		return fmt.Errorf("unit: %.20q is not known", in.Unit)
	}
	for _, m := range []struct {
		name  string
		value Value
	}{{"resolution", in.Resolution}, {"accuracy", in.Accuracy}, {"zero", in.Zero}, {"placing", in.Placing}} {
		if m.value.IsZero() {
			continue
		}
		if f, ok := m.value.Float(); !ok || f < 0 {
			return fmt.Errorf("%s: must be a number of %s, not below 0", m.name, in.Unit)
		}
	}
	return nil
}

// Quantity is what the instrument reads, told by its unit.
func (in Instrument) Quantity() Quantity {
	u, _ := unitByFile(in.Unit)
	return u.Quantity
}

// KnownInstruments are the build's instruments and then those that its heads name or once named: a
// reading stays valid when a merge or a later change lets another description of its tool count.
func (b *Build) KnownInstruments() []Instrument {
	known := append([]Instrument(nil), b.Instruments...)
	for _, h := range b.Heads {
		switch {
		case h.Field == "instruments":
			var list []json.RawMessage
			if json.Unmarshal(h.Value, &list) == nil {
				for _, raw := range list {
					known = appendNamed(known, raw)
				}
			}
		case strings.HasPrefix(h.Field, "instruments."):
			known = appendNamed(known, h.Value)
		}
	}
	return known
}

// appendNamed adds what tells an instrument and its quantity: its id and unit.
func appendNamed(list []Instrument, raw json.RawMessage) []Instrument {
	var members map[string]json.RawMessage
	var in Instrument
	if json.Unmarshal(raw, &members) != nil ||
		json.Unmarshal(members["id"], &in.ID) != nil || json.Unmarshal(members["unit"], &in.Unit) != nil {
		return list
	}
	return append(list, in)
}

// fits errs when no instrument of the list has the id, or none of that id reads the quantity.
func fits(list []Instrument, id string, p Point) error {
	first, ok := InstrumentOf(list, id)
	if !ok {
		return fmt.Errorf("%.50q is not in the build's instruments; add it there or leave it out", id)
	}
	for _, in := range list {
		if in.ID == id && in.Quantity() == p.Quantity {
			return nil
		}
	}
	return fmt.Errorf("%s reads %s, but %s is %s; name another instrument or leave it out", first.ID, first.Quantity().named(), p.Key, p.Quantity.named())
}

// InstrumentOf finds an instrument by id.
func InstrumentOf(list []Instrument, id string) (Instrument, bool) {
	for _, in := range list {
		if in.ID == id {
			return in, true
		}
	}
	return Instrument{}, false
}

func unitByFile(unit Unit) (UnitInfo, bool) {
	for _, u := range Units {
		if u.Unit == unit {
			return u, true
		}
	}
	return UnitInfo{}, false
}
