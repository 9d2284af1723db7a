package device

import (
	"bytes"
	"errors"
	"io"
	"strings"
	"testing"
)

// card is a place for one file that behaves like the streams of a phone: what it was told to do
// wrong, it does without a word.
type card struct {
	holds            []byte
	keep             int  // bytes that it takes before it is full; -1: all
	flip             bool // one bit comes back wrong
	create, open     error
	write, read      error
	closeTo, closeIn error
	closed           int
}

func (c *card) Write(p []byte) (int, error) {
	if c.write != nil {
		return 0, c.write
	}
	c.holds = append(c.holds, p...)
	if c.keep >= 0 && len(c.holds) > c.keep {
		c.holds = c.holds[:c.keep]
	}
	return len(p), nil // whatever was kept
}

type end struct {
	io.Reader
	io.Writer
	c   *card
	err error
}

func (e end) Close() error { e.c.closed++; return e.err }

func (c *card) to() (io.WriteCloser, error) {
	if c.create != nil {
		return nil, c.create
	}
	c.holds = nil
	return end{Writer: c, c: c, err: c.closeTo}, nil
}

func (c *card) from() (io.ReadCloser, error) {
	if c.open != nil {
		return nil, c.open
	}
	data := bytes.Clone(c.holds)
	if c.flip {
		data[len(data)/2] ^= 1
	}
	var r io.Reader = bytes.NewReader(data)
	if c.read != nil {
		r = io.MultiReader(r, failing{c.read})
	}
	return end{Reader: r, c: c, err: c.closeIn}, nil
}

type failing struct{ err error }

func (f failing) Read([]byte) (int, error) { return 0, f.err }

var errCard = errors.New("the card is gone")

// A file counts as written when it came back whole, and never otherwise.
func TestOnlyWhatComesBackWasWritten(t *testing.T) {
	data := bytes.Repeat([]byte("2.4 deg\n"), 9000)
	for _, row := range []struct {
		name string
		card card
		want string // part of the line; "" where it is written
	}{
		{"a good card", card{keep: -1}, ""},
		{"a full card that says nothing", card{keep: len(data) / 2}, "other ones came back"},
		{"one byte short", card{keep: len(data) - 1}, "other ones came back"},
		{"nothing taken", card{keep: 0}, "0 other ones came back"},
		{"a bit that turned", card{keep: -1, flip: true}, "other ones came back"},
		{"no place", card{create: errCard}, "can't be written there"},
		{"a card that says that it is full", card{write: errCard}, "not written whole"},
		{"a cloud that fails at the end", card{keep: -1, closeTo: errCard}, "not written whole"},
		{"a place that can't be read", card{keep: -1, open: errCard}, "may not have been written"},
		{"a card that is pulled", card{keep: -1, read: errCard}, "may not have been written"},
		{"a card that is pulled at the end", card{keep: -1, closeIn: errCard}, "may not have been written"},
	} {
		t.Run(row.name, func(t *testing.T) {
			c := row.card
			err := Write("sheet.pdf", data, c.to, c.from)
			switch {
			case row.want == "" && err != nil:
				t.Fatalf("refused: %v", err)
			case row.want != "" && err == nil:
				t.Fatal("taken as written")
			case row.want != "" && (!strings.Contains(err.Error(), row.want) || !strings.HasPrefix(err.Error(), "sheet.pdf: ")):
				t.Errorf("says %q, want %q in it", err, row.want)
			}
			if opened := 2 - count(c.create != nil) - count(c.create != nil || c.write != nil || c.closeTo != nil || c.open != nil); c.closed != opened {
				t.Errorf("%d streams closed of %d", c.closed, opened)
			}
		})
	}
}

func count(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

// An empty file is a file.
func TestAnEmptyFileComesBackToo(t *testing.T) {
	c := card{keep: -1}
	if err := Write("empty", nil, c.to, c.from); err != nil {
		t.Error(err)
	}
}

// What is too large for this program is refused before it fills the memory.
func TestAnEndlessFileIsRefused(t *testing.T) {
	if testing.Short() {
		t.Skip("reads 64 MB of zeros")
	}
	_, err := Read("endless", func() (io.ReadCloser, error) { return io.NopCloser(zeros{}), nil })
	if err == nil || !strings.Contains(err.Error(), "larger than 64 MB") {
		t.Errorf("%v", err)
	}
}

type zeros struct{}

func (zeros) Read(p []byte) (int, error) { return len(p), nil }
