package document

import (
	"bytes"
	"slices"
	"strings"

	"yokebook/measure"
)

// What is taken from outside, at most. A thick logbook of 2,000 readings is 0.7 MiB and 60,000 tokens.
const (
	maxBytes  = 8 << 20
	maxDepth  = 32
	maxTokens = 200_000
	maxText   = 64 << 10
	maxNumber = 40 // characters of a token
)

// scanner reads one JSON value strictly and remembers where it is.
type scanner struct {
	data   []byte
	source string // the same bytes: texts and numbers are pieces of it
	pos    int
	tokens int
	path   []step

	nodes   []node   // room for values to come
	members []member // of the objects that are not closed yet
	items   []*node  // of the lists that are not closed yet
}

// node puts a value into the room that is made for many at once: a thick logbook has 60,000.
func (s *scanner) node(n node) *node {
	if len(s.nodes) == cap(s.nodes) {
		s.nodes = make([]node, 0, min(max((len(s.data)-s.pos)/32, 8), 512))
	}
	s.nodes = append(s.nodes, n)
	return &s.nodes[len(s.nodes)-1]
}

// parse reads data as one JSON value and nothing after it.
func parse(data []byte) (*node, error) {
	if len(data) > maxBytes {
		return nil, refuse(ErrLarge, "is %d bytes; at most %d are read; check that it is a build file", len(data), maxBytes)
	}
	if bytes.HasPrefix(data, []byte("\xef\xbb\xbf")) {
		return nil, refuse(nil, "byte 0: starts with a byte order mark; save it again as UTF-8 without one")
	}
	s := &scanner{data: data, source: string(data)}
	if s.space(); s.pos == len(data) {
		return nil, refuse(ErrCut, "is empty; copy it again from the other device")
	}
	n, err := s.value(1)
	if err != nil {
		return nil, err
	}
	if s.space(); s.pos < len(data) {
		return nil, refuse(nil, "byte %d: something follows the end; remove what stands after the last bracket", s.pos)
	}
	return n, nil
}

// value reads one value; depth is 1 at the top.
func (s *scanner) value(depth int) (*node, error) {
	if s.space(); s.pos >= len(s.data) {
		return nil, s.cut()
	}
	if err := s.count(); err != nil {
		return nil, err
	}
	switch c := s.data[s.pos]; {
	case c == '{' || c == '[':
		if depth > maxDepth {
			return nil, refuse(ErrLarge, "byte %d: is nested deeper than %d levels; check that it is a build file", s.pos, maxDepth)
		}
		if c == '{' {
			return s.object(depth)
		}
		return s.array(depth)
	case c == '"':
		at := s.pos
		text, err := s.text()
		return s.node(node{kind: textKind, at: at, text: text}), err
	case c == '-' || c >= '0' && c <= '9':
		return s.number()
	}
	return s.word()
}

func (s *scanner) object(depth int) (*node, error) {
	n, base := s.node(node{kind: objectKind, at: s.pos}), len(s.members)
	s.pos++
	for first := true; ; first = false {
		done, err := s.next('}', first)
		if err != nil {
			return nil, err
		}
		if done {
			n.members, n.size = slices.Clone(s.members[base:]), s.pos-n.at
			s.members = s.members[:base]
			return n, s.sorted(n)
		}
		if s.data[s.pos] != '"' {
			return nil, s.noKey(s.members[base:])
		}
		if err := s.count(); err != nil {
			return nil, err
		}
		key, err := s.text()
		if err != nil {
			return nil, err
		}
		s.path = append(s.path, step{key: key, index: -1})
		if s.space(); s.pos >= len(s.data) {
			return nil, s.cut()
		}
		if s.data[s.pos] != ':' {
			return nil, s.fail(`":" is missing after the key`)
		}
		s.pos++
		v, err := s.value(depth + 1)
		if err != nil {
			return nil, err
		}
		s.members = append(s.members, member{key, v})
		s.path = s.path[:len(s.path)-1]
	}
}

// noKey tells a decimal comma from other things that stand where a key should.
func (s *scanner) noKey(before []member) error {
	if c := s.data[s.pos]; len(before) > 0 && c >= '0' && c <= '9' {
		if last := before[len(before)-1]; last.value.kind == numberKind {
			s.path = append(s.path, step{key: last.key, index: -1})
			return s.fail("a comma stands inside a number; write a point")
		}
	}
	return s.fail("a key in quotes is missing; set one before the value")
}

