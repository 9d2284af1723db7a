package checks

import (
	"math"
	"slices"
	"strconv"

	"yokebook/checks/limits"
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// tool is what an instrument is good to, in the base unit of its quantity.
type tool struct {
	resolution, accuracy, zero, placing float64
}

// toolOf returns the doubt of the instrument that took r: what its owner states, else the default
// of the quantity.
func (e *engine) toolOf(r measure.Reading, q measure.Quantity) tool {
	in, known := measure.InstrumentOf(e.build.Instruments, r.Instrument)
	kind := ""
	if known {
		kind = in.Kind
	}
	t := usualTool(kind, q)
	if !known {
		return t
	}
	set := func(to *float64, v measure.Value) {
		if f, ok := v.Float(); ok {
			if base, err := measure.Convert(f, in.Unit, q.Base()); err == nil {
				*to = base
			}
		}
	}
	set(&t.resolution, in.Resolution)
	set(&t.accuracy, in.Accuracy)
	t.zero = t.accuracy
	set(&t.zero, in.Zero)
	set(&t.placing, in.Placing)
	return t
}

// usualTool is what tools of a kind are good to, else what is taken for the quantity.
func usualTool(kind string, q measure.Quantity) tool {
	for _, name := range []string{kind, string(q)} {
		d, ok := limits.ToolOf(name)
		if u, known := measure.UnitOf(d.Unit); ok && known && u.Quantity == q {
			return tool{d.Resolution, d.Accuracy, d.Accuracy, d.Placing}
		}
	}
	return tool{}
}

// zeroTerm is the shared zero of r's instrument in r's setup: what a reversal there left of it, else
// all of it. Without a known instrument nothing proves that two readings share one, so the zero is
// r's own.
func (e *engine) zeroTerm(r measure.Reading, t tool, weight float64) term {
	weight *= zeroSign(r)
	if r.Instrument == "" {
		c := &cause{key: "zero|" + string(r.ID), shape: rectangular, input: r.Point, reading: r.ID}
		return term{c, float64(weight * t.zero)}
	}
	key := "zero|" + r.Instrument + "|" + strconv.Itoa(r.Setup)
	if found, ok := e.reversalOf(r.Instrument, r.Setup); ok {
		return term{&cause{key: key, shape: normal, input: r.Instrument + ".zero"}, float64(weight * found.u)}
	}
	return term{&cause{key: key, shape: rectangular, input: r.Instrument + ".zero"}, float64(weight * t.zero)}
}

// along is a reading's value along the part in the base unit, less the zero that a reversal found.
func (e *engine) along(r measure.Reading) float64 {
	v, _ := r.Number()
	v = r.Along(v)
	if r.Instrument == "" || r.Basis != measure.Measured {
		return v
	}
	if found, ok := e.reversalOf(r.Instrument, r.Setup); ok {
		v -= float64(zeroSign(r) * found.zero)
	}
	return v
}

// repeats turns the readings of one point, state and setup into one number. off, in mm, widens it
// where they were taken at another height than the state's.
func (e *engine) repeats(p measure.Point, list []measure.Reading, off float64) *quantity {
	var values []float64
	var from origin
	var last measure.Reading
	for _, r := range list {
		values = append(values, e.along(r))
		from = from.join(originOf(r))
		if r.ID > last.ID {
			last = r
		}
	}
	var terms []term
	if len(list) == 1 {
		terms = e.single(p, last, values[0], true)
	} else {
		terms = e.several(p, list, last, values)
	}
	if off > 0 && movesWithAxle(p.Key) {
		terms = append(terms, term{&cause{"height|" + string(last.ID), rectangular, p.Key, last.ID, false}, e.widening(off)})
	}
	return e.number(uncertain.Mean(values), terms, from)
}

func originOf(r measure.Reading) origin {
	o := origin{used: []measure.ID{r.ID}}
	if r.Basis != measure.Measured {
		o.restsOn = []string{r.Point}
	}
	return o
}

// single lists the causes of one reading.
func (e *engine) single(p measure.Point, r measure.Reading, value float64, random bool) []term {
	id := string(r.ID)
	own := func(name string, shape uncertain.Shape) *cause {
		return &cause{key: name + "|" + id, shape: shape, input: r.Point, reading: r.ID}
	}
	switch {
	case p.Quantity == measure.Count, p.Quantity == measure.Answer, p.Quantity == measure.Text:
		return nil
	case r.Basis == measure.Stated:
		return []term{{own("stated", rectangular), r.Step() / 2}}
	case r.Basis == measure.Estimated:
		half := given("estimated.share") * math.Abs(value)
		if p.Quantity == measure.Angle {
			half = given("estimated.angle")
		}
		return []term{{own("estimated", rectangular), half}}
	}
	t := e.toolOf(r, p.Quantity)
	terms := []term{{own("accuracy", rectangular), t.accuracy}, e.zeroTerm(r, t, 1)}
	if random {
		terms = append(terms, term{own("resolution", rectangular), t.resolution / 2},
			term{own("placing", normal), t.placing})
	}
	return terms
}

// several lists the causes of a mean of repeats. Two or three: the coarsest reading's own terms and
// a rectangle over the range. Four or more: Student's t with s/√n, never below the display step, in
// place of step and placing; what all share (accuracy, zero) does not shrink by repeating.
// Source: JCGM 100:2008, 4.2, 4.3.7 and G.3 (from memory).
func (e *engine) several(p measure.Point, list []measure.Reading, last measure.Reading, values []float64) []term {
	random := len(list) < 4
	terms := e.single(p, e.coarsest(p, list, last), uncertain.Mean(values), random)
	terms = slices.DeleteFunc(terms, func(t term) bool { return t.cause.key[:4] == "zero" })
	for _, r := range list {
		if r.Basis == measure.Measured && p.Quantity != measure.Count {
			terms = append(terms, e.zeroTerm(r, e.toolOf(r, p.Quantity), 1/float64(len(list))))
		}
	}
	group := p.Key + "|" + last.State().String() + "|" + strconv.Itoa(last.Setup)
	spread := &cause{key: "repeats|" + group, input: p.Key, reading: last.ID}
	if random {
		spread.shape = rectangular
		return append(terms, term{spread, (slices.Max(values) - slices.Min(values)) / 2})
	}
	step := e.toolOf(last, p.Quantity).resolution
	spread.shape = studentT(len(list) - 1)
	u := math.Max(uncertain.SampleStd(values)/math.Sqrt(float64(len(list))), step/math.Sqrt(12))
	return append(terms, term{spread, u})
}

// coarsest picks the repeat whose own doubt is largest; the newest of equals.
func (e *engine) coarsest(p measure.Point, list []measure.Reading, last measure.Reading) measure.Reading {
	size := func(r measure.Reading) float64 {
		v, _ := r.Number()
		s := 0.0
		for _, t := range e.single(p, r, v, true) {
			d := t.scale * t.cause.shape.Std()
			s += float64(d * d)
		}
		return s
	}
	best := last
	for _, r := range list {
		if size(r) > size(best) {
			best = r
		}
	}
	return best
}

// movesWithAxle reports slopes that change while the axle moves against the body.
func movesWithAxle(key string) bool {
	switch key {
	case "shaft.slope", "front_shaft.slope", "pinion.slope":
		return true
	}
	return false
}

// widening is the angle in degrees that a difference in height may turn the shaft by.
func (e *engine) widening(mm float64) float64 {
	return math.Atan(mm/e.lengthForWidening()) * 180 / math.Pi
}

// lengthForWidening is the length of the shaft that a change of height turns, mm: of two shafts to a
// pinion in front it is the front one.
func (e *engine) lengthForWidening() float64 {
	point := "shaft.length"
	if !e.swings() {
		point = "front_shaft.length"
	}
	for _, r := range e.byPoint[point] {
		if v, ok := r.Number(); ok && v > 0 {
			return v
		}
	}
	return given("assumed.shaft.length")
}
