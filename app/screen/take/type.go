package take

import "yokebook/measure"

// on returns what the keys of the page write to; nil on a page without keys.
func (m *Model) on() *Typed {
	switch m.page {
	case Keypad:
		return &m.typed
	case Height:
		return &m.height
	}
	return nil
}

// Typed is what the keypad's display shows.
func (m *Model) Typed() Typed {
	if t := m.on(); t != nil {
		return *t
	}
	return Typed{}
}

// Digit presses a digit key.
func (m *Model) Digit(d int) {
	if t := m.on(); t != nil {
		m.err = nil
		t.Digit(d)
	}
}

// Decimal presses the key of the decimal sign.
func (m *Model) Decimal() {
	if t := m.on(); t != nil && m.stop.Point.Quantity != measure.Count {
		m.err = nil
		t.Decimal()
	}
}

// Erase presses the key that takes back the last sign.
func (m *Model) Erase() {
	if t := m.on(); t != nil {
		m.err = nil
		t.Erase()
	}
}

// Unit is the unit that one types in at this stop.
func (m *Model) Unit() measure.Unit {
	if m.page == Height {
		return m.heightUnit()
	}
	if old, ok := m.Correcting(); ok {
		return old.Unit
	}
	return m.unitOf(m.stop.Point.Quantity)
}

func (m *Model) unitOf(q measure.Quantity) measure.Unit {
	if u, ok := m.units[q]; ok {
		return u
	}
	if u, ok := measure.UnitOf(string(m.preferred(q))); ok && u.Quantity == q {
		return u.Unit
	}
	return q.Base()
}

// OtherUnit is the unit that SwitchUnit changes to; false where the quantity has only one.
func (m *Model) OtherUnit() (measure.Unit, bool) {
	q := m.stop.Point.Quantity
	var of []measure.Unit
	for _, u := range measure.Units {
		if u.Quantity == q {
			of = append(of, u.Unit)
		}
	}
	if len(of) < 2 {
		return "", false
	}
	now := m.unitOf(q)
	for i, u := range of {
		if u == now {
			return of[(i+1)%len(of)], true
		}
	}
	return of[0], true
}

// SwitchUnit changes the unit that numbers of this quantity are typed in from now on. Digits
// already typed stay as they are.
func (m *Model) SwitchUnit() {
	if u, ok := m.OtherUnit(); ok {
		m.units[m.stop.Point.Quantity] = u
		m.Back()
	}
}

// Tool is the instrument that one reads with at this stop: the one chosen, else the only one of the
// build that reads the quantity; empty when none is known.
func (m *Model) Tool() string {
	q := m.stop.Point.Quantity
	fit := m.ToolChoices()
	if id, ok := m.tools[q]; ok {
		return id
	}
	if len(fit) == 1 && m.stop.Point.Basis != measure.Stated {
		return fit[0].ID
	}
	return ""
}

// ToolChoices are the instruments of the build that read the quantity of this stop.
func (m *Model) ToolChoices() []measure.Instrument {
	var fit []measure.Instrument
	for _, in := range m.log.Build().Instruments {
		if in.Quantity() == m.stop.Point.Quantity {
			fit = append(fit, in)
		}
	}
	return fit
}

// SetTool chooses the instrument for the quantity of this stop; empty says none.
func (m *Model) SetTool(id string) {
	m.tools[m.stop.Point.Quantity] = id
	m.Back()
}

// NewFinder gives the build a plain angle finder and reads with it from now on.
func (m *Model) NewFinder() {
	if err := m.addFinder(); err != nil {
		m.err = err
		return
	}
	m.SetTool(plainFinder.ID)
}