func (s *scanner) array(depth int) (*node, error) {
	n, base := s.node(node{kind: arrayKind, at: s.pos}), len(s.items)
	s.pos++
	s.path = append(s.path, step{})
	for first := true; ; first = false {
		done, err := s.next(']', first)
		if err != nil {
			return nil, err
		}
		if done {
			s.path = s.path[:len(s.path)-1]
			n.items, n.size = slices.Clone(s.items[base:]), s.pos-n.at
			s.items = s.items[:base]
			return n, nil
		}
		v, err := s.value(depth + 1)
		if err != nil {
			return nil, err
		}
		s.items = append(s.items, v)
		s.path[len(s.path)-1].index++
	}
}

// next goes to the next element: past the comma that must stand before all but the first. It
// reports true past the closing bracket.
func (s *scanner) next(closing byte, first bool) (done bool, err error) {
	if s.space(); s.pos >= len(s.data) {
		return false, s.cut()
	}
	switch c := s.data[s.pos]; {
	case c == closing:
		s.pos++
		return true, s.count()
	case first:
		return false, nil
	case c != ',':
		return false, s.fail("a comma or %q is missing", closing)
	}
	s.pos++
	if s.space(); s.pos >= len(s.data) {
		return false, s.cut()
	}
	if s.data[s.pos] == closing {
		return false, s.fail("a comma stands before %q; remove it", closing)
	}
	return false, nil
}

// sorted puts the members in order and refuses a key that stands there twice.
func (s *scanner) sorted(n *node) error {
	n.sort()
	for i := 1; i < len(n.members); i++ {
		if key := n.members[i].key; key == n.members[i-1].key {
			s.path = append(s.path, step{key: key, index: -1})
			return refuse(nil, "byte %d: %s stands there twice; keep one", n.members[i].value.at, s.where())
		}
	}
	return nil
}

func (s *scanner) number() (*node, error) {
	at := s.pos
	for s.pos < len(s.data) && strings.IndexByte("0123456789+-.eE", s.data[s.pos]) >= 0 {
		s.pos++
	}
	token := s.source[at:s.pos]
	if s.pos == len(s.data) && len(s.path) > 0 {
		return nil, s.cut()
	}
	if len(token) > maxNumber {
		s.pos = at
		return nil, s.fail("a number of %d characters; at most %d are read, so shorten it", len(token), maxNumber)
	}
	if _, err := measure.NumberValue(token); err != nil {
		s.pos = at
		return nil, s.fail("%s; write it as a plain number such as 2.4", err)
	}
	return s.node(node{kind: numberKind, at: at, text: token}), nil
}

func (s *scanner) word() (*node, error) {
	at := s.pos
	for s.pos < len(s.data) && (s.data[s.pos]|0x20 >= 'a' && s.data[s.pos]|0x20 <= 'z') {
		s.pos++
	}
	word := s.source[at:s.pos]
	switch word {
	case "true", "false", "null":
		return s.node(node{kind: wordKind, at: at, text: word}), nil
	}
	if s.pos == len(s.data) && partOf(word) {
		return nil, s.cut()
	}
	s.pos = at
	switch strings.ToLower(word) {
	case "nan", "infinity", "inf":
		return nil, s.fail("%s is not a number; leave the record out", word)
	case "":
		return nil, s.fail("a value is missing; %q stands in its place", s.data[at])
	}
	return nil, s.fail("%.20q is no JSON value; put texts in quotes", word)
}

func partOf(word string) bool {
	for _, w := range []string{"true", "false", "null"} {
		if strings.HasPrefix(w, word) {
			return true
		}
	}
	return false
}

func (s *scanner) space() {
	for s.pos < len(s.data) && strings.IndexByte(" \t\r\n", s.data[s.pos]) >= 0 {
		s.pos++
	}
}

func (s *scanner) count() error {
	if s.tokens++; s.tokens > maxTokens {
		return refuse(ErrLarge, "byte %d: holds more than %d values and keys; check that it is a build file", s.pos, maxTokens)
	}
	return nil
}
