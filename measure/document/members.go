package document

import (
	"fmt"
	"strconv"

	"yokebook/measure"
)

// members takes the known members out of an object one by one. The first fault is kept; what
// nobody took is left for rest.
type members struct {
	object *node
	taken  []bool // by place in the object; nil: none is
	err    error
}

// open errs when n is no object.
func open(n *node) (*members, error) {
	if n.kind != objectKind {
		return nil, fmt.Errorf("is %s; write an object in { }", n.what())
	}
	return &members{object: n, taken: make([]bool, len(n.members))}, nil
}

func (m *members) fault(key, format string, args ...any) {
	if m.err == nil {
		m.err = fmt.Errorf("%s: %s", plainKey(key), fmt.Sprintf(format, args...))
	}
}

// optional finds a member; null and "" count as absent and stay for rest.
func (m *members) optional(key string) *node {
	i := m.object.find(key)
	if i < 0 || m.object.members[i].value.empty() {
		return nil
	}
	m.taken[i] = true
	return m.object.members[i].value
}

// required finds a member that must be there, even if it is "".
func (m *members) required(key string) *node {
	i := m.object.find(key)
	if i < 0 || m.object.members[i].value.null() {
		m.fault(key, "is missing; add it")
		return nil
	}
	m.taken[i] = true
	return m.object.members[i].value
}

func (m *members) textOf(key string, n *node) string {
	if n == nil {
		return ""
	}
	if n.kind != textKind {
		m.fault(key, "is %s; write a text in quotes", n.what())
		return ""
	}
	return n.text
}

func (m *members) text(key string) string       { return m.textOf(key, m.optional(key)) }
func (m *members) needText(key string) string   { return m.textOf(key, m.required(key)) }
func (m *members) id(key string) measure.ID     { return measure.ID(m.text(key)) }
func (m *members) needID(key string) measure.ID { return measure.ID(m.needText(key)) }

// number reads an optional number and keeps its token.
func (m *members) number(key string) measure.Value {
	return m.numberOf(key, m.optional(key))
}

func (m *members) numberOf(key string, n *node) measure.Value {
	if n == nil {
		return measure.Value{}
	}
	if n.kind != numberKind {
		m.fault(key, "is %s; write a number without quotes", n.what())
		return measure.Value{}
	}
	v, err := measure.NumberValue(n.text)
	if err != nil {
		m.fault(key, "%s", err)
	}
	return v
}

// value reads a number or a text.
func (m *members) value(key string) measure.Value {
	n := m.required(key)
	if n != nil && n.kind == textKind {
		return measure.TextValue(n.text)
	}
	return m.numberOf(key, n)
}

// whole reads a whole number written as one: 1, not 1.0 or "1". Absent: 0.
func (m *members) whole(key string, n *node) int64 {
	if n == nil {
		return 0
	}
	if n.kind == numberKind {
		if i, err := strconv.ParseInt(n.text, 10, 64); err == nil && strconv.FormatInt(i, 10) == n.text {
			return i
		}
	}
	m.fault(key, "must be a whole number such as 1, without quotes, point or exponent")
	return 0
}

// rest returns what was not taken, as canonical JSON; nil when nothing is left.
func (m *members) rest() measure.Fields {
	var f measure.Fields
	for i, x := range m.object.members {
		if m.taken != nil && m.taken[i] {
			continue
		}
		if f == nil {
			f = measure.Fields{}
		}
		f[x.key] = x.value.canonical()
	}
	return f
}

// take marks a member as known, whatever it holds.
func (m *members) take(key string) {
	if i := m.object.find(key); i >= 0 {
		m.taken[i] = true
	}
}

// inside keeps a fault found inside the member key.
func (m *members) inside(key string, err error) {
	if m.err == nil {
		m.err = fmt.Errorf("%s.%w", plainKey(key), err)
	}
}
