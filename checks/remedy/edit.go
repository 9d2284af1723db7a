package remedy

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"yokebook/measure"
)

// edit is a build in the making: a copy of a vehicle's, with readings as they would be taken of the
// changed one. Ids stay, so that every cause of doubt keeps its draws.
type edit struct {
	build  *measure.Build
	broken bool // a value came out that can't be true: the change is not possible
}

func (v *vehicle) edit() *edit {
	b := *v.build
	b.Readings = slices.Clone(v.build.Readings)
	b.Instruments = slices.Clone(v.build.Instruments)
	return &edit{build: &b}
}

// done is the changed build; nil where the change is not possible.
func (e *edit) done() *measure.Build {
	if e.broken {
		return nil
	}
	return e.build
}

// shift moves every reading of a point by an amount in its base unit, along the part.
func (e *edit) shift(point string, by func(r measure.Reading) float64) {
	for i, r := range e.build.Readings {
		if x, ok := r.Number(); ok && r.Point == point {
			e.put(i, r.Along(x)+by(r))
		}
	}
}

func (e *edit) shiftAll(point string, by float64) {
	e.shift(point, func(measure.Reading) float64 { return by })
}

// setAll puts one number in the place of every reading of a point, as stated: what is bought or made
// to a size has it to the last digit written.
func (e *edit) setAll(point string, to float64) {
	for i, r := range e.build.Readings {
		if r.Point == point {
			e.build.Readings[i].Basis, e.build.Readings[i].Instrument = measure.Stated, ""
			e.build.Readings[i].Ride, e.build.Readings[i].Load = measure.Bench, ""
			e.write(i, to)
			e.toSize(i)
		}
	}
}

// toSize writes a length to the last digit that a part is made to.
func (e *edit) toSize(i int) {
	r := &e.build.Readings[i]
	x, ok := r.Value.Float()
	if p, _ := measure.PointOf(r.Point); !ok || p.Quantity != measure.Length {
		return
	}
	v, err := measure.NumberValue(strconv.FormatFloat(x, 'f', 3, 64))
	if err != nil {
		e.broken = true
		return
	}
	r.Value = v
}

// put gives a reading another value and keeps its doubt. A stated one is known to half its last digit:
// where the new value needs more digits, a tool just as good stands in for them.
func (e *edit) put(i int, to float64) {
	was := e.build.Readings[i]
	e.write(i, to)
	r := &e.build.Readings[i]
	p, _ := measure.PointOf(r.Point)
	if was.Basis != measure.Stated || !(r.Step() < was.Step()) || p.Quantity == measure.Count {
		return
	}
	id := fmt.Sprintf("as-stated-%d", i)
	half, err := measure.FloatValue(was.Step() / 2)
	if err != nil {
		e.broken = true
		return
	}
	nothing, _ := measure.NumberValue("0")
	e.build.Instruments = append(e.build.Instruments, measure.Instrument{ID: id, Kind: id, Unit: p.Quantity.Base(),
		Resolution: nothing, Accuracy: half, Zero: nothing, Placing: nothing})
	r.Basis, r.Instrument, r.Ride, r.Load = measure.Measured, id, measure.Bench, ""
}

// write puts a number, in the base unit and along the part, as the tool would show it.
func (e *edit) write(i int, along float64) {
	r := &e.build.Readings[i]
	shown := along
	if r.Lay == "face" {
		shown = math.Copysign(90-math.Abs(along), along)
	}
	p, _ := measure.PointOf(r.Point)
	shown, err := measure.Convert(shown, p.Quantity.Base(), r.Unit)
	if err == nil {
		r.Value, err = measure.FloatValue(math.Round(shown*1e6) / 1e6)
	}
	r.Entered = ""
	if err != nil || p.Possible(*r) != nil {
		e.broken = true
	}
}
