package store

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/tidwall/buntdb"

	"yokebook/measure"
	"yokebook/measure/document"
)

// FormatName is the format of the records that this version writes.
const FormatName = "yokebook-store/1"

// Aside is a record that was found but can't be trusted. It stays in the file and out of the build.
type Aside struct {
	Key   string
	Wrong string // what is wrong with it and what was done, as the end of a sentence
}

// String says it in one line.
func (a Aside) String() string { return fmt.Sprintf("%.120s %s", a.Key, a.Wrong) }

// Peek reads a build without taking its lock and without writing to its file, also while another
// process has it open; it may then miss the record being written. It errs with ErrNoBuild or
// ErrDamaged.
func (s *Store) Peek(id measure.ID) (*measure.Build, []Aside, error) {
	there, err := s.has(id)
	if err != nil {
		return nil, nil, err
	}
	if !there {
		return nil, nil, fmt.Errorf("build %s %w", id, ErrNoBuild)
	}
	data, err := os.ReadFile(s.path(id))
	if err != nil {
		return nil, nil, fmt.Errorf("store: %w", err)
	}
	db, err := readDB(data)
	if err != nil {
		return nil, nil, fmt.Errorf("store: %s %w: %w", filepath.Base(s.path(id)), ErrDamaged, err)
	}
	defer db.Close()
	return load(db, id)
}

// readDB reads the bytes of a file into memory. A last command that ends too early is one that is
// just being written or was never acknowledged.
func readDB(data []byte) (*buntdb.DB, error) {
	db, err := openDB(":memory:")
	if err != nil {
		return nil, err
	}
	if err := fillDB(db, data); err != nil {
		return nil, both(err, db.Close())
	}
	return db, nil
}

// fillDB loads a file. The library panics on some damaged files; that is an error here.
func fillDB(db *buntdb.DB, data []byte) (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("%v", p)
		}
	}()
	if err := db.Load(bytes.NewReader(data)); err != nil && !errors.Is(err, io.ErrUnexpectedEOF) {
		return err
	}
	return nil
}

// load makes the build from its records. Records that can't be trusted are set aside. It errs with
// ErrDamaged when no layout is left: findings for a guessed one would be worse than none.
func load(db *buntdb.DB, id measure.ID) (*measure.Build, []Aside, error) {
	l := &loading{build: &measure.Build{ID: id}}
	err := db.View(func(tx *buntdb.Tx) error {
		// The plain members come first: the records are put into the build that they make.
		for _, key := range []string{string(kindPlain), plainCopy} {
			if value, err := tx.Get(key); err != nil {
				l.aside = append(l.aside, Aside{Key: key, Wrong: "is missing; its copy or the heads were used"})
			} else {
				l.take(key, value)
			}
		}
		return tx.AscendKeys("*", func(key, value string) bool {
			if kindOf(key) != kindPlain {
				l.take(key, value)
			}
			return true
		})
	})
	if err == nil {
		err = document.Derive(l.build)
	}
	if err == nil {
		err = l.build.Layout.Validate()
	}
	if err != nil {
		return nil, nil, fmt.Errorf("store: build %s %w: %w", id, ErrDamaged, err)
	}
	return l.build, l.aside, nil
}

// loading is a build on its way out of a file.
type loading struct {
	build *measure.Build
	aside []Aside
	plain bool // the plain members are there
}

// take puts one stored value into the build, or aside.
func (l *loading) take(key, value string) {
	body, wrong := unseal(key, value)
	if wrong == "" {
		if err := l.put(key, body); err != nil {
			wrong = "can't be read: " + err.Error()
		}
	}
	if wrong != "" {
		l.aside = append(l.aside, Aside{Key: key, Wrong: wrong + "; it was set aside"})
	}
}

func (l *loading) put(key string, body []byte) error {
	b := l.build
	switch kindOf(key) {
	case kindMeta:
		if !bytes.Equal(body, metaOf(b.ID)) {
			return fmt.Errorf("it is not %s of build %s", FormatName, b.ID)
		}
		return nil
	case kindPlain:
		if l.plain {
			return nil // the copy is not needed
		}
		plain, _, err := document.Read(body)
		if err != nil {
			return err
		}
		if plain.ID != b.ID {
			return fmt.Errorf("it belongs to build %s", plain.ID)
		}
		*b, l.plain = *plain, true
		return nil
	case kindReading:
		return appendTo(&b.Readings, body, document.DecodeReading)
	case kindStrike:
		return appendTo(&b.Strikes, body, document.DecodeStrike)
	case kindSkip:
		return appendTo(&b.Skips, body, document.DecodeSkip)
	case kindHead:
		return appendTo(&b.Heads, body, document.DecodeHead)
	}
	return fmt.Errorf("%.40q is not a kind of record that this version knows", strings.ToValidUTF8(key, "?"))
}

func appendTo[T any](list *[]T, body []byte, decode func([]byte) (T, error)) error {
	v, err := decode(body)
	if err == nil {
		*list = append(*list, v)
	}
	return err
}

func metaOf(id measure.ID) []byte {
	return fmt.Appendf(nil, `{"build":%q,"format":%q}`, id, FormatName)
}
