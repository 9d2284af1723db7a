package document

import (
	"fmt"
	"strconv"
	"strings"
)

// step is one level of the path to where the scanner is: a key, or an index when key is unused.
type step struct {
	key   string
	index int // -1: key
}

// fail says what is wrong at the place reached.
func (s *scanner) fail(format string, args ...any) error {
	what := fmt.Sprintf(format, args...)
	if len(s.path) == 0 {
		return refuse(nil, "byte %d: %s", s.pos, what)
	}
	return refuse(nil, "byte %d, in %s: %s", s.pos, s.where(), what)
}

func (s *scanner) cut() error {
	inside := s.where()
	if inside == "" {
		inside = "its first bracket"
	}
	return refuse(ErrCut, "ends after %d bytes, inside %s; copy it again from the other device", len(s.data), inside)
}

// where writes the path, such as readings[12].unit.
func (s *scanner) where() string {
	var b strings.Builder
	for i, st := range s.path {
		switch {
		case st.index >= 0:
			b.WriteString("[" + strconv.Itoa(st.index) + "]")
		case i > 0:
			b.WriteString("." + plainKey(st.key))
		default:
			b.WriteString(plainKey(st.key))
		}
	}
	return b.String()
}

// plainKey quotes a key that would make the line hard to read.
func plainKey(key string) string {
	for _, c := range []byte(key) {
		if !(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_' || c == '-' || c == '.') {
			return fmt.Sprintf("%.60q", key)
		}
	}
	if key == "" || len(key) > 60 {
		return fmt.Sprintf("%.60q", key)
	}
	return key
}
