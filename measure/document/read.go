package document

import (
	"encoding/json"
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"yokebook/measure"
)

// Seal says whether a file carries a sum that proves it whole.
type Seal int

// The seals of a file that was read. A wrong sum is an error, not a seal.
const (
	Unsealed Seal = iota // without sum, as when written by hand
	Whole                // its sum is right: unaltered since it was written
)

// Read takes one build file from outside. It errs with one line that says where, what and what to
// do; the caller puts the file's name before it. Records come sorted and without repetitions, and
// plain keys are derived from the heads.
func Read(data []byte) (*measure.Build, Seal, error) {
	n, err := parse(data)
	if err != nil {
		return nil, Unsealed, err
	}
	newer, err := formatOf(n)
	if err != nil {
		return nil, Unsealed, err
	}
	seal, err := sealOf(n)
	if err != nil {
		return nil, Unsealed, err
	}
	b, err := buildOf(n, newer)
	if err != nil && newer > 0 {
		err = fmt.Errorf("%w (its format %s/%d is newer than this program; update the program)", err, formatFamily, newer)
	}
	if err != nil {
		return nil, Unsealed, err
	}
	return b, seal, nil
}

const formatFamily = "yokebook-build"

// formatOf returns 0 for our own format and N for a newer one.
func formatOf(n *node) (int, error) {
	if n.kind != objectKind {
		return 0, refuse(ErrFormat, "is %s, not a build; choose a yokebook build file", n.what())
	}
	f := n.get("format")
	if f == nil {
		return 0, refuse(ErrFormat, "format: is missing; choose a yokebook build file")
	}
	if f.kind == textKind && f.text == measure.FormatName {
		return 0, nil
	}
	if number, ok := strings.CutPrefix(f.text, formatFamily+"/"); ok && f.kind == textKind {
		if v, err := strconv.Atoi(number); err == nil && v > 1 && v < 10000 && strconv.Itoa(v) == number {
			return v, nil
		}
	}
	return 0, refuse(ErrFormat, "format: %.60s is not %q; choose a yokebook build file", f.canonical(), measure.FormatName)
}

var (
	sumForm = regexp.MustCompile(`^sha256:[0-9a-f]{64}$`)
	idForm  = regexp.MustCompile(`^[a-z0-9_-]{1,40}$`) // of a record or an instrument
)

// sealOf checks the sum where there is one.
func sealOf(n *node) (Seal, error) {
	sum := n.get("sum")
	if sum == nil {
		for _, m := range n.members {
			if m.key != "title" && m.key != "note" && m.value.kind == textKind && sumForm.MatchString(m.value.text) {
				return Unsealed, refuse(ErrSum, "%s: holds a sum, but its name is damaged; copy the file again from the other device", plainKey(m.key))
			}
		}
		return Unsealed, nil
	}
	if sum.kind != textKind || !sumForm.MatchString(sum.text) {
		return Unsealed, refuse(ErrSum, "sum: is not \"sha256:\" and 64 of 0-9 a-f; copy the file again, or take sum out if you edited it by hand")
	}
	if have := hashOf(n.without("sum").canonical()); have != sum.text {
		return Unsealed, refuse(ErrSum, "sum: does not match, so the file was changed after it was written; copy it again, or take sum out if you edited it by hand")
	}
	return Whole, nil
}

// reader turns the object of a file into a build.
type reader struct {
	*members
	build *measure.Build
}

// topKeys are the members of a build that this version knows.
var topKeys = []string{"format", "sum", "id", "title", "note", "layout", "instruments", "limits", "heads", "readings", "strikes", "skips"}

