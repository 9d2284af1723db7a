package document

import (
	"encoding/json"
	"fmt"

	"yokebook/measure"
)

// Write returns the file of a build: canonical bytes with sum, and one newline. Plain keys of which
// heads speak are written as the heads say. It errs when the build is one that Read would refuse,
// such as one grown beyond 8 MiB.
func Write(b *measure.Build) ([]byte, error) {
	n, err := bare(b)
	if err != nil {
		return nil, err
	}
	sum := &node{kind: textKind, text: hashOf(n.canonical())}
	n.members = append(n.members, member{"sum", sum})
	n.sort()
	out := append(n.canonical(), '\n')
	if _, _, err := Read(out); err != nil {
		return nil, fmt.Errorf("can't be written so that it could be read again: %w", err)
	}
	return out, nil
}

// Sum returns "sha256:<hex>" over the canonical bytes of a build without its sum: the same for the
// same content on every device.
func Sum(b *measure.Build) (string, error) {
	n, err := bare(b)
	if err != nil {
		return "", err
	}
	return hashOf(n.canonical()), nil
}

// bare is the object of a build's file, without sum.
func bare(b *measure.Build) (*node, error) {
	c := *b
	if err := Derive(&c); err != nil {
		return nil, err
	}
	return parse(encodeBuild(&c))
}

func encodeBuild(b *measure.Build) json.RawMessage {
	var o object
	if b.Newer > 0 {
		o.say("format", fmt.Sprintf("%s/%d", formatFamily, b.Newer))
	} else {
		o.say("format", measure.FormatName)
	}
	o.id("id", b.ID)
	o.say("title", b.Title)
	o.text("note", b.Note)
	o.raw("layout", encodeLayout(b.Layout))
	o.raw("instruments", listOf(b, "instruments", b.Instruments, encodeInstrument))
	o.raw("readings", listOf(b, "readings", b.Readings, EncodeReading))
	o.raw("strikes", listOf(b, "strikes", b.Strikes, EncodeStrike))
	if len(b.Limits) > 0 {
		var limits object
		for _, key := range sortedKeys(b.Limits) {
			limits.raw(key, encodeLimit(b.Limits[key]))
		}
		o.raw("limits", limits.bytes())
	}
	if len(b.Heads)+len(b.Foreign["heads"]) > 0 {
		o.raw("heads", listOf(b, "heads", b.Heads, EncodeHead))
	}
	if len(b.Skips)+len(b.Foreign["skips"]) > 0 {
		o.raw("skips", listOf(b, "skips", b.Skips, EncodeSkip))
	}
	o.fields(b.Unknown)
	return o.bytes()
}

// listOf writes the records of one list in their order, those that are only carried among them.
func listOf[T any](b *measure.Build, name string, records []T, encode func(T) json.RawMessage) json.RawMessage {
	raws := append([]json.RawMessage(nil), b.Foreign[name]...)
	for _, x := range records {
		raws = append(raws, encode(x))
	}
	return list(arrangedRaw(raws))
}
