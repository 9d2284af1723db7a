package kit

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"

	"yokebook/measure"
	"yokebook/measure/document"
)

// Step is one question of the form.
type Step string

// The steps. Kind and Unit are only asked of a new instrument: readings rest on them.
const (
	Kind       Step = "kind"
	Unit       Step = "unit"
	Name       Step = "name"
	Resolution Step = "resolution"
	Accuracy   Step = "accuracy"
	ZeroWithin Step = "zero"
	Done       Step = ""
)

// Kinds are the kinds of instruments and what each may show, the common one first.
var Kinds = []struct {
	Kind  string
	Units []measure.Unit
}{
	{"angle", []measure.Unit{"deg"}},
	{"tape", []measure.Unit{"mm", "in"}},
	{"caliper", []measure.Unit{"mm", "in"}},
	{"indicator", []measure.Unit{"mm", "in"}},
	{"scale", []measure.Unit{"kg", "lb"}},
	{"torque", []measure.Unit{"N·m", "lbf·ft"}},
}

func unitsOf(kind string) []measure.Unit {
	for _, k := range Kinds {
		if k.Kind == kind {
			return k.Units
		}
	}
	return nil
}

// Form is an instrument that is being added or changed.
type Form struct {
	in    measure.Instrument
	steps []Step // still to be asked, the first one now
	done  []Step // asked already
	fresh bool
}

// Add begins to add an instrument.
func Add() *Form { return &Form{steps: []Step{Kind}, fresh: true} }

// Change begins to change one thing about an instrument.
func Change(in measure.Instrument, what Step) *Form { return &Form{in: in, steps: []Step{what}} }

// Answers are the answers so far, so that Resume can give them again.
func (f *Form) Answers() []string {
	var out []string
	for _, step := range f.done {
		out = append(out, map[Step]string{Kind: f.in.Kind, Unit: string(f.in.Unit), Name: f.in.Name, Resolution: f.in.Resolution.Token(),
			Accuracy: f.in.Accuracy.Token(), ZeroWithin: f.in.Zero.Token()}[step])
	}
	return out
}

// Resume answers the questions of a form as they were answered before, up to one that does not take
// its answer.
func (f *Form) Resume(answers []string) {
	for _, a := range answers {
		v, err := measure.NumberValue(a)
		switch step := f.Step(); {
		case step == Kind || step == Unit:
			f.Choose(a)
		case step == Name:
			f.Call(a)
		case err == nil:
			_ = f.Number(v) // a number that is refused is asked for again
		case a == "":
			_ = f.Number(measure.Value{})
		}
	}
}

// Step is the question that is asked; Done after the last.
func (f *Form) Step() Step {
	if len(f.steps) == 0 {
		return Done
	}
	return f.steps[0]
}

// Fresh reports a new instrument.
func (f *Form) Fresh() bool { return f.fresh }

// Instrument is the instrument so far. A new one has no id until Field gives it one.
func (f *Form) Instrument() measure.Instrument { return f.in }

// next goes on to the question after this one.
func (f *Form) next() {
	f.done = append(f.done, f.steps[0])
	f.steps = f.steps[1:]
}

// Choose answers the questions of kind and unit.
func (f *Form) Choose(choice string) {
	switch f.Step() {
	case Kind:
		units := unitsOf(choice)
		if len(units) == 0 {
			return
		}
		f.in = measure.Instrument{Kind: choice, Unit: units[0]}
		f.steps = []Step{Kind, Name, Resolution, Accuracy}
		if len(units) > 1 {
			f.steps = []Step{Kind, Unit, Name, Resolution, Accuracy}
		}
		f.next()
	case Unit:
		for _, u := range unitsOf(f.in.Kind) {
			if string(u) == choice {
				f.in.Unit = u
				f.next()
				return
			}
		}
	}
}

// Units are the choices of the step Unit.
func (f *Form) Units() []measure.Unit { return unitsOf(f.in.Kind) }

// Call answers the question of the name; an empty one leaves it out.
func (f *Form) Call(name string) {
	if f.Step() == Name {
		f.in.Name = strings.TrimSpace(name)
		f.next()
	}
}

// errStep says that one step of a display can't be nothing.
var errStep = errors.New("one step is more than 0; type it, or KEEP without a number where it is not known")

// Number answers the questions of the keypad; an absent value says that it is not known.
func (f *Form) Number(v measure.Value) error {
	number, _ := v.Float()
	switch step := f.Step(); step {
	case Resolution:
		if !v.IsZero() && number <= 0 {
			return errStep
		}
		f.in.Resolution = v
	case Accuracy:
		f.in.Accuracy = v
	case ZeroWithin:
		f.in.Zero = v
	default:
		return nil
	}
	f.next()
	return nil
}

// Back goes one question back. It reports false at the first.
func (f *Form) Back() bool {
	if len(f.done) == 0 {
		return false
	}
	last := len(f.done) - 1
	f.steps = append([]Step{f.done[last]}, f.steps...)
	f.done = f.done[:last]
	return true
}

// Field is the field of the build that holds the instrument, and its new content. A new instrument
// gets an id that no instrument of the build has or ever had.
func (f *Form) Field(b *measure.Build) (field string, value json.RawMessage, err error) {
	in := f.in
	if f.fresh {
		in.ID = freeID(in.Kind, b)
	}
	if err := in.Validate(); err != nil {
		return "", nil, fmt.Errorf("instrument: %w", err)
	}
	members := map[string]json.RawMessage{}
	for name, raw := range in.Unknown {
		members[name] = raw
	}
	put := func(name string, v any) error {
		raw, err := json.Marshal(v)
		members[name] = raw
		return err
	}
	texts := []struct{ name, text string }{{"id", in.ID}, {"kind", in.Kind}, {"name", in.Name}, {"unit", string(in.Unit)}}
	for _, t := range texts {
		if t.text != "" {
			if err := put(t.name, t.text); err != nil {
				return "", nil, fmt.Errorf("instrument: %w", err)
			}
		}
	}
	for _, n := range []struct {
		name  string
		value measure.Value
	}{{"resolution", in.Resolution}, {"accuracy", in.Accuracy}, {"zero", in.Zero}, {"placing", in.Placing}} {
		if !n.value.IsZero() {
			members[n.name] = json.RawMessage(n.value.Token())
		}
	}
	raw, err := json.Marshal(members)
	if err == nil {
		raw, err = document.Canonical(bytes.TrimSpace(raw))
	}
	if err != nil {
		return "", nil, fmt.Errorf("instrument: %w", err)
	}
	return "instruments." + in.ID, raw, nil
}

// freeID names a new instrument after its kind: "tape", "tape-2" …
func freeID(kind string, b *measure.Build) string {
	known := b.KnownInstruments()
	id := kind
	for n := 2; ; n++ {
		if _, taken := measure.InstrumentOf(known, id); !taken {
			return id
		}
		id = fmt.Sprintf("%s-%d", kind, n)
	}
}
