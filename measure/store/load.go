package store

import (
	"bytes"
	"errors"
	"fmt"
	"strings"

	"yokebook/measure"
	"yokebook/measure/document"
)

// FormatName is the format of the records that this version writes.
const FormatName = "yokebook-store/1"

// errOther is what is wrong with a file that names another build.
var errOther = errors.New("belongs to another build")

// loading is a build on its way out of the records of a file.
type loading struct {
	build   *measure.Build
	plain   bool            // the plain members were among them
	keys    map[string]bool // of the records in the build
	unknown []stored        // good records that this version can't read
}

// load makes a build from the good records of a file. It errs with errOther when they are those of
// another build. The build has no layout when the plain members are lost and no head speaks of it.
func load(records []stored, id measure.ID) (*loading, error) {
	l := &loading{build: &measure.Build{ID: id}, keys: map[string]bool{}}
	// The plain members come first: the records are put into the build that they make. The last
	// good one of the two copies is the newest.
	for i := len(records) - 1; i >= 0 && !l.plain; i-- {
		if kindOf(records[i].key) == kindPlain {
			if err := l.putPlain(records[i]); err != nil {
				return nil, err
			}
		}
	}
	for _, r := range records {
		if l.keys[r.key] || kindOf(r.key) == kindPlain {
			continue
		}
		if err := l.put(r); errors.Is(err, errOther) {
			return nil, err
		} else if err != nil {
			l.unknown = append(l.unknown, r)
		}
		l.keys[r.key] = true
	}
	document.Arrange(l.build)
	return l, nil
}

func (l *loading) putPlain(r stored) error {
	plain, _, err := document.Read(r.body)
	if err != nil {
		return nil // of a newer version: the older copy is used
	}
	if plain.ID != l.build.ID {
		return fmt.Errorf("%w, %s", errOther, plain.ID)
	}
	l.build, l.plain = plain, true
	return nil
}

func (l *loading) put(r stored) error {
	b := l.build
	switch kindOf(r.key) {
	case kindMeta:
		if !bytes.Equal(r.body, metaOf(b.ID)) {
			return fmt.Errorf("%w, or another program: %.80s", errOther, strings.ToValidUTF8(string(r.body), "?"))
		}
		return nil
	case kindReading:
		return appendTo(&b.Readings, r.body, document.DecodeReading)
	case kindStrike:
		return appendTo(&b.Strikes, r.body, document.DecodeStrike)
	case kindSkip:
		return appendTo(&b.Skips, r.body, document.DecodeSkip)
	case kindHead:
		return appendTo(&b.Heads, r.body, document.DecodeHead)
	}
	return fmt.Errorf("%.40q is not a kind of record that this version knows", strings.ToValidUTF8(r.key, "?"))
}

func appendTo[T any](list *[]T, body []byte, decode func([]byte) (T, error)) error {
	v, err := decode(body)
	if err == nil {
		*list = append(*list, v)
	}
	return err
}

// layout derives the layout from the heads and reports whether there is one.
func (l *loading) layout() error {
	if err := document.Derive(l.build); err != nil {
		return err
	}
	return l.build.Layout.Validate()
}

func metaOf(id measure.ID) []byte {
	return fmt.Appendf(nil, `{"build":%q,"format":%q}`, id, FormatName)
}
