package checks

import (
	"cmp"
	"math"
	"slices"

	"yokebook/checks/uncertain"
	"yokebook/measure"
)

// reversal is what turning a finder end for end in one place found out about its zero.
type reversal struct {
	zero float64 // degrees that it shows too much, with way 1 and laid along the part
	u    float64 // standard uncertainty of that
	from origin
}

// zeroSign is the sign with which the zero of r's instrument enters r's value along the part.
// Turning the finder end for end turns it round, and so does laying it on the face of the part.
func zeroSign(r measure.Reading) float64 {
	sign := 1.0
	if r.Way == 2 {
		sign = -sign
	}
	if r.Lay == "face" {
		sign = -sign
	}
	return sign
}

// place is where and when an instrument was laid: readings of one place differ by its zero alone.
type place struct {
	point string
	state measure.State
}

// laying is an instrument in a setup, and turning what its reversal there found, if it was turned.
type laying struct {
	instrument string
	setup      int
}

type turning struct {
	reversal
	ok bool
}

// reversalOf works out an instrument's zero in one setup from the places that it was laid in both
// ways: z = (m₁ − m₂)/2, each m a mean in the vehicle's own sign. Not ok: it was never turned there.
// Source: reversal of a spirit level, as on any level calibration sheet.
func (e *engine) reversalOf(instrument string, setup int) (reversal, bool) {
	at := laying{instrument, setup}
	t, known := e.turned[at]
	if !known {
		t.reversal, t.ok = e.findReversal(instrument, setup)
		e.turned[at] = t
	}
	return t.reversal, t.ok
}

func (e *engine) findReversal(instrument string, setup int) (reversal, bool) {
	both := map[place]*[2][]measure.Reading{}
	var places []place
	for i := range e.readings {
		if r := &e.readings[i]; r.Instrument != instrument || r.Setup != setup || r.Way == 0 || r.Basis != measure.Measured {
			continue
		}
		r := e.readings[i]
		at := place{r.Point, r.State()}
		if both[at] == nil {
			both[at] = new([2][]measure.Reading)
			places = append(places, at)
		}
		side := 0
		if zeroSign(r) < 0 {
			side = 1
		}
		both[at][side] = append(both[at][side], r)
	}
	var zeros []float64
	var out reversal
	square := 0.0
	for _, at := range places {
		m := both[at]
		if len(m[0]) == 0 || len(m[1]) == 0 {
			continue
		}
		mean1, u1 := e.meanOf(m[0])
		mean2, u2 := e.meanOf(m[1])
		zeros = append(zeros, (mean1-mean2)/2)
		square += (float64(u1*u1) + float64(u2*u2)) / 4
		for _, r := range slices.Concat(m[0], m[1]) {
			out.from = out.from.join(originOf(r))
		}
	}
	if len(zeros) == 0 {
		return reversal{}, false
	}
	out.zero, out.u = uncertain.Mean(zeros), math.Sqrt(square)/float64(len(zeros))
	return out, true
}

// meanOf is the mean along the part and its standard uncertainty from step, accuracy and placing.
func (e *engine) meanOf(list []measure.Reading) (mean, u float64) {
	var values []float64
	square := 0.0
	for _, r := range list {
		v, _ := r.Number()
		values = append(values, r.Along(v))
		own := e.ownDoubt(r)
		square += float64(own * own)
	}
	return uncertain.Mean(values), math.Sqrt(square) / float64(len(list))
}

// ownDoubt is the standard uncertainty of one measured reading without its instrument's shared zero.
func (e *engine) ownDoubt(r measure.Reading) float64 {
	p, _ := measure.PointOf(r.Point)
	t := e.toolOf(r, p.Quantity)
	sum := float64(t.resolution*t.resolution)/12 + float64(t.accuracy*t.accuracy)/3 + float64(t.placing*t.placing)
	return math.Sqrt(sum)
}

// readingZero says for each angle finder whether its zero still has to be found: it has where it was
// turned end for end between two readings of one setup and not within one place.
func (e *engine) readingZero(c *Check) []Finding {
	var out []Finding
	for _, in := range e.build.Instruments {
		if in.Quantity() == measure.Angle {
			if f, ok := e.zeroOf(c, in); ok {
				out = append(out, f)
			}
		}
	}
	return out
}

func (e *engine) zeroOf(c *Check, in measure.Instrument) (Finding, bool) {
	f := Finding{Check: c.Key, Subject: in.ID, Unit: c.Unit}
	ways := map[int][]float64{} // setup → signs that its readings were taken with
	unsaid := false
	for _, r := range e.readings {
		if r.Instrument != in.ID || r.Basis != measure.Measured {
			continue
		}
		f.Used = append(f.Used, r.ID)
		unsaid = unsaid || r.Way == 0
		if sign := zeroSign(r); !slices.Contains(ways[r.Setup], sign) {
			ways[r.Setup] = append(ways[r.Setup], sign)
		}
	}
	if len(f.Used) == 0 {
		return Finding{}, false
	}
	due := 0.0
	setups := make([]int, 0, len(ways))
	for s := range ways {
		setups = append(setups, s)
	}
	slices.SortFunc(setups, cmp.Compare[int])
	for _, s := range setups {
		if r, ok := e.reversalOf(in.ID, s); ok {
			f.Notes = append(f.Notes, Message{MsgZeroFound, []any{in.ID, s, r.zero, r.u}})
		} else if len(ways[s]) > 1 {
			due++
			f.Advice = Message{MsgReverse, []any{in.ID, s}}
		}
	}
	if unsaid && due == 0 {
		f.Notes = append(f.Notes, Message{MsgWayUnsaid, []any{in.ID}})
		return f, true
	}
	f.Value, f.Low, f.High, f.Verdict = &due, &due, &due, Clear
	if due > 0 {
		f.Verdict = Unsure
	}
	return f, true
}
