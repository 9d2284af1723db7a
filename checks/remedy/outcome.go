package remedy

import (
	"crypto/sha256"
	"fmt"
	"math"

	"yokebook/checks"
	"yokebook/checks/limits"
	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// nodes is how many equally likely outcomes of a reading are looked at.
const nodes = 15

// outcomes are the builds with the reading, one for each value that it may as likely show.
func (n *asking) outcomes(q question) []*measure.Build {
	var list []*measure.Build
	for _, z := range n.draws(q) {
		if b := n.outcome(q, z); b != nil {
			list = append(list, b)
		}
	}
	return list
}

// draws are the equally likely outcomes, as unit draws of what is believed: flat for what was not read and
// for a tool's zero, normal for what was.
func (n *asking) draws(q question) []float64 {
	p, _ := measure.PointOf(q.point)
	count := nodes
	switch {
	case p.Quantity == measure.Text:
		count = 1
	case len(p.Codes) > 0:
		count = len(p.Codes)
	}
	list := make([]float64, count)
	for i := range list {
		share := (float64(i) + 0.5) / float64(count)
		if list[i] = float64(2*share) - 1; q.kind != ReadNew && q.kind != ReadTurned {
			list[i] = uncertain.NormalQuantile(share)
		}
	}
	return list
}

// outcome is the build with the reading as one draw has it.
func (n *asking) outcome(q question, z float64) *measure.Build {
	if q.kind == ReadNew {
		return n.firstTime(q, z)
	}
	e := n.v.edit()
	was := n.v.build.Readings[q.about]
	x, _ := was.Number()
	x = was.Along(x)
	tool := checks.ToolOf(n.v.build, was)
	u := n.doubt(was, tool)
	switch q.kind {
	case ReadTurned:
		e.turn(q.about, x, float64(z*tool.Zero))
	case ReadRepeat:
		e.repeat(q.about, x, z, math.Max(tool.Placing, tool.Resolution/math.Sqrt(12)))
	case ReadBetter:
		better := checks.Tool{Resolution: tool.Resolution / 2, Accuracy: tool.Accuracy / 2, Placing: tool.Placing}
		e.replace(q.about, x+float64(z*math.Sqrt(float64(u*u)+square(better))), better)
	case ReadInstead:
		usual := was
		usual.Instrument, usual.Basis = "", measure.Measured
		better := checks.ToolOf(n.v.build, usual)
		e.replace(q.about, x+float64(z*math.Sqrt(float64(u*u)+square(better))), better)
	}
	return e.done()
}

// square is the variance of one reading with a tool.
func square(t checks.Tool) float64 {
	flat := float64(t.Accuracy*t.Accuracy) + float64(t.Zero*t.Zero) + float64(t.Resolution*t.Resolution)/4
	return flat/3 + float64(t.Placing*t.Placing)
}

// doubt is the standard deviation of what is believed of a reading's true value.
func (n *asking) doubt(r measure.Reading, tool checks.Tool) float64 {
	x, _ := r.Number()
	p, _ := measure.PointOf(r.Point)
	switch {
	case r.Basis == measure.Stated:
		return r.Step() / 2 / math.Sqrt(3)
	case r.Basis == measure.Estimated && p.Quantity == measure.Angle:
		return given("estimated.angle") / math.Sqrt(3)
	case r.Basis == measure.Estimated:
		return given("estimated.share") * abs(x) / math.Sqrt(3)
	}
	return math.Sqrt(square(tool))
}

// firstTime is the build with a point read for the first time.
func (n *asking) firstTime(q question, z float64) *measure.Build {
	e := n.v.edit()
	p, _ := measure.PointOf(q.point)
	r := measure.Reading{ID: newID(q.point, q.state, 0), Point: q.point, Unit: p.Quantity.Base(), Basis: measure.Measured,
		Ride: q.state.Ride, Load: q.state.Load, Setup: q.setup, Instrument: q.instrument, Tag: n.v.tagFor(q.point)}
	if p.Basis == measure.Stated {
		r.Basis = measure.Stated
	}
	if p.Quantity == measure.Text {
		r.Value = measure.TextValue(p.Example())
		e.build.Readings = append(e.build.Readings, r)
		return e.done()
	}
	middle, half := n.believed(p, q.state)
	to := middle + float64(z*half)
	switch {
	case len(p.Codes) > 0:
		to = float64(p.Codes[int(float64(len(p.Codes))*(z+1)/2)].Value)
	case p.Quantity == measure.Count:
		to = math.Round(to)
	}
	e.build.Readings = append(e.build.Readings, r)
	e.write(len(e.build.Readings)-1, to)
	return e.done()
}

// tagFor is the tag of the only obstacle, for the rest of what is read of it.
func (v *vehicle) tagFor(point string) string {
	if partOf(point) != "obstacle" {
		return ""
	}
	for _, r := range v.build.Readings {
		if partOf(r.Point) == "obstacle" {
			return r.Tag
		}
	}
	return ""
}

// believed is what is taken of a point that was not read, flat between middle − half and middle + half:
// the range that the checks take for granted; around the mean of other states or what was worked out;
// else what such parts have.
func (n *asking) believed(p measure.Point, state measure.State) (middle, half float64) {
	if row, ok := limits.Of("assumed." + p.Key); ok && row.Unit == string(p.Quantity.Base()) && p.Key != "shaft.length" {
		return 0, row.Value
	}
	if x, ok := n.v.read(p.Key, state); ok {
		return x, (p.High - p.Low) / 8
	}
	if x, ok := n.worked(p.Key); ok {
		return x, given("estimated.angle")
	}
	return (p.Low + p.High) / 2, (p.High - p.Low) / 2
}

// worked is the wind-up that the undecided findings rest on where it was worked out, not stated.
func (n *asking) worked(point string) (deg float64, ok bool) {
	of := map[string]measure.Case{"pinion.windup_drive": measure.Drive, "pinion.windup_coast": measure.Coast}[point]
	for _, f := range n.undecided {
		for _, m := range f.Notes {
			if m.Key == checks.MsgWindUpWorked && f.State.Case == of && of != "" {
				deg, ok = m.Args[0].(float64)
				return deg, ok
			}
		}
	}
	return 0, false
}

// turn adds what a finder shows that is turned end for end in the place of a reading, which it showed too
// much by zero.
func (e *edit) turn(i int, along, zero float64) {
	was := e.build.Readings[i]
	ways := []int{3 - was.Way}
	if was.Way == 0 {
		ways = []int{1, 2}
	}
	sign := func(way int) float64 {
		if way == 2 {
			return -1
		}
		return 1
	}
	truth := along - float64(sign(was.Way)*zero)
	for k, way := range ways {
		r := was
		r.ID, r.Way, r.Basis = newID(r.Point, r.State(), 10+k), way, measure.Measured
		e.build.Readings = append(e.build.Readings, r)
		e.write(len(e.build.Readings)-1, truth+float64(sign(way)*zero))
	}
}

// repeat adds four more readings that scatter as the tool's placing lets them, z standard deviations of
// their mean away from the first.
func (e *edit) repeat(i int, along, z, placing float64) {
	for k, off := range []float64{-1.2, -0.4, 0.4, 1.2} { // scatter of 1, by hand
		r := e.build.Readings[i]
		r.ID = newID(r.Point, r.State(), 20+k)
		e.build.Readings = append(e.build.Readings, r)
		e.write(len(e.build.Readings)-1, along+float64(placing*(off+float64(z*math.Sqrt(1.25)))))
	}
}

// replace puts a reading with another tool, whose zero is known, in the place of one.
func (e *edit) replace(i int, to float64, tool checks.Tool) {
	r := &e.build.Readings[i]
	p, _ := measure.PointOf(r.Point)
	in := measure.Instrument{ID: fmt.Sprintf("better-%d", i), Kind: "better", Unit: p.Quantity.Base()}
	for _, m := range []struct {
		to *measure.Value
		x  float64
	}{{&in.Resolution, tool.Resolution}, {&in.Accuracy, tool.Accuracy}, {&in.Zero, tool.Zero}, {&in.Placing, tool.Placing}} {
		v, err := measure.FloatValue(m.x)
		if err != nil {
			e.broken = true
			return
		}
		*m.to = v
	}
	e.build.Instruments = append(e.build.Instruments, in)
	r.ID, r.Basis, r.Instrument, r.Way, r.Lay = newID(r.Point, r.State(), 30), measure.Measured, in.ID, 0, ""
	if everywhere(*r) {
		r.Ride, r.Load = measure.Bench, ""
	}
	e.write(i, to)
}

// newID is the id of a reading that was not taken: the same for the same place, so that its causes of
// doubt always draw alike.
func newID(point string, state measure.State, n int) measure.ID {
	h := sha256.Sum256([]byte(fmt.Sprintf("%s|%s|%d", point, state, n)))
	return measure.ID(fmt.Sprintf("%x-%x-8%x-8%x-%x", h[:4], h[4:6], h[6:8], h[8:10], h[10:16])[:36])
}
