package store

import (
	"bytes"
	"strconv"
)

// Limits of what stands in a file. Keys of ours have at most 109 bytes; a value is one record, or
// the plain members, which are a build file of at most 8 MiB.
const (
	maxKey   = 200
	maxValue = 9 << 20
	maxBytes = 256 << 20
)

// mark is how every command that we write begins. It can't stand inside a record: canonical JSON
// holds no line breaks.
const mark = "*3\r\n$3\r\nset\r\n"

// shape is what stands at a place of a file.
type shape int

const (
	whole   shape = iota // one command of ours
	cutOff               // the beginning of one, then the file ends
	foreign              // anything else
)

// appendFrame writes one command, byte for byte as the library does.
func appendFrame(dst []byte, key, value string) []byte {
	dst = append(dst, mark...)
	for _, part := range []string{key, value} {
		dst = append(dst, '$')
		dst = strconv.AppendInt(dst, int64(len(part)), 10)
		dst = append(dst, "\r\n"...)
		dst = append(dst, part...)
		dst = append(dst, "\r\n"...)
	}
	return dst
}

// frameAt reads the command that data begins with, strictly: nothing but what appendFrame writes,
// lengths within limits, no NUL. size is the command's length when it is whole. The library would
// take more, and would take some of it for a length without end.
func frameAt(data []byte) (key, value []byte, size int, s shape) {
	c := cursor{rest: data}
	c.literal(mark)
	key = c.part(maxKey)
	value = c.part(maxValue)
	return key, value, len(data) - len(c.rest), c.shape
}

// cursor reads on while everything is as it must be.
type cursor struct {
	rest  []byte
	shape shape
}

// take reads n bytes.
func (c *cursor) take(n int) []byte {
	if c.shape != whole {
		return nil
	}
	if len(c.rest) < n {
		c.shape = cutOff
		return nil
	}
	out := c.rest[:n]
	c.rest = c.rest[n:]
	return out
}

func (c *cursor) literal(text string) {
	have := min(len(text), len(c.rest))
	if c.shape == whole && string(c.rest[:have]) != text[:have] {
		c.shape = foreign
	}
	c.take(len(text))
}

// part reads one length and as many bytes.
func (c *cursor) part(most int) []byte {
	c.literal("$")
	n := c.number(most)
	out := c.take(n)
	if c.shape == cutOff && bytes.Contains(c.rest, []byte(mark)) {
		c.shape = foreign // a length that reaches over the commands behind it
	}
	if bytes.IndexByte(out, 0) >= 0 || c.shape == cutOff && bytes.IndexByte(c.rest, 0) >= 0 {
		c.shape = foreign
	}
	c.literal("\r\n")
	return out
}

// number reads a length, its line break included.
func (c *cursor) number(most int) int {
	if c.shape != whole {
		return 0
	}
	n := 0
	for i, d := range c.rest {
		if d == '\r' && i > 0 {
			c.rest = c.rest[i:]
			c.literal("\r\n")
			return n
		}
		if d < '0' || d > '9' || i > 0 && n == 0 {
			c.shape = foreign
			return 0
		}
		if n = n*10 + int(d-'0'); n > most {
			c.shape = foreign
			return 0
		}
	}
	c.shape = cutOff
	return 0
}
