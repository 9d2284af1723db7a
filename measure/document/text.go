package document

import (
	"strconv"
	"unicode/utf16"
	"unicode/utf8"
)

// text reads a JSON text and returns its code points; the scanner stands on its first quote.
func (s *scanner) text() (string, error) {
	s.pos++
	if end := plainEnd(s.source[s.pos:]); end >= 0 {
		text := s.source[s.pos : s.pos+end]
		s.pos += end + 1
		return text, nil
	}
	var out []byte
	for {
		if s.pos >= len(s.data) {
			return "", s.cut()
		}
		if len(out) > maxText {
			return "", s.fail("a text is longer than %d bytes; shorten it", maxText)
		}
		switch c := s.data[s.pos]; {
		case c == '"':
			s.pos++
			return string(out), nil
		case c == '\\':
			r, err := s.escape()
			if err != nil {
				return "", err
			}
			out = utf8.AppendRune(out, r)
		case c < 0x20:
			return "", s.fail("a line break or control character stands inside a text; close the quotes before it, or write it as \\n")
		case c < utf8.RuneSelf:
			out = append(out, c)
			s.pos++
		default:
			r, size := utf8.DecodeRune(s.data[s.pos:])
			if r == utf8.RuneError && size <= 1 {
				if !utf8.FullRune(s.data[s.pos:]) {
					return "", s.cut()
				}
				return "", s.fail("a text is not UTF-8; save the file again as UTF-8")
			}
			out = append(out, s.data[s.pos:s.pos+size]...)
			s.pos += size
		}
	}
}

// plainEnd finds the closing quote of a text that stands in the file as it is meant: ASCII, no escape,
// not too long. -1: it has to be read byte by byte.
func plainEnd(rest string) int {
	for i := 0; i < len(rest) && i <= maxText; i++ {
		switch c := rest[i]; {
		case c == '"':
			return i
		case c == '\\' || c < 0x20 || c >= utf8.RuneSelf:
			return -1
		}
	}
	return -1
}

var escapes = map[byte]rune{'"': '"', '\\': '\\', '/': '/', 'b': '\b', 'f': '\f', 'n': '\n', 'r': '\r', 't': '\t'}

// escape reads one escape, or two that make one code point beyond U+FFFF.
func (s *scanner) escape() (rune, error) {
	if s.pos+1 >= len(s.data) {
		s.pos = len(s.data)
		return 0, s.cut()
	}
	c := s.data[s.pos+1]
	if r, ok := escapes[c]; ok {
		s.pos += 2
		return r, nil
	}
	if c != 'u' {
		return 0, s.fail("\\%.1q is no escape; write a backslash as \\\\", c)
	}
	at := s.pos
	first, err := s.unit()
	if err != nil || !utf16.IsSurrogate(first) {
		return first, err
	}
	if s.pos+1 < len(s.data) && (s.data[s.pos] != '\\' || s.data[s.pos+1] != 'u') {
		return 0, s.half(at)
	}
	second, err := s.unit()
	if err != nil {
		return 0, err
	}
	r := utf16.DecodeRune(first, second)
	if r == utf8.RuneError {
		return 0, s.half(at)
	}
	return r, nil
}

func (s *scanner) half(at int) error {
	s.pos = at
	return s.fail("half of a surrogate pair stands alone; write the character itself")
}

// unit reads \uXXXX.
func (s *scanner) unit() (rune, error) {
	if s.pos+6 > len(s.data) {
		return 0, s.cut()
	}
	n, err := strconv.ParseUint(string(s.data[s.pos+2:s.pos+6]), 16, 16)
	if err != nil {
		return 0, s.fail("\\u must be followed by four of 0-9 a-f")
	}
	s.pos += 6
	return rune(n), nil
}

const hexDigits = "0123456789abcdef"

// escaped reports a text that has something to escape.
func escaped(text string) bool {
	for i := 0; i < len(text); i++ {
		if c := text[i]; c < 0x20 || c == '"' || c == '\\' {
			return true
		}
	}
	return false
}

// appendText writes a text with the least escapes; the package comment lists them.
func appendText(dst []byte, text string) []byte {
	dst = append(dst, '"')
	if !escaped(text) {
		return append(append(dst, text...), '"')
	}
	for i := 0; i < len(text); i++ {
		switch c := text[i]; c {
		case '"', '\\':
			dst = append(dst, '\\', c)
		case '\b':
			dst = append(dst, '\\', 'b')
		case '\t':
			dst = append(dst, '\\', 't')
		case '\n':
			dst = append(dst, '\\', 'n')
		case '\f':
			dst = append(dst, '\\', 'f')
		case '\r':
			dst = append(dst, '\\', 'r')
		default:
			if c < 0x20 {
				dst = append(dst, '\\', 'u', '0', '0', hexDigits[c>>4], hexDigits[c&15])
			} else {
				dst = append(dst, c)
			}
		}
	}
	return append(dst, '"')
}