func buildOf(n *node, newer int) (*measure.Build, error) {
	m, err := open(n)
	if err != nil {
		return nil, err
	}
	r := reader{m, &measure.Build{Newer: newer}}
	b := r.build
	if b.ID = r.needID("id"); r.err == nil {
		if _, err := measure.ParseID(string(b.ID)); err != nil {
			r.fault("id", "%s", err)
		}
	}
	b.Title, b.Note = r.text("title"), r.text("note")
	r.layout()
	b.Instruments = records(r, "instruments", instrumentOf, func(in measure.Instrument) error { return nil })
	r.limits()
	b.Heads = records(r, "heads", headOf, measure.Head.Validate)
	r.settle()
	known := b.KnownInstruments()
	b.Readings = records(r, "readings", readingOf, func(x measure.Reading) error { return x.Validate(known) })
	b.Strikes = records(r, "strikes", strikeOf, measure.Strike.Validate)
	b.Skips = records(r, "skips", skipOf, measure.Skip.Validate)
	if r.err != nil {
		return nil, r.err
	}
	for _, key := range topKeys {
		r.take(key)
	}
	b.Unknown = r.rest()
	Arrange(b)
	return b, b.ValidateFrame() // each record was looked at when it was read
}

func (r reader) layout() {
	n := r.optional("layout")
	if n == nil {
		return
	}
	l, err := layoutOf(n)
	if err != nil {
		r.inside("layout", err)
	}
	r.build.Layout = l
}

func (r reader) limits() {
	n := r.optional("limits")
	if n == nil {
		return
	}
	if n.kind != objectKind {
		r.fault("limits", "is %s; write an object in { }", n.what())
		return
	}
	for _, m := range n.members {
		if err := setLimit(r.build, m.key, m.value); err != nil || m.value.null() {
			r.fault("limits."+m.key, "%s", measure.LimitForm)
		}
	}
}

// settle derives the plain keys; in our own format they must say what the heads say.
func (r reader) settle() {
	if r.err != nil {
		return
	}
	seen := map[string]bool{}
	for i, in := range r.build.Instruments {
		if seen[in.ID] {
			r.err = fmt.Errorf("instruments[%d].id: %q stands there twice; keep one", i, in.ID)
			return
		}
		seen[in.ID] = true
	}
	plain := Plain(r.build)
	if r.err = Derive(r.build); r.err == nil && r.build.Newer == 0 {
		r.err = agree(plain, r.build)
	}
	if r.err == nil {
		r.err = wholeLayout(r.build.Layout)
	}
}

// wholeLayout errs when a member that every layout has is still missing.
func wholeLayout(l measure.Layout) error {
	if l.Shafts == 0 {
		return fmt.Errorf("layout.shafts: is missing; use 1 or 2")
	}
	for _, c := range measure.LayoutChoices {
		if !c.Optional && *l.Member(c.Member) == "" {
			return fmt.Errorf("layout.%s: is missing; use one of %v", c.Member, c.Choices)
		}
	}
	return nil
}

// records reads one list. In a newer format what can't be understood is carried raw.
func records[T any](r reader, name string, of func(*node) (T, error), check func(T) error) []T {
	n := r.optional(name)
	if n == nil || r.err != nil {
		return nil
	}
	if n.kind != arrayKind {
		r.fault(name, "is %s; write a list in [ ]", n.what())
		return nil
	}
	out := make([]T, 0, len(n.items))
	for i, item := range n.items {
		x, err := of(item)
		if err == nil {
			err = check(x)
		}
		switch {
		case err == nil:
			out = append(out, x)
		case r.build.Newer > 0 && carriable(item):
			r.carry(name, item)
		default:
			r.err = fmt.Errorf("%s[%d].%w", name, i, err)
			return nil
		}
	}
	return out
}

// carriable reports a record that can be kept without being understood: an object whose id, if it
// has one, is a proper id.
func carriable(n *node) bool {
	if n.kind != objectKind {
		return false
	}
	id := n.get("id")
	if id == nil || id.kind != textKind {
		return id == nil
	}
	return idForm.MatchString(id.text)
}

func (r reader) carry(name string, n *node) {
	if r.build.Foreign == nil {
		r.build.Foreign = map[string][]json.RawMessage{}
	}
	r.build.Foreign[name] = append(r.build.Foreign[name], n.canonical())
}
