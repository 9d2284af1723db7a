package store

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strings"

	"yokebook/measure"
	"yokebook/measure/document"
)

// kind is the first part of a key.
type kind string

const (
	kindMeta    kind = "meta"
	kindPlain   kind = "plain"
	kindReading kind = "reading"
	kindStrike  kind = "strike"
	kindSkip    kind = "skip"
	kindHead    kind = "head"
)

// plainCopy is the key of the second copy of the plain members.
const plainCopy = string(kindPlain) + "/copy"

// Record is one thing to keep: a reading, strike, skip or head in canonical form, under a key that
// names its kind, id and content. Two records of one id with different content have two keys.
type Record struct {
	Key  string
	body []byte
}

// OfReading makes the record of a reading.
func OfReading(r measure.Reading) Record {
	return recordOf(kindReading, r.ID, document.EncodeReading(r))
}

// OfStrike makes the record of a strike.
func OfStrike(s measure.Strike) Record { return recordOf(kindStrike, s.ID, document.EncodeStrike(s)) }

// OfSkip makes the record of a skip.
func OfSkip(s measure.Skip) Record { return recordOf(kindSkip, s.ID, document.EncodeSkip(s)) }

// OfHead makes the record of a head.
func OfHead(h measure.Head) Record { return recordOf(kindHead, h.ID, document.EncodeHead(h)) }

// RecordsOf makes the records of a whole build, in the order of the build.
func RecordsOf(b *measure.Build) []Record {
	var out []Record
	for _, h := range b.Heads {
		out = append(out, OfHead(h))
	}
	for _, r := range b.Readings {
		out = append(out, OfReading(r))
	}
	for _, s := range b.Strikes {
		out = append(out, OfStrike(s))
	}
	for _, s := range b.Skips {
		out = append(out, OfSkip(s))
	}
	return out
}

// Equal reports the same record under the same key.
func (r Record) Equal(o Record) bool { return r.Key == o.Key && bytes.Equal(r.body, o.body) }

// OfPlain makes the record of everything in a build that is no record: format, id, title, note,
// layout, instruments, limits and members that this version does not know. It is a build file. A
// store file has one, and a copy of it because nothing else may say the layout; keeping another puts
// it in the place of the last.
func OfPlain(b *measure.Build) (Record, error) {
	plain := *b
	plain.Heads, plain.Readings, plain.Strikes, plain.Skips = nil, nil, nil, nil
	body, err := document.Write(&plain)
	return Record{Key: string(kindPlain), body: body}, err
}

func recordOf(k kind, id measure.ID, body []byte) Record {
	name := string(id)
	if name == "" {
		name = "-" // a strike written by hand may have no id; its content tells it apart
	}
	sum := sha256.Sum256(body)
	return Record{Key: string(k) + "/" + name + "/" + hex.EncodeToString(sum[:]), body: body}
}

// sealed is the value as stored: the sum over key and body, a blank, the body.
func (r Record) sealed() string { return sumOf(r.Key, r.body) + " " + string(r.body) }

// unseal checks a stored value and returns its body, and what is wrong when something is.
func unseal(key, value string) (body []byte, wrong string) {
	sum, rest, ok := strings.Cut(value, " ")
	if !ok {
		return nil, "has no checksum"
	}
	if sum != sumOf(key, []byte(rest)) {
		return nil, "does not match its checksum"
	}
	return []byte(rest), ""
}

func sumOf(key string, body []byte) string {
	h := sha256.New()
	fmt.Fprintf(h, "%d %s ", len(key), key)
	h.Write(body)
	return hex.EncodeToString(h.Sum(nil))
}

// kindOf returns the kind that a key begins with.
func kindOf(key string) kind {
	k, _, _ := strings.Cut(key, "/")
	return kind(k)
}
