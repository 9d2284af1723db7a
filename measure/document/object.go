package document

import (
	"encoding/json"
	"sort"
	"strconv"

	"yokebook/measure"
)

// object collects members and writes them in order. Absent members are not written.
type object []pair

type pair struct {
	key string
	raw []byte
}

func (o *object) raw(key string, raw []byte) { *o = append(*o, pair{key, raw}) }

// text writes a text unless it is empty.
func (o *object) text(key, text string) {
	if text != "" {
		o.raw(key, appendText(nil, text))
	}
}

// say writes a text even when it is empty.
func (o *object) say(key, text string) { o.raw(key, appendText(nil, text)) }

func (o *object) id(key string, id measure.ID) { o.text(key, string(id)) }

// whole writes a whole number unless it is 0.
func (o *object) whole(key string, n int64) {
	if n != 0 {
		o.count(key, n)
	}
}

// count writes a whole number even when it is 0.
func (o *object) count(key string, n int64) { o.raw(key, strconv.AppendInt(nil, n, 10)) }

// value writes a number token verbatim or a text, unless it is absent.
func (o *object) value(key string, v measure.Value) {
	switch {
	case v.IsText():
		o.say(key, v.Token())
	case !v.IsZero():
		o.raw(key, []byte(v.Token()))
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
	for _, p := range *o {
		if p.key == key {
			return true
		}
	}
	return false
}

func (o object) bytes() json.RawMessage {
	sort.Slice(o, func(i, j int) bool { return o[i].key < o[j].key })
	out := []byte{'{'}
	for i, p := range o {
		if i > 0 {
			out = append(out, ',')
		}
		out = append(appendText(out, p.key), ':')
		out = append(out, p.raw...)
	}
	return append(out, '}')
}

// list writes raw values in the order given.
func list(items []json.RawMessage) json.RawMessage {
	out := []byte{'['}
	for i, raw := range items {
		if i > 0 {
			out = append(out, ',')
		}
		out = append(out, raw...)
	}
	return append(out, ']')
}
