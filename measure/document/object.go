package document

import (
	"encoding/json"
	"slices"
	"strconv"
	"strings"

	"yokebook/measure"
)

// object collects members and writes them in order. Absent members are not written. The values stand
// one behind the other in one buffer, because records are encoded by the hundred.
type object struct {
	pairs  []pair
	values []byte
}

// pair is a key and where its value stands in the buffer.
type pair struct {
	key      string
	from, to int
}

// add puts a value under a key; write appends it to the buffer.
func (o *object) add(key string, write func(dst []byte) []byte) {
	if o.pairs == nil {
		o.pairs, o.values = make([]pair, 0, 16), make([]byte, 0, 384)
	}
	from := len(o.values)
	o.values = write(o.values)
	o.pairs = append(o.pairs, pair{key, from, len(o.values)})
}

func (o *object) raw(key string, raw []byte) {
	o.add(key, func(dst []byte) []byte { return append(dst, raw...) })
}

// text writes a text unless it is empty.
func (o *object) text(key, text string) {
	if text != "" {
		o.say(key, text)
	}
}

// say writes a text even when it is empty.
func (o *object) say(key, text string) {
	o.add(key, func(dst []byte) []byte { return appendText(dst, text) })
}

func (o *object) id(key string, id measure.ID) { o.text(key, string(id)) }

// whole writes a whole number unless it is 0.
func (o *object) whole(key string, n int64) {
	if n != 0 {
		o.count(key, n)
	}
}

// count writes a whole number even when it is 0.
func (o *object) count(key string, n int64) {
	o.add(key, func(dst []byte) []byte { return strconv.AppendInt(dst, n, 10) })
}

// value writes a number token verbatim or a text, unless it is absent.
func (o *object) value(key string, v measure.Value) {
	switch {
	case v.IsText():
		o.say(key, v.Token())
	case !v.IsZero():
		o.add(key, func(dst []byte) []byte { return append(dst, v.Token()...) })
	}
}

// fields adds carried members; a member written before wins over a carried one of its name.
func (o *object) fields(f measure.Fields) {
	for key, raw := range f {
		if !o.has(key) {
			o.raw(key, raw)
		}
	}
}

func (o *object) has(key string) bool {
	for _, p := range o.pairs {
		if p.key == key {
			return true
		}
	}
	return false
}

func (o *object) bytes() json.RawMessage {
	slices.SortFunc(o.pairs, func(a, b pair) int { return strings.Compare(a.key, b.key) })
	size := len(o.values) + 2
	for _, p := range o.pairs {
		size += len(p.key) + 4
	}
	out := append(make([]byte, 0, size), '{')
	for i, p := range o.pairs {
		if i > 0 {
			out = append(out, ',')
		}
		out = append(appendText(out, p.key), ':')
		out = append(out, o.values[p.from:p.to]...)
	}
	return append(out, '}')
}

// list writes raw values in the order given.
func list(items []json.RawMessage) json.RawMessage {
	size := len(items) + 2
	for _, raw := range items {
		size += len(raw)
	}
	out := append(make([]byte, 0, size), '[')
	for i, raw := range items {
		if i > 0 {
			out = append(out, ',')
		}
		out = append(out, raw...)
	}
	return append(out, ']')
}
