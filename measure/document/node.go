package document

import (
	"slices"
	"strings"
)

// kind tells JSON values apart.
type kind byte

const (
	objectKind kind = iota
	arrayKind
	textKind
	numberKind
	wordKind // true, false, null
)

// node is one JSON value as it was read.
type node struct {
	kind    kind
	at      int      // byte at which it starts
	size    int      // of an object or list: bytes that it took, about what its canonical form takes
	text    string   // code points of a text, token of a number or word
	members []member // of an object, sorted by key
	items   []*node  // of a list
}

type member struct {
	key   string
	value *node
}

// what names the kind of value in a line for a person.
func (n *node) what() string {
	switch n.kind {
	case objectKind:
		return "an object"
	case arrayKind:
		return "a list"
	case textKind:
		return "a text"
	case numberKind:
		return "a number"
	}
	return n.text
}

func (n *node) sort() {
	byKey := func(a, b member) int { return strings.Compare(a.key, b.key) }
	if !slices.IsSortedFunc(n.members, byKey) { // what we wrote ourselves is
		slices.SortStableFunc(n.members, byKey)
	}
}

// null reports the word null.
func (n *node) null() bool { return n.kind == wordKind && n.text == "null" }

// empty reports what counts as absent where a member may be absent.
func (n *node) empty() bool { return n.null() || n.kind == textKind && n.text == "" }

// get finds a member of an object.
func (n *node) get(key string) *node {
	if i := n.find(key); i >= 0 {
		return n.members[i].value
	}
	return nil
}

// find returns the place of a member of an object; -1 where it has none of that key.
func (n *node) find(key string) int {
	i, found := slices.BinarySearchFunc(n.members, key, func(m member, key string) int { return strings.Compare(m.key, key) })
	if !found {
		return -1
	}
	return i
}

// without is a copy of an object that lacks one member.
func (n *node) without(key string) *node {
	out := &node{kind: n.kind, at: n.at, size: n.size, members: make([]member, 0, len(n.members))}
	for _, m := range n.members {
		if m.key != key {
			out.members = append(out.members, m)
		}
	}
	return out
}

// canonical returns the canonical bytes.
func (n *node) canonical() []byte { return n.append(make([]byte, 0, n.size)) }

func (n *node) append(dst []byte) []byte {
	switch n.kind {
	case objectKind:
		dst = append(dst, '{')
		for i, m := range n.members {
			if i > 0 {
				dst = append(dst, ',')
			}
			dst = append(appendText(dst, m.key), ':')
			dst = m.value.append(dst)
		}
		return append(dst, '}')
	case arrayKind:
		dst = append(dst, '[')
		for i, item := range n.items {
			if i > 0 {
				dst = append(dst, ',')
			}
			dst = item.append(dst)
		}
		return append(dst, ']')
	case textKind:
		return appendText(dst, n.text)
	}
	return append(dst, n.text...)
}

// Canonical reads data as strictly as a build file and returns the canonical bytes of the value.
func Canonical(data []byte) ([]byte, error) {
	n, err := parse(data)
	if err != nil {
		return nil, err
	}
	return n.canonical(), nil
}
