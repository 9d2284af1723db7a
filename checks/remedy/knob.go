package remedy

import (
	"math"
	"slices"

	"yokebook/checks"
	"yokebook/measure"
)

// Knob is something that a workshop can change by an amount; 0 is as it is.
type Knob struct {
	Key    string
	Unit   string  // of its amount
	Step   float64 // what can be set; amounts are whole steps
	Least  float64 // smallest amount that is looked at
	Most   float64 // largest
	Source string  // of step and range
	Usual  float64 // amount that is about as much work as the usual amount of any other knob
	Serves []string
	alone  bool // half of a pair only where nothing else does it: what it costs is of another kind

	usable  func(v *vehicle) bool                             // the layout has it and what it moves was read
	amounts func(k *Knob, v *vehicle) []float64               // what can be had, rising, with 0; nil: whole steps
	change  func(v *vehicle, e *edit, amount float64)         // turns it on a copy
	costs   func(v *vehicle, amount float64) []checks.Message // what it costs beside the findings
}

// Where steps and ranges of the table come from.
const (
	practice = "step: common practice, no source; range: our judgement, no source"
	series   = "outside diameters of the table of tubes"
	teeth    = "one tooth of the sliding spline where its teeth were counted, else one degree: common practice, no source"
)

// Knobs is the table of knobs, in the order in which they are told.
var Knobs = slices.Concat(lineKnobs, shaftKnobs, stackKnobs, endKnobs, otherKnobs, placeKnobs)

// KnobOf finds a knob by key.
func KnobOf(key string) (Knob, bool) {
	i := slices.IndexFunc(Knobs, func(k Knob) bool { return k.Key == key })
	if i < 0 {
		return Knob{}, false
	}
	return Knobs[i], true
}

// Apply is the build as it would be read with knobs turned: a copy, b is not changed. Not ok: there is
// no such knob, or nothing that can be true comes of it.
func Apply(b *measure.Build, changes ...Change) (changed *measure.Build, ok bool) {
	v := vehicleOf(b)
	for _, c := range changes {
		k, known := KnobOf(c.Knob)
		if !known || !k.usable(v) {
			return nil, false
		}
		turned := k.turn(v, c.Amount)
		if turned == nil {
			return nil, false
		}
		v = &vehicle{turned}
	}
	return v.build, true
}

// turn is the vehicle's build with the knob turned; nil where that is not possible.
func (k *Knob) turn(v *vehicle, amount float64) *measure.Build {
	e := v.edit()
	if amount != 0 {
		k.change(v, e, amount)
	}
	return e.done()
}

// steps lists the amounts that are looked at, rising, 0 among them.
func (k *Knob) steps(v *vehicle) []float64 {
	if k.amounts != nil {
		return k.amounts(k, v)
	}
	var list []float64
	for n := math.Ceil(k.Least / k.Step); n <= math.Floor(k.Most/k.Step); n++ {
		list = append(list, k.round(float64(n*k.Step)))
	}
	return list
}

// round takes the noise of the last bits from a multiple of the step.
func (k *Knob) round(amount float64) float64 { return math.Round(amount*1e6) / 1e6 }

// effort is how much work an amount is, in usual amounts.
func (k *Knob) effort(amount float64) float64 { return math.Abs(amount) / k.Usual }

func (k *Knob) serves(check string) bool { return slices.Contains(k.Serves, check) }

// onlyFrom leaves out amounts between 0 and the least that makes sense, such as plates too thin to hold.
func onlyFrom(least float64) func(k *Knob, v *vehicle) []float64 {
	return func(k *Knob, _ *vehicle) []float64 {
		list := []float64{0}
		for n := math.Ceil(least / k.Step); n <= math.Floor(k.Most/k.Step); n++ {
			list = append(list, k.round(float64(n*k.Step)))
		}
		return list
	}
}
